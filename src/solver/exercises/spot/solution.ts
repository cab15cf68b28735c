import { bundlesIn, OUTLINE_RULES } from '../outline.ts';
import type { WorkedStep } from '../steps.ts';
import type { SumField } from '../sum/problem.ts';
import { carriedEnds, workOut } from '../sum/solve.ts';
import { trueRow } from './in-row.ts';
import { sumOfSpot } from './in-sum.ts';
import { placesOf, stringAt } from './places.ts';
import type { SpotFault, SpotField, SpotPlace, SpotProblem, SpotSheet } from './problem.ts';
import { solve } from './solve.ts';

export type SpotStepKey = `right-${SpotSheet}` | `wrong-${SpotFault}`;
export type SpotHintKey = `look-${SpotSheet}` | `do-${SpotSheet}` | `look-fault-${SpotSheet}` | `do-fault-${SpotSheet}`;
export type SpotStep = WorkedStep<SpotStepKey, SpotField>;

/** What stands at a place, and what should stand there, as a sentence needs it. */
function valuesOf(problem: SpotProblem, place: SpotPlace): Record<string, number | string> {
  if (problem.in === 'row') {
    const right = trueRow(problem);
    const { shown, direction } = problem;
    const [startSide, endSide] = direction === 'rightward' ? ['left', 'right'] : ['right', 'left'];
    const base = { in: 'row', place, direction, rests: right.rests };
    if (place === 'lead') return { ...base, side: endSide ?? '', strings: right.end.strings };
    if (place === 'start' || place === 'end')
      return {
        ...base,
        side: (place === 'start' ? startSide : endSide) ?? '',
        strings: right[place].strings,
        knot: right[place].knot,
        shown: shown[place].knot,
        freed: shown[place].freed.length,
      };
    const at = Number(place.slice('between-'.length));
    return {
      ...base,
      number: stringAt(problem, at),
      knot: right.between[at - 1] ?? '',
      shown: shown.between[at - 1] ?? '',
    };
  }
  if (problem.in === 'plan') {
    const row = Number(place.slice('row-'.length));
    const [left, right] = bundlesIn(OUTLINE_RULES, problem, row);
    const line = problem.shown.find((each) => each.row === row);
    return {
      in: 'plan',
      place,
      row,
      left,
      right,
      width: problem.width,
      knots: OUTLINE_RULES.knots(problem, [left, right]),
      shownLeft: line?.left ?? left,
      shownRight: line?.right ?? right,
      shownKnots: line?.knots ?? 0,
    };
  }
  const figures = workOut(sumOfSpot(problem));
  const index = problem.fields.indexOf(place as SumField);
  const written = Object.fromEntries(problem.fields.map((field, line) => [`${field}Shown`, problem.shown[line] ?? '']));
  return {
    in: 'sum',
    place,
    figure: problem.fields[index] === 'parity' ? '' : figures[problem.fields[index] ?? 'spare'],
    shown: problem.shown[index] ?? '',
    ...written,
    strands: problem.width + carriedEnds(sumOfSpot(problem)),
    capacity: problem.capacity,
    spare: figures.spare,
    half: figures.eachSide,
    places: figures.places,
    borrowed: figures.borrowed,
  };
}

/** Place by place down to the fault: what is right and why, then what is wrong there. */
export function solution(problem: SpotProblem): SpotStep[] {
  const { place, fault } = solve(problem);
  const places = placesOf(problem);
  const before = places.slice(0, places.indexOf(place));
  return [
    ...before.map((each): SpotStep => ({ key: `right-${problem.in}`, values: valuesOf(problem, each), gives: null })),
    { key: `wrong-${fault}`, values: valuesOf(problem, place), gives: 'place' },
  ];
}

/** Why a place that was picked is right; for the sheet's own words. */
export const rightAt = (problem: SpotProblem, place: SpotPlace): Record<string, number | string> =>
  valuesOf(problem, place);
