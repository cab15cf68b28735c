export type { PiecePlace } from './base-string.ts';
export { type BundleLimitInput, bundleLimit, GAPS } from './bundle-limit.ts';
export { calibrate, type Swatch } from './calibrate.ts';
export { BAR_WIDTHS, type CapacityInput, capacityRange } from './capacity.ts';
export { coreDiameter, coreSpread, FLATTENING } from './core.ts';
export { type CutList, type CutListInput, type CutPieces, type CutTotals, cutList } from './cut-list.ts';
export { EVENING_PARTS, type EveningPart, type EveningStretch, eveningOf, HANDS, type Hands } from './evening.ts';
export type { Figure, FigureSource, Spread } from './figure.ts';
export { RESTING_ROWS } from './floats.ts';
export { LONGEST_FREE_FLOAT } from './free-float.ts';
export { halfHitchLength } from './knot-length.ts';
export type { LeadingColour } from './leading.ts';
export { type Pitches, type PitchInput, pitches } from './pitch.ts';
export { type ColourRun, colourRuns, type RowFloat, rowFloats } from './row-floats.ts';
export { type SafeFit, type SafeFitInput, safeFit } from './safe-fit.ts';
export {
  BAR_THICKNESSES,
  DIAMETERS,
  LENGTHS_PER_KNOT,
  type Measured,
  PITCHES,
  SECONDS_PER_KNOT,
  THREAD_KINDS,
  type Thread,
  type ThreadKind,
  WORKING_LENGTHS,
} from './thread.ts';
export type { MakingTime } from './time.ts';
