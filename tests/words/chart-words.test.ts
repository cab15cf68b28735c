import { describe, expect, test } from 'vitest';
import {
  type Chart,
  type ChartFault,
  type ChartMistakeKey,
  checkChart,
  type Problem,
  parseChart,
} from '../../src/solver/index.ts';
import { chartWords } from '../../src/words/chart-words.ts';
import { expectSentences } from './sayable.ts';

const head = 'chart Pear\ncolour . chalk #f2ead8\ncolour # tar #222222\n\n';
const manyColours = Array.from(
  { length: 33 },
  (_, index) => `colour ${String.fromCharCode(0x41 + index)} tar #222222`,
).join('\n');

/** For each mistake, a text in which it is the first. */
const TEXTS: Readonly<Record<ChartMistakeKey, unknown>> = {
  'not-text': 12,
  'empty-text': ' \n ',
  'unknown-line': 'picture Pear',
  'no-empty-line': 'colour . chalk #f2ead8\n....',
  'no-title': 'chart ',
  'second-title': 'chart Pear\nchart Heron',
  'no-key': 'colour',
  'key-not-a-key': 'colour xx chalk #f2ead8',
  'key-taken': 'colour . chalk #f2ead8\ncolour . tar #222222',
  'no-name': 'colour . #f2ead8',
  'no-colour': 'colour . chalk',
  'bad-colour': 'colour . chalk #12345',
  'none-without-blank': 'colour . chalk none',
  'unknown-mark': 'colour . chalk #f2ead8 outside',
  'second-ground': 'colour . chalk #f2ead8 ground\ncolour # tar #222222 ground',
  'second-blank': 'colour . chalk none blank\ncolour # tar none blank',
  'open-quotes': 'chart "Pear',
  'after-quotes': 'chart "Pear" tree',
  'too-many-colours': manyColours,
  'no-colours': 'chart Pear\n\n',
  'no-rows': head,
  'empty-row': `${head}..\n\n..`,
  'unknown-key': `${head}..\n.x`,
  'space-in-row': `${head}..\n. `,
  'ragged-row': `${head}..\n...`,
  'too-narrow': `${head}.\n.`,
  'too-wide': `${head}${'.'.repeat(401)}`,
  'too-high': `${head}${'..\n'.repeat(1001)}`,
};

const tar = { name: 'tar', colour: '#222222' };
const good: Chart = { width: 2, height: 2, palette: [tar], cells: new Uint8Array(4) };
const withEntries = (...palette: unknown[]): unknown => ({ ...good, palette });

/** For each fault, a chart that code might hand in. */
const CHARTS: Readonly<Record<ChartFault, unknown>> = {
  'title-not-text': { ...good, title: 7 },
  'palette-not-a-list': { ...good, palette: 'tar' },
  'entry-not-an-entry': withEntries('tar'),
  'name-not-text': withEntries({ ...tar, name: 7 }),
  'colour-not-a-colour': withEntries({ ...tar, colour: '#12' }),
  'mark-not-a-mark': withEntries({ ...tar, blank: 'yes' }),
  'both-ground-and-blank': withEntries({ ...tar, ground: true, blank: true }),
  'second-ground': withEntries({ ...tar, ground: true }, { ...tar, ground: true }),
  'second-blank': withEntries({ ...tar, blank: true }, { ...tar, blank: true }),
  'key-not-a-key': withEntries({ ...tar, key: 'xx' }),
  'key-taken': withEntries({ ...tar, key: 'x' }, { ...tar, key: 'x' }),
  'cells-not-bytes': { ...good, cells: [0, 0, 0, 0] },
  'cells-count': { ...good, cells: new Uint8Array(1) },
  'index-outside-palette': { ...good, cells: Uint8Array.of(0, 0, 0, 3) },
};

function problemIn(text: unknown): Problem {
  const parsed = parseChart(text);
  if (parsed.ok) throw new Error('that is a chart');
  return parsed.problem;
}

/** What stands in a text may be any character; only the sentence round it is ours. */
const ours = (text: string): string =>
  text
    .replace(/“[^”]*”/g, '“it”')
    .replace(/: [^A-Za-z ]( [^ ])*$/, '.')
    .replace(/(?<=: |chalk )[.#]\S*( chalk)?( #\w+)?/g, 'x');

describe('mistakes in a chart', () => {
  test.each(Object.entries(TEXTS))('%s is told with its place and what would work', (mistake, text) => {
    const problem = problemIn(text);
    expect(problem.values['mistake']).toBe(mistake);
    const said = chartWords(problem);
    expect(said).toMatch(/^Line \d+, character \d+: [A-Z“]/);
    expect(said).not.toMatch(/undefined|NaN/);
    expect(said.length).toBeLessThan(300);
  });

  test.each(Object.entries(CHARTS))('%s is told in a chart that comes from elsewhere', (mistake, chart) => {
    const problem = checkChart(chart);
    expect(problem?.values['mistake']).toBe(mistake);
    if (problem) expectSentences(ours(chartWords(problem)));
  });

  test('a row that is too long says how long the first one is', () => {
    expect(chartWords(problemIn(TEXTS['ragged-row']))).toBe(
      'Line 6, character 3: This row has 3 characters, but the first row has 2. All rows need the same number.',
    );
    expect(chartWords(problemIn(TEXTS['ragged-row']), false)).toMatch(/^This row has 3 characters/);
    expect(chartWords(problemIn(TEXTS['unknown-key']))).toBe(
      'Line 6, character 2: No colour has the key “x”. The keys are: . #',
    );
  });

  test('other problems with a chart are told as everywhere else', () => {
    expect(chartWords({ code: 'no-chart', values: {} })).toContain('There is no chart here yet.');
  });
});
