import { expect, type Locator, type Page, test } from '@playwright/test';
import {
  capacityRange,
  formatChart,
  inspect,
  type Plan,
  parseChart,
  pitches,
  planFit,
  planPiece,
} from '../../src/solver/index.ts';
import { chartWords } from '../../src/words/chart-words.ts';
import { finishStepWords } from '../../src/words/finish-words.ts';
import { fitWords } from '../../src/words/fit-words.ts';
import { problemWords } from '../../src/words/problems.ts';
import { span } from '../../src/words/units.ts';
import { warningWords } from '../../src/words/warning-words.ts';
import { awake } from './learner.ts';
import { chartOf, knotsPlanned, knotsSaid, openPiece, planOf, rowHead, withChart } from './piece-page.ts';

const part = (page: Page, name: string): Locator => page.getByRole('region', { name, exact: true });
const rowHeads = (page: Page): Locator =>
  part(page, 'Row by row').getByText(/^Row \d+, (left to right|right to left): \d+ knots?(, [^.]*)?$/);
const figureIn = (page: Page, label: string): Locator =>
  page.locator('main').getByRole('textbox', { name: label, exact: true });

/** Every row of the plan on the page is this plan’s, with its counts and its colours. */
async function expectRows(page: Page, plan: Plan): Promise<void> {
  await expect(rowHeads(page)).toHaveText(plan.rows.map(rowHead));
  const told = await part(page, 'Row by row').locator('ol > li').allInnerTexts();
  expect(told.map(knotsSaid)).toEqual(knotsPlanned(plan));
}

test('a chart of the index is planned on one’s own ring: every row, with the solver’s counts and the chart’s colours', async ({
  page,
}) => {
  await page.goto('charts/');
  await page.getByRole('link', { name: /^Plan it\s*: Pear$/ }).click();
  await awake(page.locator('main'));
  await figureIn(page, 'The bar takes').fill('12');
  const plan = withChart(chartOf('pear'), { capacity: 12 });
  await expectRows(page, plan);
  await expect(part(page, 'Gathering and finishing').locator(':scope > ol > li')).toHaveText(
    plan.finish.steps.map((step) => finishStepWords(step)),
  );
  await expect(part(page, 'What to cut').getByRole('listitem').first()).toContainText(`Cut ${plan.fit.folds} pieces`);
  await expect(page.getByRole('combobox', { name: 'Chart' })).toHaveValue('pear');
});

test('another chart chosen later is still chosen after a reload', async ({ page }) => {
  await openPiece(page, '?chart=pear');
  await page.getByRole('combobox', { name: 'Chart' }).selectOption('thistle');
  const thistle = chartOf('thistle');
  await expect(rowHeads(page)).toHaveCount(thistle.height);
  await page.reload();
  await awake(page.locator('main'));
  await expect(page.getByRole('combobox', { name: 'Chart' })).toHaveValue('thistle');
  await expect(rowHeads(page)).toHaveCount(thistle.height);
});

test.describe('a chart as text', () => {
  const buoy = chartOf('little-buoy');
  const text = formatChart(buoy);

  async function paste(page: Page, pasted: string): Promise<Locator> {
    await page.getByRole('radio', { name: 'my own, as text' }).check();
    const field = page.getByRole('textbox', { name: 'Chart as text' });
    await field.fill(pasted);
    return field;
  }

  test('is planned as soon as it can be read', async ({ page }) => {
    await openPiece(page);
    const field = await paste(page, text);
    await expect(field).toHaveAccessibleDescription('This text is a chart, and the plan below uses it.');
    await expectRows(page, withChart(buoy, { capacity: 8 }));
  });

  test('with a mistake is told its line and character, and the last plan stays until it is mended', async ({
    page,
  }) => {
    await openPiece(page);
    const field = await paste(page, text);
    await expectRows(page, withChart(buoy, { capacity: 8 }));
    const lines = text.split('\n');
    const wrong = lines.with(8, (lines[8] ?? '').replace(/^./, '?')).join('\n');
    const read = parseChart(wrong);
    if (read.ok) throw new Error('This text has no mistake.');
    expect(chartWords(read.problem)).toMatch(/^Line 9, character 1: /);
    await field.fill(wrong);
    await expect(field).toHaveAccessibleDescription(
      `${chartWords(read.problem)} The plan below still shows the last chart that could be read.`,
    );
    await expect(field).toHaveValue(wrong);
    await expectRows(page, withChart(buoy, { capacity: 8 }));
    const wider = lines.map((line, index) => (index > 5 && line !== '' ? `..${line}..` : line)).join('\n');
    await field.fill(wider);
    const mended = parseChart(wider);
    if (!mended.ok) throw new Error('This text has a mistake.');
    await expectRows(page, withChart(mended.chart, { capacity: 8 }));
  });

  test('is there again after a reload', async ({ page }) => {
    await openPiece(page);
    await paste(page, text);
    await expect(rowHeads(page)).toHaveCount(buoy.height);
    await page.reload();
    await awake(page.locator('main'));
    await expect(page.getByRole('textbox', { name: 'Chart as text' })).toHaveValue(text);
    await expectRows(page, withChart(buoy, { capacity: 8 }));
  });
});

test('by size alone a plan has no colours and no warnings about them', async ({ page }) => {
  await openPiece(page);
  await page.getByRole('radio', { name: 'no picture yet, only its size' }).check();
  await figureIn(page, 'Wide').fill('20');
  await figureIn(page, 'High').fill('24');
  await figureIn(page, 'The bar takes').fill('10');
  await expectRows(page, planOf({ width: 20, height: 24, capacity: 10 }));
  await expect(part(page, 'Before you begin')).toBeHidden();
});

test('a bar that was measured takes a range of columns, and one of them is chosen', async ({ page }) => {
  await openPiece(page);
  await page.getByRole('radio', { name: 'I measured the bar and the cord' }).check();
  await figureIn(page, 'Cord diameter').fill('1,5');
  await figureIn(page, 'Bar, from end to end').fill('30');
  const pitch = pitches({ diameter: 1.5, kind: 'soft' });
  if (!pitch.ok) throw new Error('No pitch comes of this cord.');
  const range = capacityRange({ barWidth: 30, columnPitch: pitch.column });
  if (!range.ok) throw new Error('No capacity comes of this bar.');
  await expect(
    page.getByText(`An estimate: the bar takes ${span(range.low, range.high)} columns, most likely ${range.likely}.`),
  ).toBeVisible();
  await page.getByRole('button', { name: `Plan with ${range.likely}`, exact: true }).click();
  await expect(figureIn(page, 'The bar takes')).toHaveValue(String(range.likely));
  await expectRows(page, planOf({ width: 12, height: 14, capacity: range.likely }));
});

test('a chart that is too wide for the ring is refused with what would work, and what would work does', async ({
  page,
}) => {
  await openPiece(page, '?chart=heron');
  await figureIn(page, 'The bar takes').fill('3');
  const heron = chartOf('heron');
  const refused = planPiece({ width: heron.width, height: heron.height, capacity: 3, maxBundle: 8 });
  if (refused.ok) throw new Error('The solver can plan this piece after all.');
  const said = part(page, 'This can’t be made as it stands');
  await expect(said).toContainText(problemWords(refused.problem));
  await expect(part(page, 'Row by row')).toBeHidden();
  const { smallestCapacity } = refused.problem.values;
  await figureIn(page, 'The bar takes').fill(String(smallestCapacity));
  await expect(said).toBeHidden();
  await expectRows(page, withChart(heron, { capacity: Number(smallestCapacity) }));
});

test('another way to share the strings is planned whole, and the answer comes back', async ({ page }) => {
  await openPiece(page, '?chart=pear');
  await figureIn(page, 'The bar takes').fill('13');
  const chart = chartOf('pear');
  const plan = withChart(chart, { capacity: 13 });
  const [other] = plan.alternatives;
  if (!other) throw new Error('This piece has no other way.');
  await expectRows(page, plan);
  await part(page, 'The fitting sum').getByText('Other ways to share the strings').click();
  const way = page.getByRole('listitem').filter({ hasText: fitWords(other) });
  await way.getByRole('button', { name: 'Plan with this' }).press('Enter');
  await expect(page.getByText(`You chose another split: ${fitWords(other)}.`)).toBeVisible();
  const second = planFit({ ...plan, height: chart.height, fit: other, chart });
  if (!second.ok) throw new Error('The solver can’t plan the other way.');
  await expectRows(page, second);
  // It is one's own figures by now: the next visit plans with it.
  await page.reload();
  await expectRows(page, second);
  await page.getByRole('button', { name: 'Go back to the answer above' }).press('Enter');
  await expectRows(page, plan);
  // The button is gone, and whoever goes by keys is still at the sum.
  await expect(part(page, 'The fitting sum').locator(':focus')).toHaveCount(1);
});

test('what a careful maker would warn about stands before the rows', async ({ page }) => {
  await openPiece(page, '?chart=heron');
  const plan = withChart(chartOf('heron'), { capacity: 8 });
  if (!plan.chart) throw new Error('The plan has lost its chart.');
  const { fit, outline, rows, chart } = plan;
  const warnings = inspect({ chart, fit, bundles: outline, rows }).map((warning) => {
    const { found, why, todo } = warningWords(warning, chart.palette);
    return `${found} ${why} ${todo}`;
  });
  expect(warnings.length).toBeGreaterThan(3);
  await expect(part(page, 'Before you begin').getByRole('listitem')).toHaveText(warnings);
});

test('a piece that begins on the right goes the other way, and so does the left hand’s', async ({ page }) => {
  await openPiece(page, '?chart=pear');
  await figureIn(page, 'The bar takes').fill('12');
  await page.getByRole('group', { name: 'Row 1 begins on the' }).getByRole('radio', { name: 'right' }).check();
  const right = withChart(chartOf('pear'), { capacity: 12, startSide: 'right' });
  expect(right.rows[0]?.direction).toBe('leftward');
  await expectRows(page, right);
  await page.getByRole('group', { name: 'Row 1 begins on the' }).getByRole('radio', { name: 'left' }).check();
  await page.getByRole('radio', { name: 'left hand' }).check();
  await expect(
    page.getByRole('group', { name: 'Row 1 begins on the' }).getByRole('radio', { name: 'right' }),
  ).toBeChecked();
  await expectRows(page, right);
});

test('an odd chart is planned with a lone string or with a carried end', async ({ page }) => {
  await openPiece(page, '?chart=heron');
  await figureIn(page, 'The bar takes').fill('12');
  await page.getByRole('radio', { name: 'a carried end' }).check();
  const plan = withChart(chartOf('heron'), { capacity: 12, oddMethod: 'carried-end' });
  await expectRows(page, plan);
  await expect(part(page, 'The fitting sum').getByText(/The one too many is the carried end/)).toBeVisible();
});

test('a piece may end at full width, or close to bundles of another size as far as they go', async ({ page }) => {
  await openPiece(page, '?chart=pear');
  await figureIn(page, 'The bar takes').fill('12');
  const pear = chartOf('pear');
  await page.getByRole('radio', { name: 'at full width' }).check();
  await expectRows(page, withChart(pear, { capacity: 12, closingBundle: 1 }));
  await page.getByRole('radio', { name: 'with bundles of another size' }).check();
  await figureIn(page, 'Bundles in the last row').fill('3');
  await expectRows(page, withChart(pear, { capacity: 12, closingBundle: 3 }));
});

test('lengths are in inches once that is chosen, and a swatch takes the place of estimates', async ({ page }) => {
  await openPiece(page, '?chart=pear');
  const cut = part(page, 'What to cut').getByRole('listitem').first();
  await expect(cut).toContainText(/about .*\scm/);
  await page.getByRole('radio', { name: 'inches' }).check();
  await expect(cut).toContainText(/about .*\sin\b/);
  await expect(part(page, 'What to cut')).not.toContainText(/\scm\b/);
  await page.getByText('I have tied a swatch').click();
  const before = (await cut.textContent()) ?? '';
  await figureIn(page, 'Rows of the swatch').fill('10');
  await figureIn(page, 'Their height').fill('31');
  await expect(page.getByText('Your swatch is used in this plan.')).toBeVisible();
  await expect(cut).not.toHaveText(before);
});

test('the gap beside the bar says how many strands pass', async ({ page }) => {
  await openPiece(page);
  await page.getByText('How many strands pass the ring?').click();
  await figureIn(page, 'Gap between the end of the bar and the ring').fill('3');
  const passes = page.getByText(/With your cord, \d+ strands pass\./);
  const most = /(\d+) strands/.exec((await passes.textContent()) ?? '')?.[1] ?? '';
  await page.getByRole('button', { name: `Use ${most}` }).click();
  await expect(figureIn(page, 'A side bundle may have')).toHaveValue(most);
});
