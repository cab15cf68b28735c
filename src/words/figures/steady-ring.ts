import { count } from '../numbers.ts';
import type { Words } from './shared.ts';

/** A ring that is held, or not. */
export const steadyRingFigureWords = {
  'steady-ring': ({ scraps }) =>
    `The ring is held by ${count(scraps, 'scrap string')}, pinned to both sides and upwards.`,
  'steady-ring-turned': () => 'Nothing holds the ring, and it has turned: its bar slants down to the right.',
  'steady-ring-rows': ({ rows, columns, turned }) =>
    `Below it hang ${count(rows, 'row')} of ${count(columns, 'knot')}. ${
      turned ? 'They wander from side to side.' : 'They lie straight below each other.'
    }`,
} satisfies Words;
