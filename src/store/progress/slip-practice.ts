import type { KindName, Level } from '../../solver/exercises/contract.ts';
import { skillsOf } from '../../solver/exercises/skills.ts';
import { slipsOf } from '../../solver/missteps/slips.ts';
import type { ProgressEvent } from './event.ts';
import { exerciseStates } from './exercise-states.ts';
import { type BankEntry, type Picked, problemOf, seedFrom } from './practice.ts';
import type { SlipSeen } from './slip-states.ts';

/** Sets of figures of one exercise that are looked through. */
const SEEDS_LOOKED_AT = 40;
/** All steps are the learner's own: where one is given, the slip may lie in it. */
const LEVELS_ASKED: readonly Level[] = ['alone', 'mixed'];

/** An exercise of this kind, in these figures, in which the slip shows. */
function pickOf<K extends KindName>(
  entry: BankEntry<K>,
  { slip, skill }: Pick<SlipSeen, 'slip' | 'skill'>,
  level: Level,
  from: number,
  tried: ReadonlySet<string>,
): Picked<K> | null {
  for (let number = from; number < from + SEEDS_LOOKED_AT; number += 1) {
    const seed = String(number);
    const problem = tried.has(seed) ? null : problemOf(entry, seed, level);
    if (!problem || !skillsOf(entry.kind, problem, entry.ofLesson).includes(skill)) continue;
    if (slipsOf[entry.kind].singles(problem).some(({ slips }) => slips.some((one) => one === slip)))
      return { entry, skill, level, seed, problem };
  }
  return null;
}

interface Asked {
  readonly events: readonly ProgressEvent[];
  readonly bank: readonly BankEntry[];
  readonly salt: string;
}

/**
 * Something in which a slip would show, with figures that were not tried yet: the exercise it was made in, or another one
 * of its skill. null where no exercise of that skill asks for it any more.
 */
export function slipExercise(
  seen: Pick<SlipSeen, 'slip' | 'skill' | 'exercise'>,
  { events, bank, salt }: Asked,
): Picked | null {
  const states = exerciseStates(events);
  const triedWith = ({ id }: BankEntry): ReadonlySet<string> => states.get(id)?.seeds ?? new Set();
  const order = bank
    .filter(({ skills }) => skills.includes(seen.skill))
    .toSorted((one, other) => Number(other.id === seen.exercise) - Number(one.id === seen.exercise));
  for (const level of LEVELS_ASKED)
    for (const entry of order) {
      const picked = pickOf(entry, seen, level, seedFrom(salt, entry.id, states.get(entry.id)), triedWith(entry));
      if (picked) return picked;
    }
  return null;
}
