import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

const SRC = new URL('../../src/', import.meta.url);
const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.(css|astro)$/.test(path) && !path.endsWith('tokens.css'))
  .sort();

/** The style rules of a file outside the layer of tokens: all of a style sheet, the style elements of a page part. */
function rules(path: string): string {
  const text = readFileSync(new URL(path, SRC), 'utf8');
  const css = path.endsWith('.css')
    ? text
    : [...text.matchAll(/<style[^>]*>([\s\S]*?)<\/style>/g)].map(([, css]) => css).join('\n');
  // What stands at the foot of a printed sheet is out of reach of tokens.
  return css
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/@page\s*\{[\s\S]*?\n\}/g, '')
    .replace(/^@layer tokens \{[\s\S]*?\n\}/gm, '');
}

it('has style rules to look at', () => {
  expect(files.filter((path) => rules(path) !== '').length).toBeGreaterThan(8);
});

it.each(files)('%s takes its colours and times from the tokens', (path) => {
  expect(
    rules(path).match(/#[0-9a-f]{3,8}\b|\b(?:rgb|hsl|oklch|oklab|lab|lch)a?\([^)]*\)|\b\d+(?:\.\d+)?m?s\b/gi) ?? [],
  ).toEqual([]);
});
