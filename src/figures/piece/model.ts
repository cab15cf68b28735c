import type { Direction, RowPlan } from '../../solver/piece.ts';
import { RESTING_ROWS } from '../../solver/thread/floats.ts';
import type { Path, Point } from '../strand/point.ts';
import { comesFrom, courseOf, topOf } from './courses.ts';
import { finishingOf } from './finishing.ts';
import { comesDown, downTo, endTail, entryOf, exitOf, leadsOf, tiedKnots, workingEnd } from './leads.ts';
import type { Laid, Part, PieceInput, PieceModel, PieceShape, PieceString, Place } from './model-types.ts';
import { COLUMN, ROW, shapeOf } from './packed.ts';
import { BAR_AT, barShapes, foldOver, legsOf, onBar, ringOf } from './ring.ts';

/** A piece of more knots than this is not built knot by knot: no screen shows so many as cord. */
const MOST_KNOTS = 12_000;
/** How far the working end of an unfinished piece hangs, in d. */
const WORKING = 7;
/** The same of one that rests at the back of rows which lie apart: it goes on beyond what is seen of them. */
const RESTING = 21;
/** How long strings hang below a piece that is not tied off, in d. */
const HANGING = 9;
/** How far the strings of some rows alone are there above them, in d. */
const ABOVE = 4;

const within = (value: number | undefined, high: number): number =>
  value === undefined || !Number.isFinite(value) ? high : Math.max(0, Math.min(high, Math.round(value)));

const ends = new WeakMap<object, Map<string, number | null>>();

/** How far down a finished piece reaches; null where it has no finish. It is the same at every row, and long to work out. */
function endOf(finish: Parameters<typeof finishingOf>[0]): number | null {
  const { bundles, fit, startSide, ending } = finish;
  const known = ends.get(bundles) ?? new Map<string, number | null>();
  ends.set(bundles, known);
  const key = `${fit.width} ${fit.carrySide} ${startSide} ${ending}`;
  const end = known.get(key);
  if (end !== undefined) return end;
  const fresh = finishingOf(finish)?.bottom ?? null;
  known.set(key, fresh);
  return fresh;
}

/**
 * A whole piece as it hangs, at any stage: every string's way from the ring to its end, in the cord's diameter d, with
 * x from the left boundary of column 1, y from the top of row 1 and z towards the viewer. Knots are instances of a few
 * shapes of the strand model; `stringPath` puts a string together.
 *
 * @param input a plan's parts, which have to belong together, as `planPiece` gives them; rows and knots the piece has
 *   not got are taken as the nearest it has
 * @returns the piece seen from the front; `turnRound` gives the back. Above 12,000 knots it is `coarse`: ring and cells.
 * @example
 * pieceModel({ fit, bundles: outline, rows, chart }).knots // 164 for the evening's piece, 12 × 14 on a bar of 8
 */
export function pieceModel(input: PieceInput): PieceModel {
  const { fit, bundles, rows, chart = null } = input;
  const height = rows.length;
  const upToRow = within(input.upToRow, height);
  const { fromRow = 1, apart = 0, moved = [], slack } = input.pulled ?? {};
  const laid: Laid = { fromRow, pitch: ROW + apart };
  const begun = rows.slice(fromRow - 1, upToRow);
  const lastRow = begun.at(-1);
  const upToKnot = lastRow ? within(input.upToKnot, lastRow.knots) : 0;
  const whole = upToRow === height && upToKnot === lastRow?.knots;
  const total = rows.reduce((sum, row) => sum + row.knots, 0);
  const knots = begun.reduce((sum, row) => sum + row.knots, 0) - (lastRow ? lastRow.knots - upToKnot : 0);
  const coarse = !input.pulled && total > MOST_KNOTS;
  const ring = ringOf(fit);
  const startsLeft = sideOfStart(rows[0]?.direction);
  const tied = coarse ? [] : tiedKnots({ fit, laid }, begun, upToKnot);
  const bar = fromRow > 1 ? { folds: [], lone: null } : onBar(fit, startsLeft);
  const places: Place[] = [
    ...tied,
    ...bar.folds.map((column): Place => ({ shape: 'larks-head', x: column * COLUMN, y: BAR_AT, colour: null })),
  ];
  const firstHead = tied.length;
  const lonePlace = places.length;
  if (bar.lone !== null)
    places.push({
      shape: startsLeft ? 'lone-string' : 'lone-string-left',
      x: (bar.lone - 0.5) * COLUMN,
      y: BAR_AT,
      colour: null,
    });
  const wanted = input.ending ?? 'finished';
  const startSide = startsLeft ? 'left' : 'right';
  const finish = { fit, bundles, startSide, from: places.length, ending: wanted } as const;
  const closed = whole && wanted !== 'hanging';
  const finishing = coarse
    ? null
    : input.pulled
      ? (input.pulled.finish?.(places.length) ?? null)
      : closed
        ? finishingOf(finish)
        : null;
  // As long as the piece hangs, all that counts of its end is how far down it will be.
  const told = coarse || input.pulled || closed ? null : endOf(finish);
  const ending = whole && finishing ? wanted : 'hanging';
  const after = ending === 'hanging' ? null : finishing;
  if (after) places.push(...after.places);
  const end = finishing?.bottom ?? told;
  const bottom = end ?? topOf(laid, input.pulled ? upToRow : height) + ROW + HANGING;
  const shapes: Record<string, PieceShape> = {};
  for (const { shape, kind } of tied) {
    if (shapes[shape]) continue;
    const { lead, bases } = shapeOf(kind, Number(shape.slice(shape.lastIndexOf(' '))));
    shapes[shape] = { leads: [lead], bases };
  }
  for (const { shape } of places) {
    const own = shapes[shape] ?? barShapes[shape] ?? finishing?.shapes[shape];
    if (own) shapes[shape] = own;
  }

  const columns = Array.from({ length: fit.width }, (_, i) => i + 1);
  if (fit.carrySide === 'left') columns.unshift(0);
  if (fit.carrySide === 'right') columns.push(fit.width + 1);
  const left = legsOf({ fit }, 'left');
  const right = legsOf({ fit }, 'right');
  const heldIn =
    (column: number) =>
    (row: RowPlan): boolean =>
      row.row < upToRow || done(row, column, upToKnot);
  const strings = columns.map((column, order): PieceString => {
    const [start, from] = startOf(order, columns.length);
    const course = courseOf({ fit, laid }, begun, column, heldIn(column));
    const path: Point[] = [from, ...course];
    const last = path.at(-1) ?? from;
    const parts: Part[] = [...start];
    const rest = after?.after.get(column);
    const [next] = rest ?? [];
    if (next) path.push(partPath({ shapes, places }, next)[0] ?? last);
    else path.push([last[0], Math.max(last[1] + 1, bottom + 1), last[2]]);
    parts.push({ is: 'line', what: 'hang', path }, ...(rest ?? []));
    return { id: `base-${column}`, role: 'base', colour: null, parts };
  });

  /** How a base string begins, and where its course goes on from. */
  function startOf(order: number, count: number): [Part[], Point] {
    const [top] = begun;
    if (fromRow > 1 && top) return [[], comesFrom(fit, top, columns[order] ?? 0, ABOVE)];
    const leg = left[order] ?? right[order - (count - right.length)];
    if (leg) {
      const { front, back } = foldOver(leg.fold);
      const path = leg.first ? front : back;
      return [[{ is: 'line', what: 'fold', path }], path.at(-1) as Point];
    }
    const column = columns[order] ?? 0;
    const at = bar.folds.findIndex((fold) => fold === column || fold + 1 === column);
    const place = at < 0 ? lonePlace : firstHead + at;
    const lead = shapes[places[place]?.shape ?? '']?.leads[0] ?? [];
    const half = lead.reduce((low, point, i) => (Math.abs(i - lead.length / 2) < 8 && point[0] <= 0 ? i : low), 0);
    const [start, to] = at < 0 ? [lead.length - 1, 0] : bar.folds[at] === column ? [half, 0] : [half, lead.length - 1];
    const [x, y, z] = lead[to] ?? [0, 0, 0];
    return [
      [{ is: 'shape', place, lead: 0, from: start, to }],
      [x + (places[place]?.x ?? 0), y + (places[place]?.y ?? 0), z],
    ];
  }

  const later = new Set(rows.slice(upToRow).flatMap(({ runs }) => runs.map(({ colour }) => colour ?? 0)));
  const leads = leadsOf(tied, slack);
  const working = tied.at(-1);
  if (input.pulled && lastRow) {
    comeFromBefore();
    beginsAt();
  }
  for (const [order, led] of leads.entries()) {
    const works = led.last === working;
    const long = works || !input.pulled ? WORKING : RESTING;
    const stillLeads = leads.findLast(({ paint }) => paint === led.paint) === led;
    if (led.parts.some((part) => part.is === 'line' && part.what === 'end')) continue;
    if (after && led.last.row === lastRow)
      led.parts.push({ is: 'line', what: 'end', path: after.laid(exitOf(led.last), order % 4) });
    else if (stillLeads && !after && (works || later.has(led.paint)))
      led.parts.push({ is: 'line', what: 'end', path: workingEnd(led, works, long, slack) });
    else if (stillLeads) led.parts.push({ is: 'line', what: 'tail', path: endTail(led, slack) });
  }
  for (const [order, led] of leads.entries())
    strings.push({ id: `leading-${order + 1}`, role: 'leading', colour: led.colour, parts: led.parts });

  /** Strings that were at work before the rows that are there come down to them at the back; only new ones begin with a tail. */
  function comeFromBefore(): void {
    const before = rows.slice(Math.max(0, fromRow - 1 - RESTING_ROWS), fromRow - 1);
    const known = new Set(before.flatMap(({ runs }) => runs.map(({ colour }) => colour ?? 0)));
    for (const [order, led] of leads.entries()) {
      const [begins] = led.parts;
      if (begins?.is !== 'line' || begins.what !== 'tail' || !known.has(led.paint)) continue;
      if (leads.findIndex(({ paint }) => paint === led.paint) !== order) continue;
      const place = begins.path.at(-1) as Point;
      led.parts[0] = { is: 'line', what: 'float', path: comesDown(place, led.paint, place[1] + ABOVE, slack) };
    }
  }

  /**
   * In rows that lie apart a leading string is seen where it comes from: out of the row above, or pinned above row 1. It
   * goes to where its row begins before the first knot of it is tied.
   */
  function beginsAt(): void {
    const [first] = leads;
    if (first && tied[0]) {
      const [x, y, z] = entryOf(tied[0]);
      first.parts[0] = {
        is: 'line',
        what: 'link',
        path: [
          [x, y - ABOVE, 0.9],
          [x, y - 0.8, 0.9],
          [x, y, z],
        ],
      };
    }
    const [next] = upToKnot === 0 ? tiedKnots({ fit, laid }, lastRow ? [lastRow] : [], 1) : [];
    if (!next) return;
    const [x, y, z] = entryOf(next);
    const hangs: Part = {
      is: 'line',
      what: 'end',
      path: [
        [x, y, z],
        [x, y + 0.8, 0.9],
        [x, y + WORKING, 1],
      ],
    };
    const led = leads.find(({ paint }) => paint === next.paint);
    if (led && working) led.parts.push({ is: 'line', what: 'link', path: downTo(led.last, next) }, hangs);
    else {
      const pinned: Part = {
        is: 'line',
        what: 'link',
        path: [
          [x, y - ABOVE, 0.9],
          [x, y, z],
        ],
      };
      leads.push({ colour: next.colour, paint: next.paint, parts: [pinned, hangs], last: next });
    }
  }

  const wide = ring.arch.reduce((low, [x]) => Math.min(low, x), 0);
  const widest = ring.arch.reduce((high, [x]) => Math.max(high, x), fit.width * COLUMN);
  return {
    width: fit.width,
    height,
    upToRow,
    upToKnot,
    laid,
    moved,
    ending,
    knots,
    view: 'front',
    chart: chart ?? null,
    rows,
    fit,
    shapes,
    places,
    strings,
    ring,
    coarse,
    frame: {
      left: Math.min(-2.8, wide - 1.4),
      right: Math.max(fit.width * COLUMN + 2.8, widest + 1.4),
      top: ring.key.y - ring.key.r - 1,
      bottom: bottom + (end === null ? 0 : 1),
    },
  };
}

const sideOfStart = (direction: Direction | undefined): boolean => direction !== 'leftward';

/** Whether the knot over a column is tied when so many knots of its row are. */
function done(row: RowPlan, column: number, tied: number): boolean {
  const inside = Math.max(row.firstColumn, Math.min(row.lastColumn, column));
  return (row.direction === 'rightward' ? inside - row.firstColumn : row.lastColumn - inside) < tied;
}

/** The whole line of a string, its instances put in place; no two parts of it repeat their common point. */
export function stringPath(model: PieceModel, string: PieceString): Path {
  return string.parts.flatMap((part) => partPath(model, part));
}

/** The line of one part of a string. */
export function partPath(model: Pick<PieceModel, 'shapes' | 'places'>, part: Part): Path {
  if (part.is === 'line') return part.path;
  const place = model.places[part.place];
  const lead = model.shapes[place?.shape ?? '']?.leads[part.lead];
  if (!place || !lead) return [];
  const { from = 0, to = lead.length - 1 } = part;
  const own = from <= to ? lead.slice(from, to + 1) : lead.slice(to, from + 1).reverse();
  const [cosine, sine] = place.turn ?? [1, 0];
  return own.map(([x, y, z]): Point => [place.x + x * cosine - y * sine, place.y + x * sine + y * cosine, z]);
}

/** The same piece turned round, as seen from the back: left and right change places, and what was behind is in front. */
export function turnRound(model: PieceModel): PieceModel {
  const across = model.width * COLUMN;
  const turned = ([x, y, z]: Point): Point => [across - x, y, -z];
  const own = ([x, y, z]: Point): Point => [x === 0 ? 0 : -x, y, z === 0 ? 0 : -z];
  const flip = (path: Path): Path => path.map(turned);
  return {
    ...model,
    view: model.view === 'front' ? 'back' : 'front',
    shapes: Object.fromEntries(
      Object.entries(model.shapes).map(([name, { leads, bases }]) => [
        name,
        { leads: leads.map((lead) => lead.map(own)), bases: bases.map((base) => base.map(own)) },
      ]),
    ),
    places: model.places.map(({ turn, ...place }) => ({
      ...place,
      x: across - place.x,
      ...(turn ? { turn: [turn[0], -turn[1]] as const } : {}),
    })),
    strings: model.strings.map((string) => ({
      ...string,
      parts: string.parts.map((part) => (part.is === 'line' ? { ...part, path: flip(part.path) } : part)),
    })),
    ring: {
      bar: flip(model.ring.bar),
      arch: flip(model.ring.arch),
      key: { ...model.ring.key, x: across - model.ring.key.x },
    },
    frame: { ...model.frame, left: across - model.frame.right, right: across - model.frame.left },
  };
}
