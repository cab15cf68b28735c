import { expect, type Locator, test } from '@playwright/test';
import { cellsByEar, faultByEar, rowByEar } from '../words/ear.ts';
import { openExercise, press, said } from './learner.ts';

/** What somebody hears of the question, without the drawing. */
const questionOf = async (sheet: Locator): Promise<string> =>
  (await sheet.locator('form .question').textContent()) ?? '';
const names = (controls: Locator): Promise<string[]> =>
  controls.evaluateAll((all) => all.map((one) => one.getAttribute('aria-label') ?? one.textContent?.trim() ?? ''));

for (const [lesson, id] of [
  ['reading', 'chart-mixed-colour'],
  ['outline', 'outline-mixed-cut'],
  ['shape', 'mark-corners'],
] as const)
  test(`who only hears the names of the cells marks the right ones of ${id}`, async ({ page }) => {
    const sheet = await openExercise(page, lesson, id);
    const grid = sheet.getByRole('grid');
    const wanted = cellsByEar(await questionOf(sheet), await names(grid.getByRole('button')));
    expect(wanted.length).toBeGreaterThan(0);
    for (const name of wanted) await grid.getByRole('button', { name, exact: true }).click();
    await press(sheet, 'Check');
    await expect(said(sheet)).toHaveText('That is right.');
  });

test('who only hears how a row lies can tie it', async ({ page }) => {
  const sheet = await openExercise(page, 'closing', 'row-closing');
  for (const act of rowByEar(await questionOf(sheet)))
    await sheet
      .getByRole('group', { name: 'What you do next' })
      .getByRole('button', { name: new RegExp(`^${act}$`, 'i') })
      .click();
  await press(sheet, 'Check');
  await expect(said(sheet)).toHaveText('That is right.');
});

test('who only hears what stands in a tied row finds its fault', async ({ page }) => {
  const sheet = await openExercise(page, 'firstRow', 'row-first-spot');
  const places = sheet.getByRole('group', { name: 'Where is it?' }).getByRole('radio');
  const labels = await places.evaluateAll((all) =>
    all.map((one) => (one as HTMLInputElement).labels?.[0]?.textContent ?? ''),
  );
  const found = faultByEar(await questionOf(sheet), labels);
  await expect(sheet.getByRole('img')).toHaveAccessibleName(new RegExp(found?.place ?? 'nothing'));
  await sheet.getByRole('radio', { name: found?.place ?? '', exact: true }).check();
  await sheet
    .getByRole('group', { name: 'What is it?' })
    .getByRole('radio', { name: found?.fault ?? '' })
    .check();
  await press(sheet, 'Check');
  await expect(said(sheet)).toHaveText('That is right.');
});
