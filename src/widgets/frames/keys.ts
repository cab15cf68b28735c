/** What a key asks for: a move of the show, or something that this window does alone. */
export type Wish =
  | 'on'
  | 'back'
  | 'first'
  | 'last'
  | 'dark'
  | 'hold'
  | 'clock'
  | 'again'
  | 'wipe'
  | 'all'
  | 'point'
  | 'draw'
  | 'full'
  | 'other'
  | 'figures'
  | 'help'
  | 'close';

const KEYS: Readonly<Record<string, Wish>> = {
  ArrowRight: 'on',
  ArrowDown: 'on',
  PageDown: 'on',
  ' ': 'on',
  ArrowLeft: 'back',
  ArrowUp: 'back',
  PageUp: 'back',
  Home: 'first',
  End: 'last',
  b: 'dark',
  '.': 'dark',
  z: 'hold',
  t: 'clock',
  w: 'wipe',
  o: 'all',
  p: 'point',
  d: 'draw',
  f: 'full',
  s: 'other',
  r: 'figures',
  '?': 'help',
  Escape: 'close',
};

/** Keys of a clicker, and the one that leads out: they hold wherever the focus is. */
const EVERYWHERE = ['PageDown', 'PageUp', 'Escape'];

/** What a pressed key is for, beside its name. */
export interface Pressed {
  readonly key: string;
  /** With Ctrl, Alt or the command key: the browser’s own. */
  readonly chord: boolean;
  /**
   * Where the focus is. `typing`: a field or a grid that needs its keys; `pressing`: a button or link, which needs
   * space and Enter; `elsewhere`: anything else.
   */
  readonly focus: 'typing' | 'pressing' | 'elsewhere';
}

/** What the keys typed so far come to: digits wait for Enter. */
export interface Keyed {
  readonly digits: string;
  readonly wish: Wish | null;
  /** A frame that was asked for by its number. */
  readonly frame: number | null;
}

/** Reads one key. `digits` are those typed before it. Null where the key is none of ours. */
export function keyed(digits: string, { key, chord, focus }: Pressed): Keyed | null {
  if (chord) return null;
  if (focus === 'typing' && !EVERYWHERE.includes(key)) return null;
  if (focus === 'pressing' && (key === ' ' || key === 'Enter')) return null;
  if (/^\d$/.test(key)) return { digits: (digits + key).slice(-4), wish: null, frame: null };
  if (key === 'Enter') return digits === '' ? null : { digits: '', wish: null, frame: Number(digits) };
  const wish = KEYS[key.length === 1 ? key.toLowerCase() : key];
  return wish ? { digits: '', wish, frame: null } : null;
}
