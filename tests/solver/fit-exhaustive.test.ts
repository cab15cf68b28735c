import { beforeAll, describe, expect, test } from 'vitest';
import {
  type Fit,
  type FitStepKey,
  fitPiece,
  type OddMethod,
  type Side,
  type SideName,
} from '../../src/solver/index.ts';
import { type Answer, alternativesOf, type Figures, levelBundle, strandLimit, tryEverySplit } from './worlds.ts';

/**
 * All widths 2 to 120 on all capacities 2 to 60 with all bundle limits 2 to 16, by both ways of
 * dealing with an odd string, begun on either side: the solver against a maker who tries every split.
 */
const widest = 120;
const mostPlaces = 60;
const thickest = 16;
const methods: readonly OddMethod[] = ['lone-string', 'carried-end'];
const sides: readonly SideName[] = ['left', 'right'];

function* everyCase(): Generator<Figures> {
  for (let width = 2; width <= widest; width++)
    for (let capacity = 2; capacity <= mostPlaces; capacity++)
      for (let maxBundle = 2; maxBundle <= thickest; maxBundle++)
        for (const oddMethod of methods)
          for (const startSide of sides) {
            // With an even width no string is odd: only the greatest width named depends on the method, nothing on the side.
            if (width % 2 === 0 && (oddMethod === 'carried-end') !== (startSide === 'right')) continue;
            yield { width, capacity, maxBundle, oddMethod, startSide };
          }
}

const figuresOfAFit = [
  'width',
  'capacity',
  'onBar',
  'folds',
  'loneStrings',
  'borrowed',
  'idle',
  'firstRowKnots',
  'rowsToFullWidth',
  'maxBundle',
  'oddMethod',
  'carrySide',
  'level',
] as const satisfies readonly (keyof Fit)[];
const figuresOfASide = ['columns', 'strands', 'folds'] as const;

const sameSide = (a: Side, b: Side): boolean =>
  a.columns === b.columns && a.strands === b.strands && a.folds === b.folds;
const same = (a: Fit, b: Fit): boolean =>
  a.width === b.width &&
  a.capacity === b.capacity &&
  a.onBar === b.onBar &&
  a.folds === b.folds &&
  a.loneStrings === b.loneStrings &&
  a.borrowed === b.borrowed &&
  a.idle === b.idle &&
  a.firstRowKnots === b.firstRowKnots &&
  a.rowsToFullWidth === b.rowsToFullWidth &&
  a.maxBundle === b.maxBundle &&
  a.oddMethod === b.oddMethod &&
  a.carrySide === b.carrySide &&
  a.level === b.level &&
  sameSide(a.left, b.left) &&
  sameSide(a.right, b.right);

/** The first figure in which two fits differ, or null. Written out first: looking figures up by name takes long. */
function difference(got: Fit, wanted: Fit): string | null {
  if (same(got, wanted)) return null;
  for (const name of figuresOfAFit) if (got[name] !== wanted[name]) return `${name} ${got[name]}, not ${wanted[name]}`;
  for (const side of sides)
    for (const name of figuresOfASide)
      if (got[side][name] !== wanted[side][name])
        return `${side}.${name} ${got[side][name]}, not ${wanted[side][name]}`;
  return 'some figure';
}

const works = (width: number, capacity: number, { maxBundle, oddMethod }: Figures): boolean => {
  const bundle = levelBundle(width, capacity, oddMethod);
  return bundle !== null && bundle <= strandLimit(maxBundle);
};

/** One number for what stays as entered while the width or the capacity is looked for. */
const kept = (figure: number, { maxBundle, oddMethod }: Figures): number =>
  (figure * 100 + strandLimit(maxBundle)) * 2 + (oddMethod === 'lone-string' ? 0 : 1);

const greatest = new Map<number, number>();
/** The greatest width up to 400 that works with all else as entered, found by trying them from the top. */
function greatestWidth(figures: Figures): number {
  const key = kept(figures.capacity, figures);
  let width = greatest.get(key) ?? 400;
  while (width >= 2 && !works(width, figures.capacity, figures)) width--;
  greatest.set(key, width);
  return width;
}
const smallest = new Map<number, number>();
/** The smallest capacity up to 400 that works with all else as entered, found by trying them from the bottom. */
function smallestCapacity(figures: Figures): number {
  const key = kept(figures.width, figures);
  let capacity = smallest.get(key) ?? 2;
  while (capacity <= 400 && !works(figures.width, capacity, figures)) capacity++;
  smallest.set(key, capacity);
  return capacity;
}

type Given = ReturnType<typeof fitPiece>;
/** What is wrong with what was given for the figures, or null. */
type Check = (given: Given, wanted: Answer, figures: Figures) => string | null;

const outcomeOf = (given: Given): string => (given.ok ? 'ok' : given.problem.code);

const outcome: Check = (given, wanted) =>
  outcomeOf(given) === wanted.outcome ? null : `${outcomeOf(given)}, not ${wanted.outcome}`;

const answer: Check = (given, wanted) => (given.ok && wanted.fit !== null ? difference(given.fit, wanted.fit) : null);

const alternatives: Check = (given, wanted) => {
  const offered = alternativesOf(given);
  if (offered.length !== wanted.alternatives.length)
    return `${offered.length} of them, not ${wanted.alternatives.length}`;
  for (const [i, alternative] of wanted.alternatives.entries()) {
    const one = offered[i];
    const different = one === undefined ? 'missing' : difference(one, alternative);
    if (different !== null) return `number ${i + 1}: ${different}`;
  }
  return null;
};

const wouldWork: Check = (given, _, figures) => {
  if (given.ok) return null;
  const { code, values } = given.problem;
  const capacity = smallestCapacity(figures);
  if (values['smallestCapacity'] !== capacity)
    return `smallest capacity ${values['smallestCapacity']}, not ${capacity}`;
  if (code !== 'bundle-too-big') return null;
  const width = greatestWidth(figures);
  return values['greatestWidth'] === width ? null : `greatest width ${values['greatestWidth']}, not ${width}`;
};

/** Whether a step's own figures agree with one another, and with the steps the craft has for such figures. */
function agrees(key: FitStepKey, values: Readonly<Record<string, number | string>>): boolean {
  const of = (name: string): number => Number(values[name]);
  switch (key) {
    case 'all-on-bar':
      return of('width') <= of('capacity');
    case 'carried-end':
      return of('strands') === of('width') + 1;
    case 'idle-place':
      return of('places') === of('capacity') - 1;
    case 'spare':
      return of('spare') === of('width') - of('places') && of('spare') > 0;
    case 'halved':
      return 2 * of('half') === of('spare');
    case 'half-even':
      return of('half') % 2 === 0;
    case 'half-odd':
      return of('half') % 2 === 1;
    case 'borrow-two':
      return of('onBar') === of('places') - 2 && of('bundle') === of('half') + 1;
    case 'nothing-left-on-bar':
      return of('left') < 2;
    case 'bundle-over-most':
      return of('bundle') > of('most');
    case 'on-bar':
      return of('onBar') >= 2;
    case 'folds-on-bar':
      return 2 * of('folds') + of('loneStrings') === of('onBar');
    case 'lone-string':
      return 2 * of('folds') + 1 === of('onBar');
    case 'carry-side':
      return of('columns') === of('strands') - 1;
    case 'folds-each-side':
      return 2 * of('folds') === of('bundle');
    case 'first-row':
      return of('knots') === of('onBar') + of('bundles');
    case 'full-width':
      return of('row') >= 1;
  }
}

const sum: Check = (given, _, { width, capacity, maxBundle, startSide }) => {
  // The sum hardly depends on the limit: a thin, a common and an odd one stand for all.
  if (startSide === 'right' || (maxBundle !== 2 && maxBundle !== 8 && maxBundle !== 13)) return null;
  const working = given.ok ? given.working : 'working' in given.problem ? given.problem.working : [];
  const stated: (number | string)[] = [];
  const keys = new Set<FitStepKey>();
  for (const { key, values } of working) {
    const figures = Object.values(values);
    if (figures.length === 0) return `step "${key}" states nothing`;
    // Where two would have to be borrowed from one place, fewer than none would be left: that is the reason given.
    const least = key === 'nothing-left-on-bar' ? -1 : 0;
    if (figures.some((figure) => typeof figure === 'number' && !(Number.isInteger(figure) && figure >= least)))
      return `step "${key}": ${JSON.stringify(values)}`;
    if (!agrees(key, values)) return `step "${key}": ${JSON.stringify(values)}`;
    stated.push(...figures);
    keys.add(key);
  }
  const straight = width <= capacity;
  if (keys.has('all-on-bar') !== straight) return 'whether all is on the bar is not said';
  if (keys.has('half-even') === keys.has('half-odd') && !straight) return 'the half is neither even nor odd, or both';
  if (keys.has('half-even') && keys.has('borrow-two')) return 'two are borrowed though the half is even';
  if (!given.ok)
    return keys.has('nothing-left-on-bar') || keys.has('bundle-over-most') ? null : 'the sum does not say why not';
  const { onBar, left, firstRowKnots, rowsToFullWidth, idle, borrowed } = given.fit;
  if (keys.has('idle-place') !== (idle === 1)) return 'an idle place is not said, or said in vain';
  if (keys.has('borrow-two') !== (borrowed === 2)) return 'borrowed strings are not said, or said in vain';
  for (const figure of [onBar, firstRowKnots, rowsToFullWidth, ...(left.strands > 0 ? [left.strands, left.folds] : [])])
    if (!stated.includes(figure)) return `${figure} is stated nowhere`;
  return null;
};

const checks = { outcome, answer, alternatives, wouldWork, sum } satisfies Record<string, Check>;

describe(`each width to ${widest} on each bar to ${mostPlaces} with each bundle limit to ${thickest}`, () => {
  /** The first case, written out, in which a check finds something wrong. */
  const first: Partial<Record<keyof typeof checks, string>> = {};
  const met = { ok: 0, 'bundle-too-big': 0, 'too-narrow': 0 };

  beforeAll(() => {
    for (const figures of everyCase()) {
      const wanted = tryEverySplit(figures);
      const given = fitPiece(figures);
      met[wanted.outcome]++;
      for (const name of Object.keys(checks) as (keyof typeof checks)[]) {
        if (first[name] !== undefined) continue;
        const found = checks[name](given, wanted, figures);
        if (found !== null) first[name] = `${JSON.stringify(figures)}: ${found}`;
      }
    }
  }, 60_000);

  test('is a world in which each outcome is met many times', () =>
    expect(Math.min(...Object.values(met))).toBeGreaterThan(100));
  test('can be made so, has too big a bundle, or is too narrow, exactly as trying every split shows', () =>
    expect(first.outcome).toBeUndefined());
  test('gets the level split with most on the bar, each figure as counted from the strings', () =>
    expect(first.answer).toBeUndefined());
  test('is offered every other split within the limit, and the best by the other way, in the order of merit', () =>
    expect(first.alternatives).toBeUndefined());
  test('is told, where it cannot be made so, the smallest capacity and the greatest width that would work', () =>
    expect(first.wouldWork).toBeUndefined());
  test('gets a sum whose steps agree in themselves and with the fit, or which says why there is none', () =>
    expect(first.sum).toBeUndefined());
});
