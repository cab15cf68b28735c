import { expect, type Locator, test } from '@playwright/test';
import { placesOf } from '../../src/solver/exercises/spot/places.ts';
import { exercises, SPOT_FAULTS, type SpotFault, type SpotPlace, type SpotProblem } from '../../src/solver/index.ts';
import { placeWords } from '../../src/words/exercises/spot-sheet.ts';
import { axeFinds } from './axe.ts';
import { openExercise, press, problemOn, readWithOwn, said, seesKnots } from './learner.ts';

const { spot } = exercises;

const place = (sheet: Locator): Locator => sheet.getByRole('group', { name: 'Where is it?' });
const fault = (sheet: Locator): Locator => sheet.getByRole('group', { name: 'What is it?' });
const pick = async (sheet: Locator, where: SpotPlace, what: SpotFault): Promise<void> => {
  await place(sheet).locator(`input[value="${where}"]`).check();
  await fault(sheet).locator(`input[value="${what}"]`).check();
};
const others = (problem: SpotProblem) => {
  const right = spot.solve(problem);
  const where = placesOf(problem).find((each) => each !== right.place);
  const what = SPOT_FAULTS[problem.in].find((each) => each !== right.fault);
  if (!where || !what) throw new Error('There is nothing else to pick.');
  return { where, what };
};

for (const [lesson, id] of [
  ['sum', 'sum-spot'],
  ['firstRow', 'row-first-spot'],
  ['widening', 'widening-spot'],
] as const)
  test(`${id}: place and name together are right, and each alone is not`, async ({ page }) => {
    const sheet = await openExercise(page, lesson, id);
    const problem = await problemOn(sheet, 'spot');
    const right = spot.solve(problem);
    const { where, what } = others(problem);
    await pick(sheet, where, what);
    await press(sheet, 'Check');
    await expect(place(sheet)).toHaveAccessibleDescription('This is as it should be. Look further.');
    await expect(said(sheet)).toContainText('What you picked is as it should be.');
    await expect(said(sheet)).toContainText('The name does not fit.');
    await pick(sheet, right.place, what);
    await press(sheet, 'Check');
    await expect(place(sheet)).toHaveAccessibleDescription('This is right.');
    await expect(fault(sheet)).toHaveAccessibleDescription('This is not what happened there.');
    await pick(sheet, right.place, right.fault);
    await press(sheet, 'Check');
    await expect(said(sheet)).toHaveText('That is right.');
  });

test('the place can be checked before the fault has a name', async ({ page }) => {
  const sheet = await openExercise(page, 'widening', 'widening-spot');
  const right = spot.solve(await problemOn(sheet, 'spot'));
  await place(sheet).locator(`input[value="${right.place}"]`).check();
  await press(sheet, 'Check');
  await expect(said(sheet)).toContainText('is still empty');
  await press(sheet, 'Check the place');
  await expect(place(sheet)).toHaveAccessibleDescription('This is right.');
});

test('a place is picked in the drawing as well', async ({ page }) => {
  const sheet = await openExercise(page, 'firstRow', 'row-first-spot');
  await problemOn(sheet, 'spot');
  await sheet.locator('.f-pick.f-between-2').click();
  await expect(place(sheet).locator('input[value="between-2"]')).toBeChecked();
  await expect(sheet.locator('.f-picked')).toHaveCount(1);
});

test('who only hears the sheet has every place of the drawing in words', async ({ page }) => {
  const sheet = await openExercise(page, 'firstRow', 'row-first-spot');
  const problem = await problemOn(sheet, 'spot');
  const told = placesOf(problem).map((each) => placeWords(problem, each));
  await expect(sheet.getByRole('img')).toHaveAccessibleName(new RegExp(`${told.join(' ').replaceAll('.', '\\.')}$`));
  await expect(place(sheet).getByRole('radio')).toHaveCount(told.length);
  for (const words of told) await expect(place(sheet).getByRole('radio', { name: words })).toHaveCount(1);
});

test('every knot of the drawing is one that the page holds, and is seen', async ({ page }) => {
  for (const [lesson, id] of [
    ['firstRow', 'row-first-spot'],
    ['closing', 'closing-spot'],
  ] as const) {
    const sheet = await openExercise(page, lesson, id);
    const problem = await problemOn(sheet, 'spot');
    const places = placesOf(problem).filter((each) => each !== 'lead').length;
    await seesKnots(sheet.getByRole('img'), places);
    await press(sheet, 'Another like it');
    await problemOn(sheet, 'spot', 1);
    await seesKnots(sheet.getByRole('img'), 3);
  }
});

test('picks are kept, and another sheet is drawn anew', async ({ page }) => {
  const sheet = await openExercise(page, 'closing', 'closing-spot');
  const problem = await problemOn(sheet, 'spot');
  const { where, what } = others(problem);
  await pick(sheet, where, what);
  await page.reload();
  await sheet.scrollIntoViewIfNeeded();
  await expect(place(sheet).locator(`input[value="${where}"]`)).toBeChecked();
  await expect(fault(sheet).locator(`input[value="${what}"]`)).toBeChecked();
  const before = await sheet.getByRole('img').innerHTML();
  await press(sheet, 'Another like it');
  const next = await problemOn(sheet, 'spot', 1);
  await expect.poll(() => sheet.getByRole('img').innerHTML()).not.toBe(before);
  const told = placesOf(next).map((each) => placeWords(next, each));
  await expect(sheet.getByRole('img')).toHaveAccessibleName(new RegExp(`${told.join(' ').replaceAll('.', '\\.')}$`));
});

test('hints come in three steps, then the working down to the fault', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'sum-spot');
  for (let given = 1; given <= 2; given += 1) {
    await press(sheet, 'Hint');
    await expect(sheet.locator('.hint')).toHaveCount(given);
  }
  await press(sheet, 'Hint');
  await expect(said(sheet)).toContainText('Here is one like it, worked with other figures.');
  await press(sheet, 'Show the working');
  await expect(said(sheet)).toContainText('The working, with these figures:');
});

test('a plan with a fault can be of one’s own piece', async ({ page }) => {
  const sheet = await openExercise(page, 'widening', 'widening-spot');
  await readWithOwn(page, { capacity: 16, width: 26, height: 32 });
  await sheet.scrollIntoViewIfNeeded();
  await expect(sheet.getByText('The chart is 26 columns wide and 32 rows high.')).toBeVisible();
  await expect(place(sheet).getByRole('radio')).toHaveCount(5);
});

test.describe('with a finger, on a phone', () => {
  test.use({ hasTouch: true, viewport: { width: 360, height: 740 } });
  test('a fault is found by tapping, and nothing hangs over', async ({ page }) => {
    const sheet = await openExercise(page, 'firstRow', 'row-first-spot');
    const right = spot.solve(await problemOn(sheet, 'spot'));
    await place(sheet)
      .locator('label', { has: page.locator(`input[value="${right.place}"]`) })
      .tap();
    await fault(sheet)
      .locator('label', { has: page.locator(`input[value="${right.fault}"]`) })
      .tap();
    await sheet.getByRole('button', { name: 'Check', exact: true }).tap();
    await expect(said(sheet)).toHaveText('That is right.');
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  });
});

test('axe finds nothing in a sheet that is picked and checked', async ({ page }) => {
  const sheet = await openExercise(page, 'firstRow', 'row-first-spot');
  const { where, what } = others(await problemOn(sheet, 'spot'));
  await pick(sheet, where, what);
  await press(sheet, 'Check');
  await expect(sheet.locator('.slips')).toBeVisible();
  expect(await axeFinds(page, { within: '#row-first-spot' })).toEqual([]);
});
