/** One thread colour of a chart. */
export interface PaletteEntry {
  /** Plain name, as a maker would say it: tar, chalk, estuary blue. */
  readonly name: string;
  /** `#rrggbb` or `#rgb`; `none` for the blank entry. */
  readonly colour: string;
  /** The character that stands for it in the text form; absent when it is the default one for its place. */
  readonly key?: string;
  /** Outside the shape. At most one entry. */
  readonly blank?: true;
  /** The background. At most one entry; without one, the commonest colour on the rim. */
  readonly ground?: true;
}

/** A picture: one cell, one knot. */
export interface Chart {
  readonly title?: string;
  /** Columns, 2 to 400. */
  readonly width: number;
  /** Rows, 1 to 1000. */
  readonly height: number;
  /** 1 to 32 entries. */
  readonly palette: readonly PaletteEntry[];
  /** Palette indices, row-major, row 1 (at the ring) first, column 1 (left) first. */
  readonly cells: Uint8Array;
}
