import type { Slipped, Slips } from '../../missteps/contract.ts';
import type { SlipSet } from '../../missteps/ids.ts';
import { ROW_SLIPS, type RowSlip, slippedRules } from '../../missteps/rows.ts';
import { bundlesIn, OUTLINE_RULES } from '../outline.ts';
import type { Cell, MarkProblem, MarkSolution } from './problem.ts';
import { readCells } from './read-cells.ts';
import { cellsBy, solve } from './solve.ts';

/** Counting knots marks no cells. */
const UNMARKED: readonly RowSlip[] = [
  'bundle-counted-as-strings',
  'bundle-not-counted',
  'full-width-misplaced',
  'knot-one-off',
];
const MARK_SLIPS = ROW_SLIPS.filter((slip) => !UNMARKED.includes(slip));

/** One text for a set of cells, whatever their order; a whole row to be marked counts as the row. */
const asText = (problem: MarkProblem, cells: readonly Cell[]): string => {
  const wholeRow = problem.target === 'first-closing-row';
  return [...new Set(cells.map(([row, column]) => (wholeRow ? `${row}` : `${row} ${column}`)))].sort().join();
};

function singles(problem: MarkProblem): Slipped<MarkSolution>[] {
  const truth = asText(problem, solve(problem).cells);
  return MARK_SLIPS.flatMap((slip) =>
    slippedRules(slip)
      .map((rules) => cellsBy(rules, problem))
      .filter((cells) => cells.length > 0 && asText(problem, cells) !== truth)
      .map((cells) => ({ slips: [slip] as const, answer: { cells } })),
  );
}

const every = (problem: MarkProblem, [slip, other]: SlipSet): MarkSolution[] => {
  const known = MARK_SLIPS.find((each) => each === slip);
  return known === undefined || other !== undefined
    ? []
    : slippedRules(known).map((rules) => ({ cells: cellsBy(rules, problem) }));
};

const mirrored = (half: string): string => half + [...half].reverse().join('');

/** A picture for a small piece of even width: two bars of a colour in each row, or a top that reaches to the edges. */
function smallPicture(
  problem: MarkProblem,
  { width, height }: Pick<MarkProblem, 'width' | 'height'>,
): MarkProblem['picture'] {
  const { picture, target, colour = 1 } = problem;
  if (!picture) return undefined;
  const half = width / 2;
  const bar = `${colour}`;
  const row = target === 'picture-cut' ? `0${'1'.repeat(half - 1)}` : `0${bar}${bar}${'0'.repeat(half - 3)}`;
  return { ...picture, rows: Array.from({ length: height }, () => mirrored(row)) };
}

/** Level pieces of the same target, smallest first; where one row is asked about every row that tells something. */
function* followUps(problem: MarkProblem): Generator<MarkProblem> {
  const { kind, target, openingStep, closingStep, startSide, colour } = problem;
  for (const bundle of [2, 4, 6]) {
    for (const closingBundle of [bundle, bundle + 1]) {
      const width = 2 * closingBundle + 4;
      const height = openingStep * (bundle - 1) + closingStep * (closingBundle - 1) + 4;
      if (width === problem.width && height === problem.height) continue;
      const bundles = [bundle, bundle] as const;
      const closing = [closingBundle, closingBundle] as const;
      const picture = smallPicture(problem, { width, height });
      const piece = {
        kind,
        target,
        width,
        height,
        bundles,
        closing,
        openingStep,
        closingStep,
        ...(startSide && { startSide }),
        ...(picture && { picture }),
        ...(colour !== undefined && { colour }),
      };
      if (target === 'picture-cut') yield { ...piece, from: 1, to: OUTLINE_RULES.fullWidthRow(piece) };
      else if (target === 'colour-in-row') yield { ...piece, from: 3, to: 3 };
      else if (target === 'bundle-knot' || target === 'first-knot') {
        for (let row = 1; row <= height; row += 1)
          if (target === 'first-knot' || Math.max(...bundlesIn(OUTLINE_RULES, piece, row)) > 1)
            yield { ...piece, from: row, to: row };
      } else yield { ...piece, from: 1, to: height };
    }
  }
}

/** The slips of marking cells: those of the rows that show on a chart. */
export const slips: Slips<'mark'> = {
  missteps: Object.fromEntries(
    MARK_SLIPS.map((slip) => [
      slip,
      (problem: MarkProblem): MarkSolution => {
        const [cells] = slippedRules(slip).map((rules) => cellsBy(rules, problem));
        return cells && cells.length > 0 ? { cells } : solve(problem);
      },
    ]),
  ),
  every,
  singles,
  pairs: () => [],
  like: (problem, answer) => {
    const reading = readCells(problem, answer);
    const marked = 'cells' in reading ? asText(problem, reading.cells) : null;
    return ({ cells }) => marked === asText(problem, cells);
  },
  figuresIn: (problem, answer) => {
    const reading = readCells(problem, answer);
    if (!('cells' in reading)) return 0;
    return problem.target === 'first-closing-row' ? Math.min(1, reading.cells.length) : reading.cells.length;
  },
  followUps,
};
