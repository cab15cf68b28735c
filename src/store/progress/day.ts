const MINUTE = 60_000;

/**
 * The day of a moment on a calendar, such as 2026-03-09.
 *
 * @param at ms since 1970
 * @param zone minutes by which UTC is ahead of that calendar's clock, as `Date.getTimezoneOffset` gives them
 */
export const dayAt = (at: number, zone: number): string => new Date(at - zone * MINUTE).toISOString().slice(0, 10);

/** The day of a moment on this device's calendar. */
export const dayOf = (moment: Date): string => dayAt(moment.getTime(), moment.getTimezoneOffset());

/** Days of this device's calendar from one moment to another, both in ms since 1970; never less than 0. */
export function daysUntil(at: number, now: number): number {
  const day = (moment: number) => Date.parse(dayOf(new Date(moment)));
  return Math.max(0, Math.round((day(at) - day(now)) / (24 * 60 * MINUTE)));
}
