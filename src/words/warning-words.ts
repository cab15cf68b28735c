import type { PaletteEntry } from '../solver/chart.ts';
import type { Warning, WarningCode } from '../solver/inspect.ts';
import { count, figure, type Values } from './numbers.ts';
import { colourName } from './row-words.ts';

export interface WarningWords {
  /** What was found, and where. */
  readonly found: string;
  /** Why it matters. */
  readonly why: string;
  /** What to do about it. */
  readonly todo: string;
}

type Palette = readonly PaletteEntry[] | null | undefined;
type Say = (values: Values, warning: Warning, palette: Palette) => readonly [found: string, why: string, todo: string];

const inColumns = ({ columns }: Warning): string => {
  if (!columns) return '';
  const [from, to] = columns;
  return from === to ? `, column ${from}` : `, columns ${from} to ${to}`;
};

const inRow = (warning: Warning): string => `Row ${figure(warning.row)}${inColumns(warning)}`;

const SAYS: Readonly<Record<WarningCode, Say>> = {
  'width-differs': ({ chart, piece }) => [
    `The chart is ${count(chart, 'column')} wide, but the piece is planned for ${figure(piece)}.`,
    'Each column needs its own string.',
    'Plan the piece again with this chart, or add or take away columns.',
  ],
  'height-differs': ({ chart, piece }) => [
    `The chart has ${count(chart, 'row')}, but the piece is planned for ${figure(piece)}.`,
    'Each row of the chart is one row of knots.',
    'Plan the piece again with this chart, or add or take away rows.',
  ],
  'never-full-width': ({ width, most }) => [
    `The widest row has ${count(most, 'knot')}, but the chart is ${count(width, 'column')} wide.`,
    'Closing begins before all strings are out, so the outer columns are never tied singly.',
    'Add plain rows, or close to smaller bundles.',
  ],
  'bundle-over-most': ({ side, bundle, most }, { row }) => [
    `From row ${figure(row)} the ${side} bundle holds ${count(bundle, 'string')}. You allow ${figure(most)}.`,
    'A thick bundle makes a thick knot and may not pass the ring.',
    'Choose smaller bundles, or measure whether a thicker one passes.',
  ],
  'first-row-not-plain': ({ colours }, warning) => [
    `Row ${figure(warning.row)} has ${count(colours, 'colour')}.`,
    'The first row holds the bundles and steadies the piece. One colour makes it much easier.',
    'Make the first row one colour, or add a plain row above the picture.',
  ],
  hole: ({ cells }, warning) => [
    `${inRow(warning)}: ${count(cells, 'cell')} inside the shape ${cells === 1 ? 'is' : 'are'} blank.`,
    'A string hangs there, and every string gets a knot in every row.',
    'Give the blank cells a colour, or change the outline.',
  ],
  'picture-cut': ({ side, lost }, warning) => [
    `${inRow(warning)}: ${count(lost, 'cell')} of the picture ${lost === 1 ? 'lies' : 'lie'} outside the shape on the ${side}.`,
    'The strings there are in the bundle, so these cells are not tied.',
    'Move the picture, add plain rows, or let that part go.',
  ],
  'too-many-colours': ({ colours, most }, { row }) => [
    `Row ${figure(row)} has ${count(colours, 'colour')}.`,
    `With more than ${figure(most)} the strings at the back get thick.`,
    'Use fewer colours in this row.',
  ],
  'colour-change-on-turning-knot': ({ colour, beside }, { row, columns }, palette) => [
    `Row ${figure(row)}, column ${figure(columns?.[0])}: the turning knot is ${colourName(palette, Number(colour))}, and the knot beside it ${colourName(palette, Number(beside))}.`,
    'A new string can’t be joined well on a turning knot.',
    'Give both cells the same colour.',
  ],
  'float-too-long': ({ colour, columns, rows, floats }, warning, palette) => {
    const name = colourName(palette, Number(colour));
    const more = Number(floats) > 1 ? ` It is the longest of ${figure(floats)} in this row.` : '';
    const down = Number(rows) > 0 ? `, ${count(rows, 'row')} on` : '';
    return [
      `${inRow(warning)}: the ${name} string runs behind ${count(columns, 'column')} to where it is needed next${down}.${more}`,
      'A long string at the back catches on things, or pulls the piece into a curl.',
      'Tie every fifth base over it as well, and leave it a little slack.',
    ];
  },
};

/** What a careful maker would warn about: what was found, why it matters, what to do. */
export function warningWords(warning: Warning, palette?: Palette): WarningWords {
  const [found, why, todo] = SAYS[warning.code](warning.values, warning, palette);
  return { found, why, todo };
}
