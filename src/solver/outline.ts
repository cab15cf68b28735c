import { fitProblem } from './fit-check.ts';
import type { Bundles, Fit } from './piece.ts';
import { type Problem, wholeNumberProblem } from './problem.ts';
import { closingBundleAt, mounted, openingBundle } from './row-bundles.ts';

/** Rows of a chart; both ends count. */
export const HEIGHTS = { low: 1, high: 1000 } as const;
/** Rows from one string out (or in) to the next; both ends count. */
export const ROW_STEPS = { low: 1, high: 100 } as const;

export interface OutlineInput {
  readonly fit: Fit;
  /** Rows of the piece, 1 to 1000. */
  readonly height: number;
  /** Rows per string let out on each side, 1 to 100. */
  readonly openingStep?: number | undefined;
  /** Rows per string taken in on each side, 1 to 100. */
  readonly closingStep?: number | undefined;
  /** Columns of both bundles in the last row; 1 keeps full width to the end; left out, as mounted. */
  readonly closingBundle?: number | undefined;
}

export interface Outline extends Bundles {
  /** False where no sizes could be given. */
  readonly ok: boolean;
  /** Rows in which both edges are single strings. */
  readonly fullWidthRows: number;
  /** From 1; null when the piece never gets its full width. */
  readonly firstFullRow: number | null;
  /** From 1; null when nothing is taken in, or when closing would have to begin before row 1. */
  readonly firstClosingRow: number | null;
  readonly problem?: Problem;
}

const none = (problem: Problem): Outline => ({
  ok: false,
  left: [],
  right: [],
  fullWidthRows: 0,
  firstFullRow: null,
  firstClosingRow: null,
  problem,
});

/** The first row that takes a string in, or null where none does or it would lie before row 1. */
export function closingStart(closing: number, height: number, step: number): number | null {
  const row = height - step * (closing - 1) + 1;
  return closing >= 2 && row >= 1 ? row : null;
}

const earlier = (a: number | null, b: number | null): number | null =>
  a === null ? b : b === null ? a : Math.min(a, b);

/** Strings that both bundles of the last row may hold together: two single ones are left to finish with. */
export const mostInLastRow = (width: number): number => (width < 4 ? 2 : width - 2);

/** The largest closing bundle, for both sides, that leaves two single strings to finish with. */
export const largestClosing = (fit: Fit): number =>
  fit.width < 4
    ? 1
    : Math.min(Math.max(fit.maxBundle, fit.left.columns, fit.right.columns), Math.floor((fit.width - 2) / 2));

/**
 * Bundle sizes, row by row, of a piece that opens from its mounting and closes again (craft, section 4).
 *
 * @returns sizes in columns, index 0 = row 1. With `closing-too-big` or `too-short` there are none and the
 *   problem says what would work (`largest`, `shortestHeight`); with `never-full-width` they are given all
 *   the same, with the height from which the piece would reach its full width.
 */
export function bundleSizes(input: OutlineInput): Outline {
  const { fit, height, openingStep = 1, closingStep = 1, closingBundle } = input ?? {};
  const bad =
    fitProblem(fit) ??
    wholeNumberProblem('height', height, HEIGHTS) ??
    wholeNumberProblem('openingStep', openingStep, ROW_STEPS) ??
    wholeNumberProblem('closingStep', closingStep, ROW_STEPS) ??
    (closingBundle === undefined ? null : wholeNumberProblem('closingBundle', closingBundle, { low: 1, high: 400 }));
  if (bad) return none(bad);

  const largest = largestClosing(fit);
  const closingLeft = closingBundle ?? mounted(fit.left.columns);
  const closingRight = closingBundle ?? mounted(fit.right.columns);
  // On four columns even what was mounted on one side alone leaves a single string too few.
  if ((closingBundle ?? 1) > largest || closingLeft + closingRight > mostInLastRow(fit.width))
    return none({
      code: 'closing-too-big',
      field: 'closingBundle',
      entered: closingBundle,
      values: { closingBundle: Math.max(closingLeft, closingRight), largest },
    });
  const sides = [
    { columns: fit.left.columns, closing: closingLeft },
    { columns: fit.right.columns, closing: closingRight },
  ] as const;
  /** Row 1 would ask for more than was mounted, or the opening has not let out enough by the last row. */
  const isTooShort = (rows: number): boolean => {
    let held = 0;
    for (const { columns, closing } of sides) {
      if (closingBundleAt(closing, 1, rows, closingStep) > mounted(columns)) return true;
      held += Math.max(openingBundle(columns, rows, openingStep), closing);
    }
    return held > mostInLastRow(fit.width);
  };
  if (isTooShort(height)) {
    // Both get better with every row, so the first height that will do is the shortest.
    let shortestHeight = height + 1;
    while (isTooShort(shortestHeight)) shortestHeight += 1;
    return none({
      code: 'too-short',
      field: 'height',
      entered: height,
      values: { height, closingBundle: Math.max(closingLeft, closingRight), shortestHeight },
    });
  }

  const left: number[] = [];
  const right: number[] = [];
  let fullWidthRows = 0;
  let firstFullRow: number | null = null;
  for (let row = 1; row <= height; row += 1) {
    const sizes = [
      Math.max(
        openingBundle(fit.left.columns, row, openingStep),
        closingBundleAt(closingLeft, row, height, closingStep),
      ),
      Math.max(
        openingBundle(fit.right.columns, row, openingStep),
        closingBundleAt(closingRight, row, height, closingStep),
      ),
    ] as const;
    left.push(sizes[0]);
    right.push(sizes[1]);
    if (sizes[0] === 1 && sizes[1] === 1) {
      fullWidthRows += 1;
      firstFullRow ??= row;
    }
  }
  const outline: Outline = {
    ok: true,
    left,
    right,
    fullWidthRows,
    firstFullRow,
    firstClosingRow: earlier(
      closingStart(closingLeft, height, closingStep),
      closingStart(closingRight, height, closingStep),
    ),
  };
  if (fullWidthRows > 0) return outline;
  const opened = 1 + openingStep * (Math.max(mounted(fit.left.columns), mounted(fit.right.columns)) - 1);
  const closed = closingStep * (Math.max(closingLeft, closingRight) - 1);
  return {
    ...outline,
    problem: {
      code: 'never-full-width',
      field: 'height',
      entered: height,
      values: { height, shortestHeight: opened + closed },
    },
  };
}

/**
 * What is known of any outline that keeps the rules: its rows of full width, and where its last closing begins. A piece
 * with a waist may lose its full width in between and come back to it.
 */
export function outlineOf({ left, right }: Bundles): Outline {
  const held = left.map((size, index) => size + (right[index] ?? 1));
  const fullRows = held.flatMap((both, index) => (both === 2 ? [index + 1] : []));
  // The last stretch of rows in which nothing is let out any more, and something is taken in.
  let from = held.length;
  while (from > 1 && (held[from - 2] ?? 0) <= (held[from - 1] ?? 0)) from -= 1;
  const least = held[from - 1] ?? 2;
  const taken = held.findIndex((both, index) => index >= from && both > least);
  return {
    ok: true,
    left,
    right,
    fullWidthRows: fullRows.length,
    firstFullRow: fullRows[0] ?? null,
    firstClosingRow: taken < 0 ? null : taken + 1,
  };
}

/**
 * The first rule of an outline that the sizes break, or null (craft, section 4): both sides have one size a
 * row, row 1 is what was mounted, each side changes by at most one string a row, no row holds more than the
 * width, and the last leaves two single strings to finish with.
 */
export function outlineProblem(fit: Fit, bundles: Bundles): Problem | null {
  const { left, right } = bundles ?? {};
  if (!Array.isArray(left) || !Array.isArray(right) || left.length === 0)
    return { code: 'no-rows', field: 'bundles', values: { ...HEIGHTS } };
  if (left.length !== right.length)
    return { code: 'sides-differ-in-length', field: 'bundles', values: { left: left.length, right: right.length } };
  if (left.length > HEIGHTS.high)
    return { code: 'out-of-range', field: 'height', entered: left.length, values: { ...HEIGHTS } };
  for (const [name, sizes] of [
    ['left', left],
    ['right', right],
  ] as const) {
    let before = mounted(fit[name].columns);
    for (let index = 0; index < sizes.length; index += 1) {
      const size: unknown = sizes[index];
      const row = index + 1;
      if (!Number.isInteger(size) || (size as number) < 1) {
        const problem = wholeNumberProblem('bundles', size, { low: 1, high: fit.width });
        return problem && { ...problem, row };
      }
      if (row === 1 && size !== before)
        return {
          code: 'not-what-was-mounted',
          field: 'bundles',
          row,
          values: { side: name, size: size as number, mounted: before },
        };
      if (Math.abs((size as number) - before) > 1)
        return {
          code: 'changes-by-more-than-one',
          field: 'bundles',
          row,
          values: { side: name, size: size as number, before },
        };
      before = size as number;
    }
  }
  const last = left.length - 1;
  for (let index = 0; index <= last; index += 1) {
    const held = (left[index] ?? 1) + (right[index] ?? 1);
    const finishing = index === last && fit.width >= 4 ? 2 : 0;
    if (held + finishing > fit.width && !(fit.width < 4 && held === 2))
      return {
        code: finishing > 0 && held <= fit.width ? 'no-strings-to-finish-with' : 'bundles-exceed-width',
        field: 'bundles',
        row: index + 1,
        values: { held, width: fit.width, most: fit.width - finishing },
      };
    if (index === last && fit.width < 4 && held > 2)
      return {
        code: 'no-strings-to-finish-with',
        field: 'bundles',
        row: index + 1,
        values: { held, width: fit.width, most: 2 },
      };
  }
  return null;
}
