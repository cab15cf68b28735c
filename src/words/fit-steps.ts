import type { FitStep, FitStepKey } from '../solver/fit.ts';
import { count, figure, noun, type Values } from './numbers.ts';

type Say = (values: Values) => string;

/** Each step of the fitting sum as a maker says it, with its reason. */
const SAYS: Readonly<Record<FitStepKey, Say>> = {
  'all-on-bar': ({ width, capacity }) =>
    `The chart is ${count(width, 'column')} wide and the bar takes ${figure(capacity)}. So every string finds a place on the bar.`,
  'carried-end': ({ width, strands }) =>
    `Folds make strings come in twos, so ${count(width, 'column')} need ${figure(strands)} ends. The one too many is the carried end: it rides along inside a bundle.`,
  'idle-place': ({ capacity, places }) =>
    `With all ${figure(capacity)} places in use, an odd number of strings would be spare. Spare strings hang in folds, two at a time. So one place on the bar stays idle, and ${figure(places)} are used.`,
  spare: ({ width, places, spare }) =>
    `Of ${count(width, 'string')}, ${figure(places)} find a place on the bar. The other ${figure(spare)} are spare.`,
  halved: ({ half }) =>
    half === 0
      ? 'With nothing spare, nothing hangs beside the bar.'
      : `Half of the spare strings hang at each end of the bar: ${figure(half)} on each side.`,
  'half-even': ({ half }) =>
    half === 0
      ? 'Nothing on each side counts as even.'
      : `${figure(half)} is even, so it can be made of folds, which are two strings each. You need to borrow nothing.`,
  'half-odd': ({ half }) =>
    `${figure(half)} is odd. A fold is two strings, so one string on each side is left without a partner.`,
  'borrow-two': ({ onBar, bundle }) =>
    `Each side lacks one string. The chart has none to give, so borrow two from the bar, one for each side. Now each side has ${figure(bundle)}, which is even, and ${figure(onBar)} stay on the bar.`,
  'nothing-left-on-bar': ({ places, left }) =>
    places === left
      ? `Only ${count(places, 'string')} would hang on the bar. At least two have to.`
      : `The bar has ${count(places, 'place')} to use. If it lent two of them, fewer than two strings would hang on it, and at least two have to.`,
  'bundle-over-most': ({ bundle, most }) =>
    `Each side would be a bundle of ${figure(bundle)} strings. That is too thick: the most is ${figure(most)}.`,
  'on-bar': ({ onBar }) => `So ${count(onBar, 'string')} hang on the bar.`,
  'folds-on-bar': ({ folds, loneStrings }) =>
    `Two strings make one fold. That is ${count(folds, 'fold')}${loneStrings === 0 ? '' : ', and one string over'}. Each fold is fixed with a lark’s head.`,
  'lone-string': () =>
    'The string that is over is the lone string. It is fixed on the bar by itself, beside the folds, and its tail is hidden at the back.',
  'carry-side': ({ side, columns, strands }) =>
    `The carried end rides in the ${side} bundle, where row 1 ends. That bundle has ${count(strands, 'string')}, but counts as ${count(columns, 'column')}.`,
  'folds-each-side': ({ bundle, folds }) =>
    bundle === 0
      ? 'There are no side bundles, so no folds hang beside the bar.'
      : `A bundle of ${figure(bundle)} is made of ${count(folds, 'fold')}. So ${figure(folds)} ${noun(folds, 'hangs', 'hang')} on each side, looped through the ring.`,
  'first-row': ({ onBar, bundles, knots }) =>
    bundles === 0
      ? `The first row has ${count(knots, 'knot')}, one on each string.`
      : `One knot holds a whole bundle, so each bundle counts as one knot. With ${figure(onBar)} on the bar, the first row has ${count(knots, 'knot')}.`,
  'full-width': ({ row, width }) =>
    row === 1
      ? `The piece has its full width of ${count(width, 'column')} from row 1.`
      : `Let one string out on each side in every row. Then row ${figure(row)} is the first with all ${count(width, 'column')}.`,
};

const equation =
  (left: string, sign: '+' | '−' | '÷', right: string | number, result: string): Say =>
  (values) =>
    `${figure(values[left])} ${sign} ${figure(typeof right === 'number' ? right : values[right])} = ${figure(values[result])}`;

const SUMS: Readonly<Partial<Record<FitStepKey, Say>>> = {
  'carried-end': equation('width', '+', 1, 'strands'),
  'idle-place': equation('capacity', '−', 1, 'places'),
  spare: equation('width', '−', 'places', 'spare'),
  halved: equation('spare', '÷', 2, 'half'),
  'borrow-two': (v) => `${equation('places', '−', 2, 'onBar')(v)} and ${equation('half', '+', 1, 'bundle')(v)}`,
  'folds-on-bar': ({ onBar, folds, loneStrings }) =>
    `${loneStrings === 0 ? figure(onBar) : `(${figure(onBar)} − 1)`} ÷ 2 = ${figure(folds)}`,
  'folds-each-side': equation('bundle', '÷', 2, 'folds'),
  'first-row': (v) => (v['bundles'] === 0 ? '' : equation('onBar', '+', 'bundles', 'knots')(v)),
};

/** One step of the fitting sum, in one to three short sentences. */
export const fitStepWords = ({ key, values }: FitStep): string => SAYS[key](values);

/** The step's sum in figures, '26 − 16 = 10'; empty where a step has none. */
export const fitStepSum = ({ key, values }: FitStep): string => SUMS[key]?.(values) ?? '';

/** A whole working: each step's sum, and what it says. */
export const fitWorking = (steps: readonly FitStep[]): { readonly sum: string; readonly text: string }[] =>
  steps.map((step) => ({ sum: fitStepSum(step), text: fitStepWords(step) }));
