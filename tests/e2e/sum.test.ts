import { expect, type Locator, type Page, test } from '@playwright/test';
import {
  exercises,
  type FittingSlip,
  followUp,
  missteps,
  type SolutionOf,
  type SumField,
  type SumProblem,
} from '../../src/solver/index.ts';
import { slipsOf } from '../../src/solver/missteps/slips.ts';
import { hintWords, WORKED_CASE } from '../../src/words/exercises/hint-words.ts';
import { fieldLabel } from '../../src/words/exercises/labels.ts';
import { questionWords } from '../../src/words/exercises/question.ts';
import { stepSum, stepWords } from '../../src/words/exercises/step-words.ts';
import { FOLLOW_UP, noSlipWords, slipWords } from '../../src/words/slips/index.ts';
import { drawing, replay } from '../seed.ts';
import {
  exerciseSheet,
  expectBeside,
  expectQuestion,
  figureField,
  openExercise,
  openLesson,
  press,
  problemOn,
  readWithOwn,
  said,
  sumReadOn,
  writeSum,
} from './learner.ts';

const sum = exercises.sum;
const truth = (problem: SumProblem): SolutionOf<'sum'> => sum.solve(problem);
const slipped = (slip: FittingSlip, problem: SumProblem) => missteps[slip](problem) as SolutionOf<'sum'>;

/** The figures of the last sum of lesson 4, in which every slip shows. */
const WHOLE: readonly SumField[] = [
  'places',
  'spare',
  'eachSide',
  'parity',
  'borrowed',
  'onBar',
  'bundle',
  'foldsOnBar',
  'foldsEachSide',
  'firstRowKnots',
  'fullWidthRow',
];

/** A seed, from a drawn one on, whose sum is one of these. */
function seedOf(wanted: (problem: SumProblem) => boolean, fields = WHOLE): number {
  const from = drawing()(1, 100_000);
  for (let seed = from; seed < from + 2000; seed += 1) {
    const problem = sum.make(seed, 'alone', { fields });
    if (!('ok' in problem) && wanted(problem)) return seed;
  }
  throw new Error(`No sum like that near seed ${from}; ${replay}`);
}

/** The one slip that leads to these figures, with no doubt left. */
const isNamed = (slip: FittingSlip, problem: SumProblem): boolean => {
  const { outcome, explanations, needsFollowUp } = sum.check(problem, slipped(slip, problem));
  return outcome === 'not-right' && !needsFollowUp && explanations.length === 1 && explanations[0]?.[0] === slip;
};

const inWords = (problem: SumProblem, slip: FittingSlip, certain = true): string => {
  const words = slipWords(problem, slip, slipped(slip, problem), certain);
  if (words === null) throw new Error(`Nothing is said of ${slip}.`);
  return `${words.did} ${words.why} ${words.next}`;
};

async function checkSum(sheet: Locator, problem: SumProblem, answer: SolutionOf<'sum'> | Record<string, string>) {
  await writeSum(sheet, problem, answer);
  await press(sheet, 'Check');
}

test('a right sum is called right, beside each figure and as a whole', async ({ page }) => {
  const seed = seedOf(() => true);
  const sheet = await openExercise(page, 'sum', 'sum-whole', seed);
  const problem = await problemOn(sheet, 'sum', seed);
  await checkSum(sheet, problem, truth(problem));
  await expect(said(sheet), replay).toHaveText('That is right.');
  for (const field of problem.fields) await expectBeside(sheet, fieldLabel(problem, field), 'This is right.', replay);
});

test('Enter checks a figure and those above it, and asks for none below', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'sum-first');
  const problem = await sumReadOn(sheet);
  const { places, spare } = truth(problem);
  await writeSum(sheet, problem, { places: String(places), spare: String(spare) });
  await figureField(sheet, 'Spare strings').press('Enter');
  await expectBeside(sheet, 'Places used on the bar', 'This is right.');
  await expectBeside(sheet, 'Spare strings', 'This is right.');
  await expectBeside(sheet, 'Half of the spare strings', '');
});

/** The slips that a sum of an even width can show; the one about the lone string needs an odd one. */
const OF_EVEN_WIDTHS: Readonly<Record<Exclude<FittingSlip, 'lone-string-forgotten'>, string>> = {
  'spare-not-halved': 'gives each side all the spare strings',
  'odd-side-left-odd': 'leaves an odd side odd',
  'odd-side-rounded-down': 'makes an odd side one smaller and loses strings',
  'sides-raised-bar-kept': 'raises the sides and takes nothing from the bar',
  'borrowed-not-given': 'borrows two strings and gives neither side one',
  'one-borrowed': 'borrows one string instead of two',
  'borrowed-from-one-side': 'puts both borrowed strings on one side',
  'four-borrowed': 'borrows four strings',
  'borrowed-though-even': 'borrows though the half is even',
  'folds-counted-as-strings': 'counts folds as strings',
  'strings-counted-as-folds': 'takes a fold for every string',
  'capacity-not-matched': 'leaves no place idle where one has to be',
  added: 'adds where the places have to be taken away',
  'subtracted-wrong-way': 'takes the strings away from the places',
  'all-spare-on-one-side': 'hangs all that is spare on one side',
  'capacity-halved-too': 'halves the places of the bar as well',
};

test.describe('a slip is named in its own words, with this learner’s figures', () => {
  /** Slips that part ways at the half: one of these shows only where it is even, the others where it is odd. */
  const halves = {
    even: ['borrowed-though-even'],
    odd: Object.keys(OF_EVEN_WIDTHS).filter((slip) => slip !== 'borrowed-though-even'),
  } as Record<'even' | 'odd', FittingSlip[]>;

  for (const [half, slips] of Object.entries(halves))
    test(`where the half is ${half}, each slip that can be made there`, async ({ page }) => {
      const seed = seedOf((problem) => slips.every((slip) => isNamed(slip, problem)));
      const sheet = await openExercise(page, 'sum', 'sum-whole', seed);
      const problem = await problemOn(sheet, 'sum', seed);
      expect(await sumReadOn(sheet), replay).toEqual(problem);
      expect(truth(problem).parity, replay).toBe(half);
      let standing: SolutionOf<'sum'> = {};
      for (const slip of slips)
        await test.step(`a learner ${OF_EVEN_WIDTHS[slip as keyof typeof OF_EVEN_WIDTHS]}`, async () => {
          const answer = slipped(slip, problem);
          await writeSum(sheet, problem, answer, standing);
          standing = answer;
          await press(sheet, 'Check');
          await expect.soft(said(sheet), `${slip}; ${replay}`).toContainText(inWords(problem, slip));
          const text = (await said(sheet).textContent()) ?? '';
          for (const other of slips.filter((each) => each !== slip))
            expect.soft(text, `${other} as well; ${replay}`).not.toContain(inWords(problem, other));
          expect.soft(text).not.toContain('You would get this if');
        });
    });

  test('a learner forgets the lone string of an odd chart of their own', async ({ page }) => {
    await openLesson(page, 'sum');
    await readWithOwn(page, { capacity: 16, width: 27, height: 30 });
    const sheet = await exerciseSheet(page, 'sum-whole');
    const problem = await sumReadOn(sheet, { width: 27, capacity: 16 });
    expect(problem.oddMethod).toBe('lone-string');
    await checkSum(sheet, problem, slipped('lone-string-forgotten', problem));
    await expect(said(sheet)).toContainText(inWords(problem, 'lone-string-forgotten'));
  });
});

test.describe('two slips that lead to the same figures are told apart by one more case', () => {
  const FIELDS: readonly SumField[] = WHOLE.slice(0, 7);
  const both = ['spare-not-halved', 'all-spare-on-one-side'] as const;

  async function caseAsked(sheet: Locator, problem: SumProblem): Promise<[Locator, SumProblem]> {
    const asked = followUp('sum', problem, both);
    if (!asked) throw new Error('The solver knows no case that tells these apart.');
    const group = sheet.getByRole('group', { name: 'One more case tells which it was' });
    await expectQuestion(group, asked);
    return [group, asked];
  }

  for (const slip of both)
    test(`${slip === both[0] ? 'each side got all of it' : 'all of it went to one side'}`, async ({ page }) => {
      const seed = seedOf((problem) => truth(problem).spare !== 0, FIELDS);
      const sheet = await openExercise(page, 'sum', 'sum-first', seed);
      const problem = await problemOn(sheet, 'sum', seed);
      await checkSum(sheet, problem, slipped(slip, problem));
      await expect(said(sheet), replay).toContainText(FOLLOW_UP.several);
      for (const each of both) await expect(said(sheet), replay).toContainText(inWords(problem, each, false));
      const [group, asked] = await caseAsked(sheet, problem);
      await writeSum(group, asked, slipped(slip, asked));
      await sheet.getByRole('button', { name: 'Check this case' }).press('Enter');
      await expect(said(sheet), replay).toContainText(FOLLOW_UP.settled);
      await expect(said(sheet), replay).toContainText(inWords(problem, slip));
      await expect(said(sheet)).not.toContainText('You would get this if');
      await expect(group).toBeHidden();
      // The case is gone, and whoever goes by keys is still at this exercise.
      await expect(sheet.locator(':focus')).toHaveCount(1);
    });

  test('where the case is worked rightly no slip is put on the learner', async ({ page }) => {
    const sheet = await openExercise(page, 'sum', 'sum-first');
    const problem = await sumReadOn(sheet);
    await checkSum(sheet, problem, slipped(both[0], problem));
    const [group, asked] = await caseAsked(sheet, problem);
    await writeSum(group, asked, truth(asked));
    await press(sheet, 'Check this case');
    await expect(said(sheet)).toContainText(FOLLOW_UP.unsettled);
    await expect(said(sheet)).not.toContainText('You gave');
  });
});

test('one slip is one slip: what follows from it is said to follow, and is held against nobody', async ({ page }) => {
  const seed = seedOf((problem) => isNamed('one-borrowed', problem));
  const sheet = await openExercise(page, 'sum', 'sum-whole', seed);
  const problem = await problemOn(sheet, 'sum', seed);
  const answer = slipped('one-borrowed', problem);
  await checkSum(sheet, problem, answer);
  const right = truth(problem);
  for (const field of problem.fields) {
    const says =
      field === 'borrowed'
        ? `“${answer[field]}” does not follow from the figures above it.`
        : answer[field] === right[field]
          ? 'This is right.'
          : 'This follows from what you entered above. It will change when the figure above is put right.';
    await expectBeside(sheet, fieldLabel(problem, field), says, `${field}; ${replay}`);
  }
  await expect(said(sheet)).toContainText('Look at “Strings borrowed from the bar” first');
});

test('two slips in one sum are both named', async ({ page }) => {
  const both = ['added', 'strings-counted-as-folds'] as const;
  const made = (problem: SumProblem) =>
    slipsOf.sum.pairs(problem).find(({ slips }) => both.every((slip) => slips.includes(slip)))?.answer;
  const seed = seedOf((problem) => {
    const answer = made(problem);
    const { explanations = [] } = answer ? sum.check(problem, answer) : {};
    return explanations.length === 1 && explanations[0]?.length === 2;
  });
  const sheet = await openExercise(page, 'sum', 'sum-whole', seed);
  const problem = await problemOn(sheet, 'sum', seed);
  const answer = made(problem) ?? {};
  await checkSum(sheet, problem, answer);
  for (const slip of both) {
    const words = slipWords(problem, slip, answer);
    await expect(said(sheet), replay).toContainText(`${words?.did} ${words?.why} ${words?.next}`);
  }
});

test('figures that no slip leads to are not put down to one, and the first that does not follow is named', async ({
  page,
}) => {
  const sheet = await openExercise(page, 'sum', 'sum-first');
  const problem = await sumReadOn(sheet);
  const odd: Record<string, string> = {
    ...Object.fromEntries(problem.fields.map((field) => [field, '77'])),
    parity: 'odd',
  };
  await checkSum(sheet, problem, odd);
  await expect(said(sheet)).toContainText(noSlipWords(problem, 'places'));
  await expect(said(sheet)).not.toContainText('You would get this if');
});

test('what can’t be read is no try: nothing is held wrong, and it is said what would do', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'sum-first');
  const problem = await sumReadOn(sheet);
  await checkSum(sheet, problem, {
    ...Object.fromEntries(Object.entries(truth(problem)).map(([f, v]) => [f, String(v)])),
    spare: 'ten or so',
  });
  await expectBeside(
    sheet,
    'Spare strings',
    '“ten or so” can’t be read as a whole number. Enter one in digits, like 14.',
  );
  await expect(said(sheet)).toHaveText('“Spare strings” can’t be read yet. Put it right, then check again.');
  await expect(figureField(sheet, 'Spare strings')).toHaveValue('ten or so');
  await figureField(sheet, 'Spare strings').fill('');
  await press(sheet, 'Check');
  await expect(said(sheet)).toHaveText('“Spare strings” is still empty. Fill it in, then check again.');
});

test.describe('help comes in steps', () => {
  test('hints say where to look, then what to do, then show a case with other figures, and then there is no more', async ({
    page,
  }) => {
    const sheet = await openExercise(page, 'sum', 'sum-whole');
    const problem = await sumReadOn(sheet);
    const { look, do: act, worked } = sum.hints(problem);
    const hint = sheet.getByRole('button', { name: 'Hint', exact: true });
    const [where, what] = [hintWords('sum', look), hintWords('sum', act)];

    await hint.click();
    await expect(said(sheet)).toContainText(where);
    await expect(said(sheet)).not.toContainText(what);
    await hint.click();
    await expect(said(sheet)).toContainText(what);
    await expect(said(sheet)).not.toContainText(WORKED_CASE);
    await hint.press('Enter');
    await expect(said(sheet)).toContainText(WORKED_CASE);
    if (!worked) throw new Error('This sum has no case like it.');
    const shown = questionWords(worked.problem).given;
    await expect(said(sheet)).toContainText(shown);
    expect(shown).not.toBe(questionWords(problem).given);
    for (const step of worked.steps) await expect(said(sheet)).toContainText(stepWords('sum', step));
    await expect(hint).toBeDisabled();
    // Whoever goes by keys stays where they are.
    await expect(hint).toBeFocused();
    // How many are left is never said: people would use them up.
    await expect(sheet.locator('form')).not.toContainText(/hints?\b.*\b(left|of|more|\d)/i);
  });

  test('after a slip the hint looks at the figure that does not come out', async ({ page }) => {
    const seed = seedOf((problem) => isNamed('one-borrowed', problem));
    const sheet = await openExercise(page, 'sum', 'sum-whole', seed);
    const problem = await problemOn(sheet, 'sum', seed);
    await checkSum(sheet, problem, slipped('one-borrowed', problem));
    await press(sheet, 'Hint');
    await expect(said(sheet), replay).toContainText(hintWords('sum', sum.hints(problem, 'borrowed').look));
  });

  test('the working goes through every step with these figures', async ({ page }) => {
    const sheet = await openExercise(page, 'sum', 'sum-whole');
    const problem = await sumReadOn(sheet);
    await press(sheet, 'Show the working');
    await expect(said(sheet)).toContainText('The working, with these figures:');
    for (const step of sum.solution(problem)) {
      await expect(said(sheet)).toContainText(stepWords('sum', step));
      await expect(said(sheet)).toContainText(stepSum('sum', step));
    }
  });
});

test('“Another like it” has other figures, and its address opens the same on any other device', async ({
  page,
  browser,
}) => {
  const sheet = await openExercise(page, 'sum', 'sum-first');
  const first = await sumReadOn(sheet);
  await writeSum(sheet, first, truth(first));
  await press(sheet, 'Another like it');
  await expect(page).toHaveURL(/[?&]sum-first=1$/);
  const second = await problemOn(sheet, 'sum', 1);
  expect([second.width, second.capacity]).not.toEqual([first.width, first.capacity]);
  await expect(figureField(sheet, 'Spare strings')).toHaveValue('');

  const elsewhere = await (await browser.newContext()).newPage();
  await elsewhere.goto(page.url());
  expect(await sumReadOn(await exerciseSheet(elsewhere, 'sum-first'), second)).toEqual(second);
  await elsewhere.context().close();
});

test.describe('a reload loses nothing', () => {
  test('what was entered, what was said and the slip that was named are there again', async ({ page }) => {
    const seed = seedOf((problem) => isNamed('four-borrowed', problem));
    let sheet = await openExercise(page, 'sum', 'sum-whole', seed);
    const problem = await problemOn(sheet, 'sum', seed);
    const answer = slipped('four-borrowed', problem);
    await checkSum(sheet, problem, answer);
    await expect(said(sheet), replay).toContainText(inWords(problem, 'four-borrowed'));
    const before = (await said(sheet).textContent()) ?? '';

    await page.reload();
    sheet = await exerciseSheet(page, 'sum-whole');
    await expect(said(sheet), replay).toHaveText(before);
    await expect(figureField(sheet, 'Strings borrowed from the bar')).toHaveValue('4');
    await expectBeside(sheet, 'Strings borrowed from the bar', '“4” does not follow from the figures above it.');
    await expect(sheet.getByRole('radio', { name: 'odd' })).toBeChecked();
  });

  test('a sum left half-way is there again, with nothing held against it', async ({ page }) => {
    let sheet = await openExercise(page, 'sum', 'sum-whole');
    await figureField(sheet, 'Places used on the bar').fill('about 20');
    await page.reload();
    sheet = await exerciseSheet(page, 'sum-whole');
    await expect(figureField(sheet, 'Places used on the bar')).toHaveValue('about 20');
    await expect(said(sheet)).toBeEmpty();
  });

  test('hints and the working stay open', async ({ page }) => {
    let sheet = await openExercise(page, 'sum', 'sum-whole');
    await press(sheet, 'Hint');
    await press(sheet, 'Hint');
    await press(sheet, 'Show the working');
    await expect(said(sheet)).toContainText('The working, with these figures:');
    const before = (await said(sheet).textContent()) ?? '';
    await page.reload();
    sheet = await exerciseSheet(page, 'sum-whole');
    await expect(said(sheet)).toHaveText(before);
  });
});

test.describe('before the script has arrived', () => {
  /** Holds the scripts back; what it gives lets them come. */
  async function held(page: Page, query = ''): Promise<[Locator, () => void]> {
    const { promise, resolve } = Promise.withResolvers<void>();
    await page.route('**/*.js', async (route) => {
      await promise;
      await route.continue();
    });
    await page.goto(`lessons/the-fitting-sum/${query}`, { waitUntil: 'commit' });
    const sheet = page.locator('#sum-first');
    await sheet.scrollIntoViewIfNeeded();
    return [sheet, resolve];
  }

  test('what is typed is kept, and checked when asked', async ({ page }) => {
    const [sheet, arrive] = await held(page);
    await figureField(sheet, 'Places used on the bar').fill('twelve');
    await sheet.getByRole('radio', { name: 'odd' }).check();
    arrive();
    await exerciseSheet(page, 'sum-first');
    await expect(figureField(sheet, 'Places used on the bar')).toHaveValue('twelve');
    await expect(sheet.getByRole('radio', { name: 'odd' })).toBeChecked();
    await figureField(sheet, 'Places used on the bar').press('Enter');
    await expectBeside(
      sheet,
      'Places used on the bar',
      '“twelve” can’t be read as a whole number. Enter one in digits, like 14.',
    );
  });

  test('where the address asks for other figures, the question that the page was built with is never seen', async ({
    page,
  }) => {
    const [sheet, arrive] = await held(page, '?sum-first=5');
    await expect(sheet.locator('form .question')).toBeHidden();
    await expect(page.locator('#sum-whole form .question')).toBeVisible();
    arrive();
    await exerciseSheet(page, 'sum-first');
    await expect(sheet.locator('form .question')).toBeVisible();
    await problemOn(sheet, 'sum', 5);
  });

  test('a check pressed too early leads nowhere else, and is made as soon as it can be', async ({ page }) => {
    const [sheet, arrive] = await held(page);
    const before = page.url();
    await figureField(sheet, 'Spare strings').fill('1000');
    await press(sheet, 'Check');
    arrive();
    await exerciseSheet(page, 'sum-first');
    await expect(said(sheet).locator('[data-outcome]')).toBeVisible();
    expect(page.url()).toBe(before);
  });
});
