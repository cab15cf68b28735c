import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bundleSizes,
  type Chart,
  fitPiece,
  mirrorPiece,
  type Piece,
  planRows,
  type RowPlan,
} from '../../../src/solver/index.ts';
import {
  type CutList,
  type CutListInput,
  cutList,
  type Figure,
  type Thread,
} from '../../../src/solver/thread/index.ts';
import { tries } from '../../seed.ts';
import '../matchers.ts';
import { chartedPieces } from '../worlds.ts';
import { chartFrom } from './small-chart.ts';

const floss: Thread = { diameter: 1, kind: 'soft' };

function planned(width: number, capacity: number, height: number, chart?: Chart, oddMethod?: 'carried-end') {
  const fitted = fitPiece({ width, capacity, oddMethod });
  if (!fitted.ok) throw new Error(fitted.problem.code);
  const { fit } = fitted;
  const bundles = bundleSizes({ fit, height });
  const rows = planRows({ fit, bundles, chart });
  if (!Array.isArray(rows)) throw new Error('no rows');
  return { fit, bundles, rows };
}

function listed(input: CutListInput): CutList {
  const list = cutList(input);
  if (!list.ok) throw new Error(list.problem.code);
  return list;
}

const evening = planned(12, 8, 14);

function rowsOf(piece: Piece): readonly RowPlan[] {
  const rows = planRows(piece);
  if (!Array.isArray(rows)) throw new Error('no rows');
  return rows;
}

/** Every figure anywhere in a value. */
function figuresIn(value: unknown): Figure[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(figuresIn);
  return 'likely' in value && 'source' in value ? [value as Figure, ...inner] : inner;
}

const bounds = ['low', 'likely', 'high'] as const;

const threads: fc.Arbitrary<Thread> = fc.record(
  {
    diameter: fc.double({ min: 0.2, max: 10, noNaN: true }),
    kind: fc.constantFrom('soft' as const, 'firm' as const),
    barThickness: fc.double({ min: 0.5, max: 20, noNaN: true }),
    workingLength: fc.double({ min: 300, max: 20_000, noNaN: true }),
    measured: fc.record(
      {
        columnPitch: fc.double({ min: 0.1, max: 100, noNaN: true }),
        rowPitch: fc.double({ min: 0.1, max: 100, noNaN: true }),
        perKnot: fc.double({ min: 0.5, max: 500, noNaN: true }),
        secondsPerKnot: fc.double({ min: 0.5, max: 600, noNaN: true }),
      },
      { requiredKeys: [] },
    ),
  },
  { requiredKeys: ['diameter', 'kind'] },
);

describe("the cut list of the evening's piece", () => {
  const list = listed({ ...evening, thread: floss });

  it('has four folds for the bar and one for each side', () => {
    expect(list.pieces.map(({ place, count, length }) => [place, count, length.likely])).toEqual([
      ['bar', 4, 370],
      ['left', 1, 365],
      ['right', 1, 365],
    ]);
    expect(list.totals).toMatchObject({ pieces: 6, baseStrings: 12 });
    // 4 · 370 + 2 · 365 = 2210; low 4 · 345 + 2 · 340 = 2060; high 4 · 395 + 2 · 395 = 2370
    expect(list.totals.base).toEqual({ low: 2060, likely: 2210, high: 2370, source: 'estimate' });
  });

  it('has one leading string without a chart: 164 knots, four of them round a bundle of two', () => {
    // 160 · 13.48521 + 4 · 18.45825 = 2231.467 mm; ÷ (2000 − 160) = 1.2, so 2 lengths; 2231.467 + 2 · 160 = 2551.467
    // Low 2042.902 + 320; high 2488.946 + 320.
    const [leading, ...more] = list.leading;
    expect(more).toEqual([]);
    expect(leading).toMatchObject({ colour: null, knots: 164, floatCount: 0, starts: 1 });
    expect(leading?.length.low).toBeCloseTo(2362.902, 2);
    expect(leading?.length.likely).toBeCloseTo(2551.467, 2);
    expect(leading?.length.high).toBeCloseTo(2808.946, 2);
    expect(leading?.workingLengths).toEqual({ low: 2, likely: 2, high: 2, source: 'estimate' });
    expect(leading?.joins).toMatchObject({ low: 1, likely: 1, high: 1 });
    expect(leading?.floats).toMatchObject({ low: 0, likely: 0, high: 0 });
  });

  it('takes an hour and nine minutes of steady work', () => {
    // Knots 164 · 20 = 3280 s; mounting 4 · 45 + 2 · 40 = 260 s; finishing 600 s: 4140 s.
    // Practised 164 · 12 + 0.6 · 860 = 2484 s; first time 164 · 30 + 1.5 · 860 = 6210 s.
    expect(list.time).toMatchObject({ likely: 4140, source: 'estimate' });
    expect(list.time.low).toBeCloseTo(2484, 9);
    expect(list.time.high).toBeCloseTo(6210, 9);
    expect(list.time.parts.knotting).toEqual({ low: 1968, likely: 3280, high: 4920, source: 'estimate' });
    expect(list.time.parts.mounting).toMatchObject({ likely: 260 });
    expect(list.time.parts.finishing).toMatchObject({ likely: 600 });
  });

  it('by a measured swatch says so, and the leading string has no range but for the bundles', () => {
    const measured = { columnPitch: 2, rowPitch: 2, perKnot: 14, secondsPerKnot: 15 };
    const own = listed({ ...evening, thread: { ...floss, measured } });
    for (const { length } of own.pieces) expect(length.source).toBe('measured');
    // 160 · 14 = 2240 and four knots round two strands
    expect(own.leading[0]?.length.source).toBe('measured');
    expect(own.leading[0]?.length.likely).toBeCloseTo(2240 + (4 * 14 * 18.45825) / 13.48521 + 320, 2);
    expect(own.totals.thread.source).toBe('measured');
    expect(own.time.parts.knotting).toEqual({ low: 2460, likely: 2460, high: 2460, source: 'measured' });
    expect(own.time.source).toBe('measured');
    expect(own.time.parts.mounting.source).toBe('estimate');
  });
});

describe('pieces to cut', () => {
  it('an odd width has a lone string', () => {
    // 21 on 15: 13 on the bar, 6 folds and one string; 4 a side, 2 folds each.
    const { pieces, totals, time } = listed({ ...planned(21, 15, 24), thread: floss });
    expect(pieces.map(({ place, count }) => [place, count])).toEqual([
      ['bar', 6],
      ['left', 2],
      ['right', 2],
      ['lone', 1],
    ]);
    expect(totals.baseStrings).toBe(21);
    // Mounting: 6 · 45 + 60 for the lone string + 4 · 40 = 490 s.
    expect(time.parts.mounting.likely).toBe(490);
  });

  it('with a carried end all are folds, one end more than columns', () => {
    // 21 and one: 22 strands; 14 on the bar, 8 beside it, 4 a side: 7 and 2 and 2 folds.
    const piece = planned(21, 15, 24, undefined, 'carried-end');
    const { pieces, totals } = listed({ ...piece, thread: floss });
    expect(pieces.map(({ place, count }) => [place, count])).toEqual([
      ['bar', 7],
      ['left', 2],
      ['right', 2],
    ]);
    expect(totals.baseStrings).toBe(22);
  });

  it('the carried end lies under every edge knot of its side', () => {
    // Four columns on four need no carrying; 5 on 2: 6 strands, 2 on the bar, 2 a side, 1 column on the right.
    const piece = planned(5, 2, 6, undefined, 'carried-end');
    expect(piece.fit).toMatchObject({ carrySide: 'right', right: { columns: 1, strands: 2 }, left: { columns: 2 } });
    const carried = listed({ ...piece, thread: floss });
    const knots = piece.rows.reduce((sum, row) => sum + row.knots, 0);
    // Left bundles of 2 in rows 1 and 6; the right edge has 2 strands in all six rows: 8 knots over two strands.
    const expected = (knots - 8) * 13.48521 + 8 * 18.45825 + 160;
    expect(carried.leading[0]?.length.likely).toBeCloseTo(expected, 2);
  });
});

describe('leading string by colour', () => {
  it('a small chart, worked by hand', () => {
    // Straight, 6 wide, 2 rows. Row 1, right: 0 0 1 1 1 0. Row 2, left from column 6: 0, 1 1 1, 0 0.
    // 0: 6 knots. Row 1 float 2 → 5: 3 columns. Row 2: column 6 follows row 1's last, no float; then 5 → 2: 3 columns.
    // 1: 6 knots. Row 1 ends at 5; row 2 begins at 5: straight down, one row of 2.1 mm.
    const chart = chartFrom(['001110', '001110']);
    const piece = planned(6, 6, 2, chart);
    const { leading } = listed({ ...piece, chart, thread: floss });
    expect(leading.map(({ colour, knots, floatCount }) => [colour, knots, floatCount])).toEqual([
      [0, 6, 2],
      [1, 6, 1],
    ]);
    // 0: floats (3 + 3) · 2.0 · 1.1 = 13.2; knots 6 · 13.48521 = 80.911; one length: + 160 = 254.111
    expect(leading[0]?.floats.likely).toBeCloseTo(13.2, 9);
    expect(leading[0]?.length.likely).toBeCloseTo(254.111, 2);
    // 1: floats 2.1 · 1.1 = 2.31; 80.911 + 2.31 + 160 = 243.221
    expect(leading[1]?.floats.likely).toBeCloseTo(2.31, 9);
    expect(leading[1]?.length.likely).toBeCloseTo(243.221, 2);
  });

  it('a slanting float goes straight', () => {
    // Row 1, right: 0 ends at 2. Row 3, right: 0 begins at 0. √((2 · 2.0)² + (2 · 2.1)²) · 1.1 = √33.64 · 1.1 = 6.38
    const chart = chartFrom(['0011', '1111', '0011']);
    const { leading } = listed({ ...planned(4, 4, 3, chart), chart, thread: floss });
    expect(leading[0]?.floats.likely).toBeCloseTo(6.38, 9);
  });

  it('a colour joined anew after ten rows needs a working length of its own', () => {
    const rest = (rows: number) => {
      const chart = chartFrom(['0011', ...Array.from({ length: rows }, () => '1111'), '0011']);
      return listed({ ...planned(4, 4, rows + 2, chart), chart, thread: floss }).leading[0];
    };
    expect(rest(9)).toMatchObject({ starts: 1, floatCount: 1, workingLengths: { likely: 1 }, joins: { likely: 0 } });
    expect(rest(10)).toMatchObject({ starts: 2, floatCount: 0, workingLengths: { likely: 2 }, joins: { likely: 1 } });
    // 4 · 13.48521 + 2 · 160
    expect(rest(10)?.length.likely).toBeCloseTo(373.941, 2);
  });

  it('the blank colour has leading string only where a blank cell lies inside the outline', () => {
    // 6 wide on 2: bundles of 2 in row 1, which stand in columns 2 and 5; corner cells are columns 1 and 6.
    const lines = ['200002', '000000', '000000', '200002'];
    const blanked = (cells: readonly string[]): Chart => {
      const chart = chartFrom(cells);
      return {
        ...chart,
        palette: chart.palette.map((entry, index) => (index === 2 ? { ...entry, blank: true as const } : entry)),
      };
    };
    const shaped = blanked(lines);
    expect(
      listed({ ...planned(6, 2, 4, shaped), chart: shaped, thread: floss }).leading.map(({ colour }) => colour),
    ).toEqual([0]);
    const holed = blanked(['200002', '002000', '000000', '200002']);
    expect(listed({ ...planned(6, 2, 4, holed), chart: holed, thread: floss }).leading).toMatchObject([
      { colour: 0 },
      { colour: 2, knots: 1 },
    ]);
  });

  it('rows planned without the chart give the same list as rows planned with it', () => {
    const chart = chartFrom(['001110', '001110']);
    const piece = planned(6, 6, 2, chart);
    const plain = planned(6, 6, 2);
    expect(cutList({ ...plain, chart, thread: floss })).toEqual(cutList({ ...piece, chart, thread: floss }));
    // And without a chart, colours on the rows make no difference.
    expect(cutList({ ...piece, thread: floss })).toEqual(cutList({ ...plain, thread: floss }));
  });

  it('a string without floats is measured when its knots are, whatever the pitches', () => {
    const { leading } = listed({ ...evening, thread: { ...floss, measured: { perKnot: 14 } } });
    expect(leading[0]).toMatchObject({ floatCount: 0, floats: { source: 'estimate' }, length: { source: 'measured' } });
  });

  it('pitches that were measured make floats measured; the string is so when its knots are too', () => {
    const chart = chartFrom(['001110', '001110']);
    const piece = planned(6, 6, 2, chart);
    const sources = (measured: Thread['measured']) =>
      listed({ ...piece, chart, thread: { ...floss, measured } }).leading.map(({ floats, length }) => [
        floats.source,
        length.source,
      ]);
    // Colour 0 floats within rows only, colour 1 from row to row.
    expect(sources({ columnPitch: 2 })).toEqual([
      ['measured', 'estimate'],
      ['estimate', 'estimate'],
    ]);
    expect(sources({ columnPitch: 2, perKnot: 14 })).toEqual([
      ['measured', 'measured'],
      ['estimate', 'estimate'],
    ]);
    expect(sources({ columnPitch: 2, rowPitch: 2, perKnot: 14 })).toEqual([
      ['measured', 'measured'],
      ['measured', 'measured'],
    ]);
  });
});

describe('every cut list', () => {
  it('has as many knots as the rows, which is as many as cells inside the outline', () => {
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const rows = rowsOf(piece);
        const { leading, totals } = listed({ ...piece, rows, thread: floss });
        const knots = rows.reduce((sum, row) => sum + row.knots, 0);
        const inside = new Map<number, number>();
        for (const { row, firstColumn, lastColumn } of rows)
          for (const cell of piece.chart.cells.subarray(
            (row - 1) * piece.fit.width + firstColumn - 1,
            (row - 1) * piece.fit.width + lastColumn,
          ))
            inside.set(cell, (inside.get(cell) ?? 0) + 1);
        expect(totals.knots).toBe(knots);
        expect([...inside.values()].reduce((sum, cells) => sum + cells, 0)).toBe(knots);
        expect(new Map(leading.map(({ colour, knots: tied }) => [colour, tied]))).toEqual(
          new Map([...inside].sort(([a], [b]) => a - b)),
        );
      }),
      tries(),
    );
  });

  it('has low ≤ likely ≤ high in every figure, nothing NaN, and cut lengths in steps of 5 mm', () => {
    fc.assert(
      fc.property(chartedPieces, threads, (piece, thread) => {
        const list = listed({ ...piece, rows: rowsOf(piece), thread });
        expect(list).toHoldNoNaN();
        const figures = figuresIn(list);
        expect(figures.length).toBeGreaterThan(10);
        for (const { low, likely, high, source } of figures) {
          expect(low).toBeGreaterThanOrEqual(0);
          expect(low).toBeLessThanOrEqual(likely);
          expect(likely).toBeLessThanOrEqual(high);
          expect(['estimate', 'measured']).toContain(source);
        }
        for (const { length } of list.pieces) for (const bound of bounds) expect(length[bound] % 5).toBe(0);
        for (const colour of list.leading)
          for (const bound of bounds) {
            expect(Number.isInteger(colour.workingLengths[bound])).toBe(true);
            expect(colour.joins[bound]).toBe(colour.workingLengths[bound] - 1);
          }
      }),
      tries(200),
    );
  });

  it('gives as many base strings as the width, and one more with a carried end', () => {
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const { totals } = listed({ ...piece, rows: rowsOf(piece), thread: floss });
        expect(totals.baseStrings).toBe(piece.fit.width + (piece.fit.carrySide === null ? 0 : 1));
      }),
      tries(100),
    );
  });

  it('has enough working lengths for what its knots and floats use, and not one too many', () => {
    fc.assert(
      fc.property(chartedPieces, threads, (piece, thread) => {
        const usable = (thread.workingLength ?? 2000) - 160;
        for (const { length, workingLengths, starts } of listed({ ...piece, rows: rowsOf(piece), thread }).leading)
          for (const bound of bounds) {
            const body = length[bound] - 160 * workingLengths[bound];
            expect(workingLengths[bound]).toBeGreaterThanOrEqual(starts);
            expect(workingLengths[bound] * usable).toBeGreaterThanOrEqual(body - 1e-6);
            if (workingLengths[bound] > starts) expect((workingLengths[bound] - 1) * usable).toBeLessThan(body + 1e-6);
          }
      }),
      tries(200),
    );
  });

  it('of a mirrored piece cuts the same strings, left and right exchanged', () => {
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const rows = rowsOf(piece);
        const mirrored = mirrorPiece(piece);
        const list = listed({ ...piece, rows, thread: floss });
        const other = listed({ ...mirrored, rows: rowsOf(mirrored), thread: floss });
        expect(other.leading).toEqual(list.leading);
        expect(other.totals).toEqual(list.totals);
        expect(other.time).toEqual(list.time);
        const swapped = { bar: 'bar', left: 'right', right: 'left', lone: 'lone' } as const;
        const turned = new Map(list.pieces.map(({ place, ...piece }) => [swapped[place], piece]));
        for (const { place, ...piece } of other.pieces) expect(piece).toEqual(turned.get(place));
      }),
      tries(100),
    );
  });

  it('grows with the height and with the diameter', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 30 }),
        fc.integer({ min: 8, max: 60 }),
        fc.integer({ min: 1, max: 20 }),
        fc.double({ min: 0.2, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom('soft' as const, 'firm' as const),
        (width, height, more, diameter, thicker, kind) => {
          const capacity = Math.max(5, width - 6);
          const short = listed({ ...planned(width, capacity, height), thread: { diameter, kind } });
          const tall = listed({ ...planned(width, capacity, height + more), thread: { diameter, kind } });
          const thick = listed({ ...planned(width, capacity, height), thread: { diameter: diameter + thicker, kind } });
          for (const bigger of [tall, thick])
            for (const bound of bounds) {
              short.pieces.forEach(({ length }, index) => {
                expect(bigger.pieces[index]?.length[bound]).toBeGreaterThanOrEqual(length[bound]);
              });
              for (const total of ['base', 'leading', 'thread', 'workingLengths'] as const)
                expect(bigger.totals[total][bound]).toBeGreaterThanOrEqual(short.totals[total][bound]);
              expect(bigger.time[bound]).toBeGreaterThanOrEqual(short.time[bound]);
            }
        },
      ),
      tries(150),
    );
  });
});

describe('bad figures of a thread', () => {
  const { fit, bundles, rows } = evening;
  const withThread = (thread: unknown) => cutList({ fit, bundles, rows, thread: thread as Thread });

  it.each([
    ['no thread', undefined],
    ['no diameter', { kind: 'soft' }],
    ['a diameter of nothing', { diameter: 0, kind: 'soft' }],
    ['a rope', { diameter: 10.5, kind: 'soft' }],
    ['a diameter in words', { diameter: 'thin', kind: 'soft' }],
    ['a diameter that is no number', { diameter: Number.NaN, kind: 'soft' }],
    ['an unknown kind', { diameter: 1, kind: 'wire' }],
    ['a bar thinner than half a millimetre', { ...floss, barThickness: 0.4 }],
    ['a bar as thick as a broom', { ...floss, barThickness: 21 }],
    ['a working length that is all tails', { ...floss, workingLength: 160 }],
    ['a working length without end', { ...floss, workingLength: Number.POSITIVE_INFINITY }],
    ['a measured pitch of nothing', { ...floss, measured: { columnPitch: 0 } }],
    ['a measured row pitch that is no number', { ...floss, measured: { rowPitch: Number.NaN } }],
    ['a measured knot of less than nothing', { ...floss, measured: { perKnot: -14 } }],
    ['a knot in no time', { ...floss, measured: { secondsPerKnot: 0 } }],
  ])('%s is refused', (_, thread) => {
    expect(withThread(thread)).toBeRefusedAs('not-a-number', 'out-of-range', 'unknown-choice');
  });

  it('the ends of every range are taken', () => {
    for (const thread of [
      { diameter: 0.2, kind: 'soft', barThickness: 0.5, workingLength: 300 },
      { diameter: 10, kind: 'firm', barThickness: 20, workingLength: 20_000 },
    ] as const)
      expect(withThread(thread).ok).toBe(true);
  });

  it('anything at all is answered, without a throw and without NaN', () => {
    const odd = fc.oneof(
      fc.anything(),
      fc.double(),
      fc.constantFrom(0, -1, 1e9, Number.NaN, null, undefined, 'soft', 'firm'),
    );
    const loose = fc.record(
      { diameter: odd, kind: odd, barThickness: odd, workingLength: odd, measured: odd },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.oneof(loose, fc.anything()), (thread) => {
        const answer = withThread(thread);
        expect(answer).toHoldNoNaN();
        expect(typeof answer.ok).toBe('boolean');
      }),
      tries(500),
    );
  });

  it('a piece without rows, sides of different length and a chart of another size are refused', () => {
    expect(cutList({ fit, bundles, rows: [], thread: floss })).toBeRefusedAs('no-rows');
    expect(cutList({ fit, bundles: { left: [2], right: [2] }, rows, thread: floss })).toBeRefusedAs(
      'sides-differ-in-length',
    );
    expect(cutList({ fit, bundles, rows, chart: chartFrom(['00', '00']), thread: floss })).toBeRefusedAs(
      'chart-size-differs',
    );
  });
});
