import { type Fit, type RowPlan, walkLead } from '../../../src/solver/index.ts';

/**
 * The leading strings followed knot by knot, as a maker would with a pencil: slow, and nothing like the
 * solver's way. Where each knot begins and ends comes from walking the leading string.
 */

export interface TiedKnot {
  readonly row: number;
  readonly colour: number;
  /** Strands under it, a carried end counted. */
  readonly core: number;
  readonly begins: number;
  readonly ends: number;
}

export function everyKnot(rows: readonly RowPlan[], fit: Fit): TiedKnot[] {
  const walk = walkLead(rows);
  if (!walk.ok) throw new Error('the leading string jumps');
  const knots: TiedKnot[] = [];
  let place = 0;
  for (const plan of rows)
    for (const run of plan.runs) {
      const { at, ends } = walk.path[place] ?? { at: Number.NaN, ends: Number.NaN };
      place += 1;
      for (let knot = 0; knot < run.count; knot += 1) {
        const column = run.columns[0] + knot * Math.sign(run.columns[1] - run.columns[0]);
        const carried =
          (fit.carrySide === 'left' && column === plan.firstColumn) ||
          (fit.carrySide === 'right' && column === plan.lastColumn);
        const bundle =
          column === plan.firstColumn ? plan.leftBundle : column === plan.lastColumn ? plan.rightBundle : 1;
        const step = (ends - at) / run.count;
        knots.push({
          row: plan.row,
          colour: run.colour ?? 0,
          core: bundle + (carried ? 1 : 0),
          begins: at + knot * step,
          ends: at + (knot + 1) * step,
        });
      }
    }
  return knots;
}

export interface Float {
  readonly row: number;
  readonly colour: number;
  readonly from: number;
  readonly to: number;
  readonly rows: number;
}

export interface Followed {
  readonly floats: readonly Float[];
  /** By colour. */
  readonly starts: ReadonlyMap<number, number>;
}

/** Floats and fresh starts: a string waits while another colour ties, and is joined anew after ten rows without it. */
export function everyFloat(knots: readonly TiedKnot[]): Followed {
  const floats: Float[] = [];
  const starts = new Map<number, number>();
  const last = new Map<number, { readonly knot: TiedKnot; readonly index: number }>();
  knots.forEach((knot, index) => {
    const before = last.get(knot.colour);
    last.set(knot.colour, { knot, index });
    if (!before) starts.set(knot.colour, 1);
    else if (before.index < index - 1) {
      const rowsWithout = knot.row - before.knot.row - 1;
      if (rowsWithout >= 10) starts.set(knot.colour, (starts.get(knot.colour) ?? 0) + 1);
      else
        floats.push({
          row: knot.row,
          colour: knot.colour,
          from: before.knot.ends,
          to: knot.begins,
          rows: knot.row - before.knot.row,
        });
    }
  });
  return { floats, starts };
}
