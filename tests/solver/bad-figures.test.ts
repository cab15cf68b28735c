import { describe, expect, test } from 'vitest';
import * as solver from '../../src/solver/index.ts';
import { placesOfNaN, problemOf } from './matchers.ts';

/**
 * What comes out of a form, a saved file or a slip of the hand instead of a figure. Every function
 * that takes a person's figures answers with a problem and with what would work; none throws.
 */

/** Things that are no figure the craft can use, each with its name for a test's report. */
const bad: readonly (readonly [name: string, value: unknown])[] = [
  ['not a number', Number.NaN],
  ['two and a half', 2.5],
  ['minus three', -3],
  ['a numeral in text', '12'],
  ['nothing', null],
  ['a thousand million', 1e9],
  ['no end', Number.POSITIVE_INFINITY],
  ['an object', {}],
  ['a list', []],
  ['yes', true],
];

/** Answers a call with figures that no type would let through. */
type Call = (figures: never) => unknown;
const asked = (call: Call, figures: unknown): unknown => call(figures as never);

const fitted = solver.fitPiece({ width: 12, capacity: 8 });
if (!fitted.ok) throw new Error('the evening’s piece has no fit');
const { fit } = fitted;
const bundles = { left: [2, 1, 1, 2], right: [2, 1, 1, 2] };
const chart: solver.Chart = {
  width: 12,
  height: 4,
  palette: [{ name: 'tar', colour: '#222222' }],
  cells: new Uint8Array(48),
};

/** Each figure of a set of figures, by its path, and a copy of the set with that figure replaced. */
function replaced(figures: unknown, path: readonly string[], value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const copy: Record<string, unknown> = Array.isArray(figures)
    ? ([...figures] as unknown[] as unknown as Record<string, unknown>)
    : { ...(figures as Record<string, unknown>) };
  copy[key] = replaced(copy[key], rest, value);
  return copy;
}
function without(figures: Record<string, unknown>, key: string): unknown {
  const { [key]: _, ...rest } = figures;
  return rest;
}

interface Taken {
  readonly name: string;
  readonly call: Call;
  /** Figures that work. */
  readonly figures: Record<string, unknown>;
  /** Figures that must be there: left out, they are a problem. */
  readonly needed: readonly string[];
  /** Figures with a default: left out or undefined, they are none. */
  readonly optional: readonly string[];
  /** Whole-number or measured figures and choices, by path. */
  readonly paths: readonly string[];
  /** Bad values that are good for a path after all. */
  readonly fine?: Readonly<Record<string, readonly unknown[]>>;
}

const takers: readonly Taken[] = [
  {
    name: 'fitPiece',
    call: solver.fitPiece,
    figures: { width: 12, capacity: 8, maxBundle: 8, oddMethod: 'lone-string', startSide: 'left' },
    needed: ['width', 'capacity'],
    optional: ['maxBundle', 'oddMethod', 'startSide'],
    paths: ['width', 'capacity', 'maxBundle', 'oddMethod', 'startSide'],
  },
  {
    name: 'bundleSizes',
    call: solver.bundleSizes,
    figures: { fit, height: 14, openingStep: 1, closingStep: 1, closingBundle: 2 },
    needed: ['fit', 'height'],
    optional: ['openingStep', 'closingStep', 'closingBundle'],
    paths: ['fit', 'height', 'openingStep', 'closingStep', 'closingBundle'],
  },
  {
    name: 'capacityRange',
    call: solver.capacityRange,
    figures: { barWidth: 30, columnPitch: { low: 1.8, likely: 2, high: 2.3 } },
    needed: ['barWidth', 'columnPitch'],
    optional: [],
    paths: ['barWidth', 'columnPitch', 'columnPitch.low', 'columnPitch.likely', 'columnPitch.high'],
    fine: { barWidth: [2.5], 'columnPitch.low': [2.5], 'columnPitch.likely': [2.5], 'columnPitch.high': [2.5] },
  },
  {
    name: 'calibrate',
    call: solver.calibrate,
    figures: { columns: 10, width: 20, rows: 8, height: 17, knots: 80, used: 1600, seconds: 1600 },
    needed: [],
    optional: ['columns', 'width', 'rows', 'height', 'knots', 'used', 'seconds'],
    paths: ['columns', 'width', 'rows', 'height', 'knots', 'used', 'seconds'],
    // Any part may be missing; lengths and times need not be whole.
    fine: {
      width: [2.5, null],
      height: [2.5, null],
      used: [2.5, null],
      seconds: [2.5, null],
      columns: [null],
      rows: [null],
      knots: [null],
    },
  },
  {
    name: 'planRows',
    call: solver.planRows,
    figures: { fit, bundles, startSide: 'left', chart },
    needed: ['fit', 'bundles'],
    optional: ['startSide', 'chart'],
    paths: [
      'fit',
      'bundles',
      'bundles.left',
      'bundles.right',
      'bundles.left.1',
      'bundles.right.3',
      'startSide',
      'chart',
      'chart.width',
      'chart.height',
      'chart.cells',
    ],
    // No chart is no chart, however it is left out.
    fine: { chart: [null] },
  },
  {
    name: 'finishSteps',
    call: solver.finishSteps,
    figures: { fit, bundles, startSide: 'left' },
    needed: ['fit', 'bundles'],
    optional: ['startSide'],
    paths: ['fit', 'bundles', 'bundles.left', 'bundles.right', 'bundles.left.3', 'bundles.right.3', 'startSide'],
  },
];

const codes: readonly solver.ProblemCode[] = [
  'not-a-whole-number',
  'not-a-number',
  'out-of-range',
  'unknown-choice',
  'bundle-too-big',
  'too-narrow',
  'closing-too-big',
  'too-short',
  'never-full-width',
  'no-rows',
  'sides-differ-in-length',
  'not-what-was-mounted',
  'changes-by-more-than-one',
  'bundles-exceed-width',
  'no-strings-to-finish-with',
  'chart-size-differs',
  'hole',
  'no-fit',
  'no-chart',
  'chart-mistake',
];

/** What is wrong with an answer to bad figures, or null: it is to be a problem, with a known code and no NaN. */
function fault(call: Call, figures: unknown): string | null {
  let answer: unknown;
  try {
    answer = asked(call, figures);
  } catch (thrown) {
    return `throws ${String(thrown)}`;
  }
  const places = placesOfNaN(answer);
  if (places.length > 0) return `NaN at ${places.join(', ')}`;
  const problem = problemOf(answer);
  if (problem === null) return `no problem: ${JSON.stringify(answer)?.slice(0, 200)}`;
  return codes.some((code) => code === problem.code) ? null : `a code of its own: ${problem.code}`;
}

describe.each(takers)('$name', ({ call, figures, needed, optional, paths, fine }) => {
  test('takes the figures that work', () => {
    const answer = asked(call, figures);
    expect(answer).not.toHaveProperty('ok', false);
    expect(answer).toHoldNoNaN();
  });

  test.each(paths)('answers anything but a figure for %s with a problem', (path) => {
    const faults = bad
      .filter(([, value]) => fine?.[path]?.includes(value) !== true)
      .map(([name, value]) => [name, fault(call, replaced(figures, path.split('.'), value))])
      .filter(([, found]) => found !== null);
    expect(faults).toEqual([]);
  });

  test.each(paths.filter((path) => !['fit', 'bundles', 'chart', 'chart.cells'].includes(path)))(
    'says what would work for %s',
    (path) => {
      for (const [name, value] of bad) {
        if (fine?.[path]?.includes(value)) continue;
        const problem = problemOf(asked(call, replaced(figures, path.split('.'), value)));
        expect(Object.keys(problem?.values ?? {}), name).not.toEqual([]);
      }
    },
  );

  // A test of no figures at all could not fail.
  if (needed.length > 0)
    test('misses what it needs, left out or undefined', () => {
      const faults = needed
        .flatMap((key) => [
          [`without ${key}`, fault(call, without(figures, key))],
          [`${key} undefined`, fault(call, { ...figures, [key]: undefined })],
        ])
        .filter(([, found]) => found !== null);
      expect(faults).toEqual([]);
    });

  if (optional.length > 0)
    test('does without what has a default, left out or undefined', () => {
      for (const key of optional)
        for (const fewer of [without(figures, key), { ...figures, [key]: undefined }]) {
          const answer = asked(call, fewer);
          expect(answer, key).not.toHaveProperty('ok', false);
          expect(answer, key).toHoldNoNaN();
        }
    });

  test('answers something that is no set of figures at all without a throw and without NaN, and misses what it needs', () => {
    const faults = [...bad, ['undefined', undefined] as const]
      .map(([name, value]) => [name, fault(call, value)])
      // Where no part is needed, a set with every part missing is none the worse.
      .filter(([, found]) => found !== null && !(needed.length === 0 && found?.startsWith('no problem')));
    expect(faults).toEqual([]);
  });
});

describe('figures inside a fit', () => {
  const insides = ['width', 'left', 'right', 'left.columns', 'right.columns'];
  const cases: readonly (readonly [string, Call, Record<string, unknown>])[] = [
    ['bundleSizes', solver.bundleSizes, { fit, height: 14 }],
    ['planRows', solver.planRows, { fit, bundles }],
    ['finishSteps', solver.finishSteps, { fit, bundles }],
  ];
  test.each(cases)('that are none are a problem for %s', (_, call, figures) => {
    const faults = insides
      .flatMap((inside) =>
        bad.map(([name, value]) => [
          `${inside}, ${name}`,
          fault(call, replaced(figures, ['fit', ...inside.split('.')], value)),
        ]),
      )
      .filter(([, found]) => found !== null);
    expect(faults).toEqual([]);
  });
});

describe('the answer to a figure out of range', () => {
  test('names both ends of the range that works', () => {
    for (const [field, low, high] of [
      ['width', 2, 400],
      ['capacity', 2, 400],
      ['maxBundle', 2, 40],
    ] as const) {
      const figures = { width: 12, capacity: 8, maxBundle: 8 };
      for (const beyond of [low - 1, high + 1])
        expect(asked(solver.fitPiece, { ...figures, [field]: beyond })).toMatchObject({
          ok: false,
          problem: { code: 'out-of-range', field, values: { low, high } },
        });
      for (const edge of [low, high]) {
        const answer = problemOf(asked(solver.fitPiece, { ...figures, [field]: edge }));
        expect(answer?.code).not.toBe('out-of-range');
      }
    }
  });
  test('names the choices there are', () => {
    const problem = problemOf(asked(solver.fitPiece, { width: 12, capacity: 8, startSide: 'middle' }));
    expect(problem?.code).toBe('unknown-choice');
    expect(String(problem?.values['choices'])).toMatch(/left.*right/);
  });
});
