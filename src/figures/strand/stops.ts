import type { NamedMoment } from './tying.ts';

/** How near to a stopping point a moment counts as that point itself: half a step of a slider in hundredths. */
const AT = 0.005;

/** The stopping point that a moment is at or on its way to, by its number from 0. */
export function stopAt(stops: readonly NamedMoment[], t: number): number {
  const next = stops.findIndex((stop) => stop.t >= t - 1e-9);
  return next < 0 ? stops.length - 1 : next;
}

/** Whether a moment is a stopping point, and no moment between two of them. */
export const isStop = (stops: readonly NamedMoment[], t: number): boolean =>
  Math.abs((stops[stopAt(stops, t)]?.t ?? 1) - t) < 1e-9;

/** The moment itself, or the stopping point where one is that near. */
export const snapped = (stops: readonly NamedMoment[], t: number): number =>
  stops.find((stop) => Math.abs(stop.t - t) <= AT)?.t ?? t;

/** The next stopping point after a moment; the last one at the end. */
export const stopAfter = (stops: readonly NamedMoment[], t: number): number =>
  stops.find((stop) => stop.t > t + 1e-9)?.t ?? stops.at(-1)?.t ?? 1;

/** The stopping point before a moment; the first one at the start. */
export const stopBefore = (stops: readonly NamedMoment[], t: number): number =>
  stops.findLast((stop) => stop.t < t - 1e-9)?.t ?? stops[0]?.t ?? 0;

/** Seconds that a slow replay takes from one stopping point to the next, and how long it rests there. */
export const REPLAY = { stage: 2.6, rest: 1.2 } as const;

/**
 * Where a slow replay is so many seconds after it was begun at `from`: it goes from stopping point to stopping point in
 * even time, rests at each of them, and ends at the last, 1.
 *
 * @returns the moment, 0 to 1, and whether the replay is over
 */
export function replayed(
  stops: readonly NamedMoment[],
  from: number,
  seconds: number,
): { readonly t: number; readonly over: boolean } {
  let left = seconds;
  let t = from;
  for (const stop of stops) {
    if (stop.t <= from + 1e-9) continue;
    const before = stopBefore(stops, stop.t);
    const takes = (REPLAY.stage * (stop.t - t)) / Math.max(1e-9, stop.t - Math.min(before, t));
    if (left < takes) return { t: t + ((stop.t - t) * left) / takes, over: false };
    t = stop.t;
    left -= takes;
    if (left < REPLAY.rest && stop !== stops.at(-1)) return { t, over: false };
    left -= REPLAY.rest;
  }
  return { t, over: true };
}
