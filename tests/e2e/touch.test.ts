import { expect, type Locator, type Page, test } from '@playwright/test';
import { exercises, type KindName, type ProblemOf } from '../../src/solver/index.ts';
import { fieldLabel } from '../../src/words/exercises/labels.ts';
import { Finger } from './finger.ts';
import { awake, consoleOf, figureField, type LessonName, openLesson, problemOn, said, wakeAll } from './learner.ts';

test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

/** Watches for anything but a finger: a test that clicked or hovered would say nothing of touch. */
async function onlyTouch(page: Page): Promise<() => Promise<void>> {
  await page.addInitScript(() => {
    const seen = new Set<string>();
    Object.assign(window, { seenPointers: seen });
    for (const type of ['pointerdown', 'pointermove', 'pointerover'])
      addEventListener(type, (event) => seen.add((event as PointerEvent).pointerType), true);
  });
  return async () => {
    const seen = await page.evaluate(() => [...(window as unknown as { seenPointers: Set<string> }).seenPointers]);
    expect(seen).toEqual(['touch']);
  };
}

const button = (where: Locator, name: string | RegExp): Locator =>
  where.getByRole('button', { name, exact: typeof name === 'string' });

type ByHand<K extends KindName> = (finger: Finger, sheet: Locator, problem: ProblemOf<K>) => Promise<void>;

const cell = (sheet: Locator, row: number, column: number): Locator =>
  sheet.locator(`[data-cell="${row}-${column}"]`).first();

/** Solves an exercise of each kind with taps and swipes alone. */
const byHand: { readonly [K in KindName]: ByHand<K> } = {
  sum: async (finger, sheet, problem) => {
    const answer = exercises.sum.solve(problem);
    for (const field of problem.fields) {
      const place = figureField(sheet, fieldLabel(problem, field));
      if (field === 'parity') await finger.tap(place.getByRole('radio', { name: String(answer.parity) }));
      else await finger.write(place, String(answer[field]));
    }
  },
  number: async (finger, sheet, problem) => {
    await finger.write(sheet.getByRole('textbox').first(), String(exercises.number.solve(problem).figure));
  },
  mark: async (finger, sheet, problem) => {
    for (const [row, column] of exercises.mark.solve(problem).cells) {
      const at = cell(sheet, row, column);
      if ((await at.getAttribute('aria-pressed')) !== 'true') await finger.tap(at);
      await expect(at).toHaveAttribute('aria-pressed', 'true');
    }
  },
  row: async (finger, sheet, problem) => {
    const half = (await sheet.getAttribute('data-level')) === 'half-worked';
    const standing = half ? (exercises.row.fade(problem).given.acts?.length ?? 0) : 0;
    for (const act of exercises.row.solve(problem).acts.slice(standing))
      await finger.tap(sheet.locator(`[data-act="${act}"]`));
  },
  spot: async (finger, sheet, problem) => {
    const { place, fault } = exercises.spot.solve(problem);
    await finger.tap(sheet.locator(`input[value="${place}"]`));
    await finger.tap(sheet.locator(`input[value="${fault}"]`));
  },
  order: async (finger, sheet, problem) => {
    const { order } = exercises.order.solve(problem);
    const standing = () =>
      sheet.locator('[data-step]').evaluateAll((all) => all.map((item) => (item as HTMLElement).dataset['step']));
    for (const [place, step] of order.entries())
      for (let at = (await standing()).indexOf(step); at > place; at -= 1)
        await finger.tap(button(sheet.locator(`[data-step="${step}"]`), /^Earlier/));
  },
  choose: async (finger, sheet, problem) => {
    const { choice } = exercises.choose.solve(problem);
    await finger.tap(sheet.getByRole('radio').nth((problem.choices as readonly string[]).indexOf(choice)));
  },
  say: async (finger, sheet) => {
    await finger.write(sheet.getByRole('textbox'), 'Each side needs one.');
    await finger.tap(button(sheet, 'Compare with a model answer'));
    const points = sheet.getByRole('checkbox');
    await expect(points.first()).toBeVisible();
    for (const point of await points.all()) {
      await finger.tap(point);
      await expect(point).toBeChecked();
    }
  },
};

const solve = <K extends KindName>(kind: K, finger: Finger, sheet: Locator, problem: ProblemOf<K>): Promise<void> =>
  byHand[kind](finger, sheet, problem);

/** Every exercise of the lesson, one after the other; gives the kinds that were met. */
async function solveAll(page: Page, finger: Finger): Promise<Set<KindName>> {
  const kinds = new Set<KindName>();
  for (const id of await page.locator('.exercise').evaluateAll((all) => all.map((one) => one.id))) {
    const sheet = page.locator(`#${id}`);
    const kind = (await sheet.getAttribute('data-kind')) as KindName;
    await finger.goTo(button(sheet, 'Check'));
    await awake(sheet);
    const problem = await problemOn(sheet, kind);
    await solve(kind, finger, sheet, problem);
    await finger.tap(button(sheet, 'Check'));
    await expect(said(sheet), id).toContainText('That is right.');
    kinds.add(kind);
  }
  return kinds;
}

/** Goes wrong once, with a habit that is known, asks for every help there is, and then gets it right. */
async function failAndAsk(page: Page, finger: Finger, id: string): Promise<void> {
  const sheet = page.locator(`#${id}`);
  const field = sheet.getByRole('textbox').first();
  await finger.goTo(button(sheet, 'Check'));
  await awake(sheet);
  const problem = await problemOn(sheet, 'number');
  const { figure } = exercises.number.solve(problem);
  await finger.write(field, String(figure + 1));
  await finger.tap(button(sheet, 'Check'));
  await expect(said(sheet).locator('.slips')).toBeVisible();
  for (let hints = 1; hints <= 2; hints += 1) {
    await finger.tap(button(sheet, 'Hint'));
    await expect(sheet.locator('.hint')).toHaveCount(hints);
  }
  await finger.tap(button(sheet, 'Hint'));
  await expect(said(sheet).locator('.worked')).toHaveCount(1);
  await finger.tap(button(sheet, 'Show the working'));
  await expect(said(sheet)).toContainText('The working, with these figures:');
  await finger.write(field, String(figure));
  await finger.tap(button(sheet, 'Check'));
  await expect(said(sheet)).toContainText('That is right.');
  await finger.tap(button(sheet, 'Another like it'));
  await expect.poll(() => new URL(page.url()).searchParams.get(id)).toBe('1');
  await problemOn(sheet, 'number', 1);
}

async function walkTheRows(finger: Finger, tryIt: Locator): Promise<void> {
  const row = tryIt.getByRole('slider', { name: 'Row' });
  await finger.slide(row, 1);
  await awake(tryIt);
  await finger.slide(row, 1);
  await expect(row).toHaveValue((await row.getAttribute('max')) ?? '');
  await finger.slide(row, 0);
  await expect(row).toHaveValue('1');
  const knots = tryIt.getByRole('slider', { name: 'Knots tied' });
  await finger.slide(knots, 0);
  await expect(knots).toHaveValue('0');
  await finger.tap(button(tryIt, 'Next row'));
  await expect(row).toHaveValue('2');
  await finger.slide(knots, 0);
  await finger.tap(button(tryIt, 'Next knot'));
  await expect(knots).toHaveValue('1');
  await finger.tap(button(tryIt, 'Knot back'));
  await expect(knots).toHaveValue('0');
  await finger.tap(button(tryIt, 'Row before'));
  await expect(row).toHaveValue('1');
}

async function openPlates(page: Page, finger: Finger): Promise<void> {
  for (const plate of await page.locator('figure.plate').all()) {
    const words = plate.locator('figcaption details').first();
    await finger.tap(words.locator('summary').first());
    await expect(words).toHaveAttribute('open', '');
    await finger.tap(button(plate, /^Larger/));
    const large = page.getByRole('dialog');
    await expect(large.getByRole('img').first()).toBeVisible();
    await finger.tap(button(large, 'Close'));
    await expect(large).toHaveCount(0);
  }
}

async function stepThroughAKnot(page: Page, finger: Finger): Promise<void> {
  const first = page.locator('figure', { has: page.getByRole('button', { name: /^Step through it/ }) }).first();
  const plate = page.locator(`#${await first.getAttribute('id')}`);
  await finger.tap(button(plate, /^Step through it/).first());
  const stage = plate.getByRole('status').first();
  await expect(stage).toContainText('Stage 1');
  await finger.tap(button(plate, 'Next stage'));
  await expect(stage).toContainText('Stage 2');
  await finger.slide(plate.getByRole('slider'), 1);
  expect(Number(await plate.getByRole('slider').inputValue())).toBeGreaterThan(0.9);
  for (const control of await plate.locator('button:visible, input:visible, select:visible').all())
    await finger.goTo(control);
  await finger.tap(button(plate, 'Back to the plate'));
  await expect(plate.getByRole('slider')).toHaveCount(0);
}

async function openWords(page: Page, finger: Finger): Promise<void> {
  for (const word of await page.locator('main button.term').all()) {
    const meaning = page.locator(`#${await word.getAttribute('popovertarget')}`);
    await finger.tap(word);
    await expect(meaning).toBeVisible();
    await finger.goTo(meaning.getByRole('link'));
    // It closes when something else is touched.
    await finger.tap(word);
    await expect(meaning).toBeHidden();
  }
}

/**
 * Everything on a page that does something when it is touched. Links that skip come into view with the focus alone, and
 * a chart to mark scrolls by itself: its cells are gone to where they are marked.
 */
const CONTROLS = ['a[href]:not(.skip)', 'button', 'summary', 'input', 'select', 'textarea']
  .map((control) => `:is(${control}):not([role="grid"] *, .for-screen-readers, .for-screen-readers *):visible`)
  .join(', ');

test('a whole lesson goes by touch alone: every exercise, a wrong answer with all its help, the thing to try, plates, words and the bench', async ({
  page,
}) => {
  test.setTimeout(240_000);
  const console = consoleOf(page);
  const stayedTouch = await onlyTouch(page);
  const lesson: LessonName = 'widening';
  await openLesson(page, lesson);
  const finger = new Finger(page);

  await openWords(page, finger);
  await openPlates(page, finger);
  await stepThroughAKnot(page, finger);
  for (const tryIt of await page.locator('.try-it').all()) await walkTheRows(finger, tryIt);
  const kinds = await solveAll(page, finger);
  expect([...kinds].sort()).toEqual(['choose', 'mark', 'number', 'order', 'row', 'spot', 'sum']);
  await failAndAsk(page, finger, 'full-width');

  const bench = page.locator('.bench').getByRole('checkbox');
  expect(await bench.count()).toBeGreaterThan(2);
  for (const check of await bench.all()) {
    await finger.tap(check);
    await expect(check).toBeChecked();
  }
  await stayedTouch();
  // Nothing of the page lies beside the phone.
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await finger.tap(page.locator('a[rel="next"]').first());
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The straight part');
  expect(console).toEqual([]);
});

test('every control of that lesson is large enough for a finger, and nothing lies over it', async ({ page }) => {
  test.setTimeout(240_000);
  await openLesson(page, 'widening');
  const finger = new Finger(page);
  await finger.tap(page.locator('.lesson-tools summary').first());
  await expect(page.getByRole('textbox', { name: 'Your bar takes' })).toBeVisible();
  await wakeAll(page);
  expect(await finger.passOver(page.locator(CONTROLS))).toBeGreaterThan(80);
});

test('something to explain goes by touch, too', async ({ page }) => {
  const stayedTouch = await onlyTouch(page);
  await openLesson(page, 'reading');
  const finger = new Finger(page);
  const sheet = page.locator('.exercise[data-kind="say"]');
  await finger.goTo(sheet.getByRole('textbox'));
  await awake(sheet);
  await solve('say', finger, sheet, await problemOn(sheet, 'say'));
  await finger.tap(button(sheet, 'Check'));
  await expect(said(sheet)).toContainText('That is right.');
  await stayedTouch();
});

test('a step is drawn to another place with a finger, and the page stays where it is meanwhile', async ({ page }) => {
  await openLesson(page, 'widening');
  const finger = new Finger(page);
  const sheet = page.locator('.exercise[data-kind="order"]');
  await finger.goTo(button(sheet, 'Check'));
  await awake(sheet);
  await finger.goTo(button(sheet, /^Later/).first());
  const steps = () =>
    sheet.locator('[data-step]').evaluateAll((all) => all.map((item) => (item as HTMLElement).dataset['step']));
  const before = await steps();
  const [first, second] = await sheet.locator('.grip.loose').all();
  const [from, to] = [await first?.boundingBox(), await second?.boundingBox()];
  if (!from || !to) throw new Error('There are no two steps to draw.');
  const scrolled = await page.evaluate(() => scrollY);
  const [start, end] = [from.y + 12, to.y + to.height];
  await finger.swipe({ x: from.x + 30, y: (start + end) / 2 }, 0, end - start);
  await expect.poll(steps).toEqual([before[1], before[0], ...before.slice(2)]);
  expect(await page.evaluate(() => scrollY)).toBe(scrolled);
});
