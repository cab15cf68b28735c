import { expect, type Page, test } from '@playwright/test';
import { extractText, getDocumentProxy } from 'unpdf';
import { LESSON_NAMES, LESSONS, openLesson } from './learner.ts';
import { chartOf, openPiece, withChart } from './piece-page.ts';

/** What a printer leaves of a sheet between the margins of the print sheet, in CSS pixels. */
const SHEETS = {
  A4: { width: Math.floor(((210 - 36) / 25.4) * 96), height: Math.floor(((297 - 34) / 25.4) * 96) },
  Letter: { width: Math.floor((8.5 - 36 / 25.4) * 96), height: Math.floor((11 - 34 / 25.4) * 96) },
} as const;
type Sheet = keyof typeof SHEETS;

const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();

interface Printed {
  readonly pages: number;
  readonly lines: string[];
  readonly text: string;
  /** The text of each page. */
  readonly sheets: string[];
}

async function printed(page: Page, format: Sheet): Promise<Printed> {
  const pdf = await getDocumentProxy(new Uint8Array(await page.pdf({ format })));
  const { totalPages, text } = await extractText(pdf, { mergePages: false });
  const whole = (text as string[]).join('\n');
  return {
    pages: totalPages,
    lines: whole.split('\n').map(plain),
    text: plain(whole),
    sheets: (text as string[]).map(plain),
  };
}

/** Words on buttons and beside fields: they mean nothing on paper. */
const controlWords = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [
      ...document.querySelectorAll<HTMLElement>(
        'main :is(button:not(.term), label, legend, option), main .forms :is(h2, .note, summary)',
      ),
    ]
      .filter((element) => element.checkVisibility() && !element.closest('.checklist, .entry, .exercise-form'))
      .map((element) => (element.textContent ?? '').replace(/\s+/g, ' ').trim())
      .filter((words) => words.length > 2),
  );

/** Figures that would be cut at the edge of a sheet: higher or wider than it, or allowed to break. */
async function cutFigures(page: Page, sheet: Sheet): Promise<string[]> {
  const room = SHEETS[sheet];
  await page.setViewportSize(room);
  await page.emulateMedia({ media: 'print' });
  const found = await page.evaluate(({ width, height }) => {
    const whole = (element: Element | null): boolean =>
      element !== null && (getComputedStyle(element).breakInside === 'avoid' || whole(element.parentElement));
    // A drawing within a drawing is a window in it: what lies beyond is told by the browser, and is not seen.
    return [...document.querySelectorAll('main figure, main svg:not(svg svg), main table.mark-grid')].flatMap(
      (figure) => {
        if (!figure.checkVisibility()) return [];
        const box = figure.getBoundingClientRect();
        // What other drawings refer to is kept in one that is not seen.
        if (box.width === 0 && box.height === 0) return [];
        const name = `${figure.localName} ${figure.id || figure.closest('[id]')?.id}`;
        const faults: string[] = [];
        if (box.height > height) faults.push(`${name}: ${Math.round(box.height)} high on a sheet of ${height}`);
        if (box.right > width + 1 || box.left < -1)
          faults.push(`${name}: ${Math.round(box.right)} wide on a sheet of ${width}`);
        if (!whole(figure)) faults.push(`${name}: may break over two sheets`);
        return faults;
      },
    );
  }, room);
  await page.emulateMedia({ media: null });
  return found;
}

for (const sheet of Object.keys(SHEETS) as Sheet[])
  test(`the plan of the heron on ${sheet}: every row, no control, no figure cut`, async ({ page }) => {
    await openPiece(page, '?chart=heron');
    const plan = withChart(chartOf('heron'), { capacity: 8 });
    await expect(page.getByText(/^Row 40, /).first()).toBeVisible();
    const told = await page.locator('.plan li p, .plan li:not(:has(p, button, .sum))').allInnerTexts();
    expect(told.length).toBeGreaterThan(200);
    const controls = await controlWords(page);
    expect(controls).toEqual(expect.arrayContaining(['Print the plan', 'How do you know?', 'The bar takes']));

    const { pages, lines, text } = await printed(page, sheet);
    expect(pages).toBeGreaterThanOrEqual(4);
    expect(pages).toBeLessThanOrEqual(16);
    for (const { row, knots } of plan.rows)
      expect(text).toMatch(new RegExp(`Row ${row}, (left to right|right to left): ${knots} knots?\\b`));
    for (const line of told) expect(text).toContain(plain(line));
    expect(lines.filter((line) => controls.includes(line))).toEqual([]);
    expect(text).not.toContain('needs script');
    expect(text).toContain(`1 of ${pages}`);
    expect(text).toContain(page.url());
    expect(await cutFigures(page, sheet)).toEqual([]);
  });

test('the largest piece that is likely, by size alone, has no figure cut either', async ({ page }) => {
  await openPiece(page);
  await page.getByRole('textbox', { name: 'Wide' }).fill('60');
  await page.getByRole('textbox', { name: 'High' }).fill('120');
  await page.getByRole('textbox', { name: 'The bar takes' }).fill('48');
  await expect(page.getByText(/^Row 120, /).first()).toBeVisible();
  for (const sheet of Object.keys(SHEETS) as Sheet[]) expect(await cutFigures(page, sheet), sheet).toEqual([]);
});

for (const name of LESSON_NAMES)
  test(`the lesson “${LESSONS[name]}” is a good sheet of paper: lines to write on, nothing folded away, no figure cut`, async ({
    page,
  }) => {
    await openLesson(page, name);
    const controls = await controlWords(page);
    const cases = await page
      .locator('.exercise')
      .evaluateAll((sheets) => sheets.map((sheet) => sheet.querySelector('details p')?.textContent ?? ''));
    const { pages, lines, text } = await printed(page, 'A4');
    expect(pages).toBeGreaterThanOrEqual(3);
    expect(pages).toBeLessThanOrEqual(18);
    expect(lines.filter((line) => controls.includes(line))).toEqual([]);
    // What is folded away on the screen lies open on paper: the first hint of each exercise.
    for (const hint of cases) expect(text).toContain(plain(hint));
    for (const sheet of Object.keys(SHEETS) as Sheet[]) expect(await cutFigures(page, sheet), sheet).toEqual([]);
    await page.emulateMedia({ media: 'print' });
    for (const sheet of await page.locator('.exercise').all())
      await expect(
        sheet.locator('.write-here, .write-lines, .tick-here, .place-here, .mark-grid').first(),
      ).toBeVisible();
    for (const control of await page.locator('input:not(.checklist input), select, textarea').all())
      await expect(control).toBeHidden();
  });

for (const format of Object.keys(SHEETS) as Sheet[])
  test(`on ${format} every fault stands on one sheet with its drawings`, async ({ page }) => {
    await page.goto('faults/');
    const faults = await page.locator('.fault').evaluateAll((sections) =>
      sections.map((section) => ({
        see: section.querySelector('h2')?.textContent ?? '',
        captions: [...section.querySelectorAll('.plate-caption')].map((caption) => caption.textContent ?? ''),
      })),
    );
    expect(faults.flatMap(({ captions }) => captions).length).toBeGreaterThanOrEqual(faults.length);
    const { sheets } = await printed(page, format);
    for (const { see, captions } of faults)
      for (const caption of captions)
        expect(
          sheets.filter((sheet) => sheet.includes(plain(see)) && sheet.includes(plain(caption))),
          `${see}: ${caption}`,
        ).toHaveLength(1);
  });

test('printed while its large view is open, a plate stands in its own place, and goes back to the large view', async ({
  page,
}) => {
  await openLesson(page, 'widening');
  const figure = page
    .locator('main figure')
    .filter({ has: page.locator('[data-plate-larger]') })
    .first();
  await figure.getByRole('button', { name: 'Larger' }).click();
  const large = page.locator('dialog.plate-large');
  await expect(large.locator('svg').first()).toBeVisible();
  await expect(figure.locator('[data-plate-ground] svg')).toHaveCount(0);
  await page.evaluate(() =>
    addEventListener('beforeprint', () => {
      const shown = document.querySelector('dialog.plate-large svg');
      document.body.dataset['printed'] = String(shown === null);
    }),
  );
  await page.pdf({ format: 'A4' });
  await expect(page.locator('body')).toHaveAttribute('data-printed', 'true');
  await expect(large.locator('svg').first()).toBeVisible();
  await large.getByRole('button', { name: 'Close' }).click();
  await expect(figure.locator('[data-plate-ground] svg').first()).toBeVisible();
  // Nothing of the closed view listens any longer.
  await page.pdf({ format: 'A4' });
  await expect(figure.locator('[data-plate-ground] svg').first()).toBeVisible();
});
