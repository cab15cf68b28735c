import type { Refusal } from '../problem.ts';

/** Draws are cheap, and a shape that chance misses this often is not in the range of the workshop. */
const TRIES = 400;

/**
 * Another problem of the same shape with other figures, for a worked case: always the same one for the same
 * problem, never the problem itself.
 *
 * @param makeOne makes a problem from a seed
 * @param alike whether a problem has this one's shape and other figures; of those that do not, the first
 *   with other figures at all stands in
 */
export function another<P extends object>(
  problem: P,
  makeOne: (seed: string) => P | Refusal,
  alike: (candidate: P) => boolean,
): P | null {
  const text = JSON.stringify(problem);
  let other: P | null = null;
  for (let tried = 0; tried < TRIES; tried += 1) {
    const candidate = makeOne(`like ${text} ${tried}`);
    if ('ok' in candidate || JSON.stringify(candidate) === text) continue;
    if (alike(candidate)) return candidate;
    other ??= candidate;
  }
  return other;
}
