import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Chart, type Piece, type PlanInput, planPiece, planRows, type RowPlan } from '../../src/solver/index.ts';
import { rowLedger, rowSpeech, rowSummary, rowWords } from '../../src/words/row-words.ts';
import { tries } from '../seed.ts';
import { chartedPieces } from '../solver/worlds.ts';
import { expectSentences } from './sayable.ts';

function linesOf(input: PlanInput, row: number): string[] {
  const plan = planPiece(input);
  if (!plan.ok) throw new Error(plan.problem.code);
  const [above, here] = [plan.rows[row - 2], plan.rows[row - 1]];
  if (!here) throw new Error(`there is no row ${row}`);
  return rowWords({ row: here, before: above, fit: plan.fit, palette: input.chart?.palette }).map(({ text }) => text);
}

const evening = { width: 12, height: 14, capacity: 8 };

describe('a row in words', () => {
  test('row 1 of the evening’s piece loops the folds through as they are needed', () => {
    expect(linesOf(evening, 1)).toEqual([
      'Row 1, left to right: 10 knots.',
      'Loop 1 fold through the ring at the left end of the bar. Keep the ends level, and tie no knot on the ring.',
      'Pin the leading string on the inner side of this bundle.',
      'Tie a backward-forward knot round both strings of the left bundle.',
      'Tie eight forward knots.',
      'Loop 1 fold through the ring at the right end of the bar. Keep the ends level, and tie no knot on the ring.',
      'Tie a forward-backward knot round both strings of the right bundle.',
      'The leading string is now on the inner side of the right bundle.',
    ]);
  });

  test('letting out at the start moves a string, at the end only a knot tells it', () => {
    expect(linesOf(evening, 2)).toEqual([
      'Row 2, right to left: 12 knots.',
      'Let one string out on the right: pass the innermost string of the bundle behind the leading string, to the inner side.',
      'Tie a forward-backward knot round the one string left at the right edge.',
      'Tie eleven backward knots. The first is on the string you let out. The last two are on the two strings of the left bundle, which hang singly from now on.',
      'The leading string is now outside the left edge.',
    ]);
  });

  test('a bundle of six lets its innermost string out at both ends of row 2', () => {
    const lines = linesOf({ width: 26, height: 32, capacity: 16 }, 2);
    expect(lines[2]).toBe('Tie a forward-backward knot round all 5 strings of the right bundle.');
    expect(lines[3]).toBe(
      'Tie sixteen backward knots. The first is on the string you let out. The last is on the innermost string of the left bundle, which you let out here.',
    );
    expect(lines[4]).toBe('Tie a backward-forward knot round the 5 strings left in the left bundle.');
  });

  test('closing carries the leading string behind two edge strings first, then takes one string in each row', () => {
    const lantern = { width: 26, height: 32, capacity: 16 };
    expect(linesOf(lantern, 28).slice(1)).toEqual([
      'Carry the leading string behind the two edge strings on the right, to their inner side. They are a bundle of two now.',
      'Tie a forward-backward knot round both strings of the right bundle.',
      'Tie 22 backward knots.',
      'Take the last two strings on the left together: tie a backward-forward knot round both.',
      'The leading string is now on the inner side of the left bundle.',
    ]);
    expect(linesOf(lantern, 29).slice(1, 3)).toEqual([
      'Take one string in on the left: pass the next string behind the leading string to the outer side. It joins the bundle.',
      'Tie a backward-forward knot round all 3 strings of the left bundle.',
    ]);
    expect(linesOf(lantern, 29).at(-2)).toBe(
      'Take one more string into the right bundle: tie a forward-backward knot round all 3 strings.',
    );
  });

  test('a straight row only changes direction', () => {
    expect(linesOf({ width: 12, height: 4, capacity: 12 }, 3)).toEqual([
      'Row 3, left to right: 12 knots.',
      'Tie twelve forward knots.',
      'The leading string is now outside the right edge.',
    ]);
    expect(linesOf({ width: 12, height: 4, capacity: 12 }, 1)).toContain(
      'Pin the leading string outside the edge string on the left.',
    );
  });

  test('a carried end is named on its own side in every row', () => {
    const odd = { width: 25, height: 20, capacity: 16, oddMethod: 'carried-end' } as const;
    expect(linesOf(odd, 1).at(-2)).toBe(
      'Tie a forward-backward knot round all 5 strings of the right bundle, with the carried end.',
    );
    expect(linesOf(odd, 1)[3]).toBe('Tie a backward-forward knot round all 6 strings of the left bundle.');
    expect(linesOf(odd, 7)).toContain(
      'Tie 25 forward knots. The last is round the edge string and the carried end together.',
    );
    expect(linesOf(odd, 8)).toContain(
      'Tie 25 backward knots. The first is round the edge string and the carried end together.',
    );
  });

  test('colours are named at each change, or once where a row has one', () => {
    const cells = new Uint8Array(12 * 14);
    cells.set([1, 1, 1], 12 * 6 + 4);
    const chart: Chart = {
      width: 12,
      height: 14,
      palette: [
        { name: 'tar', colour: '#222222' },
        { name: 'chalk', colour: '#eeeeee' },
      ],
      cells,
    };
    expect(linesOf({ ...evening, chart }, 7)).toEqual([
      'Row 7, left to right: 12 knots.',
      'Tie four forward knots in tar.',
      'Tie three forward knots in chalk.',
      'Tie five forward knots in tar.',
      'The leading string is now outside the right edge.',
    ]);
    expect(linesOf({ ...evening, chart }, 8)[0]).toBe('Row 8, right to left: 12 knots, all in tar.');
  });

  test('a row has one line for a list', () => {
    const plan = planPiece({ width: 26, height: 32, capacity: 16 });
    if (!plan.ok) throw new Error(plan.problem.code);
    expect(plan.rows.slice(4, 6).map((row) => rowSummary(row))).toEqual([
      'Row 5, left to right: 24 knots, with a bundle of 2 on the left and 2 on the right',
      'Row 6, right to left: 26 knots',
    ]);
  });
});

describe('every row of every piece', () => {
  const eachRow = (
    says: (row: RowPlan, above: RowPlan | undefined, piece: Piece & { readonly chart: Chart }) => void,
  ) =>
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const rows = planRows(piece);
        if (!Array.isArray(rows)) throw new Error('not planned');
        for (const [index, row] of rows.entries()) says(row, rows[index - 1], piece);
      }),
      tries(60),
    );

  test('has a sentence for each run, in order, and no other knots', () =>
    eachRow((row, before, { fit, chart }) => {
      const lines = rowWords({ row, before, fit, palette: chart.palette });
      for (const { text } of lines) expectSentences(text);
      expect(lines.flatMap(({ run }) => (run === null ? [] : [run]))).toEqual(row.runs.map((_, index) => index));
    }));

  test('lets out and takes in on each side exactly what the bundles say', () =>
    eachRow((row, before, { fit }) => {
      const text = rowSpeech({ row, before, fit });
      const change = (side: 'leftBundle' | 'rightBundle') => (before ? row[side] - before[side] : 0);
      const [left, right] = [change('leftBundle'), change('rightBundle')];
      // Where the bundles hold every string, one that leaves a side may join the other and needs no word there.
      const across = before && before.leftBundle + before.rightBundle === fit.width && left * right < 0;
      const told = (words: RegExp) => (text.match(words) ?? []).length;
      const out = told(/Let one string out|which you let out here|hang singly from now on/g);
      const taken = told(/Take one string in|Take one more|Take the last two|Carry the leading string/g);
      expect(taken).toBe(Number(left > 0) + Number(right > 0));
      expect(out).toBe(Number(left < 0) + Number(right < 0) - (across && row.startMove !== 'let-out' ? 1 : 0));
    }));

  test('mentions the carried end exactly once where there is one', () =>
    eachRow((row, before, { fit }) => {
      const told = rowSpeech({ row, before, fit }).match(/carried end/g) ?? [];
      expect(told.length).toBe(fit.carrySide === null ? 0 : 1);
    }));

  test('says each run once in the ledger too, with runs of which nothing more is to be said in one line', () =>
    eachRow((row, before, { fit, chart }) => {
      const { palette } = chart;
      const lines = rowWords({ row, before, fit, palette });
      const ledger = rowLedger({ row, before, fit, palette });
      const inColours = (said: readonly { text: string }[]) =>
        said.flatMap(({ text }) => text.match(/ in [a-z]/g) ?? []).length;
      expect(ledger.length).toBeLessThanOrEqual(lines.length);
      expect(inColours(ledger)).toBe(inColours(lines));
      for (const { text } of ledger) expectSentences(text);
    }));
});
