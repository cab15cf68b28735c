import type { MeasureQuestion, SwatchQuestion, TurnsQuestion } from '../../solver/exercises/number/problem.ts';
import type { MeasuringSlip } from '../../solver/missteps/measuring.ts';
import { count, figure } from '../numbers.ts';
import type { SlipText } from './slip-text.ts';

/** A question about a ring, and the columns the learner entered. */
export interface SlippedCapacity {
  readonly question: MeasureQuestion;
  readonly mine: number;
}

/** A figure that only one of the two questions states. */
const stated = (question: MeasureQuestion, name: Exclude<keyof TurnsQuestion | keyof SwatchQuestion, 'kind'>) =>
  (question as Partial<Record<typeof name, number | string>>)[name];

export const MEASURING_WORDS: Readonly<Record<MeasuringSlip, (slipped: SlippedCapacity) => SlipText>> = {
  'rounded-up': ({ mine, question }) => ({
    did: `rounded up to ${figure(mine)}`,
    why: `The last of these columns has only a part of its place on a bar of ${figure(question.barWidth)} mm. It would push the others together, and the knots would stack.`,
    next: 'Leave out whatever is less than a whole column.',
  }),
  'other-end-of-range': ({ question }) => ({
    did: `took the narrow columns, ${figure(stated(question, 'narrowest'))} times as wide as the cord`,
    why: 'Of narrow columns more find room. That is the most the bar may take, and not the least.',
    next: `Take the wide ones, ${figure(stated(question, 'widest'))} times as wide as the cord.`,
  }),
  'turns-not-divided': ({ question }) => ({
    did: `took the cord to be ${figure(stated(question, 'tenTurns'))} mm thick`,
    why: 'That is what ten turns take side by side. One turn takes a tenth of it.',
    next: 'Divide by ten first.',
  }),
  'knots-as-thin-as-cord': ({ mine }) => ({
    did: `counted how many cords lie side by side on the bar, ${figure(mine)} of them`,
    why: 'A knot goes round its base string, so a column of knots is wider than the cord alone.',
    next: 'First find how wide one column of knots comes out.',
  }),
  'swatch-turned-round': ({ question }) => ({
    did: 'divided the knots by the millimetres of the swatch',
    why: `That says how much of a knot there is in one millimetre. You want to know how wide one of the ${count(stated(question, 'knots'), 'knot')} is.`,
    next: `Divide the other way round: ${figure(stated(question, 'swatchWidth'))} mm by the knots.`,
  }),
};
