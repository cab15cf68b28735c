import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitPiece, type Piece, planRows, type RowPlan } from '../../../src/solver/index.ts';
import { followLeads, type Leads } from '../../../src/solver/thread/floats.ts';
import { tries } from '../../seed.ts';
import { chartedPieces } from '../worlds.ts';
import { everyFloat, everyKnot } from './knot-by-knot.ts';
import { chartFrom } from './small-chart.ts';

/** A straight piece, every string on the bar. */
function straight(lines: readonly string[]): readonly RowPlan[] {
  const chart = chartFrom(lines);
  const fitted = fitPiece({ width: chart.width, capacity: chart.width });
  if (!fitted.ok) throw new Error(fitted.problem.code);
  const ones = lines.map(() => 1);
  const rows = planRows({ fit: fitted.fit, bundles: { left: ones, right: ones }, chart });
  if (!Array.isArray(rows)) throw new Error('no rows');
  return rows;
}

/** Columns and rows of the floats of one colour that go from one row to a later one, one after the other. */
const betweenRowsOf = (followed: Leads, colour: number): number[] =>
  Array.from({ length: followed.betweenRows.length / 3 }, (_, float) => [
    ...followed.betweenRows.slice(3 * float, 3 * float + 3),
  ])
    .filter(([own]) => own === colour)
    .flatMap(([, columns, rows]) => [columns ?? Number.NaN, rows ?? Number.NaN]);

function leadOf(rows: readonly RowPlan[], colour: number) {
  const followed = followLeads(rows, true, null);
  return { ...followed.leads.find((lead) => lead.colour === colour), betweenRows: betweenRowsOf(followed, colour) };
}

function rowsOf(piece: Piece): readonly RowPlan[] {
  const rows = planRows(piece);
  if (!Array.isArray(rows)) throw new Error('no rows');
  return rows;
}

describe('floats', () => {
  it('one colour alone never floats', () => {
    expect(leadOf(straight(['0000', '0000', '0000']), 0)).toMatchObject({
      knots: 12,
      starts: 1,
      floats: 0,
      columnsInRows: 0,
      floatsBetweenRows: 0,
    });
  });

  it('within a row a colour floats behind the knots of another', () => {
    // Row 1 goes right: 0 ties 2 knots and stops at boundary 2; 1 ties 3; 0 goes on at boundary 5.
    const rows = straight(['001110']);
    expect(leadOf(rows, 0)).toMatchObject({ knots: 3, floats: 1, columnsInRows: 3, betweenRows: [] });
    expect(leadOf(rows, 1)).toMatchObject({ knots: 3, floats: 0, columnsInRows: 0 });
  });

  it('a colour that ties the last knot of a row and the first of the next does not float', () => {
    // Row 1 goes right, row 2 left: colour 1 turns at the right edge.
    expect(leadOf(straight(['0011', '0011']), 1)).toMatchObject({ floats: 0, betweenRows: [] });
  });

  it('from row to row it floats from where its last knot ended to where the next begins', () => {
    // Row 1, right: 0 ends at boundary 2. Row 2, left: 1 comes first, then 0 begins at boundary 2: none across, one down.
    expect(leadOf(straight(['0011', '0011']), 0)).toMatchObject({ floats: 1, columnsInRows: 0, betweenRows: [0, 1] });
    // Row 1, right: 0 ends at 2. Row 2 has none of it. Row 3, right again: 0 begins at 0: two across, two down.
    expect(leadOf(straight(['0011', '1111', '0011']), 0)).toMatchObject({ floats: 1, betweenRows: [2, 2] });
  });

  it('after nine rows without it a colour floats; after ten it is joined anew', () => {
    const rest = (rows: number) => straight(['0011', ...Array.from({ length: rows }, () => '1111'), '0011']);
    expect(leadOf(rest(9), 0)).toMatchObject({ starts: 1, floats: 1 });
    expect(leadOf(rest(10), 0)).toMatchObject({ starts: 2, floats: 0, betweenRows: [] });
  });

  it('a bundle is left and reached on its inner side', () => {
    // 6 wide on 2: two folds beside the bar, 2 columns each side. Row 1: left bundle at column 2, right at column 5.
    const fitted = fitPiece({ width: 6, capacity: 2 });
    if (!fitted.ok) throw new Error(fitted.problem.code);
    const chart = chartFrom(['000110', '000000', '000000']);
    const rows = planRows({ fit: fitted.fit, bundles: { left: [2, 1, 1], right: [2, 1, 1] }, chart });
    if (!Array.isArray(rows)) throw new Error('no rows');
    // 0: bundle, column 3 (ends at boundary 3). 1: column 4, then the right bundle, begun and ended at boundary 4.
    // Row 2, left: the last string of the right edge passed in; 0 ties column 6 from boundary 5.
    const followed = followLeads(rows, true, null);
    expect(betweenRowsOf(followed, 0)).toEqual([2, 1]);
    expect(followed.leads).toMatchObject([
      { colour: 0, knots: 14, floats: 1, columnsInRows: 0, floatsBetweenRows: 1, overBundles: [2, 1] },
      { colour: 1, knots: 2, floats: 0, overBundles: [2, 1] },
    ]);
  });

  it('agree with following every string knot by knot, on any outline and chart', () => {
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const rows = rowsOf(piece);
        const followed = followLeads(rows, true, piece.fit.carrySide);
        const { leads, coloursInRow } = followed;
        const long = [...followed.long];
        const knots = everyKnot(rows, piece.fit);
        const { floats, starts } = everyFloat(knots);
        const colours = [...new Set(knots.map(({ colour }) => colour))].sort((a, b) => a - b);
        expect(leads.map(({ colour }) => colour)).toEqual(colours);
        for (const lead of leads) {
          const own = knots.filter(({ colour }) => colour === lead.colour);
          const ownFloats = floats.filter(({ colour }) => colour === lead.colour);
          const inRows = ownFloats.filter(({ rows: down }) => down === 0);
          expect(lead.knots).toBe(own.length);
          expect(lead.starts).toBe(starts.get(lead.colour));
          expect(lead.floats).toBe(ownFloats.length);
          expect(lead.columnsInRows).toBe(inRows.reduce((sum, { from, to }) => sum + Math.abs(to - from), 0));
          expect(lead.floatsBetweenRows).toBe(ownFloats.length - inRows.length);
          expect(betweenRowsOf(followed, lead.colour)).toEqual(
            ownFloats
              .filter(({ rows: down }) => down > 0)
              .flatMap(({ from, to, rows: down }) => [Math.abs(to - from), down]),
          );
          const cores = [...new Set(own.map(({ core }) => core))].filter((core) => core > 1).sort((a, b) => a - b);
          expect(lead.overBundles).toEqual(
            cores.flatMap((core) => [core, own.filter((knot) => knot.core === core).length]),
          );
        }
        const longOnes = floats.filter(({ from, to }) => Math.abs(to - from) > 5);
        const expected = new Map<string, number[]>();
        for (const { row, colour, from, to, rows: down } of longOnes) {
          const known = expected.get(`${row} ${colour}`);
          const count = (known?.[5] ?? 0) + 1;
          // The longest, the first of equals.
          const longer = !known || Math.abs(to - from) > Math.abs((known[3] ?? 0) - (known[2] ?? 0));
          expected.set(
            `${row} ${colour}`,
            longer ? [row, colour, from, to, down, count] : [...known.slice(0, 5), count],
          );
        }
        const found: number[][] = [];
        for (let at = 0; at < long.length; at += 6) found.push(long.slice(at, at + 6));
        const inOrder = (a: readonly number[], b: readonly number[]) =>
          (a[0] ?? 0) - (b[0] ?? 0) || (a[1] ?? 0) - (b[1] ?? 0);
        expect(found.sort(inOrder)).toEqual([...expected.values()].sort(inOrder));
        expect([...coloursInRow]).toEqual(
          rows.map(({ row }) => new Set(knots.filter((knot) => knot.row === row).map(({ colour }) => colour)).size),
        );
      }),
      tries(500),
    );
  });

  it('followed once, the same rows give the same answer again, and each way of asking its own', () => {
    const rows = straight(['001110', '001110']);
    const coloured = followLeads(rows, true, null);
    expect(followLeads(rows, true, null)).toEqual(coloured);
    expect(followLeads(rows, false, null).leads).toMatchObject([{ colour: 0, knots: 12 }]);
    expect(followLeads(rows, true, null)).toEqual(coloured);
    expect(followLeads(rows, true, 'right').leads.some(({ overBundles }) => overBundles.length > 0)).toBe(true);
  });
});
