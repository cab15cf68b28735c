import type { KindName, Level, OptionsOf, ProblemOf } from '../../solver/exercises/contract.ts';
import { LEVELS } from '../../solver/exercises/level.ts';
import { making } from '../../solver/exercises/making.ts';
import { hashSeed } from '../../solver/exercises/seed.ts';
import { type Skill, skillsOf } from '../../solver/exercises/skills.ts';
import type { ProgressEvent } from './event.ts';
import { type ExerciseState, exerciseStates } from './exercise-states.ts';
import { skillState } from './skill-states.ts';
import type { DueTimes } from './standing.ts';

/** An exercise of a lesson, as far as practice has to know it. */
export interface BankEntry<K extends KindName = KindName> {
  readonly id: string;
  readonly kind: K;
  readonly options: OptionsOf<K>;
  readonly lesson: string;
  /** Skills of its lesson, for kinds that have none of their own. */
  readonly ofLesson: readonly Skill[];
  /** Skills that some figures of it ask for. */
  readonly skills: readonly Skill[];
}

/** What to practise: an exercise, its figures, and why. */
export interface Picked<K extends KindName = KindName> {
  readonly entry: BankEntry<K>;
  readonly skill: Skill;
  readonly level: Level;
  readonly seed: string;
  readonly problem: ProblemOf<K>;
}

/** How many sets of figures are looked through for one that asks for the skill. */
const SEEDS_LOOKED_AT = 24;

/**
 * Figures that this exercise was not tried with: a whole number of six digits, so that it can be said and typed. The
 * salt keeps two devices that practise apart from asking the same ones.
 */
export const seedFrom = (salt: string, id: string, state: ExerciseState | undefined): number =>
  100_000 + (hashSeed(`${salt} ${id} ${state?.seeds.size ?? 0}`) % 899_000);

/** A problem of this exercise with these figures; null where its options make none. */
export function problemOf<K extends KindName>(
  { kind, options }: BankEntry<K>,
  seed: string,
  level: Level,
): ProblemOf<K> | null {
  const made = making[kind].make(seed, level, options);
  return 'ok' in made ? null : made;
}

function pickOf<K extends KindName>(
  entry: BankEntry<K>,
  skill: Skill,
  level: Level,
  from: number,
  state: ExerciseState | undefined,
): Picked<K> | null {
  for (let number = from; number < from + SEEDS_LOOKED_AT; number += 1) {
    const seed = String(number);
    const problem = state?.seeds.has(seed) ? null : problemOf(entry, seed, level);
    if (problem && skillsOf(entry.kind, problem, entry.ofLesson).includes(skill))
      return { entry, skill, level, seed, problem };
  }
  return null;
}

/** Whether a kind has a half-worked form. */
const LEAVES_A_STEP: { readonly [K in KindName]: boolean } = {
  sum: true,
  number: true,
  mark: true,
  row: true,
  spot: true,
  order: true,
  choose: true,
  // Nothing of what somebody wants to say can stand there already.
  say: false,
};

const formOf = (level: Level, { kind }: BankEntry): Level =>
  level === 'half-worked' && !LEAVES_A_STEP[kind] ? 'worked' : level;

/**
 * Something of one skill: the exercise with the fewest figures tried, then the one tried longest ago. Where no figures of
 * its level ask for the skill, as none of the first levels are odd, those of the next level do.
 */
function pickSkill({ events, bank, salt = '', without }: Asked, skill: Skill): Picked | null {
  const states = exerciseStates(events);
  const order = bank
    .filter((entry) => entry.skills.includes(skill) && !without?.has(entry.id))
    .map((entry) => ({ entry, state: states.get(entry.id) }))
    .sort(
      (one, other) =>
        (one.state?.seeds.size ?? 0) - (other.state?.seeds.size ?? 0) ||
        (one.state?.last ?? 0) - (other.state?.last ?? 0) ||
        (one.entry.id < other.entry.id ? -1 : 1),
    );
  for (const level of LEVELS.slice(LEVELS.indexOf(skillState(events, skill).level)))
    for (const { entry, state } of order) {
      const picked = pickOf(entry, skill, formOf(level, entry), seedFrom(salt, entry.id, state), state);
      if (picked) return picked;
    }
  return null;
}

export interface Asked {
  readonly events: readonly ProgressEvent[];
  readonly bank: readonly BankEntry[];
  readonly due: DueTimes;
  /** ms since 1970. */
  readonly now: number;
  /** The skill of the exercise before this one. */
  readonly before?: Skill | null | undefined;
  /** Whether to go on with what is not due yet. */
  readonly more?: boolean | undefined;
  /** Any text that another device is not likely to have. */
  readonly salt?: string | undefined;
  /** Exercises to leave out. */
  readonly without?: ReadonlySet<string> | undefined;
}

/** Skills that were met, the one due first at the front; of one moment, in the order of the work. */
export const inTurn = (due: DueTimes): readonly (readonly [skill: Skill, at: number])[] =>
  (Object.entries(due) as [Skill, number][]).sort(([, one], [, other]) => one - other);

/**
 * The next exercise, or null where nothing is due and no more is wanted. What is due longest comes first, and never the
 * skill just practised while there is another that was met: mixed practice holds better than the same kind again.
 */
export function nextExercise(asked: Asked): Picked | null {
  const { due, now, before = null, more = false } = asked;
  const met = inTurn(due);
  if (!more && !met.some(([, at]) => at <= now)) return null;
  const others = met.filter(([skill]) => skill !== before);
  const again = met.filter(([skill]) => skill === before);
  for (const [skill] of [...others, ...again]) {
    const picked = pickSkill(asked, skill);
    if (picked) return picked;
  }
  return null;
}

/** Further off than any due time, in ms. */
const LATER = 1e14;

/** What a printed practice sheet holds: at most this many different exercises, in the order they would be asked. */
export function sheetOf(asked: Asked, most: number): readonly Picked[] {
  const sheet: Picked[] = [];
  let without = asked.without ?? new Set<string>();
  let before = asked.before ?? null;
  while (sheet.length < most) {
    // A skill that stands on the sheet goes to the end of the turn, as it would once it was practised.
    const due = { ...asked.due };
    for (const { skill } of sheet)
      due[skill] = (due[skill] ?? 0) + LATER * sheet.filter((one) => one.skill === skill).length;
    const picked = nextExercise({ ...asked, due, before, without, more: true });
    if (!picked) break;
    sheet.push(picked);
    without = new Set([...without, picked.entry.id]);
    before = picked.skill;
  }
  return sheet;
}
