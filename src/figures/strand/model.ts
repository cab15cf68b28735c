import { type Crossing, crossingsOf } from './crossings.ts';
import type { Stop } from './keys.ts';
import { basesFor, type KnotName, knots } from './knots.ts';
import { mirrorModel } from './mirror.ts';
import { drawUp, type Motion, motionOf } from './motion.ts';
import type { Path } from './point.ts';
import type { Frame, NamedMoment, Role, Tying } from './tying.ts';

export interface Strand {
  readonly id: string;
  readonly role: Role;
  /** Any CSS colour; a custom property of the house unless the maker chose one. */
  readonly colour: string;
  /** Radius in d. */
  readonly radius: number;
  /** Centre line in d: x across, y down the piece, z towards the viewer. */
  readonly path: Path;
}

/** A knot at one moment of its tying. */
export interface StrandModel {
  readonly knot: KnotName;
  /** 0 to 1. */
  readonly t: number;
  readonly stops: readonly NamedMoment[];
  readonly frame: Frame;
  readonly strands: readonly Strand[];
  /** Ids in the order in which strands are listed. */
  readonly order: readonly string[];
  /** For each strand in order along it; computed from the lines alone. */
  readonly crossings: readonly Crossing[];
}

export interface StrandOptions {
  /** Strings of the base, a whole number within `basesFor` the knot; others are brought to the nearest of these. Default 1. */
  readonly strands?: number;
  /** A stopping point of this knot, or a moment from 0 to 1; a name the knot has not is `drawn-up`. Default `drawn-up`. */
  readonly moment?: Stop | number;
  /** `left`: the mirror image, for a left-handed maker. Default `right`. */
  readonly handedness?: 'left' | 'right';
  /** A colour by strand id or by role. */
  readonly colours?: Readonly<Partial<Record<string, string>>>;
  /** `false` leaves the crossings out, for a look at the lines alone. Default true. */
  readonly crossings?: boolean;
}

const houseColours: Record<Role, string> = {
  leading: 'var(--cord-lead)',
  base: 'var(--cord-base)',
  bar: 'var(--cord-bar)',
  resting: 'var(--cord-resting)',
  tying: 'var(--cord-lead)',
  freed: 'var(--cord-freed)',
};

/**
 * A knot as cords in space at one moment of its tying. The same input gives the same model on every machine.
 * Example: `strandModel('forward')` has the strands `leading` and `base`, and `passes` of it are
 * `o1 u1 s o2 u2 s o3`.
 */
export function strandModel(knot: KnotName, options: StrandOptions = {}): StrandModel {
  const [least, most] = basesFor(knot);
  const strands = Math.min(most, Math.max(least, Math.round(options.strands ?? 1) || 1));
  const pattern = knots[knot];
  const turned = 'mirrorOf' in pattern;
  const { tying, motion } = ready(turned ? pattern.mirrorOf : knot, strands);
  const t = momentOf(motion, options.moment ?? 'drawn-up');
  const paths = motion.at(t);
  const lines = [
    ...tying.moving.map(({ id, role }, i) => ({ id, role, radius: 0.5, path: paths[i] as Path })),
    ...tying.still.map(({ id, role, radius = 0.5, path }) => ({ id, role, radius, path })),
  ];
  let model: Omit<StrandModel, 'crossings'> = {
    knot: turned ? pattern.mirrorOf : knot,
    t,
    stops: motion.stops,
    frame: tying.frame,
    strands: lines.map((line) => ({ ...line, colour: '' })),
    order: lines.map(({ id }) => id),
  };
  if (turned) model = mirrorModel(model);
  if (options.handedness === 'left') model = mirrorModel(model);
  const coloured = model.strands.map((strand) => ({
    ...strand,
    colour: options.colours?.[strand.id] ?? options.colours?.[strand.role] ?? houseColours[strand.role],
  }));
  return { ...model, strands: coloured, crossings: options.crossings === false ? [] : crossingsOf(coloured) };
}

function momentOf(motion: Motion, moment: Stop | number): number {
  if (typeof moment === 'number') return Number.isFinite(moment) ? Math.min(1, Math.max(0, moment)) : 1;
  return motion.stops.find(({ name }) => name === moment)?.t ?? 1;
}

const made = new Map<string, { tying: Tying; motion: Motion }>();
const drawnUp = new Map<KnotName, Path[][]>();

/** The tying of a knot round so many strings, kept once made: drawing it up is the slow part. */
function ready(knot: KnotName, strands: number): { tying: Tying; motion: Motion } {
  const name = `${knot} ${strands}`;
  const known = made.get(name);
  if (known) return known;
  const pattern = knots[knot];
  if ('mirrorOf' in pattern) return ready(pattern.mirrorOf, strands);
  const tying = pattern.tie(strands);
  const states = (): Path[][] => {
    const kept = drawnUp.get(knot) ?? drawUp(pattern.tie(1));
    drawnUp.set(knot, kept);
    return kept;
  };
  const fresh = { tying, motion: motionOf(tying, states) };
  made.set(name, fresh);
  return fresh;
}
