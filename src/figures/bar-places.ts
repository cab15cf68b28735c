import type { Fit, SideName } from '../solver/piece.ts';

/** All places of the bar taken; half of the spare strings on each side; or the answer of the fitting sum. */
export type BarStage = 'capacity' | 'shared' | 'fitted';

/** What a drawing of the bar needs of a plan. */
export interface BarPlan {
  readonly fit: Fit;
  readonly startSide: SideName;
}

/** Strings that hang in one place, on the bar or on one side of it. */
export interface Hanging {
  readonly strings: number;
  readonly folds: number;
  /** 1 for a string that is no part of a fold: the lone string on the bar, a string without a partner beside it. */
  readonly over: number;
  /** Of a side's strings, those that gave up a place of the bar. */
  readonly borrowed: number;
  /** 1 where a carried end rides along, outside all columns. */
  readonly carried: number;
}

/** Who hangs where at one stage of the sum. */
export interface BarPlaces {
  readonly left: Hanging;
  readonly bar: Hanging;
  readonly right: Hanging;
  /** Strands that find no place on the bar. */
  readonly spare: number;
  /** Places of the bar that stay empty though nothing was borrowed from them. */
  readonly empty: number;
}

const hanging = (strings: number, borrowed = 0, carried = 0): Hanging => ({
  strings,
  folds: strings >> 1,
  over: strings % 2,
  borrowed,
  carried,
});

/** Shares the strings of a fit for one stage (craft, section 3). */
export function barPlaces({ fit }: BarPlan, stage: BarStage): BarPlaces {
  const { width, capacity, borrowed, carrySide } = fit;
  const places = Math.min(capacity, width) - fit.idle;
  const half = (fit.left.strands + fit.right.strands - borrowed) / 2;
  const side = (name: SideName): Hanging => {
    const { strands } = fit[name];
    const carried = carrySide === name ? 1 : 0;
    return stage === 'fitted'
      ? hanging(strands, Math.min(borrowed, Math.max(0, strands - half)), carried)
      : hanging(half, 0, carried);
  };
  return {
    left: side('left'),
    bar: hanging(stage === 'fitted' ? fit.onBar : places),
    right: side('right'),
    spare: 2 * half,
    empty: capacity - places,
  };
}
