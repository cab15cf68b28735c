import { gzipSync } from 'node:zlib';
import { expect, type Page, type Response, test } from '@playwright/test';

/** Gzipped bytes of script that a lesson may load, with every widget awake; and what the first use of help may add. */
const LIVE = 30_000;
const ON_FIRST_USE = 15_000;

const gzipped = (body: Buffer | string): number => gzipSync(body, { level: 9 }).length;

interface Loads {
  /** Heaviest first, for the message of a failure. */
  readonly files: () => string;
  readonly total: () => number;
  /** Counts from nothing again. */
  readonly restart: () => void;
}

/** Counts the scripts that a page loads from here on; each answer is read when it has come. */
function countScripts(page: Page): Loads & { readonly settled: () => Promise<unknown> } {
  let found: [name: string, bytes: number][] = [];
  const pending: Promise<unknown>[] = [];
  page.on('response', (response: Response) => {
    if (!/javascript/.test(response.headers()['content-type'] ?? '')) return;
    pending.push(
      response.body().then((body) => {
        found.push([response.url().split('/').at(-1) ?? '', gzipped(body)]);
      }),
    );
  });
  return {
    files: () =>
      [...found]
        .sort((a, b) => b[1] - a[1])
        .map(([name, bytes]) => `${name} ${bytes}`)
        .join(', '),
    total: () => found.reduce((sum, [, bytes]) => sum + bytes, 0),
    restart: () => {
      found = [];
    },
    settled: () => Promise.all(pending),
  };
}

async function lessonPaths(page: Page, base: string): Promise<string[]> {
  const html = await (await page.request.get(`${base}lessons/`)).text();
  const paths = [...html.matchAll(/href="([^"#?]*\/lessons\/[a-z-]+\/)"/g)].map(
    ([, href = '']) => new URL(href, base).href,
  );
  return [...new Set(paths)];
}

/** Down to the end, slowly enough for every widget to come into view, until none is asleep. */
async function scrollThrough(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (let top = 0; top < document.body.scrollHeight; top += innerHeight / 2) {
      scrollTo(0, top);
      await new Promise((next) => requestAnimationFrame(() => setTimeout(next, 16)));
    }
  });
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
}

test('a lesson with every widget awake loads at most 30 kB of script, shifts nothing and complains of nothing', async ({
  page,
  baseURL,
}) => {
  test.setTimeout(120_000);
  const base = baseURL ?? '';
  const said: string[] = [];
  const elsewhere: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(String(error)));
  page.on('request', (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(new URL(base).origin))
      elsewhere.push(request.url());
  });
  await page.addInitScript(() => {
    Object.assign(window, { shifted: 0 });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries())
        Object.assign(window, {
          shifted: (window as unknown as { shifted: number }).shifted + (entry as unknown as { value: number }).value,
        });
    }).observe({ type: 'layout-shift', buffered: true });
  });
  const loads = countScripts(page);
  const paths = await lessonPaths(page, base);
  expect(paths.length).toBeGreaterThan(0);
  for (const path of paths) {
    // A new page each time would still find the files of the one before in the browser's store; this one is asked not to.
    await (await page.context().newCDPSession(page)).send('Network.setCacheDisabled', { cacheDisabled: true });
    loads.restart();
    await page.goto(path);
    await scrollThrough(page);
    await loads.settled();
    const inline = await page.evaluate(() =>
      [...document.querySelectorAll('script:not([src])')].map(({ textContent }) => textContent).join('\n'),
    );
    expect(
      loads.total() + gzipped(inline),
      `${path}: in the page ${gzipped(inline)}, ${loads.files()}`,
    ).toBeLessThanOrEqual(LIVE);
    expect(await page.evaluate(() => (window as unknown as { shifted: number }).shifted), `${path} shifts`).toBe(0);
  }
  expect(said).toEqual([]);
  expect(elsewhere).toEqual([]);
});

test('the slip behind a wrong sum and its worked solution cost at most 15 kB more', async ({ page, baseURL }) => {
  await page.goto(`${baseURL ?? ''}lessons/the-fitting-sum/`);
  await scrollThrough(page);
  const loads = countScripts(page);
  const exercise = page.locator('#sum-first');
  for (const field of await exercise.getByRole('textbox').all()) await field.fill('3');
  await exercise.getByLabel('odd', { exact: true }).check();
  await exercise.getByRole('button', { name: 'Check' }).click();
  await expect(exercise.locator('.slips')).toBeVisible();
  await exercise.getByRole('button', { name: 'Show the working' }).click();
  await expect(exercise.locator('.worked')).toBeVisible();
  await loads.settled();
  expect(loads.total(), loads.files()).toBeGreaterThan(0);
  expect(loads.total(), loads.files()).toBeLessThanOrEqual(ON_FIRST_USE);
});
