import { expect, test } from 'vitest';
import { finder } from '../../src/widgets/search/finder.ts';

const section = (heading: string, text: string) => ({ url: `#${heading}`, page: 'Widening', heading, text });
const find = finder([
  section('Borrowing two', 'An odd half is mended by two strings from the bar.'),
  section('Letting out', 'The innermost string of the bundle comes out. Nothing is borrowed here.'),
  section('The straight part', 'Two bundles have become single strings.'),
]);
const headings = (query: string) => find(query).map(({ section }) => section.heading);

test('a heading counts more than the text below another one', () => {
  expect(headings('borrow')).toEqual(['Borrowing two', 'Letting out']);
});

test('all words are looked for together; where none has all, any will do', () => {
  expect(headings('innermost bundle')).toEqual(['Letting out']);
  expect(headings('innermost zebra')).toEqual(['Letting out']);
});

test('a word that is only begun finds, and so does one with a slip of the keys', () => {
  expect(headings('inner')).toEqual(['Letting out']);
  expect(headings('bundel')).toEqual(['The straight part', 'Letting out']);
  expect(headings('innermsot')).toEqual(['Letting out']);
  expect(headings('zebra')).toEqual([]);
});
