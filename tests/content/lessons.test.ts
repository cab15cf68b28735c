import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { fleschKincaid } from 'flesch-kincaid';
import { describe, expect, test } from 'vitest';
import { EXAMPLE_THREAD } from '../../src/components/example-thread.ts';
import { type PlateName, plateFigure } from '../../src/components/plate-figure.ts';
import { glossary } from '../../src/entries/glossary.ts';
import { mistakeLine, readLesson } from '../../src/entries/mistakes.ts';
import { readFileName } from '../../src/entries/slug.ts';
import { figures } from '../../src/figures/index.ts';
import { momentsOf } from '../../src/figures/piece/index.ts';
import { parseChart } from '../../src/solver/chart-text.ts';
import { CONDITION_NAMES } from '../../src/solver/conditions.ts';
import { CUT_FIGURES } from '../../src/solver/cut-figures.ts';
import { exercises, type KindName, LEVELS, type Level } from '../../src/solver/exercises/index.ts';
import { FIGURE_NAMES, namedFigure, namedRow, ROW_FIGURES } from '../../src/solver/named-figures.ts';
import { type Plan, type PlanInput, planPiece } from '../../src/solver/plan.ts';
import { RING_FIGURES } from '../../src/solver/ring-figures.ts';
import { numberWord } from '../../src/words/numbers.ts';
import {
  type Block,
  blocksIn,
  countsOf,
  NO_FIGURE,
  numberOf,
  type Part,
  partsOf,
  passagesOf,
  type Reading,
} from './lesson-text.ts';

const content = new URL('../../content/', import.meta.url);
const textOf = (path: string): string => readFileSync(fileURLToPath(new URL(path, content)), 'utf8');

interface Example extends Omit<PlanInput, 'chart'> {
  readonly chart?: string;
}
const examples: Readonly<Record<string, Example>> = JSON.parse(textOf('examples.json'));

function planned(input: PlanInput): Plan {
  const plan = planPiece(input);
  if (!plan.ok) throw new Error(`${JSON.stringify(input)}: ${plan.problem.code}`);
  return plan;
}

function planOf(id: string): Plan {
  const { chart, ...input } = examples[id] ?? { width: 0, capacity: 0, height: 0 };
  const drawn = chart === undefined ? null : parseChart(textOf(`charts/${chart}.chart`));
  return planned({ ...input, chart: drawn?.ok ? drawn.chart : undefined });
}

const readingOf = (plan: Plan): Reading => ({ plan, thread: EXAMPLE_THREAD, planOf });

const lessons = readdirSync(new URL('lessons/', content))
  .filter((name) => name.endsWith('.mdx'))
  .map((name) => {
    const text = textOf(`lessons/${name}`);
    const parts = partsOf(text);
    return { name, text, parts, blocks: [...blocksIn(parts)] };
  });
type Lesson = (typeof lessons)[number];

/** The worked example that a lesson is read with, as its front matter says. */
const exampleOf = ({ text }: Lesson): string => {
  const read = readLesson(text);
  return read.ok ? read.lesson.example : 'unread';
};
const byTag = ({ blocks }: Lesson, tag: string): Block[] => blocks.filter((block) => block.tag === tag);
const where = ({ name }: Lesson, block: Block): string =>
  `${name}, line ${block.line}: <${block.tag}> ${JSON.stringify(block.set)}`;

/** Everything that a writer set beside the names by which the page itself goes. */
function optionsOf({ set }: Block, ...own: readonly string[]): Record<string, unknown> {
  return Object.fromEntries(Object.entries(set).filter(([name]) => !own.includes(name)));
}

const PLAN_FIGURES = FIGURE_NAMES.filter((name) => !(ROW_FIGURES as readonly string[]).includes(name));

/**
 * Numbers that a lesson may hold though the worked example happens to have such a figure. Words up to eight are never
 * looked at: two, four, six and eight are the rule of the folds itself, and a practice strip has eight strings.
 */
const ALLOWED = [
  // The number of a row or of a lesson is a name.
  /\brows? [123]\b/gi,
  /\blessons? \d+\b/gi,
  // The number of a step.
  /^ *\d+\. /gm,
  // Ten turns round a pencil are how a cord is measured.
  /\bten turns\b|\bby ten\b/gi,
  // A sum that is always so.
  /six and six make twelve/g,
];
const WORDS = new Map<string, number>([
  ...Array.from({ length: 12 }, (_, index): [string, number] => [numberWord(index + 9), index + 9]),
  ...['thirty', 'forty', 'fifty', 'sixty'].map((word, index): [string, number] => [word, (index + 3) * 10]),
  ['twenty-six', 26],
  ['thirty-two', 32],
]);

/** The numbers that are typed into a text, as digits or as a word above eight. */
const typedIn = (text: string): number[] => {
  const rest = ALLOWED.reduce((kept, allowed) => kept.replace(allowed, ''), text);
  return [...rest.matchAll(/\d+|\p{L}+(?:-\p{L}+)*/gu)].flatMap(([found]) => {
    const value = /\d/.test(found) ? Number(found) : WORDS.get(found.toLowerCase());
    return value === undefined ? [] : [value];
  });
};

const writtenIn = (parts: readonly Part[]): string =>
  parts.map((part) => (typeof part === 'string' ? part : writtenIn(part.inside))).join(' ');

/** Pieces as learners may enter them, each with something that the worked example has not got. */
const PIECES: Readonly<Record<string, PlanInput>> = {
  'the evening’s piece': { width: 12, height: 14, capacity: 8 },
  'a half that is even': { width: 24, height: 24, capacity: 16 },
  'an idle place, begun on the right': { width: 24, height: 24, capacity: 15, startSide: 'right' },
  'a lone string': { width: 21, height: 18, capacity: 15 },
  'a carried end': { width: 21, height: 30, capacity: 16, oddMethod: 'carried-end' },
  'a carried end and an idle place': {
    width: 21,
    height: 30,
    capacity: 15,
    oddMethod: 'carried-end',
    startSide: 'right',
  },
  'a carried end with a single column': { width: 9, height: 20, capacity: 6, oddMethod: 'carried-end' },
  'a straight piece': { width: 10, height: 12, capacity: 12 },
  'a straight piece of odd width': { width: 11, height: 12, capacity: 12 },
  'a straight piece that closes': { width: 12, height: 12, capacity: 12, closingBundle: 3 },
  'two strings': { width: 2, height: 2, capacity: 2 },
  'three strings': { width: 3, height: 4, capacity: 3 },
  'a bar of four': { width: 8, height: 10, capacity: 4 },
  'a very wide piece': { width: 400, height: 60, capacity: 390 },
  'strings let out every second row': { width: 26, height: 40, capacity: 16, openingStep: 2, closingStep: 3 },
  'full width to the end': { width: 26, height: 30, capacity: 16, closingBundle: 1 },
  'never its full width': { width: 26, height: 7, capacity: 16 },
  'two rows': { width: 26, height: 2, capacity: 16 },
  'nothing for the sides to gather': { width: 12, height: 14, capacity: 8, closingBundle: 5 },
};

describe.each(lessons)('$name', (lesson) => {
  const { name, text, parts, blocks } = lesson;
  const example = exampleOf(lesson);
  const reading = readingOf(planOf(example));

  test('has front matter that can be read, with a worked example that there is', () => {
    const read = readLesson(text);
    expect(read.ok ? [] : read.mistakes.map((mistake) => mistakeLine(name, mistake))).toEqual([]);
    expect(read.ok && read.lesson.order).toBe(readFileName(name)?.order);
    expect(Object.keys(examples)).toContain(example);
  });

  test('has 600 to 1,200 words', () => {
    const { word } = countsOf(passagesOf(parts, reading, ['Figure']));
    expect(word).toBeGreaterThanOrEqual(600);
    expect(word).toBeLessThanOrEqual(1200);
  });

  test('reads at the level of grade 5 to 8', () => {
    // Steps for busy hands and what stands beside a widget are short on purpose; the grade is that of the paragraphs.
    const paragraphs = passagesOf(parts, reading, ['Figure', 'TryIt', 'Exercise']).filter(({ point }) => !point);
    const grade = fleschKincaid(countsOf(paragraphs));
    expect(grade).toBeGreaterThanOrEqual(5);
    expect(grade).toBeLessThanOrEqual(8);
  });

  test('shows, lets try, checks and warns: three figures, a try-it, three exercises, a slip, a checklist', () => {
    expect(byTag(lesson, 'Figure').length).toBeGreaterThanOrEqual(3);
    expect(byTag(lesson, 'TryIt').length).toBeGreaterThanOrEqual(1);
    expect(byTag(lesson, 'Exercise').length).toBeGreaterThanOrEqual(3);
    expect(byTag(lesson, 'Slip').length).toBeGreaterThanOrEqual(1);
    const read = readLesson(text);
    expect(read.ok && read.lesson.checklist.length).toBeGreaterThan(0);
  });

  test('uses blocks that there are, each id once', () => {
    const there = readdirSync(new URL('../src/components/', content));
    for (const block of blocks) expect(there, where(lesson, block)).toContain(`${block.tag}.astro`);
    const ids = blocks.flatMap(({ tag, set }) =>
      'id' in set ? [tag === 'Figure' ? `plate-${set['id']}` : set['id']] : [],
    );
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  test('tells the motion of the hands in words that the other hand can have turned round', () => {
    const told = [...byTag(lesson, 'Motion'), ...byTag(lesson, 'Knot')];
    for (const block of told) {
      // A word of the craft leads to its own meaning, and where a row begins goes by the plan.
      for (const inner of blocksIn(block.inside)) {
        expect(['forward-knot', 'backward-knot'], where(lesson, inner)).not.toContain(inner.set['is']);
        expect(String(inner.set['is']), where(lesson, inner)).not.toMatch(/starts-/);
      }
      const words = writtenIn(block.inside).replaceAll('*', '').trim();
      const alone = /^(left|right)$/.test(words);
      // “What is left” and “the right knot” are no sides.
      const others = words.replace(/\bthe (left|right)\b(?! (knot|way|place|colour|order|number)\b)/g, '');
      if (!alone) expect(others, where(lesson, block)).not.toMatch(/\b(left|right)\b/i);
    }
  });

  test('asks only for figures and conditions that there are, and the worked example has them all', () => {
    for (const block of byTag(lesson, 'N')) {
      expect(FIGURE_NAMES, where(lesson, block)).toContain(block.set['of']);
      expect(numberOf(block, reading), where(lesson, block)).not.toBeNull();
    }
    for (const block of byTag(lesson, 'When'))
      expect(CONDITION_NAMES, where(lesson, block)).toContain(String(block.set['is']).replace('!', ''));
    for (const block of byTag(lesson, 'Ring')) expect(RING_FIGURES, where(lesson, block)).toContain(block.set['of']);
    for (const block of byTag(lesson, 'Length')) expect(CUT_FIGURES, where(lesson, block)).toContain(block.set['of']);
    expect(
      passagesOf(parts, reading)
        .map((passage) => passage.text)
        .join(' '),
    ).not.toContain(NO_FIGURE);
  });

  test('has figures that can be drawn, each with a caption', () => {
    for (const block of byTag(lesson, 'Figure')) {
      const said = where(lesson, block);
      const { name: plate, row, example: other } = block.set;
      expect([...Object.keys(figures), 'piece'], said).toContain(plate);
      const plan = typeof other === 'string' ? planOf(other) : reading.plan;
      if (typeof row === 'string') expect(namedRow(plan, row as (typeof FIGURE_NAMES)[number]), said).toBeDefined();
      const drawn = plateFigure(plate as PlateName, plan, optionsOf(block, 'name', 'id', 'example', 'wide'), 'plate');
      if (plate === 'piece')
        for (const moment of [block.set['after'] ?? [], block.set['moment'] ?? []].flat())
          expect(momentsOf(plan), said).toContain(moment);
      expect(drawn.svg, said).toContain('<path');
      expect(drawn.description, said).not.toMatch(/\?|NaN|undefined/);
      expect(writtenIn(block.inside).trim(), said).toMatch(/[.?]$/);
    }
  });

  test('has exercises that can be made from any seed, and solved', () => {
    for (const block of byTag(lesson, 'Exercise')) {
      const said = where(lesson, block);
      const { kind, level = 'alone' } = block.set;
      expect(Object.keys(exercises), said).toContain(kind);
      expect(LEVELS, said).toContain(level);
      const exercise = exercises[kind as KindName] as (typeof exercises)['number'];
      const options = optionsOf(block, 'id', 'kind', 'level', 'seed');
      const made = Array.from({ length: 20 }, (_, seed) => exercise.make(seed, level as Level, options));
      for (const problem of made) {
        if ('ok' in problem) throw new Error(`${said}: ${JSON.stringify(problem.problem)}`);
        expect(exercise.judge(problem, exercise.solve(problem)).outcome, said).toBe('right');
      }
      expect(new Set(made.map((problem) => JSON.stringify(problem))).size, said).toBeGreaterThan(5);
    }
  });

  test('explains words that the glossary has, each once', () => {
    const terms = byTag(lesson, 'Term').map(({ set }) => set['is']);
    for (const term of terms)
      expect(
        glossary.map(({ id }) => id),
        `${name}: ${term}`,
      ).toContain(term);
    expect(terms.filter((term, index) => terms.indexOf(term) !== index)).toEqual([]);
  });

  test('has no number typed into it that the solver could give', () => {
    const known = new Map(PLAN_FIGURES.map((figure) => [namedFigure(reading.plan, figure), figure]));
    const front = text.slice(0, text.indexOf('\n---\n', 4)).replace(/^(?:order|minutes): .*$/gm, '');
    const typed = typedIn(`${front}\n${writtenIn(parts)}`).flatMap((number) => known.get(number) ?? []);
    expect(typed).toEqual([]);
  });

  test.each(Object.entries(PIECES))('holds for %s', (_, input) => {
    const shown = passagesOf(parts, readingOf(planned(input)));
    const faults = shown.flatMap(({ text: passage }) =>
      passage.includes(NO_FIGURE) ||
      /\b1 (?:strings|knots|folds|rows|columns|places|strands)\b| [,.;:]|[^.?!:,”)]$/.test(passage)
        ? [passage]
        : [],
    );
    expect(faults).toEqual([]);
  });
});

describe('the lessons together', () => {
  test('have exercises whose ids are all different, since answers are kept by them', () => {
    const ids = lessons.flatMap((lesson) => byTag(lesson, 'Exercise').map(({ set }) => set['id']));
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  test('send the reader to other lessons by numbers that the course has', () => {
    for (const { name, text } of lessons)
      for (const [reference, number] of text.matchAll(/\blesson (\d+)\b/gi)) {
        expect(Number(number), `${name}: ${reference}`).toBeLessThanOrEqual(15);
        expect(Number(number), `${name}: ${reference}`).not.toBe(readFileName(name)?.order);
      }
  });
});
