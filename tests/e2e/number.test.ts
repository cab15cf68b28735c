import { expect, type Locator, test } from '@playwright/test';
import { exercises, followUp, missteps, type NumberProblem, type SlipId, settle } from '../../src/solver/index.ts';
import { fieldLabel } from '../../src/words/exercises/labels.ts';
import { stepWords } from '../../src/words/exercises/step-words.ts';
import { FOLLOW_UP, noSlipWords, slipWords } from '../../src/words/slips/index.ts';
import { drawing, replay } from '../seed.ts';
import { expectBeside, expectQuestion, figureField, openExercise, press, problemOn, said } from './learner.ts';

const number = exercises.number;
const right = (problem: NumberProblem): number => number.solve(problem).figure;
const slipped = (slip: SlipId, problem: NumberProblem): number =>
  (missteps[slip](problem) as ReturnType<typeof number.solve>).figure;

function inWords(slip: SlipId, problem: NumberProblem, certain: boolean): string {
  const words = slipWords(problem, slip, { figure: slipped(slip, problem) }, certain);
  if (words === null) throw new Error(`Nothing is said of ${slip}.`);
  return `${words.did} ${words.why} ${words.next}`;
}

/** A seed, from a drawn one on, whose question is one of these. */
function seedOf(ask: NumberProblem['ask'], wanted: (problem: NumberProblem) => boolean): number {
  const from = drawing()(1, 100_000);
  for (let seed = from; seed < from + 2000; seed += 1) {
    const problem = number.make(seed, 'alone', { ask });
    if (!('ok' in problem) && wanted(problem)) return seed;
  }
  throw new Error(`No question like that near seed ${from}; ${replay}`);
}

async function checkFigure(where: Locator, problem: NumberProblem, figure: number | string, button = 'Check') {
  await figureField(where, `${fieldLabel(problem, 'figure')}${'tolerance' in problem ? ', in mm' : ''}`).fill(
    String(figure),
  );
  await press(where, button);
}

test('the right row of full width is called right', async ({ page }) => {
  const seed = seedOf('full-width-row', () => true);
  const sheet = await openExercise(page, 'widening', 'full-width', seed);
  const problem = await problemOn(sheet, 'number', seed);
  await checkFigure(sheet, problem, right(problem));
  await expectBeside(sheet, 'First row of full width', 'This is right.', replay);
  await expect(said(sheet), replay).toHaveText('That is right.');
});

test.describe('one figure alone proves no slip: a case decides', () => {
  const slip = 'one-string-a-row';
  const alone = (problem: NumberProblem): boolean => {
    const { explanations } = number.check(problem, { figure: slipped(slip, problem) });
    return explanations.length === 1 && explanations[0]?.[0] === slip;
  };

  async function wrongRow(
    page: Parameters<typeof openExercise>[0],
  ): Promise<[Locator, NumberProblem, Locator, NumberProblem]> {
    const seed = seedOf('full-width-row', alone);
    const sheet = await openExercise(page, 'widening', 'full-width', seed);
    const problem = await problemOn(sheet, 'number', seed);
    await checkFigure(sheet, problem, slipped(slip, problem));
    await expect(said(sheet), replay).toContainText(FOLLOW_UP.single);
    await expect(said(sheet), replay).toContainText(inWords(slip, problem, false));
    const asked = followUp('number', problem, [slip]);
    if (!asked) throw new Error('The solver knows no case on which this slip shows.');
    const group = sheet.getByRole('group', { name: 'One more case tells which it was' });
    await expectQuestion(group, asked);
    return [sheet, problem, group, asked];
  }

  test('made again it is the slip that it looked like', async ({ page }) => {
    const [sheet, problem, group, asked] = await wrongRow(page);
    await checkFigure(group, asked, slipped(slip, asked), 'Check this case');
    await expect(said(sheet), replay).toContainText(FOLLOW_UP.settled);
    await expect(said(sheet), replay).toContainText(inWords(slip, problem, true));
    await expect(group).toBeHidden();
  });

  test('not made again it was something else, and nothing is noted down', async ({ page }) => {
    const [sheet, , group, asked] = await wrongRow(page);
    await checkFigure(group, asked, right(asked), 'Check this case');
    await expect(said(sheet), replay).toContainText(FOLLOW_UP.unsettled);
    await expect(said(sheet), replay).not.toContainText(/You (would|let|took)/);
  });

  test('a case that can’t be read decides nothing and stays', async ({ page }) => {
    const [, , group, asked] = await wrongRow(page);
    await checkFigure(group, asked, 'later', 'Check this case');
    await expectBeside(
      group,
      fieldLabel(asked, 'figure'),
      '“later” can’t be read as a whole number. Enter one in digits, like 14.',
    );
    await expect(group).toBeVisible();
  });
});

test('where two slips end alike, both are said, and the case parts them', async ({ page }) => {
  const [slip, other] = ['odd-side-left-odd', 'borrowed-not-given'] as const;
  const seed = seedOf('each-side', (problem) => {
    const found = number.check(problem, { figure: slipped(slip, problem) }).missteps;
    return found.length === 2 && found.includes(slip) && found.includes(other);
  });
  const sheet = await openExercise(page, 'sum', 'fitting-mixed-side', seed);
  const problem = await problemOn(sheet, 'number', seed);
  await checkFigure(sheet, problem, slipped(slip, problem));
  await expect(said(sheet), replay).toContainText(FOLLOW_UP.several);
  for (const each of [slip, other]) await expect(said(sheet), replay).toContainText(inWords(each, problem, false));
  const asked = followUp('number', problem, [slip, other]);
  if (!asked) throw new Error('The solver knows no case that tells these apart.');
  expect(settle('number', asked, { figure: slipped(other, asked) }, [slip, other])).toEqual([[other]]);
  const group = sheet.getByRole('group', { name: 'One more case tells which it was' });
  await expectQuestion(group, asked);
  await checkFigure(group, asked, slipped(other, asked), 'Check this case');
  await expect(said(sheet), replay).toContainText(inWords(other, problem, true));
  await expect(said(sheet), replay).not.toContainText(inWords(slip, problem, true));
});

test('a figure that no slip leads to is put down to none', async ({ page }) => {
  const sheet = await openExercise(page, 'closing', 'closing-again');
  const problem = await problemOn(sheet, 'number');
  await checkFigure(sheet, problem, 999);
  await expect(said(sheet)).toContainText(noSlipWords(problem, 'figure'));
  await expectBeside(sheet, 'First closing row', '“999” does not follow from the figures in the question.');
});

test('a length to cut may be a little off, and no more than a little', async ({ page }) => {
  const sheet = await openExercise(page, 'cutting', 'cut-length', 3);
  const problem = await problemOn(sheet, 'number', 3);
  if (!('tolerance' in problem)) throw new Error('This is no length to cut.');
  const off = (part: number): number => Math.round(right(problem) * (1 + part * problem.tolerance));
  await checkFigure(sheet, problem, off(0.8));
  await expect(said(sheet)).toHaveText('That is right.');
  await checkFigure(sheet, problem, off(1.5));
  await expect(said(sheet)).toContainText('This figure does not come out yet.');
});

test('a length cut as one end is known as not doubled for the fold', async ({ page }) => {
  const sheet = await openExercise(page, 'cutting', 'cut-length', 3);
  const problem = await problemOn(sheet, 'number', 3);
  await checkFigure(sheet, problem, slipped('not-doubled', problem));
  await expect(said(sheet)).toContainText(inWords('not-doubled', problem, false));
});

test('what stood beside a figure goes when the figure is changed', async ({ page }) => {
  const sheet = await openExercise(page, 'widening', 'full-width');
  const problem = await problemOn(sheet, 'number');
  await checkFigure(sheet, problem, 999);
  await expectBeside(sheet, 'First row of full width', '“999” does not follow from the figures in the question.');
  await figureField(sheet, 'First row of full width').fill(String(right(problem)));
  await expectBeside(sheet, 'First row of full width', '');
  await expect(said(sheet)).not.toContainText('You would get this if');
});

test('a half-worked figure has its working before it, but for the last step', async ({ page }) => {
  const sheet = await openExercise(page, 'widening', 'knots-row');
  const problem = await problemOn(sheet, 'number');
  const steps = number.solution(problem);
  const before = steps.filter(({ gives }) => gives === null);
  expect(before.length).toBeGreaterThan(0);
  for (const step of before) await expect(sheet).toContainText(stepWords('number', step));
  for (const step of steps.filter(({ gives }) => gives !== null))
    await expect(sheet).not.toContainText(stepWords('number', step));
});
