import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { halvesOf, standAlone } from '../../../src/components/stand-alone.ts';
import {
  drawModel,
  type KnotName,
  knots,
  mirrorId,
  type Stop,
  type StrandModel,
  strandModel,
} from '../../../src/figures/strand/index.ts';
import {
  type KnotPlate,
  knotStage,
  PLATE_LIMIT,
  platePieces,
  plateStages,
  plateWords,
  stageSentences,
  stagesMarkup,
  stopsOf,
} from '../../../src/widgets/knot/knot-plate.ts';

import { lean, shortPath } from '../../../src/widgets/knot/lean-drawing.ts';
import { mirroredWords } from '../../../src/words/knot-stages.ts';

const busy = 30_000;
const names = Object.keys(knots) as KnotName[];
const read = (path: string): string => readFileSync(new URL(`../../../src/${path}`, import.meta.url), 'utf8');

/** Path data as commands with their figures, one command for each piece, however it is written. */
function pieces(data: string): string[] {
  const takes: Readonly<Record<string, number>> = { M: 2, m: 2, l: 2, L: 2, c: 6, q: 4 };
  return [...data.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)].flatMap(([, command = '', told = '']) => {
    const figures = [...told.matchAll(/-?(?:\d+\.?\d*|\.\d+)/g)].map(([figure]) => Number(figure));
    const size = takes[command] ?? 0;
    return Array.from(
      { length: figures.length / size },
      (_, i) => `${command} ${figures.slice(i * size, (i + 1) * size).join(' ')}`,
    );
  });
}

const linesIn = (svg: string): string[] => [...svg.matchAll(/ d="([^"]*)"/g)].map(([, data = '']) => data);

describe('a knot’s drawing made lighter for a page', { timeout: busy }, () => {
  it('keeps every line of every cord as it was', () => {
    for (const knot of names) {
      const drawn = drawModel(strandModel(knot, { strands: 3 }), { twist: false, id: 'k' });
      const before = linesIn(drawn);
      const after = linesIn(lean(drawn));
      expect(after.length).toBe(before.length);
      for (const [i, data] of before.entries()) expect(pieces(after[i] ?? '')).toEqual(pieces(data));
    }
  });

  it('keeps every mark of the twist in its place', () => {
    const drawn = drawModel(strandModel('forward'), { id: 'k' });
    const starts = (svg: string, kind: RegExp): number => linesIn(svg).join('').match(kind)?.length ?? 0;
    expect(starts(lean(drawn), /m/g)).toBe(starts(drawn, /q/g));
    expect(starts(lean(drawn), /q/g)).toBe(0);
  });

  it('drops no sign that parts two figures', () => {
    expect(pieces(shortPath('M.5 .25c1 2 .3 .4 5 6c-1 0 0 .5 0 1l3 0l.5 0'))).toEqual([
      'M 0.5 0.25',
      'c 1 2 0.3 0.4 5 6',
      'c -1 0 0 0.5 0 1',
      'l 3 0',
      'l 0.5 0',
    ]);
  });

  it('says nothing in a class that the style sheet of the plate does not know', () => {
    const known = read('components/Knot.astro');
    for (const knot of names)
      for (const [, name = ''] of lean(drawModel(strandModel(knot, { strands: 2 }))).matchAll(/class="(k-[a-z]+)"/g))
        expect(known).toMatch(new RegExp(`\\.${name}\\b`));
  });
});

describe('a plate of a knot in stages', { timeout: busy }, () => {
  const shown = (knot: KnotName, stops: readonly Stop[], strands = 1) =>
    stops.map((stop) => knotStage(knot, stop, strands));

  it('refuses a knot and a stopping point that there are not, and names those there are', () => {
    expect(() => knotStage('granny' as KnotName, 'drawn-up')).toThrow('larks-head');
    expect(() => knotStage('let-out', 'drawn-up')).toThrow('at-rest, passed-behind');
  });

  it('tells the stopping points between two stages as well, so that no step is left out', () => {
    const [first = '', second = ''] = stageSentences(shown('forward', ['laid-over', 'brought-through']));
    expect(first).toBe('Lay the leading string over the base string, to the right.');
    expect(second).toMatch(/^Pass its end behind .* Bring it out /);
    const every = stageSentences(shown('forward', stopsOf('forward'))).join(' ');
    const some = stageSentences(shown('forward', ['at-rest', 'brought-through', 'drawn-up'])).join(' ');
    expect(some).toBe(every);
  });

  it('holds one drawing with a name and one sentence for each stage, and no id twice', () => {
    const markup = stagesMarkup(
      shown('larks-head', ['passed-behind', 'laid-over', 'brought-through', 'drawn-up']),
      'a',
    );
    expect(markup.match(/<svg /g)?.length).toBe(4);
    expect(markup.match(/<p>/g)?.length).toBe(4);
    const ids = [...markup.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, id] of markup.matchAll(/href="#([^"]+)"/g)) expect(ids).toContain(id);
  });

  it('stays within its weight: four stages round a bundle leave the twist out where they must', () => {
    const stops = ['brought-through', 'laid-over-again', 'brought-through-again', 'drawn-up'] as const;
    const light = stagesMarkup(shown('forward-backward', stops, 3), 'a');
    const heavy = stagesMarkup(shown('square-knot', stops, 6), 'b');
    expect(light.length).toBeLessThanOrEqual(PLATE_LIMIT);
    expect(light).toContain('k-twist');
    expect(heavy).not.toContain('k-twist');
  });
});

describe('a plate of knots for the left hand', { timeout: busy }, () => {
  const right = (plate: KnotPlate) => plateStages(plate);
  const left = (plate: KnotPlate) => plateStages(plate, 'left');
  /** Every knot and every stopping point, round one string and round three. */
  const every = names.flatMap((knot) =>
    [1, 3].map((strands): KnotPlate => ({ knots: [knot], stages: stopsOf(knot), strands })),
  );

  it('has the mirrored model: each string meets the other one’s mirror image, over and under as before', () => {
    for (const plate of every)
      for (const [i, stage] of left(plate).entries()) {
        const other = right(plate)[i]?.model;
        const bases = other?.strands.filter(({ id }) => /^base-\d+$/.test(id)).length ?? 0;
        const courses = (model: StrandModel | undefined, id: (of: string) => string) =>
          new Map(
            model?.strands.map((strand) => [
              id(strand.id),
              model.crossings
                .filter(({ strand: of }) => of === strand.id)
                .map((one) => `${one.over ? '+' : '-'}${id(one.meets)}`),
            ]),
          );
        const seen = courses(stage.model, (of) => of);
        const wanted = courses(other, (of) => mirrorId(of, bases));
        expect(seen, `${stage.knot} ${stage.stop}`).toEqual(wanted);
        for (const { id, path } of stage.model.strands) {
          const twin = other?.strands.find(({ id: of }) => mirrorId(of, bases) === id)?.path ?? [];
          expect(path.map(([x, y, z]) => [x, y, z].map((u) => u + 0))).toEqual(
            twin.map(([x, y, z]) => [-x, y, z].map((u) => u + 0)),
          );
        }
      }
  });

  it('says what the hands do with left and right, forward and backward exchanged, and nothing else changed', () => {
    for (const plate of every) {
      const [mine, built] = [stageSentences(left(plate)), stageSentences(right(plate))];
      expect(mine).toEqual(built.map(mirroredWords));
    }
    expect(mirroredWords('Backward over the left, forward to the Right')).toBe(
      'Forward over the right, backward to the Left',
    );
  });

  it('names the knot that this motion makes, and shows it as that knot is shown', () => {
    const pairs = [
      ['forward', 'backward'],
      ['forward-backward', 'backward-forward'],
      ['let-out', 'let-out-right'],
      ['gathering-left', 'gathering-right'],
    ] as const;
    for (const [knot, other] of pairs) {
      const plate = (name: KnotName): KnotPlate => ({ knots: [name], stages: stopsOf(name), strands: 3 });
      expect(platePieces(plate(knot), 'a', 'left')).toEqual(platePieces(plate(other), 'a', 'right'));
    }
    expect(plateWords(left({ knots: ['forward'], stages: ['drawn-up'], strands: 1 }))).toMatch(/^Backward knot,/);
    // A first half is the first for either hand, though the other string begins it.
    const half = left({ knots: ['square-first-half'], stages: ['laid-over'], strands: 2 });
    expect(plateWords(half)).toMatch(/^Square knot, first half,/);
    expect(half[0]?.sentence).toBe('Lay the right string over the core and under the left string.');
  });
});

describe('a plate as a file of its own', { timeout: busy }, () => {
  const style = { tokens: read('styles/tokens.css'), figures: read('styles/figures.css') };

  it('holds its colours itself and needs no page round it', () => {
    for (const knot of names) {
      const file = standAlone(drawModel(strandModel(knot, { strands: 2 }), { title: 'a', description: 'b' }), style);
      expect(file).not.toMatch(/var\(|light-dark|class=|style=/);
      expect(file).toMatch(
        /^<svg id="in-the-dark" width="1200" height="\d+" xmlns="http:\/\/www.w3.org\/2000\/svg" viewBox/,
      );
      expect(file).toContain('<desc');
    }
  });

  it('has the cords of the light page, each in its own colour', () => {
    const file = standAlone(drawModel(strandModel('let-out', { strands: 3 })), style);
    for (const name of ['--cord-base', '--cord-lead', '--cord-must']) {
      const light = new RegExp(`${name}: light-dark\\((#\\w+),`).exec(style.figures)?.[1] ?? '?';
      expect(file, name).toContain(`stroke="${light}"`);
    }
  });

  it('stands on the white of paper, and has nothing of the dark page but where it is asked for so', () => {
    const file = standAlone(drawModel(strandModel('let-out', { strands: 3 })), style);
    const [, asked = '', rest = ''] = /<style>:root:target\{(.*?)\}<\/style>(.*)/s.exec(file) ?? [];
    expect(rest).toMatch(/^<rect [^>]*fill="#ffffff"\/>/);
    for (const name of ['--cord-base', '--cord-lead', '--cord-must', '--cord-outline', '--cord-light']) {
      const [, light = '?', dark = '?'] =
        new RegExp(`${name}: light-dark\\((#\\w+), (#\\w+)\\)`).exec(style.figures) ?? [];
      expect(asked, name).toContain(`[stroke="${light}"]{stroke:${dark}}`);
      expect(rest, name).toContain(light);
      expect(rest, name).not.toContain(dark);
    }
    const ground = /:root\[data-theme='dark'\] \{[^}]*--raised: (#\w+)/.exec(style.tokens)?.[1];
    expect(asked).toContain(`>rect:first-of-type{fill:${ground}}`);
  });

  it('gives no two paints of the light page one that the dark page tells apart', () => {
    for (const knot of names) {
      const file = standAlone(drawModel(strandModel(knot, { strands: 2 })), style);
      const rules = [...file.matchAll(/\[(\w+="[^"]+)"\]\{\w+:([^}]+)\}/g)];
      expect(rules.length, knot).toBeGreaterThan(3);
      expect(new Set(rules.map(([, paint]) => paint)).size, knot).toBe(new Set(rules.map(([rule]) => rule)).size);
    }
  });

  it('makes the parts of a figure dark in the same way, by their classes', () => {
    const file = standAlone('<svg viewBox="0 0 2 2" class="fig"><text>1</text></svg>', style);
    const [before = '', asked = ''] = file.split(':root:target{');
    const ink = (theme: string) => new RegExp(`${theme}[^}]*--ink: (#\\w+)`).exec(style.tokens)?.[1];
    expect(before).toContain(`.fig text { fill: ${ink(':root,')}`);
    expect(asked).toContain(`&amp; text { fill: ${ink("data-theme='dark'")}`);
  });

  it('leaves to an element what the element says itself, and is sound as XML', () => {
    const file = standAlone('<svg viewBox="0 0 2 2" class="fig"><g class="f-cord" style="--w:3"/></svg>', style);
    expect(file).toContain('var(--w)');
    expect(file).toMatch(/stroke: var\(--cord-paint, #\w+\)/);
    expect(file).not.toMatch(/&(?!amp;)/);
    expect(halvesOf(style.figures).names).not.toContain('--cord-paint');
  });
});
