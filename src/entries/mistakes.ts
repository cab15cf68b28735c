import { isNode, LineCounter, parseDocument } from 'yaml';
import { fieldNote, type Lesson, type LessonField, lesson } from './lesson.ts';

/** One mistake of a writer: where, what stands there and what would work. */
export interface Mistake {
  /** From 1; the first line of the file where the field is missing. */
  readonly line: number;
  readonly field: string;
  readonly stands: string;
  readonly works: string;
}

export type Reading =
  | { readonly ok: true; readonly lesson: Lesson }
  | { readonly ok: false; readonly mistakes: readonly Mistake[] };

const FENCE = /^---\r?\n([\s\S]*?)^---\s*$/m;

function isField(key: string): key is LessonField {
  return Object.hasOwn(lesson.shape, key);
}

/** What stands in a file, as a message quotes it; long values are cut. */
export function inWords(value: unknown): string {
  if (value === undefined) return 'nothing stands there';
  const text = typeof value === 'string' ? `“${value}”` : JSON.stringify(value);
  return `${text.length > 70 ? `${text.slice(0, 67)}…` : text} stands there`;
}

/** Reads the front matter of a lesson's file. All mistakes of the file come at once, in the order of its lines. */
export function readLesson(text: string): Reading {
  const fence = text.match(FENCE);
  if (fence?.index !== 0 || fence[1] === undefined) {
    const works = 'Front matter between two lines of three hyphens, at the very top,';
    return { ok: false, mistakes: [{ line: 1, field: 'front matter', stands: 'nothing stands there', works }] };
  }
  const lines = new LineCounter();
  const document = parseDocument(fence[1], { lineCounter: lines, prettyErrors: false });
  // The fence itself is line 1 of the file.
  const lineAt = (offset: number) => lines.linePos(offset).line + 1;
  if (document.errors.length > 0) {
    const mistakes = document.errors.map((error) => ({
      line: lineAt(error.pos[0]),
      field: 'front matter',
      stands: error.message,
      works: 'YAML, such as “title: The fitting sum”, with text in quotes where it holds a colon,',
    }));
    return { ok: false, mistakes };
  }
  const lineOf = (path: readonly PropertyKey[]): number => {
    for (let length = path.length; length > 0; length -= 1) {
      const node = document.getIn(path.slice(0, length), true);
      if (isNode(node) && node.range) return lineAt(node.range[0]);
    }
    return 1;
  };
  const data: unknown = document.toJS() ?? {};
  const parsed = lesson.safeParse(data);
  if (parsed.success) return { ok: true, lesson: parsed.data };
  const mistakes = parsed.error.issues.flatMap((issue): Mistake[] => {
    if (issue.code === 'unrecognized_keys') {
      const works = `Only ${Object.keys(lesson.shape).join(', ')}`;
      return issue.keys.map((key) => ({ line: lineOf([key]), field: key, stands: 'this field is not known', works }));
    }
    const field = String(issue.path[0] ?? 'front matter');
    const note = isField(field) ? fieldNote(field) : undefined;
    const value = issue.path.length === 0 ? data : document.getIn(issue.path);
    const name = issue.path.map((step) => (typeof step === 'number' ? `item ${step + 1}` : String(step))).join(', ');
    const stands = inWords(isNode(value) ? value.toJS(document) : value);
    return [{ line: lineOf(issue.path), field: name, stands, works: note?.works ?? 'A list of fields' }];
  });
  return { ok: false, mistakes: mistakes.sort((one, other) => one.line - other.line) };
}

/** One line for the writer. */
export function mistakeLine(file: string, { line, field, stands, works }: Mistake): string {
  return `${file}, line ${line}, ${field}: ${stands}. ${works} would do.`;
}
