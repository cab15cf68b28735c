import { expect, type Page, test } from '@playwright/test';
import { extractText, getDocumentProxy } from 'unpdf';
import { qrSvg } from '../../src/figures/qr.ts';
import { sheetSeed } from '../../src/solver/exercises/sheet-code.ts';
import { exercises, type KindName, type Level, type OptionsOf } from '../../src/solver/index.ts';
import { answerWords } from '../../src/words/exercises/answer-words.ts';
import { choicesIn } from '../../src/words/exercises/choices.ts';
import { questionWords } from '../../src/words/exercises/question.ts';
import { axeFinds } from './axe.ts';
import { exerciseSheet, expectQuestion, LESSON_NAMES, LESSONS, seesKnots } from './learner.ts';

interface Known {
  readonly id: string;
  readonly kind: KindName;
  readonly level: Level;
  readonly options: object;
}

const LESSON = 'lessons/the-fitting-sum/';
const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();
const papers = (page: Page) => page.locator('article.paper');

/** The lesson's exercises, read off the lesson itself. */
async function exercisesOf(page: Page, lesson = LESSON): Promise<Known[]> {
  await page.goto(lesson);
  const sheets = await page.locator('section.exercise').evaluateAll((all) =>
    all.map((sheet) => ({
      id: sheet.id,
      kind: (sheet as HTMLElement).dataset['kind'],
      level: (sheet as HTMLElement).dataset['level'],
      props: sheet.querySelector('astro-island')?.getAttribute('props') ?? '{}',
    })),
  );
  return sheets.map(({ props, ...known }) => ({ ...known, options: optionsIn(props) }) as Known);
}

function optionsIn(props: string): object {
  const unpack = ([type, value]: [number, unknown]): unknown =>
    type === 1
      ? (value as [number, unknown][]).map(unpack)
      : typeof value === 'object' && value !== null
        ? Object.fromEntries(Object.entries(value).map(([name, each]) => [name, unpack(each)]))
        : value;
  return unpack((JSON.parse(props) as Record<string, [number, unknown]>)['options'] ?? [0, {}]) as object;
}

/** An exercise as the solver makes it for a learner of a class. */
function made({ id, kind, level, options }: Known, code: string, learner: number | null) {
  const problem = exercises[kind as 'sum'].make(sheetSeed({ code, learner }, id), level, options as OptionsOf<'sum'>);
  if ('ok' in problem) throw new Error(`${id} can’t be made.`);
  return problem;
}

async function printed(page: Page): Promise<{ pages: string[]; all: string }> {
  const pdf = await getDocumentProxy(new Uint8Array(await page.pdf({ format: 'A4' })));
  const { text } = await extractText(pdf, { mergePages: false });
  const pages = (text as string[]).map(plain);
  return { pages, all: pages.join(' ') };
}

test('each learner’s sheet holds the questions the solver makes from the class’s code and their number, on paper too', async ({
  page,
}) => {
  test.setTimeout(60_000);
  const known = await exercisesOf(page);
  expect(known.length).toBeGreaterThanOrEqual(3);
  await page.goto(`${LESSON}sheets/?class=tide-27&learners=3`);
  await expect(papers(page)).toHaveCount(3);
  const { pages, all } = await printed(page);
  for (const learner of [1, 2, 3]) {
    const begins = pages.findIndex((text) => text.includes(`Class tide-27, sheet ${learner}`));
    expect(begins, `sheet ${learner} begins on a page of its own`).toBeGreaterThanOrEqual(0);
    for (const exercise of known) {
      const problem = made(exercise, 'tide-27', learner);
      const { given, parts = [] } = questionWords(problem);
      const choices = Object.values(choicesIn(problem).choices ?? {}).flatMap((some) => some.map(([, says]) => says));
      for (const words of [given, ...parts, ...choices]) expect(all).toContain(plain(words));
      if (exercise.kind !== 'sum' && exercise.kind !== 'number') continue;
      for (const { label } of answerWords(
        exercise.kind as 'sum',
        problem,
        exercises[exercise.kind as 'sum'].solve(problem),
      ))
        expect(all).toContain(label);
    }
  }
  expect(all).not.toContain('Another code');
  expect(all).not.toContain('Hint');
});

test('the key has what is right on every sheet, and no sheet has it', async ({ page }) => {
  const known = await exercisesOf(page);
  await page.goto(`${LESSON}sheets/?class=tide-27&learners=3&show=key`);
  await expect(papers(page)).toHaveCount(1);
  for (const [at, exercise] of known.entries()) {
    const rows = papers(page).locator('.paper-exercise').nth(at).locator('tbody tr');
    for (const learner of [1, 2, 3]) {
      const problem = made(exercise, 'tide-27', learner);
      const answers = answerWords(exercise.kind as 'sum', problem, exercises[exercise.kind as 'sum'].solve(problem));
      const row = rows.nth(learner - 1);
      await expect(row.getByRole('rowheader')).toHaveText(String(learner));
      for (const { value } of answers) await expect(row).toContainText(value);
    }
  }
  const { all } = await printed(page);
  expect(all).toContain('Key: Lesson 4: The fitting sum');
  await page.getByRole('radio', { name: 'the sheets' }).check();
  await expect(papers(page)).toHaveCount(3);
  await expect(page).not.toHaveURL(/show=key/);
  await expect(papers(page).getByRole('table')).toHaveCount(0);
});

test('on paper a row to tie names what there is to choose from, and has a line for each knot and move', async ({
  page,
}) => {
  await page.goto(`lessons/${LESSONS.closing}/sheets/?class=low-water-5&learners=1`);
  await page.emulateMedia({ media: 'print' });
  const asked = papers(page).locator('.paper-exercise').filter({ hasText: 'Tie this row' });
  await expect(asked.getByText('Choose from: let one string out, take one string in,')).toBeVisible();
  const columns = Number(/has (\d+) columns/.exec((await asked.textContent()) ?? '')?.[1]);
  await expect(asked.locator('.write-here').filter({ visible: true })).toHaveCount(columns + 2);
});

// Three lessons between them have every kind of exercise; they are printed, and the others are read as they stand.
const PRINTED: readonly string[] = ['cutting', 'closing', 'reading'];

for (const lesson of LESSON_NAMES)
  test(`sheet and key of “${LESSONS[lesson]}” are as the solver has them, and another class has other figures`, async ({
    page,
  }) => {
    test.setTimeout(60_000);
    const address = `lessons/${LESSONS[lesson]}/`;
    const known = await exercisesOf(page, address);
    expect(known.length).toBeGreaterThanOrEqual(3);
    const read = async (show: string): Promise<string> => {
      await page.goto(`${address}sheets/?class=low-water-5&learners=2${show}`);
      await expect(papers(page)).toHaveCount(show ? 1 : 2);
      await expect(papers(page).first().locator('.paper-exercise')).toHaveCount(known.length);
      if (PRINTED.includes(lesson)) return (await printed(page)).all;
      await page.emulateMedia({ media: 'print' });
      const text = plain((await papers(page).allInnerTexts()).join(' '));
      await page.emulateMedia({ media: 'screen' });
      return text;
    };

    const sheets = await read('');
    const rows = papers(page).locator('.tied-drawing svg');
    const drawn = known.filter(
      ({ kind, options }) => kind === 'row' || (kind === 'spot' && Object(options).in === 'row'),
    );
    await expect(rows).toHaveCount(2 * drawn.length);
    await seesKnots(rows, 2 * drawn.filter(({ kind }) => kind === 'spot').length);
    for (const learner of [1, 2])
      for (const exercise of known) {
        const problem = made(exercise, 'low-water-5', learner);
        const { given, ask, parts = [] } = questionWords(problem);
        for (const words of [given, ask, ...parts]) if (words) expect(sheets).toContain(plain(words));
      }
    const key = await read('&show=key');
    for (const learner of [1, 2])
      for (const exercise of known) {
        const problem = made(exercise, 'low-water-5', learner);
        const answers = answerWords(exercise.kind as 'sum', problem, exercises[exercise.kind as 'sum'].solve(problem));
        expect(answers.length).toBeGreaterThan(0);
        const row = papers(page).locator('.paper-exercise').nth(known.indexOf(exercise)).locator('tbody tr');
        const stands = plain((await row.nth(learner - 1).textContent()) ?? '');
        for (const { value } of answers) {
          expect(stands, `${exercise.id}, sheet ${learner}`).toContain(plain(value));
          expect(key).toContain(plain(value));
        }
      }

    const questions = () => papers(page).first().locator('.paper-exercise .question').allInnerTexts();
    await page.goto(`${address}sheets/?class=low-water-5&learners=1`);
    await expect(papers(page)).toHaveCount(1);
    const first = await questions();
    await page.goto(`${address}sheets/?class=high-water-8&learners=1`);
    await expect(papers(page).first()).toContainText('high-water-8');
    const other = await questions();
    expect(other).toHaveLength(first.length);
    // A question of one figure may come out alike by chance; a whole sheet may not.
    const alike = other.filter((asked, at) => asked === first[at]);
    expect(alike.length).toBeLessThanOrEqual(first.length / 3);
  });

test('another class has other figures, and the same code the same ones on any device', async ({ page, browser }) => {
  const questions = async (on: Page, code: string) => {
    await on.goto(`${LESSON}sheets/?class=${code}&learners=2`);
    await expect(papers(on)).toHaveCount(2);
    return on.locator('.paper-exercise .question').allInnerTexts();
  };
  const first = await questions(page, 'tide-27');
  const other = await questions(page, 'kelp-31');
  expect(other).not.toEqual(first);
  const elsewhere = await browser.newPage({ baseURL: new URL('.', page.url().replace(/lessons\/.*/, '')).href });
  expect(await questions(elsewhere, 'tide-27')).toEqual(first);
  await elsewhere.close();
});

test('the code on a sheet leads to the same exercises, where answers are checked', async ({ page, baseURL }) => {
  const known = await exercisesOf(page);
  await page.goto(`${LESSON}sheets/?class=tide-27&learners=2`);
  const address = `${new URL(LESSON, baseURL).href}?sheet=tide-27.2`;
  const second = papers(page).nth(1);
  await expect(second.getByText(address)).toBeVisible();
  const drawn = await second.locator('.paper-code svg').evaluate((svg) => svg.outerHTML);
  const paths = (svg: string) => [...svg.matchAll(/ d="([^"]+)"/g)].map(([, d]) => d);
  expect(paths(drawn)).toEqual(paths(qrSvg(address)));
  await page.goto(address);
  for (const exercise of known)
    await expectQuestion((await exerciseSheet(page, exercise.id)).locator('form'), made(exercise, 'tide-27', 2));
});

test('the form goes by keys, says what it can’t read, and keeps everything in the address', async ({ page }) => {
  await page.goto(`${LESSON}sheets/`);
  await expect(papers(page)).toHaveCount(8);
  const code = page.getByRole('textbox', { name: 'Code of the class' });
  await code.fill('  ?!  ');
  await expect(page.getByText('has no letter or digit in it')).toBeVisible();
  await code.fill('Low Water 3');
  await expect(page).toHaveURL(/class=low-water-3/);
  const learners = page.getByRole('textbox', { name: 'Learners' });
  await learners.fill('400');
  await expect(page.getByText('Enter a whole number of learners from 1 to 40.')).toBeVisible();
  await learners.fill('2');
  await expect(papers(page)).toHaveCount(2);
  await page.getByRole('radio', { name: 'one sheet for the whole room' }).press('Space');
  await expect(papers(page)).toHaveCount(1);
  await page.reload();
  await expect(papers(page)).toHaveCount(1);
  await expect(code).toHaveValue('low-water-3');
  await page.getByRole('button', { name: 'Another code' }).press('Enter');
  await expect(code).toHaveValue(/^[a-z]+-\d\d$/);
});

test('a teacher chooses exercises; they keep their numbers, and every page says whose it is', async ({ page }) => {
  const all = await exercisesOf(page);
  await page.goto(`${LESSON}sheets/?class=tide-27&learners=2`);
  await page.getByText(`All ${all.length} exercises`).click();
  for (const box of (await page.getByRole('checkbox').all()).slice(2)) await box.uncheck();
  await expect(page.getByText(`2 of ${all.length} exercises`)).toBeVisible();
  await page.getByRole('checkbox').first().uncheck();
  await expect(page).toHaveURL(new RegExp(`only=${all[1]?.id}$`));
  await page.reload();
  await expect(
    papers(page)
      .first()
      .getByRole('heading', { name: /^Exercise \d/ }),
  ).toHaveText(['Exercise 2']);
  const { pages } = await printed(page);
  for (const sheet of [1, 2])
    expect(pages.filter((text) => text.includes(`Class tide-27, sheet ${sheet}`))).toHaveLength(pages.length / 2);
  await page.getByText(`1 of ${all.length} exercises`).click();
  await page.getByRole('checkbox', { name: 'Exercise 2' }).uncheck();
  await expect(page.getByText('No exercise is chosen')).toBeVisible();
  await expect(papers(page)).toHaveCount(0);
});

test('axe finds nothing on sheets and key, and a phone shows them whole', async ({ page }) => {
  // Axe looks at every part of every drawing; on a machine with other work that takes a while.
  test.setTimeout(180_000);
  for (const show of ['', '&show=key']) {
    await page.setViewportSize({ width: 320, height: 640 });
    await page.goto(`${LESSON}sheets/?class=tide-27&learners=2${show}`);
    await expect(papers(page).first()).toBeVisible();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      expect(await axeFinds(page), `${show} ${colorScheme}`).toEqual([]);
    }
  }
});
