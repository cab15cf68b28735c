import type { RowStepKey } from '../../../solver/exercises/row/solution.ts';
import { count, figure, type Value, type Values } from '../../numbers.ts';
import type { Saying } from './saying.ts';

const moving = ({ side, from, to }: Values): string => figure(side === 'left' ? to : from);

const turns = (act: Value): boolean => String(act).includes('-');

const lead = ({ at, width }: Values): string =>
  at === 0
    ? 'left of all strings'
    : at === width
      ? 'right of all strings'
      : `between strings ${figure(at)} and ${figure(Number(at) + 1)}`;

const edge = ({ side, bundle }: Values): string =>
  bundle === 1 ? `the single string at the ${side} edge` : `all ${figure(bundle)} strings at the ${side} edge`;

/** The steps of a row as it is tied. */
export const TYING_STEPS: Readonly<Record<RowStepKey, Saying>> = {
  'tie-start-move': [
    (values) =>
      values['act'] === 'carry-behind'
        ? `Carry the leading string behind the two edge strings on the ${values['side']}, to their inner side. They are a bundle now.`
        : values['act'] === 'let-out'
          ? `Let one string out on the ${values['side']}: string ${moving(values)} passes behind the leading string to the inner side.`
          : `Take one string in on the ${values['side']}: string ${moving(values)} passes behind the leading string and joins the bundle.`,
  ],
  'tie-start-edge': [
    (values) =>
      turns(values['act'])
        ? `Tie a ${values['act']} knot round ${edge(values)}. It begins on the inner side and comes back there, so the leading string is ${lead(values)}.`
        : `Tie a ${values['act']} knot round ${edge(values)}. It takes the leading string in, to a place ${lead(values)}.`,
  ],
  'tie-between': [
    (values) =>
      `Tie ${count(values['count'], `${values['act']} knot`)}, one on each single string on the way to the other edge.`,
  ],
  'tie-end-move': [
    (values) =>
      values['act'] === 'let-out'
        ? `Before the edge on the ${values['side']} is tied, let string ${moving(values)} out of it. It gets the last of these knots.`
        : `Take string ${moving(values)} in on the ${values['side']}. Nothing passes behind anything: the last knot goes round it as well.`,
  ],
  'tie-end-edge': [
    (values) =>
      turns(values['act'])
        ? `Tie a ${values['act']} knot round ${edge(values)}. The leading string comes back and rests ${lead(values)}.`
        : `Tie a ${values['act']} knot round ${edge(values)}. The leading string rests ${lead(values)}, ready for the row back.`,
  ],
};
