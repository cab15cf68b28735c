import type { KindName } from '../../solver/exercises/contract.ts';
import type { StepKeyOf } from '../../solver/exercises/steps.ts';
import type { FitStepKey } from '../../solver/fit.ts';
import type { Step } from '../../solver/problem.ts';
import { fitStepSum, fitStepWords } from '../fit-steps.ts';
import { count, figure, noun, type Value, type Values } from '../numbers.ts';

type Say = (values: Values) => string;
/** A step in words, and its sum in figures where it has one. */
type Saying = readonly [words: Say, sum?: Say];

const NONE: Say = () => '';

/** A step that `fitPiece` has as well is said as there. */
const asInFit = (key: FitStepKey): Saying => [
  (values) => fitStepWords({ key, values }),
  (values) => fitStepSum({ key, values }),
];

const both = (left: Value, right: Value): string =>
  left === right ? `${figure(left)} on each side` : `${figure(left)} on the left and ${figure(right)} on the right`;

const stepsOf = (step: Value): string => (step === 1 ? '' : `${figure(step)} × `);

const firstClosing: Saying = [
  ({ height, bundle, step, takenIn, row }) =>
    `To end with a bundle of ${figure(bundle)}, ${count(takenIn, 'string')} ${noun(takenIn, 'is', 'are')} taken in on each side${step === 1 ? ', one in each row' : `, one every ${figure(step)} rows`}. Row ${figure(height)} is the last of these rows, so closing begins in row ${figure(row)}.`,
  ({ height, step, takenIn, row }) => `${figure(height)} − ${stepsOf(step)}${figure(takenIn)} + 1 = ${figure(row)}`,
];

const SUM: Readonly<Record<StepKeyOf<'sum'>, Saying>> = {
  'all-on-bar': asInFit('all-on-bar'),
  'carried-end': asInFit('carried-end'),
  'idle-place': asInFit('idle-place'),
  'no-idle-place': [
    ({ width, capacity }) =>
      `${count(width, 'string')} and ${count(capacity, 'place')} are both ${Number(width) % 2 === 0 ? 'even' : 'odd'} numbers. So all ${figure(capacity)} places are used.`,
  ],
  spare: asInFit('spare'),
  'nothing-spare': [({ width }) => `All ${count(width, 'string')} find a place. Nothing is spare.`],
  halved: asInFit('halved'),
  'half-even': asInFit('half-even'),
  'half-odd': asInFit('half-odd'),
  'borrow-two': asInFit('borrow-two'),
  'nothing-to-borrow': [() => 'Nothing has to be borrowed from the bar.'],
  'on-bar': asInFit('on-bar'),
  bundle: [
    ({ bundle }) => (bundle === 0 ? 'There are no side bundles.' : `Each side bundle has ${count(bundle, 'string')}.`),
    ({ half, added, bundle }) => (bundle === 0 ? '' : `${figure(half)} + ${figure(added)} = ${figure(bundle)}`),
  ],
  'folds-on-bar': asInFit('folds-on-bar'),
  'lone-string': asInFit('lone-string'),
  'folds-each-side': asInFit('folds-each-side'),
  'first-row': asInFit('first-row'),
  'full-width': asInFit('full-width'),
};

const NUMBER: Readonly<Record<Exclude<StepKeyOf<'number'>, StepKeyOf<'sum'>>, Saying>> = {
  'folds-to-cut': [
    ({ foldsOnBar, foldsEachSide, folds }) =>
      `With ${count(foldsOnBar, 'fold')} on the bar and ${figure(foldsEachSide)} on each side, you cut ${figure(folds)} in all.`,
    ({ foldsOnBar, foldsEachSide, folds }) =>
      `${figure(foldsOnBar)} + ${figure(foldsEachSide)} + ${figure(foldsEachSide)} = ${figure(folds)}`,
  ],
  'row-opening': [
    ({ row, mountedLeft, mountedRight, letOut, left, right }) =>
      row === 1
        ? `Row 1 lets nothing out. The bundles are as they were hung: ${both(left, right)}.`
        : `The bundles begin with ${both(mountedLeft, mountedRight)}, and row 1 lets nothing out. By row ${figure(row)} it is time for ${count(letOut, 'string')} on each side to be out. That leaves ${both(left, right)}.`,
  ],
  'row-closing': [
    ({ row, height, closingLeft, closingRight, rowsAfter, stillOut, left, right }) =>
      rowsAfter === 0
        ? `Row ${figure(height)} is the last row. It has its whole bundles: ${both(left, right)}.`
        : `The last row, row ${figure(height)}, has bundles of ${both(closingLeft, closingRight)}. Row ${figure(row)} comes ${count(rowsAfter, 'row')} before it, so ${count(stillOut, 'string')} on each side ${noun(stillOut, 'is', 'are')} not taken in yet. That leaves ${both(left, right)}.`,
  ],
  'row-at-full-width': [
    ({ row, fullWidthRow }) =>
      `Row ${figure(row)} has full width. All strings are out since row ${figure(fullWidthRow)}, and none is taken in yet, so each edge is a single string.`,
  ],
  'bundle-in-row': [
    ({ row, side, bundle }) =>
      `In row ${figure(row)}, ${count(bundle, 'string')} ${noun(bundle, 'is', 'are')} tied as one ${side === 'both' ? 'at each edge' : `at the ${side} edge`}.`,
  ],
  'knots-in-row': [
    ({ row, width, outside, knots }) =>
      outside === 0
        ? `Every column of row ${figure(row)} has its knot: ${figure(knots)}.`
        : `${count(outside, 'column')} of row ${figure(row)} ${noun(outside, 'lies', 'lie')} outside the knots of the bundles. The rest of the ${figure(width)} have one knot each: ${figure(knots)}.`,
    ({ width, outside, knots }) => `${figure(width)} − ${figure(outside)} = ${figure(knots)}`,
  ],
  'corner-cells-in-row': [
    ({ row, left, right, cells }) =>
      `Each side has one corner cell fewer than its bundle has strings. In row ${figure(row)} that is ${both(left, right)}, so ${figure(cells)} together.`,
    ({ left, right, cells }) => `${figure(left)} + ${figure(right)} = ${figure(cells)}`,
  ],
  'full-width-row': [
    ({ bundle, step, letOut, row }) =>
      letOut === 0
        ? 'Nothing has to be let out, so row 1 has full width already.'
        : `A bundle of ${figure(bundle)} lets out ${count(letOut, 'string')} until one is left. After row 1 one comes out ${step === 1 ? 'in every row' : `every ${figure(step)} rows`}, so row ${figure(row)} is the first of full width.`,
    ({ step, letOut, row }) => (letOut === 0 ? '' : `1 + ${stepsOf(step)}${figure(letOut)} = ${figure(row)}`),
  ],
  'first-closing-row': firstClosing,
  'corner-cells': [
    ({ rows, cells }) =>
      rows === 1
        ? `Only row 1 comes before full width. It has ${count(cells, 'corner cell')}.`
        : `Add up the ${count(rows, 'row')} before full width. Together they have ${count(cells, 'corner cell')}.`,
  ],
  'rows-long': [
    ({ height, rowPitch, takeUp, rows }) =>
      `${count(height, 'row')} of ${figure(rowPitch)} mm, times ${figure(takeUp)}, use about ${figure(rows)} mm of each end.`,
  ],
  'one-end': [
    ({ mountingAndFinishing, tail, end }) =>
      `Add ${figure(mountingAndFinishing)} mm for mounting and finishing, and ${figure(tail)} mm to hold. One end is ${figure(end)} mm.`,
    ({ rows, mountingAndFinishing, tail, end }) =>
      `${figure(rows)} + ${figure(mountingAndFinishing)} + ${figure(tail)} = ${figure(end)}`,
  ],
  'both-ends': [
    ({ ends, length }) =>
      `A fold has two ends, which take ${figure(ends)} mm. Rounded up to the next 5 mm, cut ${figure(length)} mm.`,
    ({ end, ends }) => `2 × ${figure(end)} = ${figure(ends)}`,
  ],
  'lone-end': [
    ({ length }) => `A lone string has only one end. Rounded up to the next 5 mm, cut ${figure(length)} mm.`,
  ],
  'folds-from-strings': [
    ({ baseStrings, folds }) =>
      `One fold gives two strings, so ${count(baseStrings, 'string')} need ${count(folds, 'fold')}.`,
    ({ baseStrings, folds }) => `${figure(baseStrings)} ÷ 2 = ${figure(folds)}`,
  ],
  'base-string-in-all': [
    ({ folds, foldLength, length }) =>
      `${count(folds, 'fold')} of ${figure(foldLength)} mm ${noun(folds, 'takes', 'take')} ${figure(length)} mm of string.`,
    ({ folds, foldLength, length }) => `${figure(folds)} × ${figure(foldLength)} = ${figure(length)}`,
  ],
};

const edge = (strings: Value, side: string, column: Value): string =>
  `on the ${side}, ${count(strings, 'string')} ${noun(strings, 'is', 'are')} tied in column ${figure(column)}`;

const MARK: Readonly<Record<StepKeyOf<'mark'>, Saying>> = {
  'row-corner-cells': [
    ({ row, left, right, cornersLeft, cornersRight }) =>
      `Row ${figure(row)} ties ${both(left, right)} as one, in the innermost column of each. Outside these columns the corner cells are ${both(cornersLeft, cornersRight)}.`,
  ],
  'row-bundle-knots': [
    ({ row, left, right, columnLeft, columnRight }) =>
      `A bundle’s knot stands in its innermost column. In row ${figure(row)}, ${edge(left, 'left', columnLeft)}, and ${edge(right, 'right', columnRight)}.`,
  ],
  'first-closing-row': firstClosing,
};

const STEPS: { readonly [K in KindName]: Readonly<Record<StepKeyOf<K>, Saying>> } = {
  sum: SUM,
  number: { ...SUM, ...NUMBER },
  mark: MARK,
};

function saying<K extends KindName>(kind: K, key: StepKeyOf<K>): Saying {
  const says: Readonly<Record<StepKeyOf<K>, Saying>> = STEPS[kind];
  return says[key];
}

/** One step of a worked solution, in one to three sentences. */
export const stepWords = <K extends KindName>(kind: K, { key, values }: Step<StepKeyOf<K>>): string =>
  saying(kind, key)[0](values);

/** The step's sum in figures, '32 − 5 + 1 = 28'; empty where a step has none. */
export const stepSum = <K extends KindName>(kind: K, { key, values }: Step<StepKeyOf<K>>): string =>
  (saying(kind, key)[1] ?? NONE)(values);
