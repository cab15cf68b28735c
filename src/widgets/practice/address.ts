import { LEVELS } from '../../solver/exercises/level.ts';
import { isSkill } from '../../solver/exercises/skills.ts';
import { type BankEntry, type Picked, problemOf } from '../../store/progress/practice.ts';

/**
 * What is practised stands in the page's address, as an exercise's seed does in a lesson: loading the page again, or
 * going back to it, brings the same exercise, and two tabs can hold two.
 */
export function writeAddress(picked: Picked | null): void {
  const address = new URL(location.href);
  address.search = picked
    ? new URLSearchParams({ [picked.entry.id]: picked.seed, level: picked.level, skill: picked.skill }).toString()
    : '';
  history.replaceState(history.state, '', address);
}

/** The exercise that the address names; null where it names none that can be made. */
export function readAddress(bank: readonly BankEntry[]): Picked | null {
  const wanted = new URLSearchParams(location.search);
  const entry = bank.find(({ id }) => wanted.has(id));
  const seed = entry && wanted.get(entry.id);
  const skill = wanted.get('skill');
  const level = LEVELS.find((known) => known === wanted.get('level')) ?? 'alone';
  if (!entry || !seed || !isSkill(skill)) return null;
  const problem = problemOf(entry, seed, level);
  return problem && { entry, seed, skill, level, problem };
}
