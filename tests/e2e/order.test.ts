import { expect, type Locator, test } from '@playwright/test';
import { exercises, type OrderProblem } from '../../src/solver/index.ts';
import { hintWords } from '../../src/words/exercises/hint-words.ts';
import { orderVerdictWords } from '../../src/words/exercises/order-verdicts.ts';
import { questionWords } from '../../src/words/exercises/question.ts';
import { stepWords } from '../../src/words/exercises/step-words.ts';
import { slipWords } from '../../src/words/slips/index.ts';
import { axeFinds } from './axe.ts';
import { exerciseSheet, openExercise, press, problemOn, putInOrder, said } from './learner.ts';

const { order: kind } = exercises;

const standing = (sheet: Locator): Promise<(string | undefined)[]> =>
  sheet.locator('[data-step]').evaluateAll((items) => items.map((item) => (item as HTMLElement).dataset['step']));

const textOf = (problem: OrderProblem, step: string): string =>
  questionWords(problem).parts?.[(problem.steps as readonly string[]).indexOf(step)] ?? '';

test('the steps lie muddled at first, and in their order they are right', async ({ page }) => {
  const sheet = await openExercise(page, 'finishing', 'gathering-order', 2);
  const problem = await problemOn(sheet, 'order', 2);
  expect(await standing(sheet)).toEqual([...problem.steps]);
  await putInOrder(sheet, kind.solve(problem).order);
  await press(sheet, 'Check');
  await expect(said(sheet)).toContainText('That is right.');
});

test('steps that do not wait for each other are right either way round', async ({ page }) => {
  const sheet = await openExercise(page, 'finishing', 'gathering-order', 2);
  const problem = await problemOn(sheet, 'order', 2);
  const { order } = kind.solve(problem);
  const swapped = order.map((step) =>
    step === 'gather-left' ? 'gather-right' : step === 'gather-right' ? 'gather-left' : step,
  );
  expect(swapped).not.toEqual(order);
  await putInOrder(sheet, swapped);
  await press(sheet, 'Check');
  await expect(said(sheet)).toContainText('That is right.');
});

test('a step that stands too early says what it waits for, and the slip has a name', async ({ page }) => {
  for (const [lesson, id, slip] of [
    ['finishing', 'gathering-order', 'trimmed-too-early'],
    ['widening', 'let-out-order', 'turned-before-freeing'],
    ['widening', 'let-out-order', 'freed-knot-first'],
    ['closing', 'take-in-order', 'turned-before-taking-in'],
    ['firstRow', 'first-row-order', 'pinned-before-looping'],
  ] as const) {
    const sheet = await openExercise(page, lesson, id, 7);
    const problem = await problemOn(sheet, 'order', 7);
    const answer = kind.missteps[slip]?.(problem) ?? kind.solve(problem);
    await putInOrder(sheet, answer.order);
    await press(sheet, 'Check');
    const words = slipWords(problem, slip, answer);
    await expect(said(sheet), id).toContainText(`${words?.did} ${words?.why} ${words?.next}`);
    const judged = kind.judge(problem, answer);
    for (const step of answer.order) {
      const result = judged.fields[`step-${step}`];
      if (result)
        await expect(sheet.locator(`[data-step="${step}"] .entry-say`)).toHaveText(
          orderVerdictWords(problem, step, result),
        );
    }
  }
});

test('steps that nobody moved are no try', async ({ page }) => {
  const sheet = await openExercise(page, 'widening', 'let-out-order');
  await press(sheet, 'Check');
  await expect(said(sheet)).toHaveText('Move the steps first, then check. This is no try yet.');
});

test('in a half-worked order one step is loose, and goes in among those that stand', async ({ page }) => {
  const sheet = await openExercise(page, 'cutting', 'mounting-order');
  const problem = await problemOn(sheet, 'order');
  const { open } = kind.fade(problem);
  await expect(sheet.getByRole('button', { name: /^Later/ })).toHaveCount(open.length);
  const later = sheet.getByRole('button', { name: /^Later/ });
  for (let at = 1; at < problem.steps.length; at += 1) await later.click();
  await expect(later).toBeFocused();
  await press(sheet, 'Check');
  await expect(said(sheet)).toContainText('That is right.');
});

test('hints come one after the other, and the working gives each step with its reason', async ({ page }) => {
  const sheet = await openExercise(page, 'firstRow', 'first-row-order', 3);
  const problem = await problemOn(sheet, 'order', 3);
  const { look, do: act } = kind.hints(problem);
  for (let given = 1; given <= 2; given += 1) {
    await press(sheet, 'Hint');
    await expect(sheet.locator('.hint')).toHaveCount(given);
  }
  await expect(sheet.locator('.hint')).toHaveText([hintWords('order', look), hintWords('order', act)]);
  await press(sheet, 'Hint');
  await expect(sheet.locator('.worked')).toContainText('Here is one like it, worked with other figures.');
  await press(sheet, 'Show the working');
  await expect(sheet.locator('.worked').last().locator('li')).toHaveText(
    kind.solution(problem).map((step) => stepWords('order', step)),
  );
});

test('the order and what was said of it outlast a reload', async ({ page }) => {
  const sheet = await openExercise(page, 'closing', 'take-in-order');
  const problem = await problemOn(sheet, 'order');
  const { order } = kind.missteps['turned-before-taking-in']?.(problem) ?? kind.solve(problem);
  await putInOrder(sheet, order);
  await press(sheet, 'Check');
  await expect(sheet.locator('.slips')).toBeVisible();
  await page.reload();
  await exerciseSheet(page, 'take-in-order');
  await expect(sheet.locator('.slips')).toBeVisible();
  expect(await standing(sheet)).toEqual([...order]);
});

test('a step is dragged to its place with the pointer', async ({ page }) => {
  const sheet = await openExercise(page, 'widening', 'let-out-order', 4);
  const problem = await problemOn(sheet, 'order', 4);
  const [first = ''] = kind.solve(problem).order;
  const grip = sheet.locator(`[data-step="${first}"] .grip`);
  const last = problem.steps.at(-1) === first ? problem.steps[0] : problem.steps.at(-1);
  const target = sheet.locator(`[data-step="${last}"]`);
  const down =
    (problem.steps as readonly string[]).indexOf(first) < (problem.steps as readonly string[]).indexOf(last ?? '');
  await sheet.scrollIntoViewIfNeeded();
  const from = await grip.boundingBox();
  const to = await target.boundingBox();
  if (!from || !to) throw new Error('The steps are nowhere to be seen.');
  await page.mouse.move(from.x + 20, from.y + from.height / 2);
  await page.mouse.down();
  await page.mouse.move(from.x + 20, to.y + (down ? to.height * 0.9 : to.height * 0.1), { steps: 8 });
  await page.mouse.up();
  const now = await standing(sheet);
  expect(now.indexOf(first)).toBe(down ? now.length - 1 : 0);
  expect([...now].sort()).toEqual([...problem.steps].sort());
});

test('a step is moved with the arrow keys, keeps the focus, and says where it is', async ({ page }) => {
  const sheet = await openExercise(page, 'widening', 'let-out-order', 4);
  const problem = await problemOn(sheet, 'order', 4);
  const [step = 'free'] = problem.steps;
  const later = sheet.getByRole('button', { name: `Later: ${textOf(problem, step)}` });
  await later.focus();
  await page.keyboard.press('ArrowDown');
  await expect(later).toBeFocused();
  await expect(sheet.getByText(`Step 2 of ${problem.steps.length}: ${textOf(problem, step)}`)).toBeAttached();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  expect(await standing(sheet)).toEqual([...problem.steps]);
  await page.keyboard.press('Space');
  await expect(later).toBeFocused();
  expect((await standing(sheet)).indexOf(step)).toBe(1);
});

test.describe('by touch', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

  test('the buttons are large enough for a finger, and a tap moves a step', async ({ page }) => {
    const sheet = await openExercise(page, 'widening', 'let-out-order', 4);
    const problem = await problemOn(sheet, 'order', 4);
    const [step = 'free'] = problem.steps;
    const later = sheet.getByRole('button', { name: `Later: ${textOf(problem, step)}` });
    const box = await later.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
    await later.tap();
    expect((await standing(sheet)).indexOf(step)).toBe(1);
  });
});

test('axe finds nothing, before and after an order is checked', async ({ page }) => {
  const sheet = await openExercise(page, 'finishing', 'gathering-order', 2);
  const problem = await problemOn(sheet, 'order', 2);
  expect(await axeFinds(page, { within: '#gathering-order' })).toEqual([]);
  await putInOrder(sheet, kind.missteps['trimmed-too-early']?.(problem).order ?? []);
  await press(sheet, 'Check');
  await expect(sheet.locator('.slips')).toBeVisible();
  expect(await axeFinds(page, { within: '#gathering-order' })).toEqual([]);
});
