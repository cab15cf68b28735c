/** The trade's own words, as the interface uses them in labels and headings. */
export type Term =
  | 'base-string'
  | 'leading-string'
  | 'fold'
  | 'larks-head'
  | 'capacity'
  | 'spare-strings'
  | 'side-bundle'
  | 'row'
  | 'opening'
  | 'closing'
  | 'outline'
  | 'corner-cell'
  | 'turning-knot'
  | 'lone-string'
  | 'carried-end'
  | 'float'
  | 'swatch';

interface TermWords {
  readonly term: string;
  /** In one sentence. */
  readonly means: string;
}

export const TERMS: Readonly<Record<Term, TermWords>> = {
  'base-string': {
    term: 'base string',
    means: 'A string that hangs down the piece and is knotted over, one for each column.',
  },
  'leading-string': {
    term: 'leading string',
    means: 'The string that travels across the row and makes every knot you see.',
  },
  fold: { term: 'fold', means: 'One cut string folded in half, which gives two base strings.' },
  'larks-head': { term: 'lark’s head', means: 'The knot that fixes a fold to the bar.' },
  capacity: { term: 'capacity', means: 'How many knotted columns lie flat side by side along the bar.' },
  'spare-strings': { term: 'spare strings', means: 'The strings of the chart that find no place on the bar.' },
  'side-bundle': {
    term: 'side bundle',
    means: 'The spare strings of one side, looped through the ring and held by one knot in the first row.',
  },
  row: { term: 'row', means: 'One pass of the leading string from edge to edge; the next one goes back.' },
  opening: { term: 'opening', means: 'The rows in which the bundles let strings out.' },
  closing: { term: 'closing', means: 'The rows in which the bundles take strings in.' },
  outline: { term: 'outline', means: 'The cells of the chart that the shape really contains.' },
  'corner-cell': { term: 'corner cell', means: 'A cell of the chart outside the outline.' },
  'turning-knot': {
    term: 'turning knot',
    means: 'A knot that brings the leading string back to the side it came from.',
  },
  'lone-string': { term: 'lone string', means: 'One single string, fixed on the bar beside the folds.' },
  'carried-end': {
    term: 'carried end',
    means: 'One end too many, which rides in a side bundle for the whole piece and is no column.',
  },
  float: { term: 'float', means: 'A resting string that runs along the back to where it is needed next.' },
  swatch: { term: 'swatch', means: 'A small strip tied with your own thread and hand, and measured.' },
};
