import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bundleSizes,
  type Chart,
  type Fit,
  fitPiece,
  groundOf,
  mirrorPiece,
  type Piece,
  planRows,
  type RowPlan,
} from '../../src/solver/index.ts';
import { inspect, type Warning, type WarningCode } from '../../src/solver/inspect.ts';
import { tries } from '../seed.ts';
import './matchers.ts';
import { everyFloat, everyKnot } from './thread/knot-by-knot.ts';
import { chartFrom } from './thread/small-chart.ts';
import { chartedPieces } from './worlds.ts';

function fitFor(width: number, capacity: number): Fit {
  const fitted = fitPiece({ width, capacity });
  if (!fitted.ok) throw new Error(fitted.problem.code);
  return fitted.fit;
}

function rowsOf(piece: Piece): readonly RowPlan[] {
  const rows = planRows(piece);
  if (!Array.isArray(rows)) throw new Error('no rows');
  return rows;
}

/** Looks a chart over that is tied on a bar, opening and closing as it was mounted. */
function look(lines: readonly string[], capacity: number, marks: { blank?: number; ground?: number } = {}): Warning[] {
  const drawn = chartFrom(lines);
  const palette = drawn.palette.map((entry, index) => ({
    ...entry,
    ...(index === marks.blank ? { blank: true as const } : {}),
    ...(index === marks.ground ? { ground: true as const } : {}),
  }));
  const chart: Chart = { ...drawn, palette };
  const fit = fitFor(chart.width, capacity);
  const bundles = bundleSizes({ fit, height: chart.height });
  return inspect({ chart, fit, bundles, rows: rowsOf({ fit, bundles, startSide: 'left', chart }) });
}

const only = (warnings: readonly Warning[], code: WarningCode) => warnings.filter((warning) => warning.code === code);

describe('a chart looked over before cutting', () => {
  it('a plain one has nothing wrong with it', () => {
    expect(look(['000000', '000000', '000000', '000000'], 2)).toEqual([]);
    expect(look(['0000', '0000'], 4)).toEqual([]);
  });

  it('one of another size than the piece is said to be so, and nothing else', () => {
    const fit = fitFor(6, 2);
    const bundles = bundleSizes({ fit, height: 4 });
    const rows = rowsOf({ fit, bundles, startSide: 'left' });
    const sized = (width: number, height: number) =>
      inspect({
        chart: chartFrom(Array.from({ length: height }, () => '01234'.repeat(2).slice(0, width))),
        fit,
        bundles,
        rows,
      });
    expect(sized(7, 4)).toEqual([{ code: 'width-differs', values: { chart: 7, piece: 6 } }]);
    expect(sized(6, 3)).toEqual([{ code: 'height-differs', values: { chart: 3, piece: 4 } }]);
    expect(sized(5, 5).map(({ code }) => code)).toEqual(['width-differs', 'height-differs']);
    expect(sized(6, 4).map(({ code }) => code)).not.toContain('width-differs');
  });
});

describe('blank cells', () => {
  it('a blank cell among the knots is a hole, a stretch of them one', () => {
    const warnings = look(['000000', '022020', '000000', '000000'], 2, { blank: 2 });
    expect(only(warnings, 'hole')).toEqual([
      { code: 'hole', row: 2, columns: [2, 3], values: { cells: 2 } },
      { code: 'hole', row: 2, columns: [5, 5], values: { cells: 1 } },
    ]);
  });

  it('a blank corner cell is none', () => {
    expect(look(['200002', '000000', '000000', '200002'], 2, { blank: 2 })).toEqual([]);
  });

  it('a blank cell under a bundle is one', () => {
    // In row 1 the left bundle of two is tied in column 2.
    expect(only(look(['220000', '000000', '000000', '000000'], 2, { blank: 2 }), 'hole')).toMatchObject([
      { row: 1, columns: [2, 2] },
    ]);
  });
});

describe('the picture in the corner cells', () => {
  it('is cut, and each side of a row is told on its own', () => {
    // 10 on 6: spare 4, two a side; corner cells are columns 1 and 10 in the first and the last row.
    const warnings = look(['1000000000', '0000000000', '0000000000', '3000000004'], 6);
    expect(only(warnings, 'picture-cut')).toEqual([
      { code: 'picture-cut', row: 1, columns: [1, 1], values: { side: 'left', lost: 1 } },
      { code: 'picture-cut', row: 4, columns: [1, 1], values: { side: 'left', lost: 1 } },
      { code: 'picture-cut', row: 4, columns: [10, 10], values: { side: 'right', lost: 1 } },
    ]);
  });

  it('ground and blank cells are no picture', () => {
    expect(
      only(look(['2000000002', '0000000000', '0000000000', '0000000000'], 6, { blank: 2 }), 'picture-cut'),
    ).toEqual([]);
    // Where the commonest colour of the rim is not the ground, the corners are picture.
    expect(
      only(look(['0000000000', '0111111110', '0111111110', '0000000000'], 6, { ground: 1 }), 'picture-cut'),
    ).toHaveLength(4);
  });

  it('more than one cell of it is one warning, from the first to the last', () => {
    // 16 on 8: spare 8, four a side: three corner cells a side in row 1, two in row 2, one in row 3.
    const plain = '0'.repeat(16);
    const warnings = look([`1010${'0'.repeat(12)}`, plain, plain, plain, plain, plain, plain, plain], 8);
    // Column 1 and column 3 of the three.
    expect(only(warnings, 'picture-cut')).toEqual([
      { code: 'picture-cut', row: 1, columns: [1, 3], values: { side: 'left', lost: 2 } },
    ]);
  });
});

describe('the first row', () => {
  it('of two colours is not plain', () => {
    expect(only(look(['001100', '000000'], 6), 'first-row-not-plain')).toEqual([
      { code: 'first-row-not-plain', row: 1, values: { colours: 2 } },
    ]);
  });

  it('of one colour is, whatever the corner cells hold and whatever comes below', () => {
    expect(only(look(['300003', '012340', '000000', '000000'], 2), 'first-row-not-plain')).toEqual([]);
  });
});

describe('floats', () => {
  it('of six columns are too long, of five not', () => {
    expect(only(look(['000000000', '011111100'], 9), 'float-too-long')).toEqual([
      // Row 2 goes left: 0 stops at boundary 7, behind columns 7 to 2, and goes on at boundary 1.
      { code: 'float-too-long', row: 2, columns: [7, 2], values: { colour: 0, columns: 6, rows: 0, floats: 1 } },
    ]);
    expect(only(look(['000000000', '011111000'], 9), 'float-too-long')).toEqual([]);
  });

  it('that come from a row above are told where they are needed', () => {
    // Row 1, right: 0 ends at boundary 3. Row 2, left: it begins at the edge, boundary 8: five across.
    expect(only(look(['00011111', '00000000'], 8), 'float-too-long')).toEqual([]);
    // Row 1, right: 0 ends at boundary 2. Row 2, left: 1 ties two knots and 0 begins at boundary 8: six across.
    expect(only(look(['0011111111', '0000000011'], 10), 'float-too-long')).toEqual([
      { code: 'float-too-long', row: 2, columns: [3, 8], values: { colour: 0, columns: 6, rows: 1, floats: 1 } },
    ]);
  });

  it('that are joined anew after ten rows are no floats', () => {
    const rest = (rows: number) => ['00000001', ...Array.from({ length: rows }, () => '00000000'), '10000000'];
    // Colour 1 ends at boundary 8; in an even row it begins again at 1, in an odd one at 0.
    expect(only(look(rest(8), 8), 'float-too-long')).toMatchObject([
      { row: 10, values: { colour: 1, columns: 7, rows: 9 } },
    ]);
    expect(only(look(rest(10), 8), 'float-too-long')).toEqual([]);
  });

  it('of one colour in one row are one warning with their number, shown at the longest', () => {
    // Row 1, right: 0 skips 6, 7 and 6 columns.
    const warnings = look([`0${'1'.repeat(6)}0${'1'.repeat(7)}0${'1'.repeat(6)}0`, '0'.repeat(23)], 23);
    expect(only(warnings, 'float-too-long')).toEqual([
      { code: 'float-too-long', row: 1, columns: [9, 15], values: { colour: 0, columns: 7, rows: 0, floats: 3 } },
    ]);
  });
});

describe('a turning knot', () => {
  it('at the end of a row differs from the knot before it', () => {
    // 6 on 2, row 1 going right: the right bundle stands in column 5.
    const warnings = look(['000011', '000000', '000000', '000000'], 2);
    expect(only(warnings, 'colour-change-on-turning-knot')).toEqual([
      { code: 'colour-change-on-turning-knot', row: 1, columns: [5, 5], values: { colour: 1, beside: 0 } },
      // Row 2 begins on the string left at that edge, with a turning knot again: 0 after 1.
      { code: 'colour-change-on-turning-knot', row: 2, columns: [6, 6], values: { colour: 0, beside: 1 } },
    ]);
  });

  it('at the start of a row differs from the knot after it', () => {
    const warnings = look(['010000', '000000', '000000', '000000'], 2);
    expect(only(warnings, 'colour-change-on-turning-knot')).toEqual([
      { code: 'colour-change-on-turning-knot', row: 1, columns: [2, 2], values: { colour: 1, beside: 0 } },
    ]);
  });

  it('of the colour beside it is as it should be, and a change on an ordinary knot is too', () => {
    // Row 3 changes colour at its single edge string and among the others, and comes back to 0 for the bundle of row 4.
    expect(only(look(['000000', '000000', '100110', '000000'], 2), 'colour-change-on-turning-knot')).toEqual([]);
  });
});

describe('colours in a row', () => {
  it('five are too many, four are not', () => {
    expect(only(look(['00000', '01234'], 5), 'too-many-colours')).toEqual([
      { code: 'too-many-colours', row: 2, values: { colours: 5, most: 4 } },
    ]);
    expect(only(look(['00000', '01233'], 5), 'too-many-colours')).toEqual([]);
  });

  it('a colour that lies only in corner cells is not counted', () => {
    expect(only(look(['000000', '012334', '000000', '400004'], 2), 'too-many-colours')).toMatchObject([{ row: 2 }]);
    expect(only(look(['412330', '000000', '000000', '000000'], 2), 'too-many-colours')).toEqual([]);
  });
});

describe('the shape', () => {
  it('that closes before it is open never has its full width', () => {
    // 16 on 8, four a side: open in row 4 at the earliest, closing needs three rows more.
    const lines = (height: number) => Array.from({ length: height }, () => '0'.repeat(16));
    expect(look(lines(6), 8)).toEqual([{ code: 'never-full-width', values: { width: 16, most: 14 } }]);
    expect(look(lines(7), 8)).toEqual([]);
  });

  it('with a bundle over the most the fit allows is told once a side', () => {
    const chart = chartFrom(Array.from({ length: 8 }, () => '0'.repeat(16)));
    const bundles = bundleSizes({ fit: fitFor(16, 8), height: 8 });
    const of = (maxBundle: number) => {
      const fit = { ...fitFor(16, 8), maxBundle };
      return only(
        inspect({ chart, fit, bundles, rows: rowsOf({ fit, bundles, startSide: 'left', chart }) }),
        'bundle-over-most',
      );
    };
    expect(of(4)).toEqual([]);
    expect(of(3)).toEqual([
      { code: 'bundle-over-most', row: 1, columns: [1, 4], values: { side: 'left', bundle: 4, most: 3 } },
      { code: 'bundle-over-most', row: 1, columns: [13, 16], values: { side: 'right', bundle: 4, most: 3 } },
    ]);
  });

  it('a carried end counts as a strand of its bundle', () => {
    // 13 with a carried end: 14 strands on 6; 8 beside the bar, 4 a side, 3 columns on the right.
    const fitted = fitPiece({ width: 13, capacity: 6, oddMethod: 'carried-end', maxBundle: 4 });
    if (!fitted.ok) throw new Error(fitted.problem.code);
    const { fit } = fitted;
    expect(fit.right).toEqual({ columns: 3, strands: 4, folds: 2 });
    const chart = chartFrom(Array.from({ length: 10 }, () => '0'.repeat(13)));
    const over = (closingBundle: number) => {
      const bundles = bundleSizes({ fit, height: 10, closingBundle });
      return only(
        inspect({ chart, fit, bundles, rows: rowsOf({ fit, bundles, startSide: 'left', chart }) }),
        'bundle-over-most',
      );
    };
    expect(over(3)).toEqual([]);
    expect(over(4)).toMatchObject([{ row: 10, columns: [10, 13], values: { side: 'right', bundle: 5, most: 4 } }]);
  });
});

describe('inspection', () => {
  it('counts the picture lost, the colours and the floats that a maker would count, on any outline', () => {
    fc.assert(
      fc.property(chartedPieces, fc.option(fc.nat({ max: 3 }), { nil: undefined }), (piece, blank) => {
        const palette = piece.chart.palette.map((entry, index) =>
          index === blank ? { ...entry, blank: true as const } : entry,
        );
        const chart: Chart = { ...piece.chart, palette };
        const rows = rowsOf({ ...piece, chart });
        const warnings = inspect({ ...piece, chart, rows });
        expect(warnings).toHoldNoNaN();

        const order = warnings.map(({ row }) => row ?? 0);
        expect(order).toEqual([...order].sort((a, b) => a - b));

        const ground = groundOf(chart);
        const isBlank = (cell: number | undefined) => cell !== undefined && chart.palette[cell]?.blank === true;
        let lost = 0;
        let blanks = 0;
        for (const { row, firstColumn, lastColumn } of rows)
          for (let column = 1; column <= chart.width; column += 1) {
            const cell = chart.cells[(row - 1) * chart.width + column - 1];
            const inside = column >= firstColumn && column <= lastColumn;
            if (inside && isBlank(cell)) blanks += 1;
            if (!inside && cell !== ground && !isBlank(cell)) lost += 1;
          }
        const total = (code: WarningCode, value: string) =>
          only(warnings, code).reduce((sum, { values }) => sum + Number(values[value]), 0);
        expect(total('picture-cut', 'lost')).toBe(lost);
        expect(total('hole', 'cells')).toBe(blanks);

        const knots = everyKnot(rows, piece.fit);
        const long = everyFloat(knots).floats.filter(({ from, to }) => Math.abs(to - from) > 5);
        expect(total('float-too-long', 'floats')).toBe(long.length);
        for (const { row, columns, values } of only(warnings, 'float-too-long')) {
          const [from, to] = columns ?? [0, 0];
          expect(Math.abs(to - from) + 1).toBe(values['columns']);
          const found = long.some(
            (float) =>
              float.row === row &&
              float.colour === values['colour'] &&
              Math.min(float.from, float.to) === Math.min(from, to) - 1 &&
              Math.max(float.from, float.to) === Math.max(from, to),
          );
          expect(found).toBe(true);
        }

        const turning = rows.flatMap((plan) =>
          plan.runs.filter(({ knot }) => knot.includes('-')).map((run) => ({ plan, run })),
        );
        const changes = turning.filter(({ plan, run }) => {
          const own = plan.runs.indexOf(run);
          const above = rows[plan.row - 2]?.runs.at(-1)?.colour ?? run.colour;
          const before = own === 0 ? above : plan.runs[own - 1]?.colour;
          const after = own === 0 ? plan.runs[1]?.colour : run.colour;
          return before !== run.colour || after !== run.colour;
        });
        expect(only(warnings, 'colour-change-on-turning-knot').map(({ row, columns }) => [row, columns?.[0]])).toEqual(
          changes.map(({ plan, run }) => [plan.row, run.columns[0]]),
        );
        const full = rows.some(({ knots: tied }) => tied === chart.width);
        expect(only(warnings, 'never-full-width')).toHaveLength(full ? 0 : 1);
      }),
      tries(500),
    );
  });

  it('of a mirrored piece finds the same, mirrored', () => {
    const inOrder = (a: Warning, b: Warning) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1);
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const { width } = piece.chart;
        const mirrored = mirrorPiece(piece);
        const found = inspect({ ...mirrored, rows: rowsOf(mirrored) });
        const expected = inspect({ ...piece, rows: rowsOf(piece) }).map((warning): Warning => {
          const { columns, values } = warning;
          const turned =
            values['side'] === undefined ? values : { ...values, side: values['side'] === 'left' ? 'right' : 'left' };
          if (!columns) return { ...warning, values: turned };
          const [from, to] = [width + 1 - columns[0], width + 1 - columns[1]];
          // A float keeps its direction of travel, everything else reads from left to right.
          return { ...warning, columns: warning.code === 'float-too-long' ? [from, to] : [to, from], values: turned };
        });
        expect([...found].sort(inOrder)).toEqual(expected.sort(inOrder));
      }),
      tries(200),
    );
  });

  it('finds the same whether the rows were planned with the chart or without', () => {
    fc.assert(
      fc.property(chartedPieces, ({ chart, ...piece }) => {
        expect(inspect({ ...piece, chart, rows: rowsOf(piece) })).toEqual(
          inspect({ ...piece, chart, rows: rowsOf({ ...piece, chart }) }),
        );
      }),
      tries(100),
    );
  });
});
