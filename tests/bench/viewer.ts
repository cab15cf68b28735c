/**
 * What one step of the piece viewer costs in a browser, from the key to the painted picture: script, style, layout and
 * painting on the page's own thread, as the browser's trace has them, at most 16 ms. Counted is the time in which the
 * thread works, so that a busy machine does not show. On the lantern, 26 × 32, at full cord detail, from the front and
 * from the back, near and whole; and how long the first frame takes. Build first.
 */
import { existsSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { type CDPSession, chromium, type Page } from '@playwright/test';
import { browser } from '../../.config/scripts/browser.ts';
import { basePath, OUT } from '../../.config/scripts/place.ts';
import { staticServer } from '../../.config/scripts/static-server.ts';

/** ms that a step may take, so that it is there with the next frame. */
const MOST = 16;
/** ms from the button to the first frame. */
const FIRST = 500;
/** Steps of each kind, and the pause after each, in ms, in which the page comes to rest. */
const KNOT_STEPS = 20;
const ROW_STEPS = 8;
const PAUSE = 90;

/**
 * What the trace tells: the tasks alone, or their parts too. To tell the parts the browser counts the whole page before
 * each layout, so the sum is taken in steps of their own.
 */
const TASKS = ['toplevel', 'blink.user_timing', '__metadata'];
const TASKS_AND_PARTS = ['devtools.timeline', 'disabled-by-default-devtools.timeline', ...TASKS];
/** The page's own note of a key. */
const KEY = 'a-key';

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly ts: number;
  readonly dur?: number;
  /** The part of it in which the thread was at work, in µs. */
  readonly tdur?: number;
  readonly tid: number;
  readonly pid: number;
  readonly args?: { readonly name?: string };
}

/** What the parts of the work are called in a trace. */
const PARTS: Readonly<Record<string, readonly string[]>> = {
  script: ['EventDispatch'],
  style: ['UpdateLayoutTree'],
  layout: ['Layout'],
  paint: ['PrePaint', 'Paint', 'Layerize', 'Commit'],
};

const median = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[times.length >> 1] ?? 0;
const worst = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length * 0.9)] ?? 0;

/** Everything that happened while some work was done. */
async function traced(
  session: CDPSession,
  includedCategories: readonly string[],
  work: () => Promise<void>,
): Promise<TraceEvent[]> {
  const events: TraceEvent[] = [];
  const take = ({ value }: { value: unknown[] }): void => {
    events.push(...(value as TraceEvent[]));
  };
  session.on('Tracing.dataCollected', take);
  const complete = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
  await session.send('Tracing.start', {
    traceConfig: { includedCategories: [...includedCategories], excludedCategories: ['*'] },
    transferMode: 'ReportEvents',
  });
  await work();
  await session.send('Tracing.end');
  await complete;
  session.off('Tracing.dataCollected', take);
  return events;
}

interface Step {
  /** All tasks of the page's thread from the key on, in ms, and their known parts. */
  readonly all: number;
  readonly parts: Readonly<Record<string, number>>;
  /** What other threads spend on turning the painted lines into pixels. */
  readonly raster: number;
}

/** The work of each key that was pressed. */
function stepsOf(events: readonly TraceEvent[]): Step[] {
  const pages = events.filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain');
  const keys = events.filter(({ name }) => name === KEY);
  const page = pages.find(({ pid }) => pid === keys[0]?.pid);
  if (!page) throw new Error('The trace has no key in it.');
  const own = events.filter(({ ph, pid, tid }) => ph === 'X' && pid === page.pid && tid === page.tid);
  const sum = (some: readonly TraceEvent[]): number =>
    some.reduce((all, { dur = 0, tdur = dur }) => all + tdur / 1000, 0);
  return keys.map(({ ts }, i) => {
    // The task begins a little before its event.
    const [from, to] = [ts - 4000, (keys[i + 1]?.ts ?? Number.POSITIVE_INFINITY) - 4000];
    const within = (one: TraceEvent): boolean => one.ts >= from && one.ts < to;
    const work = own.filter(within);
    // What is painted inside of something painted is in its time already.
    const named = (names: readonly string[]): number => {
      let until = 0;
      return sum(
        work
          .filter(({ name }) => names.includes(name))
          .sort((a, b) => a.ts - b.ts)
          .filter(({ ts: start, dur = 0 }) => {
            const outer = start >= until;
            until = Math.max(until, start + dur);
            return outer;
          }),
      );
    };
    return {
      all: named(['ThreadControllerImpl::RunTask']),
      parts: Object.fromEntries(Object.entries(PARTS).map(([part, names]) => [part, named(names)])),
      raster: sum(events.filter((one) => one.ph === 'X' && one.name === 'RasterTask' && within(one))),
    };
  });
}

/** Opens the viewer. @returns ms from the press of the button to the first painted frame of the piece, files fetched */
async function openViewer(page: Page, address: string): Promise<number> {
  await page.addInitScript((name) => {
    addEventListener('keydown', () => performance.mark(name), { capture: true });
  }, KEY);
  await page.goto(`${address}charts/lantern/`);
  const button = page.getByRole('button', { name: 'Walk through the piece' });
  await button.scrollIntoViewIfNeeded();
  await page.waitForFunction(() => !document.querySelector('main astro-island[ssr]'));
  const first = await button.evaluate(async (element) => {
    const frame = (): Promise<number> => new Promise((resolve) => requestAnimationFrame(resolve));
    const pressed = performance.now();
    (element as HTMLButtonElement).click();
    while (!document.querySelector('.viewer-stage svg')) await frame();
    // The frame in which it stands there, and the next one, which begins when that is painted.
    await frame();
    return (await frame()) - pressed;
  });
  await page.locator('.viewer-stage:focus').waitFor();
  return first;
}

const press = async (page: Page, key: string, times: number): Promise<void> => {
  for (let i = 0; i < times; i += 1) {
    await page.keyboard.press(key);
    await page.waitForTimeout(PAUSE);
  }
};

const figure = (value: number): string => value.toFixed(1).padStart(6);

if (!existsSync(join(OUT, '404.html'))) {
  console.error(`Nothing is built in ${OUT}. Run npm run build first.`);
  process.exit(1);
}
const server = staticServer(OUT, basePath());
await new Promise<void>((resolve) => {
  server.listen(0, '127.0.0.1', resolve);
});
const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}${basePath()}`;
const seen = await chromium.launch({
  executablePath: await browser(),
  chromiumSandbox: process.getuid?.() !== 0,
  args: ['--disable-gpu'],
});
console.log(
  'A step of the viewer on 26 × 32 as cord, in the browser: median ms, and what nine of ten steps stay within.',
);
console.log(`${''.padEnd(34)} step 9 of 10 | script  style layout  paint | other threads`);
let slowest = 0;
const firsts: number[] = [];
for (const [side, near] of [
  ['front', 0],
  ['front', 2],
  ['back', 0],
] as const) {
  const page = await (
    await seen.newContext({ viewport: { width: 1280, height: 900 }, serviceWorkers: 'block' })
  ).newPage();
  firsts.push(await openViewer(page, address));
  const session = await page.context().newCDPSession(page);
  if (side === 'back') await page.keyboard.press('t');
  await press(page, '+', near);
  await press(page, 'ArrowDown', 12);
  for (const [what, key] of [
    ['a knot', 'ArrowRight'],
    ['a row', 'ArrowDown'],
  ] as const) {
    const walk = () => press(page, key, what === 'a row' ? ROW_STEPS : KNOT_STEPS);
    const all = stepsOf(await traced(session, TASKS, walk)).map((step) => step.all);
    const steps = stepsOf(await traced(session, TASKS_AND_PARTS, walk));
    const parts = Object.keys(PARTS).map((part) => figure(median(steps.map((step) => step.parts[part] ?? 0))));
    slowest = Math.max(slowest, median(all));
    console.log(
      `${`${what}, ${side}, ${near ? 'near' : 'whole'}`.padEnd(32)}${figure(median(all))} ${figure(worst(all))}  |${parts.join(' ')} | ${figure(median(steps.map(({ raster }) => raster)))}`,
    );
  }
  await page.context().close();
}
console.log(`  slowest step: ${slowest.toFixed(1)} ms (at most ${MOST})`);
console.log(`  first frame after the button: ${Math.max(...firsts).toFixed(0)} ms (at most ${FIRST})\n`);
await seen.close();
server.close();
