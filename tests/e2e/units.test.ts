import { expect, type Page, test } from '@playwright/test';
import type { UnitSystem } from '../../src/words/units.ts';
import {
  exerciseSheet,
  LESSON_NAMES,
  LESSONS,
  type LessonName,
  openLesson,
  press,
  readWithOwn,
  wakeAll,
} from './learner.ts';

/**
 * A unit of the other system, behind a figure or alone: how a length is told that did not follow the switch. Of inches
 * only those that no line may part from their figure, for “row 8 in which” tells no length.
 */
const LEFT_OVER: Readonly<Record<UnitSystem, RegExp>> = {
  inches: /\d\s*(?:mm|cm|m|millimetres?|centimetres?)(?![\w’])|^(?:mm|cm|m)$/,
  metric: /\d\u00a0(?:in|yd)(?!\w)|\d\s*(?:″|inch(?:es)?|yards?)(?!\w)|^(?:in|yd)$/,
};

/** What can be seen of a page or heard of it: its text and its drawings’, and the names and descriptions of its parts. */
async function told(page: Page): Promise<readonly { place: string; text: string; keepsMillimetres: boolean }[]> {
  return page.evaluate(() => {
    const found: { place: string; text: string; keepsMillimetres: boolean }[] = [];
    const hidden = (element: Element): boolean => element.closest('script, style, [hidden], [popover]') !== null;
    const shown = (element: Element): boolean => {
      for (let at: Element | null = element; at; at = at.parentElement)
        if (getComputedStyle(at).display === 'none') return false;
      return true;
    };
    const add = (element: Element, text: string) => {
      const exercise = element.closest('.exercise, .worked');
      const note = exercise?.querySelector('[data-units="inches"]');
      found.push({
        place: element.closest('[id]')?.id ?? element.tagName,
        text: text.replace(/[ \t\n]+/g, ' ').trim(),
        keepsMillimetres:
          note !== null && note !== undefined && shown(note) && /millimetres/.test(note.textContent ?? ''),
      });
    };
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    // A sentence can be parted over several nodes; the paragraph is what is read.
    const blocks = new Set<Element>();
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
      const block = node.parentElement?.closest(
        'p, li, dt, dd, td, th, h1, h2, h3, figcaption, label, legend, text, title, desc, span.unit, summary, button',
      );
      if (
        block &&
        !hidden(block) &&
        (shown(block) || (/^(title|desc)$/.test(block.tagName) && shown(block.closest('svg') ?? block)))
      )
        blocks.add(block);
    }
    const textOf = (node: Node): string => {
      if (node.nodeType === Node.TEXT_NODE) return node.textContent ?? '';
      if (!(node instanceof Element) || hidden(node)) return '';
      if (!/^(title|desc)$/.test(node.tagName) && getComputedStyle(node).display === 'none') return '';
      return [...node.childNodes].map(textOf).join('');
    };
    for (const block of blocks) add(block, textOf(block));
    for (const element of document.querySelectorAll('[aria-label], [aria-description], [alt]'))
      if (shown(element))
        add(
          element,
          ['aria-label', 'aria-description', 'alt'].map((name) => element.getAttribute(name) ?? '').join(' '),
        );
    return found;
  });
}

async function openEverything(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  // What wakes when it is seen is woken.
  await wakeAll(page);
}

async function expectOnly(page: Page, units: UnitSystem): Promise<number> {
  await expect(page.locator('html')).toHaveAttribute('data-units', units);
  const all = await told(page);
  const strange = all.filter(
    ({ text, keepsMillimetres }) => !keepsMillimetres && text.match(LEFT_OVER[units]) !== null,
  );
  expect(strange, page.url()).toEqual([]);
  const other = units === 'metric' ? 'inches' : 'metric';
  return all.filter(({ text }) => text.match(LEFT_OVER[other])).length;
}

const choose = (page: Page, units: UnitSystem) =>
  page.evaluate(
    (kept) =>
      localStorage.setItem('evenfold.preferences', JSON.stringify({ version: 1, figures: 'example', units: kept })),
    units,
  );

for (const units of ['metric', 'inches'] as const)
  test(`every lesson read in ${units} tells no length in other units, in sentences, plates and text for the ear`, async ({
    page,
  }) => {
    test.setTimeout(180_000);
    await page.goto('');
    await choose(page, units);
    let lengths = 0;
    for (const lesson of LESSON_NAMES) {
      await openLesson(page, lesson);
      if (units === 'metric')
        await page.evaluate(() => Object.assign(document.documentElement.dataset, { units: 'metric' }));
      await openEverything(page);
      lengths += await expectOnly(page, units);
    }
    // There is something to be told: bar, cord, cut list.
    expect(lengths).toBeGreaterThan(20);
  });

test('the other pages follow, too: plates, glossary, faults, cautions, charts and the plan of a piece', async ({
  page,
}) => {
  await page.goto('');
  await choose(page, 'inches');
  for (const path of ['plates/', 'glossary/', 'faults/', 'cautions/', 'charts/lantern/', 'piece/', 'practice/']) {
    await page.goto(path);
    await openEverything(page);
    await expectOnly(page, 'inches');
  }
});

test('an exercise that keeps to millimetres says so to those who read in inches, and to nobody else', async ({
  page,
}) => {
  const note = (id: string) => page.locator(`#${id} .question`).getByText('This exercise stays in millimetres');
  await openLesson(page, 'cutting');
  await expect(note('cut-length')).toBeHidden();
  await choose(page, 'inches');
  await page.reload();
  await expect(note('cut-length')).toBeVisible();
  const sheet = await exerciseSheet(page, 'cut-length');
  await press(sheet, 'Another like it');
  await expect(note('cut-length')).toBeVisible();
});

test('the switch in a lesson turns plates and sentences at once, read with own figures as well, and back', async ({
  page,
}) => {
  const lesson: LessonName = 'measuring';
  await openLesson(page, lesson);
  await readWithOwn(page, { capacity: 9, width: 13, height: 20 });
  const units = page.getByRole('radio', { name: 'inches' });
  await units.check();
  await openEverything(page);
  await expectOnly(page, 'inches');
  await expect(page.locator('#plate-ten-turns svg:visible')).toHaveAccessibleName(/\d\sin thick/);
  await page.getByRole('radio', { name: 'centimetres' }).check();
  await expectOnly(page, 'metric');
  expect(page.url()).toContain(LESSONS[lesson]);
});

test('bar and cord can be tried in inches: with a fraction as a ruler has it, by steps, and with a mistake told in inches', async ({
  page,
}) => {
  await page.goto('');
  await choose(page, 'inches');
  await openLesson(page, 'measuring');
  await openEverything(page);
  const bar = page.getByRole('textbox', { name: 'The bar is wide' });
  const field = page.locator('.measure', { has: bar });
  await bar.fill('1 5/8');
  await expect(page.locator('.measuring-try')).toContainText('along a bar of 1 5/8 in');
  await field.getByRole('button', { name: 'a little more' }).click();
  await expect(bar).toHaveValue('1.75');
  await expect(page.locator('.measuring-try')).toContainText('along a bar of 1¾ in');
  await bar.fill('0.01');
  await expect(field).toContainText(/You entered 0.01.in for the width of the bar\..*from 0.04.in to/);
  await expectOnly(page, 'inches');
});

test('a ring and a cord are entered in the units that were chosen, and are the same ring and cord in the others', async ({
  page,
}) => {
  await page.goto('piece/');
  await wakeAll(page);
  const cord = page.getByRole('textbox', { name: 'Cord diameter' });
  const length = page.getByRole('textbox', { name: 'One length of leading string' });
  await expect(cord).toHaveValue('1.2');
  await cord.fill('1.5');
  await page.getByRole('radio', { name: 'inches' }).check();
  await expect(cord).toHaveValue('0.059');
  await length.fill('72 1/2');
  await page.getByRole('radio', { name: 'centimetres' }).check();
  await expect(cord).toHaveValue('1.5');
  await expect(length).toHaveValue('1841.5');
  await page.reload();
  await expect(length).toHaveValue('1841.5');
});
