import { expect, type Locator, type Page } from '@playwright/test';
import {
  type ExerciseProblem,
  exercises,
  type KindName,
  type Level,
  type OptionsOf,
  type ProblemOf,
  type SolutionOf,
  SUM_FIELDS,
  type SumProblem,
} from '../../src/solver/index.ts';
import { fieldLabel } from '../../src/words/exercises/labels.ts';
import { questionWords } from '../../src/words/exercises/question.ts';

/** The lessons by what they teach, as their addresses have them. */
export const LESSONS = {
  shape: 'what-you-are-going-to-make',
  reading: 'reading-the-chart',
  measuring: 'measuring-your-ring',
  sum: 'the-fitting-sum',
  odd: 'odd-numbers',
  outline: 'drawing-the-outline',
  cutting: 'cutting-and-mounting',
  firstRow: 'side-bundles-and-the-first-row',
  widening: 'widening',
  closing: 'closing-in',
  finishing: 'gathering-and-finishing',
  straight: 'the-straight-part',
  back: 'the-back-care-and-repair',
  outlines: 'other-outlines',
  teaching: 'teaching-it',
} as const;
export type LessonName = keyof typeof LESSONS;
export const LESSON_NAMES = Object.keys(LESSONS) as LessonName[];

/** What the address gives an exercise: `{ 'sum-whole': 7 }` is `?sum-whole=7`. */
export type Seeds = Readonly<Record<string, string | number>>;

const query = (seeds: Seeds): string => {
  const text = new URLSearchParams(Object.entries(seeds).map(([id, seed]) => [id, String(seed)])).toString();
  return text && `?${text}`;
};

export async function openLesson(page: Page, lesson: LessonName, seeds: Seeds = {}): Promise<void> {
  await page.goto(`lessons/${LESSONS[lesson]}/${query(seeds)}`);
}

/** What a page says in its console, without what the test tool itself says because it keeps workers out. */
export function consoleOf(page: Page): string[] {
  const said: string[] = [];
  page.on('console', (message) => {
    if (message.text() !== 'Service Worker registration blocked by Playwright') said.push(message.text());
  });
  return said;
}

/** Waits until what was drawn beforehand answers to the hand; it does so when it comes into view. */
export async function awake(part: Locator): Promise<void> {
  await expect(part.locator('astro-island[ssr]')).toHaveCount(0);
}

/** Brings everything on the page into view, one after the other, until all of it answers to the hand. */
export async function wakeAll(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (const island of document.querySelectorAll('main astro-island[ssr]')) {
      island.firstElementChild?.scrollIntoView({ behavior: 'instant' });
      for (let tries = 0; tries < 100 && island.hasAttribute('ssr'); tries += 1)
        await new Promise((soon) => setTimeout(soon, 20));
    }
    scrollTo({ top: 0, behavior: 'instant' });
  });
  await expect(page.locator('main astro-island[ssr]')).toHaveCount(0);
}

/** The sheet of one exercise, in view and awake. */
export async function exerciseSheet(page: Page, id: string): Promise<Locator> {
  const sheet = page.locator(`#${id}`);
  await sheet.locator('.exercise-buttons').scrollIntoViewIfNeeded();
  await awake(sheet);
  return sheet;
}

export async function openExercise(page: Page, lesson: LessonName, id: string, seed?: string | number) {
  await openLesson(page, lesson, seed === undefined ? {} : { [id]: seed });
  return exerciseSheet(page, id);
}

/** Something to try out, in view and awake. */
export async function tryIt(page: Page, id: string): Promise<Locator> {
  const sheet = page.locator(`#${id}`);
  await sheet.getByRole('textbox').or(sheet.getByRole('slider')).first().scrollIntoViewIfNeeded();
  await awake(sheet);
  return sheet;
}

/** A kept value as Astro writes it into a page: each with a number for its type before it. */
type Packed = readonly [type: number, value: unknown];

function unpack([type, value]: Packed): unknown {
  if (type === 1) return (value as Packed[]).map(unpack);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value as Record<string, Packed>).map(([name, each]) => [name, unpack(each)]),
  );
}

export interface PageData<K extends KindName = KindName> {
  readonly id: string;
  readonly kind: K;
  readonly level: Level;
  readonly options: OptionsOf<K>;
  readonly seed: string;
}

/** What a page hands to an exercise, as it stands in its source. */
export function pageData(packed: string): Readonly<Record<string, unknown>> {
  return unpack([0, JSON.parse(packed)]) as Record<string, unknown>;
}

/** The problem that these data make. */
export function problemFrom<K extends KindName>({ kind, level, options, seed }: PageData<K>): ProblemOf<K> {
  const made = exercises[kind].make(seed, level, options);
  if ('ok' in made) throw new Error(`No problem comes of ${kind} ${level} ${JSON.stringify(options)} ${seed}.`);
  return made;
}

/** The question of this problem stands there, and no other before it. */
export async function expectQuestion(where: Locator, problem: ExerciseProblem): Promise<void> {
  const { given, ask } = questionWords(problem);
  await expect(where.locator('p').nth(0)).toHaveText(given);
  await expect(where.locator('p').nth(1)).toHaveText(ask);
}

/** The problem on a sheet, made from its seed; the question that stands there has to be the one of that problem. */
export async function problemOn<K extends KindName>(
  sheet: Locator,
  kind: K,
  seed?: string | number,
): Promise<ProblemOf<K>> {
  const data = pageData((await sheet.locator('astro-island').getAttribute('props')) ?? '{}') as unknown as PageData<K>;
  const problem = problemFrom({ ...data, kind, ...(seed === undefined ? {} : { seed: String(seed) }) });
  await expectQuestion(sheet.locator('form'), problem);
  return problem;
}

/** The sum on a sheet, read off its sentences and labels as a learner reads it; where these figures are to come, once they have. */
export async function sumReadOn(sheet: Locator, coming?: { width: number; capacity: number }): Promise<SumProblem> {
  const form = sheet.locator('form');
  const question = form.getByText(/^The chart is/).first();
  if (coming) await expect(question).toContainText(`${coming.width} columns wide. The bar takes ${coming.capacity}.`);
  const given = (await question.textContent()) ?? '';
  const [, width = '', capacity = ''] = /The chart is (\d+) columns? wide\. The bar takes (\d+)\./.exec(given) ?? [];
  const labels = await form.locator('label, legend').allInnerTexts();
  const bare: SumProblem = {
    kind: 'sum',
    width: Number(width),
    capacity: Number(capacity),
    oddMethod: given.includes('lone string') ? 'lone-string' : given.includes('carried end') ? 'carried-end' : null,
    startSide: given.includes('on the right') ? 'right' : 'left',
    fields: [],
  };
  return { ...bare, fields: SUM_FIELDS.filter((field) => labels.includes(fieldLabel(bare, field))) };
}

type SumEntries = SolutionOf<'sum'> | Readonly<Record<string, string>>;

/**
 * Writes figures where their labels stand, in the sum itself or in a case that decides; those that stand there already
 * are left.
 */
export async function writeSum(into: Locator, problem: SumProblem, answer: SumEntries, standing: SumEntries = {}) {
  const before = standing as Readonly<Record<string, number | string>>;
  for (const field of problem.fields) {
    const value = (answer as Readonly<Record<string, number | string>>)[field];
    if (value === undefined || value === before[field]) continue;
    const label = fieldLabel(problem, field);
    if (field === 'parity') {
      await into
        .getByRole('group', { name: label })
        .first()
        .getByRole('radio', { name: String(value) })
        .check();
    } else await into.getByRole('textbox', { name: label, exact: true }).first().fill(String(value));
  }
}

/** What an exercise says as a whole, under its buttons. */
export const said = (sheet: Locator): Locator => sheet.locator('form').getByRole('status');

/** The place where one figure is entered. */
export const figureField = (sheet: Locator, label: string): Locator =>
  sheet
    .getByRole('textbox', { name: label, exact: true })
    .or(sheet.getByRole('group', { name: label, exact: true }))
    .first();

/** What is said beside one figure: it can be seen, and whoever hears the page hears it with the figure. */
export async function expectBeside(sheet: Locator, label: string, words: string, message?: string): Promise<void> {
  const field = figureField(sheet, label);
  await expect(field, message).toHaveAccessibleDescription(words);
  if (words !== '') await expect(sheet.getByText(words, { exact: true }).first(), message).toBeVisible();
}

export const press = (sheet: Locator, name: string): Promise<void> =>
  sheet.getByRole('button', { name, exact: true }).click();

/** The knots of a drawn row are referred to: each has to be in the page, and to take up room. */
export async function seesKnots(drawings: Locator, atLeast: number): Promise<void> {
  const uses = drawings.locator('use');
  // A drawing may just be on its way out for the next one.
  await expect
    .poll(() =>
      uses.evaluateAll(
        (all) =>
          all.filter((use) => {
            const { width, height } = (use as SVGUseElement).getBBox();
            return !document.querySelector(use.getAttribute('href') ?? '') || width < 20 || height < 20;
          }).length,
      ),
    )
    .toBe(0);
  expect(await uses.count()).toBeGreaterThanOrEqual(atLeast);
}

export interface OwnSize {
  readonly capacity?: number | string;
  readonly width?: number | string;
  readonly height?: number | string;
}

const OWN_LABELS = { capacity: 'Your bar takes', width: 'Your chart is wide', height: 'Your chart is high' } as const;

/** The switch at the head of a lesson, awake and with its fields open. */
export async function openOwnFigures(page: Page): Promise<Locator> {
  const head = page.locator('.lesson-tools');
  await awake(head);
  const summary = head.locator('summary');
  if (
    !(await head
      .locator('details')
      .getAttribute('open')
      .then((open) => open !== null))
  )
    await summary.click();
  return head;
}

/** Enters a ring and a chart at the head of a lesson, and reads the lesson with them. */
export async function readWithOwn(page: Page, size: OwnSize): Promise<void> {
  const head = await openOwnFigures(page);
  for (const [field, label] of Object.entries(OWN_LABELS)) {
    const value = size[field as keyof OwnSize];
    if (value !== undefined) await head.getByRole('textbox', { name: label }).fill(String(value));
  }
  await head.getByRole('radio', { name: 'my figures' }).check();
}

/** The lesson is read with this piece, and no figure is missing from its sentences and plates. */
export async function expectReadWhole(page: Page, { capacity, width, height }: OwnSize): Promise<void> {
  const head = page.locator('.lesson-tools');
  await head.scrollIntoViewIfNeeded();
  await awake(head);
  const mine = `my figures: ${width} × ${height} on a bar of ${capacity}`;
  await expect(page.getByRole('radio', { name: mine })).toBeChecked();
  await expect(page.locator('[data-plate] svg').first()).toBeVisible();
  // Only what can be seen: passages for other pieces stand hidden in the page.
  const [text = ''] = await page.locator('main').allInnerTexts();
  expect(text, page.url()).not.toMatch(/\b(undefined|NaN|null|Infinity)\b|\?\?|(^|\s)–(\s|$)/);
}

/** Puts steps in this order, one after the other, by the buttons beside them. */
export async function putInOrder(sheet: Locator, order: readonly string[]): Promise<void> {
  const standing = () =>
    sheet.locator('[data-step]').evaluateAll((items) => items.map((item) => (item as HTMLElement).dataset['step']));
  for (const [place, step] of order.entries()) {
    const earlier = sheet.locator(`[data-step="${step}"]`).getByRole('button', { name: /^Earlier/ });
    for (let at = (await standing()).indexOf(step); at > place; at -= 1) {
      if ((await earlier.count()) === 0) break;
      await earlier.click();
    }
    // The one step that is loose in a half-worked form lies above those that stand already.
    const later = sheet.locator(`[data-step="${step}"]`).getByRole('button', { name: /^Later/ });
    for (let at = (await standing()).indexOf(step); at < place; at += 1) await later.click();
  }
}

/** Takes one of the choices that stand there. */
export async function choose(sheet: Locator, problem: ProblemOf<'choose'>, choice: string): Promise<void> {
  await sheet
    .getByRole('radio')
    .nth((problem.choices as readonly string[]).indexOf(choice))
    .check();
}

/** Writes a sentence, compares it, and ticks as many points as that. */
export async function sayAndTick(sheet: Locator, text: string, points: number): Promise<void> {
  await sheet.getByRole('textbox').fill(text);
  await press(sheet, 'Compare with a model answer');
  await expect(sheet.getByRole('checkbox').first()).toBeVisible();
  for (let point = 0; point < points; point += 1) await sheet.getByRole('checkbox').nth(point).check();
}
