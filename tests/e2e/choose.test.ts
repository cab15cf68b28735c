import { expect, test } from '@playwright/test';
import { exercises } from '../../src/solver/index.ts';
import { choiceWords } from '../../src/words/exercises/choose.ts';
import { hintWords } from '../../src/words/exercises/hint-words.ts';
import { stepWords } from '../../src/words/exercises/step-words.ts';
import { slipWords } from '../../src/words/slips/index.ts';
import { axeFinds } from './axe.ts';
import { choose, exerciseSheet, expectQuestion, openExercise, press, problemOn, readWithOwn, said } from './learner.ts';

const { choose: kind } = exercises;

test('the right choice is called right, and the choices stand in the order of the seed', async ({ page }) => {
  const orders = new Set<string>();
  for (const seed of [1, 2, 3, 4]) {
    const sheet = await openExercise(page, 'sum', 'odd-half', seed);
    const problem = await problemOn(sheet, 'choose', seed);
    orders.add(problem.choices.join());
    const { values } = kind.solution(problem)[0] ?? { values: {} };
    await expect(sheet.locator('.choices label')).toHaveText(
      problem.choices.map((choice) => choiceWords(problem.ask, choice, values)),
    );
    await choose(sheet, problem, kind.solve(problem).choice);
    await press(sheet, 'Check');
    await expect(said(sheet)).toHaveText('That is right.');
  }
  expect(orders.size).toBeGreaterThan(1);
});

test('each choice that is not right is answered in words of its own, with these figures', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'odd-half', 5);
  const problem = await problemOn(sheet, 'choose', 5);
  const right = kind.solve(problem).choice;
  const told = new Set<string>();
  for (const choice of problem.choices.filter((one) => one !== right)) {
    await choose(sheet, problem, choice);
    await press(sheet, 'Check');
    const [slip] = kind.check(problem, { choice }).missteps;
    const words = slip && slipWords(problem, slip, { choice });
    if (!words) throw new Error(`Nothing is said of ${choice}.`);
    await expect(said(sheet)).toContainText(`${words.did} ${words.why} ${words.next}`);
    told.add(words.did);
  }
  expect(told.size).toBe(problem.choices.length - 1);
  await expect(sheet.getByRole('group', { name: 'One more case tells which it was' })).toHaveCount(0);
});

test('nothing chosen is no try', async ({ page }) => {
  const sheet = await openExercise(page, 'finishing', 'when-to-trim');
  await press(sheet, 'Check');
  await expect(said(sheet)).toHaveText('Choose one first, then check. This is no try yet.');
});

test('hints come one after the other, and the working says what to choose', async ({ page }) => {
  const sheet = await openExercise(page, 'widening', 'what-comes-first', 8);
  const problem = await problemOn(sheet, 'choose', 8);
  const { look, do: act } = kind.hints(problem);
  await press(sheet, 'Hint');
  await expect(sheet.locator('.hint')).toHaveText([hintWords('choose', look)]);
  await press(sheet, 'Hint');
  await expect(sheet.locator('.hint')).toHaveText([hintWords('choose', look), hintWords('choose', act)]);
  await press(sheet, 'Hint');
  await expect(sheet.locator('.worked')).toContainText('Here is one like it, worked with other figures.');
  await press(sheet, 'Show the working');
  const steps = kind.solution(problem).map((step) => stepWords('choose', step));
  await expect(sheet.locator('.worked').last().locator('li')).toHaveText(steps);
});

test('what was chosen and what was said of it outlast a reload', async ({ page }) => {
  const sheet = await openExercise(page, 'firstRow', 'edge-knot');
  const problem = await problemOn(sheet, 'choose');
  const { choice: right } = kind.solve(problem);
  const choice = problem.choices.find((one) => one !== right) ?? right;
  await choose(sheet, problem, choice);
  await press(sheet, 'Check');
  await expect(said(sheet)).toContainText('Another choice fits.');
  await page.reload();
  await exerciseSheet(page, 'edge-knot');
  await expect(sheet.getByRole('radio').nth(problem.choices.indexOf(choice))).toBeChecked();
  await expect(said(sheet)).toContainText('Another choice fits.');
  await expect(sheet.locator('.slips')).toBeVisible();
});

test('read with one’s own figures the choices are of one’s own piece', async ({ page }) => {
  const sheet = await openExercise(page, 'cutting', 'fold-or-string');
  await readWithOwn(page, { capacity: 16, width: 24, height: 24 });
  await exerciseSheet(page, 'fold-or-string');
  await expect(sheet.locator('form .question')).toContainText('Each side bundle holds 4 strings.');
  await expect(sheet.locator('.choices')).toContainText('2 pieces, each as long as two ends');
});

test('another like it has other figures and is chosen anew', async ({ page }) => {
  const sheet = await openExercise(page, 'closing', 'closing-first-move', 3);
  const problem = await problemOn(sheet, 'choose', 3);
  await choose(sheet, problem, problem.choices[0] ?? '');
  await press(sheet, 'Another like it');
  const next = await (async () => {
    const made = kind.make('4', 'mixed', { ask: 'first-move', part: 'closing' });
    if ('ok' in made) throw new Error('seed 4 makes no such question');
    return made;
  })();
  await expectQuestion(sheet.locator('form'), next);
  await expect(sheet.getByRole('radio', { checked: true })).toHaveCount(0);
});

test('a choice is one group of radio buttons: arrows go round, Enter checks', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'odd-half', 6);
  const problem = await problemOn(sheet, 'choose', 6);
  await expect(sheet.getByRole('group', { name: 'Your choice' }).getByRole('radio')).toHaveCount(
    problem.choices.length,
  );
  await sheet.getByRole('radio').first().focus();
  await page.keyboard.press('Space');
  const to = problem.choices.indexOf(kind.solve(problem).choice);
  for (let at = 0; at < to; at += 1) await page.keyboard.press('ArrowDown');
  await expect(sheet.getByRole('radio').nth(to)).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(said(sheet)).toHaveText('That is right.');
  await page.keyboard.press('Tab');
  await expect(sheet.getByRole('button', { name: 'Check', exact: true })).toBeFocused();
});

test.describe('by touch', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

  test('the whole line of a choice is large enough for a finger', async ({ page }) => {
    const sheet = await openExercise(page, 'shape', 'bundle-counts');
    const problem = await problemOn(sheet, 'choose');
    const line = sheet.locator('.choices label').nth(problem.choices.indexOf(kind.solve(problem).choice));
    expect((await line.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    await line.tap();
    await sheet.getByRole('button', { name: 'Check', exact: true }).tap();
    await expect(said(sheet)).toHaveText('That is right.');
  });
});

test('axe finds nothing, before and after a choice is checked', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'odd-half', 5);
  const problem = await problemOn(sheet, 'choose', 5);
  const { choice: right } = kind.solve(problem);
  for (const choice of [null, right, problem.choices.find((one) => one !== right) ?? right]) {
    if (choice !== null) {
      await choose(sheet, problem, choice);
      await press(sheet, 'Check');
      await expect(said(sheet)).not.toBeEmpty();
    }
    expect(await axeFinds(page, { within: '#odd-half' })).toEqual([]);
  }
});
