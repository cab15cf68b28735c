import { describe, expect, test } from 'vitest';
import {
  exercises,
  LEVELS,
  SPOT_FAULTS,
  SPOT_SHEETS,
  type SpotPlan,
  type SpotProblem,
  type SpotRow,
  type SpotSum,
} from '../../../src/solver/exercises/index.ts';
import { tieRow } from '../../../src/solver/exercises/row/tie.ts';
import { truePlan } from '../../../src/solver/exercises/spot/in-plan.ts';
import { rowOf, trueRow } from '../../../src/solver/exercises/spot/in-row.ts';
import { placesOf } from '../../../src/solver/exercises/spot/places.ts';
import { fitPiece } from '../../../src/solver/fit.ts';
import { outlineProblem } from '../../../src/solver/outline.ts';
import { drawing, replay } from '../../seed.ts';
import { made } from './draws.ts';
import '../matchers.ts';

const { row, spot, sum } = exercises;
const next = drawing();
const SEEDS = Array.from({ length: 60 }, () => `spot ${next(0, 1e9)}`);
const sheets = (sheet: (typeof SPOT_SHEETS)[number]): SpotProblem[] =>
  SEEDS.flatMap((seed, n) => {
    const faults = SPOT_FAULTS[sheet];
    const level = LEVELS[n % 4] ?? 'mixed';
    return [
      made(spot.make(seed, level, { in: sheet })),
      made(spot.make(seed, 'mixed', { in: sheet, fault: faults[n % faults.length] })),
    ];
  });

/** What hands do to come to the row as it is drawn; two strings that come out are two moves. */
function actsOf({ shown, before, change, direction }: SpotRow): string[] {
  const start = before[direction === 'rightward' ? 0 : 1];
  const takes = change === 'take-in' ? ['take-in'] : [];
  return [
    ...(start === 1 ? takes.map(() => 'carry-behind') : takes),
    ...shown.start.freed.map(() => 'let-out'),
    shown.start.knot,
    ...shown.start.freed,
    ...shown.between,
    ...takes,
    ...shown.end.freed.map(() => 'let-out'),
    ...shown.end.freed,
    shown.end.knot,
  ];
}

/** Places of a sheet at which it is not as it should be. */
function offPlaces(problem: SpotProblem): string[] {
  if (problem.in === 'row') {
    const right = trueRow(problem);
    const { shown } = problem;
    return placesOf(problem).filter((place) => {
      if (place === 'lead') return shown.rests !== right.rests;
      if (place === 'start' || place === 'end') return JSON.stringify(shown[place]) !== JSON.stringify(right[place]);
      const at = Number(place.slice('between-'.length)) - 1;
      return shown.between[at] !== right.between[at];
    });
  }
  if (problem.in === 'plan') {
    const right = truePlan(problem, problem.shown[0]?.row ?? 1, problem.shown.at(-1)?.row ?? 1);
    return problem.shown.flatMap((line, n) =>
      JSON.stringify(line) === JSON.stringify(right[n]) ? [] : [`row-${line.row}`],
    );
  }
  const asked = made(sum.make('written', 'mixed', { ...problem, oddMethod: problem.oddMethod ?? undefined }));
  const written = Object.fromEntries(problem.fields.map((field, n) => [field, problem.shown[n]]));
  const { fields } = sum.judge(asked, written);
  return problem.fields.filter((field) => fields[field]?.verdict === 'wrong');
}

describe.each(SPOT_SHEETS)('a fault in a %s', (sheet) => {
  const problems = sheets(sheet);

  test('is in one place and in no other, and is found there', () => {
    for (const problem of problems) {
      const about = `${replay} ${JSON.stringify(problem)}`;
      expect(offPlaces(problem), about).toEqual([spot.solve(problem).place]);
      expect(SPOT_FAULTS[sheet], about).toContain(spot.solve(problem).fault);
    }
  });

  test('can be any of its names, each of them at many places', () => {
    const met = new Set(problems.map((problem) => spot.solve(problem).fault));
    expect([...met].sort(), replay).toEqual([...SPOT_FAULTS[sheet]].sort());
    expect(new Set(problems.map((problem) => spot.solve(problem).place)).size).toBeGreaterThan(3);
  });

  test('is judged by place and by name, each for itself', () => {
    for (const problem of problems.slice(0, 40)) {
      const { place, fault } = spot.solve(problem);
      const otherPlace = placesOf(problem).find((each) => each !== place);
      const otherFault = SPOT_FAULTS[sheet].find((each) => each !== fault);
      expect(spot.check(problem, { place, fault: otherFault })).toMatchObject({ outcome: 'not-right', first: 'fault' });
      expect(spot.check(problem, { place: otherPlace, fault })).toMatchObject({
        outcome: 'not-right',
        first: 'place',
        fields: { place: { verdict: 'wrong', picked: otherPlace }, fault: { verdict: 'right' } },
        missteps: [],
      });
      expect(spot.judge(problem, { place })).toMatchObject({ outcome: 'unreadable', first: 'fault' });
      expect(spot.judge(problem, { place }, { upTo: 'place' }).outcome).toBe('right');
      expect(spot.judge(problem, { place: otherPlace }, { upTo: 'place' }).outcome).toBe('not-right');
    }
  });
});

test('a drawn row with a fault is refused as it is tied, and taken as it should be', () => {
  for (const problem of sheets('row') as SpotRow[]) {
    const about = `${replay} ${JSON.stringify(problem)}`;
    const tying = rowOf(problem);
    const right = trueRow(problem);
    expect(row.judge(tying, { acts: actsOf({ ...problem, shown: right }) }).outcome, about).toBe('right');
    const { fault } = spot.solve(problem);
    const tied = row.judge(tying, { acts: actsOf(problem) }).outcome;
    // Where a string or the leading string hangs at the end is no knot; there the walk itself says where it has to be.
    if (fault === 'lead-wrong-side')
      expect(tieRow(tying, row.solve(tying).acts).at, about).not.toBe(
        (problem.direction === 'rightward') === (problem.shown.rests === 'outside')
          ? problem.shown.rests === 'outside'
            ? problem.width
            : problem.shown.end.strings
          : problem.shown.rests === 'outside'
            ? 0
            : problem.width - problem.shown.end.strings,
      );
    else if (fault !== 'out-on-wrong-side') expect(tied, about).toBe('not-right');
  }
});

test('the solver refuses every plan with a fault: as an outline, or by its count of knots', () => {
  for (const problem of sheets('plan') as SpotPlan[]) {
    const { fault } = spot.solve(problem);
    const lines = problem.shown;
    const miscounted = lines.some(({ left, right, knots }) => knots !== problem.width - (left - 1) - (right - 1));
    const [first] = lines;
    const fitted = fitPiece({ width: problem.width, capacity: problem.width - 2 * ((first?.left ?? 1) - 1) });
    if (!fitted.ok || !first) throw new Error('these rows hang on no bar');
    const jumps = lines.slice(1).some((line, n) => {
      const above = lines[n];
      return Math.max(Math.abs(line.left - (above?.left ?? 0)), Math.abs(line.right - (above?.right ?? 0))) > 1;
    });
    expect(jumps || miscounted, `${replay} ${JSON.stringify(problem)}`).toBe(true);
    expect(miscounted).toBe(fault === 'strings-counted' || fault === 'bundles-left-out');
    if (jumps) {
      const outline = { left: lines.map(({ left }) => left), right: lines.map(({ right }) => right) };
      expect(outlineProblem(fitted.fit, outline)?.code, replay).not.toBeUndefined();
    }
  }
});

test('in a written sum all lines below the fault follow from it', () => {
  for (const problem of sheets('sum') as SpotSum[]) {
    const { place } = spot.solve(problem);
    const at = problem.fields.indexOf(place as (typeof problem.fields)[number]);
    const written = Object.fromEntries(problem.fields.map((field, n) => [field, problem.shown[n]]));
    const asked = made(sum.make('written', 'mixed', { ...problem, oddMethod: problem.oddMethod ?? undefined }));
    const { fields } = sum.judge(asked, written);
    for (const [n, field] of problem.fields.entries())
      if (n !== at)
        expect(fields[field]?.verdict, `${replay} ${JSON.stringify(problem)}`).toMatch(
          n < at ? /right/ : /right|follows/,
        );
  }
});

test('options that leave no room are refused', () => {
  expect(spot.make(1, 'alone', { in: 'chart' as never })).toBeRefusedAs('unknown-choice');
  expect(spot.make(1, 'alone', { in: 'row', fault: 'bar-kept' })).toBeRefusedAs('unknown-choice');
  expect(spot.make(1, 'alone', { in: 'row', phase: 'straight', fault: 'two-let-out' })).toBeRefusedAs('no-fit');
  expect(spot.make(1, 'alone', { in: 'sum', width: 12, capacity: 16 })).toBeRefusedAs('no-fit');
});
