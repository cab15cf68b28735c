import { count, figure, type Value, type Values } from '../numbers.ts';
import type { Words } from './shared.ts';

/** How the strings are shared, and what is special about it. */
const shared = ({ left, onBar, right, lone, carried }: Values): string => {
  const odd =
    lone === 1
      ? ', one of them a lone string'
      : carried === ''
        ? ''
        : `, and one strand of the ${carried} bundle is a carried end`;
  const some = (strings: Value): string => (strings === 0 ? 'none' : figure(strings));
  const sides =
    left === right
      ? `${left === 0 ? 'none at the sides' : `${figure(left)} on each side`}`
      : `${some(left)} on the left and ${some(right)} on the right`;
  return lone === 1
    ? `${count(onBar, 'string')} on the bar${odd}, and ${sides}`
    : `${count(onBar, 'string')} on the bar${left === right ? ' and' : ','} ${sides}${odd}`;
};

/** Ways to hang the same chart. */
export const waysToHangFigureWords = {
  ways: ({ width, capacity }) =>
    `Ways to hang a chart of ${count(width, 'column')} from a bar that takes ${figure(capacity)}.`,
  'ways-answer': (values) => `The answer has ${shared(values)}.`,
  'ways-level': (values) => `Another level way has ${shared(values)}.`,
  'ways-aslant': (values) => `A lopsided way has ${shared(values)}.`,
  'ways-alone': () => 'There is no other way.',
  'label-way': ({ left, onBar, right, answer, lone, carried }) =>
    `${figure(left)} + ${figure(onBar)} + ${figure(right)}${answer === 1 ? ': the answer' : left === right ? ': level' : ': lopsided'}${lone === 1 ? ', lone string' : carried === '' ? '' : ', carried end'}`,
} satisfies Words;
