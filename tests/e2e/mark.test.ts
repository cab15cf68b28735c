import { expect, type Locator, test } from '@playwright/test';
import { type Cell, exercises, followUp, type MarkProblem, missteps } from '../../src/solver/index.ts';
import { FOLLOW_UP, slipWords } from '../../src/words/slips/index.ts';
import { drawing, replay } from '../seed.ts';
import { exerciseSheet, expectQuestion, openExercise, press, problemOn, said } from './learner.ts';

const mark = exercises.mark;
const cellsOf = (problem: MarkProblem): readonly Cell[] => mark.solve(problem).cells;
const cell = (where: Locator, [row, column]: Cell): Locator =>
  where.getByRole('button', { name: new RegExp(`^row ${row}, column ${column}(, marked by mistake)?$`) });
const marked = (where: Locator): Locator => where.getByRole('button', { pressed: true });
const rowSays = (where: Locator, row: number): Locator =>
  where.getByRole('listitem').filter({ hasText: `Row ${row}:` });

/** A seed, from a drawn one on, whose question is one of these. */
function seedOf(target: MarkProblem['target'], wanted: (problem: MarkProblem) => boolean): number {
  const from = drawing()(1, 100_000);
  for (let seed = from; seed < from + 2000; seed += 1) {
    const problem = mark.make(seed, 'alone', { target });
    if (!('ok' in problem) && wanted(problem)) return seed;
  }
  throw new Error(`No question like that near seed ${from}; ${replay}`);
}

async function markAll(where: Locator, cells: readonly Cell[]): Promise<void> {
  for (const each of cells) await cell(where, each).click();
}

test.describe('with a mouse', () => {
  test('all corner cells of the opening, and no other, are right', async ({ page }) => {
    const sheet = await openExercise(page, 'shape', 'mark-corners');
    const problem = await problemOn(sheet, 'mark');
    await markAll(sheet, cellsOf(problem));
    await press(sheet, 'Check');
    await expect(said(sheet)).toHaveText('That is right.');
    await expect(sheet.getByRole('listitem').filter({ hasText: 'In this row' })).toHaveCount(0);
  });

  test('a cell that is marked twice is not marked', async ({ page }) => {
    const sheet = await openExercise(page, 'shape', 'mark-corners');
    await cell(sheet, [1, 2]).click();
    await expect(cell(sheet, [1, 2])).toHaveAttribute('aria-pressed', 'true');
    await cell(sheet, [1, 2]).click();
    await expect(marked(sheet)).toHaveCount(0);
    await press(sheet, 'Check');
    await expect(said(sheet)).toContainText('it is no try');
  });

  test('each row tells how many cells are missing, too many and right, and never which', async ({ page }) => {
    const sheet = await openExercise(page, 'widening', 'mark-opening', 5);
    const problem = await problemOn(sheet, 'mark', 5);
    const [first, ...others] = cellsOf(problem).filter(([row]) => row === problem.from);
    if (!first) throw new Error('This row has no corner cell.');
    const inner: Cell = [problem.from, Math.ceil(problem.width / 2)];
    await markAll(sheet, [first, inner]);
    await press(sheet, 'Check');
    const missing = others.length === 1 ? '1 cell is' : `${others.length} cells are`;
    await expect(rowSays(sheet, problem.from)).toHaveText(
      `Row ${problem.from}: In this row ${missing} still to be marked, and 1 cell should not be marked, and 1 cell is right.`,
    );
    await expect(cell(sheet, inner)).toHaveAccessibleName(`row ${inner[0]}, column ${inner[1]}, marked by mistake`);
    await expect(said(sheet)).toContainText(`Look at “Row ${problem.from}” first`);
  });

  test('corner cells of one side only are known as that', async ({ page }) => {
    const sheet = await openExercise(page, 'widening', 'mark-opening', 5);
    const problem = await problemOn(sheet, 'mark', 5);
    const answer = missteps['corner-cells-one-side'](problem) as ReturnType<typeof mark.solve>;
    await markAll(sheet, answer.cells);
    await press(sheet, 'Check');
    const words = slipWords(problem, 'corner-cells-one-side', answer);
    await expect(said(sheet)).toContainText(`${words?.did} ${words?.why} ${words?.next}`);
  });

  test('closing believed a row late is asked about once more, on a smaller piece', async ({ page }) => {
    const slip = 'closing-misplaced';
    const lateIn = (problem: MarkProblem): Cell =>
      (missteps[slip](problem) as ReturnType<typeof mark.solve>).cells[0] ?? [1, 1];
    const seed = seedOf('first-closing-row', (problem) => {
      const { explanations } = mark.check(problem, { cells: [lateIn(problem)] });
      return explanations.length === 1 && explanations[0]?.[0] === slip;
    });
    const sheet = await openExercise(page, 'closing', 'closing-mark', seed);
    const problem = await problemOn(sheet, 'mark', seed);
    const late = lateIn(problem);
    await cell(sheet, late).click();
    await press(sheet, 'Check');
    await expect(said(sheet), replay).toContainText(FOLLOW_UP.single);
    const asked = followUp('mark', problem, [slip]);
    if (!asked) throw new Error('The solver knows no case on which this slip shows.');
    const group = sheet.getByRole('group', { name: 'One more case tells which it was' });
    await expectQuestion(group, asked);
    await cell(group, lateIn(asked)).click();
    await press(group, 'Check this case');
    await expect(said(sheet)).toContainText(FOLLOW_UP.settled);
    await expect(said(sheet)).toContainText(`${slipWords(problem, slip, { cells: [late] })?.did}`);
  });

  test('any cell of the row in which closing begins marks it', async ({ page }) => {
    const sheet = await openExercise(page, 'closing', 'closing-mark');
    const problem = await problemOn(sheet, 'mark');
    const [last = [1, 1]] = cellsOf(problem).toReversed();
    await cell(sheet, last).click();
    await press(sheet, 'Check');
    await expect(said(sheet)).toHaveText('That is right.');
  });

  test('marks and what was said of them outlast a reload', async ({ page }) => {
    const sheet = await openExercise(page, 'firstRow', 'which-place');
    const problem = await problemOn(sheet, 'mark');
    const [knot = [1, 1]] = cellsOf(problem);
    await cell(sheet, knot).click();
    await press(sheet, 'Check');
    await expect(rowSays(sheet, knot[0])).toContainText('1 cell is still to be marked, and 1 cell is right');
    await page.reload();
    await exerciseSheet(page, 'which-place');
    const chart = sheet.getByRole('grid').first();
    await expect(marked(chart)).toHaveCount(1);
    await expect(cell(chart, knot)).toHaveAttribute('aria-pressed', 'true');
    await expect(rowSays(sheet, knot[0])).toContainText('1 cell is still to be marked, and 1 cell is right');
  });
});

test.describe('half-worked', () => {
  const given = (where: Locator): Locator => where.locator('[data-given]');

  test('the rows before the last are marked, hold their marks, and are no try by themselves', async ({ page }) => {
    const sheet = await openExercise(page, 'widening', 'opening-corners');
    const problem = await problemOn(sheet, 'mark');
    const standing = mark.fade(problem).given.cells ?? [];
    const left = cellsOf(problem).filter(([row, column]) => !standing.some(([r, c]) => r === row && c === column));
    await expect(given(sheet)).toHaveCount(standing.length);
    await expect(marked(sheet)).toHaveCount(standing.length);
    const [row, column] = standing[0] ?? [0, 0];
    const first = sheet.locator(`[data-cell="${row}-${column}"]`);
    await expect(first).toHaveAccessibleName(`row ${row}, column ${column}, marked already`);
    await expect(first).toHaveAttribute('aria-disabled', 'true');
    // A hand that presses it all the same takes nothing away.
    await first.click({ force: true });
    await expect(first).toHaveAttribute('aria-pressed', 'true');
    await press(sheet, 'Check');
    await expect(said(sheet)).toContainText('it is no try');
    await markAll(sheet, left);
    await press(sheet, 'Check');
    await expect(said(sheet)).toHaveText('That is right.');
    await page.reload();
    await exerciseSheet(page, 'opening-corners');
    await expect(marked(sheet)).toHaveCount(cellsOf(problem).length);
    await expect(said(sheet)).toHaveText('That is right.');
  });

  test('the side that was missed last is left open in the next one, in another lesson too', async ({ page }) => {
    const before = await openExercise(page, 'widening', 'mark-opening', 5);
    const asked = await problemOn(before, 'mark', 5);
    const [first] = cellsOf(asked);
    if (!first) throw new Error('This opening has no corner cell.');
    const ofSide = ([, column]: Cell): boolean => 2 * column <= asked.width + 1;
    await markAll(
      before,
      cellsOf(asked).filter((each) => each[0] !== first[0] || ofSide(each)),
    );
    await press(before, 'Check');
    await expect(said(before)).toContainText(`Look at “Row ${first[0]}” first`);

    const field = `row-${first[0]}-right` as const;
    for (const [lesson, id] of [
      ['widening', 'opening-corners'],
      ['outline', 'outline-cut-again'],
    ] as const) {
      const sheet = await openExercise(page, lesson, id);
      const problem = await problemOn(sheet, 'mark');
      const standing = mark.fade(problem, field).given.cells ?? [];
      const left = cellsOf(problem).filter(([row, column]) => !standing.some(([r, c]) => r === row && c === column));
      await expect(given(sheet)).toHaveCount(standing.length);
      expect(left.every(([row, column]) => row === left[0]?.[0] && 2 * column > problem.width + 1)).toBe(true);
      for (const [row, column] of left) await sheet.locator(`[data-cell="${row}-${column}"]`).click();
      await press(sheet, 'Check');
      await expect(said(sheet)).toHaveText('That is right.');
    }
  });
});

test.describe('by touch', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

  test('the cells are large enough for a finger, and a tap marks them', async ({ page }) => {
    const sheet = await openExercise(page, 'firstRow', 'which-place');
    const problem = await problemOn(sheet, 'mark');
    for (const each of cellsOf(problem)) {
      const box = await cell(sheet, each).boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
      await cell(sheet, each).tap();
    }
    await sheet.getByRole('button', { name: 'Check', exact: true }).tap();
    await expect(said(sheet)).toHaveText('That is right.');
  });
});

test.describe('with keys', () => {
  test('arrows go from cell to cell, the space bar marks, and the edge of the chart holds', async ({ page }) => {
    const sheet = await openExercise(page, 'firstRow', 'which-place');
    const problem = await problemOn(sheet, 'mark');
    const row = problem.from;
    const grid = sheet.getByRole('grid', { name: 'Chart to mark' });
    await grid.getByRole('button').first().focus();
    let at = 1;
    for (const [, column] of cellsOf(problem)) {
      for (; at < column; at += 1) await page.keyboard.press('ArrowRight');
      await expect(cell(grid, [row, column])).toBeFocused();
      await page.keyboard.press('Space');
      await expect(cell(grid, [row, column])).toHaveAttribute('aria-pressed', 'true');
    }
    for (; at <= problem.width; at += 1) await page.keyboard.press('ArrowRight');
    await expect(cell(grid, [row, problem.width])).toBeFocused();
    await page.keyboard.press('ArrowUp');
    await expect(cell(grid, [row, problem.width])).toBeFocused();
    await press(sheet, 'Check');
    await expect(said(sheet)).toHaveText('That is right.');
  });

  test('the chart is one stop of the Tab key, and keeps its place', async ({ page }) => {
    const sheet = await openExercise(page, 'shape', 'mark-corners');
    const grid = sheet.getByRole('grid', { name: 'Chart to mark' });
    await grid.getByRole('button').first().focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowRight');
    await expect(cell(grid, [2, 2])).toBeFocused();
    await page.keyboard.press('Tab');
    await expect(sheet.getByRole('button', { name: 'Check', exact: true })).toBeFocused();
    await page.keyboard.press('Shift+Tab');
    await expect(cell(grid, [2, 2])).toBeFocused();
  });
});
