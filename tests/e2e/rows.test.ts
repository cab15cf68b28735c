import { expect, type Locator, test } from '@playwright/test';
import examples from '../../content/examples.json' with { type: 'json' };
import { type Plan, planPiece } from '../../src/solver/index.ts';
import { rowSummary, rowWords } from '../../src/words/row-words.ts';
import { openLesson, press, readWithOwn, tryIt } from './learner.ts';

function planOf({ width, height, capacity }: { width: number; height: number; capacity: number }): Plan {
  const plan = planPiece({ width, height, capacity });
  if (!plan.ok) throw new Error(`The solver can’t plan ${width} × ${height} on ${capacity}.`);
  return plan;
}

const lantern = planOf(examples.lantern);
const rowOf = (plan: Plan, row: number) => {
  const found = plan.rows[row - 1];
  if (!found) throw new Error(`This piece has no row ${row}.`);
  return found;
};

const seen = (walk: Locator, text: string): Locator => walk.getByText(text, { exact: true }).filter({ visible: true });

/** The walk stands at this row of this piece, with so many knots tied. */
async function expectAt(walk: Locator, plan: Plan, row: number, tied = rowOf(plan, row).knots): Promise<void> {
  const { knots } = rowOf(plan, row);
  await expect(seen(walk, rowSummary(rowOf(plan, row)))).toHaveCount(1);
  await expect(seen(walk, `Row ${row}, with ${tied} of ${knots} knots tied.`)).toHaveCount(1);
  await expect(walk.getByRole('slider', { name: 'Row', exact: true })).toHaveValue(String(row));
  await expect(walk.getByRole('slider', { name: 'Knots tied' })).toHaveValue(String(tied));
}

test('row by row the whole piece is walked, and each row is the solver’s', async ({ page }) => {
  await openLesson(page, 'shape');
  const walk = await tryIt(page, 'try-rows');
  await expect(walk.getByRole('button', { name: 'Row before' })).toBeDisabled();
  for (const { row } of lantern.rows) {
    await expectAt(walk, lantern, row);
    const lines = rowWords({ row: rowOf(lantern, row), before: lantern.rows[row - 2], fit: lantern.fit });
    await expect(walk.getByRole('listitem')).toHaveText(lines.map(({ text }) => text));
    if (row < lantern.rows.length) await press(walk, 'Next row');
  }
  await expect(walk.getByRole('button', { name: 'Next row' })).toBeDisabled();
  await press(walk, 'Row before');
  await expectAt(walk, lantern, lantern.rows.length - 1);
});

test('knot by knot a row is tied, and the next row begins with none', async ({ page }) => {
  await openLesson(page, 'shape');
  const walk = await tryIt(page, 'try-rows');
  await press(walk, 'Next knot');
  for (let tied = 0; tied < rowOf(lantern, 2).knots; tied += 1) {
    await expectAt(walk, lantern, 2, tied);
    await press(walk, 'Next knot');
  }
  await expectAt(walk, lantern, 2);
  await press(walk, 'Knot back');
  await expectAt(walk, lantern, 2, rowOf(lantern, 2).knots - 1);
});

test('back over the beginning of a row lies the whole row before it', async ({ page }) => {
  await openLesson(page, 'shape');
  const walk = await tryIt(page, 'try-rows');
  await press(walk, 'Next knot');
  await expectAt(walk, lantern, 2, 0);
  await press(walk, 'Knot back');
  await expectAt(walk, lantern, 1);
});

test('the sliders go by keys: to the first, the last and the row beside', async ({ page }) => {
  await openLesson(page, 'widening');
  const walk = await tryIt(page, 'try-opening');
  const rows = walk.getByRole('slider', { name: 'Row', exact: true });
  const knots = walk.getByRole('slider', { name: 'Knots tied' });
  await rows.press('End');
  await expectAt(walk, lantern, lantern.rows.length);
  await rows.press('Home');
  await expectAt(walk, lantern, 1);
  await rows.press('ArrowRight');
  await expectAt(walk, lantern, 2);
  await knots.press('Home');
  await expectAt(walk, lantern, 2, 0);
  await knots.press('ArrowRight');
  await expectAt(walk, lantern, 2, 1);
  await expect(knots).toBeFocused();
});

test('the lesson on closing begins its walk where closing begins', async ({ page }) => {
  await openLesson(page, 'closing');
  const walk = await tryIt(page, 'try-closing');
  await expectAt(walk, lantern, lantern.outline.firstClosingRow ?? 0);
});

test('the drawing says in words which knots are tied and which are still to come', async ({ page }) => {
  await openLesson(page, 'shape');
  const walk = await tryIt(page, 'try-rows');
  await walk.getByRole('slider', { name: 'Knots tied' }).press('Home');
  await expectAt(walk, lantern, 1, 0);
  await seen(walk, 'In words').click();
  const words = walk.locator('figcaption details p').filter({ visible: true });
  await expect(words).toContainText('No knot of it is tied yet.');
  await expect(words).toContainText(`round the bundle of ${rowOf(lantern, 1).leftBundle} strings`);
  await walk.getByRole('slider', { name: 'Knots tied' }).press('ArrowRight');
  await expect(words).toHaveCount(1);
  await expect(words).not.toContainText('No knot of it is tied yet.');
});

test('what was opened under the first drawing stays open when somebody begins to walk', async ({ page }) => {
  await openLesson(page, 'shape');
  const walk = await tryIt(page, 'try-rows');
  await seen(walk, 'In words').click();
  await press(walk, 'Next row');
  await expectAt(walk, lantern, 2);
  const words = walk.locator('figcaption details p').filter({ visible: true });
  await expect(words).toHaveCount(1);
  await expect(words).toContainText('2');
});

test('with a learner’s own figures their own piece is walked', async ({ page }) => {
  const own = { capacity: 10, width: 17, height: 15 };
  await openLesson(page, 'shape');
  await readWithOwn(page, own);
  const walk = await tryIt(page, 'try-rows');
  const plan = planOf(own);
  await expectAt(walk, plan, 1);
  await walk.getByRole('slider', { name: 'Row', exact: true }).press('End');
  await expectAt(walk, plan, 15);
});

test('one button pressed over and over keeps the focus, at the last row too', async ({ page }) => {
  await openLesson(page, 'shape');
  const walk = await tryIt(page, 'try-rows');
  await walk.getByRole('slider', { name: 'Row', exact: true }).press('End');
  await press(walk, 'Row before');
  const next = walk.getByRole('button', { name: 'Next row' });
  await next.focus();
  await next.press('Enter');
  await expectAt(walk, lantern, lantern.rows.length);
  await expect(next).toBeFocused();
});
