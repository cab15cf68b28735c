import type { KindName } from '../solver/exercises/contract.ts';
import { exercises, LEVELS } from '../solver/exercises/index.ts';
import { type Skill, skillsOf } from '../solver/exercises/skills.ts';

/** An exercise of a lesson, as practice asks it. */
export interface BankExercise {
  readonly id: string;
  readonly kind: KindName;
  /** Everything else that the lesson sets. */
  readonly options: object;
  readonly lesson: string;
  readonly ofLesson: readonly Skill[];
  /** Every skill that some figures of it ask for. */
  readonly skills: readonly Skill[];
}

const EXERCISE = /<Exercise((?:\s+[\w-]+(?:=(?:"[^"]*"|\{[^}]*\}))?)*)\s*\/?>/g;
const SETTING = /([\w-]+)(?:=(?:"([^"]*)"|\{([^}]*)\}))?/g;
/** A lesson holds figures and lists of names, no code: `{3}`, `{true}`, `{['spare', 'onBar']}`. */
const settingOf = (code: string): unknown => JSON.parse(code.replaceAll("'", '"'));

/** Sets of figures that are looked at, to find out what an exercise asks for. */
const LOOKED_AT = 12;

/** What each exercise of a lesson's text is set to. */
export const exercisesIn = (text: string): readonly Readonly<Record<string, unknown>>[] =>
  [...text.matchAll(EXERCISE)].map(([, settings = '']) =>
    Object.fromEntries(
      [...settings.matchAll(SETTING)].map(([, name, words, code]) => [
        name,
        words ?? (code === undefined ? true : settingOf(code)),
      ]),
    ),
  );

function bankExercise(
  lesson: string,
  ofLesson: readonly Skill[],
  { id, kind, level: _, seed: __, ...options }: Readonly<Record<string, unknown>>,
): BankExercise {
  const found = new Set<Skill>();
  const known = kind as 'sum';
  for (const level of LEVELS)
    for (let seed = 0; seed < LOOKED_AT; seed += 1) {
      const made = exercises[known].make(seed, level, options);
      if (!('ok' in made)) for (const skill of skillsOf(known, made, ofLesson)) found.add(skill);
    }
  return { id: String(id), kind: known, options, lesson, ofLesson, skills: [...found] };
}

/** A lesson as far as its exercises go. */
export interface LessonText {
  readonly id: string;
  readonly body?: string | undefined;
  readonly data: { readonly skills: readonly Skill[] };
}

/** Every exercise of these lessons, in their order. */
export const exerciseBank = (lessons: readonly LessonText[]): readonly BankExercise[] =>
  lessons.flatMap(({ id, body = '', data }) => exercisesIn(body).map((set) => bankExercise(id, data.skills, set)));
