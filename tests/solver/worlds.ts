import fc from 'fast-check';
import type { Bundles, Chart, Fit, fitPiece, OddMethod, Piece, Side, SideName } from '../../src/solver/index.ts';
import type { Draw } from '../seed.ts';

/**
 * Worlds to test in: every way to share strings out, and outlines, charts and pieces at random.
 * Nothing here calls the solver; it counts strings as a maker would lay them on the table.
 */

export interface Figures {
  readonly width: number;
  readonly capacity: number;
  readonly maxBundle: number;
  readonly oddMethod: OddMethod;
  readonly startSide: SideName;
}

export const other = (side: SideName): SideName => (side === 'left' ? 'right' : 'left');
const otherMethod = (method: OddMethod): OddMethod => (method === 'lone-string' ? 'carried-end' : 'lone-string');

/** An odd bundle limit acts as one less, for folds put strands beside the bar in twos. */
export const strandLimit = (maxBundle: number): number => maxBundle - (maxBundle % 2);

/** The way an odd string is dealt with once the figures are known; null where no string is odd. */
export function methodUsed(
  { width, capacity }: { width: number; capacity: number },
  asked: OddMethod,
): OddMethod | null {
  if (width % 2 === 0) return null;
  return width <= capacity ? 'lone-string' : asked;
}

/** One way to lay the strings out: strands on the bar and on each side. */
export interface Split {
  readonly onBar: number;
  readonly left: number;
  readonly right: number;
}

/**
 * Every way to share the strings of `width` columns between a bar that takes `capacity` and two
 * sides that differ by no strands or by two (the larger on the left), whatever the bundle size.
 * Cut strings are counted: each fold gives two, a lone string one; a carried end is one too many.
 */
export function everySplit(width: number, capacity: number, method: OddMethod | null, startSide: SideName): Split[] {
  const splits: Split[] = [];
  const lone = method === 'lone-string' ? 1 : 0;
  const carried = method === 'carried-end' ? 1 : 0;
  const strings = width + carried;
  for (let folds = 1; 2 * folds + lone <= Math.min(capacity, width); folds++) {
    const onBar = 2 * folds + lone;
    for (const difference of [0, 2]) {
      for (let right = 0; onBar + 2 * right + difference <= strings; right += 2) {
        const left = right + difference;
        if (onBar + left + right !== strings) continue;
        // A carried end needs a bundle to ride in, on the side where row 1 ends.
        if (carried === 1 && (other(startSide) === 'left' ? left : right) === 0) continue;
        splits.push({ onBar, left, right });
      }
    }
  }
  return splits;
}

const sideOf = (strands: number, carriesHere: boolean): Side => ({
  columns: strands - (carriesHere ? 1 : 0),
  strands,
  folds: strands / 2,
});

/** The whole fit of a split, each figure counted from the strings. */
export function fitOf(split: Split, figures: Figures, method: OddMethod | null): Fit {
  const { width, capacity, maxBundle } = figures;
  const carrySide = method === 'carried-end' ? other(figures.startSide) : null;
  const left = sideOf(split.left, carrySide === 'left');
  const right = sideOf(split.right, carrySide === 'right');
  const places = Math.min(capacity, width);
  const evenOnBar = method !== 'lone-string';
  const idle = places % 2 === (evenOnBar ? 0 : 1) ? 0 : 1;
  return {
    width,
    capacity,
    onBar: split.onBar,
    folds: Math.floor(split.onBar / 2),
    loneStrings: method === 'lone-string' ? 1 : 0,
    left,
    right,
    borrowed: places - idle - split.onBar,
    idle,
    firstRowKnots: split.onBar + (left.columns > 0 ? 1 : 0) + (right.columns > 0 ? 1 : 0),
    rowsToFullWidth: Math.max(1, left.columns, right.columns),
    maxBundle,
    oddMethod: method,
    carrySide,
    level: split.left === split.right,
  };
}

/** Level before lopsided, then most on the bar. */
const bestFirst = (a: Fit, b: Fit): number => Number(b.level) - Number(a.level) || b.onBar - a.onBar;

function withinLimit(figures: Figures, method: OddMethod | null): Fit[] {
  const limit = strandLimit(figures.maxBundle);
  return splitsOf(figures.width, figures.capacity, method, figures.startSide)
    .filter(({ left, right }) => left <= limit && right <= limit)
    .map((split) => fitOf(split, figures, method))
    .sort(bestFirst);
}

const known = new Map<number, readonly Split[]>();
/** The same, looked up where the same bar and width were asked about before. */
function splitsOf(width: number, capacity: number, method: OddMethod | null, startSide: SideName): readonly Split[] {
  const way = method === 'lone-string' ? 0 : method === 'carried-end' ? 1 : 2;
  const key = ((width * 1000 + capacity) * 3 + way) * 2 + (startSide === 'left' ? 0 : 1);
  const splits = known.get(key) ?? everySplit(width, capacity, method, startSide);
  known.set(key, splits);
  return splits;
}

/** Strands a side in the level split with most on the bar, or null where there is none. */
export function levelBundle(width: number, capacity: number, oddMethod: OddMethod): number | null {
  let best: Split | null = null;
  const method = methodUsed({ width, capacity }, oddMethod);
  for (const split of splitsOf(width, capacity, method, 'left'))
    if (split.left === split.right && (best === null || split.onBar > best.onBar)) best = split;
  return best === null ? null : best.left;
}

export interface Answer {
  readonly outcome: 'ok' | 'bundle-too-big' | 'too-narrow';
  /** The level split with most on the bar, where it is within the limit. */
  readonly fit: Fit | null;
  readonly alternatives: readonly Fit[];
}

/** What a maker who tries every split would answer. */
export function tryEverySplit(figures: Figures): Answer {
  const { width, capacity, maxBundle, oddMethod } = figures;
  const method = methodUsed(figures, oddMethod);
  const splits = withinLimit(figures, method);
  const needed = levelBundle(width, capacity, oddMethod);
  const outcome = needed === null ? 'too-narrow' : needed > strandLimit(maxBundle) ? 'bundle-too-big' : 'ok';
  const fit = outcome === 'ok' ? (splits[0] ?? null) : null;
  const alternatives = splits.filter((split) => split !== fit);
  // Where every string has a place on the bar there is no bundle for a carried end to ride in.
  if (method !== null && width > capacity) {
    const [best] = withinLimit(figures, otherMethod(method));
    if (best !== undefined) alternatives.push(best);
  }
  return { outcome, fit, alternatives: alternatives.sort(bestFirst) };
}

/** Strings that are tied as one at each edge in row 1: what was mounted, 1 where nothing was. */
export const mounted = (fit: Fit): { left: number; right: number } => ({
  left: Math.max(1, fit.left.columns),
  right: Math.max(1, fit.right.columns),
});

/** The other splits offered with an answer, or beside a problem that has them. */
export function alternativesOf(answer: ReturnType<typeof fitPiece>): readonly Fit[] {
  if (answer.ok) return answer.alternatives;
  return 'alternatives' in answer.problem ? answer.problem.alternatives : [];
}

export interface Wish {
  readonly left: number;
  readonly right: number;
}

/**
 * A legal outline for a fit that follows the wished changes (−1, 0 or 1 a row) wherever craft
 * allows them: both edges at least 1, together at most the width, and at the end two single
 * strings left over and no bundle above the limit. May add rows where so few can't end legally.
 */
function outlineFrom(fit: Fit, wishes: readonly Wish[]): Bundles {
  const { width } = fit;
  const start = mounted(fit);
  const limit = Math.max(strandLimit(fit.maxBundle), start.left, start.right);
  const canEnd = (left: number, right: number, rowsBelow: number): boolean => {
    const l = Math.max(1, left - rowsBelow);
    const r = Math.max(1, right - rowsBelow);
    return l <= limit && r <= limit && (width < 4 ? l === 1 && r === 1 : l + r <= width - 2);
  };
  let rowsBelow = wishes.length;
  while (!canEnd(start.left, start.right, rowsBelow)) rowsBelow++;
  let { left, right } = start;
  const outline = { left: [left], right: [right] };
  for (let i = 0; rowsBelow > 0; i++) {
    rowsBelow--;
    const wish = wishes[i] ?? { left: -1, right: -1 };
    const tried: Wish[] = [
      wish,
      { left: wish.left, right: -1 },
      { left: -1, right: wish.right },
      { left: -1, right: -1 },
    ];
    for (const step of tried) {
      const l = Math.max(1, left + step.left);
      const r = Math.max(1, right + step.right);
      if (l + r > width || !canEnd(l, r, rowsBelow)) continue;
      left = l;
      right = r;
      break;
    }
    outline.left.push(left);
    outline.right.push(right);
  }
  return outline;
}

/** The first rule of an outline that a pair of sequences breaks, in the words of craft; null where it is legal. */
export function brokenRule(fit: Fit, { left, right }: Bundles): string | null {
  if (left.length !== right.length) return 'the sides differ in length';
  if (left.length === 0) return 'there are no rows';
  const start = mounted(fit);
  if (left[0] !== start.left || right[0] !== start.right) return 'row 1 is not what was mounted';
  for (let i = 0; i < left.length; i++) {
    const l = left[i] ?? Number.NaN;
    const r = right[i] ?? Number.NaN;
    if (!(l >= 1 && r >= 1)) return 'an edge has no string';
    if (l + r > fit.width) return 'the bundles hold more strings than there are';
    if (i > 0 && Math.abs(l - (left[i - 1] ?? Number.NaN)) > 1) return 'the left bundle changes by more than one';
    if (i > 0 && Math.abs(r - (right[i - 1] ?? Number.NaN)) > 1) return 'the right bundle changes by more than one';
  }
  const l = left.at(-1) ?? Number.NaN;
  const r = right.at(-1) ?? Number.NaN;
  if (fit.width < 4 ? l !== 1 || r !== 1 : l + r > fit.width - 2)
    return 'no two single strings are left to finish with';
  return null;
}

/** The same fit seen from the back: sides, and the side that carries, exchanged. */
export const mirroredFit = (fit: Fit): Fit => ({
  ...fit,
  left: fit.right,
  right: fit.left,
  carrySide: fit.carrySide === null ? null : other(fit.carrySide),
});

/** Splits that can be tied with the figures, by both methods; all on the bar where there is none. */
function tieable(figures: Figures): Fit[] {
  const splits = [figures.oddMethod, otherMethod(figures.oddMethod)].flatMap((asked) =>
    withinLimit(figures, methodUsed(figures, asked)),
  );
  return splits.length > 0 ? splits : tieable({ ...figures, capacity: figures.width });
}

/** A fit and a legal outline for it, for plain loops. */
export function drawOutline(draw: Draw): { fit: Fit; bundles: Bundles; startSide: SideName } {
  const startSide: SideName = draw(0, 1) === 0 ? 'left' : 'right';
  const oddMethod: OddMethod = draw(0, 1) === 0 ? 'lone-string' : 'carried-end';
  const width = draw(2, 30);
  const figures = { width, capacity: draw(2, width + 2), maxBundle: draw(2, 12), oddMethod, startSide };
  const splits = tieable(figures);
  const upright = splits[draw(0, splits.length - 1)];
  if (upright === undefined) throw new Error('no split to draw from');
  // Lopsided splits stand once, larger on the left; without a carried end they may be turned round.
  const fit = upright.carrySide === null && draw(0, 1) === 1 ? mirroredFit(upright) : upright;
  const wishes: Wish[] = [];
  for (let rows = draw(0, 24); rows > 0; rows--) wishes.push({ left: draw(-1, 1), right: draw(-1, 1) });
  return { fit, bundles: outlineFrom(fit, wishes), startSide };
}

const methods = fc.constantFrom<OddMethod>('lone-string', 'carried-end');
const startSides = fc.constantFrom<SideName>('left', 'right');

/** Figures of the whole allowed range, half of them near the edge where a split is just possible. */
export const figures: fc.Arbitrary<Figures> = fc
  .record({
    width: fc.integer({ min: 2, max: 400 }),
    anyCapacity: fc.integer({ min: 2, max: 400 }),
    spare: fc.integer({ min: -3, max: 60 }),
    near: fc.boolean(),
    maxBundle: fc.integer({ min: 2, max: 40 }),
    oddMethod: methods,
    startSide: startSides,
  })
  .map(({ width, anyCapacity, spare, near, maxBundle, oddMethod, startSide }) => ({
    width,
    capacity: near ? Math.min(400, Math.max(2, width - spare)) : anyCapacity,
    maxBundle,
    oddMethod,
    startSide,
  }));

/** A fit that can be tied, with the side it begins on: level and lopsided, by either method. */
export const startedFits: fc.Arbitrary<{ fit: Fit; startSide: SideName }> = fc
  .record({
    width: fc.integer({ min: 2, max: 36 }),
    spare: fc.integer({ min: -2, max: 30 }),
    maxBundle: fc.integer({ min: 2, max: 16 }),
    oddMethod: methods,
    startSide: startSides,
    pick: fc.nat({ max: 1000 }),
    turned: fc.boolean(),
  })
  .map(({ width, spare, maxBundle, oddMethod, startSide, pick, turned }) => {
    const splits = tieable({ width, capacity: Math.max(2, width - spare), maxBundle, oddMethod, startSide });
    const upright = splits[pick % splits.length];
    if (upright === undefined) throw new Error('no split to pick from');
    return { fit: turned && upright.carrySide === null ? mirroredFit(upright) : upright, startSide };
  });

const steps = fc.constantFrom(-1, 0, 1);
const wishes = fc.array(fc.record({ left: steps, right: steps }), { maxLength: 24 });

/** A fit and a legal outline for it: edges that grow, shrink and stay. */
export const outlines: fc.Arbitrary<{ fit: Fit; bundles: Bundles; startSide: SideName }> = fc
  .tuple(startedFits, wishes)
  .map(([{ fit, startSide }, wished]) => ({ fit, startSide, bundles: outlineFrom(fit, wished) }));

/** The same, with a small chart of the right size whose colours come in short stretches. */
export const chartedPieces: fc.Arbitrary<Piece & { readonly chart: Chart }> = fc
  .tuple(
    outlines,
    fc.integer({ min: 1, max: 4 }),
    fc.array(fc.record({ length: fc.integer({ min: 1, max: 9 }), colour: fc.nat({ max: 3 }) }), {
      minLength: 1,
      maxLength: 12,
    }),
  )
  .map(([{ fit, bundles, startSide }, colours, stretches]) => {
    const height = bundles.left.length;
    const cells = new Uint8Array(fit.width * height);
    for (let cell = 0, i = 0; cell < cells.length; i++) {
      const { length, colour } = stretches[i % stretches.length] ?? { length: 1, colour: 0 };
      cells.fill(colour % colours, cell, cell + length);
      cell += length;
    }
    const names = ['tar', 'chalk', 'rust', 'samphire'];
    const hues = ['#222222', '#eeeeee', '#aa5533', '#668844'];
    const palette = names.slice(0, colours).map((name, i) => ({ name, colour: hues[i] ?? '#000000' }));
    return { fit, bundles, startSide, chart: { width: fit.width, height, palette, cells } };
  });
