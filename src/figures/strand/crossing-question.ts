import { draw, type Seed } from '../../solver/exercises/seed.ts';
import type { Crossing } from './crossings.ts';
import type { StrandModel } from './model.ts';
import { distance } from './point.ts';
import { hangs, type PictureSide, passesAlong, sideOf, toldStrands } from './told.ts';
import type { Frame } from './tying.ts';

/**
 * Which string is over here? A question on any crossing of a knot, its check, and where the crossing is along each
 * string, so that it can be found by eye and by ear. Nothing here holds the answer: it is read off the model's
 * crossings when somebody answers.
 */

/** What may be named as an answer: a string by its id, all strings of a bundle as one, or a part of a string. */
export type CrossingChoice =
  | { readonly strand: string }
  | { readonly bundle: readonly string[] }
  | { readonly strand: string; readonly part: 'earlier' | 'later' };

/** Where along a string the crossing is. */
export type Whereabouts =
  /** Of a string that is told: the number of the pass among those told, from where the string starts. */
  | {
      readonly strand: string;
      readonly along: 'told';
      readonly pass: number;
      readonly of: number;
      /** Where the string starts, and which of its two ends on that side that is, if both are there. */
      readonly from: PictureSide;
      readonly end: 'upper' | 'lower' | 'left' | 'right' | null;
    }
  /** Of a string that hangs: the number of the place where something crosses it, counted from the ring. */
  | { readonly strand: string; readonly along: 'hanging'; readonly pass: number; readonly of: number }
  /** Of a bar: counted from the left. */
  | { readonly strand: string; readonly along: 'lying'; readonly pass: number; readonly of: number };

/** A crossing that can be asked for: seen once, from the string that is told first. */
export interface CrossingPlace {
  readonly x: number;
  readonly y: number;
  /** The two strings that meet, the one that is told first before the other; twice the same in a self-crossing. */
  readonly strands: readonly [string, string];
  readonly where: readonly [Whereabouts, Whereabouts];
  /** Whether another pass lies on top of both, so that the place itself is out of sight. */
  readonly covered: boolean;
  readonly choices: readonly CrossingChoice[];
}

/** What a check of an answer found. */
export interface CrossingVerdict {
  /** `under`: the string named is at this crossing, but under the other. `elsewhere`: it is not at this crossing. */
  readonly outcome: 'right' | 'under' | 'elsewhere';
  readonly over: Whereabouts;
  readonly under: Whereabouts;
  /** How many times the string that is over has gone over this other one by now, along it: 1 for the first. */
  readonly time: number;
}

const insideOf = ({ left, right, top, bottom }: Frame, x: number, y: number): boolean =>
  x > left && x < right && y > top && y < bottom;

/** Every crossing in the picture once, in order along the strings; empty where no strings cross. */
export function crossingPlaces(model: StrandModel): CrossingPlace[] {
  return seen(model).map((crossing) => {
    const { x, y, strand, meets } = crossing;
    return {
      x,
      y,
      strands: [strand, meets],
      where: [whereIs(model, crossing), whereIs(model, otherSide(model, crossing))],
      covered: isCovered(model, crossing),
      choices: choicesAt(model, crossing),
    };
  });
}

/** The crossing that a seed picks: its number among the places; null where there are none. */
export function pickCrossing(model: StrandModel, seed: Seed): number | null {
  const places = seen(model).length;
  return places === 0 ? null : draw(seed)(0, places - 1);
}

/**
 * Whether the string named is over at this place, and if not, what was mixed up.
 *
 * @param place number among `crossingPlaces`
 * @returns null where there is no such place
 * @example in a forward knot, at its first crossing with the base, `{ strand: 'leading' }` is right
 */
export function checkCrossing(model: StrandModel, place: number, named: CrossingChoice): CrossingVerdict | null {
  const crossing = seen(model)[place];
  if (!crossing) return null;
  const over = crossing.over ? crossing : otherSide(model, crossing);
  const under = otherSide(model, over);
  const names = ({ strand, pass }: Crossing): boolean =>
    'bundle' in named
      ? named.bundle.includes(strand)
      : named.strand === strand && (!('part' in named) || named.part === pass);
  return {
    outcome: names(over) ? 'right' : names(under) ? 'under' : 'elsewhere',
    over: whereIs(model, over),
    under: whereIs(model, under),
    time: timesOver(model, over),
  };
}

/** The frame that shows a place large, so far to each side of it in d. */
export const closeUp = ({ x, y }: Pick<CrossingPlace, 'x' | 'y'>, reach = 2.6): Frame => ({
  left: x - reach,
  right: x + reach,
  top: y - reach,
  bottom: y + reach,
});

/** Each crossing in the picture once: from a string that is told, the earlier pass of a self-crossing. */
function seen(model: StrandModel): Crossing[] {
  const told = toldStrands(model);
  return model.crossings.filter(({ strand, meets, pass, x, y }) => {
    const first =
      strand === meets ? pass === 'earlier' : !told.includes(meets) || told.indexOf(strand) < told.indexOf(meets);
    return told.includes(strand) && first && insideOf(model.frame, x, y);
  });
}

function otherSide({ crossings }: StrandModel, { strand, at, meets, there }: Crossing): Crossing {
  const other = crossings.find(
    (one) => one.strand === meets && one.meets === strand && one.at === there && one.there === at,
  );
  if (!other) throw new Error(`The crossing of ${strand} with ${meets} is listed from one side only.`);
  return other;
}

function whereIs(model: StrandModel, crossing: Crossing): Whereabouts {
  const { strand } = crossing;
  if (!toldStrands(model).includes(strand)) {
    const along = model.crossings.filter((one) => one.strand === strand);
    return {
      strand,
      along: hangs(model, strand) ? 'hanging' : 'lying',
      pass: along.filter((one) => orderAlong(model, one) <= orderAlong(model, crossing)).length,
      of: along.length,
    };
  }
  const passes = passesAlong(model, strand);
  const path = model.strands.find(({ id }) => id === strand)?.path ?? [];
  const [first, last] = [path[0], path.at(-1)];
  const from = sideOf(first, model);
  const both = from === sideOf(last, model);
  const lengthwise = from === 'left' || from === 'right';
  const before = (first?.[lengthwise ? 1 : 0] ?? 0) < (last?.[lengthwise ? 1 : 0] ?? 0);
  return {
    strand,
    along: 'told',
    pass: passes.findIndex(({ crossings }) => crossings.includes(crossing)) + 1,
    of: passes.length,
    from,
    end: !both || from === 'inside' ? null : lengthwise ? (before ? 'upper' : 'lower') : before ? 'left' : 'right',
  };
}

/** What grows from the ring downwards along a string that hangs, and from left to right along a bar. */
const orderAlong = (model: StrandModel, { strand, x, y }: Crossing): number => (hangs(model, strand) ? y : x);

/** Strings nearer to each other than this, in d, count as one bundle: they can be told apart by nobody. */
const BESIDE = 1.5;

function choicesAt(model: StrandModel, { strand, meets }: Crossing): CrossingChoice[] {
  if (strand === meets)
    return [
      { strand, part: 'earlier' },
      { strand, part: 'later' },
    ];
  const bundle = bundleOf(model);
  const alone = model.strands.filter(({ id }) => !bundle.includes(id)).map(({ id }) => ({ strand: id }));
  return bundle.length > 0 ? [...alone, { bundle }] : alone;
}

/** The strings of the base that hang close together, if there are several. */
function bundleOf({ strands }: StrandModel): string[] {
  const bases = strands.filter(({ id }) => /^base-\d+$/.test(id));
  const [one, two] = bases.map(({ path }) => path[0]?.[0] ?? 0);
  return one !== undefined && two !== undefined && Math.abs(two - one) < BESIDE ? bases.map(({ id }) => id) : [];
}

/** Which of the passes of this string over the same other one, or over its bundle, this is. */
function timesOver(model: StrandModel, crossing: Crossing): number {
  const bundle = bundleOf(model);
  const same = ({ meets }: Crossing): boolean =>
    meets === crossing.meets || (bundle.includes(meets) && bundle.includes(crossing.meets));
  const told = toldStrands(model).includes(crossing.strand);
  if (!told)
    return model.crossings.filter(
      (one) =>
        one.strand === crossing.strand &&
        one.over &&
        same(one) &&
        orderAlong(model, one) <= orderAlong(model, crossing),
    ).length;
  return passesAlong(model, crossing.strand).filter(
    ({ crossings: [head] }) => head?.over && same(head) && head.at <= crossing.at,
  ).length;
}

/** Whether a third pass lies over both cords just where they cross. */
function isCovered({ strands }: StrandModel, { strand, at, meets, there, x, y }: Crossing): boolean {
  let height = Number.NEGATIVE_INFINITY;
  const others: number[] = [];
  for (const { id, path, radius } of strands) {
    let walked = 0;
    for (const [i, b] of path.entries()) {
      const a = path[i - 1];
      if (!a) continue;
      const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
      const flat = dx * dx + dy * dy;
      const long = distance(a, b);
      const t = flat === 0 ? 0 : Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / flat));
      const z = a[2] + (b[2] - a[2]) * t;
      const place = walked + long * t;
      walked += long;
      if (Math.hypot(a[0] + dx * t - x, a[1] + dy * t - y) > radius * 0.8) continue;
      const own = (id === strand && Math.abs(place - at) < 1) || (id === meets && Math.abs(place - there) < 1);
      if (own) height = Math.max(height, z);
      else others.push(z);
    }
  }
  return others.some((z) => z > height + 0.5);
}
