/** What the text form of a chart is made of: its limits, keys, colours and quoted words. */

/** The greatest chart the workbook takes; both ends of each range count. */
export const CHART_LIMITS = {
  width: { low: 2, high: 400 },
  height: { low: 1, high: 1000 },
  /** Palette entries, at least 1. */
  colours: 32,
} as const;

/**
 * The keys of entries that name none, by their place in the palette. Marks first, because they
 * let a picture be seen in its own text; then lower-case letters that are hard to mistake for one
 * another. Charts are kept in files, so this list may never change.
 */
export const DEFAULT_KEYS = '.#ox+*=-~:%@&$?!abcdeghkmnprstuw';

/** One character that can be seen: a letter, figure, mark or symbol that is one UTF-16 unit. */
const VISIBLE = /^[\p{L}\p{N}\p{P}\p{S}]$/u;
export const isKey = (text: string): boolean => text.length === 1 && VISIBLE.test(text);

/** The key of the palette entry at `place` (from 0). */
export const keyAt = (key: string | undefined, place: number): string => key ?? DEFAULT_KEYS.charAt(place);

/** `#rrggbb` or `#rgb`, in either case. */
export const isHex = (text: string): boolean => /^#(?:[0-9a-f]{3}|[0-9a-f]{6})$/i.test(text);

/**
 * Whether `text` can be an entry's colour: `#rrggbb`, `#rgb`, `none` for the blank entry alone, or
 * a colour word, which is written in quotes. A word is letters, figures, spaces and hyphens and
 * nothing else, so that a chart from a stranger can't carry an address or a rule into a page.
 */
export const isColour = (text: string, blank: boolean): boolean =>
  isHex(text) || (text === 'none' ? blank : /^[a-z][a-z0-9 -]*$/i.test(text));

/** Words that read back as they stand: no quote marks, no hidden characters, single units parted by plain spaces. */
const BARE = /^[^\s"\p{Cc}\p{Cf}\p{Cs}\p{Z}]+(?: +[^\s"\p{Cc}\p{Cf}\p{Cs}\p{Z}]+)*$/u;

/** A title or name as it is written: bare where that reads back, else a JSON string. */
export const written = (words: string): string => (BARE.test(words) ? words : JSON.stringify(words));

/** A colour as it is written: bare where it is `#…` or `none`, else a JSON string. */
export const writtenColour = (colour: string): string =>
  isHex(colour) || colour === 'none' ? colour : JSON.stringify(colour);

export interface Quoted {
  readonly words: string;
  /** Where the text goes on, after the closing quote. */
  readonly end: number;
}

/** The JSON string that begins at `start`, or null where it has no end or can't be read. */
export function readQuoted(line: string, start: number): Quoted | null {
  let end = start + 1;
  while (end < line.length && line[end] !== '"') end += line[end] === '\\' ? 2 : 1;
  if (end >= line.length) return null;
  try {
    const words: unknown = JSON.parse(line.slice(start, end + 1));
    return typeof words === 'string' ? { words, end: end + 1 } : null;
  } catch {
    return null;
  }
}
