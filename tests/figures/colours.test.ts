import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { drawFigure, type FigureName, figures } from '../../src/figures/index.ts';
import { figureWords } from '../../src/words/figure-words.ts';
import { drawing } from '../seed.ts';
import { block, contrast } from '../styles/tokens.ts';
import { drawChart, lantern, planned, small, third } from './drawn.ts';

const css = readFileSync(new URL('../../src/styles/figures.css', import.meta.url), 'utf8').replace(
  /\/\*[\s\S]*?\*\//g,
  '',
);
const pairs = new Map(
  [...css.matchAll(/--([\w-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g)].map(
    ([, name = '', light = '', dark = '']) => [name, { light, dark }],
  ),
);
const cord = (name: string, theme: 'light' | 'dark'): string => {
  const pair = pairs.get(name);
  if (!pair) throw new Error(`figures.css has no --${name} for light and dark`);
  return pair[theme];
};
const grounds = {
  light: block(":root, :root[data-theme='light']"),
  dark: block(":root[data-theme='dark']"),
};

describe('cords', () => {
  test('stand out from the page: by their edge on a light one, by themselves on a dark one', () => {
    for (const ground of ['paper', 'raised', 'sunk']) {
      expect(contrast(cord('cord-outline', 'light'), grounds.light[ground] ?? '')).toBeGreaterThanOrEqual(3);
      expect(contrast(cord('cord-metal-edge', 'light'), grounds.light[ground] ?? '')).toBeGreaterThanOrEqual(3);
      for (const name of ['cord-base', 'cord-lead', 'cord-must', 'cord-metal'])
        expect(contrast(cord(name, 'dark'), grounds.dark[ground] ?? ''), `${name} on ${ground}`).toBeGreaterThanOrEqual(
          3,
        );
    }
  });

  test('of any colour are seen on what lies behind threads: by their edge, and the darkest by themselves', () => {
    for (const theme of ['light', 'dark'] as const) {
      const board = grounds[theme]['board'] ?? '';
      expect(contrast(cord('cord-outline', theme), board), theme).toBeGreaterThanOrEqual(3);
      if (theme === 'dark') expect(contrast(cord('cord-metal', theme), board), 'the ring').toBeGreaterThanOrEqual(3);
      // A thread as dark as its own edge has no edge to be seen by.
      for (const thread of [cord('cord-outline', theme), '#000000'])
        expect(contrast(thread, board), `${thread}, ${theme}`).toBeGreaterThanOrEqual(3);
    }
  });

  test('keep their edges: each kind of cord stands out from the line round it', () => {
    for (const theme of ['light', 'dark'] as const)
      for (const name of ['cord-base', 'cord-lead', 'cord-must'])
        expect(contrast(cord(name, theme), cord('cord-outline', theme)), `${name}, ${theme}`).toBeGreaterThanOrEqual(
          1.5,
        );
  });

  test('of the leading string and those that must move differ from base strings without their colour', () => {
    for (const theme of ['light', 'dark'] as const)
      expect(contrast(cord('cord-lead', theme), cord('cord-base', theme)), theme).toBeGreaterThanOrEqual(1.5);
    expect(contrast(cord('cord-must', 'light'), cord('cord-base', 'light'))).toBeGreaterThanOrEqual(3);
  });
});

test('marks stand out from light and from dark cells', () => {
  const value = (name: string): string => new RegExp(`--${name}: (#[0-9a-f]{6})`).exec(css)?.[1] ?? '';
  // Where black and white contrast alike: a grey of this luminance is the hardest cell to mark.
  expect(contrast(value('cord-mark'), '#767676')).toBeGreaterThanOrEqual(3.5);
  expect(contrast(value('cord-mark-on-dark'), '#757575')).toBeGreaterThanOrEqual(3.5);
});

test('the style sheet has no rule for a part that no figure draws', () => {
  const next = drawing(7);
  const charted = planned({ width: 26, height: 32, capacity: 16, chart: drawChart(next, 26, 32) });
  const asked: Partial<Record<FigureName, object[]>> = {
    bar: [{ stage: 'capacity' }, { stage: 'shared' }, {}],
    outline: [
      { show: 'bundles', row: 3 },
      { lost: true, added: { rowsAbove: 1 } },
    ],
    row: [{ knot: 3 }, { coloured: true }],
  };
  const wide = planned({ width: 90, height: 40, capacity: 80 });
  let svg = '';
  for (const name of Object.keys(figures) as FigureName[])
    for (const plan of [lantern, third, small, charted, wide])
      for (const options of asked[name] ?? [{}])
        svg += drawFigure(name, plan, options, { id: 'a', words: figureWords }).svg;
  const drawn = new Set([...svg.matchAll(/class="([^"]*)"/g)].flatMap(([, names = '']) => names.split(' ')));
  const ruled = new Set([...css.matchAll(/\.(f-[a-z-]+)/g)].map(([, name = '']) => name));
  expect([...ruled].filter((name) => !drawn.has(name))).toEqual([]);
});
