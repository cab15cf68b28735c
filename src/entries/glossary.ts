import { z } from 'astro/zod';
import text from '../../content/glossary.yaml?raw';
import { ids, lessonNumber, readSheet, sheetNotes, words } from './sheet.ts';

/** One word of the craft in `content/glossary.yaml`. */
export const wordEntry = z.strictObject({
  id: ids('Lessons name the word by it.'),
  term: words('The word as it stands in a sentence.', 2, 40),
  means: words('What it means, in one to three sentences.', 10, 240),
  lesson: lessonNumber,
  plate: ids('A drawing of the page of plates, by its file name without .svg.'),
  near: z
    .array(ids('Another entry.'))
    .max(4)
    .default([])
    .register(sheetNotes, { description: 'Other entries worth a look.', works: 'A list of up to four ids of entries' }),
});

export type GlossaryEntry = z.infer<typeof wordEntry>;

/** Every word, in the order in which a maker meets them. */
export const glossary: readonly GlossaryEntry[] = readSheet('content/glossary.yaml', text, wordEntry);

/** The entry with this id, or a build error that names those there are. */
export function termOf(id: string): GlossaryEntry {
  const found = glossary.find((each) => each.id === id);
  if (!found)
    throw new Error(
      `There is no word '${id}' in content/glossary.yaml. There are: ${glossary.map((each) => each.id).join(', ')}.`,
    );
  return found;
}
