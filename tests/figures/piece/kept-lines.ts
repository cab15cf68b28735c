/**
 * Writes `src/figures/piece/kept.ts` afresh from the strand model: `node tests/figures/piece/kept-lines.ts --write`.
 * The tests only compare, they never write.
 */
import { writeFileSync } from 'node:fs';
import { type Path, type Point, strandModel } from '../../../src/figures/strand/index.ts';

/** Steps along a kept line, in d. */
const STEP = 0.3;

const away = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** The points of a line at least a step apart, within the given distance across and down. */
function thinned(path: Path, within: (point: Point) => boolean): Point[] {
  const points: Point[] = [];
  let due = STEP;
  path.forEach((point, at) => {
    const before = path[at - 1];
    due += before ? away(before, point) : 0;
    if (due < STEP || !within(point)) return;
    due = 0;
    points.push(point.map((part) => Math.round(part * 100) / 100 || 0) as unknown as Point);
  });
  return points;
}

const line = (knot: Parameters<typeof strandModel>[0], id: string, within: (point: Point) => boolean): Point[] =>
  thinned(strandModel(knot, { crossings: false }).strands.find((strand) => strand.id === id)?.path ?? [], within);

/** The lines of the strand model that the whole piece is made of, thinned. */
export function keptLines(): Record<string, Point[]> {
  const near = ([x, y]: Point): boolean => Math.abs(x) < 2.6 && y < 5;
  return {
    forward: line('forward', 'leading', near),
    forwardBackward: line('forward-backward', 'leading', near),
    larksHead: line('larks-head', 'fold', ([, y]) => y < 4.6),
    loneString: line('lone-string', 'lone', ([, y]) => y < 4.6),
    gatheringRight: line('gathering-right', 'single', ([, y]) => y > -3.4 && y < 6),
    squareLeft: line('square-knot', 'left-cord', ([, y]) => y > -3 && y < 8.5),
    squareRight: line('square-knot', 'right-cord', ([, y]) => y > -3 && y < 8.5),
  };
}

if (process.argv.includes('--write')) {
  const lines = Object.entries(keptLines()).map(
    ([name, points]) => `export const ${name}: Path = [\n${points.map((p) => `  [${p.join(', ')}],\n`).join('')}];\n`,
  );
  writeFileSync(
    new URL('../../../src/figures/piece/kept.ts', import.meta.url),
    `import type { Path } from '../strand/point.ts';\n\n/*\n * Drawn-up knots of the strand model round a single base, in d. Drawing them up takes most of a second, so they are\n * kept; a test compares every point with the strand model. To write them afresh: tests/figures/piece/kept-lines.ts.\n */\n\n${lines.join('\n')}`,
  );
}
