import type { DrawnUnit } from '../../figures/tied-row.ts';
import { drawTiedRow } from '../../figures/tied-row.ts';
import type { RowAct, RowProblem } from '../../solver/exercises/row/problem.ts';
import { isMove, tieRow } from '../../solver/exercises/row/tie.ts';
import type { SpotPlace, SpotRow } from '../../solver/exercises/spot/problem.ts';
import { doneWords, leadWords, rowBegins } from '../../words/exercises/acts.ts';

/** A row as far as it is tied, with where the leading string is; the same in words is its text. */
export function rowDrawing(id: string, problem: RowProblem, acts: readonly RowAct[]): string {
  const { units, sizes, begins, at, done } = tieRow(problem, acts);
  const { width, row, direction, before } = problem;
  const first = done.find(({ act }) => !isMove(act));
  // What stands between an edge as it was and as it is has moved.
  const moved = ({ strings: [from] }: DrawnUnit): boolean =>
    (from > sizes[0] && from <= before[0]) || (from <= width - sizes[1] && from > width - before[1]);
  return drawTiedRow(
    id,
    {
      width,
      rightward: direction === 'rightward',
      units: units.map((unit) => ({ ...unit, moved: moved(unit) })),
      begins,
      enters: first?.needs ?? at,
      at,
      carried: acts.includes('carry-behind'),
    },
    `Row ${row}, as far as it is tied.`,
    [rowBegins(problem), ...done.map((step) => doneWords(problem, step)), leadLine(problem, at)].join(' '),
  );
}

const leadLine = (problem: RowProblem, at: number): string => `The leading string is ${leadWords(at, problem.width)}.`;

/** What was done last, and where the leading string is now; the first alone where the learner has done nothing yet. */
export function rowNews(problem: RowProblem, acts: readonly RowAct[], given: number): string {
  const { done, at } = tieRow(problem, acts);
  const last = acts.length > given ? done.at(-1) : undefined;
  return `${last ? `${doneWords(problem, last)} ` : ''}${leadLine(problem, at)}`;
}

/** All that was done, as a list; the first `given` stood there already, and the one at `wrongAt` does not follow. */
export function rowList(problem: RowProblem, acts: readonly RowAct[], given: number, wrongAt?: number): string {
  const lines = tieRow(problem, acts).done.map((step, index) => {
    const standing = index < given ? ' <span class="note">Done already.</span>' : '';
    return index + 1 === wrongAt
      ? `<li data-verdict="wrong">${doneWords(problem, step)} <strong>This is the first that does not follow.</strong></li>`
      : `<li>${doneWords(problem, step)}${standing}</li>`;
  });
  return lines.length > 0 ? `<ol>${lines.join('')}</ol>` : '';
}

/**
 * A row with a fault in it, as it was tied. Each place that can be picked has the id of the drawing and its own name.
 *
 * @param places what stands at each place, in words
 */
export function spotDrawing(id: string, problem: SpotRow, places: readonly string[]): string {
  const { shown, width, direction } = problem;
  const rightward = direction === 'rightward';
  const units: DrawnUnit[] = [];
  let strings = 0;
  const add = (count: number, knot: DrawnUnit['knot'], place: SpotPlace, moved = false): void => {
    const span = rightward
      ? ([strings + 1, strings + count] as const)
      : ([width - strings - count + 1, width - strings] as const);
    units.push({ strings: span, knot, place, moved });
    strings += count;
  };
  for (const part of ['start', 'end'] as const) {
    const { strings: held, knot, freed, side } = shown[part];
    const out = () => {
      for (const one of freed) add(1, one, part, true);
    };
    // Outside lies before the bundle where the row begins, and behind it where the row ends.
    const outFirst = (part === 'start') === (side === 'outer');
    if (outFirst) out();
    add(held, knot, part);
    if (!outFirst) out();
    if (part === 'start') for (const [index, one] of shown.between.entries()) add(1, one, `between-${index + 1}`);
  }
  const end = shown.end.strings + shown.end.freed.length * (shown.end.side === 'outer' ? 1 : 0);
  const rests = shown.rests === 'outside' ? width : width - end;
  const start = problem.before[rightward ? 0 : 1];
  const begins = start > 1 ? start : 0;
  const fromLeft = (place: number): number => (rightward ? place : width - place);
  return drawTiedRow(
    id,
    {
      width,
      rightward,
      units: rightward ? units : units.reverse(),
      begins: fromLeft(begins),
      enters: fromLeft(begins > 1 ? shown.start.strings : 0),
      at: fromLeft(rests),
      picksLead: true,
    },
    `Row ${problem.row}, as it was tied.`,
    places.join(' '),
  );
}
