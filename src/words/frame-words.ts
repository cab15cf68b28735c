/** The keys of a lesson that is shown to a room, and what each does. */
export const FRAME_KEYS: readonly { readonly keys: readonly string[]; readonly does: string }[] = [
  { keys: ['→', 'space', 'Page Down'], does: 'on, one step or one frame' },
  { keys: ['←', 'Page Up'], does: 'back' },
  { keys: ['Home'], does: 'the first frame' },
  { keys: ['End'], does: 'the last frame' },
  { keys: ['a number, then Enter'], does: 'to that frame' },
  { keys: ['o'], does: 'all frames, to choose one' },
  { keys: ['b', '.'], does: 'the room goes dark, or light again' },
  { keys: ['z'], does: 'the room keeps its picture while you look on' },
  { keys: ['p'], does: 'point at something' },
  { keys: ['d'], does: 'draw on the frame' },
  { keys: ['w'], does: 'wipe this frame’s drawing away' },
  { keys: ['t'], does: 'the timer runs, or stops' },
  { keys: ['s'], does: 'the speaker’s window, or the room’s' },
  { keys: ['r'], does: 'the room’s figures, and the page colours' },
  { keys: ['f'], does: 'full screen' },
  { keys: ['?'], does: 'these keys' },
  { keys: ['Esc'], does: 'away with whatever is open' },
];

const MINUTE = 60_000;
const SECOND = 1000;

/** A time on a timer, in minutes and seconds: `12:05`. From 0, in milliseconds; parts of a second are left out. */
export function timeUsed(spent: number): string {
  const seconds = Math.floor(spent / SECOND);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

/**
 * How the time used compares with the plan, in whole minutes.
 *
 * @param spent milliseconds used
 * @param from minutes planned up to the beginning of this frame
 * @param to minutes planned up to its end
 */
export function planWords(spent: number, from: number, to: number): string {
  const used = spent / MINUTE;
  if (used > to + 1) return `${minutes(used - to)} behind the plan`;
  if (used < from - 1) return `${minutes(from - used)} ahead of the plan`;
  return 'as planned';
}

const minutes = (count: number): string => (Math.round(count) === 1 ? '1 minute' : `${Math.round(count)} minutes`);

/** What is said to those who hear the page when another frame is shown. */
export const frameWords = (label: string, step: number, steps: number): string =>
  steps > 1 ? `${label}. Step ${step + 1} of ${steps}.` : `${label}.`;

/** What the speaker is told of the other window. */
export const OTHER_WORDS = {
  speaker: { open: 'Speaker’s window', gone: 'The speaker’s window is closed. Everything goes on here.' },
  room: { open: 'Room’s window', gone: 'The room’s window is closed. Open it again, and it shows this frame.' },
} as const;

/** What stands in the way when a window may not be opened. */
export const BLOCKED = 'The browser kept the window from opening. Allow windows for this page, and try again.';
