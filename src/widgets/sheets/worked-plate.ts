import { drawFigure } from '../../figures/index.ts';
import { groupOf } from '../../solver/exercises/choose/groups.ts';
import type { ExerciseProblem } from '../../solver/exercises/contract.ts';
import type { Sequence } from '../../solver/exercises/order/problem.ts';
import { bundlesIn, OUTLINE_RULES } from '../../solver/exercises/outline.ts';
import type { SayTopic } from '../../solver/exercises/say/problem.ts';
import type { SumProblem } from '../../solver/exercises/sum/problem.ts';
import type { WholePiece } from '../../solver/exercises/whole-piece.ts';
import { planPiece } from '../../solver/plan.ts';
import { figureWords } from '../../words/figure-words.ts';

type Shows = 'bar' | 'row' | null;

/** What helps to see why; the end of a piece and its cut ends are on neither. */
const SAID: { readonly [T in SayTopic]: Shows } = {
  'two-borrowed': 'bar',
  'sides-even': 'bar',
  'bundle-one-knot': 'row',
  'leading-inside': 'row',
  'rows-short': 'row',
  'closing-from-the-end': null,
  'trim-last': null,
};

const ORDERED: { readonly [S in Sequence]: Shows } = {
  mounting: 'bar',
  sum: 'bar',
  'first-row': 'row',
  'let-out': 'row',
  'take-in': 'row',
  row: 'row',
  gathering: null,
  'square-knot': null,
  'new-string': null,
  evening: null,
};

function shownFor(problem: ExerciseProblem): Shows {
  if (problem.kind === 'say') return SAID[problem.topic];
  if (problem.kind === 'order') return ORDERED[problem.of];
  if (problem.kind !== 'choose') return 'bar';
  const group = groupOf(problem.ask);
  if (group === 'sum') return 'bar';
  return group === 'knots' || problem.ask === 'bundle-knot' || problem.ask === 'corner-cells' ? 'row' : null;
}

function barOf(problem: object, id: string): string | null {
  const { width, capacity, oddMethod, startSide } = problem as Partial<SumProblem>;
  if (width === undefined || capacity === undefined) return null;
  const plan = planPiece({ width, capacity, height: width, oddMethod: oddMethod ?? undefined, startSide });
  return plan.ok ? drawFigure('bar', plan, { stage: 'fitted' }, { id, words: figureWords }).svg : null;
}

/** The row that is spoken of; none where the piece closes as no plan does. */
function rowOf(problem: WholePiece, id: string): string | null {
  const { oddMethod, closing, row } = problem;
  const plan = planPiece({ ...problem, oddMethod: oddMethod ?? undefined, closingBundle: closing[0] });
  if (!plan.ok) return null;
  const planned = plan.rows[row - 1];
  const [left, right] = bundlesIn(OUTLINE_RULES, problem, row);
  if (planned?.leftBundle !== left || planned.rightBundle !== right) return null;
  return drawFigure('row', plan, { row }, { id, words: figureWords }).svg;
}

/** What is drawn beside a case that is worked through: its bar where it is about the fit, its row where it is about one. */
export function workedPlate(problem: ExerciseProblem, id: string): string | null {
  const shows = shownFor(problem);
  return shows === 'row' ? rowOf(problem as ExerciseProblem & WholePiece, id) : shows && barOf(problem, id);
}
