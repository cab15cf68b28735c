import { numberWord } from './numbers.ts';

/** A stretch of the workbook under one heading, as the search reads it. */
export interface Section {
  /** Address below the place where the workbook is served, with the place on the page. */
  readonly url: string;
  /** Title of the page. */
  readonly page: string;
  readonly heading: string;
  readonly text: string;
}

/** A run of text, and whether it is one of the words looked for. */
export interface Run {
  readonly text: string;
  readonly found: boolean;
}

const escaped = (word: string): string => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/**
 * A line or two of a section round the first word that was found, cut between words.
 *
 * @param terms the words as they stand in the text; letters of either size
 * @param room about how many characters there is room for
 * @returns runs that make up the line, the found words marked; an ellipsis where the text goes on
 */
export function excerpt(text: string, terms: readonly string[], room = 160): Run[] {
  const words = terms.filter((term) => term !== '').map(escaped);
  const any =
    words.length > 0 ? new RegExp(`(?<![\\p{L}\\p{N}])(?:${words.join('|')})(?![\\p{L}\\p{N}])`, 'giu') : null;
  const at = any ? Math.max(0, text.search(any)) : 0;
  let from = Math.max(0, Math.min(at - Math.round(room / 3), text.length - room));
  if (from > 0) from = text.indexOf(' ', from) + 1;
  let to = Math.min(text.length, from + room);
  if (to < text.length) to = Math.max(text.lastIndexOf(' ', to), Math.min(at + 1, text.length));
  const line = `${from > 0 ? '… ' : ''}${text.slice(from, to)}${to < text.length ? ' …' : ''}`;
  if (!any) return [{ text: line, found: false }];
  const runs: Run[] = [];
  let last = 0;
  for (const { index, 0: word } of line.matchAll(any)) {
    if (index > last) runs.push({ text: line.slice(last, index), found: false });
    runs.push({ text: word, found: true });
    last = index + word.length;
  }
  if (last < line.length) runs.push({ text: line.slice(last), found: false });
  return runs;
}

/** How many places were found, as it is said beside the field; `shown` of them at most are listed. */
export function foundWords(count: number, query: string, shown: number): string {
  if (count === 0) return `Nothing here speaks of “${query}”. Try another word, or look through the lessons.`;
  if (count === 1) return `One place speaks of “${query}”.`;
  const many = numberWord(count);
  return `${many[0]?.toUpperCase()}${many.slice(1)} places speak of “${query}”.${count > shown ? ` Here are the ${numberWord(shown)} likeliest.` : ''}`;
}
