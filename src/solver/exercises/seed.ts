import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** A seed as it stands in a page's address or on a printed sheet: a text, or a whole number from 0 to 2³² − 1. */
export type Seed = string | number;

/** A whole number from `low` to `high`, both ends counting. */
export type Draw = (low: number, high: number) => number;

/**
 * FNV-1a, 32 bits, over the text's UTF-16 units, low byte first.
 *
 * @returns a whole number from 0 to 2³² − 1
 * @example hashSeed('') // 2166136261, the hash's own starting value
 */
export function hashSeed(seed: Seed): number {
  let hash = 0x811c9dc5;
  const text = String(seed);
  for (let index = 0; index < text.length; index += 1) {
    const unit = text.charCodeAt(index);
    hash = Math.imul(hash ^ (unit & 0xff), 0x01000193);
    if (unit > 0xff) hash = Math.imul(hash ^ (unit >>> 8), 0x01000193);
  }
  return hash >>> 0;
}

/**
 * What chance decides in an exercise, from its seed alone: the same draws on every machine, for ever.
 *
 * A number and its decimal text are one seed, since an address only carries text. The range is cut from the
 * generator's 32 bits here and not by a library's helper, so that a later version of that helper can change
 * no exercise that somebody has on paper.
 *
 * @example const next = draw('table 3'); next(6, 24) // always the same first figure
 */
export function draw(seed: Seed): Draw {
  const generator = xoroshiro128plus(hashSeed(seed));
  // The generator's first output is its seed turned over; the next few still show it.
  for (let skipped = 0; skipped < 8; skipped += 1) generator.next();
  return (low, high) => {
    const span = high - low + 1;
    // Values past the last whole multiple of the span would favour the low figures.
    const limit = 0x100000000 - (0x100000000 % span);
    let bits = generator.next() >>> 0;
    while (bits >= limit) bits = generator.next() >>> 0;
    return low + (bits % span);
  };
}

/** One of `choices`; undefined only where there are none. */
export const pick = <T>(next: Draw, choices: readonly T[]): T | undefined =>
  choices.length > 0 ? choices[next(0, choices.length - 1)] : undefined;
