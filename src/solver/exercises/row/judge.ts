import { conclude } from '../conclude.ts';
import type { Judged } from '../contract.ts';
import {
  ROW_ACTS,
  ROW_FIELDS,
  type RowAct,
  type RowAnswer,
  type RowFault,
  type RowField,
  type RowProblem,
  type RowResult,
} from './problem.ts';
import { asWorked, type Done, edgesOf, isMove, isTurning, type TiedRow, tieRow } from './tie.ts';

/** More than the longest row that is asked about, with every slip in it. */
const MOST_ACTS = 60;

/** What was done, in order; what is no act of a row is left out. */
export function readActs(answer: RowAnswer): RowAct[] {
  const listed: unknown = answer?.acts;
  if (!Array.isArray(listed)) return [];
  return listed.filter((act): act is RowAct => ROW_ACTS.some((known) => known === act)).slice(0, MOST_ACTS);
}

/** What is the matter with an act; null where it follows. `tied` counts the strings that were tied before it. */
function faultOf(problem: RowProblem, step: Done, sizes: readonly [number, number], tied: number): RowFault | null {
  const { due } = edgesOf(problem);
  const [start, end] = asWorked(sizes, problem.direction);
  const { act, possible } = step;
  if (isMove(act)) {
    if (!possible) return 'nothing-to-move';
    if (act === 'carry-behind') return due.start === 2 && problem.change === 'take-in' ? null : 'move-not-due';
    const [is, wanted] = tied === 0 ? [start, due.start] : [end, due.end];
    return (act === 'let-out' ? is > wanted : is < wanted) ? null : 'move-not-due';
  }
  if (!possible) return 'nothing-left';
  if (tied === 0 ? start !== due.start : end !== due.end && tied >= problem.width - Math.max(end, due.end))
    return 'move-missing';
  const bundle = step.strings !== null && step.strings[1] > step.strings[0];
  if (bundle && !isTurning(act)) return 'plain-on-bundle';
  if (step.needs !== step.from) return 'lead-elsewhere';
  // Every knot leads on inwards, but for the last: it stays inside a bundle, and leaves a single string behind.
  const far = problem.direction === 'rightward' ? step.strings?.[1] : (step.strings?.[0] ?? 0) - 1;
  const last = tied >= problem.width - end;
  return (step.at === far) === !(last && end > 1) ? null : 'leads-astray';
}

const changes = (problem: RowProblem): readonly RowField[] => {
  const { was, due } = edgesOf(problem);
  return ROW_FIELDS.filter(
    (field) => (field !== 'start-move' || was.start !== due.start) && (field !== 'end-move' || was.end !== due.end),
  );
};

/** The first act that does not follow, as an index from 0, and why; null where all of them do. */
export function firstFault(
  problem: RowProblem,
  { done }: TiedRow,
): { readonly at: number; readonly step: Done; readonly fault: RowFault } | null {
  let sizes = problem.before;
  let tied = 0;
  for (const [at, step] of done.entries()) {
    const fault = faultOf(problem, step, sizes, tied);
    if (fault) return { at, step, fault };
    sizes = step.sizes;
    if (!isMove(step.act) && step.strings) tied += step.strings[1] - step.strings[0] + 1;
  }
  return null;
}

/**
 * Judges a row by what it does, not by a list: each act has to be due, each knot has to begin where the leading string
 * is, and to leave it where the next one needs it. So what is right is right in any order that hands can work in.
 *
 * Parts of the row up to the first act that does not follow are judged; that one is `wrong`, and nothing after it. A row
 * that is right so far and not finished is `unreadable`, and no try.
 */
export function judge(problem: RowProblem, answer: RowAnswer): Judged<RowField, RowResult> {
  const acts = readActs(answer);
  const tied = tieRow(problem, acts);
  const found = firstFault(problem, tied);
  const parts = changes(problem);
  const results: { [F in RowField]?: RowResult } = {};
  if (found === null && tied.finished) {
    for (const part of parts) results[part] = { verdict: 'right' };
    return conclude(parts, results, {});
  }
  const open = openPart(problem, tied, found?.step.part, parts);
  for (const part of ROW_FIELDS) {
    if (part === open) break;
    if (parts.includes(part)) results[part] = { verdict: 'right' };
  }
  results[open] = found
    ? { verdict: 'wrong', at: found.at + 1, act: found.step.act, fault: found.fault }
    : { verdict: 'missing' };
  return conclude(ROW_FIELDS, results, {});
}

/** The part of the first act that does not follow, or the part that comes next. */
function openPart(
  problem: RowProblem,
  { done, sizes }: TiedRow,
  wrong: RowField | undefined,
  parts: readonly RowField[],
): RowField {
  if (wrong) return wrong;
  const { due } = edgesOf(problem);
  const [, end] = asWorked(sizes, problem.direction);
  const knots = done.filter(({ act }) => !isMove(act));
  if (knots.length === 0) return (parts[0] === 'start-move' && done.length > 0 ? parts[1] : parts[0]) ?? 'start-edge';
  const tied = knots.reduce((sum, { strings }) => sum + (strings ? strings[1] - strings[0] + 1 : 0), 0);
  if (tied < problem.width - Math.max(end, due.end)) return 'between';
  return end === due.end ? (tied < problem.width - end ? 'between' : 'end-edge') : 'end-move';
}
