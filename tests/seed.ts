import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/**
 * The seed of a test file's run, so that a failure can be had again: new in each run, or the
 * whole number in the environment variable SEED. fast-check prints it with a failing case, plain
 * loops print it through `replay`.
 */
function chooseSeed(): number {
  const wanted = process.env['SEED'];
  if (wanted === undefined || wanted === '') return Math.floor(Math.random() * 0x7fffffff);
  const number = Number(wanted);
  if (!Number.isInteger(number)) throw new Error(`SEED is to be a whole number; it is "${wanted}"`);
  return number;
}

export const seed: number = chooseSeed();

/** What to type to have the same cases again. */
export const replay = `replay with SEED=${seed}`;

/** Settings for fast-check's `assert`: the run's seed and how many cases to try. */
export const tries = (numRuns = 300): { seed: number; numRuns: number } => ({ seed, numRuns });

/** Draws a whole number from `low` to `high`, both ends included. */
export type Draw = (low: number, high: number) => number;

/** A stream of draws for a plain loop, the same for the same seed. */
export function drawing(from: number = seed): Draw {
  const stream = xoroshiro128plus(from);
  return (low, high) => uniformInt(stream, low, high);
}
