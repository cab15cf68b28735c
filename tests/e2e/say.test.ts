import { expect, test } from '@playwright/test';
import { exercises } from '../../src/solver/index.ts';
import { hintWords } from '../../src/words/exercises/hint-words.ts';
import { stepWords } from '../../src/words/exercises/step-words.ts';
import { axeFinds } from './axe.ts';
import { exerciseSheet, openExercise, press, problemOn, said, sayAndTick } from './learner.ts';

const { say: kind } = exercises;
const MINE = 'Each side needs a string to be even, and there are two sides.';

test('the model answer is shown only when something was written, and is of these figures', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'why-two', 3);
  const problem = await problemOn(sheet, 'say', 3);
  const model = kind.solution(problem).map((step) => stepWords('say', step));
  const compare = sheet.getByRole('button', { name: 'Compare with a model answer' });
  await expect(compare).toHaveAttribute('aria-disabled', 'true');
  await compare.click({ force: true });
  await expect(sheet.locator('blockquote')).toHaveCount(0);
  await expect(sheet.getByRole('button', { name: 'Show the working' })).toHaveCount(0);
  await sheet.getByRole('textbox').fill('   ');
  await compare.click({ force: true });
  await expect(sheet.locator('blockquote')).toHaveCount(0);
  await sheet.getByRole('textbox').fill(MINE);
  await compare.click();
  await expect(sheet.locator('blockquote')).toHaveText(model.join(' '));
  await expect(sheet.getByRole('checkbox')).toHaveCount(model.length);
});

test('it is right when every point is ticked, and before that nothing is called a slip', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'why-two', 3);
  const problem = await problemOn(sheet, 'say', 3);
  const { points } = kind.solve(problem);
  await sayAndTick(sheet, MINE, 1);
  await press(sheet, 'Check');
  await expect(said(sheet)).toContainText('Something is not said yet.');
  await expect(sheet.locator('.slips')).toHaveText('Add what is missing in your own words. Then tick it.');
  for (let point = 1; point < points.length; point += 1) await sheet.getByRole('checkbox').nth(point).check();
  await press(sheet, 'Check');
  await expect(said(sheet)).toHaveText('That is right. You have said all of it.');
});

test('nothing written, or nothing compared, is no try', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'why-two');
  await press(sheet, 'Check');
  await expect(said(sheet)).toHaveText('Write your sentence and compare it first. This is no try yet.');
  await sheet.getByRole('textbox').fill(MINE);
  await press(sheet, 'Check');
  await expect(said(sheet)).toHaveText('Write your sentence and compare it first. This is no try yet.');
});

test('the hints point at what to say, and the worked case explains something else', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'why-two', 3);
  const problem = await problemOn(sheet, 'say', 3);
  const { look, do: act } = kind.hints(problem);
  for (let given = 1; given <= 2; given += 1) {
    await press(sheet, 'Hint');
    await expect(sheet.locator('.hint')).toHaveCount(given);
  }
  await expect(sheet.locator('.hint')).toHaveText([hintWords('say', look), hintWords('say', act)]);
  await press(sheet, 'Hint');
  await expect(sheet.locator('.worked')).toContainText('Here is another one.');
  await expect(sheet.locator('.worked')).not.toContainText('Why are two strings borrowed');
});

test('what was written and ticked outlasts a reload, and so does the model answer', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'why-two');
  await sayAndTick(sheet, MINE, 2);
  await press(sheet, 'Check');
  await expect(said(sheet)).toContainText('Something is not said yet.');
  await page.reload();
  await exerciseSheet(page, 'why-two');
  await expect(sheet.getByRole('textbox')).toHaveValue(MINE);
  await expect(sheet.locator('blockquote')).toBeVisible();
  await expect(sheet.getByRole('checkbox', { checked: true })).toHaveCount(2);
  await expect(said(sheet)).toContainText('Something is not said yet.');
});

test('another like it begins with an empty page', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'why-two', 3);
  await sayAndTick(sheet, MINE, 1);
  await press(sheet, 'Another like it');
  await problemOn(sheet, 'say', 4);
  await expect(sheet.getByRole('textbox')).toHaveValue('');
  await expect(sheet.locator('blockquote')).toHaveCount(0);
});

test('it is written, compared, ticked and checked with the keyboard alone', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'why-two', 3);
  await sheet.getByRole('textbox').focus();
  await page.keyboard.type('Two sides.');
  await page.keyboard.press('Enter');
  await expect(sheet.getByRole('textbox')).toHaveValue('Two sides.\n');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(sheet.getByRole('checkbox').first()).toBeVisible();
  const points = await sheet.getByRole('checkbox').count();
  for (let point = 0; point < points; point += 1) {
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
  }
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(said(sheet)).toHaveText('That is right. You have said all of it.');
});

test.describe('by touch', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

  test('the whole line of a point is large enough for a finger', async ({ page }) => {
    const sheet = await openExercise(page, 'sum', 'why-two', 3);
    await sayAndTick(sheet, MINE, 0);
    const line = sheet.locator('.ticks label').first();
    expect((await line.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    await line.tap();
    await expect(sheet.getByRole('checkbox').first()).toBeChecked();
  });
});

test('axe finds nothing, before and after comparing', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'why-two', 3);
  expect(await axeFinds(page, { within: '#why-two' })).toEqual([]);
  await sayAndTick(sheet, MINE, 1);
  await press(sheet, 'Check');
  await expect(sheet.locator('.slips')).toBeVisible();
  expect(await axeFinds(page, { within: '#why-two' })).toEqual([]);
});
