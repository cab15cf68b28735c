import { describe, expect, it } from 'vitest';
import { larksHead, loneString } from '../../src/figures/bar-cords.ts';
import { headsAt } from '../../src/figures/heads.ts';
import { type Drawing, type FigureKey, type FigureName, figures } from '../../src/figures/index.ts';
import {
  drawPiece,
  MOMENTS,
  type PieceModel,
  pieceModel,
  piecesOf,
  standingAt,
  turnRound,
} from '../../src/figures/piece/index.ts';
import * as kept from '../../src/figures/piece/kept.ts';
import { UNIT } from '../../src/figures/piece/pen.ts';
import { basesFor, drawModel, type KnotName, knots, type Path, strandModel } from '../../src/figures/strand/index.ts';
import { toSvg } from '../../src/figures/svg.ts';
import { tiedKnots, tiedShape } from '../../src/figures/tied-knots.ts';
import type { Knot, Plan } from '../../src/solver/index.ts';
import { figureWords } from '../../src/words/figure-words.ts';
import { drawing } from '../seed.ts';
import { drawChart, planned } from './drawn.ts';
import {
  type Cord,
  inSight,
  type Meeting,
  meetingsOf,
  ReadPicture,
  type Stroke,
  strokesOf,
  turnedOver,
} from './over-under.ts';
import { cordsOf } from './piece/piece-cords.ts';
import { WAYS } from './ways.ts';

/** Milliseconds that a machine with much else to do may take for one test. */
const busy = 60_000;

/** What is wrong with how a picture shows some crossings, and which of them could be flipped unnoticed. */
interface Findings {
  readonly crossings: number;
  readonly wrong: string[];
  readonly unnoticed: string[];
}

const nameOf = ({ over, under, x, y, gap }: Meeting): string =>
  `${over.cord} at ${over.at.toFixed(1)} over ${under.cord} at ${under.at.toFixed(1)} by ${gap.toFixed(1)}, seen at ${x.toFixed(1)}, ${y.toFixed(1)}`;

/**
 * Reads a picture and compares it with its cords in space, crossing by crossing. Then each crossing is flipped: once in
 * the model, once in the picture, where the stroke of the cord beneath is painted again over all others. Both have to be noticed.
 */
function findingsOf(cords: readonly Cord[], crossings: readonly Meeting[], strokes: readonly Stroke[]): Findings {
  const picture = new ReadPicture(cords, strokes);
  const wrong = crossings.filter((one) => !picture.shows(one));
  const unnoticed = crossings.filter((one) => picture.shows(turnedOver(one)) || picture.showsWithUnderOnTop(one));
  return { crossings: crossings.length, wrong: wrong.map(nameOf), unnoticed: unnoticed.map(nameOf) };
}

function expectTrue(what: string, { wrong, unnoticed }: Findings): void {
  expect(wrong, what).toEqual([]);
  expect(unnoticed, what).toEqual([]);
}

const ofPiece = (model: PieceModel, svg: string, aside: boolean): Findings => {
  const cords = cordsOf(model, aside);
  return findingsOf(cords, inSight(cords, meetingsOf(cords)), strokesOf(svg, UNIT));
};

/** How far apart, in d, strands of the kept cords on the bar lie from the middle of the bar where they pass it. */
const BESIDE_WIRE = 1.3;
const extent = (lines: readonly (readonly (readonly number[])[])[], axis: number, most: (...all: number[]) => number) =>
  most(...lines.flatMap((line) => line.map((point) => point[axis] ?? 0)));

/**
 * The cords in space of what a figure draws by itself: folds over the wire have one half before it and one behind, and
 * what is fixed to a bar is the strand model's. Whatever else it draws is flat.
 */
function cordsDrawn(strokes: readonly Stroke[]): { readonly cords: Cord[]; readonly flat: Cord[] } {
  const cords: Cord[] = [];
  const flat: Cord[] = [];
  const fixed = new Map<string, Stroke[]>();
  for (const [i, stroke] of strokes.entries()) {
    const id = `${stroke.is.filter((name) => name !== 'f-cord').join(' ')} ${i + 1}`;
    const at = (z: number): Cord => ({ id, path: stroke.path.map(([x, y]) => [x, y, z] as const) });
    const symbol = stroke.symbol.replace(/^#\w+-|-behind$/g, '');
    if (symbol === 'fold' || symbol === 'lone') {
      if (stroke.symbol.endsWith('-behind')) continue;
      const place = `${symbol} ${stroke.at.join(' ')}`;
      fixed.set(place, [...(fixed.get(place) ?? []), stroke]);
    } else if (stroke.is.includes('f-legs')) cords.push(at(-BESIDE_WIRE));
    else if (stroke.is.includes('f-lent') && !stroke.is.includes('f-folds')) cords.push(at(-BESIDE_WIRE));
    else if (stroke.is.includes('f-folds') || stroke.is.includes('f-single')) cords.push(at(BESIDE_WIRE));
    else if (stroke.is.includes('f-metal')) cords.push(at(0));
    else flat.push(at(0));
  }
  for (const [id, own] of fixed) {
    const [line, before, down] = id.startsWith('fold')
      ? ([kept.larksHead, larksHead.before, 2.9] as const)
      : ([kept.loneString, loneString.before, 4.2] as const);
    // Without the round ends of its strokes. A lark's head is drawn wider, and a lone string narrower, where need be.
    const paths = own.map(({ path }) => path.slice(1, -1));
    const [x] = own[0]?.at ?? [0, 0];
    const low = extent(paths, 1, Math.min) - extent(before, 1, Math.min);
    const wide = extent(paths, 0, Math.max) - extent(paths, 0, Math.min);
    const turned =
      (paths[0]?.at(-1)?.[0] ?? 0) < (paths[0]?.[0]?.[0] ?? 0) !==
      (before[0]?.at(-1)?.[0] ?? 0) < (before[0]?.[0]?.[0] ?? 0);
    const across = headsAt(1, 1, { bar: 0, turned });
    const wider = wide / (extent(before, 0, Math.max) - extent(before, 0, Math.min));
    const path = line
      .filter(([, y]) => y < down)
      .map(([u, v, z]) => [x + (id.startsWith('fold') ? u * wider : across.lone(u)), low + v, z] as const);
    cords.push({ id, path });
  }
  return { cords, flat };
}

/** As the registry has it; the words are one record for all. */
const draw = (name: FigureName, plan: Plan, options: object): Drawing<FigureKey> =>
  (figures[name] as { draw(plan: Plan, options: object): Drawing<FigureKey> }).draw(plan, options);

const coloured = planned({ width: 12, height: 9, capacity: 8, chart: drawChart(drawing(7), 12, 9) });
const pieces: Readonly<Record<string, Plan>> = {
  'in colours': coloured,
  'with bundles of four': planned({ width: 14, height: 12, capacity: 6 }),
  'with a lone string': planned({ width: 9, height: 10, capacity: 5, startSide: 'right' }),
  'with a carried end': planned({ width: 13, height: 10, capacity: 8, oddMethod: 'carried-end' }),
};

/** Every piece for each way of a figure that has few; where there are many ways, each is drawn of one piece in turn. */
const piecesFor = (way: number, ways: number): [string, Plan][] =>
  Object.entries(pieces).filter((_, i, all) => ways <= 2 || i === way % all.length);

describe('what lies over what in a drawing', { timeout: busy }, () => {
  it.each(Object.keys(knots) as KnotName[])('is as the strand model has it, and no flip goes unnoticed: %s', (knot) => {
    const [least, most] = basesFor(knot);
    let crossings = 0;
    for (const strands of new Set([least, Math.min(most, 4)])) {
      const { stops } = strandModel(knot, { strands, crossings: false });
      for (const { name } of strands === least ? stops : stops.slice(-1)) {
        const model = strandModel(knot, { strands, moment: name, crossings: false });
        const found = findingsOf(model.strands, meetingsOf(model.strands), strokesOf(drawModel(model), 1));
        expectTrue(`${knot} round ${strands}, ${name}`, found);
        crossings += found.crossings;
      }
    }
    expect(crossings).toBeGreaterThan(0);
  });

  it.each(Object.keys(figures) as FigureName[])(
    'is as space has it, and no flip goes unnoticed: the figure %s',
    (name) => {
      for (const [way, options] of WAYS[name].entries())
        for (const [which, plan] of piecesFor(way, WAYS[name].length)) {
          const { shapes, ...rest } = draw(name, plan, options);
          const what = `${name} ${JSON.stringify(options)} of a piece ${which}`;
          for (const shape of shapes)
            if (shape.tag === 'cords') expectTrue(what, ofPiece(shape.model, `<svg>${shape.paint('x')}</svg>`, true));
          const others = shapes.filter(({ tag }) => tag !== 'cords' && tag !== 'window');
          const show = { id: 'x', words: figureWords, title: '', description: '' };
          const svg = toSvg(name, { ...rest, shapes: others }, show);
          // Folds and what is fixed to a bar are of one weight; where a figure has none of them, any will do.
          const [, weight = '5'] =
            /(?:class="[^"]*f-(?:legs|folds)[^"]*"|id="x-fold"><g class=" ?f-cord") style="--w:([\d.]+)/.exec(svg) ??
            [];
          const strokes = strokesOf(svg, Number(weight));
          const { cords, flat } = cordsDrawn(strokes);
          expectTrue(what, findingsOf(cords, inSight(cords, meetingsOf(cords)), strokes));
          // What has no depth has nothing to pass over.
          const across = meetingsOf([...cords, ...flat], 0).filter(({ over, under }) =>
            flat.some(({ id }) => id === over.cord || id === under.cord),
          );
          expect(across.map(nameOf), what).toEqual([]);
        }
    },
  );

  it.each(MOMENTS)(
    'is as space has it from the front and the back, and no flip goes unnoticed: a piece %s',
    (moment) => {
      for (const plan of [coloured, pieces['with a lone string'] as Plan]) {
        const front = pieceModel(piecesOf(plan, standingAt(plan, moment)));
        for (const model of [front, turnRound(front)]) {
          const svg = drawPiece(model, { id: 'x', view: model.view });
          expectTrue(`${moment} from the ${model.view}`, ofPiece(model, svg, model.view === 'back'));
        }
      }
    },
  );

  it('has floats and tails behind all else where a piece is seen from the front', () => {
    const model = pieceModel(piecesOf(coloured, standingAt(coloured, 'finished')));
    const svg = drawPiece(model, { id: 'x' });
    const aside = model.strings.flatMap(({ parts }) =>
      parts.flatMap((part) =>
        part.is === 'line' && (part.what === 'float' || part.what === 'tail') ? [part.path] : [],
      ),
    );
    expect(aside.length).toBeGreaterThan(20);
    for (const path of aside) expect(Math.min(...path.map(([, , z]) => z))).toBeLessThan(-1.5);
    const order = [...svg.matchAll(/<path d="([^"]*)" class="pc-b(?: pc-n)?"(?: color="([^"]*)")?/g)];
    const first = order.findIndex(([, , paint]) => paint === undefined);
    // One path for each string that has any, after the ring and before the first base string that hangs from it.
    expect(order.slice(0, first).length + order.slice(first).filter(([, d]) => d?.includes('M')).length).toBe(
      order.length,
    );
  });

  it.each(['forward', 'backward', 'forward-backward', 'backward-forward'] as Knot[])(
    'is as the strand model has it in the knots that a page holds for tied rows: %s',
    (knot) => {
      const held = tiedKnots();
      for (let strands = 1; strands <= 8; strands += 1) {
        const { lead, bases } = tiedShape(knot, strands);
        const cords = [lead, ...bases].map((path: Path, i) => ({ id: i === 0 ? 'leading' : `base-${i}`, path }));
        const svg = held.replace('</svg>', `<use href="#tied-${knot}-${strands}"/></svg>`);
        const found = findingsOf(cords, meetingsOf(cords), strokesOf(svg, UNIT));
        expectTrue(`${knot} round ${strands}`, found);
        expect(found.crossings).toBeGreaterThanOrEqual(2 * strands);
      }
    },
  );
});
