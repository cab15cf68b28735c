import { z } from 'astro/zod';
import { isNode, LineCounter, parseDocument } from 'yaml';
import type { FieldNote } from './lesson.ts';
import { inWords, type Mistake, mistakeLine } from './mistakes.ts';

/** What each field of a list in `content/` is for; messages about mistakes are made from it. */
export const sheetNotes = z.registry<FieldNote>();

const curly = (text: string) => text.replace(/(?<=\p{L})'/gu, '’');

/** One text field, with straight apostrophes made curly. Lengths in characters, both ends included. */
export const words = (description: string, shortest: number, longest: number) =>
  z
    .string()
    .trim()
    .overwrite(curly)
    .min(shortest)
    .max(longest)
    .register(sheetNotes, { description, works: `A text of ${shortest} to ${longest} characters` });

export const ids = (description: string) =>
  z
    .string()
    .regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/)
    .register(sheetNotes, { description, works: 'An id in small letters with hyphens, such as lone-string' });

/** The number of a lesson, which stays true however lessons are called. */
export const lessonNumber = z.int().min(1).max(15).register(sheetNotes, {
  description: 'The number of the lesson that teaches it.',
  works: 'The number of a lesson, from 1 to 15',
});

type Entry = z.ZodObject<{ id: z.ZodString }>;

/**
 * Reads a list in YAML, each entry by its schema, each id once. All mistakes of the file come at once.
 *
 * @param file as the writer knows it: `content/glossary.yaml`
 * @throws with a line for each mistake: file, line, field, what stands there and what would do
 */
export function readSheet<E extends Entry>(file: string, text: string, entry: E): readonly z.output<E>[] {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const stop = (mistakes: readonly Mistake[]): never => {
    throw new Error(`${file} has mistakes:\n${mistakes.map((mistake) => mistakeLine(file, mistake)).join('\n')}`);
  };
  if (document.errors.length > 0)
    stop(
      document.errors.map((error) => ({
        line: lines.linePos(error.pos[0]).line,
        field: 'the list',
        stands: error.message,
        works: 'YAML, with text in quotes where it holds a colon and a blank,',
      })),
    );
  const lineOf = (path: readonly PropertyKey[]): number => {
    for (let length = path.length; length > 0; length -= 1) {
      const node = document.getIn(path.slice(0, length), true);
      if (isNode(node) && node.range) return lines.linePos(node.range[0]).line;
    }
    return 1;
  };
  const data: unknown = document.toJS();
  const parsed = z.array(entry).min(1).safeParse(data);
  if (!parsed.success)
    return stop(
      parsed.error.issues.flatMap((issue): Mistake[] => {
        const [place, field] = issue.path;
        const known = Object.keys(entry.shape);
        const name =
          field === undefined ? `entry ${Number(place ?? 0) + 1}` : issue.path.slice(1).map(String).join(', ');
        if (issue.code === 'unrecognized_keys')
          return issue.keys.map((key) => ({
            line: lineOf([...issue.path, key]),
            field: [...issue.path.slice(1), key].map(String).join(', '),
            stands: 'this field is not known',
            works: field === undefined ? `Only ${known.join(', ')}` : 'The fields that the head of the file lists',
          }));
        const schema = field === undefined ? undefined : entry.shape[field as keyof typeof entry.shape];
        const value = document.getIn(issue.path);
        return [
          {
            line: lineOf(issue.path),
            field: name,
            stands: inWords(isNode(value) ? value.toJS(document) : value),
            works: (schema && sheetNotes.get(schema)?.works) ?? 'A list of entries as the head of the file tells',
          },
        ];
      }),
    );
  const entries = parsed.data as readonly z.output<E>[];
  const twice = entries.flatMap(({ id }, index) =>
    entries.findIndex((other) => other.id === id) < index ? [index] : [],
  );
  if (twice.length > 0)
    stop(
      twice.map((index) => ({
        line: lineOf([index, 'id']),
        field: 'id',
        stands: `“${entries[index]?.id}” stands there, as it does further up`,
        works: 'An id of its own',
      })),
    );
  return entries;
}
