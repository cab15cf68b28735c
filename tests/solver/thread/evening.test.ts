import { describe, expect, test } from 'vitest';
import { planPiece } from '../../../src/solver/plan.ts';
import { EVENING_PARTS, eveningOf, HANDS, makingMinutes } from '../../../src/solver/thread/evening.ts';
import { colourRuns, rowFloats } from '../../../src/solver/thread/row-floats.ts';
import { drawing, replay } from '../../seed.ts';

const planned = (input: Parameters<typeof planPiece>[0]) => {
  const plan = planPiece(input);
  if (!plan.ok) throw new Error(plan.problem.code);
  return plan;
};
const buoy = planned({ width: 12, height: 14, capacity: 8 });

describe('an evening', () => {
  test('with the evening’s piece takes first-time hands 164 knots of 30 seconds, 6.5 minutes to mount and 15 to finish', () => {
    expect(makingMinutes(buoy, 'first-time')).toBe(104);
    expect(makingMinutes(buoy, 'steady')).toBe(69);
    expect(makingMinutes(buoy, 'practised')).toBe(41);
  });
  test('begins at once, leaves no gap, and is the longer the less practised the hands are', () => {
    for (const hands of HANDS) {
      const parts = eveningOf(buoy, hands);
      expect(parts[0]?.from).toBe(0);
      parts.forEach((part, index) => {
        expect(part.to).toBeGreaterThan(part.from);
        if (index > 0) expect(part.from).toBe(parts[index - 1]?.to);
      });
      expect(parts.map(({ part }) => part)).toEqual(
        EVENING_PARTS.filter((part) => parts.some((has) => has.part === part)),
      );
    }
    const ends = HANDS.map((hands) => eveningOf(buoy, hands).at(-1)?.to ?? 0);
    expect(ends).toEqual([...ends].sort((a, b) => a - b));
  });
  test('has no part for what a piece has not got', () => {
    const parts = (input: Parameters<typeof planPiece>[0]) => eveningOf(planned(input)).map(({ part }) => part);
    expect(parts({ width: 10, height: 12, capacity: 12 })).not.toContain('opening');
    expect(parts({ width: 10, height: 12, capacity: 12 })).not.toContain('closing');
    expect(parts({ width: 26, height: 7, capacity: 16 })).not.toContain('straight-on');
  });
  test('spends on its rows what its knots take, to the minute of each part', () => {
    for (const hands of HANDS) {
      const parts = eveningOf(buoy, hands);
      const spent = (...names: string[]) =>
        parts.filter(({ part }) => names.includes(part)).reduce((sum, { from, to }) => sum + to - from, 0);
      const work = spent('mounting', 'opening', 'straight', 'straight-on', 'closing', 'finishing');
      expect(Math.abs(work - makingMinutes(buoy, hands))).toBeLessThanOrEqual(3);
    }
  });
});

describe('floats inside a row', () => {
  test('skip what lies between two uses of a colour, worked by hand', () => {
    const row = [
      { colour: 0, knots: 4 },
      { colour: 1, knots: 3 },
      { colour: 0, knots: 2 },
      { colour: 2, knots: 1 },
      { colour: 1, knots: 5 },
    ];
    expect(rowFloats(row)).toEqual([
      { colour: 0, columns: 3, after: 4 },
      { colour: 1, columns: 3, after: 7 },
    ]);
  });
  test('are none where every colour comes once, and neighbours of one colour are one run', () => {
    expect(rowFloats([{ colour: 1, knots: 9 }])).toEqual([]);
    const run = (colour: number) => ({ knot: 'forward', columns: [1, 2], count: 2, strands: 1, colour }) as const;
    expect(colourRuns([run(3), run(3), run(1)])).toEqual([
      { colour: 3, knots: 4 },
      { colour: 1, knots: 2 },
    ]);
  });
  test('come to the cells between, counted one by one', () => {
    const next = drawing();
    for (let turn = 0; turn < 60; turn += 1) {
      const cells = Array.from({ length: next(1, 40) }, () => next(0, 3));
      const counted = cells.reduce((sum, colour, at) => {
        const before = cells.lastIndexOf(colour, at - 1);
        return at > 0 && before >= 0 ? sum + at - before - 1 : sum;
      }, 0);
      const found = rowFloats(
        cells
          .map((colour) => ({ colour, knots: 1 }))
          .reduce<{ colour: number; knots: number }[]>((runs, { colour }) => {
            const last = runs.at(-1);
            if (last?.colour === colour) last.knots += 1;
            else runs.push({ colour, knots: 1 });
            return runs;
          }, []),
      );
      expect(
        found.reduce((sum, { columns }) => sum + columns, 0),
        `${replay}: ${cells}`,
      ).toBe(counted);
    }
  });
});
