import { describe, expect, test } from 'vitest';
import {
  exercises,
  type MarkOptions,
  type NumberOptions,
  SUM_FIELDS,
  type SumAnswer,
  type SumOptions,
} from '../../../src/solver/exercises/index.ts';
import { missteps, SLIP_FAMILIES, SLIPS, type SlipId } from '../../../src/solver/missteps/index.ts';
import { made, sumOf } from '../exercises/draws.ts';

const { sum, number, mark } = exercises;

/** A sum as a learner would write it down, in the order of the fields that the sum asks for. */
const written = (options: SumOptions, figures: readonly (number | string)[]): SumAnswer => {
  const { fields } = sumOf(options);
  expect(figures).toHaveLength(fields.length);
  return Object.fromEntries(fields.map((field, n) => [field, figures[n]]));
};

const on16 = { width: 26, capacity: 16 };
const even = { width: 24, capacity: 16 };
const unmatched = { width: 26, capacity: 15 };
const lone = { width: 21, capacity: 15 };

describe('slips of the fitting sum, worked by hand', () => {
  // places, spare, each side, parity, borrowed, on the bar, bundle, folds on the bar, (lone strings,) folds a side, first row, full width
  test.each([
    ['spare-not-halved', on16, [16, 10, 10, 'even', 0, 16, 10, 8, 5, 18, 10]],
    ['odd-side-left-odd', on16, [16, 10, 5, 'odd', 0, 16, 5, 8, 3, 18, 5]],
    ['odd-side-left-odd', on16, [16, 10, 5, 'odd', 0, 16, 5, 8, 2, 18, 5]],
    ['odd-side-rounded-down', on16, [16, 10, 5, 'odd', 0, 16, 4, 8, 2, 18, 4]],
    ['sides-raised-bar-kept', on16, [16, 10, 5, 'odd', 2, 16, 6, 8, 3, 18, 6]],
    ['sides-raised-bar-kept', on16, [16, 10, 5, 'odd', 0, 16, 6, 8, 3, 18, 6]],
    ['borrowed-not-given', on16, [16, 10, 5, 'odd', 2, 14, 5, 7, 3, 16, 5]],
    ['borrowed-not-given', on16, [16, 10, 5, 'odd', 2, 14, 5, 7, 2, 16, 5]],
    ['one-borrowed', on16, [16, 10, 5, 'odd', 1, 15, 6, 7, 3, 17, 6]],
    ['borrowed-from-one-side', on16, [16, 10, 5, 'odd', 2, 14, 7, 7, 4, 16, 7]],
    ['four-borrowed', on16, [16, 10, 5, 'odd', 4, 12, 7, 6, 4, 14, 7]],
    ['borrowed-though-even', even, [16, 8, 4, 'even', 2, 14, 5, 7, 3, 16, 5]],
    ['folds-counted-as-strings', on16, [16, 10, 5, 'odd', 2, 7, 3, 7, 3, 9, 3]],
    ['strings-counted-as-folds', on16, [16, 10, 5, 'odd', 2, 14, 6, 14, 6, 16, 6]],
    ['capacity-not-matched', unmatched, [15, 11, 5, 'odd', 2, 13, 6, 6, 3, 15, 6]],
    ['capacity-not-matched', unmatched, [15, 11, 6, 'even', 0, 15, 6, 7, 3, 17, 6]],
    ['added', on16, [16, 42, 21, 'odd', 2, 14, 22, 7, 11, 16, 22]],
    ['subtracted-wrong-way', on16, [16, -10, -5, 'odd', 2, 14, -4, 7, -2, 16, 1]],
    ['subtracted-wrong-way', on16, [16, '−10', 5, 'odd', 2, 14, 6, 7, 3, 16, 6]],
    ['all-spare-on-one-side', on16, [16, 10, 10, 'even', 0, 16, 10, 8, 5, 17, 10]],
    ['capacity-halved-too', even, [16, 8, 4, 'even', 0, 8, 4, 4, 2, 10, 4]],
    ['lone-string-forgotten', lone, [15, 6, 3, 'odd', 2, 13, 4, 6, 0, 2, 14, 4]],
  ] as const)('%s in the sum of %j: %j', (slip, figures, answer) => {
    const checked = sum.check(sumOf(figures), written(figures, answer));
    expect(checked).toMatchObject({
      outcome: 'not-right',
      missteps: [slip],
      explanations: [[slip]],
      needsFollowUp: false,
    });
  });

  test('two slips in one sum are both named: the spare strings added up, and the bar halved too', () =>
    expect(sum.check(sumOf(even), written(even, [16, 40, 20, 'even', 0, 8, 20, 4, 10, 10, 20])).explanations).toEqual([
      ['added', 'capacity-halved-too'],
    ]));
  test('an arithmetic mistake is no slip, and its first figure is shown', () => {
    const checked = sum.check(sumOf(on16), written(on16, [16, 11, 5, 'odd', 2, 14, 6, 7, 3, 16, 6]));
    expect(checked).toMatchObject({
      outcome: 'not-right',
      first: 'spare',
      missteps: [],
      explanations: [],
      needsFollowUp: false,
    });
  });
  test('in three figures several slips may fit, and all are said', () => {
    const fields = ['spare', 'onBar', 'bundle'] as const;
    const checked = sum.check(sumOf({ ...on16, fields }), { spare: 10, onBar: 16, bundle: 10 });
    expect(checked).toMatchObject({ missteps: ['spare-not-halved', 'all-spare-on-one-side'], needsFollowUp: true });
  });
  test('a slip that makes no difference gives the right sum', () => {
    for (const [slip, figures] of [
      ['borrowed-though-even', on16],
      ['one-borrowed', even],
      ['capacity-not-matched', on16],
      ['lone-string-forgotten', even],
    ] as const) {
      const problem = sumOf(figures);
      expect([sum.missteps[slip]?.(problem), sum.applies(problem, slip)]).toEqual([sum.solve(problem), false]);
    }
  });
});

const lantern = { ...on16, height: 32, closingBundle: 6 };
const ask = (options: NumberOptions) => made(number.make('own', 'alone', { ...lantern, ...options }));

describe('slips of the rows, worked by hand on 26 wide, 32 high, six a side', () => {
  test.each([
    ['bundle-counted-as-strings', { ask: 'knots-in-row', row: 3 }, 26],
    ['bundle-not-counted', { ask: 'knots-in-row', row: 3 }, 18],
    ['row-late', { ask: 'knots-in-row', row: 3 }, 22],
    ['row-early', { ask: 'bundle-in-row', row: 3 }, 5],
    ['one-string-a-row', { ask: 'knots-in-row', row: 4 }, 19],
    ['one-string-a-row', { ask: 'full-width-row' }, 11],
    ['one-string-a-row', { ask: 'first-closing-row' }, 23],
    ['full-width-misplaced', { ask: 'full-width-row' }, 7],
    ['full-width-misplaced', { ask: 'full-width-row' }, 5],
    ['corner-cells-s-a-side', { ask: 'corner-cells-in-row', row: 1 }, 12],
    ['corner-cells-s-a-side', { ask: 'corner-cells' }, 40],
    ['corner-cells-one-side', { ask: 'corner-cells' }, 15],
    ['closing-from-wrong-end', { ask: 'first-closing-row' }, 5],
    ['closing-misplaced', { ask: 'first-closing-row' }, 29],
    ['closing-misplaced', { ask: 'first-closing-row' }, 27],
    ['closing-counted-as-freed', { ask: 'bundle-in-row', row: 30 }, 1],
  ] as const)('%s, asked %j: %i', (slip, options, figure) => {
    const checked = number.check(ask(options), { figure: `${figure}` });
    expect(checked).toMatchObject({ outcome: 'not-right', needsFollowUp: true });
    expect(checked.missteps).toContain(slip);
  });
  test('a figure that no slip gives gets no name', () =>
    expect(number.check(ask({ ask: 'knots-in-row', row: 3 }), { figure: 11 })).toMatchObject({
      first: 'figure',
      missteps: [],
      needsFollowUp: false,
    }));
});

describe('slips of the thread', () => {
  const cut = ask({ ask: 'cut-length', thread: { diameter: 1, kind: 'soft' } });
  const right = number.solve(cut).figure;
  test.each([
    ['not-doubled', right / 2],
    ['tail-forgotten', right - 180],
    ['wrong-unit', right / 10],
    ['rows-in-centimetres', right + 2 * 32 * 1.06 * (10 - 2.1)],
  ] as const)('%s is found in a length reckoned by it, to within a few millimetres', (slip, length) => {
    expect(number.check(cut, { figure: Math.round(length) }).missteps).toEqual([slip]);
    expect(number.check(cut, { figure: Math.round(length * 1.01) }).missteps).toEqual([slip]);
  });
  test('a fold for every string is found in the string of all folds', () => {
    const inAll = ask({ ask: 'base-string-in-all' });
    expect(number.check(inAll, { figure: 2 * number.solve(inAll).figure }).missteps).toEqual([
      'folds-and-strings-mixed',
    ]);
  });
});

describe('slips of floats and of an evening', () => {
  const own = (options: NumberOptions) => made(number.make('own', 'alone', options));
  test('the two knots that hold a float, counted with it, are two too many', () => {
    const row = own({ ask: 'longest-float' });
    expect(number.check(row, { figure: number.solve(row).figure + 2 }).missteps).toEqual(['float-ends-counted']);
  });
  test('seconds with minutes added to them are found', () => {
    const piece = { kind: 'number', ask: 'making-minutes', knots: 164, secondsPerKnot: 30, beside: 20 } as const;
    expect(number.solve(piece)).toEqual({ figure: 102 });
    expect(number.check(piece, { figure: 4940 }).missteps).toEqual(['wrong-unit']);
  });
  test('a fold for every string of a class is found', () => {
    const eight = { kind: 'number', ask: 'folds-for-class', width: 12, onBar: 8, bundle: 2, learners: 8 } as const;
    expect(number.solve(eight)).toEqual({ figure: 48 });
    expect(number.check(eight, { figure: 96 }).missteps).toEqual(['folds-and-strings-mixed']);
  });
});

describe('slips in marking cells', () => {
  const target = (options: MarkOptions) => made(mark.make('own', 'alone', { ...on16, height: 32, ...options }));
  test.each([
    [
      'bundle-knot-outermost',
      { target: 'bundle-knot', from: 2 },
      [
        [2, 1],
        [2, 26],
      ],
    ],
    [
      'corner-cells-s-a-side',
      { target: 'bundle-knot', from: 2 },
      [
        [2, 6],
        [2, 21],
      ],
    ],
    ['corner-cells-one-side', { target: 'corner-cells', from: 5, to: 6 }, [[5, 1]]],
    ['corner-cells-one-side', { target: 'corner-cells', from: 5, to: 6 }, [[5, 26]]],
    [
      'corner-cells-s-a-side',
      { target: 'corner-cells', from: 5, to: 6 },
      [
        [5, 1],
        [5, 2],
        [5, 25],
        [5, 26],
      ],
    ],
    [
      'row-early',
      { target: 'corner-cells', from: 5, to: 7 },
      [
        [5, 1],
        [5, 2],
        [5, 25],
        [5, 26],
        [6, 1],
        [6, 26],
      ],
    ],
    [
      'row-late',
      { target: 'corner-cells', from: 4, to: 7 },
      [
        [4, 1],
        [4, 26],
      ],
    ],
    ['closing-from-wrong-end', { target: 'first-closing-row' }, [[5, 13]]],
    ['closing-misplaced', { target: 'first-closing-row' }, [[29, 1]]],
  ] as const)('%s, asked %j: %j', (slip, options, cells) => {
    const checked = mark.check(target(options), [...cells]);
    expect(checked.outcome).toBe('not-right');
    expect(checked.missteps).toContain(slip);
  });
});

describe('slips in reading a chart and placing its picture, worked by hand', () => {
  const piece = {
    kind: 'number',
    width: 26,
    height: 32,
    bundles: [6, 6],
    closing: [6, 6],
    openingStep: 1,
    closingStep: 1,
  } as const;
  // Row 8 runs to the left from column 26, so its fifth knot stands in column 22.
  const column = { ...piece, ask: 'column-of-knot', row: 8, knot: 5, startSide: 'left' } as const;
  // 2 chalk, 3 rust, 16 chalk, 4 rust, 1 chalk: the rust string ties 7.
  const stretches = [
    { colour: 'chalk', cells: 2 },
    { colour: 'rust', cells: 3 },
    { colour: 'chalk', cells: 16 },
    { colour: 'rust', cells: 4 },
    { colour: 'chalk', cells: 1 },
  ];
  const colour = { ...piece, ask: 'knots-of-colour', row: 8, stretches, colour: 'rust' } as const;
  // Column 3 is tied from row 4 on, and the picture begins in row 2: two plain rows.
  const plain = { ...piece, ask: 'plain-rows-above', pictureRow: 2, inset: 3 } as const;

  test.each([
    ['begun-at-wrong-side', column, 22, 5],
    ['knot-one-off', column, 22, 21],
    ['knot-one-off', column, 22, 23],
    ['stretches-counted', colour, 7, 2],
    ['first-stretch-only', colour, 7, 3],
    ['corner-cells-s-a-side', plain, 2, 3],
    ['row-late', plain, 2, 1],
  ] as const)('%s: %j', (slip, problem, right, figure) => {
    expect(number.solve(problem)).toEqual({ figure: right });
    expect(number.check(problem, { figure }).missteps).toContain(slip);
  });

  test('corner cells of plain ground are told from cells that are lost: 1 of the 8 in row 2', () => {
    const problem = {
      ...piece,
      kind: 'mark',
      target: 'picture-cut',
      from: 2,
      to: 2,
      picture: {
        ground: 0,
        palette: [
          { name: 'chalk', colour: '#eeeeee' },
          { name: 'tar', colour: '#222222' },
        ],
        rows: ['0'.repeat(26), `0001${'1'.repeat(18)}0000`],
      },
    } as const;
    expect(mark.solve(problem)).toEqual({ cells: [[2, 4]] });
    const every = [1, 2, 3, 4, 23, 24, 25, 26].map((each) => [2, each] as const);
    expect(mark.check(problem, every).missteps).toContain('plain-corners-marked');
  });
});

describe('slips of measuring, worked by hand', () => {
  // A cord of 1.2 mm: a column of 2.16 to 2.76 mm, so a bar of 39 mm takes 14.13 at the least.
  const turns = {
    kind: 'number',
    ask: 'capacity-low',
    barWidth: 39,
    tenTurns: 12,
    threadKind: 'soft',
    narrowest: 1.8,
    widest: 2.3,
  } as const;
  // 12 knots in 30 mm are 2.5 mm each, so a bar of 39 mm takes 15.6.
  const swatch = { kind: 'number', ask: 'capacity-by-swatch', barWidth: 39, knots: 12, swatchWidth: 30 } as const;
  test.each([
    ['rounded-up', turns, 14, 15],
    ['other-end-of-range', turns, 14, 18],
    ['turns-not-divided', turns, 14, 1],
    ['knots-as-thin-as-cord', turns, 14, 32],
    ['rounded-up', swatch, 15, 16],
    ['swatch-turned-round', swatch, 15, 97],
  ] as const)('%s: %j', (slip, problem, right, figure) => {
    expect(number.solve(problem)).toEqual({ figure: right });
    expect(number.check(problem, { figure }).missteps).toEqual([slip]);
  });
});

describe('the catalogue', () => {
  test('holds seventeen slips of fitting, and every slip once', () => {
    expect(SLIP_FAMILIES.fitting).toHaveLength(17);
    expect(new Set(SLIPS).size).toBe(SLIPS.length);
    expect(Object.keys(missteps).sort()).toEqual([...SLIPS].sort());
  });
  test('has a kind of exercise for every slip', () => {
    const kinds = (slip: SlipId) => Object.values(exercises).filter((exercise) => slip in exercise.missteps);
    for (const slip of SLIPS) expect(kinds(slip).length, slip).toBeGreaterThan(0);
  });
  test('carries a slip out on any problem of a kind that knows it, and says null of others', () => {
    const problem = sumOf(on16);
    expect(missteps.added(problem)).toMatchObject({ spare: 42 });
    expect(missteps['row-late'](problem)).toBeNull();
    expect(missteps['bundle-not-counted'](ask({ ask: 'knots-in-row', row: 3 }))).toEqual({ figure: 18 });
    expect(missteps.added(ask({ ask: 'knots-in-row', row: 3 }))).toEqual({ figure: 20 });
    expect(
      missteps['bundle-knot-outermost'](
        made(mark.make(1, 'alone', { ...on16, height: 32, target: 'bundle-knot', from: 1 })),
      ),
    ).toEqual({
      cells: [
        [1, 1],
        [1, 26],
      ],
    });
  });
  test('leaves every figure of a sum a whole number', () => {
    for (let n = 0; n < 60; n += 1) {
      const problem = sum.make(n, 'mixed');
      for (const slip of SLIP_FAMILIES.fitting) {
        const answer = sum.missteps[slip]?.(problem) ?? {};
        for (const field of SUM_FIELDS) {
          const figure = answer[field];
          if (typeof figure === 'number') expect(Number.isInteger(figure), `${slip} ${field}`).toBe(true);
        }
      }
    }
  });
});
