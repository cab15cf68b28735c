import { expect, type Locator, type Page, test } from '@playwright/test';
import { type Plan, planPiece } from '../../src/solver/index.ts';
import { platePieces } from '../../src/widgets/knot/knot-plate.ts';
import { problemWords } from '../../src/words/problems.ts';
import { rowSummary } from '../../src/words/row-words.ts';
import { storageWords } from '../../src/words/storage-words.ts';
import {
  awake,
  exerciseSheet,
  expectReadWhole,
  LESSON_NAMES,
  openLesson,
  openOwnFigures,
  readWithOwn,
  sumReadOn,
  tryIt,
} from './learner.ts';

function planOf(size: { width: number; height: number; capacity: number }): Plan {
  const plan = planPiece(size);
  if (!plan.ok) throw new Error('The solver can’t plan this piece.');
  return plan;
}

const OWN = { capacity: 12, width: 22, height: 30 };
const MINE = planOf(OWN);
/** The stages in which lesson 12 shows how a string is gathered. */
const GATHERED = ['at-rest', 'brought-through', 'brought-through-again', 'drawn-up'] as const;
const LANTERN = planOf({ capacity: 16, width: 26, height: 32 });

/** The sentence of lesson 1 about what hangs on the bar and what beside it, with this piece’s figures. */
const onTheBar = ({ fit }: Plan): string =>
  `The bar of this ring takes ${fit.capacity} strings side by side, yet the picture needs ${fit.width}. So ${fit.onBar} strings are fixed on the bar itself, while the others hang through the ring just beside it, ${fit.left.strands} at each end of the bar.`;

/** Lesson 1 is read with this piece: in a sentence, in a plate, in what is tried and in what is asked. */
async function expectRead(page: Page, plan: Plan): Promise<void> {
  await expect(page.getByText(onTheBar(plan))).toBeVisible();
  const outline = page.locator('#plate-outline');
  await outline.getByText('In words').click();
  await expect(outline).toContainText(`Row 1 has ${plan.fit.firstRowKnots} knots`);
  await expect(outline).toContainText(`Row ${plan.rows.length}, the last, has`);
  await outline.getByText('In words').click();
  const walk = await tryIt(page, 'try-rows');
  await walk.getByRole('slider', { name: 'Row', exact: true }).press('End');
  const last = plan.rows.at(-1);
  await expect(walk).toContainText(last ? rowSummary(last) : '?');
}

test('a ring and a chart entered in lesson 4 are what lesson 1 speaks of', async ({ page }) => {
  await openLesson(page, 'sum');
  await readWithOwn(page, OWN);
  await openLesson(page, 'shape');
  await awake(page.locator('.lesson-tools'));
  await expect(page.getByRole('radio', { name: 'my figures: 22 × 30 on a bar of 12' })).toBeChecked();
  await expectRead(page, MINE);
  const asked = await exerciseSheet(page, 'any-row-knots');
  await expect(asked.locator('form')).toContainText('The chart is 22 columns wide and 30 rows high.');
});

test('in lesson 4 itself the sums, the try-it and the plates follow as well', async ({ page }) => {
  await openLesson(page, 'sum');
  await readWithOwn(page, OWN);
  const sheet = await exerciseSheet(page, 'sum-whole');
  await sumReadOn(sheet, OWN);
  const fitting = await tryIt(page, 'try-fitting');
  await expect(fitting.getByRole('textbox', { name: 'The chart is wide' })).toHaveValue('22');
  await expect(fitting).toContainText(`So ${MINE.fit.onBar} strings hang on the bar.`);
  await expect(page.locator('#plate-bar-fitted [data-plate-words]')).toContainText(
    `On the bar hang ${MINE.fit.onBar} strings`,
  );
});

test('a piece without a picture leaves the lantern’s colours in lesson 10, and the plate says whose they are', async ({
  page,
}) => {
  await openLesson(page, 'straight');
  const back = page.locator('#plate-the-back');
  const lanterns = await back.locator('[data-plate-words]').textContent();
  const says = back.getByText('Your own piece has no picture yet, so this is the lantern.');
  await expect(says).toBeHidden();
  await readWithOwn(page, OWN);
  await expect(says).toBeVisible();
  await expect(back.locator('[data-plate-words]')).toHaveText(lanterns ?? '?');
  await expect(page.locator('#plate-straight-outline [data-plate-words]')).toContainText(
    `Row 1 has ${MINE.fit.firstRowKnots} knots`,
  );
});

test('a left hand sees and hears the knots of a lesson as it ties them, and the stepper begins with it', async ({
  page,
}) => {
  await openLesson(page, 'finishing');
  const plate = page.locator('#plate-gathering-knot');
  const caption = plate.locator('.plate-caption');
  const built = await plate.locator('.stages').innerHTML();
  const lines = (svg: string): string[] => [...svg.matchAll(/ d="([^"]*)"/g)].map(([, d = '']) => d);
  await expect(caption).toContainText('ties a backward knot round the left bundle');
  await readWithOwn(page, OWN);
  await page.evaluate(() => {
    const kept = JSON.parse(localStorage.getItem('evenfold.own-figures') ?? '{}');
    localStorage.setItem('evenfold.own-figures', JSON.stringify({ ...kept, handedness: 'left', startSide: 'right' }));
  });
  await page.reload();
  await expect(caption).toContainText('ties a forward knot round the right bundle');
  await expect(page.getByText('Lay the right string over the core and under the left string.').first()).toBeVisible();
  await expect(plate.locator('.stages li').first()).toContainText('hangs to the left of the bundle');
  const mirrored = platePieces({ knots: ['gathering-right'], stages: GATHERED, strands: 3 }, 'gathering-knot', 'right');
  await expect
    .poll(async () => lines(await plate.locator('.stages').innerHTML()))
    .toEqual(lines(mirrored.items.join('')));
  await plate.getByRole('button', { name: /: Gathering with a forward knot$/ }).click();
  await expect(plate.getByRole('region', { name: 'Gathering with a forward knot, step by step' })).toBeVisible();
  await page.getByRole('radio', { name: 'the lantern' }).check();
  await expect(plate.getByRole('region', { name: 'Gathering with a backward knot, step by step' })).toBeVisible();
  await plate.getByRole('button', { name: 'Back to the plate' }).click();
  await expect(caption).toContainText('ties a backward knot round the left bundle');
  await expect.poll(() => plate.locator('.stages').innerHTML()).toContain(lines(built)[0]);
  expect(lines(await plate.locator('.stages').innerHTML())).toEqual(lines(built));
});

test('own figures outlast a reload, and the example comes back when asked for', async ({ page }) => {
  await openLesson(page, 'shape');
  await readWithOwn(page, OWN);
  await expectRead(page, MINE);
  await page.reload();
  await expectRead(page, MINE);
  await page.getByRole('radio', { name: 'the lantern' }).check();
  await expectRead(page, LANTERN);
});

test('a link into the middle of a lesson leads to one’s own figures as well', async ({ page }) => {
  await openLesson(page, 'sum');
  await readWithOwn(page, OWN);
  await openLesson(page, 'shape');
  await page.goto('lessons/the-fitting-sum/#sum-whole');
  await expect(page.locator('#sum-whole')).toBeInViewport();
  const sheet = page.locator('#sum-whole');
  await expect(sheet.locator('form')).toContainText('The chart is 22 columns wide. The bar takes 12.');
});

test('another tab follows what is entered in this one', async ({ page, context }) => {
  await openLesson(page, 'shape');
  const other = await context.newPage();
  await openLesson(other, 'sum');
  await readWithOwn(other, OWN);
  await expect(page.getByText(onTheBar(MINE))).toBeVisible();
  await other.locator('.lesson-tools').getByRole('textbox', { name: 'Your bar takes' }).fill('14');
  await expect(page.getByText(onTheBar(planOf({ ...OWN, capacity: 14 })))).toBeVisible();
});

test('an odd chart without room for pairs is spoken of with its lone string, a narrow one with no bundles', async ({
  page,
}) => {
  await openLesson(page, 'sum');
  await readWithOwn(page, { capacity: 15, width: 21, height: 18 });
  const prose = page.locator('.prose');
  await expect(prose.getByText('and a lone string').filter({ visible: true })).not.toHaveCount(0);
  const head = await openOwnFigures(page);
  await head.getByRole('textbox', { name: 'Your bar takes' }).fill('22');
  await expect(prose.getByText('This bar has room for every string of the chart')).toBeVisible();
  await expect(prose.getByText('Your half is').filter({ visible: true })).toHaveCount(0);
});

test.describe('figures that can’t be made', () => {
  const NEVER = { capacity: 4, width: 60, height: 40 };

  test('it is said kindly what would work, and the page stays with its example', async ({ page }) => {
    const made = planPiece(NEVER);
    if (made.ok) throw new Error('The solver can make these after all.');
    await openLesson(page, 'shape');
    await readWithOwn(page, NEVER);
    const head = page.locator('.lesson-tools');
    await expect(head).toContainText(problemWords(made.problem));
    await expect(head).toContainText('Until then the page shows the lantern.');
    await expect(page.getByText(onTheBar(LANTERN))).toBeVisible();
    await head.getByRole('textbox', { name: 'Your bar takes' }).fill('50');
    await expect(head).not.toContainText('Until then');
    await expect(page.getByText(onTheBar(planOf({ ...NEVER, capacity: 50 })))).toBeVisible();
  });

  test('exercises and try-its go on as well, with figures that can', async ({ page }) => {
    await openLesson(page, 'sum');
    await readWithOwn(page, NEVER);
    const sheet = await exerciseSheet(page, 'sum-whole');
    const asked = await sumReadOn(sheet);
    expect([asked.width, asked.capacity]).not.toEqual([NEVER.width, NEVER.capacity]);
    const fitting = await tryIt(page, 'try-fitting');
    await expect(fitting.getByRole('textbox', { name: 'The chart is wide' })).toHaveValue('26');
    await expect(fitting).toContainText('So 14 strings hang on the bar.');
  });

  test('what can’t be used stays as it was typed, with what would do beside it', async ({ page }) => {
    await openLesson(page, 'shape');
    await readWithOwn(page, OWN);
    const field = page.locator('.lesson-tools').getByRole('textbox', { name: 'Your bar takes' });
    for (const [entered, says] of [
      ['twelve', 'You entered “twelve” for what the bar takes. It has to be a whole number from 2 to'],
      ['1', 'You entered 1 for what the bar takes. That is too small.'],
      ['', 'What the bar takes is still empty.'],
    ] as const) {
      await field.fill(entered);
      await expect(field).toHaveValue(entered);
      await expect(field).toHaveAccessibleDescription(new RegExp(`^${says}`));
      await expect(page.getByText(onTheBar(MINE))).toBeVisible();
    }
  });
});

test('lengths are in centimetres, and in inches once that is chosen, in every lesson', async ({ page }) => {
  await openLesson(page, 'cutting');
  const prose = page.locator('.prose').first();
  const length = page.locator('[data-length]').first();
  await expect(length).toHaveText(/cm/, { useInnerText: true });
  const head = await openOwnFigures(page);
  await head.getByRole('radio', { name: 'inches' }).check();
  await expect(length).toHaveText(/\sin\b/, { useInnerText: true });
  await expect(length).not.toHaveText(/cm/, { useInnerText: true });
  await page.goto('piece/');
  await awake(page.locator('main'));
  await expect(page.getByRole('radio', { name: 'inches' })).toBeChecked();
  await expect(page.getByText(/^Cut \d+ pieces? of about/).first()).toContainText(/\sin\b/);
  await expect(prose).toBeVisible();
});

/** What a browser may do with what is kept, before a page is there. */
const BROKEN = {
  full: () => {
    Storage.prototype.setItem = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  },
  blocked: () => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('not here', 'SecurityError');
      },
    });
  },
  'no-storage': () => {
    Object.defineProperty(window, 'localStorage', { value: null });
  },
} as const;

test.describe('where nothing can be kept', () => {
  for (const [why, breakIt] of Object.entries(BROKEN))
    test(`${why}: the lesson goes on with what is entered, and says what happened`, async ({ page }) => {
      await page.addInitScript(breakIt);
      await openLesson(page, 'shape');
      await readWithOwn(page, OWN);
      await expect(page.locator('.lesson-tools')).toContainText(storageWords({ kept: false, why: why as 'full' }));
      await expect(page.locator('.lesson-tools').getByRole('textbox', { name: 'Your chart is wide' })).toHaveValue(
        '22',
      );
      await expectRead(page, MINE);
    });

  test('full: an exercise is checked all the same, and says that its figures are not kept', async ({ page }) => {
    await page.addInitScript(BROKEN.full);
    await openLesson(page, 'widening');
    const sheet = await exerciseSheet(page, 'full-width');
    await sheet.getByRole('textbox', { name: 'First row of full width' }).fill('999');
    await sheet.getByRole('button', { name: 'Check', exact: true }).click();
    await expect(sheet).toContainText('No slip we know leads to this answer.');
    await expect(sheet.getByRole('textbox')).toHaveValue('999');
    await expect(sheet.getByText(storageWords({ kept: false, why: 'full' }))).toHaveCount(1);
  });

  test('blocked: one’s own piece is planned all the same', async ({ page }) => {
    await page.addInitScript(BROKEN.blocked);
    await page.goto('piece/');
    const main = page.locator('main');
    await awake(main);
    await main.getByRole('textbox', { name: 'The bar takes' }).fill('10');
    await expect(main.getByRole('textbox', { name: 'The bar takes' })).toHaveValue('10');
    await expect(main.getByText(storageWords({ kept: false, why: 'blocked' }))).toBeVisible();
    await expect(
      main
        .getByText(`Row 1, left to right: ${planOf({ capacity: 10, width: 12, height: 14 }).fit.firstRowKnots} knots`)
        .first(),
    ).toBeVisible();
  });
});

test.describe('where what was kept is damaged', () => {
  /** Puts a text where something is kept, on the first page only. */
  const damage = (page: Page, key: string, text: string) =>
    page.addInitScript(
      ([name, value]) => {
        if (sessionStorage.getItem('damaged')) return;
        sessionStorage.setItem('damaged', 'yes');
        localStorage.setItem(name, value);
      },
      [key, text] as const,
    );
  const says = storageWords({ kept: false, why: 'unreadable' });
  const saysSo = (where: Locator) => expect(where.getByText(says)).toBeVisible();

  test('own figures: the lesson shows its example, says so, and keeps the next entry', async ({ page }) => {
    await damage(page, 'evenfold.own-figures', '{"version":1,"capacity":');
    await openLesson(page, 'shape');
    const head = page.locator('.lesson-tools');
    await awake(head);
    await expect(page.getByText(onTheBar(LANTERN))).toBeVisible();
    await saysSo(head);
    await readWithOwn(page, OWN);
    await expect(head.getByText(says)).toBeHidden();
    await page.reload();
    await expect(page.getByText(onTheBar(MINE))).toBeVisible();
  });

  test('own figures: the page of one’s own piece says so and plans from the start', async ({ page }) => {
    await damage(page, 'evenfold.own-figures', 'not a record');
    await page.goto('piece/');
    await awake(page.locator('main'));
    await saysSo(page.locator('main'));
    await expect(page.getByText('Row 1, left to right: 10 knots').first()).toBeVisible();
  });

  test('one field of many: the others are kept', async ({ page }) => {
    await damage(page, 'evenfold.own-figures', '{"version":1,"capacity":12,"width":"wide","height":30}');
    await page.goto('piece/');
    const main = page.locator('main');
    await awake(main);
    await expect(main.getByRole('textbox', { name: 'The bar takes' })).toHaveValue('12');
    await expect(main.getByRole('textbox', { name: 'High' })).toHaveValue('30');
  });

  test('answers: the exercise begins afresh and says so', async ({ page }) => {
    await damage(page, 'evenfold.answers', '[1, 2');
    await openLesson(page, 'widening');
    const sheet = await exerciseSheet(page, 'full-width');
    await saysSo(sheet);
    await expect(sheet.getByRole('textbox')).toHaveValue('');
  });

  test('kept by a later version: it is left as it is', async ({ page }) => {
    const kept = '{"version":99,"capacity":12,"more":"to come"}';
    await damage(page, 'evenfold.own-figures', kept);
    await page.goto('piece/');
    const main = page.locator('main');
    await awake(main);
    await expect(main.getByText(storageWords({ kept: false, why: 'newer' }))).toBeVisible();
    await main.getByRole('textbox', { name: 'The bar takes' }).fill('9');
    await expect(main.getByRole('textbox', { name: 'The bar takes' })).toHaveValue('9');
    expect(await page.evaluate(() => localStorage.getItem('evenfold.own-figures'))).toBe(kept);
  });
});

/** Pieces unlike the worked examples: each has passages of its own in the lessons. */
for (const [what, { capacity, width, height, odd }] of Object.entries({
  'a straight piece': { capacity: 12, width: 12, height: 20, odd: 'a lone string' },
  'an odd piece with a carried end': { capacity: 16, width: 27, height: 40, odd: 'a carried end' },
}))
  test(`for ${what} no lesson has a sentence without its figure`, async ({ page }) => {
    await openLesson(page, 'sum');
    await readWithOwn(page, { capacity, width, height });
    await page.locator('.lesson-tools').getByRole('radio', { name: odd }).check();
    for (const lesson of LESSON_NAMES) {
      await openLesson(page, lesson);
      await expectReadWhole(page, { capacity, width, height });
    }
  });
