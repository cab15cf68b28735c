import type { Frame, FrameKind } from './frames.ts';

/** How long a frame takes beside a passage of prose, which is 1: what a room works on takes longest. */
const WEIGHTS: Readonly<Record<FrameKind, number>> = {
  opening: 1,
  list: 1,
  prose: 1,
  aside: 0.5,
  plate: 1.5,
  knot: 2.5,
  'try-it': 4,
  exercise: 3,
  slip: 0.5,
  caution: 0.5,
  summary: 0.5,
};

/**
 * The minutes planned for each frame. A frame that the lesson gives minutes has those; the others share what is left of
 * the lesson’s own minutes by what they show. Frames that are not shown have none.
 *
 * @param total minutes of the lesson, more than 0
 * @returns one figure for each frame, 0 or more; together they make `total`, or what the lesson gave where that is more
 */
export function frameMinutes(total: number, frames: readonly Pick<Frame, 'kind' | 'minutes' | 'asleep'>[]): number[] {
  const given = frames.reduce((sum, { minutes, asleep }) => sum + (asleep ? 0 : (minutes ?? 0)), 0);
  const shares = frames.map(({ kind, minutes, asleep }) => (asleep || minutes !== null ? 0 : WEIGHTS[kind]));
  const whole = shares.reduce((sum, share) => sum + share, 0);
  const left = Math.max(0, total - given);
  return frames.map(({ minutes, asleep }, at) =>
    asleep ? 0 : (minutes ?? (whole === 0 ? 0 : ((shares[at] ?? 0) / whole) * left)),
  );
}
