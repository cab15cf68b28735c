import { expect, test } from '@playwright/test';
import { exercises } from '../../src/solver/index.ts';
import { exerciseSheet, openLesson, press, problemOn, said, tryIt } from './learner.ts';

test('a bar of 39 mm and a cord of 1.2 mm take 14 columns at the least; a bar of 24 mm takes 8, and the plan is no longer safe', async ({
  page,
}) => {
  await openLesson(page, 'measuring');
  const ring = await tryIt(page, 'try-measuring');
  await expect(ring.getByText('at the least: 14', { exact: true }).filter({ visible: true })).toHaveCount(1);
  await ring.getByLabel('The bar is wide').fill('24');
  await expect(ring.getByText('at the least: 8', { exact: true }).filter({ visible: true })).toHaveCount(1);
  await ring.locator('summary', { hasText: 'In words' }).filter({ visible: true }).click();
  await expect(ring.getByRole('paragraph').filter({ hasText: 'so a trial row has to decide' })).toBeVisible();
  // Firm cord makes wider columns.
  await ring.getByText('firm cord').click();
  await expect(ring.getByText('at the least: 6', { exact: true }).filter({ visible: true })).toHaveCount(1);
});

test('a bar that is no length is told beside its field, and the drawing waits', async ({ page }) => {
  await openLesson(page, 'measuring');
  const ring = await tryIt(page, 'try-measuring');
  await ring.getByLabel('The bar is wide').fill('wide');
  await expect(ring.getByLabel('The bar is wide')).toHaveAttribute('aria-invalid', 'true');
});

test('the heron loses 10 cells as it stands, and none with one plain row above and three below', async ({ page }) => {
  await openLesson(page, 'outline');
  const heron = await tryIt(page, 'try-placing');
  const lost = (text: string) => heron.getByText(text).filter({ visible: true });
  await expect(lost('10 cells of the picture are lost.')).toHaveCount(1);
  await heron.getByLabel('Plain rows above').fill('1');
  await expect(lost('10 cells of the picture are lost.')).toHaveCount(0);
  await heron.getByLabel('Plain rows below').fill('3');
  await expect(lost('Nothing of the picture is lost.')).toHaveCount(1);
  await expect(lost('44 rows high')).toHaveCount(1);
});

test('the cells of a colour are marked on a chart whose cells say their colours', async ({ page }) => {
  await openLesson(page, 'reading');
  const sheet = await exerciseSheet(page, 'chart-mixed-colour');
  const problem = await problemOn(sheet, 'mark');
  const { picture, colour = 0 } = problem;
  const name = picture?.palette[colour]?.name ?? '';
  const { cells } = exercises.mark.solve(problem);
  for (const [row, column] of cells)
    await sheet.getByRole('button', { name: `row ${row}, column ${column}, ${name}`, exact: true }).click();
  await press(sheet, 'Check');
  await expect(said(sheet)).toContainText('That is right.');
});

test('a row begun at the other edge is told as that', async ({ page }) => {
  await openLesson(page, 'reading');
  const sheet = await exerciseSheet(page, 'chart-first-knot');
  const problem = await problemOn(sheet, 'mark');
  const [[row, column] = [1, 1]] = exercises.mark.missteps['begun-at-wrong-side']?.(problem).cells ?? [];
  await sheet.getByRole('button', { name: `row ${row}, column ${column}`, exact: true }).click();
  await press(sheet, 'Check');
  await expect(sheet.getByText('at the other edge')).toBeVisible();
});
