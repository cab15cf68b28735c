import { z } from 'astro/zod';
import text from '../../content/cautions.yaml?raw';
import { ids, readSheet, sheetNotes, words } from './sheet.ts';

/** One group of cautions in `content/cautions.yaml`. */
const entry = z.strictObject({
  id: ids('Its place in the address of the page.'),
  title: words('What it is about.', 3, 60),
  points: z
    .array(words('A caution.', 10, 200))
    .min(1)
    .max(8)
    .register(sheetNotes, {
      description: 'What to do and what not, each in a sentence or two.',
      works: 'A list of one to eight texts of 10 to 200 characters',
    }),
});

export type CautionEntry = z.infer<typeof entry>;

/** Every caution, the most frequent first. */
export const cautions: readonly CautionEntry[] = readSheet('content/cautions.yaml', text, entry);
