import { expect, type Locator, type Page, test } from '@playwright/test';
import { exercises } from '../../src/solver/index.ts';
import { awake, expectBeside, figureField, openLesson, press, problemOn, said } from './learner.ts';

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
    if (height <= innerHeight && (top < 0 || bottom > innerHeight || left < 0 || right > innerWidth)) faults.push(`${name}: outside the window`);
    const over = document.elementFromPoint((left + right) / 2, Math.max(0, Math.min(innerHeight - 1, (top + bottom) / 2)));
    if (over && !at.contains(over) && !over.contains(at) && !over.closest('label')?.contains(at)) faults.push(`${name}: something lies over it`);
    // Further on in the page than the stop before, or the Tab key would lead in circles.
    const before = (window as { stopBefore?: Element }).stopBefore;
    if (before?.isConnected && !(before.compareDocumentPosition(at) & Node.DOCUMENT_POSITION_FOLLOWING) && before !== at) faults.push(`${name}: comes before the last stop`);
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

test('a lesson is worked from the first link to the next lesson with the keyboard alone', async ({ page }) => {
  test.setTimeout(60_000);
  await openLesson(page, 'firstRow');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the page' })).toBeFocused();
  await page.keyboard.press('Enter');

  // A plate, large and back again.
  const larger = page.getByRole('button', { name: 'Larger' }).first();
  await tabTo(page, larger);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(larger).toBeFocused();

  // Marking: arrows and the space bar.
  const marking = page.locator('#which-place');
  const chart = marking.getByRole('grid');
  await tabTo(page, chart.getByRole('button').first());
  await awake(marking);
  const cells = exercises.mark.solve(await problemOn(marking, 'mark')).cells;
  let at = 1;
  for (const [row, column] of cells) {
    for (; at < column; at += 1) await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Space');
    await expect(chart.getByRole('button', { name: `row ${row}, column ${column}`, exact: true })).toBeFocused();
  }
  await tabTo(page, marking.getByRole('button', { name: 'Check', exact: true }));
  await page.keyboard.press('Space');
  await expect(said(marking)).toHaveText('That is right.');
  await expect(marking.getByRole('button', { name: 'Check', exact: true })).toBeFocused();

  // A figure: typed, checked with Enter, and the focus stays in its field.
  const first = page.locator('#knots-first');
  const knots = figureField(first, 'Knots in this row');
  await tabTo(page, knots);
  await awake(first);
  await expect(knots).toBeFocused();
  await page.keyboard.type(String(exercises.number.solve(await problemOn(first, 'number')).figure));
  await page.keyboard.press('Enter');
  await expectBeside(first, 'Knots in this row', 'This is right.');
  await expect(knots).toBeFocused();

  // A wrong one, a hint, another try.
  const second = page.locator('#corner-first');
  const corners = figureField(second, 'Corner cells');
  await tabTo(page, corners);
  await awake(second);
  await page.keyboard.type('999');
  await page.keyboard.press('Enter');
  await expect(said(second)).toContainText('“Corner cells” first');
  await expect(corners).toBeFocused();
  await tabTo(page, second.getByRole('button', { name: 'Hint', exact: true }));
  await page.keyboard.press('Enter');
  await expect(second.locator('.hint')).toHaveCount(1);
  await expect(second.getByRole('button', { name: 'Hint', exact: true })).toBeFocused();
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Shift+Tab');
  await expect(corners).toBeFocused();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(String(exercises.number.solve(await problemOn(second, 'number')).figure));
  await page.keyboard.press('Enter');
  await expect(said(second)).toContainText('That is right.');

  // The walk: a slider by arrows, a button by the space bar.
  const walk = page.locator('#try-first-row');
  await tabTo(page, walk.getByRole('slider', { name: 'Row', exact: true }));
  await awake(walk);
  await page.keyboard.press('ArrowRight');
  await expect(walk).toContainText('Row 2, right to left');
  await tabTo(page, walk.getByRole('button', { name: 'Knot back' }));
  await page.keyboard.press('Space');
  await expect(walk.getByRole('button', { name: 'Knot back' })).toBeFocused();

  // The checklist, and on to the next lesson.
  const tick = page.getByRole('checkbox').first();
  await tabTo(page, tick);
  await page.keyboard.press('Space');
  await expect(tick).toBeChecked();
  await tabTo(page, page.getByRole('link', { name: 'Next' }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Widening');
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
