import { describe, expect, test } from 'vitest';
import { FIGURE_NAMES, type FigureName, namedFigure, namedRow, ROW_FIGURES } from '../../src/solver/named-figures.ts';
import { type Plan, type PlanInput, planPiece } from '../../src/solver/plan.ts';

function planOf(input: PlanInput): Plan {
  const plan = planPiece(input);
  if (!plan.ok) throw new Error(plan.problem.code);
  return plan;
}

/** One picture cell in the upper left corner of row 2, where six a side hide four columns. */
const cells = new Uint8Array(26 * 32);
cells[26] = 1;
const chart = {
  width: 26,
  height: 32,
  palette: [
    { name: 'chalk', colour: '#eeeeee', ground: true as const },
    { name: 'tar', colour: '#222222' },
  ],
  cells,
};
const lantern = planOf({ width: 26, height: 32, capacity: 16, chart });
const boat = planOf({ width: 21, height: 18, capacity: 15 });
const carried = planOf({ width: 21, height: 30, capacity: 16, oddMethod: 'carried-end' });
const straight = planOf({ width: 10, height: 12, capacity: 12 });

/** Worked by hand from the craft's first example: 26 columns, 32 rows, a bar of 16. */
const LANTERN: Readonly<Record<Exclude<FigureName, (typeof ROW_FIGURES)[number]>, number>> = {
  width: 26,
  strands: 26,
  height: 32,
  capacity: 16,
  places: 16,
  idle: 0,
  spare: 10,
  half: 5,
  borrowed: 2,
  'on-bar': 14,
  'folds-on-bar': 7,
  'lone-strings': 0,
  'spare-in-all': 12,
  'side-columns': 6,
  'side-strands': 6,
  'side-folds': 3,
  'folds-in-all': 13,
  'first-row-knots': 16,
  'full-width-row': 6,
  'full-width-rows': 22,
  'last-full-row': 27,
  'first-closing-row': 28,
  'last-bundle': 6,
  'knots-in-all': 772,
  'corner-cells': 60,
  'corner-cells-opening': 30,
  singles: 14,
  'gathered-each-side': 6,
  'left-in-middle': 2,
  'picture-lost': 1,
  // A knot is tied in column 1 from row 6 on, so row 2 has to move down by four.
  'plain-rows-above': 4,
  'plain-rows-below': 0,
  colours: 1,
  'colours-in-a-row': 1,
  'free-float': 5,
  'rest-rows': 10,
  'folds-for-eight': 104,
  // 772 knots of 12, 20 or 30 seconds, 7 lark’s heads, 6 side folds and the finishing.
  'minutes-practised': 166,
  'minutes-steady': 277,
  'minutes-first-time': 415,
  'evening-minutes': 460,
};

describe('figures by their names', () => {
  test.each(Object.entries(LANTERN))('the lantern has %s %i', (name, figure) => {
    expect(namedFigure(lantern, name as FigureName)).toBe(figure);
  });

  test('row 3 of the lantern has 20 knots, from column 4 to column 23', () => {
    expect(ROW_FIGURES.map((name) => namedFigure(lantern, name, 3))).toEqual([20, 4, 4, 4, 23, 6]);
  });

  test('every name has a figure, and a row that the piece has not got has none', () => {
    for (const name of FIGURE_NAMES) expect(namedFigure(lantern, name, 1), name).not.toBeNull();
    for (const name of ROW_FIGURES)
      expect(
        [undefined, 0, 33].map((row) => namedFigure(lantern, name, row)),
        name,
      ).toEqual([null, null, null]);
  });

  test('21 columns on a bar of 15 leave 13 on the bar, 6 folds and a lone string', () => {
    const names = ['on-bar', 'folds-on-bar', 'lone-strings', 'spare-in-all', 'left-in-middle'] as const;
    expect(names.map((name) => namedFigure(boat, name))).toEqual([13, 6, 1, 8, 3]);
  });

  test('with a carried end there is a strand more than there are columns, and the sides stay a multiple of four', () => {
    const names = [
      'width',
      'strands',
      'spare',
      'half',
      'on-bar',
      'spare-in-all',
      'side-columns',
      'side-strands',
    ] as const;
    expect(names.map((name) => namedFigure(carried, name))).toEqual([21, 22, 6, 3, 14, 8, 4, 4]);
  });

  test('a straight piece has no closing row, and no place more than it has strings', () => {
    const names = ['places', 'spare', 'full-width-row', 'first-closing-row', 'last-bundle', 'corner-cells'] as const;
    expect(names.map((name) => namedFigure(straight, name))).toEqual([10, 0, 1, null, 1, 0]);
  });

  test('a piece that never reaches its full width has no row of it', () => {
    const short = planOf({ width: 26, height: 7, capacity: 16 });
    const names = ['full-width-row', 'last-full-row', 'full-width-rows'] as const;
    expect(names.map((name) => namedFigure(short, name))).toEqual([null, null, 0]);
  });
});

describe('the row that a lesson speaks of', () => {
  test('is a number, or the figure that gives it, and so many rows after', () => {
    expect(namedRow(lantern, 3)).toBe(3);
    expect(namedRow(lantern, 'first-closing-row')).toBe(28);
    expect(namedRow(lantern, 'first-closing-row', -1)).toBe(27);
  });

  test('is none where none was meant, or the piece has no such figure', () => {
    expect(namedRow(lantern, undefined)).toBeUndefined();
    expect(namedRow(straight, 'first-closing-row', 2)).toBeUndefined();
  });
});
