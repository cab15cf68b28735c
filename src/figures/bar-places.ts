import type { Fit, SideName } from '../solver/piece.ts';

/** All places of the bar taken; half of the spare strings on each side; or the answer of the fitting sum. */
export type BarStage = 'capacity' | 'shared' | 'fitted';

/** What a drawing of the bar needs of a plan. */
export interface BarPlan {
  readonly fit: Fit;
  readonly startSide: SideName;
}

/** What hangs beside the bar on one side. */
export interface Beside {
  readonly strings: number;
  readonly folds: number;
  /** 1 for a string without a partner, which no fold can give. */
  readonly over: number;
  /** Of the strings, those that gave up a place of the bar. */
  readonly borrowed: number;
  /** 1 where a carried end rides along, outside all columns. */
  readonly carried: number;
}

/** Who hangs where at one stage of the sum. Slots count strands from 0 at the left, on the bar or beside it. */
export interface BarPlaces {
  readonly onBar: number;
  /** 1 for a lone string, whose slot is `loneSlot`. */
  readonly lone: number;
  readonly loneSlot: number;
  readonly left: Beside;
  readonly right: Beside;
  /** Strands that find no place on the bar. */
  readonly spare: number;
  /** Places of the bar that stay empty though nothing was borrowed from them. */
  readonly empty: number;
  /** The slot over which the bar begins. */
  readonly first: number;
  readonly strands: number;
}

/** Shares the strings of a fit for one stage (craft, section 3). */
export function barPlaces({ fit, startSide }: BarPlan, stage: BarStage): BarPlaces {
  const { width, capacity, borrowed, carrySide } = fit;
  const places = Math.min(capacity, width) - fit.idle;
  const half = (fit.left.strands + fit.right.strands - borrowed) / 2;
  const fitted = stage === 'fitted';
  const beside = (side: SideName): Beside => {
    const strings = fitted ? fit[side].strands : half;
    return {
      strings,
      folds: strings >> 1,
      over: strings % 2,
      borrowed: fitted ? Math.min(borrowed, Math.max(0, strings - half)) : 0,
      carried: carrySide === side ? 1 : 0,
    };
  };
  const left = beside('left');
  const right = beside('right');
  const onBar = fitted ? fit.onBar : places;
  const empty = capacity - places;
  const endsLeft = startSide === 'right';
  // An idle place lies where row 1 ends; places that nobody needs lie at both ends of the bar.
  const emptyLeft = width < capacity ? (empty + (endsLeft ? 1 : 0)) >> 1 : endsLeft ? empty : 0;
  const lone = onBar % 2;
  return {
    onBar,
    lone,
    loneSlot: lone ? (endsLeft ? left.strings : left.strings + onBar - 1) : -1,
    left,
    right,
    spare: 2 * half,
    empty,
    first: left.strings - left.borrowed - emptyLeft,
    strands: left.strings + onBar + right.strings,
  };
}
