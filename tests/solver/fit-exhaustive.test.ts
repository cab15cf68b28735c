import { beforeAll, describe, expect, test } from 'vitest';
import { type Fit, fitPiece, type OddMethod, type SideName } from '../../src/solver/index.ts';
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
  'width', 'capacity', 'onBar', 'folds', 'loneStrings', 'borrowed', 'idle', 'firstRowKnots',
  'rowsToFullWidth', 'maxBundle', 'oddMethod', 'carrySide', 'level',
] as const satisfies readonly (keyof Fit)[];
const figuresOfASide = ['columns', 'strands', 'folds'] as const;

/** The first figure in which two fits differ, or null. */
function difference(got: Fit, wanted: Fit): string | null {
  for (const name of figuresOfAFit) if (got[name] !== wanted[name]) return `${name} ${got[name]}, not ${wanted[name]}`;
  for (const side of sides)
    for (const name of figuresOfASide)
      if (got[side][name] !== wanted[side][name]) return `${side}.${name} ${got[side][name]}, not ${wanted[side][name]}`;
  return null;
}

const works = (width: number, capacity: number, { maxBundle, oddMethod }: Figures): boolean => {
  const bundle = levelBundle(width, capacity, oddMethod);
  return bundle !== null && bundle <= strandLimit(maxBundle);
};

const greatest = new Map<string, number>();
/** The greatest width up to 400 that works with all else as entered, found by trying them from the top. */
function greatestWidth(figures: Figures): number {
  const key = `${figures.capacity} ${strandLimit(figures.maxBundle)} ${figures.oddMethod}`;
  let width = greatest.get(key) ?? 400;
  while (width >= 2 && !works(width, figures.capacity, figures)) width--;
  greatest.set(key, width);
  return width;
}
const smallest = new Map<string, number>();
/** The smallest capacity up to 400 that works with all else as entered, found by trying them from the bottom. */
function smallestCapacity(figures: Figures): number {
  const key = `${figures.width} ${strandLimit(figures.maxBundle)} ${figures.oddMethod}`;
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
  if (offered.length !== wanted.alternatives.length) return `${offered.length} of them, not ${wanted.alternatives.length}`;
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
  if (values['smallestCapacity'] !== capacity) return `smallest capacity ${values['smallestCapacity']}, not ${capacity}`;
  if (code !== 'bundle-too-big') return null;
  const width = greatestWidth(figures);
  return values['greatestWidth'] === width ? null : `greatest width ${values['greatestWidth']}, not ${width}`;
};

const sum: Check = (given) => {
  if (!given.ok) return null;
  const stated: (number | string)[] = [];
  for (const { key, values } of given.working) {
    const figures = Object.values(values);
    if (key.length === 0 || figures.length === 0) return `step "${key}" states nothing`;
    if (figures.some((figure) => typeof figure === 'number' && !(Number.isInteger(figure) && figure >= 0)))
      return `step "${key}": ${JSON.stringify(values)}`;
    stated.push(...figures);
  }
  const { onBar, left, firstRowKnots } = given.fit;
  for (const figure of [onBar, firstRowKnots, ...(left.strands > 0 ? [left.strands] : [])])
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
  });

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
  test('gets a sum whose steps all state figures, among them the strings on the bar, in each bundle and in row 1', () =>
    expect(first.sum).toBeUndefined());
});
