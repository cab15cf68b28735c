import { describe, expect, it } from 'vitest';
import { drawPiece, LEVEL_SIZES, type Level, levelFor } from '../../../src/figures/piece/index.ts';
import { COLUMN, ROW } from '../../../src/figures/piece/packed.ts';
import { UNIT } from '../../../src/figures/piece/pen.ts';
import { evening, planned } from '../drawn.ts';
import { expanded, modelOf } from './pieces.ts';

/** Squares of the comparing grid, in units of the drawing. */
const GRID = 4;

interface Grid {
  readonly across: number;
  readonly down: number;
  readonly full: Uint8Array;
}

type Spot = readonly [x: number, y: number];

/** The corners of path data: lines as they are, curves in eighths. */
function cornersOf(d: string): Spot[][] {
  const lines: Spot[][] = [];
  let [x, y] = [0, 0];
  for (const [, letter = '', raw = ''] of d.matchAll(/([MlhvqzHV])([^MlhvqzHV]*)/g)) {
    const figures = (raw.match(/-?[\d.]+/g) ?? []).map(Number);
    if (letter === 'M') {
      [x, y] = [figures[0] ?? 0, figures[1] ?? 0];
      lines.push([[x, y]]);
      continue;
    }
    const line = lines.at(-1) ?? [];
    if (letter === 'h') x += figures[0] ?? 0;
    if (letter === 'v') y += figures[0] ?? 0;
    if (letter === 'h' || letter === 'v') line.push([x, y]);
    for (let i = 0; letter === 'l' && i < figures.length; i += 2) {
      [x, y] = [x + (figures[i] ?? 0), y + (figures[i + 1] ?? 0)];
      line.push([x, y]);
    }
    for (let i = 0; letter === 'q' && i < figures.length; i += 4) {
      const [a = 0, b = 0, u = 0, v = 0] = figures.slice(i, i + 4);
      for (let k = 1; k <= 8; k += 1) {
        const t = k / 8;
        line.push([x + 2 * t * (1 - t) * a + t * t * u, y + 2 * t * (1 - t) * b + t * t * v]);
      }
      [x, y] = [x + u, y + v];
    }
    if (letter === 'z' && line[0]) line.push(line[0]);
  }
  return lines;
}

/** Everything a drawing covers between the rows given, holes filled, on a grid. */
function covered(svg: string, fromRow: number, toRow: number, frame: { left: number; right: number }): Grid {
  const [left, top] = [frame.left * UNIT, fromRow * ROW * UNIT];
  const across = Math.ceil(((frame.right - frame.left) * UNIT) / GRID);
  const down = Math.ceil(((toRow - fromRow) * ROW * UNIT) / GRID);
  const full = new Uint8Array(across * down);
  const dot = (x: number, y: number, radius: number): void => {
    const [cx, cy, r] = [(x - left) / GRID, (y - top) / GRID, radius / GRID];
    for (let j = Math.max(0, Math.ceil(cy - r)); j <= Math.min(down - 1, cy + r); j += 1)
      for (let i = Math.max(0, Math.ceil(cx - r)); i <= Math.min(across - 1, cx + r); i += 1)
        if ((i - cx) ** 2 + (j - cy) ** 2 <= r * r) full[j * across + i] = 1;
  };
  for (const { tag, matrix } of expanded(svg)) {
    const edge = tag.at['class'] === 'pc-e';
    if (tag.name !== 'path' || (!edge && !tag.at['fill'])) continue;
    const place = ([x, y]: Spot): Spot => [
      matrix[0] * x + matrix[2] * y + matrix[4],
      matrix[1] * x + matrix[3] * y + matrix[5],
    ];
    for (const line of cornersOf(tag.at['d'] ?? '')) {
      const spots = line.map(place);
      if (edge)
        for (let i = 1; i < spots.length; i += 1) {
          const [a, b] = [spots[i - 1] ?? [0, 0], spots[i] ?? [0, 0]];
          const steps = Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / GRID) || 1;
          if (Math.max(a[1], b[1]) < top - UNIT || Math.min(a[1], b[1]) > top + (down + 5) * GRID) continue;
          for (let k = 0; k <= steps; k += 1)
            dot(a[0] + ((b[0] - a[0]) * k) / steps, a[1] + ((b[1] - a[1]) * k) / steps, UNIT / 2);
        }
      else {
        const xs = spots.map(([x]) => (x - left) / GRID);
        const ys = spots.map(([, y]) => (y - top) / GRID);
        for (let j = Math.max(0, Math.ceil(Math.min(...ys))); j <= Math.min(down - 1, Math.max(...ys)); j += 1)
          full.fill(1, j * across + Math.ceil(Math.min(...xs)), j * across + Math.floor(Math.max(...xs)) + 1);
      }
    }
  }
  // What lies between the left and the right outline of a line counts as covered.
  for (let j = 0; j < down; j += 1) {
    const line = full.subarray(j * across, (j + 1) * across);
    const [first, last] = [line.indexOf(1), line.lastIndexOf(1)];
    if (first >= 0) line.fill(1, first, last + 1);
  }
  return { across, down, full };
}

/** How far the outline of one grid lies outside the other at most, in units. */
function farthest(one: Grid, other: Grid): number {
  const { across, down } = one;
  let most = 0;
  for (let j = 0; j < down; j += 1)
    for (let i = 0; i < across; i += 1) {
      if (!one.full[j * across + i] || other.full[j * across + i]) continue;
      let near = Number.POSITIVE_INFINITY;
      for (let v = Math.max(0, j - 12); v <= Math.min(down - 1, j + 12); v += 1)
        for (let u = Math.max(0, i - 12); u <= Math.min(across - 1, i + 12); u += 1)
          if (other.full[v * across + u]) near = Math.min(near, Math.hypot(u - i, v - j));
      most = Math.max(most, near * GRID);
    }
  return most;
}

describe('the levels of detail', { timeout: 20_000 }, () => {
  it('go from cell to stitch to cord as a column grows', () => {
    expect([1, LEVEL_SIZES.stitch, 6, LEVEL_SIZES.cord, 30].map(levelFor)).toEqual([
      'cell',
      'stitch',
      'stitch',
      'cord',
      'cord',
    ]);
  });

  const wide = planned({ width: 14, height: 12, capacity: 6 });
  for (const [fine, rough, pixels] of [
    ['cord', 'stitch', LEVEL_SIZES.cord],
    ['stitch', 'cell', LEVEL_SIZES.stitch],
  ] as const)
    it(`have outlines half a pixel apart at most where ${fine} gives way to ${rough}, in columns of ${pixels} pixels`, () => {
      for (const plan of [evening, wide])
        for (const view of ['front', 'back'] as const) {
          const model = modelOf(plan);
          const outline = (level: Level): Grid =>
            covered(drawPiece(model, { id: 'p', level, view }), 0, plan.rows.length, model.frame);
          const [one, other] = [outline(fine), outline(rough)];
          const pixel = (COLUMN * UNIT) / pixels;
          expect(Math.max(farthest(one, other), farthest(other, one)) / pixel, view).toBeLessThanOrEqual(0.5);
        }
    });
});
