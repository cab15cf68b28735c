import type { WorkedStep } from '../steps.ts';
import { actsBy, HABITS } from './habits.ts';
import { ROW_FIELDS, type RowField, type RowProblem } from './problem.ts';
import { bundlesAfter, isMove, tieRow } from './tie.ts';

export type RowStepKey = `tie-${RowField}`;
export type RowHintKey = `look-${'row' | RowField}` | `do-${'row' | RowField}`;
export type RowStep = WorkedStep<RowStepKey, RowField>;

/** The row part by part: what is done there, round which strings, and where it leaves the leading string. */
export function solution(problem: RowProblem): RowStep[] {
  const acts = actsBy(HABITS, problem);
  const { done } = tieRow(
    problem,
    acts.map(({ act }) => act),
  );
  const { direction, width } = problem;
  const [startSide, endSide] = direction === 'rightward' ? ['left', 'right'] : ['right', 'left'];
  const after = bundlesAfter(problem);
  return ROW_FIELDS.flatMap((part): RowStep[] => {
    const steps = done.filter((_, index) => acts[index]?.part === part);
    const [first] = steps;
    const last = steps.at(-1);
    if (!first || !last) return [];
    const side = part.startsWith('start') ? startSide : endSide;
    const bundle = after[side === 'left' ? 0 : 1];
    const strings = [...steps.flatMap((step) => step.strings ?? [])];
    const values = {
      act: first.act,
      side: side ?? '',
      count: steps.length,
      bundle,
      width,
      from: Math.min(...strings),
      to: Math.max(...strings),
      lead: first.from,
      at: last.at,
      inside: isMove(first.act) || bundle > 1 ? 1 : 0,
    };
    return [{ key: `tie-${part}`, values, gives: part }];
  });
}
