import type { FittingSlip } from './fitting.ts';
import type { KnotSlip } from './knots.ts';
import type { MakingSlip } from './making.ts';
import type { MeasuringSlip } from './measuring.ts';
import type { RowSlip } from './rows.ts';
import type { ThreadSlip } from './thread.ts';

/** Every slip that can be named. */
export type SlipId = FittingSlip | RowSlip | KnotSlip | ThreadSlip | MeasuringSlip | MakingSlip;

/** One slip, or two made in one answer. */
export type SlipSet = readonly [SlipId] | readonly [SlipId, SlipId];
