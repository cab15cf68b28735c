import { describe, expect, it } from 'vitest';
import { type Chart, fitPiece, type PlanInput, planPiece } from '../../src/solver/index.ts';
import { splitName } from '../../src/store/own-figures.ts';
import { drawnBy, hasShape, planSplit, splitOf, splitsOf } from '../../src/widgets/own-piece.ts';

const input: PlanInput = { width: 12, height: 14, capacity: 8 };
/** A chart whose upper corners are blank for three rows on each side, so that it opens more slowly than the steps would. */
const shaped: Chart = {
  width: 12,
  height: 14,
  palette: [
    { name: 'tar', colour: '#22252b' },
    { name: 'blank', colour: 'none', blank: true },
  ],
  cells: Uint8Array.from({ length: 12 * 14 }, (_, i) => (i < 36 && (i % 12 === 0 || i % 12 === 11) ? 1 : 0)),
};
const plain: Chart = { ...shaped, palette: [{ name: 'tar', colour: '#22252b' }], cells: new Uint8Array(12 * 14) };
const fullRow = (made: ReturnType<typeof planPiece>): number | null => (made.ok ? made.outline.firstFullRow : null);

describe('the plan of a learner’s own piece', () => {
  it('follows the shape of a chart that has one, unless they wanted steps', () => {
    expect([hasShape(shaped), hasShape(plain), hasShape(null)]).toEqual([true, false, false]);
    const planned = (follows: 'chart' | 'steps') => planPiece({ ...input, ...drawnBy(shaped, { follows }) });
    expect(fullRow(planned('chart'))).toBe(4);
    expect(fullRow(planned('steps'))).toBe(2);
    expect(fullRow(planPiece({ ...input, ...drawnBy(plain, { follows: 'chart' }) }))).toBe(2);
  });

  it('hangs as they chose, as long as their figures allow it', () => {
    const answer = planPiece(input);
    const [other] = splitsOf(answer);
    if (!other) throw new Error('12 on 8 can be hung in more than one way');
    const chosen = splitOf(splitsOf(answer), { split: splitName(other) });
    expect(chosen).toBe(other);
    const made = planSplit(answer, input, other);
    expect(made.ok && made.fit).toEqual(other);
    expect(splitOf(splitsOf(answer), { split: '1 1 1 even' })).toBeNull();
    expect(splitOf(splitsOf(answer), { split: null })).toBeNull();
  });

  it('can hang another way where the answer has a bundle that is too thick', () => {
    const refused = planPiece({ width: 40, height: 20, capacity: 16 });
    const fit = fitPiece({ width: 40, capacity: 16 });
    expect([refused.ok, fit.ok]).toEqual([false, false]);
    expect(Array.isArray(splitsOf(refused))).toBe(true);
  });
});
