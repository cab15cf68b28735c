import type { Slipped, Slips } from '../../missteps/contract.ts';
import type { SlipId, SlipSet } from '../../missteps/ids.ts';
import { readWhole } from '../read.ts';
import { isNear, toleranceOf } from './judge.ts';
import type { NumberProblem, NumberSolution } from './problem.ts';
import { solve } from './solve.ts';

/** The figures a learner may enter who makes a slip, the likeliest first; the right one where it does not come in. */
export type Procedures = ReadonlyMap<SlipId, (problem: NumberProblem) => number[]>;

/** How near a length must lie to one that a slip gives: makers round on the way. */
const AS_RECKONED = 0.02;

/**
 * The slips of a single figure, by these procedures.
 *
 * @param followUps other problems on which they can be told apart, smallest first
 */
export function slipsBy(
  procedures: Procedures,
  followUps: (problem: NumberProblem) => Iterable<NumberProblem>,
): Slips<'number'> {
  const every = (problem: NumberProblem, [slip, other]: SlipSet): NumberSolution[] =>
    other === undefined ? (procedures.get(slip)?.(problem) ?? []).map((figure) => ({ figure })) : [];
  function singles(problem: NumberProblem): Slipped<NumberSolution>[] {
    const truth = solve(problem).figure;
    return [...procedures].flatMap(([slip, figures]) =>
      [...new Set(figures(problem))]
        .filter((figure) => !isNear(problem, figure, truth, toleranceOf(problem)))
        .map((figure) => ({ slips: [slip] as const, answer: { figure } })),
    );
  }
  return {
    missteps: Object.fromEntries(
      [...procedures].map(([slip, figures]) => [
        slip,
        (problem: NumberProblem): NumberSolution => ({ figure: figures(problem)[0] ?? solve(problem).figure }),
      ]),
    ),
    every,
    singles,
    pairs: () => [],
    like: (problem, answer) => {
      const reading = readWhole(answer?.figure);
      return ({ figure }) => reading.verdict === 'read' && isNear(problem, reading.value, figure, AS_RECKONED);
    },
    figuresIn: (_, answer) => (readWhole(answer?.figure).verdict === 'read' ? 1 : 0),
    followUps,
  };
}
