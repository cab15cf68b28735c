import { expect, test } from 'vitest';
import { placesOf } from '../../src/solver/exercises/spot/places.ts';
import { exercises, LEVELS, type RowProblem, type SpotProblem } from '../../src/solver/index.ts';
import { ACT_NAMES } from '../../src/words/exercises/act-names.ts';
import { questionWords } from '../../src/words/exercises/question.ts';
import { FAULT_NAMES, placeWords } from '../../src/words/exercises/spot-sheet.ts';
import { replay, seed } from '../seed.ts';
import { faultByEar, rowByEar } from './ear.ts';

const HEARD = 300;
const said = (problem: RowProblem | SpotProblem): string => {
  const { given, ask } = questionWords(problem);
  return `${given} ${ask}`;
};

test('who hears the question of a row, and sees nothing of it, can tie it', () => {
  for (let n = 0; n < HEARD; n += 1) {
    const problem = exercises.row.make(`${seed} ${n}`, LEVELS[n % 4] ?? 'mixed');
    const acts = exercises.row.solve(problem).acts.map((act) => ACT_NAMES[act]);
    expect(rowByEar(said(problem)), `${replay} ${said(problem)}`).toEqual(acts);
  }
});

test('who hears what stands at each place of a tied row finds the fault in it', () => {
  for (let n = 0; n < HEARD; n += 1) {
    const problem = exercises.spot.make(`${seed} ${n}`, LEVELS[n % 4] ?? 'mixed', { in: 'row' });
    if ('ok' in problem) throw new Error(problem.problem.code);
    const places = placesOf(problem).map((place) => placeWords(problem, place));
    const found = faultByEar(said(problem), places);
    const { place, fault } = exercises.spot.solve(problem);
    const where = `${replay} ${said(problem)} ${places.join(' ')}`;
    expect(found?.place, where).toBe(placeWords(problem, place));
    const named = Object.values(FAULT_NAMES).filter((name) => found?.fault.test(name));
    expect(named, where).toEqual([FAULT_NAMES[fault]]);
  }
});
