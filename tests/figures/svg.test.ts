import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../src/figures/drawing.ts';
import { d } from '../../src/figures/drawing.ts';
import { toSvg } from '../../src/figures/svg.ts';

const plain: Drawing<'label'> = { width: 100.2, height: 50, shapes: [] };
const words = { label: ({ name }: Readonly<Record<string, number | string>>) => `called ${name}` };
const shown = { id: 'a', words, title: 'A title', description: 'In words.' };

describe('a drawing as text', () => {
  test('is one image, named by its own title and description', () => {
    expect(toSvg('bar', plain, shown)).toBe(
      '<svg class="fig fig-bar" viewBox="0 0 101 50" role="img" aria-labelledby="a-title a-text" fill="none" font-size="13" text-anchor="middle"><title id="a-title">A title</title><desc id="a-text">In words.</desc></svg>',
    );
  });

  test('is named by what the page says of it where the page says so', () => {
    const svg = toSvg('bar', plain, { ...shown, labelledBy: 'caption words' });
    expect(svg).toContain('aria-labelledby="caption words"');
    expect(svg).not.toContain('<title');
  });

  test('lets no sign of a label or a colour become part of the markup', () => {
    const svg = toSvg(
      'bar',
      {
        ...plain,
        shapes: [
          { tag: 'text', x: 0, y: 0, say: { key: 'label', values: { name: '<b>"tar" & chalk</b>' } } },
          { tag: 'path', d: 'M0 0', fill: '"><script>' },
          { tag: 'cord', d: 'M0 0h9', width: 5, colour: 'red"><script>' },
        ],
      },
      { ...shown, title: '<i>' },
    );
    expect(svg).not.toMatch(/<(?:script|b|i)>/);
    expect(svg).toContain('called &#60;b&#62;&#34;tar&#34; &#38; chalk&#60;/b&#62;');
  });

  test('puts its own id before every id and reference', () => {
    const svg = toSvg(
      'bar',
      {
        ...plain,
        shapes: [
          { tag: 'defs', shapes: [{ tag: 'g', id: 'fold', shapes: [] }] },
          { tag: 'use', href: 'fold', x: 3 },
          { tag: 'rect', x: 0, y: 0, width: 5, height: 5 },
          { tag: 'path', d: 'M0 0h5v5z', paint: 'hatch' },
        ],
      },
      shown,
    );
    expect(svg).toContain('id="a-fold"');
    expect(svg).toContain('href="#a-fold"');
    expect(svg).toContain('fill="url(#a-hatch)"');
  });

  test('leaves out what has no line to draw', () => {
    const shapes = [
      { tag: 'path', d: '' },
      { tag: 'cord', d: '', width: 3 },
    ] as const;
    expect(toSvg('bar', { ...plain, shapes }, shown)).not.toContain('<path');
  });

  test('has figures to a tenth of a unit', () => {
    expect(d`M${1 / 3} ${-2}h${10.06}`).toBe('M0.3 -2h10.1');
  });
});
