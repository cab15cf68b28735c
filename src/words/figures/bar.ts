import { count, figure } from '../numbers.ts';
import { folds, side, type Words } from './shared.ts';

/** The bar: titles, sentences, and the labels in the drawing. */
export const barWords = {
  'bar-capacity': ({ width, capacity }) =>
    `Every place of a bar that takes ${figure(capacity)} is taken; the chart is ${count(width, 'column')} wide.`,
  'bar-shared': ({ width, capacity }) =>
    `Half of the spare strings on each side, before anything is borrowed: ${count(width, 'column')} on a bar that takes ${figure(capacity)}.`,
  'bar-fitted': ({ width, capacity }) => `How ${count(width, 'column')} fit a bar that takes ${figure(capacity)}.`,
  'bar-on-bar': ({ onBar, folds: number, lone }) =>
    `On the bar ${onBar === 1 ? 'hangs' : 'hang'} ${count(onBar, 'string')}: ${count(number, 'fold')}${lone ? ' and a lone string' : ''}.`,
  'bar-empty': ({ empty, idle }) =>
    idle
      ? 'One place of the bar stays idle, at the end where row 1 ends, because width and capacity are not both even or both odd.'
      : `${count(empty, 'place')} of the bar ${empty === 1 ? 'is' : 'are'} not needed and ${empty === 1 ? 'stays' : 'stay'} empty.`,
  'bar-spare': ({ spare, strands }) =>
    `Of the ${count(strands, 'string')}, ${figure(spare)} find no place on the bar: those are the spare strings.`,
  'bar-no-spare': () => 'No string is spare, so nothing hangs beside the bar.',
  'bar-side': ({ strings, folds: number, over, ...values }) =>
    `On the ${side(values)}, ${count(strings, 'string')} through the ring beside the bar: ${
      over
        ? `${number === 0 ? 'no fold, only one string' : `${count(number, 'fold')} and one string over`}. A fold gives two strings, so ${number === 0 ? 'this one' : 'the one over'} has no partner.`
        : `${count(number, 'fold')}, every string with its partner.`
    }`,
  'bar-borrowed': ({ borrowed, left, right }) =>
    left === 1 && right === 1
      ? 'Two places of the bar are given up, one at each end: those two strings hang beside the bar, one on each side, so that each side is even.'
      : `${count(borrowed, 'place')} of the bar ${borrowed === 1 ? 'is' : 'are'} given up: ${figure(left)} on the left and ${figure(right)} on the right.`,
  'bar-carried': (values) =>
    `One strand of the ${side(values)} side is a carried end: it rides in the bundle and has no column.`,
  'label-bar-takes': ({ capacity }) => `bar takes ${figure(capacity)}`,
  'label-on-bar': ({ onBar }) => `${figure(onBar)} on the bar`,
  'label-strings': ({ strings }) => count(strings, 'string'),
  'label-folds': folds,
  'label-spare': ({ spare }) => `${figure(spare)} spare`,
  'label-borrowed': ({ borrowed }) => `${figure(borrowed)} borrowed`,
  'label-empty': ({ empty, idle }) => `${figure(empty)} ${idle ? 'idle' : 'empty'}`,
  'label-carried': () => '1 carried end',
} satisfies Words;
