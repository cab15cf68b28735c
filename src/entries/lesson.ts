import { z } from 'astro/zod';
import { SKILLS } from '../solver/exercises/skills.ts';

/** What a field of a writer's file is for and what may stand there, in words for the writer. */
export interface FieldNote {
  readonly description: string;
  /** Ends the sentence “… would do.” */
  readonly works: string;
}

/** Each field's note; the writer's reference and the messages about mistakes are both made from it. */
const notes = z.registry<FieldNote>();

/** The text of a lesson gets its curly apostrophes from the page's own reader; its front matter gets them here. */
const curly = (text: string) => text.replace(/(?<=\p{L})'/gu, '’');

const sentence = (shortest: number, longest: number) => z.string().trim().overwrite(curly).min(shortest).max(longest);
const id = z.string().regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/);

/** Front matter of one lesson in `content/lessons/`. */
export const lesson = z.strictObject({
  title: sentence(3, 60).register(notes, {
    description: 'What the lesson is called, without its number.',
    works: 'A title of 3 to 60 characters',
  }),
  order: z.int().min(1).max(15).register(notes, {
    description: 'The place of the lesson in the course. The file name begins with the same number, as two digits.',
    works: 'A whole number from 1 to 15, each used once',
  }),
  scene: sentence(10, 240).register(notes, {
    description: 'One sentence from the boathouse that sets the lesson going.',
    works: 'One sentence of 10 to 240 characters',
  }),
  able: z.array(sentence(5, 160)).min(3).max(5).register(notes, {
    description: 'What the learner will be able to do; each statement is one that a neighbour could check.',
    works: 'A list of 3 to 5 statements, each of 5 to 160 characters',
  }),
  example: id.default('lantern').register(notes, {
    description: 'Id of the worked example in content/examples.json whose figures the lesson is read with.',
    works: 'The id of an example, such as lantern',
  }),
  minutes: z.int().min(5).max(120).default(30).register(notes, {
    description: 'About how long the lesson takes at the table, in minutes.',
    works: 'A whole number of minutes from 5 to 120',
  }),
  needs: z.array(sentence(2, 120)).max(15).default([]).register(notes, {
    description: 'What must lie on the table before the lesson begins.',
    works: 'A list of up to 15 things, each of 2 to 120 characters',
  }),
  checklist: z.array(sentence(5, 160)).max(12).default([]).register(notes, {
    description: 'What to check at the bench before going on.',
    works: 'A list of up to 12 checks, each of 5 to 160 characters',
  }),
  summary: z.array(sentence(5, 160)).length(2).register(notes, {
    description: 'The lesson in two lines.',
    works: 'A list of exactly 2 lines, each of 5 to 160 characters',
  }),
  skills: z
    .array(z.enum(SKILLS))
    .max(6)
    .default([])
    .register(notes, {
      description:
        'The skills that this lesson teaches, the foremost first. Exercises whose kind has no skill of its own practise that one.',
      works: `A list of up to 6 of ${SKILLS.join(', ')}`,
    }),
});

export type Lesson = z.infer<typeof lesson>;
export type LessonField = keyof Lesson;

/** The note of a lesson's field. Every field has one: a test walks them. */
export function fieldNote(field: LessonField): FieldNote | undefined {
  return notes.get(lesson.shape[field]);
}
