import { expect, test } from 'vitest';
import { keptPage } from '../../src/offline/kept-page.ts';

test('a page is kept as the index of its folder, wherever the workbook is served', () => {
  expect(keptPage('/')).toEqual({ act: 'show', path: '/index.html' });
  expect(keptPage('/some/where/lessons/widening/')).toEqual({
    act: 'show',
    path: '/some/where/lessons/widening/index.html',
  });
});

test('a file is kept under its own name', () => {
  expect(keptPage('/charts/lantern.chart.txt')).toEqual({ act: 'show', path: '/charts/lantern.chart.txt' });
});

test('an address without its last slash leads to the one with it', () => {
  expect(keptPage('/lessons/widening')).toEqual({ act: 'redirect', path: '/lessons/widening/' });
});
