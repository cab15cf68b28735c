/**
 * How long each knot takes as model and as markup, and how large its markup is: round a bundle of four where it can be,
 * at the stage that is drawn up or comes last. A step of the stepper is one model and one drawing.
 */
import { gzipSync } from 'node:zlib';
import { basesFor, drawModel, type KnotName, knots, strandModel, tell } from '../../src/figures/strand/index.ts';

const REPEATS = 41;
/** ms that a step may take, so that it is there with the next frame. */
const MOST = 16;

const median = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[times.length >> 1] ?? 0;

/** Median ms of some work, and ms of its first time. */
function timed(work: () => void): { readonly first: number; readonly usual: number } {
  const times = Array.from({ length: REPEATS }, () => {
    const started = performance.now();
    work();
    return performance.now() - started;
  });
  return { first: times[0] ?? 0, usual: median(times) };
}

const column = (value: number, digits: number, width: number): string => value.toFixed(digits).padStart(width);

console.log('Each knot drawn up, round four strings where it can be: ms, and bytes of its markup.');
console.log(`${'knot'.padEnd(21)} first  model   draw   step      kB  packed`);
let slowest = 0;
for (const knot of Object.keys(knots) as KnotName[]) {
  const strands = Math.min(4, basesFor(knot)[1]);
  const model = timed(() => strandModel(knot, { strands }));
  const made = strandModel(knot, { strands });
  let svg = '';
  const draw = timed(() => {
    svg = drawModel(made);
  });
  const step = timed(() => {
    const moment = strandModel(knot, { strands, moment: 0.9 });
    tell(moment);
    drawModel(moment);
  });
  slowest = Math.max(slowest, step.usual);
  const figures = [
    column(model.first, 1, 6),
    column(model.usual, 2, 7),
    column(draw.usual, 2, 7),
    column(step.usual, 2, 7),
    column(svg.length / 1000, 1, 8),
    column(gzipSync(svg).length / 1000, 1, 8),
  ];
  console.log(`${knot.padEnd(20)}${figures.join('')}`);
}
console.log(`  slowest step: ${slowest.toFixed(1)} ms (at most ${MOST})\n`);
