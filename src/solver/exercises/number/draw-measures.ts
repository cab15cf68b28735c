import { pitchesOf } from '../../thread/pitch.ts';
import { THREAD_KINDS } from '../../thread/thread.ts';
import { type Draw, pick } from '../seed.ts';
import type { MeasureAsk, MeasureQuestion } from './problem.ts';

/** Bars of the workshop, in mm; both ends count. */
const BARS = { low: 22, high: 48 };
/** mm that ten turns of the workshop's cords take. */
const TURNS = [8, 10, 12, 15] as const;
/** Knots of a swatch. */
const KNOTS = { low: 10, high: 16 };

/** A ring to be measured: by ten turns of a cord, or by a swatch tied with it. */
export function drawMeasures(next: Draw, ask: MeasureAsk): MeasureQuestion {
  const barWidth = next(BARS.low, BARS.high);
  const threadKind = pick(next, THREAD_KINDS) ?? 'soft';
  const tenTurns = pick(next, TURNS) ?? 10;
  const { low, high } = pitchesOf({ diameter: 1, kind: threadKind }).column;
  if (ask === 'capacity-low')
    return { kind: 'number', ask, barWidth, tenTurns, threadKind, narrowest: low, widest: high };
  const knots = next(KNOTS.low, KNOTS.high);
  // A swatch of this cord comes out between its narrowest and its widest, in whole millimetres.
  const [least, most] = [low, high].map((times) => Math.round((tenTurns / 10) * times * knots)) as [number, number];
  return { kind: 'number', ask, barWidth, knots, swatchWidth: next(least, most) };
}
