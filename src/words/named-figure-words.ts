import type { FigureName } from '../solver/named-figures.ts';

const LABELS: Readonly<Record<FigureName, string>> = {
  width: 'Width of the chart',
  height: 'Height of the chart',
  capacity: 'The bar takes',
  places: 'Places used on the bar',
  idle: 'Idle places',
  spare: 'Spare strings',
  half: 'Half of the spare strings',
  borrowed: 'Borrowed from the bar',
  'on-bar': 'Strings on the bar',
  'folds-on-bar': 'Folds on the bar',
  'lone-strings': 'Lone strings',
  'spare-in-all': 'Strings beside the bar',
  'side-columns': 'Columns in a side bundle',
  'side-strands': 'Strings in a side bundle',
  'side-folds': 'Folds on each side',
  'folds-in-all': 'Folds in all',
  'first-row-knots': 'Knots in row 1',
  'full-width-row': 'First row of full width',
  'full-width-rows': 'Rows of full width',
  'last-full-row': 'Last row of full width',
  'first-closing-row': 'First closing row',
  'last-bundle': 'Bundle in the last row',
  'knots-in-all': 'Knots in all',
  'corner-cells': 'Corner cells',
  'corner-cells-opening': 'Corner cells while opening',
  singles: 'Single strings after the last row',
  'gathered-each-side': 'Strings gathered on each side',
  'left-in-middle': 'Strings left in the middle',
  'knots-in-row': 'Knots in this row',
  'left-bundle-in-row': 'Left bundle in this row',
  'right-bundle-in-row': 'Right bundle in this row',
  'first-column-in-row': 'First column of this row',
  'last-column-in-row': 'Last column of this row',
  'corner-cells-in-row': 'Corner cells in this row',
};

/** A named figure as it stands before its number in a list. */
export const figureLabel = (name: FigureName): string => LABELS[name];

/** In place of a figure that this piece has not got. */
export const NO_FIGURE = 'none';
