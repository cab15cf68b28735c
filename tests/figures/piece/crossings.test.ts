import { describe, expect, it } from 'vitest';
import type { PieceModel, PieceShape } from '../../../src/figures/piece/index.ts';
import { rowCords } from '../../../src/figures/row.ts';
import { crossingsOf, orderDown, type Path } from '../../../src/figures/strand/index.ts';
import { lantern } from '../drawn.ts';
import { chartPlan, modelOf } from './pieces.ts';

/** The order down the base that each knot of the rows has to have, by the craft's table. */
const ORDERS: Readonly<Record<string, string>> = {
  forward: 'u1 o1 u2 o2 o3',
  backward: 'u1 o1 u2 o2 o3',
  'forward-stop': 'u1 o1 u2 o2 o3',
  'backward-stop': 'u1 o1 u2 o2 o3',
  'forward-backward': 'u1 o1 o2 u2',
  'backward-forward': 'u1 o1 o2 u2',
};

/** The order down the base as a shape has it, its bases drawn on upwards and downwards. */
function orderOf({ leads, bases }: PieceShape): string {
  const strands = [
    ...leads.map((path) => ({ id: 'leading', role: 'leading', path })),
    ...bases.map((base, i) => {
      const [x, , z] = base[0] ?? [0, 0, 0];
      return {
        id: `base-${i + 1}`,
        role: 'base',
        path: [
          [x, -9, z],
          [x, 12, z],
        ] as Path,
      };
    }),
  ];
  return orderDown({ strands, crossings: crossingsOf(strands) }, 'leading');
}

/** The kind of a knot by the name of its shape. */
const kindOf = (name: string): string => name.replace(/ \d+$/, '');

/** The shapes of a piece in which some string passes on the wrong side of another. */
const faultsOf = ({ shapes }: PieceModel): string[] =>
  Object.entries(shapes)
    .filter(([name, shape]) => {
      const order = ORDERS[kindOf(name)];
      return order !== undefined && orderOf(shape) !== order;
    })
    .map(([name]) => name);

/** The stretches of a line over or under a base of one string, as ranges of its points. */
function strokesOf(line: Path): [from: number, to: number][] {
  const strokes: [number, number][] = [];
  line.forEach(([x, , z], i) => {
    if (Math.abs(x) > 0.6 || Math.abs(z) < 0.3) return;
    const last = strokes.at(-1);
    if (last && last[1] === i - 1 && Math.sign(line[last[1]]?.[2] ?? 0) === Math.sign(z)) last[1] = i;
    else strokes.push([i, i]);
  });
  return strokes;
}

describe('the crossings of a whole piece', { timeout: 20_000 }, () => {
  const model = modelOf(chartPlan('lantern', 16));

  it('are those of the craft in every knot, on single strings and on bundles', () => {
    expect(Object.keys(model.shapes).filter((name) => kindOf(name) in ORDERS).length).toBeGreaterThan(8);
    expect(faultsOf(model)).toEqual([]);
  });

  it('are those of the craft in the rows of a plate too', () => {
    for (const number of [2, 3, 28, 29]) {
      const { model: rows } = rowCords(lantern, { row: number }).cords;
      expect(faultsOf(rows)).toEqual([]);
    }
  });

  it('are found out when any one of them is flipped', () => {
    for (const name of ['forward 1', 'backward 1', 'forward-backward 1', 'backward-forward 1']) {
      const shape = model.shapes[name];
      const lead = shape?.leads[0];
      if (!shape || !lead) continue;
      const strokes = strokesOf(lead);
      expect(strokes.length, name).toBeGreaterThanOrEqual(4);
      for (const [from, to] of strokes) {
        const flipped = lead.map(([x, y, z], i) => [x, y, i >= from && i <= to ? -z : z] as const);
        const wrong = { ...model, shapes: { ...model.shapes, [name]: { ...shape, leads: [flipped] } } };
        expect(faultsOf(wrong), `${name}, points ${from} to ${to}`).toEqual([name]);
      }
    }
  });
});
