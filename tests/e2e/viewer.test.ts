import { expect, type Locator, type Page, test } from '@playwright/test';
import rings from '../../content/charts/rings.json' with { type: 'json' };
import { leadAt } from '../../src/figures/lead-at.ts';
import { type Plan, planPiece } from '../../src/solver/index.ts';
import { rowFigureWords } from '../../src/words/figures/row.ts';
import { axeFinds } from './axe.ts';
import { awake, consoleOf, openLesson, readWithOwn } from './learner.ts';

function planOf(input: { width: number; height: number; capacity: number }): Plan {
  const plan = planPiece(input);
  if (!plan.ok) throw new Error(plan.problem.code);
  return plan;
}

const buoy = planOf({ width: 12, height: 14, capacity: rings['little-buoy'] });
const knotsIn = (plan: Plan, row: number): number => plan.rows[row - 1]?.knots ?? 0;

/** The viewer on the page of a chart, open, with its picture in the focus. */
async function openViewer(page: Page, chart = 'little-buoy'): Promise<Locator> {
  await page.goto(`charts/${chart}/`);
  const button = page.getByRole('button', { name: 'Walk through the piece' });
  await button.scrollIntoViewIfNeeded();
  await awake(page.locator('main'));
  await button.click();
  const viewer = page.locator('.piece-viewer');
  await expect(stageOf(viewer)).toBeFocused({ timeout: 15_000 });
  return viewer;
}

const stageOf = (viewer: Locator): Locator => viewer.getByRole('group', { name: 'The piece, to look at with keys' });
const pictureOf = (viewer: Locator): Locator => stageOf(viewer).getByRole('img');
const told = (viewer: Locator): Locator => viewer.locator('[aria-live="polite"]');
/** What part of the piece is seen, in the units of its drawing: left, top, width and height. */
const boxOf = (viewer: Locator): Promise<number[]> =>
  pictureOf(viewer).evaluate((picture) => {
    const sheet = picture.querySelector('svg');
    const [left = 0, top = 0, width = 0] = (sheet?.getAttribute('viewBox') ?? '').split(' ').map(Number);
    const [place, drawn] = [picture.getBoundingClientRect(), (sheet ?? picture).getBoundingClientRect()];
    const unit = width / drawn.width;
    return [
      left + (place.left - drawn.left) * unit,
      top + (place.top - drawn.top) * unit,
      place.width * unit,
      place.height * unit,
    ].map((value) => Math.round(value * 10) / 10);
  });

/** Knots drawn in the picture: what is doubled up is counted as often as it stands there, what lies behind is not. */
const knotsDrawn = (viewer: Locator): Promise<number> =>
  pictureOf(viewer).evaluate((picture) => {
    const behind = (use: Element): boolean => /[0-9a-z]u([lr]\d+)?$/.test(use.getAttribute('href') ?? '');
    const many = (use: Element): number => Number(/[lr](\d+)$/.exec(use.getAttribute('href') ?? '')?.[1] ?? 1);
    return [...picture.querySelectorAll('svg > g > g > g > g > use')]
      .filter((use) => !behind(use))
      .reduce((sum, use) => sum + many(use), 0);
  });

/** The viewer stands at a row with so many of its knots tied: in its heading, its sliders, its words and its drawing. */
async function expectAt(viewer: Locator, plan: Plan, row: number, knot = knotsIn(plan, row)): Promise<void> {
  const whole = knot === knotsIn(plan, row);
  const name = row === 0 ? 'Mounted' : `Row ${row}${whole ? '' : `, knot ${knot} of ${knotsIn(plan, row)}`}`;
  await expect(viewer.getByText(name, { exact: true })).toBeVisible();
  await expect(viewer.getByRole('slider', { name: 'Row', exact: true })).toHaveValue(String(row));
  await expect(viewer.getByRole('slider', { name: 'Row', exact: true })).toHaveAttribute('aria-valuetext', name);
  await expect(viewer.getByRole('slider', { name: 'Knots tied in the row' })).toHaveValue(String(knot));
  const before = plan.rows.slice(0, Math.max(0, row - 1)).reduce((sum, { knots }) => sum + knots, 0);
  await expect.poll(() => knotsDrawn(viewer)).toBe(before + knot);
  if (row === 0) await expect(told(viewer)).toContainText('No knot is tied yet');
  else {
    const lead = leadAt(plan.rows, row, knot);
    await expect(told(viewer)).toContainText(rowFigureWords['row-leading']({ ...lead, width: plan.fit.width }));
  }
}

test('with keys alone the piece is walked knot by knot and row by row, as the solver plans it', async ({ page }) => {
  const complaints = consoleOf(page);
  const viewer = await openViewer(page);
  await expectAt(viewer, buoy, 0);
  for (let knot = 1; knot <= knotsIn(buoy, 1); knot += 1) {
    await page.keyboard.press('ArrowRight');
    await expectAt(viewer, buoy, 1, knot);
  }
  await page.keyboard.press('ArrowRight');
  await expectAt(viewer, buoy, 2, 1);
  await page.keyboard.press('ArrowLeft');
  await expectAt(viewer, buoy, 1);
  for (let row = 2; row <= buoy.rows.length; row += 1) {
    await page.keyboard.press('ArrowDown');
    await expectAt(viewer, buoy, row);
  }
  expect(complaints).toEqual([]);
  await page.keyboard.press('ArrowDown');
  await expect(viewer.getByText('Gathered', { exact: true })).toBeVisible();
  await page.keyboard.press('ArrowDown');
  await expect(viewer.getByText('Finished', { exact: true })).toBeVisible();
  await expect(told(viewer)).toContainText('gathered, tied off and trimmed');
  await page.keyboard.press('Home');
  await expectAt(viewer, buoy, 0);
  await page.keyboard.press('End');
  await expect(viewer.getByText('Finished', { exact: true })).toBeVisible();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await expectAt(viewer, buoy, buoy.rows.length);
  await expect(stageOf(viewer)).toBeFocused();
});

test('buttons and sliders walk too, and what can’t go on says so and keeps the focus', async ({ page }) => {
  const viewer = await openViewer(page);
  await expect(viewer.getByRole('button', { name: 'Row before' })).toBeDisabled();
  await viewer.getByRole('button', { name: 'Next row' }).click();
  await viewer.getByRole('button', { name: 'Next knot' }).click();
  await expectAt(viewer, buoy, 2, 1);
  await viewer.getByRole('slider', { name: 'Knots tied in the row' }).press('End');
  await expectAt(viewer, buoy, 2);
  await viewer.getByRole('button', { name: 'Knot back' }).click();
  await expectAt(viewer, buoy, 2, knotsIn(buoy, 2) - 1);
  const rows = viewer.getByRole('slider', { name: 'Row', exact: true });
  await rows.press('End');
  await expect(rows).toHaveAttribute('aria-valuetext', 'Finished');
  await expect(viewer.getByRole('button', { name: 'Next knot' })).toBeDisabled();
  const before = viewer.getByRole('button', { name: 'Row before' });
  for (let times = 0; times < 3; times += 1) await before.press('Enter');
  await expectAt(viewer, buoy, 13);
  await expect(before).toBeFocused();
});

test('from the back floats and tails show, at the same row and the same spot', async ({ page }) => {
  const viewer = await openViewer(page);
  for (let times = 0; times < 6; times += 1) await page.keyboard.press('ArrowDown');
  await page.keyboard.press('+');
  const [, top, width] = await boxOf(viewer);
  await page.keyboard.press('t');
  await expect(viewer.getByRole('radio', { name: 'back' })).toBeChecked();
  await expect(pictureOf(viewer)).toHaveAccessibleName(/from the back/);
  await expectAt(viewer, buoy, 6);
  const [, turnedTop, turnedWidth] = await boxOf(viewer);
  expect(turnedTop).toBeCloseTo(top ?? 0, 1);
  expect(turnedWidth).toBeCloseTo(width ?? 0, 1);
  await viewer.getByText('In words', { exact: true }).click();
  await expect(viewer.getByText(/^At the back lie \d+ floats? and \d+ tails?\.$/)).toBeVisible();
  await viewer.getByRole('radio', { name: 'front' }).check();
  await expect(viewer.getByText(/^At the back lie/)).toHaveCount(0);
});

test('keys, buttons and a wheel bring it nearer, move it, and show it whole again', async ({ page }) => {
  const viewer = await openViewer(page);
  const [left = 0, , whole = 0] = await boxOf(viewer);
  const farther = viewer.getByRole('button', { name: 'Farther' });
  await expect(farther).toBeDisabled();
  await page.keyboard.press('+');
  await page.keyboard.press('+');
  const [, , near = 0] = await boxOf(viewer);
  expect(near).toBeCloseTo(whole / 1.5 / 1.5, 0);
  await page.keyboard.press('Shift+ArrowLeft');
  const [moved = 0] = await boxOf(viewer);
  await viewer.getByRole('button', { name: 'Look right' }).click();
  expect((await boxOf(viewer))[0]).toBeGreaterThan(moved);
  await viewer.getByRole('button', { name: 'Whole piece' }).click();
  expect(await boxOf(viewer)).toEqual([left, (await boxOf(viewer))[1], whole, (await boxOf(viewer))[3]]);
  await stageOf(viewer).focus();
  await stageOf(viewer).hover();
  await page.mouse.wheel(0, -400);
  await expect.poll(async () => (await boxOf(viewer))[2]).toBeLessThan(whole * 0.9);
  await page.keyboard.press('0');
  expect((await boxOf(viewer))[2]).toBeCloseTo(whole, 0);
});

test('a wheel over a picture that nobody uses scrolls the page', async ({ page }) => {
  const viewer = await openViewer(page);
  const [, , whole = 0] = await boxOf(viewer);
  await viewer.getByRole('button', { name: 'Nearer' }).focus();
  await stageOf(viewer).hover();
  await page.mouse.wheel(0, -300);
  await page.waitForTimeout(100);
  expect((await boxOf(viewer))[2]).toBe(whole);
});

test('a mouse that drags moves a near picture', async ({ page }) => {
  const viewer = await openViewer(page);
  for (let times = 0; times < 4; times += 1) await page.keyboard.press('+');
  const [left = 0, top = 0] = await boxOf(viewer);
  await stageOf(viewer).hover();
  await page.mouse.down();
  const box = await stageOf(viewer).boundingBox();
  await page.mouse.move((box?.x ?? 0) + 20, (box?.y ?? 0) + 30);
  await page.mouse.up();
  const [movedLeft = 0, movedTop = 0] = await boxOf(viewer);
  expect(movedLeft).toBeGreaterThan(left);
  expect(movedTop).toBeGreaterThan(top);
});

test.describe('by touch', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } });

  test('two fingers bring it nearer, and then one moves it', async ({ page }) => {
    const viewer = await openViewer(page);
    await stageOf(viewer).scrollIntoViewIfNeeded();
    const { x = 0, y = 0, width = 0, height = 0 } = (await stageOf(viewer).boundingBox()) ?? {};
    const cdp = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...points: [number, number][]) =>
      cdp.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: points.map(([across, down], id) => ({ x: x + across, y: y + down, id })),
      });
    const [cx, cy] = [width / 2, height / 2];
    const [, , whole = 0] = await boxOf(viewer);
    await touch('touchStart', [cx - 30, cy], [cx + 30, cy]);
    for (const apart of [45, 60, 75, 90]) await touch('touchMove', [cx - apart, cy], [cx + apart, cy]);
    await touch('touchEnd');
    const [left = 0, , near = 0] = await boxOf(viewer);
    expect(near).toBeLessThan(whole / 2);
    await touch('touchStart', [cx, cy]);
    for (const on of [20, 40, 60]) await touch('touchMove', [cx + on, cy]);
    await touch('touchEnd');
    expect((await boxOf(viewer))[0]).toBeLessThan(left);
  });
});

test('before and after: each step of the technique has its two pictures, and is told', async ({ page }) => {
  const viewer = await openViewer(page);
  await viewer.getByRole('radio', { name: 'before and after' }).check();
  const names = viewer.locator('.moments p');
  await expect(names).toHaveText(['Mounted', 'After row 1']);
  const next = viewer.getByRole('button', { name: 'Next step' });
  const pairs: string[][] = [];
  while (!(await next.isDisabled())) {
    await next.click();
    pairs.push(await names.allTextContents());
  }
  expect(pairs).toEqual([
    ['After row 1', 'At its full width, after row 2'],
    ['At its full width, after row 2', 'Before the closing, after row 13'],
    ['Before the closing, after row 13', 'After the last row, row 14'],
    ['After the last row, row 14', 'Gathered'],
    ['Gathered', 'Finished'],
  ]);
  await expect(told(viewer)).toContainText('The strings are gathered, tied off and trimmed.');
  await expect(viewer.getByRole('img')).toHaveCount(2);
});

test('a lesson’s viewer follows the learner’s own figures', async ({ page }) => {
  const own = { capacity: 10, width: 16, height: 12 };
  await openLesson(page, 'finishing');
  await readWithOwn(page, own);
  const part = page.locator('#try-finish');
  await part.scrollIntoViewIfNeeded();
  await awake(part);
  const viewer = part.locator('.piece-viewer');
  await expectAt(viewer, planOf(own), own.height);
  await expect(part.locator('[id$="-built"]')).toBeHidden();
  await expect(page.locator('#plate-finished [data-plate-words]')).toContainText('16 columns wide and 12 rows high');
  await expect(page.locator('#plate-finished svg')).toHaveCount(3);
  await page.locator('.lesson-tools').getByRole('radio', { name: 'the lantern' }).check();
  await expect(page.locator('#plate-finished [data-plate-words]')).toContainText('Lantern as it hangs');
});

test('one’s own plan shows the finished piece, and can be walked through', async ({ page }) => {
  await page.goto('piece/?chart=kettle');
  const section = page.locator('.plan-piece');
  await section.scrollIntoViewIfNeeded();
  await expect(section.locator('figure svg.fig-piece')).toBeVisible();
  await expect(section.locator('figcaption details p')).toContainText(
    'The strings are gathered, tied off and trimmed.',
  );
  await section.getByRole('button', { name: 'Walk through the piece' }).click();
  const viewer = section.locator('.piece-viewer');
  await expect(stageOf(viewer)).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expectAt(viewer, planOf({ width: 24, height: 24, capacity: 8 }), 1);
});

test('how fine the picture is follows its size', async ({ page }) => {
  const viewer = await openViewer(page, 'crab');
  await page.setViewportSize({ width: 320, height: 640 });
  await expect(pictureOf(viewer)).toHaveAttribute('data-level', 'stitch');
  await stageOf(viewer).focus();
  for (let times = 0; times < 4; times += 1) await page.keyboard.press('+');
  await expect(pictureOf(viewer)).toHaveAttribute('data-level', 'cord');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});

test('a further knot changes its own part of the picture and leaves the rest as it stands', async ({ page }) => {
  const viewer = await openViewer(page);
  for (let times = 0; times < 9; times += 1) await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowRight');
  await pictureOf(viewer).evaluate((picture) => {
    for (const part of picture.querySelectorAll('svg > g > g')) part.setAttribute('data-stood', '');
    for (const row of picture.querySelectorAll('svg > g > g > *')) row.setAttribute('data-drawn', '');
  });
  await page.keyboard.press('ArrowRight');
  const fresh = await pictureOf(viewer).evaluate((picture) => ({
    parts: picture.querySelectorAll('svg > g > g').length,
    redrawn: [...picture.querySelectorAll('svg > g > g')].filter((part) => !part.querySelector('[data-drawn]')).length,
  }));
  expect(fresh.parts).toBeGreaterThan(25);
  expect(fresh.redrawn).toBeGreaterThan(0);
  expect(fresh.redrawn).toBeLessThanOrEqual(8);
});

test('with less motion nothing moves by itself, and axe finds nothing, in both themes', async ({ page }) => {
  test.setTimeout(90_000);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const viewer = await openViewer(page);
  await page.keyboard.press('ArrowDown');
  expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    for (const way of ['each knot', 'before and after']) {
      await viewer.getByRole('radio', { name: way }).check();
      expect(await axeFinds(page, { within: '.piece-viewer' }), `${way}, ${colorScheme}`).toEqual([]);
    }
  }
});

test('on paper the viewer is the piece with its words, and has no control', async ({ page }) => {
  const viewer = await openViewer(page);
  await page.emulateMedia({ media: 'print' });
  for (const control of await viewer.locator('button, input').all()) await expect(control).toBeHidden();
});

test('where colours are forced, cords have the colours of the system and threads keep their own', async ({ page }) => {
  await page.emulateMedia({ forcedColors: 'active' });
  const viewer = await openViewer(page);
  await page.keyboard.press('End');
  const colours = await pictureOf(viewer).evaluate((picture) => {
    const style = getComputedStyle(picture);
    return { line: style.getPropertyValue('--o').trim(), thread: picture.querySelector('[color^="#"]') !== null };
  });
  expect(colours).toEqual({ line: 'CanvasText', thread: true });
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('the page of a chart has its chart and the finished piece from both sides, and no dead control', async ({
    page,
  }) => {
    await page.goto('charts/little-buoy/');
    await expect(page.getByRole('img', { name: /Little buoy as it hangs/ })).toBeVisible();
    await expect(page.getByRole('img', { name: /from the back/ })).toBeVisible();
    await expect(page.getByRole('main').getByRole('button')).toHaveCount(0);
  });
});
