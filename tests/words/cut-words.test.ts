import { describe, expect, test } from 'vitest';
import { type Chart, type PlanInput, planPiece } from '../../src/solver/index.ts';
import { cutList } from '../../src/solver/thread/cut-list.ts';
import type { Thread } from '../../src/solver/thread/thread.ts';
import { cutWords, estimateWords, leadingWords, placeWords, timeWords } from '../../src/words/cut-words.ts';
import { expectSayable, expectSentences } from './sayable.ts';

const floss: Thread = { diameter: 1.2, kind: 'soft' };

function listFor(input: PlanInput, thread: Thread = floss) {
  const plan = planPiece(input);
  if (!plan.ok) throw new Error(plan.problem.code);
  const list = cutList({ fit: plan.fit, bundles: plan.outline, rows: plan.rows, chart: plan.chart, thread });
  if (!list.ok) throw new Error(list.problem.code);
  return list;
}

const striped = (width: number, height: number): Chart => ({
  width,
  height,
  palette: [
    { name: 'tar', colour: '#222222' },
    { name: 'chalk', colour: '#eeeeee' },
  ],
  cells: Uint8Array.from({ length: width * height }, (_, cell) => Number(cell % 5 === 0)),
});

describe('the cut list in words', () => {
  test.each([
    { width: 12, height: 14, capacity: 8 },
    { width: 21, height: 30, capacity: 15 },
    { width: 25, height: 30, capacity: 16, oddMethod: 'carried-end' as const },
    { width: 2, height: 1, capacity: 2 },
    { width: 60, height: 400, capacity: 52 },
  ])('$width columns on a bar of $capacity: every piece, colour and time has a sentence in both units', (input) => {
    const palette = striped(2, 2).palette;
    for (const chart of [undefined, striped(input.width, input.height)])
      for (const measured of [undefined, { columnPitch: 2.5, rowPitch: 2.4, perKnot: 14, secondsPerKnot: 18 }]) {
        const { pieces, leading, time } = listFor({ ...input, chart }, { ...floss, measured });
        for (const units of ['metric', 'inches'] as const) {
          for (const piece of pieces) expectSentences(cutWords(piece, units));
          for (const colour of leading) expectSentences(leadingWords(colour, units, palette));
        }
        for (const { place } of pieces) expectSayable(placeWords(place));
        expectSentences(timeWords(time));
      }
  });

  test('the evening’s piece has four folds on the bar and one at each side', () => {
    const texts = listFor({ width: 12, height: 14, capacity: 8 }).pieces.map((piece) => cutWords(piece, 'metric'));
    expect(texts).toHaveLength(3);
    expect(texts[0]).toMatch(
      /^Cut 4 pieces of about [\d.]+\u00a0cm \([\d.]+–[\d.]+\) for the bar, each folded in half\.$/,
    );
    expect(texts[1]).toMatch(/^Cut 1 piece of .+ for the left bundle, folded in half\.$/);
  });

  test('an estimate says how it becomes a measured figure', () => {
    expectSentences(estimateWords('estimate'));
    expectSentences(estimateWords('measured'));
    expect(estimateWords('estimate')).toContain('estimate');
  });
});
