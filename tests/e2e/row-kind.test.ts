import { expect, type Locator, test } from '@playwright/test';
import { exercises, type RowAct, type RowProblem } from '../../src/solver/index.ts';
import { slipWords } from '../../src/words/slips/index.ts';
import { axeFinds } from './axe.ts';
import { openExercise, press, problemOn, readWithOwn, said } from './learner.ts';

const { row } = exercises;

const tie = async (sheet: Locator, acts: readonly RowAct[]): Promise<void> => {
  for (const act of acts) await sheet.locator(`[data-act="${act}"]`).click();
};
const list = (sheet: Locator): Locator => sheet.locator('.tied-list li');
const drawing = (sheet: Locator): Locator => sheet.getByRole('img');
/** The answer that a slip leads to, which it surely is in these rows. */
const slipped = (problem: RowProblem, slip: 'turning-knots-swapped' | 'ordinary-knot-on-bundle') => {
  const answer = row.missteps[slip]?.(problem);
  if (!answer) throw new Error(`There is no ${slip}.`);
  return answer;
};

test('a row tied as a maker ties it is right; what is tied is drawn, listed and said after each step', async ({
  page,
}) => {
  const sheet = await openExercise(page, 'widening', 'row-widening-back');
  const problem = await problemOn(sheet, 'row');
  const { acts } = row.solve(problem);
  const before = await drawing(sheet).innerHTML();
  await tie(sheet, acts.slice(0, 1));
  await expect(list(sheet)).toHaveCount(1);
  await expect.poll(() => drawing(sheet).innerHTML()).not.toBe(before);
  await expect(sheet.locator('.tied-lead')).toContainText('The leading string is');
  await expect(drawing(sheet)).toHaveAccessibleName(/passes behind the leading string/);
  await press(sheet, 'Check');
  await expect(said(sheet)).toContainText('not tied to its end yet');
  await tie(sheet, acts.slice(1));
  await expect(list(sheet)).toHaveCount(acts.length);
  await press(sheet, 'Check');
  await expect(said(sheet)).toHaveText('That is right.');
});

test('a row tied by a slip is told which, and the first thing that does not follow is marked', async ({ page }) => {
  const sheet = await openExercise(page, 'closing', 'row-closing');
  const problem = await problemOn(sheet, 'row');
  const answer = slipped(problem, 'turning-knots-swapped');
  await tie(sheet, answer.acts);
  await press(sheet, 'Check');
  const words = slipWords(problem, 'turning-knots-swapped', answer);
  await expect(said(sheet)).toContainText(`${words?.did} ${words?.why} ${words?.next}`);
  await expect(list(sheet).filter({ hasText: 'the first that does not follow' })).toHaveCount(1);
  // A change takes back what was said of the row.
  await press(sheet, 'Undo');
  await expect(list(sheet)).toHaveCount(answer.acts.length - 1);
  await expect(said(sheet)).toHaveText('');
});

test('a row that no slip ties is told so, with what does not follow', async ({ page }) => {
  const sheet = await openExercise(page, 'closing', 'row-closing');
  await problemOn(sheet, 'row');
  await tie(sheet, ['let-out', 'let-out', 'backward']);
  await press(sheet, 'Check');
  await expect(said(sheet)).toContainText('The first thing you did is the first that does not follow');
  await expect(said(sheet)).toContainText('No slip we know leads to this answer.');
});

test('undo takes one thing back, and start again takes all', async ({ page }) => {
  const sheet = await openExercise(page, 'widening', 'row-widening-back');
  await tie(sheet, ['let-out', 'forward', 'forward']);
  await press(sheet, 'Undo');
  await expect(list(sheet)).toHaveCount(2);
  await press(sheet, 'Start again');
  await expect(list(sheet)).toHaveCount(0);
});

test('figures tie and Backspace takes back, with the keyboard alone', async ({ page }) => {
  const sheet = await openExercise(page, 'widening', 'row-widening-back');
  await sheet.locator('[data-act="let-out"]').focus();
  await page.keyboard.press('4');
  await page.keyboard.press('7');
  await expect(list(sheet)).toHaveCount(2);
  await page.keyboard.press('Backspace');
  await expect(list(sheet)).toHaveCount(1);
  await page.keyboard.press('ArrowRight');
  await expect(sheet.locator('[data-act="take-in"]')).toBeFocused();
});

test('what is tied is there again when the page is loaded anew, with what was said', async ({ page }) => {
  const sheet = await openExercise(page, 'closing', 'row-closing');
  const problem = await problemOn(sheet, 'row');
  const { acts } = slipped(problem, 'ordinary-knot-on-bundle');
  await tie(sheet, acts);
  await press(sheet, 'Check');
  await expect(sheet.locator('.slips')).toBeVisible();
  await page.reload();
  await sheet.scrollIntoViewIfNeeded();
  await expect(list(sheet)).toHaveCount(acts.length);
  await expect(sheet.locator('.slips')).toBeVisible();
  await expect(drawing(sheet)).toHaveAccessibleName(/knot round/);
});

test('hints come in three steps, then the working of these very figures', async ({ page }) => {
  const sheet = await openExercise(page, 'closing', 'row-closing');
  for (let given = 1; given <= 2; given += 1) {
    await press(sheet, 'Hint');
    await expect(sheet.locator('.hint')).toHaveCount(given);
  }
  await press(sheet, 'Hint');
  await expect(said(sheet)).toContainText('Here is one like it, worked with other figures.');
  await press(sheet, 'Show the working');
  await expect(said(sheet)).toContainText('The working, with these figures:');
});

test('half worked, the row is begun, and the rest is open', async ({ page }) => {
  const sheet = await openExercise(page, 'widening', 'row-widening');
  const problem = await problemOn(sheet, 'row');
  const { given } = row.fade(problem);
  const begun = given.acts?.length ?? 0;
  await expect(list(sheet)).toHaveCount(begun);
  await expect(list(sheet).first()).toContainText('Done already.');
  await tie(sheet, row.solve(problem).acts.slice(begun));
  await press(sheet, 'Check');
  await expect(said(sheet)).toHaveText('That is right.');
});

test('a piece of one’s own that has no short row is told so, and the row stays the workbook’s', async ({ page }) => {
  const sheet = await openExercise(page, 'widening', 'row-widening-back');
  const problem = await problemOn(sheet, 'row');
  await readWithOwn(page, { capacity: 16, width: 26, height: 32 });
  await sheet.scrollIntoViewIfNeeded();
  await expect(sheet.getByText('Your own piece does not suit this exercise.')).toBeVisible();
  expect(await problemOn(sheet, 'row')).toEqual(problem);
});

test.describe('with a finger, on a phone', () => {
  test.use({ hasTouch: true, viewport: { width: 360, height: 740 } });
  test('a row is tied by tapping, and nothing hangs over', async ({ page }) => {
    const sheet = await openExercise(page, 'closing', 'row-closing');
    const problem = await problemOn(sheet, 'row');
    for (const act of row.solve(problem).acts) await sheet.locator(`[data-act="${act}"]`).tap();
    await sheet.getByRole('button', { name: 'Check', exact: true }).tap();
    await expect(said(sheet)).toHaveText('That is right.');
    for (const button of await sheet.locator('.acts button').all())
      expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  });
});

test('axe finds nothing in a row that is tied and checked', async ({ page }) => {
  const sheet = await openExercise(page, 'closing', 'row-closing');
  await tie(sheet, slipped(await problemOn(sheet, 'row'), 'ordinary-knot-on-bundle').acts);
  await press(sheet, 'Check');
  await expect(sheet.locator('.slips')).toBeVisible();
  expect(await axeFinds(page, { within: '#row-closing' })).toEqual([]);
});
