import { describe, expect, test } from 'vitest';
import {
  bundleSizes,
  type Chart,
  type Fit,
  fitPiece,
  type Problem,
  type ProblemCode,
  parseChart,
  planRows,
} from '../../src/solver/index.ts';
import { calibrate } from '../../src/solver/thread/calibrate.ts';
import { capacityRange } from '../../src/solver/thread/capacity.ts';
import { pitches } from '../../src/solver/thread/pitch.ts';
import { choiceWord } from '../../src/words/choices.ts';
import { fieldName, swatchPartName } from '../../src/words/fields.ts';
import { problemWords } from '../../src/words/problems.ts';
import { expectSentences, strict } from './sayable.ts';

function problemOf(answer: unknown): Problem {
  const problem = (answer as { problem?: Problem }).problem;
  if (problem === undefined) throw new Error('there is no problem here');
  return problem;
}

const fitOf = (width: number, capacity: number): Fit => {
  const answer = fitPiece({ width, capacity });
  if (!answer.ok) throw new Error('no fit');
  return answer.fit;
};

const evening = fitOf(12, 8);
const rows = (left: readonly number[], right: readonly number[] = left, fit = evening) =>
  problemOf(planRows({ fit, bundles: { left, right } }));
const chartOf = (width: number, height: number): Chart => ({
  width,
  height,
  palette: [{ name: 'tar', colour: '#222222' }],
  cells: new Uint8Array(width * height),
});
const nothing = undefined as never;

/** For each code, the solver's own problems: what a person has to enter to meet it. */
const PROBLEMS: Readonly<Record<ProblemCode, readonly Problem[]>> = {
  'not-a-whole-number': [12.5, 'many', '', null, Number.NaN, undefined].map((width) =>
    problemOf(fitPiece({ width: width as number, capacity: 8 })),
  ),
  'not-a-number': [problemOf(pitches({ diameter: 'thick' as never, kind: 'soft' }))],
  'out-of-range': [
    problemOf(fitPiece({ width: 401, capacity: 8 })),
    problemOf(fitPiece({ width: -3, capacity: 8 })),
    problemOf(pitches({ diameter: 300, kind: 'soft' })),
    problemOf(capacityRange({ barWidth: 0.5, columnPitch: { low: 1, likely: 2, high: 3 } })),
  ],
  'unknown-choice': [
    problemOf(fitPiece({ width: 25, capacity: 8, oddMethod: 'both' as never })),
    problemOf(pitches({ diameter: 1, kind: null as never })),
    problemOf(fitPiece({ width: 25, capacity: 8, startSide: 'top' as never })),
  ],
  'bundle-too-big': [problemOf(fitPiece({ width: 60, capacity: 10 }))],
  'too-narrow': [problemOf(fitPiece({ width: 9, capacity: 3 })), problemOf(fitPiece({ width: 8, capacity: 2 }))].filter(
    ({ code }) => code === 'too-narrow',
  ),
  'closing-too-big': [problemOf(bundleSizes({ fit: evening, height: 14, closingBundle: 9 }))],
  'too-short': [problemOf(bundleSizes({ fit: evening, height: 3, closingBundle: 5 }))],
  'never-full-width': [problemOf(bundleSizes({ fit: fitOf(26, 16), height: 8 }))],
  'no-rows': [rows([])],
  'sides-differ-in-length': [rows([2, 1], [2])],
  'not-what-was-mounted': [rows([1, 1])],
  'changes-by-more-than-one': [rows([2, 3, 5]), rows([2, 1, 3])],
  'bundles-exceed-width': [rows([2, 3, 4, 5, 6, 7, 6, 5])],
  'no-strings-to-finish-with': [rows([2, 3, 4, 5, 6]), rows([1, 2], [1, 1], fitOf(3, 3))],
  'chart-size-differs': [
    problemOf(planRows({ fit: evening, bundles: { left: [2], right: [2] }, chart: chartOf(11, 1) })),
  ],
  hole: [{ code: 'hole', field: 'wanted', row: 5, values: { row: 5 } }],
  'no-fit': [problemOf(bundleSizes({ fit: nothing, height: 14 }))],
  'no-chart': [problemOf(planRows({ fit: evening, bundles: { left: [2], right: [2] }, chart: 'pear' as never }))],
  'chart-mistake': [problemOf(parseChart('chart Pear\ncolour'))],
};

describe('problems in words', () => {
  test.each(Object.entries(PROBLEMS))(
    '%s says what was entered, what is the matter and what would work',
    (code, problems) => {
      expect(problems.length).toBeGreaterThan(0);
      for (const problem of problems) {
        expect(problem.code).toBe(code);
        for (const units of ['metric', 'inches'] as const)
          expectSentences(problemWords({ ...problem, values: strict(problem.values, ['rows']) }, { units }));
      }
    },
  );

  test('a figure that is no whole number is quoted, and its range named', () => {
    const [half, word, empty] = PROBLEMS['not-a-whole-number'].map((problem) => problemWords(problem));
    expect(half).toBe('You entered 12.5 for the width of the chart. It has to be a whole number from 2 to 400.');
    expect(word).toBe('You entered “many” for the width of the chart. It has to be a whole number from 2 to 400.');
    expect(empty).toBe('The width of the chart is still empty. It has to be a whole number from 2 to 400.');
  });

  test('a length is told in the learner’s own units', () => {
    const [, , cord] = PROBLEMS['out-of-range'];
    if (!cord) throw new Error('no problem with the cord');
    expect(problemWords(cord)).toBe(
      'You entered 30\u00a0cm for the thickness of the cord. That is too big. Anything from 0.2\u00a0mm to 10\u00a0mm works.',
    );
    expect(problemWords(cord, { units: 'inches', name: 'your cord' })).toBe(
      'You entered 11¾\u00a0in for your cord. That is too big. Anything from 0.01\u00a0in to 3/8\u00a0in works.',
    );
  });

  test('60 columns on a bar of 10 name the bar and the chart that would do', () => {
    const [problem] = PROBLEMS['bundle-too-big'];
    if (!problem) throw new Error('no problem');
    const text = problemWords(problem);
    expect(text).toContain('needs side bundles of 26. The most you allow is 8.');
    expect(text).toContain(`takes ${problem.values['smallestCapacity']}.`);
    expect(text).toContain(`has ${problem.values['greatestWidth']} columns.`);
  });

  test('where a side jumps, the sizes that would do are listed', () => {
    const [jump, drop] = PROBLEMS['changes-by-more-than-one'].map((problem) => problemWords(problem));
    expect(jump).toContain('so 2, 3 or 4 works here.');
    expect(drop).toContain('so 1 or 2 works here.');
  });

  test('a swatch’s width is not called the chart’s', () => {
    const problem = problemOf(calibrate({ width: 9999 }));
    expect(problemWords(problem, { name: swatchPartName('width') })).toBe(
      'You entered 9999 for the width of your swatch. That is too big. Anything from 0.5 to 5000 works.',
    );
  });

  test('a field nobody has named yet is called as it is, and a choice likewise', () => {
    expect(fieldName('hue')).toBe('“hue”');
    expect(choiceWord('both')).toBe('both');
  });
});
