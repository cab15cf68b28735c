import { expect, type Locator, type Page, test } from '@playwright/test';
import { exercises } from '../../src/solver/index.ts';
import {
  awake,
  exerciseSheet,
  expectReadWhole,
  LESSON_NAMES,
  openExercise,
  openLesson,
  press,
  problemOn,
  said,
  tryIt,
} from './learner.ts';

/** Puts a ring and a chart where the workbook keeps them, and reads with them: what a learner has on the second day. */
async function withOwnKept(
  page: Page,
  size: { capacity: number; width: number; height: number; maxBundle?: number },
): Promise<void> {
  await page.addInitScript((own) => {
    localStorage.setItem('evenfold.own-figures', JSON.stringify({ version: 1, ...own }));
    localStorage.setItem('evenfold.preferences', JSON.stringify({ version: 1, figures: 'mine' }));
  }, size);
}

/** What is cut off at the side of a narrow window: parts that reach out of it, and text in boxes too small for it. */
const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    const scrolls = (element: Element | null): boolean =>
      element !== null &&
      element !== document.documentElement &&
      (/auto|scroll/.test(getComputedStyle(element).overflowX) || scrolls(element.parentElement));
    const faults: string[] = [];
    if (document.documentElement.scrollWidth > width)
      faults.push(`the page is ${document.documentElement.scrollWidth} wide`);
    for (const element of document.querySelectorAll<HTMLElement>(
      'body :is(p, li, label, legend, button, input, select, textarea, h1, h2, h3, summary, dd, dt, figure, svg, a, output)',
    )) {
      if (
        !element.checkVisibility() ||
        element.closest('.for-screen-readers, .skip') ||
        element.parentElement?.closest('svg')
      )
        continue;
      const { left, right } = element.getBoundingClientRect();
      const name = `${element.localName} “${(element.textContent ?? '').trim().slice(0, 40)}”`;
      // A wide chart may be moved sideways in its own box.
      if ((left < -1 || right > width + 1) && !scrolls(element.parentElement))
        faults.push(`${name} lies from ${Math.round(left)} to ${Math.round(right)}`);
      const { overflowX } = getComputedStyle(element);
      if (overflowX === 'hidden' && element.scrollWidth > element.clientWidth + 1)
        faults.push(`${name} hides part of itself`);
    }
    return faults;
  });

/** Scrolls through the page, so that every widget wakes. */
async function throughThePage(page: Page): Promise<void> {
  for (const island of await page.locator('astro-island').all())
    await island.locator('> *').first().scrollIntoViewIfNeeded();
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
}

const EXTREMES = {
  'four strings': { capacity: 4, width: 4, height: 14, maxBundle: 2 },
  'sixty strings': { capacity: 48, width: 60, height: 90, maxBundle: 8 },
} as const;

test.describe('at 400 % zoom, a window of 320 pixels', () => {
  test.use({ viewport: { width: 320, height: 256 } });

  for (const [strings, size] of Object.entries(EXTREMES)) {
    test(`no lesson is cut off with ${strings}, and none misses a figure`, async ({ page }) => {
      test.setTimeout(180_000);
      await withOwnKept(page, size);
      for (const name of LESSON_NAMES) {
        await openLesson(page, name);
        await expectReadWhole(page, size);
        await throughThePage(page);
        expect.soft(await cutOff(page), name).toEqual([]);
      }
    });

    test(`one’s own piece with ${strings}: nothing cut off`, async ({ page }) => {
      await withOwnKept(page, size);
      await page.goto('piece/');
      await awake(page.locator('main'));
      await expect(
        page.getByRole('region', { name: 'Row by row' }).getByText(`Row ${size.height}, `).first(),
      ).toBeVisible();
      await page.locator('main details').evaluateAll((all) => {
        for (const folded of all) (folded as HTMLDetailsElement).open = true;
      });
      expect(await cutOff(page)).toEqual([]);
    });
  }

  test('an exercise and all that it says fits in', async ({ page }) => {
    const sheet = await openExercise(page, 'sum', 'sum-whole');
    const problem = await problemOn(sheet, 'sum');
    for (const field of await sheet.getByRole('textbox').all()) await field.fill('123456789');
    await sheet.getByRole('radio', { name: 'odd' }).check();
    await press(sheet, 'Check');
    for (let hints = 0; hints < 3; hints += 1) await press(sheet, 'Hint');
    await press(sheet, 'Show the working');
    await expect(said(sheet)).toContainText('The working, with these figures:');
    expect(problem.width).toBeGreaterThan(0);
    expect(await cutOff(page)).toEqual([]);
  });
});

test.describe('with reduced motion', () => {
  test.use({ contextOptions: { reducedMotion: 'reduce' } });

  test('nothing moves by itself, and nothing takes time to change', async ({ page }) => {
    await openLesson(page, 'sum');
    const fitting = await tryIt(page, 'try-fitting');
    await fitting.getByRole('radio', { name: 'every place taken' }).check();
    await press(await exerciseSheet(page, 'sum-first'), 'Hint');
    const moving = await page.evaluate(() => [
      ...document.getAnimations().map((animation) => animation.constructor.name),
      ...[...document.querySelectorAll('*')]
        .filter((element) => {
          const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(element);
          const slow = transitionDuration.split(',').some((time) => Number.parseFloat(time) > 0.01);
          return animationName !== 'none' || slow || scrollBehavior === 'smooth';
        })
        .map((element) => element.outerHTML.slice(0, 80)),
    ]);
    expect(moving).toEqual([]);
  });
});

test.describe('with forced colours', () => {
  test.use({ contextOptions: { forcedColors: 'active' } });

  const looks = async (part: Locator): Promise<string> =>
    (await part.screenshot({ animations: 'disabled' })).toString('base64');

  test('a marked cell can be told from one that is not, and a right one from one marked by mistake', async ({
    page,
  }) => {
    const sheet = await openExercise(page, 'shape', 'mark-corners');
    const problem = await problemOn(sheet, 'mark');
    const [[row, column] = [1, 1]] = exercises.mark.solve(problem).cells;
    const cellAt = (at: number) =>
      sheet.getByRole('button', { name: new RegExp(`^row ${row}, column ${at}(, marked by mistake)?$`) });
    const wrong = Math.ceil(problem.width / 2);
    const empty = await looks(cellAt(wrong + 1));
    await cellAt(column).click();
    await cellAt(wrong).click();
    await sheet.getByRole('heading', { name: 'Exercise' }).click();
    await page.mouse.move(0, 0);
    expect(await looks(cellAt(wrong)), 'marked').not.toBe(empty);
    await press(sheet, 'Check');
    await expect(said(sheet)).toContainText('first');
    await page.mouse.move(0, 0);
    expect(await looks(cellAt(column)), 'right').not.toBe(await looks(cellAt(wrong)));
  });

  test('the focus, the choice made and the button that checks can be seen', async ({ page }) => {
    const sheet = await openExercise(page, 'sum', 'sum-first');
    const even = sheet.getByRole('radio', { name: 'even' });
    const before = await looks(even);
    await even.check();
    expect(await looks(even)).not.toBe(before);
    await sheet.getByRole('textbox').last().focus();
    await page.keyboard.press('Tab');
    const check = sheet.getByRole('button', { name: 'Check', exact: true });
    await expect(check).toBeFocused();
    const { outlineStyle, borderTopStyle } = await check.evaluate((button) => {
      const { outlineStyle: outline, borderTopStyle: border } = getComputedStyle(button);
      return { outlineStyle: outline, borderTopStyle: border };
    });
    expect(outlineStyle).not.toBe('none');
    expect(borderTopStyle).not.toBe('none');
  });

  test('a drawing keeps its lines: each plate has strokes or fills unlike the ground', async ({ page }) => {
    await openLesson(page, 'sum');
    const plate = page.locator('#plate-bar-fitted svg');
    await plate.scrollIntoViewIfNeeded();
    const drawn = await looks(plate);
    await plate.evaluate((svg) => {
      for (const part of svg.querySelectorAll('*')) part.remove();
    });
    expect(await looks(plate)).not.toBe(drawn);
    expect(
      await page
        .locator('#plate-bar-capacity svg text')
        .first()
        .evaluate((text) => getComputedStyle(text).fill),
    ).not.toBe(await page.evaluate(() => getComputedStyle(document.body).backgroundColor));
  });
});
