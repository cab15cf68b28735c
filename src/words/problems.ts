import type { Problem, ProblemCode } from '../solver/problem.ts';
import { choiceWord } from './choices.ts';
import { fieldName, isLength } from './fields.ts';
import { capital, count, figure, list, type Value, type Values } from './numbers.ts';
import { length, type UnitSystem } from './units.ts';

export interface ProblemWording {
  /** In which units lengths are said; metric when left out. */
  readonly units?: UnitSystem | undefined;
  /** How a form names the field, where that is not what the solver's own name means there. */
  readonly name?: string | undefined;
  /** Whether the form takes it as a length, where the solver's own name does not say so. */
  readonly isLength?: boolean | undefined;
}

type Say = (values: Values, problem: Problem, wording: ProblemWording) => string;

const isEmpty = (entered: Problem['entered']): boolean =>
  entered === undefined || entered === null || entered === '' || (typeof entered === 'number' && Number.isNaN(entered));

/** A figure of the problem's field, with its unit where it is a length. */
const inField = ({ field }: Problem, { units = 'metric', ...wording }: ProblemWording, value: Value): string =>
  typeof value === 'number' && (wording.isLength ?? isLength(field)) ? length(value, units) : figure(value);

const named = (problem: Problem, wording: ProblemWording): string =>
  (wording.name ?? fieldName(problem.field)) + (problem.row === undefined ? '' : ` in row ${problem.row}`);

/** What was entered, quoted when it is no number; or that nothing was. */
function entered(problem: Problem, wording: ProblemWording): string {
  const { entered: value } = problem;
  const name = named(problem, wording);
  if (isEmpty(value)) return `${capital(name)} is still empty.`;
  return `You entered ${typeof value === 'number' ? inField(problem, wording, value) : `“${value}”`} for ${name}.`;
}

const range = (values: Values, problem: Problem, wording: ProblemWording): string =>
  `from ${inField(problem, wording, values['low'])} to ${inField(problem, wording, values['high'])}`;

const widest = ({ greatestWidth }: Values): string =>
  `The widest chart that works on this bar has ${count(greatestWidth, 'column')}.`;

const SAYS: Readonly<Record<ProblemCode, Say>> = {
  'not-a-whole-number': (v, p, w) => `${entered(p, w)} It has to be a whole number ${range(v, p, w)}.`,
  'not-a-number': (v, p, w) => `${entered(p, w)} It has to be a number ${range(v, p, w)}.`,
  'out-of-range': (v, p, w) => {
    const small = typeof p.entered === 'number' && p.entered < Number(v['low']);
    return `${entered(p, w)} That is too ${small ? 'small' : 'big'}. Anything ${range(v, p, w)} works.`;
  },
  'unknown-choice': ({ choices }, p, w) =>
    `${entered(p, w)} Choose ${list(String(choices).split(', ').map(choiceWord), 'or')}.`,
  'bundle-too-big': (v) =>
    `A chart ${count(v['width'], 'column')} wide on a bar that takes ${figure(v['capacity'])} needs side bundles of ${figure(v['bundle'])}. The most you allow is ${figure(v['maxBundle'])}. The smallest bar that works for this chart takes ${figure(v['smallestCapacity'])}. ${widest(v)}`,
  'too-narrow': (v) =>
    `The bar takes ${figure(v['capacity'])}, which is too narrow for ${count(v['width'], 'column')}: fewer than two strings would be left on it. The smallest bar that works for this chart takes ${figure(v['smallestCapacity'])}. ${widest(v)}`,
  'closing-too-big': ({ closingBundle, largest }) =>
    `You asked for bundles of ${figure(closingBundle)} in the last row. This piece can close to ${figure(largest)} at most. A bundle may not get too thick, and two single strings must be left to finish with.`,
  'too-short': ({ height, closingBundle, shortestHeight }) =>
    `In ${count(height, 'row')} this piece can’t close to bundles of ${figure(closingBundle)}: row 1 would need bigger bundles than you hang on it. It works with ${count(shortestHeight, 'row')} or more, or with smaller bundles in the last row.`,
  'never-full-width': ({ height, shortestHeight }) =>
    `With ${count(height, 'row')} this piece never gets its full width, because closing begins before all strings are out. It gets there with ${count(shortestHeight, 'row')} or more. You can also make it as it is.`,
  'no-rows': () => 'There are no rows yet. A piece has at least one row, and 1000 at most.',
  'sides-differ-in-length': ({ left, right, rows }) =>
    `The left side is planned for ${count(left, 'row')} and the right side for ${count(right, 'row')}. Both need one bundle for every row${rows === undefined ? '' : `, and there are ${figure(rows)}`}.`,
  'not-what-was-mounted': ({ side, size, mounted }) =>
    `Row 1 has ${figure(size)} at the ${side} edge, but ${count(mounted, 'string')} hang there. Row 1 always begins with what hangs on that side: ${figure(mounted)}.`,
  'changes-by-more-than-one': ({ side, size, before }, { row }) => {
    const sizes = [Number(before) - 1, Number(before), Number(before) + 1].filter((fits) => fits > 0);
    return `In row ${figure(row)} the ${side} bundle goes from ${figure(before)} to ${figure(size)}. Only one string can come out or go in per row, so ${list(sizes.map(String), 'or')} works here.`;
  },
  'bundles-exceed-width': ({ held, width, most }, { row }) =>
    `In row ${figure(row)} the two bundles hold ${count(held, 'string')}, but the piece has only ${figure(width)}. Together they may hold ${figure(most)}.`,
  'no-strings-to-finish-with': ({ held, width, most }) =>
    `In the last row the two bundles hold ${figure(held)} of ${count(width, 'string')}. Too few are left between them to finish with. Together they may hold ${figure(most)}.`,
  'chart-size-differs': ({ chartWidth, chartHeight, width, height }) =>
    `The chart is ${count(chartWidth, 'column')} by ${count(chartHeight, 'row')}, but the piece is planned for ${figure(width)} by ${figure(height)}. Plan the piece again for this chart, or take a chart of that size.`,
  hole: (_, { row }) =>
    `Row ${figure(row)} of the shape has no cell in it. A piece needs a knot in every row, so fill at least one cell there.`,
  'no-fit': () => 'The strings are not shared out yet. First enter the width of your chart and what your bar takes.',
  'no-chart': () => 'There is no chart here yet. Choose one from the list, or draw your own.',
  'chart-mistake': (_, problem) => {
    const { line, column } = problem as Problem & { line?: number; column?: number };
    const where = line === undefined ? '' : ` because of line ${line}, character ${column ?? 1}`;
    return `The chart can’t be read${where}. Put that right and try again.`;
  },
};

/**
 * What is wrong with a person's figures, in two to four short sentences: what was entered, what is wrong
 * with it, and what would work. A mistake in a chart's text is told by its place only; `chart-words.ts` has
 * the sentence for each.
 */
export const problemWords = (problem: Problem, wording: ProblemWording = {}): string =>
  SAYS[problem.code](problem.values, problem, wording);
