import { describe, expect, test } from 'vitest';
import { capital, count, figure, list, noun, numberWord, ordinal, times } from '../../src/words/numbers.ts';

describe('figures in a sentence', () => {
  test.each([
    [0, '0'],
    [-0, '0'],
    [7, '7'],
    [-10, '−10'],
    [2.5, '2.5'],
    [0.1 + 0.2, '0.3'],
    [-0.001, '0'],
    [1000, '1000'],
    [9999.999, '10,000'],
    [12345, '12,345'],
    [-1234567.25, '−1,234,567.25'],
    ['samphire', 'samphire'],
  ])('%s is read as %s', (value, text) => expect(figure(value)).toBe(text));

  test.each([Number.NaN, Number.POSITIVE_INFINITY, undefined, null])(
    '%s is no figure, and shown as a question mark',
    (value) => expect(figure(value)).toBe('?'),
  );

  test.each([
    [0, '0 folds'],
    [1, '1 fold'],
    [2, '2 folds'],
    [1.5, '1.5 folds'],
    [12000, '12,000 folds'],
  ])('%s of them are %s', (value, text) => expect(count(value, 'fold')).toBe(text));

  test('nouns that end in a hiss take es, and others may bring their own plural', () => {
    expect(count(2, 'half hitch')).toBe('2 half hitches');
    expect(count(3, 'half', 'halves')).toBe('3 halves');
    expect(noun(1, 'is', 'are')).toBe('is');
  });

  test('small numbers have words, larger ones digits', () => {
    expect([0, 1, 12, 20, 21].map(numberWord)).toEqual(['zero', 'one', 'twelve', 'twenty', '21']);
    expect([1, 2, 3].map(times)).toEqual(['once', 'twice', 'three times']);
  });

  test('the first ten places have words, the teens end in th', () => {
    expect([1, 2, 3, 10, 11, 12, 13, 21, 22, 23, 24, 101, 111, 112].map(ordinal)).toEqual(
      'first second third tenth 11th 12th 13th 21st 22nd 23rd 24th 101st 111th 112th'.split(' '),
    );
  });

  test('the last of a list has its own word before it', () => {
    expect(list([])).toBe('');
    expect(list(['tar'])).toBe('tar');
    expect(list(['tar', 'chalk'])).toBe('tar and chalk');
    expect(list(['5', '6', '7'], 'or')).toBe('5, 6 or 7');
    expect(capital('lay it down')).toBe('Lay it down');
  });
});
