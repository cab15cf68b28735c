import { parse } from 'node-html-parser';
import { describe, expect, it } from 'vitest';
import { halfColumn, standingPacked } from '../../src/figures/piece/packed.ts';
import { UNIT } from '../../src/figures/piece/pen.ts';
import { tiedKnots, tiedShape } from '../../src/figures/tied-knots.ts';
import { halfOf, reachOf, TIED } from '../../src/figures/tied-row.ts';
import { faultyRows, trueRow } from '../../src/solver/exercises/spot/in-row.ts';
import type { ShownRow, SpotRow } from '../../src/solver/exercises/spot/problem.ts';
import { exercises } from '../../src/solver/index.ts';
import type { Knot } from '../../src/solver/piece.ts';
import { rowDrawing, spotDrawing } from '../../src/widgets/exercise/tied-drawing.ts';
import { replay, seed } from '../seed.ts';

const KNOTS: readonly Knot[] = ['forward', 'backward', 'forward-backward', 'backward-forward'];
const STRANDS = [1, 2, 3, 4, 5, 6, 7, 8];
/** What the eye does not see at the size in which rows are drawn: a seventh of the cord. */
const SLIGHT = 3;

const sheets = Array.from({ length: 60 }, (_, i) => exercises.spot.make(`${seed}-${i}`, 'mixed', { in: 'row' })).filter(
  (made): made is SpotRow => !('ok' in made),
);
const rowsOf = (sheet: SpotRow) =>
  faultyRows(sheet).map(({ fault, place, shown }) => ({ fault, place, row: { ...sheet, shown } }));

const held = new Map(
  parse(tiedKnots())
    .querySelectorAll('g')
    .map((shape) => [`#${shape.id}`, shape]),
);
const drawn = (sheet: SpotRow) => parse(spotDrawing('row', sheet, ['Nothing is said here.']));
/** Ways of the leading string behind the strings: cords of its colour that are painted before them. */
const behind = (sheet: SpotRow): number => {
  const cords = drawn(sheet).querySelectorAll('.f-cords > g');
  return cords.findIndex((cord) => cord.getAttribute('color') === 'var(--b)');
};

describe('the knots that a page holds', () => {
  it.each(KNOTS.flatMap((knot) => STRANDS.map((strands) => [knot, strands] as const)))(
    'a %s knot on %i: begins and ends where the row leads its string',
    (knot, strands) => {
      const { lead, bases } = tiedShape(knot, strands);
      const way = knot.startsWith('forward') ? 1 : -1;
      const [start, end] = [lead[0], lead.at(-1)].map((point) => [(point?.[0] ?? 0) * UNIT, (point?.[1] ?? 0) * UNIT]);
      const out = halfOf(strands);
      const near = (place: readonly number[] | undefined, x: number, y: number) => {
        expect(Math.abs((place?.[0] ?? Number.NaN) - x)).toBeLessThan(SLIGHT);
        expect(Math.abs((place?.[1] ?? Number.NaN) - y)).toBeLessThan(SLIGHT);
      };
      near(start, -way * (out + TIED.before), TIED.comes);
      if (knot.includes('-')) near(end, -way * (out + TIED.before), TIED.turned);
      else near(end, way * out, TIED.leaves);
      expect(bases).toHaveLength(strands);
      for (const base of bases) {
        expect(Math.abs((base[0]?.[1] ?? 0) * UNIT - TIED.held[0])).toBeLessThan(1);
        expect(Math.abs((base.at(-1)?.[1] ?? 0) * UNIT - TIED.held[1])).toBeLessThan(1);
      }
      expect(held.get(`#tied-${knot}-${strands}`)?.querySelectorAll('.pc-b.pc-n')).toHaveLength(strands > 2 ? 2 : 1);
    },
  );

  it.each([...STRANDS, 9, 12])('%i strands stand as far apart as in the whole piece', (strands) => {
    expect(halfOf(strands)).toBeCloseTo(halfColumn(strands) * UNIT, 6);
    expect(reachOf(strands)).toBeCloseTo((standingPacked(strands).at(-1)?.[0] ?? 0) * UNIT, 6);
  });

  it('every one has a shape of its own', () => {
    expect(held.size).toBe(KNOTS.length * STRANDS.length);
    expect(new Set([...held.values()].map(({ innerHTML }) => innerHTML)).size).toBe(held.size);
  });
});

describe(`a row as it was tied (${replay})`, () => {
  it('has each of its knots, right or wrong, on as many strings as are under it', () => {
    for (const sheet of sheets)
      for (const { row } of rowsOf(sheet)) {
        const { start, between, end } = row.shown;
        const edge = ({ strands, knot, freed }: { strands: number; knot: Knot; freed: readonly Knot[] }) => [
          `#tied-${knot}-${Math.min(8, strands)}`,
          ...freed.map((one) => `#tied-${one}-1`),
        ];
        const wanted = [
          ...edge({ ...start, strands: start.strings }),
          ...between.map((knot) => `#tied-${knot}-1`),
          ...edge({ ...end, strands: end.strings }),
        ];
        const uses = drawn(row)
          .querySelectorAll('use')
          .map((use) => use.getAttribute('href') ?? '');
        expect(uses.toSorted()).toEqual(wanted.toSorted());
        for (const use of uses) expect(held.has(use), use).toBe(true);
      }
  });

  it('has every string once, and a place to point at for each knot and for the leading string', () => {
    for (const sheet of sheets)
      for (const { row } of rowsOf(sheet)) {
        const paths = drawn(row)
          .querySelectorAll('.f-cords > g[color="var(--b)"] .pc-b, .f-cords > g[color="var(--a)"] .pc-b')
          .map((path) => path.getAttribute('d') ?? '');
        expect(paths.join('').split('M').length - 1).toBe(row.width);
        const places = drawn(row).querySelectorAll('.f-pick');
        expect(places.length).toBe(drawn(row).querySelectorAll('use').length + 1);
      }
  });

  it('leads its string from knot to knot where all is right, and behind the strings where a fault makes it', () => {
    for (const sheet of sheets) {
      const right: ShownRow = trueRow(sheet);
      // Where two single strings become a bundle, the string is carried behind them in a row that is right, too.
      const carried = sheet.change === 'take-in' && sheet.before[0] === 1;
      const usual = behind({ ...sheet, shown: right });
      expect(usual).toBe(carried ? 1 : 0);
      for (const { fault, place, row } of rowsOf(sheet)) {
        if (fault === 'two-let-out') expect(behind(row)).toBe(usual);
        // A first knot that is wrong may spare the learner's string the way that it should have gone.
        else if (!(carried && place === 'start')) expect(behind(row), fault).toBeGreaterThan(usual);
      }
    }
  });

  it('as far as it is tied, the knots are those that were tied', () => {
    for (let i = 0; i < 20; i += 1) {
      const problem = exercises.row.make(`${seed}-${i}`, 'mixed');
      const { acts } = exercises.row.solve(problem);
      for (let done = 0; done <= acts.length; done += 1) {
        const tied = acts.slice(0, done).filter((act) => KNOTS.includes(act as Knot));
        const uses = parse(rowDrawing('row', problem, acts.slice(0, done))).querySelectorAll('use');
        expect(uses.map((use) => use.getAttribute('href')?.replace(/^#tied-|-\d$/g, ''))).toEqual(tied);
      }
    }
  });
});
