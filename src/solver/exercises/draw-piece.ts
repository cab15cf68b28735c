import { type Problem, type Refusal, refuse, wholeNumberProblem } from '../problem.ts';
import { drawFigures } from './draw-figures.ts';
import { type FitFigures, sumOf } from './figures.ts';
import type { Level } from './level.ts';
import type { OutlineFigures, OutlineOptions, Pair } from './outline.ts';
import type { Draw } from './seed.ts';
import { carriedEnds, workOut } from './sum/solve.ts';

/** Columns of the two bundles, left and right; a carried end rides on the side where row 1 ends. */
function mountedBundles(figures: FitFigures): Pair {
  const problem = sumOf(figures);
  const { bundle } = workOut(problem);
  const carried = carriedEnds(problem);
  const columns: [number, number] = [bundle, bundle];
  columns[figures.startSide === 'left' ? 1 : 0] -= carried;
  return [Math.max(1, columns[0]), Math.max(1, columns[1])];
}

const ROWS = { low: 12, high: 60 };

export interface DrawnPiece {
  readonly fit: FitFigures;
  readonly piece: OutlineFigures;
}

/**
 * A shaped piece that reaches its full width and closes again, drawn to suit the level (12 to 60 rows), with
 * what is given held. It is wider than its bar, so that it has a bundle on each side.
 *
 * @param straightToo whether a piece no wider than its bar will do
 * @param wanted narrows the draw to these bundles
 * @param mostClosing the greatest closing bundle that is drawn, 2 or more
 * @returns a refusal where the figures given do not go together
 */
export function drawPiece(
  next: Draw,
  level: Level,
  given: OutlineOptions,
  straightToo = false,
  wanted: (bundles: Pair) => boolean = () => true,
  mostClosing = 8,
): DrawnPiece | Refusal<Problem> {
  const { openingStep = 1, closingStep = 1 } = given;
  const steps = { low: 1, high: 100 };
  const bad =
    wholeNumberProblem('openingStep', openingStep, steps) ??
    wholeNumberProblem('closingStep', closingStep, steps) ??
    (given.height === undefined ? null : wholeNumberProblem('height', given.height, { low: 1, high: 1000 })) ??
    (given.closingBundle === undefined
      ? null
      : wholeNumberProblem('closingBundle', given.closingBundle, { low: 1, high: 400 }));
  if (bad) return refuse(bad);

  const fit = drawFigures(next, level, given, (figures) => {
    if (!straightToo && figures.width <= figures.capacity) return false;
    return wanted(mountedBundles(figures));
  });
  if ('ok' in fit) return fit;
  const { width } = fit;
  const bundles = mountedBundles(fit);
  const largest = Math.min(Math.max(8, given.maxBundle ?? 8, ...bundles), Math.floor((width - 2) / 2));
  const drawnClosing =
    level === 'mixed' && largest >= 2 && next(0, 2) === 0 ? next(2, Math.min(mostClosing, largest)) : undefined;
  const closingBundle = given.closingBundle ?? drawnClosing;
  if (closingBundle !== undefined && closingBundle > largest)
    return refuse({
      code: 'closing-too-big',
      field: 'closingBundle',
      entered: closingBundle,
      values: { closingBundle, largest },
    });
  const closing: Pair = closingBundle === undefined ? bundles : [closingBundle, closingBundle];

  // One row at full width at the least; two where chance decides.
  const shortestHeight = 1 + openingStep * (Math.max(...bundles) - 1) + closingStep * (Math.max(...closing) - 1);
  const height = given.height ?? next(Math.max(ROWS.low, shortestHeight + 1), Math.max(ROWS.high, shortestHeight + 1));
  if (height < shortestHeight)
    return refuse({ code: 'never-full-width', field: 'height', entered: height, values: { height, shortestHeight } });
  return { fit, piece: { width, height, bundles, closing, openingStep, closingStep } };
}
