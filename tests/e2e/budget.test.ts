import { gzipSync } from 'node:zlib';
import { expect, type Locator, type Page, type Response, test } from '@playwright/test';
import { familyOf } from '../../src/solver/exercises/family.ts';
import { placesOf } from '../../src/solver/exercises/spot/places.ts';
import { exercises, type KindName, type ProblemOf, type SolutionOf, SPOT_FAULTS } from '../../src/solver/index.ts';
import { ANOTHER_QUESTION, WORKED_CASE } from '../../src/words/exercises/hint-words.ts';
import {
  choose,
  consoleOf,
  exerciseSheet,
  press,
  problemOn,
  putInOrder,
  said,
  sayAndTick,
  writeSum,
} from './learner.ts';

/** Gzipped bytes of script that a lesson may load, with every widget awake; and what the first use of help may add. */
const LIVE = 30_000;
const ON_FIRST_USE = 15_000;
/** What a knot’s stepper may add, with all it can be asked for. */
const STEPPER = 30_000;
/**
 * What the viewer of a whole piece may fetch when it is opened: what plans, draws and walks it, and the chart. The page
 * of a chart has no exercise, so what planning shares with exercises comes with the viewer there.
 */
const VIEWER = { 'lessons/gathering-and-finishing/': 49_000, 'charts/lantern/': 60_000 };

const gzipped = (body: Buffer | string): number => gzipSync(body, { level: 9 }).length;

interface Loads {
  /** Heaviest first, for the message of a failure. */
  readonly files: () => string;
  readonly total: () => number;
  /** Counts from nothing again. */
  readonly restart: () => void;
}

/** Counts the scripts that a page loads from here on, or answers of other kinds; each is read when it has come. */
function countScripts(page: Page, kinds = /javascript/): Loads & { readonly settled: () => Promise<unknown> } {
  let found: [name: string, bytes: number][] = [];
  const pending: Promise<unknown>[] = [];
  page.on('response', (response: Response) => {
    if (!kinds.test(response.headers()['content-type'] ?? '')) return;
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
  const complaints = consoleOf(page);
  const elsewhere: string[] = [];
  page.on('pageerror', (error) => complaints.push(String(error)));
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
  expect(complaints).toEqual([]);
  expect(elsewhere).toEqual([]);
});

/** An answer that slips lead to, one that needs a further question where there is one: it fetches the most. */
function slippedAnswer<K extends KindName>(kind: K, problem: ProblemOf<K>): SolutionOf<K> {
  const answers = Object.values(exercises[kind].missteps).map((slip) => slip(problem));
  const checked = answers.map((answer) => ({ answer, ...exercises[kind].check(problem, answer) }));
  const wrong = checked.filter(({ outcome, missteps }) => outcome === 'not-right' && missteps.length > 0);
  const found = wrong.find(({ needsFollowUp }) => needsFollowUp) ?? wrong[0];
  if (!found) throw new Error(`No slip leads to a wrong answer to ${JSON.stringify(problem)}.`);
  return found.answer;
}

async function answerBySlip(sheet: Locator, kind: KindName): Promise<void> {
  const problem = await problemOn(sheet, kind);
  const half = (await sheet.getAttribute('data-level')) === 'half-worked';
  if (problem.kind === 'sum') {
    const standing = half ? exercises.sum.fade(problem).given : {};
    await writeSum(sheet, problem, { ...slippedAnswer('sum', problem), ...standing }, standing);
  } else if (problem.kind === 'number')
    await sheet
      .locator('form')
      .getByRole('textbox')
      .fill(String(slippedAnswer('number', problem).figure));
  else if (problem.kind === 'row')
    for (const act of slippedAnswer('row', problem).acts) await sheet.locator(`[data-act="${act}"]`).click();
  else if (problem.kind === 'spot') {
    const { place, fault } = exercises.spot.solve(problem);
    await sheet.locator(`input[value="${placesOf(problem).find((each) => each !== place)}"]`).check();
    await sheet.locator(`input[value="${SPOT_FAULTS[problem.in].find((each) => each !== fault)}"]`).check();
  } else if (problem.kind === 'order' && half) await sheet.getByRole('button', { name: /^Later/ }).click();
  else if (problem.kind === 'order') await putInOrder(sheet, slippedAnswer('order', problem).order);
  else if (problem.kind === 'choose') await choose(sheet, problem, slippedAnswer('choose', problem).choice);
  else if (problem.kind === 'say') await sayAndTick(sheet, 'Two sides, and a string for each.', 1);
  else
    for (const [row, column] of slippedAnswer('mark', problem).cells)
      await sheet.getByRole('button', { name: `row ${row}, column ${column}`, exact: true }).click();
  await press(sheet, 'Check');
  await expect(sheet.locator('.slips')).toBeVisible();
}

test('all the help for one wrong answer costs at most 15 kB more, whatever the exercise is about', async ({
  page,
  baseURL,
}) => {
  test.setTimeout(120_000);
  await (await page.context().newCDPSession(page)).send('Network.setCacheDisabled', { cacheDisabled: true });
  const loads = countScripts(page);
  const met = new Set<string>();
  for (const path of await lessonPaths(page, baseURL ?? '')) {
    await page.goto(path);
    const found = await page
      .locator('section.exercise')
      .evaluateAll((all) => all.map(({ id, dataset }) => ({ id, kind: dataset['kind'] as KindName })));
    expect(found.length, path).toBeGreaterThan(0);
    for (const { id, kind } of found) {
      const about = `${kind} ${familyOf(await problemOn(page.locator(`#${id}`), kind))}`;
      // Rows ask for more in some phases than in others, and draw them: each of them counts.
      if (met.has(about) && kind !== 'row' && kind !== 'spot') continue;
      met.add(about);
      // Nothing of what an exercise before it has fetched may be at hand, and nothing missed in it be known: a
      // half-worked neighbour would be made anew for that.
      await page.evaluate(() => localStorage.clear());
      await page.goto(path);
      const sheet = await exerciseSheet(page, id);
      await loads.settled();
      // Checking is one thing, help another: the judge comes with the first check, be it of nothing.
      loads.restart();
      await press(sheet, 'Check');
      await expect(said(sheet)).not.toHaveText('');
      await loads.settled();
      expect(loads.total(), `${path}#${id}, its first check: ${loads.files()}`).toBeLessThanOrEqual(ON_FIRST_USE);
      loads.restart();
      await answerBySlip(sheet, kind);
      for (let given = 1; given <= 2; given += 1) {
        await press(sheet, 'Hint');
        await expect(sheet.locator('.hint')).toHaveCount(given);
      }
      await press(sheet, 'Hint');
      await expect(said(sheet)).toContainText(kind === 'say' ? ANOTHER_QUESTION : WORKED_CASE);
      await press(sheet, 'Show the working');
      await expect(said(sheet)).toContainText('The working, with these figures:');
      await loads.settled();
      expect(loads.total(), `${path}#${id}: ${loads.files()}`).toBeGreaterThan(0);
      expect(loads.total(), `${path}#${id}: ${loads.files()}`).toBeLessThanOrEqual(ON_FIRST_USE);
    }
  }
  expect([...met].sort()).toEqual([
    'choose choose',
    'mark reading',
    'mark rows',
    'number fitting',
    'number measuring',
    'number reading',
    'number rows',
    'number thread',
    'order order',
    'row knots',
    'say say',
    'spot knots',
    'sum fitting',
  ]);
});

test('a knot’s stepper costs at most 30 kB more, with its question asked, and nothing before it is asked for', async ({
  page,
  baseURL,
}) => {
  await (await page.context().newCDPSession(page)).send('Network.setCacheDisabled', { cacheDisabled: true });
  const loads = countScripts(page);
  await page.goto(`${baseURL ?? ''}lessons/side-bundles-and-the-first-row/`);
  await scrollThrough(page);
  await loads.settled();
  expect(loads.files()).not.toContain('wake');
  loads.restart();
  const plate = page.locator('#plate-forward-knot');
  await plate.getByRole('button', { name: /^Step through it/ }).click();
  await plate.getByRole('slider').fill('1');
  await plate.getByText('Hand, strings and colours').click();
  await plate.getByText('Which string is over here?').click();
  await plate.getByRole('group', { name: /over/ }).getByRole('button').first().click();
  await loads.settled();
  expect(loads.total(), loads.files()).toBeGreaterThan(0);
  expect(loads.total(), loads.files()).toBeLessThanOrEqual(STEPPER);
});

for (const [path, most] of Object.entries(VIEWER))
  test(`opening the viewer of ${path} fetches at most ${most / 1000} kB, and nothing of it comes before`, async ({
    page,
    baseURL,
  }) => {
    await (await page.context().newCDPSession(page)).send('Network.setCacheDisabled', { cacheDisabled: true });
    const loads = countScripts(page, /./);
    await page.goto(`${baseURL ?? ''}${path}`);
    await scrollThrough(page);
    await loads.settled();
    expect(loads.files()).not.toContain('page-viewer');
    loads.restart();
    await page.getByRole('button', { name: 'Walk through the piece' }).first().click();
    await expect(page.locator('.viewer-stage')).toBeFocused();
    await page.keyboard.press('ArrowDown');
    await page.getByRole('radio', { name: 'back' }).check();
    await loads.settled();
    expect(loads.files()).toContain('page-viewer');
    expect(loads.total(), loads.files()).toBeLessThanOrEqual(most);
  });
