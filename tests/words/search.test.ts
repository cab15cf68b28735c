import fc from 'fast-check';
import { expect, test } from 'vitest';
import { excerpt, foundWords } from '../../src/words/search.ts';

const LONG = `${'The ring hangs on a hook by the door. '.repeat(10)}A bundle lets out one string a row. ${'Then the row goes on. '.repeat(10)}`;

test('the line is cut round the word that was found, and marks it', () => {
  const runs = excerpt(LONG, ['bundle']);
  const line = runs.map(({ text }) => text).join('');
  expect(line).toContain('A bundle lets out one string');
  expect(line.startsWith('… ')).toBe(true);
  expect(line.endsWith(' …')).toBe(true);
  expect(runs.filter(({ found }) => found).map(({ text }) => text)).toEqual(['bundle']);
});

test('a word is marked as it is written, and not inside another word', () => {
  expect(excerpt('Bundles and a bundle.', ['bundle']).filter(({ found }) => found)).toEqual([
    { text: 'bundle', found: true },
  ]);
  expect(excerpt('Bundle by bundle', ['bundle']).map(({ text, found }) => [text, found])).toEqual([
    ['Bundle', true],
    [' by ', false],
    ['bundle', true],
  ]);
});

test('no text and no word is ever lost or made up, whatever is looked for', () => {
  fc.assert(
    fc.property(
      fc.string({ maxLength: 400 }),
      fc.array(fc.string({ maxLength: 8 }), { maxLength: 4 }),
      (text, terms) => {
        const line = excerpt(text, terms)
          .map((run) => run.text)
          .join('')
          .replace(/^… /, '')
          .replace(/ …$/, '');
        expect(text).toContain(line);
      },
    ),
  );
});

test('what was found is said in words, nothing found as well', () => {
  expect(foundWords(1, 'tuck', 24)).toBe('One place speaks of “tuck”.');
  expect(foundWords(7, 'bundle', 24)).toBe('Seven places speak of “bundle”.');
  expect(foundWords(7, 'bundle', 5)).toBe('Seven places speak of “bundle”. Here are the five likeliest.');
  expect(foundWords(0, 'zip', 24)).toContain('Nothing here speaks of “zip”.');
});
