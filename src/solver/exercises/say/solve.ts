import { SAY_POINTS, type SayProblem, type SaySolution } from './problem.ts';

/** Every point of the model answer. */
export const solve = ({ topic }: SayProblem): SaySolution => ({ points: SAY_POINTS[topic] });
