import { z } from 'astro/zod';
import { describe, expect, test } from 'vitest';
import { cautions } from '../../src/entries/cautions.ts';
import { faultEntry, faults } from '../../src/entries/faults.ts';
import { glossary, termOf, wordEntry } from '../../src/entries/glossary.ts';
import { ids, lessonNumber, readSheet, words } from '../../src/entries/sheet.ts';
import { figures } from '../../src/figures/index.ts';
import { knots } from '../../src/figures/strand/index.ts';
import { expectSentences } from '../words/sayable.ts';

const said = (text: string): void => {
  for (const sentence of text.split(/(?<=[.”]) (?=[A-Z“])/)) expectSentences(sentence);
};

describe('the glossary', () => {
  test('says each word in whole sentences, and explains none by itself', () => {
    for (const { term, means } of glossary) {
      said(means);
      expect(means.toLowerCase(), term).not.toMatch(new RegExp(`^(?:a|an|the|one) ${term.toLowerCase()}s?\\b`));
    }
  });
  test('has every word of the trade that lessons stand on', () => {
    const trade =
      'base-string leading-string fold larks-head capacity spare-strings side-bundle row opening closing outline corner-cell turning-knot lone-string carried-end float swatch';
    expect(glossary.map(({ id }) => id)).toEqual(expect.arrayContaining(trade.split(' ')));
  });
  test('leads only to words that there are', () => {
    for (const { id, near } of glossary)
      for (const other of near) {
        expect(termOf(other).id).toBe(other);
        expect(other).not.toBe(id);
      }
    expect(() => termOf('thread of gold')).toThrow(/There are: .*float/);
  });
});

describe('faults and cautions', () => {
  test('say what is seen, why, what to do and how to check it', () => {
    expect(faults.length).toBeGreaterThanOrEqual(14);
    for (const { see, cause, fix, check } of faults) {
      expect(see).toMatch(/^[A-Z].*[^.]$/);
      for (const text of [cause, fix, check]) said(text);
    }
  });
  test('ask for plates that can be drawn', () => {
    for (const { id, fault, mended } of faults) {
      for (const { knot, figure, caption } of [fault, mended]) {
        expect(Object.keys(knot ? knots : figures)).toContain(knot ?? figure);
        said(caption);
      }
      expect({ ...fault, caption: '' }, id).not.toEqual({ ...mended, caption: '' });
    }
  });
  test('stop the build where a plate of the fault, of the mended work or of a word is missing', () => {
    const fault = (without: string): string =>
      ['see: It curls', 'cause: It was pulled.', 'fix: Lead it again.', 'check: Let it lie flat.', 'lesson: 10']
        .concat(
          ['fault', 'mended']
            .filter((one) => one !== without)
            .map((one) => `${one}: { knot: float, caption: A float. }`),
        )
        .reduce((text, line) => `${text}  ${line}\n`, '- id: curls\n');
    expect(readSheet('x', fault(''), faultEntry)).toHaveLength(1);
    for (const one of ['fault', 'mended'])
      expect(() => readSheet('x', fault(one), faultEntry)).toThrow(new RegExp(`line 1, ${one}: nothing stands there`));
    const word = '- id: float\n  term: float\n  means: A resting string.\n  lesson: 10\n';
    expect(readSheet('x', `${word}  plate: float-drawn-up\n`, wordEntry)).toHaveLength(1);
    expect(() => readSheet('x', word, wordEntry)).toThrow(/line 1, plate: nothing stands there/);
  });
  test('hold what a table has to be warned of', () => {
    const all = cautions.flatMap(({ points }) => points).join(' ');
    for (const point of cautions.flatMap(({ points }) => points)) said(point);
    for (const danger of [
      'pins',
      'strangle',
      'under three',
      'flame',
      'fingers',
      'glue|Sew',
      'nickel',
      'load',
      'vehicle',
      'half hour',
      'professional',
      'first-aid',
      'product-safety',
      'permission',
    ])
      expect(all).toMatch(new RegExp(danger));
  });
});

describe('a list with mistakes', () => {
  const entry = z.strictObject({ id: ids('id'), means: words('meaning', 5, 20), lesson: lessonNumber });
  test('names each with its line, what stands there and what would do, all at once', () => {
    const text =
      '- id: Float\n  means: it floats\n  lesson: 10\n- id: fold\n  means: two\n  lesson: 40\n  colour: red\n';
    const told = (() => {
      try {
        readSheet('content/x.yaml', text, entry);
        return '';
      } catch (mistakes) {
        return String(mistakes);
      }
    })();
    expect(told).toContain('content/x.yaml, line 1, id: “Float” stands there. An id in small letters with hyphens');
    expect(told).toContain('line 5, means: “two” stands there. A text of 5 to 20 characters would do.');
    expect(told).toContain('line 6, lesson: 40 stands there. The number of a lesson, from 1 to 15 would do.');
    expect(told).toContain('line 7, colour: this field is not known.');
  });
  test('an id that comes twice is one, and so is a text that is no list', () => {
    const twice = '- id: fold\n  means: it folds\n  lesson: 4\n- id: fold\n  means: it folds\n  lesson: 4\n';
    expect(() => readSheet('content/x.yaml', twice, entry)).toThrow(
      /line 4, id: “fold” stands there, as it does further up/,
    );
    expect(() => readSheet('content/x.yaml', '- id: "', entry)).toThrow(/line 1/);
    expect(() => readSheet('content/x.yaml', 'fold', entry)).toThrow(/line 1/);
  });
  test('an apostrophe is made curly', () =>
    expect(readSheet('x', "- id: fold\n  means: It can't slip.\n  lesson: 4\n", entry)[0]?.means).toBe(
      'It can’t slip.',
    ));
});
