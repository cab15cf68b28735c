import { expect, type Page, test } from '@playwright/test';
import { placesOf } from '../../src/solver/exercises/spot/places.ts';
import type { WorkedStepOf } from '../../src/solver/exercises/steps.ts';
import { type ExerciseProblem, exercises, type KindName } from '../../src/solver/index.ts';
import { fieldLabel } from '../../src/words/exercises/labels.ts';
import { questionWords } from '../../src/words/exercises/question.ts';
import { placeWords } from '../../src/words/exercises/spot-sheet.ts';
import { stepSum, stepWords } from '../../src/words/exercises/step-words.ts';
import { LESSON_NAMES, LESSONS, openExercise, type PageData, pageData, press, problemFrom, said } from './learner.ts';

/** An exercise as it stands in a page's source, with its worked case, which has other figures, taken out. */
interface Standing {
  readonly id: string;
  readonly kind: KindName;
  readonly packed: string;
  /** Every number that can be read in it or that an attribute holds. */
  readonly figures: readonly number[];
  /** Whether any field, choice or cell is filled in, but for cells that a half-worked form gives. */
  readonly filled: boolean;
}

/** Attributes that name and link parts of a page, or say how it is put together. */
const BOOKKEEPING = [
  'id',
  'data-solid-render-id',
  'for',
  'name',
  'class',
  'style',
  'data-hk',
  'data-cell',
  'data-kind',
  'data-level',
  'aria-labelledby',
  'aria-describedby',
  'tabindex',
  'rows',
  'maxlength',
  'uid',
  'component-url',
  'component-export',
  'renderer-url',
  'opts',
  'props',
  'client',
  'before-hydration-url',
  'ssr',
  'await-children',
  // The shape of a colour’s mark.
  'viewBox',
  'd',
];

/** Reads the exercises out of a page's source, without running it. */
const exercisesIn = (page: Page, html: string): Promise<Standing[]> =>
  page.evaluate(
    ([source, bookkeeping]) => {
      const parsed = new DOMParser().parseFromString(source, 'text/html');
      return [...parsed.querySelectorAll<HTMLElement>('section.exercise')].map((section) => {
        for (const worked of section.querySelectorAll(
          // A drawing’s figures are where its lines go; what it shows stands in words beside it.
          'script, style, .worked-case, details:has(.working), [data-exercise-number], .tied-drawing, .tied-knots',
        ))
          worked.remove();
        const island = section.querySelector('astro-island');
        const texts = [section, ...section.querySelectorAll('*')].flatMap((element) => [
          ...[...element.childNodes]
            .filter((node) => node.nodeType === Node.TEXT_NODE)
            .map((node) => node.textContent ?? ''),
          ...[...element.attributes].filter(({ name }) => !bookkeeping.includes(name)).map(({ value }) => value),
        ]);
        return {
          id: section.id,
          kind: section.dataset['kind'] as 'sum',
          packed: island?.getAttribute('props') ?? '',
          figures: texts.flatMap((text) => (text.match(/\d+(\.\d+)?/g) ?? []).map(Number)),
          filled:
            section.querySelector(
              '[checked]:not([disabled]), input[value]:not([value=""], [type="radio"], [readonly]), [aria-pressed="true"]:not([data-given]), [data-state]',
            ) !== null,
        };
      });
    },
    [html, BOOKKEEPING] as const,
  );

const figuresOf = (text: string): number[] => (text.match(/\d+(\.\d+)?/g) ?? []).map(Number);

const beforeTheLast = <K extends 'number' | 'choose' | 'mark'>(kind: K, steps: readonly WorkedStepOf<K>[]): string[] =>
  steps.filter(({ gives }) => gives === null).map((step) => `${stepSum(kind, step)} ${stepWords(kind, step)}`);

/** What a half-worked form gives: figures of the sum, or the steps of the working before the one that answers. */
function halfGiven(problem: ExerciseProblem): string[] {
  if (problem.kind === 'sum') return Object.values(exercises.sum.fade(problem).given).map(String);
  if (problem.kind === 'number') return beforeTheLast('number', exercises.number.solution(problem));
  if (problem.kind === 'choose') return beforeTheLast('choose', exercises.choose.solution(problem));
  if (problem.kind !== 'mark' || exercises.mark.fade(problem).given.cells) return [];
  return beforeTheLast('mark', exercises.mark.solution(problem));
}

/** Every number that an exercise may show before it is answered: its question's, its labels', and those given in a half-worked form. */
function shown(problem: ExerciseProblem, { level }: PageData): Set<number> {
  const { given, ask, inMillimetres = '', parts = [] } = questionWords(problem);
  const labels =
    problem.kind === 'number'
      ? [fieldLabel(problem, 'figure')]
      : problem.kind === 'sum'
        ? problem.fields.map((field) => fieldLabel(problem, field))
        : problem.kind === 'row'
          ? ['How many things hands do: 7', ...Array.from({ length: problem.width }, (_, n) => `string ${n + 1}`)]
          : problem.kind === 'spot'
            ? placesOf(problem).map((place) => `${place} ${placeWords(problem, place)}`)
            : [];
  const half = level === 'half-worked' ? halfGiven(problem) : [];
  const chart =
    problem.kind === 'mark'
      ? Array.from({ length: Math.max(problem.width, problem.height) }, (_, index) => index + 1)
      : [];
  return new Set([...figuresOf([given, ask, inMillimetres, ...parts, ...labels, ...half].join(' ')), ...chart]);
}

/** The figures of an exercise, on the sheet and in its data, that neither its question nor what is given holds. */
function beyond({ figures }: Standing, problem: ExerciseProblem, data: PageData): number[] {
  const known = shown(problem, data);
  const { id: _, seed: __, question: ___, ...handed } = data as PageData & { question: unknown };
  const stated = new Set([
    ...known,
    ...figuresOf(JSON.stringify(problem)),
    ...figuresOf(JSON.stringify(questionWords(problem))),
  ]);
  return [
    ...new Set([
      ...figures.filter((figure) => !known.has(figure)),
      ...figuresOf(JSON.stringify(handed)).filter((figure) => !stated.has(figure)),
    ]),
  ];
}

/** The answer to a question that is no figure, as data would name it. */
const namesOf = (problem: ExerciseProblem): string[] =>
  problem.kind === 'row'
    ? ['acts', 'backward-forward', 'forward-backward']
    : problem.kind === 'spot'
      ? [`"place":[0,"${exercises.spot.solve(problem).place}"`, `"fault":[0,"${exercises.spot.solve(problem).fault}"`]
      : [];

const dataOf = ({ kind, packed }: Standing): PageData => ({ ...(pageData(packed) as unknown as PageData), kind });

test('every lesson’s page knows its questions and none of the answers', async ({ page }) => {
  for (const name of LESSON_NAMES) {
    const response = await page.request.get(`lessons/${LESSONS[name]}/`);
    const standing = await exercisesIn(page, await response.text());
    expect.soft(standing.length, name).toBeGreaterThanOrEqual(3);
    for (const exercise of standing) {
      const data = dataOf(exercise);
      const where = `${LESSONS[name]} #${exercise.id}`;
      expect.soft(exercise.filled, `${where} has something filled in`).toBe(false);
      const strange = beyond(exercise, problemFrom(data), data);
      expect.soft(strange, `${where}: figures that its question does not hold`).toEqual([]);
      const problem = problemFrom(data) as ExerciseProblem;
      // Neither what is tied nor what is to be found is a figure: nothing that is handed over may name it.
      const open = data.level === 'half-worked' ? [] : namesOf(problem);
      for (const name of open) expect.soft(exercise.packed, where).not.toContain(name);
    }
  }
});

test('the search for answers finds them once they are shown', async ({ page }) => {
  const sheet = await openExercise(page, 'sum', 'sum-whole');
  await press(sheet, 'Show the working');
  await expect(said(sheet)).toContainText('The working, with these figures:');
  const [found] = (await exercisesIn(page, await page.content())).filter(({ id }) => id === 'sum-whole');
  if (!found) throw new Error('The sum has left the page.');
  const data = dataOf(found);
  const problem = problemFrom(data) as ReturnType<typeof exercises.sum.make>;
  expect(beyond(found, problem as ExerciseProblem, data)).toEqual(expect.arrayContaining([22]));
});

test('what a maker would say of a thing stands on no page before it is compared', async ({ page }) => {
  let asked = 0;
  for (const name of LESSON_NAMES) {
    const html = await (await page.request.get(`lessons/${LESSONS[name]}/`)).text();
    for (const exercise of await exercisesIn(page, html)) {
      if (exercise.kind !== ('say' as KindName)) continue;
      asked += 1;
      const problem = problemFrom(dataOf(exercise)) as ReturnType<typeof exercises.say.make>;
      for (const step of exercises.say.solution(problem as never))
        expect.soft(html, `${name} #${exercise.id}`).not.toContain(stepWords('say', step).slice(0, -1));
    }
  }
  expect(asked).toBeGreaterThan(0);
});
