import type { OddMethod, SideName } from '../piece.ts';
import { type Problem, type Refusal, refuse, wholeNumberProblem } from '../problem.ts';
import { type FitFigures, type GivenFigures, makeable, strandsOfSide } from './figures.ts';
import type { Level } from './level.ts';
import { type Draw, pick } from './seed.ts';

/** What is met in a workshop; both ends count. */
const CAPACITIES = { low: 6, high: 24 };
const WIDTHS = { low: 8, high: 48 };
const MOST = { low: 2, high: 400 };

const numbers = (low: number, high: number): number[] =>
  Array.from({ length: high - low + 1 }, (_, index) => low + index);

const figuresOf = (width: number, capacity: number, method: OddMethod, startSide: SideName): FitFigures => ({
  width,
  capacity,
  oddMethod: width % 2 === 0 ? null : width <= capacity ? 'lone-string' : method,
  startSide,
});

const suitsLevel = (level: Level, { width, capacity }: FitFigures): boolean => {
  if (level === 'mixed') return width >= capacity - 2;
  if (width % 2 === 1 || width <= capacity) return false;
  return level === 'alone' || (width - capacity) % 4 === 0;
};

/**
 * Why these figures cannot be made, with the smallest capacity and the greatest width that can, all else as
 * given; null where they can.
 */
function unmakeable(figures: FitFigures, method: OddMethod, maxBundle: number): Problem | null {
  if (makeable(figures, maxBundle)) return null;
  const { width, capacity, startSide } = figures;
  const bundle = strandsOfSide(figures);
  const would = (w: number, c: number): boolean => makeable(figuresOf(w, c, method, startSide), maxBundle);
  const smallestCapacity = numbers(MOST.low, MOST.high).find((c) => would(width, c)) ?? width;
  const greatestWidth = numbers(MOST.low, MOST.high).findLast((w) => would(w, capacity)) ?? capacity;
  return {
    code: bundle === null ? 'too-narrow' : 'bundle-too-big',
    values: { width, capacity, maxBundle, bundle: bundle ?? 0, smallestCapacity, greatestWidth },
  };
}

/**
 * A chart and a bar that can be made level: those given, and the rest drawn to suit the level (capacity
 * 6 to 24, width 8 to 48). `wanted` narrows the draw further.
 *
 * @returns a refusal where a figure given is no whole number from 2 to 400, where both are given and cannot
 *   be made, or where nothing drawn goes with the one given
 */
export function drawFigures(
  next: Draw,
  level: Level,
  given: GivenFigures = {},
  wanted: (figures: FitFigures) => boolean = () => true,
): FitFigures | Refusal<Problem> {
  const { width, capacity, maxBundle = 8 } = given;
  const bad =
    (width === undefined ? null : wholeNumberProblem('width', width, MOST)) ??
    (capacity === undefined ? null : wholeNumberProblem('capacity', capacity, MOST)) ??
    wholeNumberProblem('maxBundle', maxBundle, { low: 2, high: 40 });
  if (bad) return refuse(bad);

  // The learner's own piece is as they say; chance has a say only where it draws.
  const own = width !== undefined && capacity !== undefined;
  const mixed = level === 'mixed' && !own;
  const method: OddMethod = given.oddMethod ?? (mixed && next(0, 1) === 1 ? 'carried-end' : 'lone-string');
  const startSide: SideName = given.startSide ?? (mixed && next(0, 1) === 1 ? 'right' : 'left');
  if (own) {
    const figures = figuresOf(width, capacity, method, startSide);
    const problem = unmakeable(figures, method, maxBundle);
    if (problem) return refuse(problem);
    return wanted(figures) ? figures : refuse({ code: 'no-fit', values: { width, capacity } });
  }

  // For a figure of the learner's own that the workshop does not meet the other goes as far as it has to.
  const widths = width === undefined ? numbers(WIDTHS.low, Math.max(WIDTHS.high, (capacity ?? 0) + 2)) : [width];
  const capacities =
    capacity === undefined ? numbers(CAPACITIES.low, Math.max(CAPACITIES.high, width ?? 0)) : [capacity];
  // A capacity first, then a width that goes with it; on to the next one round where nothing does.
  const start = next(0, capacities.length - 1);
  const round = [...capacities.slice(start), ...capacities.slice(0, start)];
  for (const suits of [suitsLevel, () => true]) {
    for (const places of round) {
      const fitting = widths
        .map((columns) => figuresOf(columns, places, method, startSide))
        .filter((figures) => suits(level, figures) && makeable(figures, maxBundle) && wanted(figures));
      const drawn = pick(next, fitting);
      if (drawn) return drawn;
    }
  }
  const values: Record<string, number> = { maxBundle };
  if (width !== undefined) values['width'] = width;
  if (capacity !== undefined) values['capacity'] = capacity;
  return refuse({ code: 'no-fit', values });
}
