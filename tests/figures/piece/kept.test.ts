import { describe, expect, it } from 'vitest';
import * as kept from '../../../src/figures/piece/kept.ts';
import { shapeOf, standingPacked } from '../../../src/figures/piece/packed.ts';
import { stretchesOf } from '../../../src/figures/piece/pen.ts';
import { crossingsOf, orderDown, type Path, passes } from '../../../src/figures/strand/index.ts';
import { keptLines } from './kept-lines.ts';

const slow = 20_000;

/** A packed knot with its bases drawn long, as the model of a knot. */
function asModel(kind: Parameters<typeof shapeOf>[0], strands: number) {
  const bases = standingPacked(strands).map(([x, z], i) => ({
    id: `base-${i + 1}`,
    role: 'base',
    path: [
      [x, -9, z],
      [x, 12, z],
    ] as Path,
  }));
  const all = [{ id: 'leading', role: 'leading', path: shapeOf(kind, strands).lead }, ...bases];
  return { strands: all, crossings: crossingsOf(all) };
}

describe('the knots a piece is made of', { timeout: slow }, () => {
  it('are those of the strand model, point by point', () => expect({ ...kept }).toEqual(keptLines()));

  it('keep the order down the base that makes each knot what it is, on bundles of 1 to 8', () => {
    for (let strands = 1; strands <= 8; strands += 1) {
      for (const kind of ['forward-stop', 'backward-stop', 'forward', 'backward'] as const)
        expect(orderDown(asModel(kind, strands), 'leading'), `${kind} ${strands}`).toBe('u1 o1 u2 o2 o3');
      for (const kind of ['forward-backward', 'backward-forward'] as const) {
        expect(orderDown(asModel(kind, strands), 'leading'), `${kind} ${strands}`).toBe('u1 o1 o2 u2');
        expect(passes(asModel(kind, strands), 'leading'), `${kind} ${strands}`).toBe('o1 u1 s u2 o2 ŝ');
      }
      expect(passes(asModel('forward-stop', strands), 'leading')).toBe('o1 u1 s o2 u2 s o3');
    }
  });

  it('are painted so that the nearer of two stretches comes last', () => {
    for (let strands = 1; strands <= 8; strands += 1)
      for (const kind of ['forward-stop', 'backward-stop', 'forward-backward', 'backward-forward'] as const) {
        const { before } = stretchesOf(shapeOf(kind, strands).lead, 0.3);
        const named = before.map((path, i) => ({ id: String(i), path }));
        for (const { strand, meets, over, gap } of crossingsOf(named))
          if (strand !== meets && gap > 0.3) expect(over, `${kind} ${strands}`).toBe(Number(strand) > Number(meets));
      }
  });

  it('lean down the way their row goes: forward knots to the right, backward knots to the left', () => {
    // The second stroke over the base, from one side of it to the other.
    const slope = (kind: 'forward-stop' | 'backward-stop'): number => {
      const { before } = stretchesOf(shapeOf(kind, 1).lead, 0.3);
      const strokes = before.map((path) => path.filter(([x]) => Math.abs(x) < 0.5)).filter(({ length }) => length > 1);
      const lean = strokes.map((path) => {
        const [a, b] = [path[0], path.at(-1)];
        return a && b ? (b[1] - a[1]) / (b[0] - a[0]) : 0;
      });
      return lean.reduce((sum, one) => sum + one, 0) / lean.length;
    };
    expect(slope('forward-stop')).toBeGreaterThan(0.05);
    expect(slope('backward-stop')).toBeCloseTo(-slope('forward-stop'), 9);
  });
});
