import { expect, type Page, test } from '@playwright/test';
import { getDocumentProxy } from 'unpdf';
import { TOLD } from '../../src/store/progress/told.ts';
import { axeFinds } from './axe.ts';
import { LESSON_NAMES, LESSONS, type LessonName } from './learner.ts';
import { awake, openOther } from './showing.ts';

/** The smallest text that is read from eight metres, in pixels at 720 lines. */
const SMALLEST = 28;

const path = (lesson: LessonName, hash = ''): string => `lessons/${LESSONS[lesson]}/frames/${hash}`;
async function openRoom(page: Page, lesson: LessonName = 'sum', hash = ''): Promise<void> {
  await page.goto(path(lesson, hash));
  await awake(page);
}
const nowIn = (page: Page) => page.locator('[data-frame][data-now]');
const expectFrame = (page: Page, frame: number) => expect(nowIn(page)).toHaveAttribute('data-frame', String(frame));

/** Looks at the frame that is shown, in the page: what is wrong is text that is cut, or too small for the room. */
const looker = (page: Page) =>
  page.evaluateHandle((smallest) => {
    return (): string[] => {
      const frame = document.querySelector('[data-frame][data-now]');
      const paper = frame?.querySelector('.frame-paper')?.getBoundingClientRect();
      const body = frame?.querySelector('[data-frame-body]');
      const sheet = frame?.querySelector('.frame-sheet');
      if (!frame || !paper || !body || !sheet) return ['no frame is shown'];
      const faults: string[] = [];
      const unit = paper.height / 720;
      const paged = frame.hasAttribute('data-pages');
      if (!paged && (body.scrollHeight > body.clientHeight + 1 || body.scrollWidth > body.clientWidth + 1))
        if (getComputedStyle(body).overflowY !== 'visible') faults.push(`${body.scrollHeight} in ${body.clientHeight}`);
      const walker = document.createTreeWalker(sheet, NodeFilter.SHOW_TEXT);
      const range = document.createRange();
      while (walker.nextNode()) {
        const text = walker.currentNode as Text;
        const element = text.parentElement;
        const words = text.data.trim();
        if (!words || !element || element.closest('title, desc, script, style, .for-screen-readers')) continue;
        range.selectNodeContents(text);
        const { width, left, right, top, bottom } = range.getBoundingClientRect();
        if (width === 0) continue;
        const { visibility, clipPath, fontSize } = getComputedStyle(element);
        if (visibility === 'hidden' || clipPath !== 'none') continue;
        const drawing = element.closest<SVGSVGElement>('svg')?.getScreenCTM()?.a ?? 1;
        const size = (Number.parseFloat(fontSize) * drawing) / unit;
        if (size < smallest - 0.1) faults.push(`${size.toFixed(1)}: ${words.slice(0, 30)}`);
        const cut =
          left < paper.left - 1 || right > paper.right + 1 || top < paper.top - 1 || bottom > paper.bottom + 1;
        if (cut && !paged) faults.push(`cut: ${words.slice(0, 30)}`);
        if (element.tagName !== 'H3') continue;
        for (const button of body.querySelectorAll('.exercise-buttons button')) {
          const over = button.getBoundingClientRect();
          if (over.width > 0 && over.left < right && over.right > left && over.top < bottom && over.bottom > top)
            faults.push(`a button lies over ${words}`);
        }
      }
      return faults;
    };
  }, SMALLEST);
const faultsOf = async (page: Page): Promise<string[]> => (await looker(page)).evaluate((look) => look());

/**
 * Walks a showing by key to where it ends, and says what is wrong at any step. All of it in the page, since asking it
 * step by step takes longer than the walk; that keys of a keyboard lead through a lesson is seen elsewhere.
 */
async function walk(page: Page, key: 'ArrowRight' | 'ArrowLeft'): Promise<{ faults: string[]; frames: Set<string> }> {
  const look = await looker(page);
  const { faults, frames } = await page.evaluate(
    async ({ look, key }) => {
      const faults: string[] = [];
      const frames: string[] = [];
      const drawn = () => new Promise(requestAnimationFrame);
      /** Every form that is seen answers to the hand. */
      const answers = () =>
        [...document.querySelectorAll('[data-frame][data-now] form')].every(
          (form) => form.getClientRects().length === 0 || !form.closest('astro-island[ssr]'),
        );
      for (let last = ''; ; ) {
        const hash = location.hash || '#1';
        if (hash === last) return { faults, frames };
        last = hash;
        frames.push(hash.replace(/\..*/, ''));
        for (const until = performance.now() + 5000; !answers(); await drawn())
          if (performance.now() > until) {
            faults.push(`${hash} does not answer to the hand`);
            break;
          }
        for (const fault of look()) faults.push(`${hash} ${fault}`);
        document.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
        // Whoever watches the page has seen the change.
        await Promise.resolve();
      }
    },
    { look, key },
  );
  return { faults, frames: new Set(frames) };
}

test('two windows show a lesson from start to end by keys, with the network off', async ({ context, page }) => {
  test.setTimeout(120_000);
  await openRoom(page);
  const speaker = await openOther(context, page);
  await expect(speaker.locator('[data-frames]')).toHaveAttribute('data-look', 'speaker');
  await context.setOffline(true);
  const count = await page.locator('[data-frame]').count();
  const met = new Set<string>();
  const by = [speaker, page];
  for (let turn = 0; turn < 400; turn += 1) {
    const hash = await speaker.evaluate(() => location.hash || '#1');
    met.add(hash.replace(/\..*/, ''));
    const from = by[turn % 2] ?? page;
    await from.keyboard.press(turn % 3 ? 'PageDown' : 'ArrowRight');
    if (await speaker.locator('[data-ends]').count()) {
      const ended = await page.evaluate(() => location.hash);
      if (ended === hash) break;
    }
  }
  expect(met.size).toBe(count);
  await expectFrame(page, count);
  await expectFrame(speaker, count);
  await speaker.keyboard.press('Home');
  await expectFrame(page, 1);
});

test('the room keeps its picture while the speaker looks on, and goes dark', async ({ context, page }) => {
  await openRoom(page, 'sum', '#4');
  const speaker = await openOther(context, page);
  await expectFrame(speaker, 4);
  await speaker.keyboard.press('z');
  await speaker.keyboard.press('ArrowRight');
  await speaker.keyboard.press('ArrowRight');
  await expectFrame(speaker, 6);
  await expectFrame(page, 4);
  await expect(speaker.getByText('The room keeps frame 4.')).toBeVisible();
  await speaker.getByRole('button', { name: 'Hold the picture' }).click();
  await expectFrame(page, 6);
  await speaker.keyboard.press('b');
  await expect(page.locator('[data-dark]')).toHaveCount(1);
  await expect(speaker.getByText('The room is dark.')).toBeVisible();
  await expect(speaker.locator('[data-dark]')).toHaveCount(0);
  await page.keyboard.press('.');
  await expect(page.locator('[data-dark]')).toHaveCount(0);
});

test('the speaker has notes, the next frame, the time and the plan', async ({ context, page }) => {
  await openRoom(page);
  const speaker = await openOther(context, page);
  await expect(speaker.locator('[data-soon]')).toHaveAttribute('data-frame', '2');
  await expect(speaker.locator('[data-next]')).toContainText('You will be able to');
  const noted = page.locator('[data-frame]:has([data-from="writer"])').first();
  const number = await noted.getAttribute('data-frame');
  const said = ((await noted.locator('[data-from="writer"]').first().textContent()) ?? '').trim();
  expect(said.length).toBeGreaterThan(10);
  await speaker.getByLabel('Frame', { exact: false }).locator('visible=true').first().waitFor();
  await speaker.keyboard.type(number ?? '');
  await speaker.keyboard.press('Enter');
  await expect(speaker.getByRole('region', { name: 'Notes' })).toContainText(said);
  await expect(nowIn(page).locator('[data-notes]')).toBeHidden();
  await speaker.keyboard.press('t');
  await expect(speaker.locator('[data-used]')).toHaveText(/^0:0[1-9]$/);
  await expect(speaker.locator('[data-plan]')).toContainText('plan');
});

test('a number and Enter, the field, and all frames lead to a frame; back and reload keep it', async ({ page }) => {
  await openRoom(page);
  await page.keyboard.type('12');
  await expect(page.locator('[data-typed]')).toBeVisible();
  await page.keyboard.press('Enter');
  await expectFrame(page, 12);
  expect(page.url()).toMatch(/#12$/);
  await page.keyboard.press('o');
  await expect(page.locator('[data-frame="12"] .frame-number')).toBeFocused();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await expectFrame(page, 13);
  await expect(page.locator('[data-look="room"]')).toHaveCount(1);
  await page.reload();
  await awake(page);
  await expectFrame(page, 13);
  await page.goBack();
  await expectFrame(page, 12);
  const field = page.getByLabel('Frame', { exact: true });
  await field.fill('20');
  await field.press('Enter');
  await expectFrame(page, 20);
});

test('a step is part of the address', async ({ page }) => {
  await openRoom(page, 'sum', '#2');
  await page.keyboard.press('ArrowRight');
  expect(page.url()).toMatch(/#2\.1$/);
  const points = nowIn(page).getByRole('listitem');
  await expect(points).toHaveCount(2);
  await page.reload();
  await awake(page);
  await expect(points).toHaveCount(2);
  await page.keyboard.press('ArrowLeft');
  await expect(points).toHaveCount(1);
});

test('what the speaker draws and points at is on the same place of the room’s frame, and is kept nowhere', async ({
  context,
  page,
}) => {
  await page.setViewportSize({ width: 1024, height: 768 });
  await openRoom(page, 'sum', '#4');
  const speaker = await openOther(context, page);
  const box = async (window: Page) =>
    (await nowIn(window).locator('.frame-paper').boundingBox()) ?? { x: 0, y: 0, width: 1, height: 1 };
  const on = await box(speaker);
  await speaker.keyboard.press('d');
  await speaker.mouse.move(on.x + on.width * 0.25, on.y + on.height * 0.5);
  await speaker.mouse.down();
  await speaker.mouse.move(on.x + on.width * 0.5, on.y + on.height * 0.75, { steps: 4 });
  await speaker.mouse.up();
  const line = nowIn(page).locator('[data-ink] path');
  await expect(line).toHaveCount(1);
  const drawn = await line.evaluate((path) => {
    const { left, right, top, bottom } = path.getBoundingClientRect();
    return { left, right, top, bottom };
  });
  const room = await box(page);
  expect((drawn.left - room.x) / room.width).toBeCloseTo(0.25, 1);
  expect((drawn.bottom - room.y) / room.height).toBeCloseTo(0.75, 1);
  await speaker.keyboard.press('p');
  await speaker.mouse.move(on.x + on.width * 0.5, on.y + on.height * 0.5);
  await expect(page.locator('[data-pointer]')).toBeVisible();
  await speaker.keyboard.press('Escape');
  await expect(page.locator('[data-pointer]')).toBeHidden();
  await page.keyboard.press('w');
  await expect(line).toHaveCount(0);
  await expect(nowIn(speaker).locator('[data-ink] path')).toHaveCount(0);
  expect(await page.evaluate(() => JSON.stringify([{ ...localStorage }, { ...sessionStorage }]))).toBe('[{},{}]');
});

test('either window can be closed and opened again, and picks up where the showing is', async ({ context, page }) => {
  await openRoom(page, 'sum', '#5');
  const speaker = await openOther(context, page);
  await speaker.keyboard.press('ArrowRight');
  await expectFrame(page, 6);
  await speaker.close();
  await page.keyboard.press('ArrowRight');
  await expectFrame(page, 7);
  const again = await openOther(context, page);
  await expectFrame(again, 7);
  await page.close();
  await again.keyboard.press('ArrowRight');
  await expectFrame(again, 8);
  const room = await openOther(context, again);
  await expect(room.locator('[data-frames]')).toHaveAttribute('data-look', 'room');
  await expectFrame(room, 8);
  await room.reload();
  await awake(room);
  await again.keyboard.press('ArrowRight');
  await expectFrame(room, 9);
});

test('nobody else is dragged along: not another tab of the lesson, not a copy of the room’s tab', async ({
  context,
  page,
}) => {
  await openRoom(page, 'sum', '#3');
  const speaker = await openOther(context, page);
  const reader = await context.newPage();
  await openRoom(reader, 'sum', '#2');
  const copy = await context.newPage();
  const name = await page.evaluate(() => window.name);
  await copy.addInitScript((given) => {
    if (window.name === '') window.name = given;
  }, name);
  await copy.goto(path('sum', '#2'));
  await awake(copy);
  await expect.poll(() => copy.evaluate(() => window.name)).not.toBe(name);
  await speaker.keyboard.press('End');
  await expect(nowIn(page)).not.toHaveAttribute('data-frame', '3');
  await expectFrame(reader, 2);
  const stayed = await nowIn(copy).getAttribute('data-frame');
  expect(['2', '3']).toContain(stayed);
  await reader.keyboard.press('b');
  await expect(reader.locator('[data-dark]')).toHaveCount(1);
  await expect(page.locator('[data-dark]')).toHaveCount(0);
});

test('a tap on the right goes on and on the left goes back, and a tap on a control does neither', async ({ page }) => {
  await openRoom(page, 'sum', '#4');
  const { width, height } = page.viewportSize() ?? { width: 0, height: 0 };
  await page.mouse.click(width * 0.8, height * 0.8);
  await expectFrame(page, 5);
  await page.mouse.click(width * 0.2, height * 0.8);
  await expectFrame(page, 4);
  const exercise = await page.locator('[data-frame]:has(#sum-half-worked)').getAttribute('data-frame');
  await page.goto(path('sum', `#${exercise}`));
  await nowIn(page).getByRole('textbox').last().click();
  await page.keyboard.type('3b');
  await expectFrame(page, Number(exercise));
  await expect(page.locator('[data-dark]')).toHaveCount(0);
});

test.describe('with a finger', () => {
  test.use({ hasTouch: true });

  test('a swipe goes on and back', async ({ page }) => {
    await openRoom(page, 'sum', '#4');
    const swipe = (from: number, to: number) =>
      page.locator('[data-deck]').evaluate(
        (deck, [start, end]) => {
          const at = (clientX: number) => ({
            clientX,
            clientY: 300,
            pointerId: 7,
            pointerType: 'touch',
            bubbles: true,
          });
          const target = deck.querySelector('[data-now] .frame-sheet') ?? deck;
          target.dispatchEvent(new PointerEvent('pointerdown', at(start ?? 0)));
          target.dispatchEvent(new PointerEvent('pointerup', at(end ?? 0)));
        },
        [from, to],
      );
    await swipe(900, 500);
    await expectFrame(page, 5);
    await swipe(300, 700);
    await expectFrame(page, 4);
  });
});

test('an exercise is worked in the room with the room’s figures, and none of it stays on the device', async ({
  page,
}) => {
  await openRoom(page, 'sum');
  await page.keyboard.press('r');
  const panel = page.getByRole('dialog', { name: 'Figures and colours' });
  await panel.getByRole('radio', { name: 'the room’s figures' }).check();
  for (const [label, value] of [
    ['Your bar takes', '12'],
    ['Your chart is wide', '22'],
    ['Your chart is high', '30'],
  ] as const) {
    await panel.getByLabel(label).fill(value);
    await panel.getByLabel(label).press('Tab');
  }
  await expect(panel.getByRole('radio', { name: /the room’s figures: 22 × 30/ })).toBeChecked();
  await page.keyboard.press('Escape');
  await expect(panel).toBeHidden();
  const frame = Number(await page.locator('[data-frame]:has(#sum-half-worked)').getAttribute('data-frame'));
  await page.keyboard.type(String(frame));
  await page.keyboard.press('Enter');
  await expectFrame(page, frame);
  await expect(nowIn(page).locator('form > .question')).toContainText('22 columns wide');
  await nowIn(page).getByRole('textbox').last().fill('99');
  await nowIn(page).getByRole('button', { name: 'Check' }).click();
  await expect(nowIn(page).getByRole('status')).not.toBeEmpty();
  expect(await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('evenfold.')))).toEqual([]);
  await page.keyboard.press('Escape');
  const plate = await page.locator('[data-frame]:has(#plate-bar-capacity)').getAttribute('data-frame');
  await page.goto(path('sum', `#${plate}`));
  await awake(page);
  await expect(nowIn(page).locator('svg title')).toContainText('22 columns');
  await expect.poll(() => faultsOf(page)).toEqual([]);
});

test('figures that the speaker enters hold in the room, and in no other tab', async ({ context, page }) => {
  await openRoom(page, 'sum', '#8');
  const reader = await context.newPage();
  await openRoom(reader, 'sum', '#8');
  await page.bringToFront();
  const speaker = await openOther(context, page);
  await speaker.keyboard.press('r');
  const panel = speaker.getByRole('dialog', { name: 'Figures and colours' });
  await panel.getByRole('radio', { name: 'the room’s figures' }).check();
  await panel.getByLabel('Your chart is wide').fill('22');
  await panel.getByLabel('Your chart is wide').press('Tab');
  await expect(nowIn(page).locator('svg title')).toContainText('22 columns');
  await expect(nowIn(speaker).locator('svg title')).toContainText('22 columns');
  await expect(nowIn(reader).locator('svg title')).toContainText('26 columns');
  await panel.getByRole('radio', { name: /the lantern/ }).check();
  await expect(nowIn(page).locator('svg title')).toContainText('26 columns');
});

test('a high chart is shown whole, and then its rows large enough to be counted, with their numbers', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 720 });
  await openRoom(page, 'outline');
  const frame = await page.locator('[data-kind="plate"]:has(.fig-placing)').first().getAttribute('data-frame');
  await page.keyboard.type(frame ?? '');
  await page.keyboard.press('Enter');
  /** Numbers that are seen on the frame: of the columns above the chart, and of the rows beside it; and a row's height. */
  const seen = () =>
    nowIn(page).evaluate((now) => {
      const places = [...now.querySelectorAll('svg text')]
        .map((text) => ({ number: Number(text.textContent), box: text.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0);
      const least = Math.min(...places.map(({ box }) => box.top));
      const rows = places.filter(({ box }) => box.top > least + 20).sort((one, other) => one.number - other.number);
      const [first, last] = [rows[0], rows.at(-1)];
      if (!first || !last) throw new Error('no rows have numbers');
      return {
        columns: places.filter(({ box }) => box.top <= least + 20).map(({ number }) => number),
        rows: rows.map(({ number }) => number),
        height: (last.box.top - first.box.top) / (last.number - first.number),
      };
    });
  const whole = await seen();
  expect(whole.rows).toEqual(expect.arrayContaining([1, 32]));
  expect(whole.height).toBeLessThan(24);
  await page.keyboard.press('ArrowRight');
  const upper = await seen();
  await page.keyboard.press('ArrowRight');
  const lower = await seen();
  for (const part of [upper, lower]) {
    expect(part.height).toBeGreaterThan(30);
    expect(part.columns).toEqual(expect.arrayContaining([1, 26]));
  }
  expect(Math.max(...upper.rows)).toBeLessThan(Math.min(...lower.rows));
  expect(lower.rows).toContain(32);
  await expectFrame(page, Number(frame));
  await page.keyboard.press('ArrowRight');
  await expectFrame(page, Number(frame) + 1);
  await page.keyboard.press('o');
  const viewBox = () => page.locator(`[data-frame="${frame}"] .fig-placing`).getAttribute('viewBox');
  expect(await viewBox()).toMatch(/^0 0 /);
});

test('a room explains aloud and compares, and what is said of an answer has room on the frame', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 720 });
  await openRoom(page, 'sum');
  const showFrameOf = async (id: string) => {
    const frame = await page.locator(`[data-frame]:has(#${id})`).getAttribute('data-frame');
    await page.keyboard.type(frame ?? '');
    await page.keyboard.press('Enter');
  };
  await showFrameOf('why-two');
  await expect(nowIn(page).getByRole('textbox')).toHaveCount(0);
  await nowIn(page).getByRole('button', { name: 'Compare with a model answer' }).click();
  await expect(nowIn(page).getByText('A maker might say:')).toBeVisible();
  expect(await faultsOf(page)).toEqual([]);
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await showFrameOf('folds-to-cut');
  const before = await nowIn(page).getAttribute('data-fit');
  await nowIn(page).getByRole('textbox').fill('1');
  await page.keyboard.press('Enter');
  await expect(nowIn(page).locator('.exercise-say')).not.toBeEmpty();
  await nowIn(page).getByRole('button', { name: 'Show the working' }).click();
  await expect(nowIn(page).locator('.exercise-say .working li').first()).toBeInViewport();
  expect(Number(await nowIn(page).getAttribute('data-fit'))).toBeGreaterThan(Number(before));
});

test('an exercise with other figures is fitted again: no chart to mark and no place of a fault is cut', async ({
  page,
}) => {
  test.setTimeout(60_000);
  await page.setViewportSize({ width: 1280, height: 720 });
  for (const [lesson, id] of [
    ['closing', 'closing-spot'],
    ['shape', 'mark-corners'],
  ] as const) {
    await openRoom(page, lesson);
    const frame = await page.locator(`[data-frame]:has(#${id})`).getAttribute('data-frame');
    await page.keyboard.type(frame ?? '');
    await page.keyboard.press('Enter');
    while ((await page.locator(`#${id}`).getAttribute('data-phase')) === 'worked')
      await page.keyboard.press('ArrowRight');
    for (let more = 0; more < 16; more += 1) {
      expect(await faultsOf(page), `${id}, ${more}`).toEqual([]);
      const asked = page.locator(`#${id} form > .question`);
      const before = (await asked.textContent()) ?? '';
      // In a frame that looks for the place of a fault the button is not seen yet.
      await page
        .locator(`#${id}`)
        .getByRole('button', { name: 'Another like it', includeHidden: true })
        .dispatchEvent('click');
      await expect(asked).not.toHaveText(before);
    }
  }
});

test.describe('with colours that the reader has chosen', () => {
  test.use({ contextOptions: { forcedColors: 'active' } });

  test('frames are read, controls have edges, and pointer and drawing stand out', async ({ context, page }) => {
    await openRoom(page, 'sum', '#4');
    const speaker = await openOther(context, page);
    const colours = (window: Page, selector: string) =>
      window
        .locator(selector)
        .first()
        .evaluate((element) => {
          const { color, backgroundColor, borderTopColor, borderTopWidth, borderTopStyle, stroke } =
            getComputedStyle(element);
          const drawn = document.createElement('span');
          document.body.append(drawn);
          const system = (name: string) => {
            drawn.style.color = name;
            return getComputedStyle(drawn).color;
          };
          const found = {
            color,
            backgroundColor,
            stroke,
            edge: borderTopStyle === 'none' ? 0 : Number.parseFloat(borderTopWidth),
            edgeColour: borderTopColor,
            canvas: system('Canvas'),
            text: system('CanvasText'),
            highlight: system('Highlight'),
          };
          drawn.remove();
          return found;
        });
    const words = await colours(page, '[data-now] .frame-body p');
    expect(words.color).toBe(words.text);
    for (const button of await speaker.locator('.reins [data-do]').all()) {
      const { edge, edgeColour, canvas } = await colours(
        speaker,
        `.reins [data-do="${await button.getAttribute('data-do')}"]`,
      );
      expect(edge).toBeGreaterThan(0);
      expect(edgeColour).not.toBe(canvas);
    }
    const standing = () =>
      speaker.locator('[data-do="draw"]').evaluate((button) => getComputedStyle(button).outlineStyle);
    const before = await standing();
    await speaker.keyboard.press('d');
    await expect(speaker.locator('[data-do="draw"]')).toHaveAttribute('aria-pressed', 'true');
    expect(await standing()).not.toBe(before);
    const paper = (await nowIn(speaker).locator('.frame-paper').boundingBox()) ?? { x: 0, y: 0, width: 1, height: 1 };
    await speaker.mouse.move(paper.x + paper.width * 0.3, paper.y + paper.height * 0.8);
    await speaker.mouse.down();
    await speaker.mouse.move(paper.x + paper.width * 0.6, paper.y + paper.height * 0.9, { steps: 3 });
    await speaker.mouse.up();
    const line = await colours(page, '[data-now] [data-ink]');
    expect(line.stroke).toBe(line.highlight);
    await speaker.keyboard.press('p');
    await speaker.mouse.move(paper.x + paper.width * 0.5, paper.y + paper.height * 0.5);
    await expect(page.locator('[data-pointer]')).toBeVisible();
    const pointer = await colours(page, '[data-pointer]');
    expect(pointer.edgeColour).toBe(pointer.highlight);
  });
});

test('a case is worked line by line, and then the exercise takes its place', async ({ page }) => {
  const frame = 'sum-worked';
  await openRoom(page);
  const number = await page.locator(`[data-frame]:has(#${frame})`).getAttribute('data-frame');
  await page.goto(path('sum', `#${number}`));
  await awake(page);
  await expect(nowIn(page).locator('form')).toBeHidden();
  await expect(nowIn(page).locator('.worked-case .working li').nth(1)).toBeHidden();
  const lines = await nowIn(page).locator('.worked-case .working li').count();
  for (let line = 0; line < lines; line += 1) await page.keyboard.press('ArrowRight');
  await expect(nowIn(page).locator('form')).toBeVisible();
  await expect(nowIn(page).locator('.worked-case')).toBeHidden();
});

for (const theme of ['light', 'dark'] as const)
  test(`axe finds nothing in a ${theme} room, in the speaker’s window, among all frames and in the panels`, async ({
    context,
    page,
  }) => {
    test.setTimeout(180_000);
    // Colours that are still on their way from one theme to the other are nobody's contrast.
    const still = { colorScheme: theme, reducedMotion: 'reduce' } as const;
    await page.emulateMedia(still);
    await openRoom(page);
    const check = async (window: Page, where: string) => expect(await axeFinds(window), where).toEqual([]);
    // One frame of each kind: what they are made of is looked at in the lessons.
    const kinds = await page
      .locator('[data-frame]:not([hidden])')
      .evaluateAll((all) => [...new Map(all.map((one) => [(one as HTMLElement).dataset['kind'], one.id])).values()]);
    for (const number of kinds) {
      await page.evaluate((hash) => {
        location.hash = hash;
      }, number);
      await expectFrame(page, Number(number));
      await check(page, `frame ${number}`);
    }
    for (const key of ['o', '?', 'r']) {
      await page.keyboard.press(key);
      await check(page, `after ${key}`);
      await page.keyboard.press('Escape');
    }
    const speaker = await openOther(context, page);
    await speaker.emulateMedia(still);
    await check(speaker, 'the speaker’s window');
  });

test.describe('with reduced motion', () => {
  test.use({ contextOptions: { reducedMotion: 'reduce' } });

  test('nothing moves by itself', async ({ page }) => {
    await openRoom(page);
    const moving = await page.locator('.frames, .frames *').evaluateAll((all) =>
      all
        .filter((element) => {
          const { animationName, transitionDuration } = getComputedStyle(element);
          return (
            animationName !== 'none' || transitionDuration.split(',').some((time) => Number.parseFloat(time) > 0.01)
          );
        })
        .map((element) => element.outerHTML.slice(0, 80)),
    );
    expect(moving).toEqual([]);
  });
});

test.describe('without a script', () => {
  test.use({ javaScriptEnabled: false });

  test('the frames stand one under the other, each whole, with no dead control', async ({ page }) => {
    await page.goto(path('sum'));
    await expect(page.locator('[data-frame]:not([hidden])').last()).toBeVisible();
    await expect(page.locator('[data-reins], [data-desk]').locator('visible=true')).toHaveCount(0);
    const cut = await page
      .locator('.frame-paper')
      .evaluateAll((all) =>
        all.filter((one) => one.scrollHeight > one.clientHeight + 2).map((one) => one.parentElement?.id),
      );
    expect(cut).toEqual([]);
  });
});

for (const format of ['A4', 'Letter'] as const)
  test(`the hand-out has six frames a page on ${format}, with the notes under them`, async ({ page }) => {
    await openRoom(page);
    const frames = await page.locator('[data-frame]:not([hidden])').count();
    // What a printer leaves of the sheet between its margins.
    await page.setViewportSize({ width: format === 'A4' ? 657 : 680, height: 900 });
    await page.emulateMedia({ media: 'print' });
    const note = page.locator('[data-from="writer"]').first();
    await expect(note).toBeVisible();
    for (const notes of await page.locator('[data-frame]:has([data-from="writer"])').all())
      expect(await notes.evaluate((frame) => frame.scrollHeight - frame.clientHeight)).toBeLessThanOrEqual(1);
    const pdf = await getDocumentProxy(new Uint8Array(await page.pdf({ format })));
    expect(pdf.numPages).toBe(Math.ceil(frames / 6));
  });

test('a lesson that is read loads nothing of this, and its page shows none of the marks', async ({ page }) => {
  const loaded: string[] = [];
  page.on('response', async (response) => {
    if (/javascript|css/.test(response.headers()['content-type'] ?? '')) loaded.push(await response.text());
  });
  await page.goto(`lessons/${LESSONS.sum}/`);
  await page.waitForLoadState('networkidle');
  expect(loaded.length).toBeGreaterThan(0);
  expect(loaded.filter((text) => /BroadcastChannel|frame-sheet|data-reins/.test(text))).toEqual([]);
  await expect(page.locator('[data-mark], [data-notes]')).toHaveCount(0);
  await expect(page.getByRole('link', { name: 'Show this lesson to a room' })).toBeVisible();
});

/** Asks a frame’s exercise with other figures, and waits until they stand there. */
async function anotherLikeIt(page: Page, id: string): Promise<void> {
  const form = page.locator(`#${id} form`);
  const before = (await form.getAttribute('data-asked')) ?? '';
  // In a frame that looks for the place of a fault the button is not seen yet.
  await form.getByRole('button', { name: 'Another like it', includeHidden: true }).dispatchEvent('click');
  await expect(form).not.toHaveAttribute('data-asked', before);
}

/**
 * Gives an answer that is wrong, as the kind of exercise has it: in every figure, in a cell, in a choice, a place and its
 * name, in knots or steps in a wrong order, in no point of what was explained. Some ways of answering may be right by
 * chance, so each `turn` answers otherwise. Says what the exercise made of it.
 */
function answerWrongly(page: Page, id: string, turn: number): Promise<string> {
  return page.evaluate(
    async ({ id, turn, told }) => {
      const form = document.querySelector<HTMLFormElement>(`#${id} form`);
      if (!form) throw new Error(`${id} has no form`);
      const all = <E extends HTMLElement>(wanted: string) => [...form.querySelectorAll<E>(wanted)];
      for (const field of all<HTMLInputElement>(
        '.entries input:not([type="radio"], [readonly], [disabled]), .whole-number input:not([readonly], [disabled])',
      )) {
        field.value = '97';
        field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      }
      const cells = all('[data-cell]');
      cells[Math.floor(cells.length / 2)]?.click();
      for (const choice of form.querySelectorAll('.entries fieldset, .choices, .entry.spot:not(:has(~ .spot))')) {
        const ways = [...choice.querySelectorAll<HTMLInputElement>('input:not([disabled])')];
        ways[turn % ways.length]?.click();
      }
      for (let knot = 0; knot < 4; knot += 1) all(`.acts [data-act]`)[(turn + 3) % 7]?.click();
      const later = all('.movers button:nth-child(2):not([aria-disabled="true"])');
      later[turn % later.length]?.click();
      all('.say > button')[0]?.click();
      const said = Date.now() + 5000;
      while (form.querySelector('.model:empty') && Date.now() < said) await new Promise(requestAnimationFrame);
      // What stood there before says nothing of this answer: the exercise tells its page when it has judged.
      const outcome = new Promise<string>((resolve) => {
        form.addEventListener(told, (event) => {
          const { outcome } = (event as CustomEvent<{ outcome?: string }>).detail;
          if (outcome) resolve(outcome);
        });
        setTimeout(() => resolve('nothing'), 5000);
      });
      form.requestSubmit();
      return outcome;
    },
    { id, turn, told: TOLD },
  );
}

/** Has places of a fault checked, one after the other, until one of them is judged as wanted. */
function checkPlace(page: Page, id: string, wanted: 'right' | 'wrong'): Promise<void> {
  return page.evaluate(
    async ({ id, wanted }) => {
      const places = document.querySelector(`#${id} .spot`);
      for (const place of places?.querySelectorAll('input') ?? []) {
        place.click();
        document.querySelector<HTMLElement>(`#${id} .spotting > button`)?.click();
        const said = Date.now() + 5000;
        while (!places?.hasAttribute('data-verdict') && Date.now() < said) await new Promise(requestAnimationFrame);
        if (places?.getAttribute('data-verdict') === wanted) return;
      }
      throw new Error(`${id} has no ${wanted} place`);
    },
    { id, wanted },
  );
}

/** What is wrong with a frame on which an answer has been judged: what is asked and the verdict have to be seen. */
function unseenOn(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const body = document.querySelector('[data-frame][data-now] [data-frame-body]');
    if (!body) return ['no frame is shown'];
    const seen = body.getBoundingClientRect();
    return ['form > .question', '.exercise-say [data-outcome]', '.exercise-say > :last-child'].flatMap((part) => {
      const place = body.querySelector(part)?.getBoundingClientRect();
      if (place && place.height > 0 && place.top > seen.top - 1 && place.bottom < seen.bottom + 1) return [];
      return [`${part} at ${place?.top} to ${place?.bottom}, in ${seen.top} to ${seen.bottom}`];
    });
  });
}

for (const lesson of LESSON_NAMES)
  test(`every step of “${LESSONS[lesson]}” is whole, with nothing below 28 of 720 lines, with other figures and a wrong answer too`, async ({
    page,
  }) => {
    test.setTimeout(180_000);
    await page.setViewportSize({ width: 1280, height: 720 });
    await openRoom(page, lesson);
    // There at one size and back at the other: opening and fitting a lesson takes longer than walking through it.
    const there = await walk(page, 'ArrowRight');
    expect(there.faults, '1280 × 720').toEqual([]);
    expect(there.frames.size).toBe(await page.locator('[data-frame]:not([hidden])').count());
    expect(there.frames.size).toBeGreaterThan(15);
    await page.setViewportSize({ width: 1920, height: 1080 });
    const back = await walk(page, 'ArrowLeft');
    expect(back.faults, '1920 × 1080').toEqual([]);
    expect(back.frames).toEqual(there.frames);
    await page.setViewportSize({ width: 1280, height: 720 });
    const ids = await page
      .locator('[data-frame]:not([hidden]) .exercise')
      .evaluateAll((all) => all.map(({ id }) => id));
    expect(ids.length).toBeGreaterThan(3);
    const faults: string[] = [];
    for (const id of ids) {
      const exercise = page.locator(`#${id}`);
      const look = async (when: string) => {
        for (const fault of await faultsOf(page)) faults.push(`${id}, ${when}: ${fault}`);
      };
      const frame = await page.locator(`[data-frame]:has(#${id})`).getAttribute('data-frame');
      await page.evaluate((hash) => {
        location.hash = hash ?? '';
      }, frame);
      await expectFrame(page, Number(frame));
      while ((await exercise.getAttribute('data-phase')) === 'worked') await page.keyboard.press('ArrowRight');
      await expect(exercise.locator('form')).toHaveAttribute('data-asked', /./);
      for (const when of ['other figures', 'others again']) {
        await anotherLikeIt(page, id);
        await look(when);
      }
      const verdict = exercise.locator('.exercise-say [data-outcome]');
      const answer = async (when: string) => {
        let outcome = '';
        for (let turn = 0; turn < 4 && outcome !== 'not-right'; turn += 1)
          outcome = await answerWrongly(page, id, turn);
        expect(outcome, `${id}, ${when}`).toBe('not-right');
        await expect(verdict, id).toHaveAttribute('data-outcome', 'not-right');
        await expect(exercise.locator('.exercise-say .slips, .follow-up').first()).toBeAttached();
        await look(when);
        await expect.poll(() => unseenOn(page), `${id}, ${when}`).toEqual([]);
      };
      // A place is looked for first, and what is said of it has to be seen too.
      if ((await exercise.getAttribute('data-phase')) === 'where') {
        await checkPlace(page, id, 'wrong');
        await expect(exercise.locator('.exercise-say .slips')).toBeAttached();
        await look('a wrong place');
        await page.keyboard.press('ArrowRight');
        await answer('a wrong place and a name');
        await checkPlace(page, id, 'right');
      }
      await answer('a wrong answer');
      if (process.env['SHOTS']) await page.screenshot({ path: `${process.env['SHOTS']}/${lesson}-${id}.png` });
    }
    expect(faults).toEqual([]);
  });

test('a high chart to mark is shown in bands of rows that can be told apart, and arrow keys go from one to the next', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 720 });
  await openRoom(page, 'closing');
  const frame = await page.locator('[data-frame]:has(#closing-mark)').getAttribute('data-frame');
  await page.keyboard.type(frame ?? '');
  await page.keyboard.press('Enter');
  const rows = nowIn(page).locator('.mark-grid tr');
  const seen = rows.locator('visible=true');
  expect(await rows.count()).toBeGreaterThan(25);
  const first = await seen.count();
  expect(first).toBeGreaterThan(5);
  expect(first).toBeLessThanOrEqual(18);
  for (const row of await seen.all()) expect((await row.boundingBox())?.height).toBeGreaterThan(28);
  await nowIn(page).locator(`[data-cell="${first}-1"]`).click();
  await page.keyboard.press('ArrowDown');
  const cell = nowIn(page).locator(`[data-cell="${first + 1}-1"]`);
  await expect(cell).toBeFocused();
  await page.keyboard.press('Space');
  await expect(cell).toHaveAttribute('aria-pressed', 'true');
  await expect(nowIn(page).locator(`[data-cell="${first}-1"]`)).toBeHidden();
  await page.keyboard.press('ArrowUp');
  await expect(nowIn(page).locator(`[data-cell="${first}-1"]`)).toBeFocused();
  expect(await faultsOf(page)).toEqual([]);
});
