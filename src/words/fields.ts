import type { Swatch } from '../solver/thread/calibrate.ts';

/** Every figure or choice that a person enters, by the name the solver has for it. */
export type FieldName =
  | 'width'
  | 'height'
  | 'capacity'
  | 'maxBundle'
  | 'oddMethod'
  | 'startSide'
  | 'handedness'
  | 'openingStep'
  | 'closingStep'
  | 'closingBundle'
  | 'bundles'
  | 'chart'
  | 'palette'
  | 'barWidth'
  | 'barThickness'
  | 'gap'
  | 'diameter'
  | 'kind'
  | 'workingLength'
  | 'columnPitch'
  | 'rowPitch'
  | 'perKnot'
  | 'secondsPerKnot'
  | 'row'
  | 'from'
  | 'to'
  | 'rows'
  | 'units'
  | 'figures'
  | 'wanted';

const FIELDS: Readonly<Record<FieldName, string>> = {
  width: 'the width of the chart',
  height: 'the height of the chart',
  capacity: 'what the bar takes',
  maxBundle: 'the most strings in a bundle',
  oddMethod: 'the odd string',
  startSide: 'the side where row 1 begins',
  handedness: 'your hand',
  openingStep: 'the rows from one string let out to the next',
  closingStep: 'the rows from one string taken in to the next',
  closingBundle: 'the bundles in the last row',
  bundles: 'the size of a bundle',
  chart: 'the chart',
  palette: 'the number of colours',
  barWidth: 'the width of the bar',
  barThickness: 'the thickness of the bar',
  gap: 'the gap between bar and ring',
  diameter: 'the thickness of the cord',
  kind: 'the kind of cord',
  workingLength: 'the length of string on a card',
  columnPitch: 'the width of one column',
  rowPitch: 'the height of one row',
  perKnot: 'the string in one knot',
  secondsPerKnot: 'the time for one knot',
  row: 'the row',
  from: 'the first of the rows',
  to: 'the last of the rows',
  rows: 'the rows',
  units: 'the units',
  figures: 'the figures shown',
  wanted: 'the shape that is wished for',
};

/** A field as it stands inside a sentence: 'the width of the chart'. */
export const fieldName = (field: string | undefined): string =>
  field === undefined ? 'this figure' : field in FIELDS ? FIELDS[field as FieldName] : `“${field}”`;

const SWATCH: Readonly<Record<keyof Swatch, string>> = {
  columns: 'the columns of your swatch',
  width: 'the width of your swatch',
  rows: 'the rows of your swatch',
  height: 'the height of your swatch',
  knots: 'the knots you timed',
  used: 'the string they used',
  seconds: 'the time they took',
};

/** A part of a swatch as it stands inside a sentence: the solver calls some of them as it calls figures of a piece. */
export const swatchPartName = (part: keyof Swatch): string => SWATCH[part];

/** Fields whose figure is a length in mm. */
const LENGTHS: readonly string[] = [
  'barWidth',
  'barThickness',
  'gap',
  'diameter',
  'workingLength',
  'columnPitch',
  'rowPitch',
  'perKnot',
] satisfies FieldName[];

export const isLength = (field: string | undefined): boolean => field !== undefined && LENGTHS.includes(field);
