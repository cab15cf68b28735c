import type { Drawing, Shape, Words } from '../../src/figures/drawing.ts';
import type { Chart, Plan, PlanInput } from '../../src/solver/index.ts';
import { finishSteps, fitPiece, planPiece, planRows } from '../../src/solver/index.ts';
import type { Draw } from '../seed.ts';
import { drawOutline } from '../solver/worlds.ts';

/** A plan that can be made, or a failure that says why not. */
export function planned(input: PlanInput): Plan {
  const plan = planPiece(input);
  if (!plan.ok) throw new Error(`${plan.problem.code}: ${JSON.stringify(plan.problem.values)}`);
  return plan;
}

/** The worked examples of the lessons. */
export const lantern = planned({ width: 26, height: 32, capacity: 16 });
export const second = planned({ width: 24, height: 30, capacity: 16 });
export const third = planned({ width: 21, height: 26, capacity: 15 });
export const evening = planned({ width: 12, height: 14, capacity: 8 });
/** As small and as large as drawings are asked for. */
export const small = planned({ width: 4, height: 6, capacity: 4 });
export const large = planned({ width: 60, height: 80, capacity: 46 });

/** A chart of six colours, one of them blank, at random. */
export function drawChart(draw: Draw, width: number, height: number): Chart {
  const palette: Chart['palette'] = [
    { name: 'chalk', colour: '#f4efe2', ground: true },
    { name: 'tar', colour: '#22252b' },
    { name: 'samphire', colour: '#7c9a4b' },
    { name: 'rust', colour: '#a4502e' },
    { name: 'estuary blue', colour: '#2f5f7e' },
    { name: 'blank', colour: 'none', blank: true },
  ];
  return { width, height, palette, cells: Uint8Array.from({ length: width * height }, () => draw(0, 4)) };
}

/** Any piece: an ordinary plan, or an outline that opens and closes as it likes; with a chart or without. */
export function drawPlan(draw: Draw): Plan {
  if (draw(0, 1) === 0) {
    const width = draw(2, draw(0, 3) === 0 ? 90 : 34);
    const figures = { width, capacity: draw(2, width + 6), maxBundle: draw(2, 12) };
    const startSide = draw(0, 1) ? 'left' : 'right';
    const oddMethod = draw(0, 1) ? 'lone-string' : 'carried-end';
    const fit = fitPiece({ ...figures, startSide, oddMethod });
    const height = draw(1, 60);
    const input: PlanInput = { ...figures, ...(fit.ok ? {} : { capacity: width }), startSide, oddMethod, height };
    const plan = planPiece(draw(0, 1) ? input : { ...input, chart: drawChart(draw, width, height) });
    return plan.ok ? plan : drawPlan(draw);
  }
  const { fit, bundles, startSide } = drawOutline(draw);
  const rows = planRows({ fit, bundles, startSide });
  const finish = finishSteps({ fit, bundles, startSide });
  if (!Array.isArray(rows) || !finish.ok) throw new Error('an outline of the test worlds must be legal');
  const full = rows.filter(({ knots }) => knots === fit.width);
  const outline = {
    ok: true,
    ...bundles,
    fullWidthRows: full.length,
    firstFullRow: full[0]?.row ?? null,
    firstClosingRow: null,
  };
  return { ok: true, fit, alternatives: [], working: [], outline, rows, finish, startSide, chart: null };
}

type AnyShape = Shape<string>;

/** All shapes but those in defs, which are only there to be used. */
function flat(shapes: readonly AnyShape[]): AnyShape[] {
  return shapes.flatMap((shape) =>
    shape.tag === 'defs' || shape.tag === 'pattern' ? [] : 'shapes' in shape ? [shape, ...flat(shape.shapes)] : [shape],
  );
}
export const shapesOf = (drawing: Drawing<string>): AnyShape[] => flat(drawing.shapes);

const isAll = (shape: AnyShape, names: readonly string[]): boolean => {
  const own = (shape.is ?? '').split(' ');
  return names.every((name) => own.includes(name));
};

/** The shapes that are all that is named. */
export const named = (drawing: Drawing<string>, ...names: string[]): AnyShape[] =>
  shapesOf(drawing).filter((shape) => isAll(shape, names));

const dataOf = (shape: AnyShape): string => ('d' in shape ? shape.d : '');

/** How many lines the shapes have, each beginning with a move. */
export const lines = (shapes: readonly AnyShape[]): number =>
  shapes.reduce((sum, shape) => sum + (dataOf(shape).match(/M/g)?.length ?? 0), 0);

/** The area of rectangles given as M H/h v H/h z. */
export function area(shapes: readonly AnyShape[]): number {
  let sum = 0;
  for (const shape of shapes)
    for (const [, x, way, to, down] of dataOf(shape).matchAll(/M(-?[\d.]+) -?[\d.]+([Hh])(-?[\d.]+)v(-?[\d.]+)/g))
      sum += (way === 'h' ? Number(to) : Number(to) - Number(x)) * Number(down);
  return sum;
}

/** The symbol that is used, how often. */
export const used = (drawing: Drawing<string>, id: string): number =>
  shapesOf(drawing).filter((shape) => shape.tag === 'use' && shape.href === id).length;

export interface Label {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Widths of letters in units of the text's size, as the text face has them, rounded up. */
const widthOf = (text: string, strong: boolean): number =>
  [...text].reduce(
    (sum, letter) =>
      sum + (/[ijlft.,:;’ ]/.test(letter) ? 0.33 : /[mwMW—]/.test(letter) ? 0.88 : /\d/.test(letter) ? 0.63 : 0.57),
    0,
  ) * (strong ? 1.05 : 1);

/** Every label with the room it takes at the size all text has. */
export function labels<Key extends string>(drawing: Drawing<Key>, words: Words<Key>, size = 13): Label[] {
  return shapesOf(drawing as Drawing<string>).flatMap((shape) => {
    if (shape.tag !== 'text') return [];
    const text = typeof shape.say === 'string' ? shape.say : words[shape.say.key as Key](shape.say.values);
    const width = widthOf(text, isAll(shape, ['strong'])) * size;
    const left = shape.x - (shape['text-anchor'] === 'start' ? 0 : shape['text-anchor'] === 'end' ? width : width / 2);
    return [{ text, left, right: left + width, top: shape.y - size * 0.75, bottom: shape.y + size * 0.2 }];
  });
}

/** The first two labels that run together, or null. */
export function together(all: readonly Label[]): [Label, Label] | null {
  for (const [index, one] of all.entries())
    for (const other of all.slice(index + 1))
      if (one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom)
        return [one, other];
  return null;
}
