import { expect, type Page, test } from '@playwright/test';
import { axeFinds } from './axe.ts';
import { exerciseSheet, press } from './learner.ts';
import { awake, openOther } from './showing.ts';

test.use({ serviceWorkers: 'allow' });

/** Waits until every file of the workbook is kept, which the foot of the page then says. */
async function kept(page: Page): Promise<void> {
  await page.goto('');
  await expect(page.getByText('opens without a network')).toBeVisible({ timeout: 25_000 });
}

test('a workbook that was opened once works in a room without a network', async ({ page, context }) => {
  test.setTimeout(90_000);
  const said: string[] = [];
  await kept(page);
  await context.setOffline(true);
  page.on('pageerror', (error) => said.push(String(error)));

  await page.goto('lessons/the-fitting-sum/?sum-whole=7');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The fitting sum');
  const sheet = await exerciseSheet(page, 'sum-whole');
  await press(sheet, 'Show the working');
  await expect(sheet.locator('.worked .working li').first()).toBeVisible();

  await page.goto('piece/?chart=little-buoy');
  await expect(page.getByText(/^Row 14, /).first()).toBeVisible();

  await page.goto('lessons/widening');
  await expect(page).toHaveURL(/\/lessons\/widening\/$/);
  await page.goto('no/such/place/');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Nothing at this address');
  expect(said).toEqual([]);
});

test('everything that is said can be found without a network, and the address keeps what was looked for', async ({
  page,
  context,
}) => {
  test.setTimeout(60_000);
  await kept(page);
  await context.setOffline(true);
  await page.goto('search/');
  await page.getByRole('searchbox').fill('innermost string');
  await expect(page.getByRole('status')).toHaveText(/ places? speaks? of “innermost string”\./);
  await expect(page.locator('.search-found mark').first()).toBeVisible();
  await page.reload();
  await expect(page.getByRole('searchbox')).toHaveValue('innermost string');
  await page.locator('.search-found a').first().click();
  await expect(page).toHaveURL(/\/lessons\/[a-z-]+\/#/);
  await page.goBack();
  await expect(page.getByRole('searchbox')).toHaveValue('innermost string');
});

test('either window of a showing is closed and opened again without a network, and finds its place, its time and what was drawn', async ({
  page,
  context,
}) => {
  test.setTimeout(90_000);
  const now = (window: Page) => window.locator('[data-frame][data-now]');
  const drawn = (window: Page) => now(window).locator('[data-ink] path').getAttribute('d');

  await kept(page);
  await context.setOffline(true);
  await page.goto('lessons/widening/frames/#5');
  await awake(page);
  const speaker = await openOther(context, page);
  await speaker.keyboard.press('t');
  await speaker.keyboard.press('d');
  const paper = await now(speaker).locator('.frame-paper').boundingBox();
  if (!paper) throw new Error('the speaker sees no frame');
  await speaker.mouse.move(paper.x + paper.width / 4, paper.y + paper.height / 2);
  await speaker.mouse.down();
  await speaker.mouse.move(paper.x + paper.width / 2, paper.y + paper.height / 3, { steps: 3 });
  await speaker.mouse.up();
  await expect(now(page).locator('[data-ink] path')).toHaveCount(1);
  const line = await drawn(page);
  await expect(speaker.locator('[data-used]')).toHaveText(/^0:0[2-9]$/);

  await speaker.close();
  const again = await openOther(context, page);
  await expect(now(again)).toHaveAttribute('data-frame', '5');
  expect(await drawn(again)).toBe(line);
  await expect(again.getByRole('button', { name: 'Run the timer' })).toHaveAttribute('aria-pressed', 'true');
  await expect(again.locator('[data-used]')).toHaveText(/^0:(0[2-9]|[1-5]\d)$/);

  await page.close();
  const room = await openOther(context, again);
  await expect(room.locator('[data-frames]')).toHaveAttribute('data-look', 'room');
  await expect(now(room)).toHaveAttribute('data-frame', '5');
  expect(await drawn(room)).toBe(line);
  await again.keyboard.press('Escape');
  await again.keyboard.press('ArrowRight');
  await expect(now(room)).toHaveAttribute('data-frame', '6');
});

test('with a network the search page is whole, too, and says when nothing was found', async ({ page }) => {
  await page.goto('search/?q=zzzzqq');
  await expect(page.getByRole('status')).toHaveText(/^Nothing here speaks of “zzzzqq”\./);
  await page.getByRole('searchbox').fill('bundle');
  await expect(page.locator('.search-found li').nth(5)).toBeVisible();
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    expect(await axeFinds(page), colorScheme).toEqual([]);
  }
});
