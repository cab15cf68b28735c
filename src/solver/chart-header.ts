import type { PaletteEntry } from './chart.ts';
import { CHART_LIMITS, DEFAULT_KEYS, isColour, isHex, isKey, keyAt, readQuoted } from './chart-form.ts';
import { stop } from './chart-mistake.ts';

/** The lines above the rows of a chart's text: its title and its colours. */
export interface Header {
  readonly title: string | null;
  readonly palette: readonly PaletteEntry[];
  /** The key of each palette entry. */
  readonly keys: readonly string[];
  /** How many lines were read, the empty line below the header among them. */
  readonly lines: number;
}

export const TITLE_LINE = 'chart TITLE';
export const COLOUR_LINE = 'colour KEY NAME COLOUR';
const COLOURS = '#rrggbb, #rgb';
const MARKS = 'ground, blank';

interface Word {
  /** What it says: quotes are taken off. */
  readonly text: string;
  readonly quoted: boolean;
  /** Where it begins in its line, and where the line goes on, from 0. */
  readonly start: number;
  readonly end: number;
}

/** The bare and quoted words of a line from `start` on. */
function wordsFrom(text: string, line: number, start: number): Word[] {
  const words: Word[] = [];
  const gap = /\s*/y;
  const bare = /\S+/y;
  for (let at = start; at < text.length; ) {
    gap.lastIndex = at;
    at += gap.exec(text)?.[0].length ?? 0;
    if (text[at] === '"') {
      const place = { line, column: at + 1 };
      const quoted = readQuoted(text, at) ?? stop(place, 'open-quotes', text.slice(at), '"…"');
      words.push({ text: quoted.words, quoted: true, start: at, end: quoted.end });
      at = quoted.end;
      bare.lastIndex = at;
      const stuck = bare.exec(text);
      if (stuck !== null) stop({ line, column: at + 1 }, 'after-quotes', stuck[0], ' ');
    } else {
      bare.lastIndex = at;
      const word = bare.exec(text)?.[0] ?? '';
      if (word !== '') words.push({ text: word, quoted: false, start: at, end: at + word.length });
      at += word.length;
    }
  }
  return words;
}

/** Several bare words are taken as they stand, with the spaces between them; a quoted word stands alone. */
function phrase(text: string, line: number, words: readonly Word[], form: string): string {
  const [first, second] = words;
  if (first === undefined) return '';
  if (first.quoted) {
    if (second !== undefined) stop({ line, column: second.start + 1 }, 'after-quotes', second.text, form);
    return first.text;
  }
  const quoted = words.find((word) => word.quoted);
  if (quoted !== undefined) stop({ line, column: quoted.start + 1 }, 'after-quotes', quoted.text, form);
  return text.slice(first.start, words.at(-1)?.end);
}

function readTitle(text: string, line: number, start: number): string {
  if (!/\S/.test(text.slice(start))) stop({ line, column: text.length + 1 }, 'no-title', '', TITLE_LINE);
  const bare = text.slice(start).trim();
  return bare.startsWith('"') ? phrase(text, line, wordsFrom(text, line, start), TITLE_LINE) : bare;
}

const looksLikeColour = (word: Word | undefined): boolean =>
  word !== undefined && (word.quoted || word.text.startsWith('#') || word.text === 'none');

const looksLikeMark = (word: Word | undefined): boolean =>
  word !== undefined && !word.quoted && (word.text === 'ground' || word.text === 'blank');

/** Name, colour and mark are read from the right, because a name may hold spaces. */
function readEntry(text: string, line: number, start: number): PaletteEntry & { markColumn: number } {
  const words = wordsFrom(text, line, start);
  const lineEnd = { line, column: text.length + 1 };
  const before = words.at(-2);
  const tail = words.at(-1);
  if (tail === undefined) return stop(lineEnd, 'no-name', '', COLOUR_LINE);
  if (looksLikeColour(before) && !looksLikeColour(tail) && !looksLikeMark(tail))
    stop({ line, column: tail.start + 1 }, 'unknown-mark', tail.text, MARKS);
  const mark = before !== undefined && looksLikeMark(tail) ? words.pop() : undefined;
  const colour = words.pop();
  if (colour === undefined || !looksLikeColour(colour) || (colour.quoted && words.length === 0))
    return stop({ line, column: (colour?.end ?? text.length) + 1 }, 'no-colour', mark?.text ?? '', COLOURS);
  const place = { line, column: colour.start + 1 };
  if (words.length === 0) stop(place, 'no-name', colour.text, COLOUR_LINE);
  const name = phrase(text, line, words, COLOUR_LINE);
  const blank = mark?.text === 'blank';
  if (colour.text === 'none' && !blank) stop(place, 'none-without-blank', 'none', COLOURS);
  const good = colour.quoted ? isColour(colour.text, blank) : isHex(colour.text) || colour.text === 'none';
  if (!good) stop(place, 'bad-colour', colour.text, COLOURS);
  return {
    name,
    colour: colour.text,
    ...(mark?.text === 'blank' ? { blank: true } : {}),
    ...(mark?.text === 'ground' ? { ground: true } : {}),
    markColumn: (mark?.start ?? 0) + 1,
  };
}

/** The key that begins what follows `colour`, and where it ends. */
function readKey(text: string, line: number, start: number, taken: readonly string[]): { key: string; end: number } {
  const key = /\S+/.exec(text.slice(start))?.[0];
  if (key === undefined) return stop({ line, column: text.length + 1 }, 'no-key', '', COLOUR_LINE);
  const at = text.indexOf(key, start);
  const place = { line, column: at + 1 };
  if (!isKey(key)) stop(place, 'key-not-a-key', key, COLOUR_LINE);
  const free = Array.from(DEFAULT_KEYS).filter((other) => !taken.includes(other));
  if (taken.includes(key)) stop(place, 'key-taken', key, free.join(' '));
  return { key, end: at + 1 };
}

/** Reads the lines above the rows. Stops at the first mistake. */
export function readHeader(texts: readonly string[]): Header {
  let title: string | null = null;
  const palette: PaletteEntry[] = [];
  const keys: string[] = [];
  let lines = 0;
  for (const text of texts) {
    lines += 1;
    const line = lines;
    const word = /\S+/.exec(text)?.[0];
    if (word === undefined) {
      if (palette.length > 0) break;
      continue;
    }
    const start = text.indexOf(word);
    const end = start + word.length;
    const place = { line, column: start + 1 };
    if (word === 'chart') {
      if (title !== null) stop(place, 'second-title', text.slice(end).trim(), 1);
      title = readTitle(text, line, end);
    } else if (word === 'colour') {
      const { key, end: afterKey } = readKey(text, line, end, keys);
      if (palette.length === CHART_LIMITS.colours)
        stop(place, 'too-many-colours', palette.length + 1, CHART_LIMITS.colours);
      const { markColumn, ...entry } = readEntry(text, line, afterKey);
      const markPlace = { line, column: markColumn };
      if (entry.ground && palette.some((other) => other.ground)) stop(markPlace, 'second-ground', 2, 1);
      if (entry.blank && palette.some((other) => other.blank)) stop(markPlace, 'second-blank', 2, 1);
      palette.push(key === keyAt(undefined, palette.length) ? entry : { ...entry, key });
      keys.push(key);
    } else if (palette.length > 0 && Array.from(text.trim()).every((cell) => keys.includes(cell))) {
      stop(place, 'no-empty-line', text.trim(), '');
    } else {
      stop(place, 'unknown-line', word, `${TITLE_LINE}, ${COLOUR_LINE}`);
    }
  }
  return { title, palette, keys, lines };
}
