import { expect, test } from '@playwright/test';
import { openLesson } from './learner.ts';

test('a word of the craft opens its meaning where it stands, by keys, and gives the focus back', async ({ page }) => {
  await openLesson(page, 'straight');
  const word = page.getByRole('button', { name: 'float', exact: true });
  const meaning = page.locator('#term-float');
  await expect(meaning).toBeHidden();
  await word.focus();
  await page.keyboard.press('Enter');
  await expect(meaning).toBeVisible();
  await expect(meaning).toContainText('A resting string that runs along the back');
  await page.keyboard.press('Escape');
  await expect(meaning).toBeHidden();
  await expect(word).toBeFocused();
});

test('the meaning leads to its place in the glossary, and from there to the lesson', async ({ page }) => {
  await openLesson(page, 'straight');
  await page.getByRole('button', { name: 'float', exact: true }).click();
  await page.locator('#term-float').getByRole('link').click();
  await expect(page).toHaveURL(/glossary\/#float$/);
  await page
    .getByRole('region', { name: 'float', exact: true })
    .getByRole('link', { name: /^Lesson 10/ })
    .click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The straight part');
});

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });
  test('the browser opens a word by itself', async ({ page }) => {
    await openLesson(page, 'straight');
    await page.getByRole('button', { name: 'turning knot', exact: true }).click();
    await expect(page.locator('#term-turning-knot')).toBeVisible();
  });
});

test('on paper each meaning follows its word in brackets', async ({ page }) => {
  await openLesson(page, 'straight');
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('button', { name: 'float', exact: true })).toBeVisible();
  const meaning = page.locator('#term-float');
  await expect(meaning).toBeVisible();
  expect(await meaning.evaluate((span) => getComputedStyle(span).display)).toBe('inline');
});

test('the foot of every page leads to glossary, faults and cautions', async ({ page }) => {
  for (const [name, heading] of [
    ['Glossary', 'Glossary'],
    ['Faults and fixes', 'Faults and fixes'],
    ['Cautions', 'Cautions'],
  ] as const) {
    await page.goto('');
    await page.getByRole('navigation', { name: 'Look it up' }).getByRole('link', { name }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(heading);
  }
});

test('a fault is found by what is seen, with the fault and the mended work beside each other', async ({ page }) => {
  await page.goto('faults/');
  await page.getByRole('link', { name: 'The edge has a step in the opening' }).click();
  const fault = page.getByRole('region', { name: 'The edge has a step in the opening' });
  await expect(fault.getByText('Two strings came out of one bundle in the same row.')).toBeVisible();
  await expect(fault.getByRole('img')).toHaveCount(2);
});

test('other outlines can be tried: full width in row 11 by steps of two, in row 6 by steps of one', async ({
  page,
}) => {
  await openLesson(page, 'outlines');
  const widget = page.locator('#try-outlines');
  await expect(widget).toContainText('full width of 29 columns in row 11');
  const live = widget.locator('.drawn-plate').filter({ visible: true });
  const steps = widget.getByLabel('A string comes out every');
  await steps.fill('1');
  await expect(live).toContainText('full width of 29 columns in row 6');
  await widget.getByLabel('Bundles in the last row').fill('1');
  await expect(live).not.toContainText('takes strings in');
  await steps.fill('9');
  await expect(widget.getByText('You entered 9 for the rows from one string let out to the next.')).toBeVisible();
});

test('a chart with blank cells can give a piece its shape', async ({ page }) => {
  await page.goto('charts/mussel/');
  await page.getByRole('link', { name: 'Plan it' }).click();
  const capacity = page.getByLabel('The bar takes');
  await capacity.fill('6');
  // As on the page of the chart, so here: it is planned in the shape in which it was drawn.
  await expect(page.getByRole('radio', { name: 'the shape of the chart' })).toBeChecked();
  const met = page.locator('.drawn-plate p', { hasText: 'every edge of the wish can be tied' });
  await expect(met).toBeAttached();
  await page.getByRole('radio', { name: 'your steps' }).check();
  await expect(met).toHaveCount(0);
});
