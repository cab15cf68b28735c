import type { Clues } from '../steps.ts';
import type { MarkProblem } from './problem.ts';
import type { MarkHintKey } from './solution.ts';

/** Where to look and what to do, for the cells to be marked. */
export function clues(problem: MarkProblem): Clues<MarkHintKey> {
  const { target, width, height, bundles, closing, from, to } = problem;
  const values = {
    width,
    height,
    from,
    to,
    mountedLeft: bundles[0],
    mountedRight: bundles[1],
    closingLeft: closing[0],
    closingRight: closing[1],
    startSide: problem.startSide ?? 'left',
    colour: problem.picture?.palette[problem.colour ?? 0]?.name ?? '',
  };
  return { look: { key: `look-${target}`, values }, do: { key: `do-${target}`, values } };
}
