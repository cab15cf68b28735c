import { MEASURE_RULES, type MeasureRules } from '../exercises/number/measures.ts';

export const MEASURING_SLIPS = [
  'rounded-up',
  'other-end-of-range',
  'turns-not-divided',
  'knots-as-thin-as-cord',
  'swatch-turned-round',
] as const;
export type MeasuringSlip = (typeof MEASURING_SLIPS)[number];

/** Each slip as the rules a learner goes by who makes it, all else as a maker does. */
const MEASURING: { readonly [Id in MeasuringSlip]: Partial<MeasureRules> } = {
  // The part of a column that is left over is taken for one.
  'rounded-up': { columns: (barWidth, pitch) => Math.ceil(barWidth / pitch) },
  // The narrow end of a column's width is taken for the careful one.
  'other-end-of-range': { times: (narrowest) => narrowest },
  // Ten turns are taken for one.
  'turns-not-divided': { thickness: (tenTurns) => tenTurns },
  // A knot is taken to be as wide as its cord.
  'knots-as-thin-as-cord': { times: () => 1 },
  // Knots to a millimetre in place of millimetres to a knot.
  'swatch-turned-round': { perKnot: (knots, swatchWidth) => knots / swatchWidth },
};

/** The rules a learner goes by who makes this slip. */
export const slippedMeasures = (slip: MeasuringSlip): MeasureRules => ({ ...MEASURE_RULES, ...MEASURING[slip] });
