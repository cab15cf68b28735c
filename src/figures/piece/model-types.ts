import type { Chart } from '../../solver/chart.ts';
import type { Bundles, Fit, RowPlan } from '../../solver/piece.ts';
import type { Path } from '../strand/point.ts';
import type { Finishing } from './finishing.ts';

/** What becomes of the strings below: they hang, or are gathered into two bundles, or tied off and trimmed too. */
export type Ending = 'hanging' | 'gathered' | 'finished';

/** What `pieceModel` needs of a plan. */
export interface PieceInput {
  readonly fit: Fit;
  readonly bundles: Bundles;
  readonly rows: readonly RowPlan[];
  readonly chart?: Chart | null | undefined;
  /** The last row that is begun, 0 to the number of rows; others are taken as the nearest. All when left out. */
  readonly upToRow?: number | undefined;
  /** Knots of that row that are tied, 0 to all of them. All when left out. */
  readonly upToKnot?: number | undefined;
  /** How far a piece with its last row tied is finished. Default `finished`. */
  readonly ending?: Ending | undefined;
  /** Some of its rows alone, pulled apart: then it is finished only as `finish` says. */
  readonly pulled?: Pulled | undefined;
}

/** Rows that are looked at by themselves, drawn apart so that each string is seen on its way from one to the next. */
export interface Pulled {
  /** The first row there is, from 1. With row 1 the bar is there too; above any other row the strings hang on upwards. */
  readonly fromRow: number;
  /** How far one row hangs below the end of the one before, in d; 0 and more. */
  readonly apart: number;
  /** Strings to be told from the others, each from the row above to the row in which it changes over. */
  readonly moved: readonly Moved[];
  /** Colours (palette indices) whose floats hang down slack, each a little lower and farther behind than the one before. */
  readonly slack?: readonly number[] | undefined;
  /** How its last row is finished, from how many instances of shapes there are before; it hangs on when left out. */
  readonly finish?: ((from: number) => Finishing) | undefined;
}

/** A string that leaves its bundle, or joins it, in a row. */
export interface Moved {
  readonly column: number;
  readonly row: number;
  /** Whether it is told from the others below that row as well, down to its end. */
  readonly on: boolean;
}

/** A drawn-up knot in its own place: x from the middle of what it is tied round, y from the top of its row, in d. */
export interface PieceShape {
  /** Cords that tie: one, or the two of a square knot. */
  readonly leads: readonly Path[];
  /** The cords it is tied round, as far as it covers them. */
  readonly bases: readonly Path[];
}

/** At the end of a shape's name: a string ties it that is told from the others. */
export const TOLD = ' told';

/** Where the rows of a piece lie: y is 0 at the top of the first that is there. */
export interface Laid {
  readonly fromRow: number;
  /** From one row to the next, in d. */
  readonly pitch: number;
}

/** An instance of a shape. */
export interface Place {
  /** Name of the shape in `PieceModel.shapes`. */
  readonly shape: string;
  readonly x: number;
  readonly y: number;
  /** Cosine and sine of the angle by which it is turned clockwise, where it lies on a slanting core. */
  readonly turn?: readonly [cosine: number, sine: number];
  /** For a knot of the chart: its row and column from 1 (a bundle's innermost), and the strings under it, in columns. */
  readonly knot?: { readonly row: number; readonly column: number; readonly strands: number };
  /** Palette index of the string that ties it; null where it has the house's colour or that of base strings. */
  readonly colour: number | null;
}

/** One stretch of a string: a line of its own, or a stretch of a shape's cord where the shape stands. */
export type Part =
  | { readonly is: 'line'; readonly what: Course; readonly path: Path }
  | {
      readonly is: 'shape';
      readonly place: number;
      readonly lead: number;
      readonly from?: number;
      readonly to?: number;
    };

/** What a line of a string is for; `way` where it is followed by itself while others lie in a core. */
export type Course = 'hang' | 'fold' | 'link' | 'float' | 'tail' | 'end' | 'core' | 'way' | 'tassel';

export interface PieceString {
  readonly id: string;
  readonly role: 'base' | 'leading';
  /** Palette index; null for base strings, and for a leading string without a chart. */
  readonly colour: number | null;
  readonly parts: readonly Part[];
}

export interface PieceModel {
  readonly width: number;
  readonly height: number;
  readonly upToRow: number;
  readonly upToKnot: number;
  /** Where its rows lie. */
  readonly laid: Laid;
  readonly moved: readonly Moved[];
  readonly ending: Ending;
  readonly knots: number;
  readonly view: 'front' | 'back';
  readonly chart: Chart | null;
  readonly rows: readonly RowPlan[];
  readonly fit: Fit;
  readonly shapes: Readonly<Record<string, PieceShape>>;
  /** In the order in which they are tied. Empty where the piece is `coarse`. */
  readonly places: readonly Place[];
  readonly strings: readonly PieceString[];
  readonly ring: {
    readonly bar: Path;
    readonly arch: Path;
    readonly key: { readonly x: number; readonly y: number; readonly r: number };
  };
  /** Too many knots for cord: only cells are drawn. */
  readonly coarse: boolean;
  readonly frame: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
}
