import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  type Drawing,
  drawFigure,
  type FigureKey,
  type FigureName,
  type FigureWords,
  figures,
} from '../../src/figures/index.ts';
import { toSvg } from '../../src/figures/svg.ts';
import type { Plan, Step } from '../../src/solver/index.ts';
import { figureWords } from '../../src/words/figure-words.ts';
import type { Values } from '../../src/words/numbers.ts';
import { drawing, replay, seed } from '../seed.ts';
import { expectSayable, expectSentences, strict } from '../words/sayable.ts';
import {
  drawChart,
  drawPlan,
  evening,
  labels,
  lantern,
  large,
  planned,
  second,
  small,
  third,
  together,
} from './drawn.ts';
import { WAYS } from './ways.ts';

const names = Object.keys(figures) as FigureName[];
const show = { id: 'plate', words: figureWords };
/** As the registry has it; the words are one record for all. */
const draw = (name: FigureName, plan: Plan, options: object = {}) => {
  const figure = figures[name] as { draw(plan: Plan, options?: object): ReturnType<(typeof figures)['bar']['draw']> };
  return figure.draw(plan, options);
};

/** Title and sentences of a figure. */
const wordsOf = (name: FigureName, plan: Plan, options: object): string[] => {
  const figure = figures[name] as { describe(plan: Plan, options?: object): readonly Step<FigureKey>[] };
  return figure.describe(plan, options).map(({ key, values }) => figureWords[key](values as never));
};

const extremes: Record<string, Plan> = {
  lantern,
  second,
  third,
  evening,
  small,
  large,
  narrowest: planned({ width: 2, height: 1, capacity: 2 }),
  'three strings': planned({ width: 3, height: 4, capacity: 7 }),
  'two on the bar': planned({ width: 6, height: 9, capacity: 2 }),
  'thick bundles': planned({ width: 78, height: 90, capacity: 20, maxBundle: 40 }),
  widest: planned({ width: 400, height: 60, capacity: 390 }),
  highest: planned({ width: 12, height: 1000, capacity: 8 }),
  'a carried end': planned({ width: 25, height: 32, capacity: 16, oddMethod: 'carried-end' }),
  'an idle place': planned({ width: 25, height: 32, capacity: 16 }),
  'a bar too long': planned({ width: 9, height: 12, capacity: 60 }),
};
const ways = names.flatMap((name) => WAYS[name].map((options) => [name, JSON.stringify(options), options] as const));

/** The images of a figure, each by itself; what else is an SVG is a window inside one. */
const images = (svg: string): string[] => svg.split(/(?=<svg (?![^>]*aria-hidden="true"))/);

describe('every figure', () => {
  test('has a file of its own name, and every file that draws one is in the registry', async () => {
    const folder = new URL('../../src/figures/', import.meta.url);
    const found: string[] = [];
    for (const file of readdirSync(folder).filter((name) => name.endsWith('.ts') && name !== 'index.ts')) {
      const exported = Object.values((await import(new URL(file, folder).href)) as Record<string, unknown>);
      for (const one of exported)
        if (one && typeof one === 'object' && 'draw' in one && 'describe' in one && 'name' in one) {
          expect(`${one.name}.ts`).toBe(file);
          expect(figures[one.name as FigureName]).toBe(one);
          found.push(String(one.name));
        }
    }
    expect(found.sort()).toEqual(names.sort());
  });

  test(`draws 200 pieces at random with no figure missing, no label outside and no two on each other (${replay})`, () => {
    const next = drawing(seed);
    for (let piece = 0; piece < 200; piece += 1) {
      const plan = drawPlan(next);
      for (const [name, asked, options] of ways) {
        const drawn = draw(name, plan, options);
        const [title = '', ...description] = wordsOf(name, plan, options);
        const svg = toSvg(name, drawn as Drawing<FigureKey>, { ...show, title, description: description.join(' ') });
        const what = `${name} ${asked} of ${JSON.stringify(plan.fit)}`;
        expect(svg, what).not.toMatch(/NaN|Infinity|undefined|null|\[object| d=""|width="-|height="-|--w:-/);
        expectSentences(title.endsWith('.') ? title : `${title}.`);
        for (const sentence of description) expectSentences(sentence);
        const all = labels(drawn, figureWords as never);
        expect(together(all), what).toBeNull();
        expect(Math.min(0, ...all.map(({ left }) => left)), what).toBe(0);
        expect(Math.max(drawn.width, ...all.map(({ right }) => right)), what).toBe(drawn.width);
      }
    }
  }, 120_000);

  test.each(Object.entries(extremes))(
    'has all its text inside the drawing and no two labels on each other: %s',
    (_, plan) => {
      for (const [name, asked, options] of ways) {
        const drawn = draw(name, plan, options);
        const all = labels(drawn, figureWords as never);
        for (const label of all) {
          const where = `${name} ${asked}: “${label.text}”`;
          expect(label.left, where).toBeGreaterThanOrEqual(0);
          expect(label.right, where).toBeLessThanOrEqual(drawn.width);
          expect(label.top, where).toBeGreaterThanOrEqual(0);
          expect(label.bottom, where).toBeLessThanOrEqual(drawn.height);
          expectSayable(label.text);
        }
        expect(together(all), `${name} ${asked}`).toBeNull();
      }
    },
  );

  test('has text of at least 3.2 % of its width where it is made for a phone', () => {
    for (const name of names) {
      const { svg } = drawFigure(name, lantern, {}, show);
      const [, width] = /viewBox="0 0 (\d+) /.exec(svg) ?? [];
      const [, size] = /font-size="([\d.]+)"/.exec(svg) ?? [];
      expect(Number(size) / Number(width), name).toBeGreaterThanOrEqual(0.032);
      expect(svg.match(/font-size=/g), name).toHaveLength(images(svg).length);
    }
  });

  test('that tells lengths is drawn in both units, each with its own words, and the others once', () => {
    for (const name of names) {
      const drawn = drawFigure(name, lantern, {}, show);
      const all = images(drawn.svg);
      if (!('measures' in figures[name])) {
        expect([all.length, drawn.inInches], name).toEqual([1, undefined]);
        expect(drawn.svg, name).not.toMatch(/\d\s(mm|cm|in)\b/);
        continue;
      }
      expect(all, name).toHaveLength(2);
      expect(all[0], name).toMatch(/^<svg data-units="metric"/);
      expect(all[1], name).toMatch(/^<svg data-units="inches"/);
      expect(all[0], name).not.toMatch(/[\d¼½¾]\sin\b/);
      expect(all[1], name).not.toMatch(/\d\s(mm|cm|m)\b/);
      expect(`${drawn.title} ${drawn.description}`, name).toMatch(/\d\s(mm|cm)\b/);
      expect(drawn.inInches, name).toMatch(/[\d¼½¾]\sin\b/);
      expect(images(drawFigure(name, lantern, { units: 'inches' }, show).svg), name).toHaveLength(1);
    }
  });

  test('is well made: every tag is closed, ids are its own, and every reference leads somewhere', () => {
    for (const plan of [lantern, third, large])
      for (const [name, , options] of ways) {
        const { svg } = drawFigure(name, plan, options, show);
        const open: string[] = [];
        for (const [, close, tag = '', self] of svg.matchAll(/<(\/?)([a-z]+)[^>]*?(\/?)>/g)) {
          if (close) expect(open.pop()).toBe(tag);
          else if (!self) open.push(tag);
        }
        expect(open).toEqual([]);
        const ids = [...svg.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id ?? '');
        expect(new Set(ids).size).toBe(ids.length);
        expect(ids.every((id) => id.startsWith('plate-'))).toBe(true);
        for (const [, to] of svg.matchAll(/(?:href="|url\()#([^")]+)/g)) expect(ids).toContain(to);
      }
  });

  test('needs no figure that its data does not have', () => {
    const careful = Object.fromEntries(
      Object.entries(figureWords).map(([key, say]) => [
        key,
        (values: Values) => say(strict(values, ['over', 'lone', 'colour'])),
      ]),
    ) as FigureWords;
    for (const plan of [lantern, third, small, extremes['a carried end'] as Plan])
      for (const [name, , options] of ways)
        expect(drawFigure(name, plan, options, { id: 'plate', words: careful }).title).not.toBe('');
  });

  test('has words for its keys and no others, and each of them is said of some piece', () => {
    const said = new Set<string>();
    const note = new Proxy(figureWords, {
      get: (words, key) => {
        said.add(String(key));
        return Reflect.get(words, key);
      },
    });
    for (const plan of [
      ...Object.values(extremes),
      planned({ width: 24, height: 5, capacity: 16 }),
      planned({ width: 12, height: 14, capacity: 8, closingBundle: 1 }),
      planned({ width: 12, height: 14, capacity: 8, chart: drawChart(drawing(7), 12, 14) }),
      planned({ width: 12, height: 14, capacity: 12, chart: drawChart(drawing(7), 12, 14) }),
      planned({ width: 26, height: 32, capacity: 16, chart: drawChart(drawing(), 26, 32) }),
      planned({ width: 40, height: 12, capacity: 40, chart: drawChart(drawing(), 40, 12) }),
    ])
      for (const [name, , options] of ways) drawFigure(name, plan, options, { id: 'plate', words: note });
    const { chart } = figures;
    for (const { key } of chart.describe({
      chart: { width: 2, height: 1, palette: [{ name: 'tar', colour: '#000' }], cells: new Uint8Array(2) },
    }))
      said.add(key);
    const all = Object.keys(figureWords) as FigureKey[];
    expect([...said].sort()).toEqual(all.sort());
  });
});
