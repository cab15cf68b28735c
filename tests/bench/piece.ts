/**
 * How long a whole piece takes as model and as markup, and how large its markup is: 26 × 32 at full cord detail, at most
 * 100 kB, 12 kB packed and 50 ms.
 */
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { drawPiece, pieceModel } from '../../src/figures/piece/index.ts';
import { parseChart, planPiece } from '../../src/solver/index.ts';

const REPEATS = 41;

const parsed = parseChart(readFileSync(new URL('../../content/charts/lantern.chart', import.meta.url), 'utf8'));
if (!parsed.ok) throw new RangeError(parsed.problem.code);
const { chart } = parsed;
const plan = planPiece({ width: chart.width, height: chart.height, capacity: 16, chart });
if (!plan.ok) throw new RangeError(plan.problem.code);
const { fit, outline, rows } = plan;

for (const view of ['front', 'back'] as const)
  for (const level of ['cord', 'stitch', 'cell'] as const) {
    const times: number[] = [];
    let svg = '';
    for (let repeat = 0; repeat < REPEATS; repeat += 1) {
      const started = performance.now();
      svg = drawPiece(pieceModel({ fit, bundles: outline, rows, chart }), { id: 'piece', view, level });
      times.push(performance.now() - started);
    }
    const [first = 0] = times;
    const median = [...times].sort((a, b) => a - b)[REPEATS >> 1] ?? 0;
    console.log(
      `26 × 32 from the ${view}, ${level}: ${median.toFixed(1)} ms (the first ${first.toFixed(1)} ms; at most 50), ${(svg.length / 1000).toFixed(1)} kB (at most 100), ${(gzipSync(svg).length / 1000).toFixed(1)} kB packed (at most 12)`,
    );
  }
