import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import type { Values } from '../../src/words/numbers.ts';

/** Letters and signs that the workbook's faces are cut to, read from where they are cut. */
const fonts = readFileSync(new URL('../../.config/fonts.ts', import.meta.url), 'utf8');
const signs = /SIGNS = '([^']+)'/.exec(fonts)?.[1];
if (signs === undefined) throw new Error('the faces no longer say which signs they keep');
const drawn = new RegExp(`^[\\u0020-\\u007e\\u00a0-\\u00ff${signs}]*$`, 'u');

const NOUNS =
  'string|fold|knot|column|row|cell|colour|place|piece|character|end|minute|hour|second|time|working length|corner cell|bundle|half hitch';
const oneOfMany = new RegExp(`(?<!(?:row|column|line|character|colour|[\\d.,/–−]) ?)\\b1 (?:${NOUNS})(?:s|es)\\b`, 'i');
const manyOfOne = new RegExp(`\\b(?:0|[2-9]|\\d{2,}) (?:${NOUNS})\\b(?!s| of the last)`);

/** Texts that have passed already: many figures say the same. */
const said = new Set<string>();

/**
 * A text that can be shown: sentences with figures in them and nothing that slipped through, in letters the
 * faces have, with every noun in the number of its figure.
 */
export function expectSayable(text: string): void {
  if (said.has(text)) return;
  expect(text).not.toMatch(/undefined|null|NaN|Infinity|\[object|\?/);
  expect(text).toMatch(drawn);
  expect(text).not.toMatch(/ {2}|^ | $| [.,:;]|\.\.|,\./);
  expect(text, 'a plain minus or quote').not.toMatch(/(?<!\w)-\d|["']/);
  expect(text, 'one of many').not.toMatch(oneOfMany);
  expect(text, 'many of one').not.toMatch(manyOfOne);
  expect(text, 'a sentence that blames').not.toMatch(
    /\b(?:wrong|invalid|illegal|error|fail(?:ed)?|incorrect|must not)\b/i,
  );
  said.add(text);
}

/** A sentence has its capital and its stop. */
export function expectSentences(text: string): void {
  expectSayable(text);
  expect(text).toMatch(/^[A-Z“0-9]/);
  expect(text).toMatch(/[.]$|: .+$/);
}

/** The same figures, but asking for one that is not there is a failure. */
export const strict = (values: Values, optional: readonly string[] = []): Values =>
  new Proxy(values, {
    get: (figures, name) => {
      if (typeof name === 'string' && !(name in figures) && !optional.includes(name))
        throw new Error(`no figure is called ${name}; there are ${Object.keys(figures).join(', ')}`);
      return Reflect.get(figures, name);
    },
  });
