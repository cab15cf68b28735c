import { expect, type Locator, type Page, test } from '@playwright/test';
import { ROW_ACTS } from '../../src/solver/exercises/row/problem.ts';
import { placesOf } from '../../src/solver/exercises/spot/places.ts';
import { exercises, type KindName, SPOT_FAULTS } from '../../src/solver/index.ts';
import { awake, figureField, openLesson, press, problemOn, said } from './learner.ts';

/** Where the focus is, and what is wrong with how it shows; empty where a person can see it. */
async function focusFaults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const at = document.activeElement;
    if (!(at instanceof HTMLElement) || at === document.body) return ['nothing has the focus'];
    const name = (at.getAttribute('aria-label') ?? at.textContent ?? '').trim().slice(0, 40) || at.id || at.tagName;
    const faults: string[] = [];
    const { outlineStyle, outlineWidth } = getComputedStyle(at);
    if (outlineStyle === 'none' || Number.parseFloat(outlineWidth) < 2) faults.push(`${name}: no outline of 2 pixels`);
    const { top, bottom, left, right, height } = at.getBoundingClientRect();
    if (height <= innerHeight && (top < 0 || bottom > innerHeight || left < 0 || right > innerWidth))
      faults.push(`${name}: outside the window`);
    const over = document.elementFromPoint(
      (left + right) / 2,
      Math.max(0, Math.min(innerHeight - 1, (top + bottom) / 2)),
    );
    if (over && !at.contains(over) && !over.contains(at) && !over.closest('label')?.contains(at))
      faults.push(`${name}: something lies over it`);
    // Further on in the page than the stop before, or the Tab key would lead in circles.
    const before = (window as { stopBefore?: Element }).stopBefore;
    if (
      before?.isConnected &&
      !(before.compareDocumentPosition(at) & Node.DOCUMENT_POSITION_FOLLOWING) &&
      before !== at
    )
      faults.push(`${name}: comes before the last stop`);
    Object.assign(window, { stopBefore: at });
    return faults;
  });
}

/** Goes on with the Tab key alone until the focus is there; at every stop on the way it can be seen. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  await page.evaluate(() => Object.assign(window, { stopBefore: document.activeElement }));
  for (let stops = 0; stops < 60; stops += 1) {
    await page.keyboard.press('Tab');
    expect(await focusFaults(page)).toEqual([]);
    if (await target.evaluate((element) => element === document.activeElement)) return;
  }
  throw new Error('Sixty presses of the Tab key did not lead there.');
}

/** Where the Tab key has led: the exercise, and what kind of thing has the focus. */
const stop = (page: Page) =>
  page.evaluate(() => {
    const at = document.activeElement;
    const sheet = at?.closest<HTMLElement>('.exercise');
    return {
      exercise: sheet?.id ?? null,
      kind: (sheet?.dataset['kind'] ?? null) as KindName | null,
      type: at instanceof HTMLInputElement ? at.type : (at?.localName ?? ''),
      onward: at instanceof HTMLAnchorElement && at.rel === 'next',
    };
  });

/** Marks cells from the first one of the chart on: arrows go, the space bar marks. */
async function markByKeys(page: Page, sheet: Locator): Promise<void> {
  let [row, column] = [0, 1];
  for (const [wantedRow, wantedColumn] of exercises.mark.solve(await problemOn(sheet, 'mark')).cells) {
    if (row === 0)
      row = Number(/row (\d+)/.exec((await sheet.locator(':focus').getAttribute('aria-label')) ?? '')?.[1]);
    for (; row < wantedRow; row += 1) await page.keyboard.press('ArrowDown');
    for (; column < wantedColumn; column += 1) await page.keyboard.press('ArrowRight');
    for (; column > wantedColumn; column -= 1) await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('Space');
  }
  await page.keyboard.press('Tab');
  await expect(sheet.getByRole('button', { name: 'Check', exact: true })).toBeFocused();
  await page.keyboard.press('Space');
}

/** Types the right figure and checks it with Enter; the focus stays in its field. */
async function figureByKeys(page: Page, sheet: Locator): Promise<void> {
  const field = sheet.getByRole('textbox');
  await expect(field).toBeFocused();
  await page.keyboard.type(String(exercises.number.solve(await problemOn(sheet, 'number')).figure));
  await page.keyboard.press('Enter');
  await expect(field).toHaveAccessibleDescription('This is right.');
  await expect(field).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
}

/** Fills in a whole sum, going from figure to figure with the Tab key; even or odd is chosen with the space bar or an arrow. */
async function sumByKeys(page: Page, sheet: Locator): Promise<void> {
  const problem = await problemOn(sheet, 'sum');
  const answer = exercises.sum.solve(problem);
  for (const field of problem.fields) {
    if (field === 'parity') {
      await page.keyboard.press('Space');
      if (answer.parity === 'odd') await page.keyboard.press('ArrowRight');
    } else await page.keyboard.type(String(answer[field]));
    await page.keyboard.press('Tab');
  }
  await expect(sheet.getByRole('button', { name: 'Check', exact: true })).toBeFocused();
  await page.keyboard.press('Enter');
}

/** Tabs on within the sheet until its check has the focus, and presses it. */
async function checkByKeys(page: Page, sheet: Locator): Promise<void> {
  const check = sheet.getByRole('button', { name: 'Check', exact: true });
  for (let stops = 0; stops < 12; stops += 1) {
    if (await check.evaluate((element) => element === document.activeElement)) break;
    await page.keyboard.press('Tab');
    expect(await focusFaults(page)).toEqual([]);
  }
  await expect(check).toBeFocused();
  await page.keyboard.press('Enter');
}

/** Ties a row with the figures that stand on its buttons. */
async function rowByKeys(page: Page, sheet: Locator): Promise<void> {
  for (const act of exercises.row.solve(await problemOn(sheet, 'row')).acts)
    await page.keyboard.press(String(ROW_ACTS.indexOf(act) + 1));
  await checkByKeys(page, sheet);
}

/** Picks a place and a name with the space bar and arrows. */
async function spotByKeys(page: Page, sheet: Locator): Promise<void> {
  const problem = await problemOn(sheet, 'spot');
  const { place, fault } = exercises.spot.solve(problem);
  await page.keyboard.press('Space');
  for (let down = placesOf(problem).indexOf(place); down > 0; down -= 1) await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  for (let down = SPOT_FAULTS[problem.in].indexOf(fault); down > 0; down -= 1) await page.keyboard.press('ArrowDown');
  await checkByKeys(page, sheet);
}

/** Takes the right choice with the space bar and arrows, and checks it with Enter. */
async function chooseByKeys(page: Page, sheet: Locator): Promise<void> {
  const problem = await problemOn(sheet, 'choose');
  const { choice } = exercises.choose.solve(problem);
  await expect(sheet.getByRole('radio').first()).toBeFocused();
  await page.keyboard.press('Space');
  for (let at = 0; at < problem.choices.indexOf(choice); at += 1) await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
}

/** Moves each step to its place with the up arrow, going to it with the Tab key. */
async function orderByKeys(page: Page, sheet: Locator): Promise<void> {
  const { order } = exercises.order.solve(await problemOn(sheet, 'order'));
  for (const step of order) {
    const item = sheet.locator(`[data-step="${step}"]`);
    const isReached = async () => (await item.locator(':focus').count()) === 1;
    const isBehind = () =>
      item.evaluate(
        (one) => ((document.activeElement?.compareDocumentPosition(one) ?? 0) & Node.DOCUMENT_POSITION_PRECEDING) !== 0,
      );
    while (!(await isReached())) await page.keyboard.press((await isBehind()) ? 'Shift+Tab' : 'Tab');
    const place = () => item.evaluate((one) => [...(one.parentElement?.children ?? [])].indexOf(one));
    for (let at = await place(); at > order.indexOf(step); at -= 1) await page.keyboard.press('ArrowUp');
  }
  const check = sheet.getByRole('button', { name: 'Check', exact: true });
  await tabTo(page, check);
  await page.keyboard.press('Enter');
}

/** Writes a sentence, compares it, and ticks every point with the space bar. */
async function sayByKeys(page: Page, sheet: Locator): Promise<void> {
  await expect(sheet.getByRole('textbox')).toBeFocused();
  await page.keyboard.type('Each side needs one.');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(sheet.getByRole('checkbox').first()).toBeVisible();
  for (let point = 0; point < (await sheet.getByRole('checkbox').count()); point += 1) {
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
  }
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
}

const byKeys: { readonly [K in KindName]: (page: Page, sheet: Locator) => Promise<void> } = {
  mark: markByKeys,
  number: figureByKeys,
  sum: sumByKeys,
  row: rowByKeys,
  spot: spotByKeys,
  order: orderByKeys,
  choose: chooseByKeys,
  say: sayByKeys,
};

test('a lesson is worked from its first link to the next lesson with the keyboard alone', async ({ page }) => {
  test.setTimeout(60_000);
  await openLesson(page, 'firstRow');
  const asked = await page.getByRole('heading', { name: 'Exercise' }).count();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the page' })).toBeFocused();
  await page.keyboard.press('Enter');
  const done = new Set<string>();
  for (let stops = 0; stops < 150; stops += 1) {
    await page.keyboard.press('Tab');
    expect(await focusFaults(page)).toEqual([]);
    const { exercise, kind, type, onward } = await stop(page);
    if (onward) break;
    if (type === 'checkbox') {
      await page.keyboard.press('Space');
      await expect(page.locator(':focus')).toBeChecked();
    } else if (type === 'range') {
      const before = await page.locator(':focus').inputValue();
      await page.keyboard.press(before === '1' ? 'ArrowRight' : 'ArrowLeft');
      await expect(page.locator(':focus')).not.toHaveValue(before);
    } else if (exercise && kind && !done.has(exercise)) {
      const sheet = page.locator(`#${exercise}`);
      await awake(sheet);
      await byKeys[kind](page, sheet);
      await expect(said(sheet), exercise).toContainText('That is right.');
      await expect(sheet.locator(':focus'), exercise).toHaveCount(1);
      done.add(exercise);
    }
  }
  expect(done.size).toBe(asked);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Widening');
});

test('a sum is worked with the keyboard alone', async ({ page }) => {
  await openLesson(page, 'sum');
  const sheet = page.locator('#sum-whole');
  await figureField(sheet, 'Places used on the bar').focus();
  await awake(sheet);
  await expect(figureField(sheet, 'Places used on the bar')).toBeFocused();
  await sumByKeys(page, sheet);
  await expect(said(sheet)).toHaveText('That is right.');
});

test('a plate is seen large and put back with keys, and the focus comes back to its button', async ({ page }) => {
  await openLesson(page, 'sum');
  const larger = page.getByRole('button', { name: 'Larger' }).first();
  await larger.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog').getByRole('img').first()).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(larger).toBeFocused();
});

test('on the page of one’s own piece every control is reached and the focus can be seen', async ({ page }) => {
  await page.goto('piece/');
  await awake(page.locator('main'));
  await page.keyboard.press('Tab');
  const last = page.getByRole('group', { name: 'Lengths in' }).getByRole('radio', { checked: true });
  await tabTo(page, page.getByRole('textbox', { name: 'The bar takes' }));
  await page.keyboard.press('ArrowUp');
  await expect(page.getByRole('textbox', { name: 'The bar takes' })).toHaveValue('9');
  await tabTo(page, last);
});

test('feedback comes beside the field, and nothing moves the focus but the learner', async ({ page }) => {
  await openLesson(page, 'widening');
  const sheet = page.locator('#full-width');
  const field = figureField(sheet, 'First row of full width');
  await field.focus();
  await awake(sheet);
  await page.keyboard.type('999');
  await page.keyboard.press('Enter');
  await expect(said(sheet)).toContainText('No slip we know leads to this answer.');
  await expect(field).toBeFocused();
  await press(sheet, 'Show the working');
  await expect(sheet.getByRole('button', { name: 'Show the working' })).toBeFocused();
  await press(sheet, 'Another like it');
  await expect(sheet.getByRole('button', { name: 'Another like it' })).toBeFocused();
});
