import type { KindName, OptionsOf, ProblemOf } from '../../solver/exercises/contract.ts';
import { exercises } from '../../solver/exercises/index.ts';
import { type SheetCode, sheetSeed } from '../../solver/exercises/sheet-code.ts';
import { type AnswerLine, answerWords } from '../../words/exercises/answer-words.ts';
import { choicesIn } from '../../words/exercises/choices.ts';
import { type QuestionWords, questionWords } from '../../words/exercises/question.ts';
import { stepSum, stepWords } from '../../words/exercises/step-words.ts';
import type { Entered } from '../exercise/view.ts';
import type { WorkingLine } from '../working-list.tsx';
import type { SheetExercise } from './sheets-form.tsx';
import { workedPlate } from './worked-plate.ts';

/** One exercise on a sheet, with what is right for the key. */
export interface Asked<K extends KindName = KindName> {
  readonly id: string;
  readonly kind: K;
  /** Its number in the lesson. */
  readonly number: number;
  readonly problem: ProblemOf<K>;
  readonly question: QuestionWords;
  /** What a half-worked form gives. */
  readonly given: Entered;
  readonly answers: readonly AnswerLine[];
}

/** A case with other figures than any on the sheet, worked through, with its drawing where there is one. */
export interface Worked {
  readonly question: QuestionWords;
  readonly steps: readonly WorkingLine[];
  readonly svg: string | null;
}

export interface Sheet {
  readonly sheet: SheetCode;
  readonly asked: readonly Asked[];
  /** One for each kind of exercise on the sheet. */
  readonly worked: readonly Worked[];
}

function ask<K extends KindName>(sheet: SheetCode, exercise: SheetExercise & { readonly kind: K }): Asked<K> {
  const { make, solve, fade } = exercises[exercise.kind];
  const made = make(sheetSeed(sheet, exercise.id), exercise.level, exercise.options as OptionsOf<K>);
  if ('ok' in made) throw new Error(`Exercise ${exercise.id}: its options can't be made into a problem.`);
  return {
    id: exercise.id,
    kind: exercise.kind,
    number: exercise.number,
    problem: made,
    question: { ...questionWords(made), ...choicesIn(made) },
    given: exercise.level === 'half-worked' ? (fade(made).given as Entered) : {},
    answers: answerWords(exercise.kind, made, solve(made)),
  };
}

/** Works a case like each kind's first exercise; none where no other figures can be found. */
function workedLike({ kind, problem, id }: Asked, place: string): Worked[] {
  const { worked } = exercises[kind as 'sum'].hints(problem as ProblemOf<'sum'>);
  if (!worked) return [];
  return [
    {
      question: questionWords(worked.problem),
      steps: worked.steps.map((step) => ({ sum: stepSum(kind, step as never), text: stepWords(kind, step as never) })),
      svg: workedPlate(worked.problem, `${id}-${place}-case`),
    },
  ];
}

/** The sheet of one learner, or of the room: the same from the same code, for ever. */
export function makeSheet(sheet: SheetCode, wanted: readonly SheetExercise[]): Sheet {
  const asked = wanted.map((exercise) => ask(sheet, exercise));
  const firsts = asked.filter(({ kind }, at) => asked.findIndex((other) => other.kind === kind) === at);
  return { sheet, asked, worked: firsts.flatMap((first) => workedLike(first, String(sheet.learner ?? 0))) };
}
