import { expect, test } from 'vitest';
import { sectionsOf } from '../../.config/offline/search-text.ts';

const page = (main: string, head = '') =>
  `<html><head>${head}</head><body><main id="main">${main}</main></body></html>`;

test('a page is read by its headings, each with the text up to the next one', () => {
  const html = page(
    '<article><h1>Widening</h1><p>One string a row.</p><section id="out"><h2>Letting <em>out</em></h2><ul><li>Pull it</li><li>forward.</li></ul></section></article>',
  );
  expect(sectionsOf('lessons/widening/', html)).toEqual([
    { url: 'lessons/widening/', page: 'Widening', heading: 'Widening', text: 'One string a row.' },
    { url: 'lessons/widening/#out', page: 'Widening', heading: 'Letting out', text: 'Pull it · forward.' },
  ]);
});

test('questions, drawings and controls are not read', () => {
  const html = page(
    '<h1>Sum</h1><p>Read me.</p><section class="exercise"><h3 id="e">Exercise 1</h3><p>How many?</p></section><svg><text>4</text></svg><button>Print</button><script>let a</script>',
  );
  expect(sectionsOf('', html)).toEqual([{ url: '', page: 'Sum', heading: 'Sum', text: 'Read me.' }]);
});

test('passages that are not so of the worked example are not read, nor files to keep, nor the tools of a lesson', () => {
  const html = page(
    '<h1>Row 1</h1><div class="lesson-tools"><a href="/">Show it</a></div><p><span data-when="bundles">The left bundle has 6 strings.</span><span data-when="straight" hidden>There are no bundles.</span></p><p>A knot. <a href="k.svg" download>SVG</a></p>',
  );
  expect(sectionsOf('', html)[0]?.text).toBe('The left bundle has 6 strings. A knot.');
});

test('a page that no list should hold is not read', () => {
  expect(sectionsOf('', page('<h1>Gone</h1>', '<meta name="robots" content="noindex">'))).toEqual([]);
});

test('a heading without text of its own is left to those below it', () => {
  const html = page(
    '<h1>Faults</h1><p>All of them.</p><h2 id="rows">Rows</h2><h3 id="late">A row late</h3><p>Count.</p>',
  );
  expect(sectionsOf('faults/', html).map(({ url }) => url)).toEqual(['faults/', 'faults/#late']);
});
