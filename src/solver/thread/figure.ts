/** Where a figure comes from: reckoned from the cord's diameter, or taken from the learner's own swatch. */
export type FigureSource = 'estimate' | 'measured';

/**
 * A figure that is known only as a range, in the unit its owner names (mm, seconds, or a count).
 * low ≤ likely ≤ high. `measured` means that every part of it a swatch can give was measured; what no swatch
 * gives (how far a bundle flattens, the time for mounting) may still leave a range.
 */
export interface Figure {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly source: FigureSource;
}

/** The three values of a figure without their source. */
export interface Spread {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** A figure from a swatch: one value, no range. */
export const measuredFigure = (value: number): Figure => ({
  low: value,
  likely: value,
  high: value,
  source: 'measured',
});

/** A figure whose three values are worked out one by one from the low, likely and high values of its parts. */
export const figureOf = (source: FigureSource, value: (bound: keyof Spread) => number): Figure => ({
  low: value('low'),
  likely: value('likely'),
  high: value('high'),
  source,
});

/** The sum of figures; measured only when every one of them is. The sum of none is an exact 0. */
export const sumOf = (figures: readonly Figure[]): Figure => {
  let low = 0;
  let likely = 0;
  let high = 0;
  let source: FigureSource = 'measured';
  for (const figure of figures) {
    low += figure.low;
    likely += figure.likely;
    high += figure.high;
    if (figure.source === 'estimate') source = 'estimate';
  }
  return { low, likely, high, source };
};

/** A figure taken `times` times. */
export const multipleOf = (figure: Figure, times: number): Figure => ({
  low: figure.low * times,
  likely: figure.likely * times,
  high: figure.high * times,
  source: figure.source,
});

/** Rounding slack: 20 / 2.0 is ten columns even where the machine makes it 9.999999999. */
const SLACK = 1e-9;
export const wholeDown = (value: number): number => Math.floor(value + SLACK);
export const wholeUp = (value: number): number => Math.ceil(value - SLACK);
