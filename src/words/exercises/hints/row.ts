import { figure } from '../../numbers.ts';
import type { Hints } from './hint.ts';

const onward = (direction: unknown): string =>
  direction === 'rightward' ? 'from left to right' : 'from right to left';

export const ROW_HINTS: Hints<'row'> = {
  'look-row': ({ row, direction, startSide }) =>
    `Row ${figure(row)} goes ${onward(direction)}, so it begins on the ${startSide}. Look at that edge, and at where the leading string lies.`,
  'do-row': () =>
    'Begin with what moves at this edge, if anything does. Then tie the edge, the single strings one by one, and the other edge.',
  'look-start-move': ({ startSide }) =>
    `Look at the ${startSide} edge, where the row begins, and at what the question says of each side.`,
  'do-start-move': ({ start, change }) =>
    change === 'let-out'
      ? 'The innermost string of the bundle passes behind the leading string. Let it out before you tie anything.'
      : start === 1
        ? 'The edge was a single string, so the leading string lies outside. It has to get to the inner side of both edge strings, behind them.'
        : 'The next string passes behind the leading string and joins the bundle. Take it in before you tie anything.',
  'look-start-edge': ({ startSide }) =>
    `Look on which side of the ${startSide} edge the leading string lies, and on which side you need it next.`,
  'do-start-edge': () =>
    'If it lies on the inner side already, the knot has to begin there and come back there. If it lies outside a single string, an ordinary knot takes it in.',
  'look-between': ({ direction }) =>
    `Look at the way of the row, ${onward(direction)}. A knot begins where the leading string is.`,
  'do-between': () => 'Give each single string the knot that takes the leading string onwards by one.',
  'look-end-move': ({ endSide }) => `Look at the ${endSide} edge, where the row ends, before you tie its strings.`,
  'do-end-move': ({ change }) =>
    change === 'let-out'
      ? 'One string comes out here too. It gets an ordinary knot before the rest of the bundle is tied.'
      : 'One string goes in here too. Nothing has to pass behind anything: take it in, and let the last knot go round it as well.',
  'look-end-edge': ({ endSide }) =>
    `Look at how many strings are tied at the ${endSide} edge in this row, and where the next row needs the leading string.`,
  'do-end-edge': () =>
    'Round a bundle the leading string comes back to the inner side. Past a single edge string it goes on to the outside.',
};
