import { execFile } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, test } from 'vitest';
import { fieldNote, type LessonField, lesson } from '../../src/entries/lesson.ts';
import { readLesson } from '../../src/entries/mistakes.ts';
import { figures } from '../../src/figures/index.ts';
import { knots } from '../../src/figures/strand/knots.ts';
import {
  CONDITION_NAMES,
  CUT_FIGURES,
  exercises,
  formatChart,
  type KindName,
  LEVELS,
  type Plan,
  parseChart,
  planPiece,
} from '../../src/solver/index.ts';
import { type Block, blocksIn, numberOf, partsOf } from '../content/lesson-text.ts';

/**
 * The guides are read by people who want to change something. Whatever they name is looked up here, and whatever they
 * show is run. `NEW_GUIDE=1` writes the front matter table anew from the schema, in a run that compares nothing.
 */
const ROOT = resolve(import.meta.dirname, '../..');
const read = (path: string): string => readFileSync(join(ROOT, path), 'utf8');

const GUIDE = 'DEVELOPERS.md';
const guide = read(GUIDE);
const DOCUMENTS: readonly (readonly [name: string, text: string])[] = [
  ['README.md', read('README.md')],
  [GUIDE, guide],
];

/** Folders that are made and not kept. */
const MADE = ['node_modules', 'dist', 'dist-elsewhere', '.git', '.astro', 'test-results', 'playwright-report'];

function walk(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    if (MADE.includes(entry.name)) return [];
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    return entry.isDirectory() ? [`${path}/`, ...walk(path)] : [path];
  });
}
/** Every file and, with a slash at its end, every folder of the project. */
const tree = walk('');
const names = new Set(tree.map((path) => basename(path)));

interface Snippet {
  readonly language: string;
  readonly code: string;
}
const FENCE = /^( *)```(\w*)[^\n]*\n([\s\S]*?)^\1```$/gm;
const snippetsOf = (text: string): Snippet[] =>
  [...text.matchAll(FENCE)].map(([, indent = '', language = '', code = '']) => ({
    language,
    code: code.replaceAll(new RegExp(`^${indent}`, 'gm'), ''),
  }));
const proseOf = (text: string): string => text.replaceAll(FENCE, '');
const codesIn = (text: string): string[] => [...text.matchAll(/`([^`\n]+)`/g)].map(([, code = '']) => code);
const snippets = (language: string): string[] =>
  DOCUMENTS.flatMap(([, text]) => snippetsOf(text).filter((one) => one.language === language)).map(({ code }) => code);

const { scripts, dependencies, devDependencies } = JSON.parse(read('package.json')) as {
  scripts: Record<string, string>;
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
};

/** A part of a document, from its heading to the next of the same level. */
function section(heading: string): string {
  const start = guide.indexOf(`\n${heading}\n`);
  if (start < 0) throw new Error(`${GUIDE} has no heading “${heading}”`);
  const level = heading.replace(/[^#].*/, '');
  const end = guide.indexOf(`\n${level} `, start + heading.length);
  return guide.slice(start, end < 0 ? undefined : end);
}
/** The cells of every row of the tables in a text. */
const rowsOf = (text: string): string[][] =>
  [...text.matchAll(/^ *\|(.*)\|$/gm)].map(([, row = '']) => row.split('|').map((cell) => cell.trim()));

const EXTENSION = /[\w\]]\.(?:tsx?|mjs|json|md|mdx|chart|astro|css|png)$/;
const isPath = (code: string): boolean =>
  /^[\w.@[\]-]+(?:\/[\w.@[\]-]+)*\/?$/.test(code) &&
  (code.includes('/') || EXTENSION.test(code)) &&
  !(code in dependencies || code in devDependencies) &&
  !MADE.includes(code.split('/')[0] ?? '');

/** NN, NAME and KIND stand for what a reader will choose; something of that form has to be there already. */
function isThere(path: string): boolean {
  if (/\b(?:NN|NAME|KIND)\b/.test(path)) {
    const form = new RegExp(`^${path.replaceAll('.', '\\.').replaceAll(/\b(?:NN|NAME|KIND)\b/g, '[^/]+')}$`);
    return tree.some((there) => form.test(there));
  }
  return path.includes('/') ? existsSync(join(ROOT, path)) : names.has(path);
}

describe.each(DOCUMENTS)('%s', (_, text) => {
  const prose = proseOf(text);
  const links = [...prose.matchAll(/\]\(([^)\s]+)\)/g)].map(([, target = '']) => target);

  test('names no path that is not there', () => {
    const shown = snippetsOf(text).filter(({ language }) => language === 'sh');
    const typed = shown
      .flatMap(({ code }) => code.split(/\s+/))
      .filter((word) => /^(?:src|tests|content)\//.test(word));
    const named = [...codesIn(prose).filter(isPath), ...typed];
    expect(named.filter((path) => !isThere(path))).toEqual([]);
  });

  test('has no link that leads nowhere', () => {
    const anchors = [...prose.matchAll(/^#+ (.+)$/gm)].map(
      ([, heading = '']) =>
        `#${heading
          .toLowerCase()
          .replaceAll(/[^\p{L}\p{N} -]/gu, '')
          .replaceAll(' ', '-')}`,
    );
    const lost = links.filter((target) =>
      target.startsWith('#') ? !anchors.includes(target) : !/^https?:/.test(target) && !existsSync(join(ROOT, target)),
    );
    expect(lost).toEqual([]);
  });

  test('names no command that is not there', () => {
    const commands = [...text.matchAll(/\bnpm (?:run ([\w:-]+)|(start|test)\b)/g)].map(
      ([, run, plain]) => run ?? plain,
    );
    expect(commands.length).toBeGreaterThan(0);
    expect(commands.filter((command) => command === undefined || !(command in scripts))).toEqual([]);
  });
});

describe('the guide', () => {
  test('explains every command and every block of a lesson', () => {
    const missing = Object.keys(scripts).filter((name) => !new RegExp(`\`npm (?:run )?${name}\``).test(guide));
    expect(missing).toEqual([]);
    expect(BLOCKS.filter((name) => !section('### The blocks of a lesson').includes(`\`${name}\``))).toEqual([]);
  });

  test('names only variables that something reads', () => {
    const table = rowsOf(section('## What runs where')).filter(([first = '']) => /^`[A-Z_]+`/.test(first));
    const variables = table.flatMap(([first = '']) => codesIn(first));
    expect(variables.length).toBeGreaterThan(5);
    const readers = tree
      .filter((path) => /^(?:\.config\/.*\.ts|astro\.config\.mjs|tests\/.*\.ts)$/.test(path))
      .map(read);
    expect(variables.filter((name) => !readers.some((text) => text.includes(name)))).toEqual([]);
  });

  test('has a line in its map for every folder of src', () => {
    const mapped = rowsOf(section('## A map of the house')).flatMap(([first = '']) => codesIn(first));
    const folders = tree.filter((path) => /^src\/.*\/$/.test(path));
    expect(folders.length).toBeGreaterThan(10);
    expect(folders.filter((folder) => !mapped.includes(folder))).toEqual([]);
  });

  test('says of each room what it imports, and allows nothing that the lint forbids', () => {
    const rooms = rowsOf(section('## A map of the house')).filter(
      (row) => row.length === 3 && /^`src\/\w+\/`$/.test(row[0] ?? ''),
    );
    expect(rooms.length).toBeGreaterThan(8);
    const { overrides } = JSON.parse(read('.config/lint.json')) as {
      overrides: { includes: string[]; linter: { rules: unknown } }[];
    };
    for (const [first = '', , allowed = ''] of rooms) {
      const [folder = ''] = codesIn(first);
      const may = codesIn(allowed);
      const sources = tree.filter((path) => path.startsWith(folder) && /\.(?:tsx?|astro|css)$/.test(path)).map(read);
      const imported = sources.flatMap((text) =>
        [...text.matchAll(/(?:from|import\() ?'(?:\.\.\/)+(\w+)\//g)].map(([, room]) => room ?? ''),
      );
      const others = new Set(imported.filter((room) => tree.includes(`src/${room}/`) && `src/${room}/` !== folder));
      expect(
        [...others].filter((room) => !may.includes(room)),
        `${folder} imports what the guide does not allow`,
      ).toEqual([]);
      const forbidden = overrides
        .filter(({ includes }) => includes.includes(`**/${folder}**`))
        .map(({ linter }) => JSON.stringify(linter.rules))
        .join();
      expect(
        may.filter((room) => forbidden.includes(`"**/${room}/**"`)),
        `${folder}: the lint forbids`,
      ).toEqual([]);
    }
  });

  test('names for each rule of the craft a function that its file exports, and a test', () => {
    const rules = rowsOf(section('## The craft, section by section')).filter(([first = '']) => /^\d/.test(first));
    expect(rules.length).toBeGreaterThan(20);
    for (const [, rule, file = '', name = '', proof = ''] of rules) {
      const [path = '', made = '', tested = ''] = [file, name, proof].map((cell) => codesIn(cell)[0]);
      expect(existsSync(join(ROOT, path)) && read(path), rule).toMatch(
        new RegExp(`^export (?:async )?(?:function|const) ${made}\\b`, 'm'),
      );
      expect(tested, rule).toMatch(/^tests\/.*\.test\.ts$/);
    }
  });

  test('states the budgets of script that the browser tests hold', () => {
    const budgets = [...read('tests/e2e/budget.test.ts').matchAll(/^const [A-Z_]+ = (\d+)_(\d+);$/gm)];
    expect(budgets.length).toBeGreaterThan(1);
    const held = section('## Script: how much, and when');
    for (const [, thousands, ones] of budgets) expect(held).toContain(`${thousands},${ones}`);
  });

  test('has a row for each dependency, with bytes where it reaches the reader, and for nothing else', () => {
    const rows = rowsOf(section('## Dependencies')).filter(([first = '']) => first.startsWith('`'));
    const listed = rows.map(([first = '']) => codesIn(first)[0] ?? '');
    expect(listed.toSorted()).toEqual([...Object.keys(dependencies), ...Object.keys(devDependencies)].toSorted());
    for (const row of rows) {
      const cost = row.at(-1) ?? '';
      if ((codesIn(row[0] ?? '')[0] ?? '') in dependencies) expect(cost, row[0]).toMatch(/^\d[\d,]*\b/);
      else expect(row, row[0]).toHaveLength(2);
    }
  });
});

describe('the front matter table', () => {
  const MARKS = /(<!-- front matter -->\n)[\s\S]*?(<!-- \/front matter -->)/;
  const fields = Object.keys(lesson.shape) as LessonField[];
  const rows = fields.map((field) => {
    const note = fieldNote(field);
    const left = lesson.shape[field].safeParse(undefined);
    const otherwise = left.success ? `\`${JSON.stringify(left.data)}\`` : 'has to be there';
    return [`\`${field}\``, `${note?.description}`, `${note?.works}`, otherwise];
  });
  const heads = ['field', 'what it is for', 'what may stand there', 'left out'];

  if (process.env['NEW_GUIDE'] === '1') {
    test('is written anew from the schema', () => {
      const lines = [heads, heads.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`);
      writeFileSync(join(ROOT, GUIDE), guide.replace(MARKS, `$1\n${lines.join('\n')}\n\n$2`));
      expect(fields.length).toBeGreaterThan(5);
    });
  } else {
    test('is what the schema says', () => {
      const [written = ''] = guide.match(MARKS) ?? [];
      expect(rowsOf(written).filter(([first = '']) => !/^-+$/.test(first))).toEqual([heads, ...rows]);
    });
  }
});

const BLOCKS = [...(/BLOCKS = \{([^}]*)\}/.exec(read('src/components/blocks.ts'))?.[1] ?? '').matchAll(/\w+/g)].map(
  ([name]) => name,
);

const run = promisify(execFile);
const node = (...args: string[]) => run(process.execPath, args, { cwd: ROOT });

/** Runs each of several texts as a module of its own, with a line between what they print. */
const RUNNER = `
import { stripTypeScriptTypes } from 'node:module';
import { pathToFileURL } from 'node:url';
const root = pathToFileURL(process.cwd() + '/');
for (const code of JSON.parse(process.argv[1])) {
  const script = stripTypeScriptTypes(code).replaceAll(/(?<=from ')\\.\\/[^']+/g, (path) => new URL(path, root).href);
  await import('data:text/javascript,' + encodeURIComponent(script)).catch((met) => console.log(String(met)));
  console.log('--');
}`;
const codes = snippets('ts');
const { stdout: printed } = await node('--input-type=module', '--eval', RUNNER, JSON.stringify(codes));
const outputs = printed.split('--\n');

describe('a snippet', () => {
  test.each(codes.map((code, index) => [code.trimEnd().split('\n').at(-1), code, outputs[index]] as const))(
    'of code runs, and prints what it says: … %s',
    (_, code, output) => {
      const prints = [...code.matchAll(/^\/\/ prints (.*)$/gm)].map(([, line]) => line);
      expect(prints.length).toBeGreaterThan(0);
      expect(output?.trimEnd().split('\n')).toEqual(prints);
    },
  );

  test('for a terminal that runs Node runs', async () => {
    const lines = snippets('sh').flatMap((code) => [...code.matchAll(/^npx node -e "([^"]+)"$/gm)]);
    expect(lines.length).toBeGreaterThan(0);
    for (const [, code = ''] of lines) expect((await node('-e', code)).stdout).toContain('ok: true');
  });

  test('of a chart is one, as the workbook would write it', () => {
    const charts = snippets('chart');
    expect(charts.length).toBeGreaterThan(0);
    for (const text of charts) {
      const parsed = parseChart(text);
      expect(parsed.ok || parsed.problem).toBe(true);
      if (parsed.ok) expect(formatChart(parsed.chart)).toBe(text);
    }
  });

  const plan = planPiece({ width: 26, height: 32, capacity: 16 }) as Plan;
  const reading = { plan, thread: { diameter: 1.2, kind: 'soft' }, planOf: () => plan } as const;

  /** Whether a lesson could hold the block: the names in it are names of something, and its options make a problem. */
  function isUsable(block: Block): boolean {
    const { is, of, name, kind, id, level = 'alone', ...options } = block.set;
    const among = (known: readonly unknown[], one: unknown): boolean => known.includes(one);
    switch (block.tag) {
      case 'N':
        return Number.isInteger(numberOf(block, reading));
      case 'When':
        return among(CONDITION_NAMES, String(is).replace('!', ''));
      case 'Figure':
        return among([...Object.keys(figures), 'piece'], name) && typeof id === 'string';
      case 'Knot':
        return [name].flat().every((knot) => among(Object.keys(knots), knot)) && typeof id === 'string';
      case 'Length':
        return among(CUT_FIGURES, of);
      case 'Exercise': {
        if (!among(Object.keys(exercises), kind) || !among(LEVELS, level)) return false;
        return !('ok' in exercises[kind as KindName].make(String(id), level as 'alone', options));
      }
      case 'TryIt':
        return read('src/components/TryIt.astro').includes(`'${block.set['widget']}'`) && typeof id === 'string';
      case 'Slip':
        return ['title', 'cause', 'fix'].every((part) => typeof block.set[part] === 'string');
      default:
        return true;
    }
  }

  test.each(snippets('mdx').map((text) => [text.split('\n', 1)[0], text] as const))(
    'of a lesson could stand in one: %s',
    (_, text) => {
      const whole = text.startsWith('---');
      if (whole) expect(readLesson(text)).toMatchObject({ ok: true });
      const blocks = [...blocksIn(partsOf(whole ? text : `---\ntitle: A piece\n---\n${text}`))];
      expect(blocks.length).toBeGreaterThan(0);
      for (const block of blocks) {
        expect(BLOCKS, `<${block.tag}>`).toContain(block.tag);
        expect(isUsable(block), `<${block.tag}> with ${JSON.stringify(block.set)}`).toBe(true);
      }
    },
  );

  test('has a language that is run or read here, and no other', () => {
    const known = ['ts', 'mdx', 'chart', 'sh'];
    const all = DOCUMENTS.flatMap(([, text]) => snippetsOf(text));
    expect(all.map(({ language }) => language).filter((language) => !known.includes(language))).toEqual([]);
  });
});
