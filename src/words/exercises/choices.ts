import type { ExerciseProblem } from '../../solver/exercises/contract.ts';
import { placesOf } from '../../solver/exercises/spot/places.ts';
import { SPOT_FAULTS } from '../../solver/exercises/spot/problem.ts';
import type { QuestionWords } from './question.ts';
import { FAULT_NAMES, placeWords } from './spot-sheet.ts';

/** What there is to choose from in an exercise, by field; a page gets it with the question, and loads no words for it. */
export function choicesIn(problem: ExerciseProblem): Pick<QuestionWords, 'choices'> {
  if (problem.kind !== 'spot') return {};
  return {
    choices: {
      place: placesOf(problem).map((place) => [place, placeWords(problem, place)] as const),
      fault: SPOT_FAULTS[problem.in].map((fault) => [fault, FAULT_NAMES[fault]] as const),
    },
  };
}
