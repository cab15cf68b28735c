import { expect, type Page, test } from '@playwright/test';
import { ROOMS } from '../../src/layouts/rooms.ts';
import { axeFinds } from './axe.ts';
import { consoleOf } from './learner.ts';

/** Addresses of the built pages, by following the links that stay inside the workbook. */
async function pagesFrom(page: Page, base: string): Promise<string[]> {
  const found = new Set(['']);
  for (const path of found) {
    const response = await page.request.get(base + path);
    if (!response.ok()) continue;
    for (const [, href = ''] of (await response.text()).matchAll(/<a\b[^>]*\bhref="([^"#?]*)/g)) {
      const url = new URL(href, base + path);
      if (url.href.startsWith(base) && url.pathname.endsWith('/')) found.add(url.href.slice(base.length));
    }
  }
  return [...found];
}

// Axe looks at every part of every drawing, which takes long; in parts, the pages are looked at side by side.
const PARTS = 6;
for (let part = 0; part < PARTS; part++)
  test(`every page is reached by links, has one h1, its landmarks and nothing axe finds, in both themes (${part + 1} of ${PARTS})`, async ({
    page,
    baseURL,
  }) => {
    test.setTimeout(300_000);
    const base = baseURL ?? '';
    const pages = (await pagesFrom(page, base)).filter((_, index) => index % PARTS === part);
    expect(pages.length).toBeGreaterThan(1);
    for (const path of pages) {
      await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
      const response = await page.goto(base + path);
      expect(response?.status(), path).toBe(200);
      await expect(page.locator('h1'), path).toHaveCount(1);
      await expect(page.locator('main'), path).toHaveCount(1);
      expect(await axeFinds(page), `${path}, light`).toEqual([]);
      // Of all that axe looks at, only colours differ from one theme to the other.
      await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
      expect(await axeFinds(page, { colours: true }), `${path}, dark`).toEqual([]);
    }
  });

test('no page is wider than a window of 320 pixels', async ({ page, baseURL }) => {
  test.setTimeout(180_000);
  await page.setViewportSize({ width: 320, height: 640 });
  for (const path of await pagesFrom(page, baseURL ?? '')) {
    await page.goto((baseURL ?? '') + path);
    expect(await page.evaluate(() => document.documentElement.scrollWidth), path).toBeLessThanOrEqual(320);
  }
});

test('a wrong address gets the page that says so, with status 404', async ({ page }) => {
  const response = await page.goto('no/such/place/');
  expect(response?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Nothing at this address');
  await page.getByRole('link', { name: 'the list of lessons' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lessons');
});

test('the skip link is the first stop of the Tab key and leads past the head', async ({ page }) => {
  await page.goto('');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the page' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('main')).toBeFocused();
});

test('the page follows the device until somebody chooses, and keeps the choice', async ({ page }) => {
  const paper = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  await page.emulateMedia({ colorScheme: 'light' });
  await page.goto('');
  const light = await paper();
  await page.emulateMedia({ colorScheme: 'dark' });
  const dark = await paper();
  expect(dark).not.toBe(light);
  await page.getByRole('radio', { name: 'light' }).check();
  expect(await paper()).toBe(light);
  await page.goto('lessons/');
  expect(await paper()).toBe(light);
  await expect(page.getByRole('radio', { name: 'light' })).toBeChecked();
  await page.getByRole('radio', { name: 'as the device' }).check();
  await page.reload();
  expect(await paper()).toBe(dark);
});

test('the choice of colours waits for no file', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('evenfold:theme', 'dark'));
  await page.route('**/*.js', (route) => route.abort());
  await page.goto('');
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
});

test('nothing shifts while the faces arrive', async ({ page }) => {
  await page.addInitScript(() => {
    const shifts: number[] = [];
    Object.assign(window, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) shifts.push((entry as PerformanceEntry & { value: number }).value);
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await page.route('**/*.woff2', async (route) => {
    await new Promise((resolve) => setTimeout(resolve, 400));
    await route.continue();
  });
  await page.goto('');
  await page.evaluate(() => document.fonts.ready);
  await page.waitForTimeout(200);
  const shifts = await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
  expect(shifts.reduce((sum, shift) => sum + shift, 0)).toBeLessThan(0.02);
});

test('nothing comes from another place, and no rule of the page is broken', async ({ page, baseURL }) => {
  test.setTimeout(180_000);
  const elsewhere: string[] = [];
  const complaints = consoleOf(page);
  page.on('request', (request) => {
    if (!request.url().startsWith(baseURL ?? '') && !/^(data|blob):/.test(request.url())) elsewhere.push(request.url());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  for (const path of await pagesFrom(page, baseURL ?? '')) await page.goto((baseURL ?? '') + path);
  expect(elsewhere).toEqual([]);
  expect(complaints).toEqual([]);
});

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });

  test('the head, the rooms and the lessons are there, and no dead control', async ({ page }) => {
    await page.goto('');
    await expect(page.getByRole('navigation', { name: 'Rooms' }).getByRole('link')).toHaveCount(ROOMS.length);
    await expect(page.getByRole('radio')).toHaveCount(0);
    await page.goto('lessons/');
    await expect(page.getByRole('button')).toHaveCount(0);
  });
});

test('on paper there is no control, and the address stands on the sheet', async ({ page, baseURL }) => {
  await page.goto('lessons/?seed=7');
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  for (const control of await page.locator('button, input[type="radio"], nav').all())
    await expect(control).toBeHidden();
  await expect(page.locator('[data-address]').first()).toHaveText(`${baseURL}lessons/?seed=7`);
});

test('the print button draws the code of the address first, and only then', async ({ page }) => {
  await page.addInitScript(() => {
    window.print = () => document.documentElement.setAttribute('data-printed', '');
  });
  await page.goto('lessons/');
  await page.getByRole('main').getByRole('listitem').getByRole('link').first().click();
  await expect(page.locator('[data-qr] svg')).toHaveCount(0);
  await page.getByRole('button', { name: 'Print this lesson' }).click();
  await expect(page.locator('html')).toHaveAttribute('data-printed');
  await expect(page.locator('[data-qr] svg path').last()).toHaveAttribute('d', /^M/);
});

test('every target of the head and foot is at least 44 pixels high', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('');
  for (const target of await page.locator('header.masthead a, footer label').all()) {
    expect((await target.boundingBox())?.height).toBeGreaterThanOrEqual(44);
  }
});
