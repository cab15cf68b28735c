import type { Chart } from '../solver/chart.ts';
import type { Fit, RowPlan } from '../solver/piece.ts';
import { d, path, type Shape } from './drawing.ts';
import { runsOf } from './knots.ts';
import {
  COLUMN,
  edgesOf,
  levelFor,
  type Moved,
  type PieceModel,
  PiecePainter,
  pieceModel,
  pieceStyle,
  ROW,
  topOf,
  turnRound,
  UNIT,
} from './piece/index.ts';

/** Columns that are drawn, the first and the last of a stretch; both count. */
export type Stretch = readonly [from: number, to: number];

export interface CordRowsInput {
  readonly fit: Fit;
  readonly chart: Chart | null;
  /** All rows of the piece; those that are drawn may have faults. */
  readonly rows: readonly RowPlan[];
  /** The first and the last row that is drawn. */
  readonly from: number;
  readonly to: number;
  /** Knots of the last row that are tied; all when left out. */
  readonly knot?: number | undefined;
  /** In the chart's colours; otherwise the leading string has the colour it has in all drawings. */
  readonly coloured: boolean;
  readonly moved: readonly Moved[];
  /** How what was tied differs from the rows, where a fault is in the cords alone. */
  readonly altered?: ((model: PieceModel) => PieceModel) | undefined;
  /** Seen from behind, where left and right change places. */
  readonly behind?: boolean | undefined;
  /** Colours whose floats hang slack, so that each can be followed. */
  readonly slack?: readonly number[] | undefined;
  /** From the end of one row to the next, in d. */
  readonly apart: number;
  /** How far the strings are seen below the last row, in d. */
  readonly below: number;
  /** Columns that are drawn where some are left out, from the left. */
  readonly stretches: readonly Stretch[];
  /** Units of the drawing: its width, what stays free at either side, where the cords begin, and the widest column. */
  readonly across: number;
  readonly gutter: number;
  readonly top: number;
  readonly widest: number;
}

export interface CordRows {
  readonly model: PieceModel;
  /** The cords and the windows through which they are seen, and where columns are left out. */
  readonly shapes: readonly Shape<never>[];
  /** Units of the drawing for one column. */
  readonly pitch: number;
  /** Where a place across the cords, as counted from the front, is in the drawing, or null where it is left out. */
  readonly x: (across: number) => number | null;
  /** Where the string of a column hangs below everything that holds it, in d. */
  readonly hangsAt: (column: number) => number;
  /** The middle of a row. */
  readonly y: (row: number) => number;
  /** The foot of the windows, and their outermost sides. */
  readonly foot: number;
  readonly left: number;
  readonly right: number;
}

/** Above the bar, and above a row whose strings come from the row before, in d. */
const OVER_BAR = 7.2;
const OVER_ROW = 1.5;
/** Above a row that is there alone: its strings, and where the leading string comes from. */
const OVER_ONE = 3.9;
/** What stays free of a cord's middle at the sides, in d. */
const ROOM = 0.8;
/** A tear takes the room of so many columns. */
const TEAR = 1;
/** How long one wave of a tear is, about. */
const WAVE = 36;
/** Pixels of a page for one unit of a drawing, so that cords are as fine as can be seen. */
const PIXELS = 1.5;

/** The strings that change over in a row: all between its bundle and the one of the row before. */
export function movedIn(before: RowPlan | undefined, row: RowPlan, width: number, on = false): Moved[] {
  if (!before) return [];
  const between = (one: number, other: number): number[] =>
    Array.from({ length: Math.abs(one - other) }, (_, i) => Math.min(one, other) + 1 + i);
  return [
    ...between(before.leftBundle, row.leftBundle),
    ...between(before.rightBundle, row.rightBundle).map((place) => width + 1 - place),
  ].map((column) => ({ column, row: row.row, on }));
}

/** Where the knot over a column stands, in d from the left boundary of column 1. */
export function knotAt(fit: Fit, row: RowPlan, column: number): number {
  const edges = edgesOf(fit, row.leftBundle, row.rightBundle);
  if (column <= row.firstColumn) return edges.left;
  return column >= row.lastColumn ? edges.right : (column - 0.5) * COLUMN;
}

/** How far the cords of some rows reach to the left and right, in d. */
function reachOf(model: PieceModel, top: number, bottom: number): [number, number] {
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const meet = (x: number): void => {
    left = Math.min(left, x);
    right = Math.max(right, x);
  };
  const extents = new Map<string, readonly [number, number]>();
  for (const { shape, x } of model.places) {
    const xs = (model.shapes[shape]?.leads ?? []).flatMap((lead) => lead.map((point) => point[0]));
    const [low, high] = extents.get(shape) ?? [Math.min(...xs), Math.max(...xs)];
    extents.set(shape, [low, high]);
    meet(x + low);
    meet(x + high);
  }
  for (const { parts } of model.strings)
    for (const part of parts)
      if (part.is === 'line' && part.what !== 'tail' && part.what !== 'float')
        for (const [i, [x, y]] of part.path.entries()) {
          const [was, above] = part.path[i - 1] ?? [x, y];
          if (Math.max(y, above) < top || Math.min(y, above) > bottom) continue;
          meet(x);
          meet(was);
        }
  if (model.laid.fromRow === 1) for (const [x, y] of model.ring.arch) if (y > top) meet(x);
  return [left - ROOM, right + ROOM];
}

/** Only what is seen through some stretches of the cords. */
function seenThrough(model: PieceModel, windows: readonly (readonly [number, number])[]): PieceModel {
  const seen = (low: number, high: number): boolean => windows.some(([from, to]) => high > from - 2 && low < to + 2);
  return {
    ...model,
    places: model.places.filter(({ x }) => seen(x, x)),
    strings: model.strings.map((string) => ({
      ...string,
      parts: string.parts.filter((part) => {
        if (part.is !== 'line') return true;
        const xs = part.path.map((point) => point[0]);
        return seen(Math.min(...xs), Math.max(...xs));
      }),
    })),
  };
}

/**
 * Some neighbouring rows of a piece as cord, pulled apart so that each string is seen on its way from one to the next:
 * over and under are those of the strand model. Wide rows are seen through several windows, with a tear between them.
 */
export function cordRows(input: CordRowsInput): CordRows {
  const { fit, chart, rows, from, to, knot, coloured, moved, behind, slack, apart, below, across, gutter, top } = input;
  const own = rows.map((row) => (row.row < from || row.row > to ? row : { ...row, runs: runsOf(row, coloured) }));
  const tied = pieceModel({
    fit,
    bundles: { left: [], right: [] },
    rows: own,
    chart: coloured ? chart : null,
    upToRow: to,
    upToKnot: knot,
    ending: 'hanging',
    pulled: { fromRow: from, apart, moved, slack },
  });
  const front = input.altered?.(tied) ?? tied;
  const model = behind ? turnRound(front) : front;
  const seenAs = ([first, last]: Stretch): Stretch =>
    behind ? [fit.width + 1 - last, fit.width + 1 - first] : [first, last];
  const stretches = input.stretches.map(seenAs).sort((a, b) => a[0] - b[0]);
  const high = from === 1 ? -OVER_BAR : from === to ? -OVER_ONE : -OVER_ROW;
  const low = topOf(model.laid, to) + ROW + below;
  const [reachLeft, reachRight] = reachOf(model, high, low);
  const windows = stretches.map(
    ([first, last], i) =>
      [i === 0 ? reachLeft : (first - 1) * COLUMN, i === stretches.length - 1 ? reachRight : last * COLUMN] as const,
  );
  const tear = TEAR * COLUMN;
  const breadth = windows.reduce((sum, [a, b]) => sum + b - a + tear, -tear);
  const scale = Math.min(input.widest / COLUMN, (across - 2 * gutter) / breadth);
  const left = (across - breadth * scale) / 2;
  const level = levelFor(scale * COLUMN * PIXELS) === 'cord' ? 'cord' : 'stitch';
  const height = (low - high) * scale;
  const shown = seenThrough(model, windows);
  const shapes: Shape<never>[] = [
    {
      tag: 'cords',
      id: 'cords',
      model: shown,
      style: pieceStyle(level),
      paint: (id) => new PiecePainter(id, level).parts(shown).reduce((text, part) => text + part.svg, ''),
    },
  ];
  const starts: number[] = [];
  let at = left;
  for (const [i, [a, b]] of windows.entries()) {
    starts.push(at);
    const width = (b - a) * scale;
    const box = [a, high, b - a, low - high].map((value) => Math.round(value * UNIT)).join(' ');
    if (coloured) shapes.push({ tag: 'rect', is: 'board', x: at, y: top, width, height });
    shapes.push({ tag: 'window', shows: 'cords', x: at, y: top, width, height, box });
    at += width + tear * scale;
    if (i < windows.length - 1) {
      const middle = at - (tear * scale) / 2;
      const waves = Math.max(1, Math.round(height / WAVE));
      const half = height / waves / 2;
      const wave = [-3, 3].map((dx) => d`M${middle + dx} ${top}` + d`q5 ${half / 2} 0 ${half}t0 ${half}`.repeat(waves));
      shapes.push(path('tear', wave.join('')));
    }
  }
  return {
    model,
    shapes,
    pitch: scale * COLUMN,
    x: (across) => {
      const place = behind ? fit.width * COLUMN - across : across;
      const i = windows.findIndex(([a, b]) => place >= a && place <= b);
      const [a] = windows[i] ?? [];
      return a === undefined ? null : (starts[i] ?? 0) + (place - a) * scale;
    },
    hangsAt: (column) => {
      const hang = model.strings
        .find(({ id }) => id === `base-${column}`)
        ?.parts.find((part) => part.is === 'line' && part.what === 'hang');
      return (hang?.is === 'line' && hang.path.at(-1)?.[0]) || 0;
    },
    y: (row) => top + (topOf(model.laid, row) + ROW / 2 - high) * scale,
    foot: top + height,
    left,
    right: across - left,
  };
}
