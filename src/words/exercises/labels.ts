import type { ExerciseProblem, FieldOf, KindName } from '../../solver/exercises/contract.ts';
import type { NumberAsk } from '../../solver/exercises/number/problem.ts';
import type { RowField } from '../../solver/exercises/row/problem.ts';
import type { SpotField } from '../../solver/exercises/spot/problem.ts';
import type { SumField } from '../../solver/exercises/sum/problem.ts';

const SUM_LABELS: Readonly<Record<SumField, string>> = {
  places: 'Places used on the bar',
  spare: 'Spare strings',
  eachSide: 'Half of the spare strings',
  parity: 'Is that half even or odd?',
  borrowed: 'Strings borrowed from the bar',
  onBar: 'Strings on the bar',
  bundle: 'Strings in each side bundle',
  foldsOnBar: 'Folds on the bar',
  loneStrings: 'Lone strings',
  foldsEachSide: 'Folds on each side',
  firstRowKnots: 'Knots in row 1',
  fullWidthRow: 'First row of full width',
};

export const sumLabel = (field: SumField): string => SUM_LABELS[field];

/** The parts of a row, and what is found on a sheet. */
const KNOT_LABELS: Readonly<Record<RowField | SpotField, string>> = {
  'start-move': 'What moves first',
  'start-edge': 'The edge where the row begins',
  between: 'The strings between',
  'end-move': 'What moves at the end',
  'end-edge': 'The edge where the row ends',
  place: 'Where it is',
  fault: 'What it is',
};

const NUMBER_LABELS: Readonly<Record<NumberAsk, string>> = {
  spare: 'Spare strings',
  'each-side': 'Strings in each side bundle',
  'on-bar': 'Strings on the bar',
  'folds-to-cut': 'Folds to cut',
  'knots-in-row': 'Knots in this row',
  'bundle-in-row': 'Strings tied as one',
  'corner-cells-in-row': 'Corner cells in this row',
  'full-width-row': 'First row of full width',
  'first-closing-row': 'First closing row',
  'corner-cells': 'Corner cells',
  'cut-length': 'Length to cut',
  'base-string-in-all': 'String for all folds',
  'column-of-knot': 'Column',
  'knots-of-colour': 'Knots of this colour',
  'plain-rows-above': 'Plain rows to add above',
  'capacity-low': 'Columns on the bar, at the least',
  'capacity-by-swatch': 'Columns on the bar',
  'longest-float': 'Columns of the longest float',
  'folds-for-class': 'Folds for the class',
  'making-minutes': 'Minutes in all',
};

/** Where there is nothing to count, one name for all that is entered. */
const WHOLE_LABELS = { order: 'Your order', choose: 'Your choice', say: 'What you said' } as const;

/** The label of a field of an exercise: of a sum by the field, of a single figure by what is asked, of a chart by the row. */
export function fieldLabel(problem: ExerciseProblem, field: FieldOf<KindName>): string {
  if (problem.kind === 'sum') return SUM_LABELS[field as SumField];
  if (problem.kind === 'number') return NUMBER_LABELS[problem.ask];
  if (problem.kind === 'row' || problem.kind === 'spot') return KNOT_LABELS[field as RowField | SpotField];
  return problem.kind === 'mark' ? `Row ${field.split('-')[1]}` : WHOLE_LABELS[problem.kind];
}

/** The unit that stands beside a field; empty for a count. */
export const fieldUnit = (problem: ExerciseProblem): string =>
  problem.kind === 'number' && (problem.ask === 'cut-length' || problem.ask === 'base-string-in-all') ? 'mm' : '';
