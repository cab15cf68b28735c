import { expect, test } from 'vitest';
import { fitPiece, type Placement, planPiece } from '../../src/solver/index.ts';
import { adviceWords, placedWords } from '../../src/words/advice-words.ts';
import { expectSentences } from './sayable.ts';

const made = fitPiece({ width: 21, capacity: 8 });
if (!made.ok) throw new Error(made.problem.code);
const advice: Placement = {
  fit: made.fit,
  rowsAbove: 1,
  rowsBelow: 3,
  columnsLeft: 0,
  columnsRight: 0,
  closingBundle: 8,
  lost: 0,
  knots: 812,
  rows: 44,
};

test('what plain rows would save is said with what they cost', () => {
  expect(adviceWords(10, advice)).toBe(
    'Add 1 plain row above and 3 plain rows below the picture, and nothing of the picture is lost. The piece then has 44 rows and 812 knots.',
  );
  const less = adviceWords(10, { ...advice, rowsAbove: 0, lost: 1 });
  expect(less).toContain('Add 3 plain rows below the picture, and only 1 cell of the picture is lost.');
  expectSentences(less);
});

test('where plain rows save nothing, nothing is said', () => {
  expect(adviceWords(2, { ...advice, lost: 2 })).toBe('');
});

test('a picture as it is placed is told with its loss and its size', () => {
  const plan = planPiece({ width: 12, height: 14, capacity: 8 });
  if (!plan.ok) throw new Error(plan.problem.code);
  expect(placedWords(0, plan)).toBe(
    'Nothing of the picture is lost. The piece is 12 columns wide and 14 rows high, with 164 knots.',
  );
  for (const lost of [1, 7]) expectSentences(placedWords(lost, plan));
});
