import MiniSearch, { type SearchResult } from 'minisearch';
import type { Section } from '../../words/search.ts';

/** A section that speaks of what was looked for, with the words of it that did. */
export interface Found {
  readonly section: Section;
  readonly terms: readonly string[];
}

/** Finds sections, the likeliest first; headings count more than the text below them. */
export type Finder = (query: string) => readonly Found[];

/** Two letters changed in place are two changes; a short word with two changes is another word. */
const slip = (term: string): number => (term.length > 4 ? 2 : 0);

/**
 * Reads all sections once; every query after that takes about a millisecond. All words are looked for together, begun
 * words too ("bund"). Where that finds nothing, longer words may hold a slip of the keys; then any of the words will do.
 */
export function finder(sections: readonly Section[]): Finder {
  const index = new MiniSearch<{ id: number } & Section>({
    fields: ['heading', 'page', 'text'],
    searchOptions: { prefix: true, boost: { heading: 3, page: 1.5 } },
  });
  index.addAll(sections.map((section, id) => ({ id, ...section })));
  return (query) => {
    const ways = [
      { combineWith: 'AND' as const, fuzzy: false },
      { combineWith: 'AND' as const, fuzzy: slip },
      { combineWith: 'OR' as const, fuzzy: slip },
    ];
    let found: SearchResult[] = [];
    for (const way of ways) {
      found = index.search(query, way);
      if (found.length > 0) break;
    }
    return found.flatMap(({ id, terms }) => {
      const section = sections[id as number];
      return section ? [{ section, terms }] : [];
    });
  };
}
