import { count, figure } from '../numbers.ts';
import { folds, type Words } from './shared.ts';

/** Why an odd side can't be made of folds. */
export const foldsWhyFigureWords = {
  'folds-why': ({ odd, even }) =>
    `Why a side of ${figure(odd)} can’t be made of folds, and a side of ${figure(even)} can.`,
  'folds-why-one': () => 'One cut string, folded in half over the ring, gives two base strings.',
  'folds-why-over': () => 'One half of the fold hangs before the ring’s wire and the other behind it.',
  'folds-why-odd': ({ strings, folds: number }) =>
    `A side of ${figure(strings)} would be ${number === 0 ? 'a single string' : `${count(number, 'fold')} and one string over`}, which has no partner.`,
  'folds-why-even': ({ strings, folds: number }) =>
    `A side of ${figure(strings)} is ${count(number, 'fold')}, and every string has its partner.`,
  'label-one-string': () => 'one cut string',
  'label-two-ends': ({ strings }) => `folded: ${count(strings, 'string')}`,
  'label-side-of': ({ strings }) => `a side of ${figure(strings)}`,
  'label-side-folds': folds,
} satisfies Words;
