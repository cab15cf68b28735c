import { readdir, readFile } from 'node:fs/promises';
import { glob, type Loader } from 'astro/loaders';
import { mistakeLine, readLesson } from './mistakes.ts';
import { readFileName } from './slug.ts';

const FOLDER = 'content/lessons';

async function mistakesOfAll(root: URL): Promise<string[]> {
  const folder = new URL(`${FOLDER}/`, root);
  const names = await readdir(folder).catch(() => []);
  const seen = new Map<number | string, string>();
  const found: string[] = [];
  for (const name of names.filter((each) => each.endsWith('.mdx')).sort()) {
    const file = `${FOLDER}/${name}`;
    const reading = readLesson(await readFile(new URL(name, folder), 'utf8'));
    if (!reading.ok) found.push(...reading.mistakes.map((mistake) => mistakeLine(file, mistake)));
    const named = readFileName(name);
    if (named === undefined) {
      found.push(
        `${file}: the file name cannot be read. Two digits and a name, such as 04-the-fitting-sum.mdx, would do.`,
      );
      continue;
    }
    if (reading.ok && reading.lesson.order !== named.order) {
      found.push(
        `${file}, order: ${reading.lesson.order} stands there, but the file name begins with ${named.order}. The same number in both would do.`,
      );
    }
    for (const key of [named.order, named.slug]) {
      const other = seen.get(key);
      if (other) found.push(`${file}: “${key}” is taken by ${other}. Another one would do.`);
      seen.set(key, file);
    }
  }
  return found;
}

/**
 * Loads the lessons. Before any is read, every file's front matter is checked, so that a writer sees the mistakes of all
 * files at once, each with its file, line and field.
 */
export function lessonLoader(): Loader {
  const files = glob({
    pattern: '*.mdx',
    base: `./${FOLDER}`,
    generateId: ({ entry }) => readFileName(entry)?.slug ?? entry,
  });
  return {
    name: 'lessons',
    load: async (context) => {
      const mistakes = await mistakesOfAll(context.config.root);
      if (mistakes.length > 0) throw new Error(`The lessons have mistakes:\n${mistakes.join('\n')}`);
      await files.load(context);
    },
  };
}
