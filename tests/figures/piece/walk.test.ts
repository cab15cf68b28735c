import { describe, expect, it } from 'vitest';
import {
  type At,
  atStanding,
  atStep,
  knotBack,
  knotOn,
  type Moment,
  momentsOf,
  piecePlate,
  rowBack,
  rowOn,
  sameIn,
  standingAt,
  stepOf,
  stepsIn,
} from '../../../src/figures/piece/index.ts';
import { pieceFigureWords, standingName } from '../../../src/words/figures/piece.ts';
import { drawing, replay, seed } from '../../seed.ts';
import { drawPlan, evening, lantern, planned } from '../drawn.ts';
import { expanded, modelOf } from './pieces.ts';

const straight = planned({ width: 10, height: 12, capacity: 12, closingBundle: 1 });
const show = { id: 'plate', words: pieceFigureWords };

describe('the moments of a piece', () => {
  it('are seven for the lantern: mounted, row 1, full width in row 6, row 27, row 32, gathered, finished', () => {
    expect(momentsOf(lantern).map((moment) => [moment, standingAt(lantern, moment).upToRow])).toEqual([
      ['mounted', 0],
      ['first-row', 1],
      ['full-width', 6],
      ['before-closing', 27],
      ['last-row', 32],
      ['gathered', 32],
      ['finished', 32],
    ]);
  });

  it('leave out what a straight piece has not got', () => {
    expect(momentsOf(straight)).toEqual(['mounted', 'first-row', 'before-closing', 'gathered', 'finished']);
  });

  it(`differ from each other in what is tied or how it ends, on 40 pieces at random (${replay})`, () => {
    const draw = drawing(seed);
    for (let i = 0; i < 40; i += 1) {
      const plan = drawPlan(draw);
      const standings = momentsOf(plan).map((moment) => standingAt(plan, moment));
      expect(new Set(standings.map((one) => JSON.stringify(one))).size).toBe(standings.length);
      expect(standings.map(({ upToRow }) => upToRow)).toEqual(
        standings.map(({ upToRow }) => upToRow).sort((a, b) => a - b),
      );
    }
  });
});

describe('a walk through a piece', () => {
  it('goes knot by knot through all 164 of the evening’s piece, then gathers and finishes, and back the same way', () => {
    const there: At[] = [atStep(evening, 0)];
    for (let at = there[0] as At; stepOf(evening, at) < stepsIn(evening); ) {
      at = knotOn(evening, at);
      there.push(at);
    }
    expect(there.length).toBe(1 + 164 + 2);
    let knots = 0;
    for (const row of evening.rows)
      for (let knot = 1; knot <= row.knots; knot += 1) {
        knots += 1;
        expect(there[knots]).toEqual({ upToRow: row.row, upToKnot: knot, ending: 'hanging' });
      }
    expect(there.slice(-2).map(({ ending }) => ending)).toEqual(['gathered', 'finished']);
    let back = there.at(-1) as At;
    for (const at of [...there].reverse().slice(1)) {
      back = knotBack(evening, back);
      expect(back).toEqual(at);
    }
  });

  it('goes row by row, from the middle of a row to its end and to the end of the one before', () => {
    const middle = atStanding(evening, { upToRow: 5, upToKnot: 3, ending: 'hanging' });
    expect(rowOn(evening, middle)).toEqual(atStep(evening, 5));
    expect(rowBack(evening, middle)).toEqual(atStep(evening, 4));
    expect(rowOn(evening, atStep(evening, 5))).toEqual(atStep(evening, 6));
    expect(rowBack(evening, atStep(evening, 0))).toEqual(atStep(evening, 0));
    expect(rowOn(evening, atStep(evening, 99))).toEqual(atStep(evening, stepsIn(evening)));
  });

  it('keeps its place in another piece, or the nearest that it has', () => {
    expect(sameIn(evening, atStep(lantern, 9))).toMatchObject({ upToRow: 9 });
    expect(sameIn(evening, atStep(lantern, 30))).toEqual(atStep(evening, 14));
    expect(sameIn(evening, atStep(lantern, stepsIn(lantern)))).toEqual(atStep(evening, stepsIn(evening)));
  });

  it('names each place in a few words', () => {
    expect(standingName({ row: 0, knot: 0, of: 0, ending: 'hanging' })).toBe('Mounted');
    expect(standingName({ row: 5, knot: 3, of: 18, ending: 'hanging' })).toBe('Row 5, knot 3 of 18');
    expect(standingName({ row: 5, knot: 18, of: 18, ending: 'hanging' })).toBe('Row 5');
    expect(standingName({ row: 14, knot: 8, of: 8, ending: 'gathered' })).toBe('Gathered');
  });
});

describe('a plate of a whole piece', () => {
  it('is finished when nothing else is asked for, and follows a row', () => {
    expect(piecePlate(evening, {}, show).description).toContain('gathered, tied off and trimmed');
    expect(piecePlate(evening, { row: 3 }, show).description).toContain('tied to row 3 of 14');
    expect(piecePlate(evening, { row: 3, knot: 2 }, show).description).toContain('2 of 12 knots');
    expect(piecePlate(evening, { moment: 'mounted', side: 'back' }, show).title).toContain('from the back');
  });

  it('has several moments side by side, each with its name, and says them all', () => {
    const { svg, description } = piecePlate(evening, { after: ['last-row', 'gathered'], moment: 'finished' }, show);
    expect([...svg.matchAll(/<p>([^<]+)<\/p>/g)].map(([, name]) => name)).toEqual([
      'After the last row, row 14',
      'Gathered',
      'Finished',
    ]);
    expect(description).toContain('Gathered: 164 knots are tied. The single strings are gathered into two bundles');
  });

  it('draws rows that two moments share once, and every knot of each is there', () => {
    for (const side of ['front', 'back'] as const)
      for (const [after, moment] of [
        ['mounted', 'first-row'],
        ['first-row', 'full-width'],
        ['before-closing', 'last-row'],
        ['last-row', 'finished'],
      ] satisfies [Moment, Moment][]) {
        const { svg } = piecePlate(lantern, { after, moment, side, level: 'stitch' }, show);
        const knots = [after, moment].reduce((sum, one) => sum + modelOf(lantern, standingAt(lantern, one)).knots, 0);
        const uses = expanded(svg).filter(
          ({ tag, colour }) => tag.name === 'use' && /^#plate-[0-9a-z]$/.test(tag.at['href'] ?? '') && colour !== '',
        );
        expect(uses.length, `${after}, ${moment}, ${side}`).toBe(knots);
        const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
        expect(new Set(ids).size).toBe(ids.length);
        expect(svg.length).toBeLessThan(100_000);
      }
  });

  it(`can be drawn at each moment of 12 pieces at random (${replay})`, () => {
    const draw = drawing(seed);
    for (let i = 0; i < 12; i += 1) {
      const plan = drawPlan(draw);
      const [first, ...others] = momentsOf(plan);
      const { svg, description } = piecePlate(plan, { after: first, moment: others.at(-1), level: 'cell' }, show);
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
      expect(description).not.toMatch(/\?|undefined|NaN/);
      for (const moment of others) expect(piecePlate(plan, { moment, level: 'cell' }, show).svg).not.toMatch(/NaN/);
    }
  });
});
