import { expect, type Locator, type Page, test } from '@playwright/test';
import { LESSON_NAMES, LESSONS, openLesson } from './learner.ts';

test.use({ javaScriptEnabled: false });

/** Everything that can be seen and seems to answer to a hand, but for what a browser does by itself. */
const seenControls = (page: Page): Locator =>
  page
    .locator(
      'button:not([popovertarget]), input:not(.checklist input), select, textarea, [role="slider"], [role="grid"] button, [contenteditable]',
    )
    .filter({ visible: true });

for (const name of LESSON_NAMES)
  test(`the lesson “${LESSONS[name]}” is whole: figures, questions with lines to write on, hints, a worked case, no dead control`, async ({
    page,
  }) => {
    await openLesson(page, name);
    await expect.soft(seenControls(page)).toHaveCount(0);
    // Plates of a passage that is not so of the example stand folded away with it.
    const plates = page.locator('figure').filter({ visible: true });
    expect(await plates.count()).toBeGreaterThanOrEqual(3);
    for (const plate of await plates.all()) {
      await expect(plate.getByRole('img').first()).toBeVisible();
      await plate.getByText('In words').click();
      await expect(plate.locator('details p').first()).toHaveText(/.{30}/);
    }
    const sheets = page.locator('.exercise');
    expect(await sheets.count()).toBeGreaterThanOrEqual(3);
    for (const sheet of await sheets.all()) {
      await expect(sheet.locator('form').getByText(/[?.]$/).first()).toBeVisible();
      await expect(
        sheet
          .locator('.write-here, .write-lines, .tick-here, .place-here')
          .or(sheet.getByRole('table'))
          .or(sheet.getByRole('grid'))
          .first(),
      ).toBeVisible();
      for (const hint of ['Where to look', 'What to do']) {
        const folded = sheet.getByRole('group').filter({ hasText: hint });
        await sheet.getByText(hint, { exact: true }).click();
        await expect(folded.locator('p').first()).toBeVisible();
      }
      const more = sheet.locator('.without-script summary').nth(2);
      if ((await more.count()) > 0) await more.click();
      await expect(sheet.locator('.working > li').first()).toBeVisible();
    }
  });

test('a try-it shows its example: the sum worked, and a row with its knots', async ({ page }) => {
  await openLesson(page, 'sum');
  await expect(
    page.locator('#try-fitting').getByRole('listitem').filter({ hasText: 'Let one string out on each side' }),
  ).toBeVisible();
  await openLesson(page, 'shape');
  await expect(page.locator('#try-rows')).toContainText('Row 1, left to right: 16 knots');
});

test('one’s own piece says that it needs script, and where the sum is taught by hand', async ({ page }) => {
  await page.goto('piece/');
  // Chromium shows what stands in <noscript> only where script is off in its own settings: here its source has to do.
  const source = await (await page.request.get('piece/')).text();
  expect(source).toMatch(/<noscript>.*and that needs script\. Without it, lesson 4 shows.*<\/noscript>/s);
  await expect(seenControls(page)).toHaveCount(0);
});

test('a row to tie has a line for each knot and move', async ({ page }) => {
  await openLesson(page, 'closing');
  const asked = page.locator('#row-closing');
  const columns = Number(/has (\d+) columns/.exec((await asked.textContent()) ?? '')?.[1]);
  const lines = asked.locator('.write-lines .write-here').filter({ visible: true });
  await expect(lines).toHaveCount(columns + 2);
});

test('practice says that it needs script, and where the exercises are', async ({ page }) => {
  const source = await (await page.request.get('practice/')).text();
  expect(source).toMatch(/<noscript>.*that needs script\. Without it, each <a [^>]*>lesson<\/a> has.*<\/noscript>/s);
});

test('the charts are there to look at, and to take away as text', async ({ page }) => {
  await page.goto('charts/');
  const chart = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'Pear' }) });
  await expect(chart.getByRole('img', { name: /^Pear: 15 columns wide/ })).toBeVisible();
  await expect(chart.getByRole('img', { name: 'Pear, finished' })).toBeVisible();
  const link = await chart.getByRole('link', { name: 'As text' }).getAttribute('href');
  const text = await (await page.request.get(link ?? '')).text();
  expect(text).toMatch(/^chart Pear\n/);
});
