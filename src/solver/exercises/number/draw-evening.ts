import { type ColourRun, rowFloats } from '../../thread/row-floats.ts';
import type { Level } from '../level.ts';
import { type Draw, pick } from '../seed.ts';
import type { FloatQuestion, TimeQuestion } from './problem.ts';

/** A row in two colours at first, then in three: runs of one to seven knots, of which some colour comes twice at least. */
export function drawFloatQuestion(next: Draw, level: Level): FloatQuestion {
  const easy = level === 'worked' || level === 'half-worked';
  const colours = easy ? 2 : 3;
  const count = easy ? next(3, 4) : next(5, 6);
  const runs: ColourRun[] = [];
  for (let run = 0; run < count; run += 1) {
    const before = runs.at(-1)?.colour ?? -1;
    const step = before < 0 ? next(0, colours - 1) : next(1, colours - 1);
    runs.push({ colour: before < 0 ? step : (before + step) % colours, knots: next(1, 7) });
  }
  // Three colours in turn may leave a short row without a float: its last run then comes back to the first colour.
  const last = runs.length - 1;
  if (rowFloats(runs).length === 0) runs[last] = { colour: runs[0]?.colour ?? 0, knots: runs[last]?.knots ?? 1 };
  return { kind: 'number', ask: 'longest-float', runs };
}

/** A piece of so many knots that its minutes come out whole. */
export function drawTimeQuestion(next: Draw, level: Level): TimeQuestion {
  const secondsPerKnot = pick(next, level === 'worked' ? [20, 30] : [12, 15, 20, 30]) ?? 20;
  const minutes = next(level === 'worked' ? 10 : 24, level === 'mixed' ? 240 : 90);
  return {
    kind: 'number',
    ask: 'making-minutes',
    knots: (minutes * 60) / secondsPerKnot,
    secondsPerKnot,
    beside: next(8, 25),
  };
}
