import { z } from 'astro/zod';
import text from '../../content/faults.yaml?raw';
import { ids, lessonNumber, readSheet, sheetNotes, words } from './sheet.ts';

/** A plate: a knot at a stopping point, or a figure of the lantern; every further field is an option of that figure. */
const plate = z
  .object({
    caption: words('What the plate shows.', 5, 160),
    knot: z.string().optional(),
    stage: z.string().optional(),
    strands: z.int().min(1).max(8).optional(),
    figure: z.string().optional(),
  })
  .catchall(z.union([z.string(), z.int(), z.boolean()]))
  .refine(({ knot, figure }) => (knot === undefined) !== (figure === undefined))
  .register(sheetNotes, {
    description: 'A plate.',
    works: 'A knot with its stage, or a figure with its options, and a caption of 5 to 160 characters,',
  });

/** One fault in `content/faults.yaml`. */
export const faultEntry = z.strictObject({
  id: ids('Its place in the address of the page.'),
  see: words('What a maker sees.', 5, 90),
  cause: words('Why it happened.', 10, 300),
  fix: words('What puts it right.', 10, 400),
  check: words('How to find out that it is right now.', 10, 300),
  lesson: lessonNumber,
  fault: plate.register(sheetNotes, {
    description: 'A plate of the fault.',
    works: 'A knot with its stage, or a figure with its options, and a caption of 5 to 160 characters,',
  }),
  mended: plate.register(sheetNotes, {
    description: 'A plate of the work as it should be.',
    works: 'A knot with its stage, or a figure with its options, and a caption of 5 to 160 characters,',
  }),
});

export type FaultEntry = z.infer<typeof faultEntry>;
export type FaultPlate = z.infer<typeof plate>;

/** Every fault, in the order of the work. */
export const faults: readonly FaultEntry[] = readSheet('content/faults.yaml', text, faultEntry);
