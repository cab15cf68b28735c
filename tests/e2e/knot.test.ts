import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { wallSize } from '../../src/components/keep-png.ts';
import {
  checkCrossing,
  crossingPlaces,
  drawModel,
  type KnotName,
  type StrandModel,
  type StrandOptions,
  strandModel,
} from '../../src/figures/strand/index.ts';
import { choiceWords, crossingVerdict, crossingWhere } from '../../src/words/crossing-words.ts';
import { stopSentence } from '../../src/words/knot-stages.ts';
import { capital } from '../../src/words/numbers.ts';
import { axeFinds } from './axe.ts';
import { openLesson } from './learner.ts';

/** The plate of a knot in a lesson, as it is built. */
async function plateOf(page: Page, id: string): Promise<Locator> {
  const plate = page.locator(`#plate-${id}`);
  await plate.scrollIntoViewIfNeeded();
  return plate;
}

async function forwardStepper(page: Page): Promise<Locator> {
  await openLesson(page, 'firstRow');
  const plate = await plateOf(page, 'forward-knot');
  await plate.getByRole('button', { name: /^Step through it/ }).click();
  await expect(plate.getByRole('region', { name: 'Forward knot, step by step' })).toBeVisible();
  return plate;
}

const momentOf = (plate: Locator): Promise<number> => plate.getByRole('slider').inputValue().then(Number);
const sliderText = (plate: Locator) => plate.getByRole('slider').getAttribute('aria-valuetext');
const stageSaid = (plate: Locator): Locator => plate.getByRole('status').first();

/** The lines of a drawing, whatever its ids are. */
const linesIn = (svg: string): string[] => [...svg.matchAll(/ d="([^"]*)"/g)].map(([, d = '']) => d);
const linesShown = async (plate: Locator): Promise<string[]> =>
  linesIn((await plate.locator('.knot-drawing').innerHTML()) ?? '');
const linesOf = (knot: KnotName, options: StrandOptions): string[] => linesIn(drawModel(strandModel(knot, options)));

test('a plate becomes its stepper in place, with keys alone, and is a plate again when it is closed', async ({
  page,
}) => {
  await openLesson(page, 'firstRow');
  const plate = await plateOf(page, 'forward-knot');
  const control = plate.getByRole('button', { name: /^Step through it ?: Forward knot$/ });
  await control.focus();
  await page.keyboard.press('Enter');
  await expect(plate.getByRole('button', { name: 'Next stage' })).toBeFocused();
  await expect(plate.locator('.stages')).toBeHidden();
  await expect(stageSaid(plate)).toContainText('Stage 1 of 8: at rest');
  await page.keyboard.press('Space');
  await expect(stageSaid(plate)).toContainText(stopSentence('forward', 'laid-over'));
  await page.keyboard.press('ArrowRight');
  await expect(stageSaid(plate)).toContainText('Stage 3 of 8: passed behind');
  await page.keyboard.press('ArrowLeft');
  await expect(stageSaid(plate)).toContainText('Stage 2 of 8: laid over');
  expect(await linesShown(plate)).toEqual(linesOf('forward', { moment: 'laid-over' }));
  await expect(plate.locator('.knot-drawing svg')).toHaveAccessibleName(/^Forward knot, laid over The base string/);
  for (let stage = 3; stage <= 8; stage += 1) await page.keyboard.press('Space');
  await expect(stageSaid(plate)).toContainText('Stage 8 of 8: drawn up');
  expect(await linesShown(plate)).toEqual(linesOf('forward', { moment: 'drawn-up' }));
  await page.keyboard.press('Space');
  await expect(stageSaid(plate)).toContainText('Stage 1 of 8');
  await plate.getByRole('button', { name: 'Back to the plate' }).press('Enter');
  await expect(control).toBeFocused();
  await expect(plate.locator('.stages')).toBeVisible();
  await expect(plate.getByRole('slider')).toHaveCount(0);
});

for (const [width, size] of [
  [320, 'a small phone'],
  [390, 'a phone'],
  [1280, 'a wide window'],
] as const)
  test(`nothing shifts when the stepper comes, late as it may be, on ${size}`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await openLesson(page, 'firstRow');
    const plate = await plateOf(page, 'forward-backward-knot');
    let letIn = () => {};
    const waits = new Promise<void>((go) => {
      letIn = go;
    });
    await page.route(/wake[^/]*\.js/, async (route) => {
      await waits;
      await route.continue();
    });
    await plate.getByRole('button', { name: /^Step through it/ }).click();
    const below = () =>
      plate.locator('figcaption').evaluate((caption) => caption.getBoundingClientRect().top + scrollY);
    const before = await below();
    letIn();
    await expect(plate.getByRole('slider')).toBeVisible();
    expect(await below()).toBeCloseTo(before, 0);
    for (let stage = 1; stage <= 8; stage += 1) {
      await page.keyboard.press('ArrowRight');
      expect(await below()).toBeCloseTo(before, 0);
    }
  });

test('the slider goes to any moment, says where it is, and stands on every stage', async ({ page }) => {
  const plate = await forwardStepper(page);
  const slider = plate.getByRole('slider', { name: 'Moment' });
  await slider.focus();
  await page.keyboard.press('End');
  expect(await sliderText(plate)).toBe('stage 8 of 8, drawn up');
  await page.keyboard.press('ArrowLeft');
  expect(await sliderText(plate)).toBe('on the way to stage 8 of 8, drawn up');
  const { stops } = strandModel('forward', { moment: 0 });
  for (const [i, { t, name }] of stops.entries()) {
    await slider.fill(String(Math.round(t * 100) / 100));
    expect(await sliderText(plate)).toMatch(new RegExp(`^stage ${i + 1} of 8`));
    expect(await linesShown(plate)).toEqual(linesOf('forward', { moment: name }));
  }
  await slider.fill('0.25');
  expect(await linesShown(plate)).toEqual(linesOf('forward', { moment: 0.25 }));
  await expect(plate.locator('.knot-marks li')).toHaveText(stops.map((_, i) => String(i + 1)));
});

test('a slow replay moves by itself, and stands still when it is told to', async ({ page }) => {
  const plate = await forwardStepper(page);
  await plate.getByRole('button', { name: 'Play slowly' }).click();
  await expect.poll(() => momentOf(plate)).toBeGreaterThan(0.02);
  await plate.getByRole('button', { name: 'Pause' }).click();
  const paused = await linesShown(plate);
  await page.evaluate(() => new Promise((later) => setTimeout(later, 300)));
  expect(await linesShown(plate)).toEqual(paused);
  await plate.getByRole('button', { name: 'Play slowly' }).click();
  await page.keyboard.press('ArrowRight');
  await expect(plate.getByRole('button', { name: 'Play slowly' })).toBeVisible();
});

test.describe('with reduced motion', () => {
  test.use({ contextOptions: { reducedMotion: 'reduce' } });

  test('all stages stand side by side, and a replay shows one after another and nothing between', async ({ page }) => {
    await page.clock.install();
    const plate = await forwardStepper(page);
    const strip = plate.getByRole('list', { name: 'All stages side by side' }).getByRole('listitem');
    await expect(strip).toHaveCount(8);
    await expect(strip.nth(7)).toContainText(stopSentence('forward', 'drawn-up'));
    await expect(strip.nth(0)).toHaveAttribute('aria-current', 'step');
    await plate.getByRole('button', { name: 'Stage by stage' }).click();
    await page.clock.runFor(3000);
    expect(await linesShown(plate)).toEqual(linesOf('forward', { moment: 'at-rest' }));
    await page.clock.runFor(1500);
    expect(await linesShown(plate)).toEqual(linesOf('forward', { moment: 'laid-over' }));
    await expect(strip.nth(1)).toHaveAttribute('aria-current', 'step');
    await page.clock.runFor(30_000);
    await expect(stageSaid(plate)).toContainText('Stage 8 of 8');
    await expect(plate.getByRole('button', { name: 'Stage by stage' })).toBeVisible();
  });
});

test('the left hand, a bundle and one’s own colours change drawing and words together', async ({ page }) => {
  const plate = await forwardStepper(page);
  await page.keyboard.press('Space');
  await plate.getByText('Hand, strings and colours').click();
  await plate.getByRole('radio', { name: /^left-handed/ }).check();
  await expect(plate.getByRole('region', { name: 'Backward knot, step by step' })).toBeVisible();
  await expect(stageSaid(plate)).toContainText('Lay the leading string over the base string, to the left.');
  expect(await linesShown(plate)).toEqual(linesOf('backward', { moment: 'laid-over' }));
  const { transform, scale } = await plate.locator('.knot-drawing svg').evaluate((svg) => getComputedStyle(svg));
  expect([transform, scale]).toEqual(['none', 'none']);

  await plate.getByRole('button', { name: 'one more' }).click();
  await plate.getByRole('button', { name: 'one more' }).click();
  await expect(stageSaid(plate)).toContainText('Lay the leading string over the bundle, to the left.');
  expect(await linesShown(plate)).toEqual(linesOf('backward', { moment: 'laid-over', strands: 3 }));
  await plate.getByText('This picture in words').click();
  await expect(
    plate.getByRole('paragraph').filter({ hasText: 'It passes over all 3 strings of the bundle.' }),
  ).toBeVisible();

  await plate.getByLabel('Colour of the leading string').selectOption('rust');
  await expect(plate.locator('.knot-drawing [stroke^="var(--string-rust"]').first()).toBeAttached();
  await expect(plate.locator('.knot-drawing [stroke^="var(--cord-lead"]')).toHaveCount(0);
});

/** The place that the circle marks, by where it is drawn. */
async function circled(plate: Locator, model: StrandModel): Promise<number> {
  const circle = plate.locator('.knot-drawing circle').last();
  const [x, y] = await Promise.all(['cx', 'cy'].map((name) => circle.getAttribute(name).then(Number)));
  const places = crossingPlaces(model);
  const found = places.findIndex((place) => Math.abs(place.x - (x ?? 0)) < 0.01 && Math.abs(place.y - (y ?? 0)) < 0.01);
  expect(found).toBeGreaterThanOrEqual(0);
  return found;
}

test('“which string is over here?” is asked of the crossing in the circle, and judged in words', async ({ page }) => {
  await openLesson(page, 'finishing');
  const plate = await plateOf(page, 'square-and-spiral');
  await plate.getByRole('button', { name: /^Step through it/ }).click();
  await plate.getByText('Which string is over here?').click();
  await expect(plate.getByText('No strings cross in this picture.')).toBeVisible();
  await expect(plate.locator('.knot-drawing circle')).toHaveCount(0);
  await plate.getByRole('slider').fill('1');
  const model = strandModel('square-knot', { strands: 2 });
  const figure = { ...model, knot: 'square-knot' as const };
  const outcomes = new Set<string>();
  for (let turn = 0; turn < 8 && outcomes.size < 3; turn += 1) {
    const at = await circled(plate, model);
    const place = crossingPlaces(model)[at];
    if (!place) throw new Error('no crossing');
    const answers = plate.getByRole('group', { name: /over/ });
    await expect(answers).toHaveAccessibleDescription(new RegExp(crossingWhere(place, figure).slice(0, 60)));
    // Nothing tells the answer before it is asked for.
    await expect(plate.locator('[data-found], [aria-pressed="true"]')).toHaveCount(0);
    for (const choice of [...place.choices].sort(
      (a, b) => (found(at, a) === 'right' ? 1 : 0) - (found(at, b) === 'right' ? 1 : 0),
    )) {
      const verdict = checkCrossing(model, at, choice);
      if (!verdict) throw new Error('no verdict');
      outcomes.add(verdict.outcome);
      await answers.getByRole('button', { name: capital(choiceWords(choice, figure)), exact: true }).click();
      await expect(plate.getByRole('status').last()).toHaveText(crossingVerdict(verdict, choice, place, figure));
      const large = plate.getByRole('button', { name: 'See this crossing large' });
      if (verdict.outcome === 'right') await expect(large).toHaveCount(0);
      else if (!(await plate.locator('.knot-large svg').isVisible())) {
        await large.click();
        await expect(plate.locator('.knot-large svg')).toBeVisible();
      }
    }
    await plate.getByRole('button', { name: 'Another one like it' }).click();
    await expect.poll(() => circled(plate, model)).not.toBe(at);
    await expect(plate.locator('.knot-large')).toHaveCount(0);
  }
  expect(outcomes).toEqual(new Set(['right', 'under', 'elsewhere']));

  function found(at: number, choice: Parameters<typeof checkCrossing>[2]) {
    return checkCrossing(model, at, choice)?.outcome;
  }
});

test('a plate of two knots steps through either', async ({ page }) => {
  await openLesson(page, 'finishing');
  const plate = await plateOf(page, 'square-and-spiral');
  await plate.getByRole('button', { name: /^Step through it/ }).click();
  await plate.getByRole('slider').fill('1');
  await plate.getByText('Hand, strings and colours').click();
  await plate.getByRole('radio', { name: 'square knot gone wrong: a spiral' }).check();
  expect(await linesShown(plate)).toEqual(linesOf('square-spiral', { strands: 2 }));
});

test('the stepper can be shown large, works there, and closes from there', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 720 });
  const plate = await forwardStepper(page);
  await plate.getByRole('button', { name: /^Larger/ }).click();
  const large = page.getByRole('dialog');
  await large.getByRole('button', { name: 'Next stage' }).press('ArrowRight');
  await expect(large.getByRole('status').first()).toContainText('Stage 2 of 8');
  const drawn = await large.locator('.knot-drawing svg').boundingBox();
  expect(drawn?.height).toBeGreaterThan(450);
  await large.getByRole('button', { name: 'Back to the plate' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(plate.locator('.stages')).toBeVisible();
  await expect(plate.getByRole('button', { name: /^Step through it/ })).toBeFocused();
});

test('axe finds nothing in a stepper that is wide open, on a light and on a dark device', async ({ page }) => {
  test.setTimeout(120_000);
  const plate = await forwardStepper(page);
  await plate.getByRole('slider').fill('1');
  for (const folded of ['This picture in words', 'Hand, strings and colours', 'Which string is over here?'])
    await plate.getByText(folded, { exact: true }).click();
  await plate.getByRole('group', { name: /over/ }).getByRole('button').first().click();
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    expect(await axeFinds(page, { within: '#plate-forward-knot' }), colorScheme).toEqual([]);
  }
});

test('on paper a stepper is the plate that it was made of', async ({ page }) => {
  const plate = await forwardStepper(page);
  await page.emulateMedia({ media: 'print' });
  await expect(plate.locator('.stages')).toBeVisible();
  await expect(plate.locator('.knot-stepper')).toBeHidden();
});

test('a plate is kept as a PNG on white, as large as a wall shows it', async ({ page }) => {
  await page.goto('plates/');
  const button = page.getByRole('button', { name: /^PNG ?: keep Forward knot, Lay the leading string over/ }).first();
  await button.scrollIntoViewIfNeeded();
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  expect(download.suggestedFilename()).toBe('forward-laid-over.png');
  const bytes = readFileSync(await download.path());
  expect([...bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  const { left, right, top, bottom } = strandModel('forward', { moment: 0 }).frame;
  const size = wallSize(right - left, bottom - top);
  expect({ width: bytes.readUInt32BE(16), height: bytes.readUInt32BE(20) }).toEqual(size);
  await expect(page.locator('[data-png-kept]')).toHaveText('forward-laid-over.png is kept.');
  // The first corner is ground, and in the middle runs the leading string.
  const pixels = await page.evaluate(async (data) => {
    const bitmap = await createImageBitmap(new Blob([Uint8Array.from(atob(data), (sign) => sign.charCodeAt(0))]));
    const pen = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
    pen?.drawImage(bitmap, 0, 0);
    const at = (x: number, y: number) => [...(pen?.getImageData(x, y, 1, 1).data ?? [])];
    return [at(2, 2), at(bitmap.width / 4, (bitmap.height * 5) / 14)];
  }, bytes.toString('base64'));
  expect(pixels[0]).toEqual([255, 255, 255, 255]);
  expect(pixels[1]).not.toEqual([255, 255, 255, 255]);
});

test('the plates of the gallery have the ground of the page, light or dark, as the reader chose', async ({ page }) => {
  await page.goto('plates/');
  const shown = () =>
    page.evaluate(async () => {
      const pictures = [...document.querySelectorAll<HTMLImageElement>('.gallery-plate img')].slice(0, 2);
      const visible = pictures.filter((picture) => picture.checkVisibility());
      const [picture] = visible;
      if (visible.length !== 1 || !picture) return [];
      await picture.decode();
      const pen = new OffscreenCanvas(20, 20).getContext('2d');
      pen?.drawImage(picture, 0, 0, 20, 20);
      return [...(pen?.getImageData(0, 0, 1, 1).data ?? [])].map((part) => (part > 128 ? 'light' : 'dark')).slice(0, 3);
    });
  await page.emulateMedia({ colorScheme: 'light' });
  await expect.poll(shown).toEqual(['light', 'light', 'light']);
  await page.emulateMedia({ colorScheme: 'dark' });
  await expect.poll(shown).toEqual(['dark', 'dark', 'dark']);
  await page.evaluate(() => document.documentElement.setAttribute('data-theme', 'light'));
  await expect.poll(shown).toEqual(['light', 'light', 'light']);
});
