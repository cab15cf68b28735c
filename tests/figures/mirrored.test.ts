import { describe, expect, test } from 'vitest';
import { bar } from '../../src/figures/bar.ts';
import type { Drawing } from '../../src/figures/drawing.ts';
import { type GatheringCords, gatheringCords } from '../../src/figures/gathering.ts';
import { outline } from '../../src/figures/outline.ts';
import { COLUMN, stringPath } from '../../src/figures/piece/index.ts';
import { rowCords } from '../../src/figures/row.ts';
import { finishSteps, mirrorPiece, opposite, type Plan } from '../../src/solver/index.ts';
import { drawing, replay, seed } from '../seed.ts';
import { drawPlan, shapesOf } from './drawn.ts';

/** The same piece seen in a mirror: its plan, made from the mirrored piece. */
function mirrored(plan: Plan): Plan {
  const { fit, bundles, startSide, rows } = mirrorPiece({
    fit: plan.fit,
    bundles: plan.outline,
    startSide: plan.startSide,
    rows: plan.rows,
  });
  const finish = finishSteps({ fit, bundles, startSide });
  if (!finish.ok) throw new Error(finish.problem.code);
  return { ...plan, fit, rows: rows ?? [], startSide, finish, outline: { ...plan.outline, ...bundles } };
}

/** Where everything of one kind is: the middles of round and square things and of labels, and where cords begin and end. */
function places(drawn: Drawing<string>, flip: boolean): string[] {
  const at = (x: number): string => (flip ? drawn.width - x : x).toFixed(0);
  return shapesOf(drawn)
    .flatMap((shape) => {
      if (shape.tag === 'rect') return [`rect ${at(shape.x + shape.width / 2)} ${shape.y.toFixed(0)}`];
      if (shape.tag === 'circle') return [`circle ${at(shape.cx)}`];
      if (shape.tag === 'use') return [`${shape.href} ${at(shape.x ?? 0)}`];
      // Numbers count from the left on either piece.
      if (shape.tag === 'text' && typeof shape.say !== 'string') return [`text ${at(shape.x)} ${shape.y.toFixed(0)}`];
      return [];
    })
    .sort();
}

type Corner = readonly [x: number, y: number];

/**
 * The corners of the strings that are gathered, in d from the left. A square knot begins on the left whatever the piece,
 * so the two that tie it are no mirror images.
 */
const corners = ({ model, finish }: GatheringCords, flip: boolean): Corner[] =>
  model.strings
    .filter(({ id, role }) => role === 'base' && !finish.tying.some((column) => id === `base-${column}`))
    .flatMap((string) => stringPath(model, string))
    .map(([x, y]) => [flip ? model.width * COLUMN - x : x, y]);

/** A path without what lies on a straight line from one point to the next but one. */
const bends = (path: readonly Corner[]): Corner[] =>
  path.filter((point, i) => {
    const [before, after] = [path[i - 1], path[i + 1]];
    if (!before || !after) return true;
    const [x, y] = [after[0] - before[0], after[1] - before[1]];
    return Math.abs((point[0] - before[0]) * y - (point[1] - before[1]) * x) > 1e-9;
  });

/**
 * The corners of every cord of a row and the one above it, bases and leading string, in d from the left. What is above
 * row 1 hangs on the bar, which is looked at by itself.
 */
const rowCorners = (plan: Plan, row: number, flip: boolean): Corner[] => {
  const { model } = rowCords(plan, { row }).cords;
  return model.strings
    .flatMap((string) => bends(stringPath(model, string).map(([x, y]) => [x, y])))
    .filter(([, y]) => y >= 0)
    .map(([x, y]) => [flip ? model.width * COLUMN - x : x, y]);
};

/** Where two parts of a string meet, their corner may be there once or twice. */
const expectSameCorners = (ours: readonly Corner[], theirs: readonly Corner[], what: string): void => {
  expectCornersAmong(ours, theirs, what);
  expectCornersAmong(theirs, ours, what);
};

const expectCornersAmong = (ours: readonly Corner[], theirs: readonly Corner[], what: string): void => {
  const key = ([x, y]: Corner): string => `${Math.round(x)} ${Math.round(y)}`;
  const byPlace = new Map<string, Corner[]>();
  for (const corner of theirs) byPlace.set(key(corner), [...(byPlace.get(key(corner)) ?? []), corner]);
  const alone = ours.filter(([x, y]) =>
    [-0.5, 0, 0.5].every((right) =>
      [-0.5, 0, 0.5].every((down) =>
        (byPlace.get(key([x + right, y + down])) ?? []).every(([u, v]) => Math.abs(u - x) + Math.abs(v - y) > 1e-6),
      ),
    ),
  );
  expect(alone, what).toEqual([]);
};

const near = (ours: string[], theirs: string[], what: string): void => {
  // Figures stand to a tenth of a unit; a half may fall to either side.
  const round = (all: string[]) => all.map((one) => one.replace(/-?\d+/g, (digits) => String(Number(digits))));
  expect(round(ours).length, what).toBe(round(theirs).length);
  ours.forEach((one, index) => {
    const [mine, other] = [one.match(/-?\d+/g) ?? [], theirs[index]?.match(/-?\d+/g) ?? []];
    for (const [part, figure] of mine.entries())
      expect(Math.abs(Number(figure) - Number(other[part])), `${what}: ${one}, ${theirs[index]}`).toBeLessThanOrEqual(
        1,
      );
  });
};

const byFigures = (one: string, other: string): number => {
  const [a, b] = [one, other].map((text) => (text.match(/-?\d+/g) ?? []).map(Number));
  return (
    one.replace(/-?\d+/g, '').localeCompare(other.replace(/-?\d+/g, '')) ||
    (a?.at(-1) ?? 0) - (b?.at(-1) ?? 0) ||
    (a?.[0] ?? 0) - (b?.[0] ?? 0)
  );
};

describe('a mirrored piece', () => {
  test(`is drawn mirrored, part by part, on 150 pieces at random (${replay})`, () => {
    const next = drawing(seed);
    for (let piece = 0; piece < 150; piece += 1) {
      const plan = drawPlan(next);
      const other = mirrored(plan);
      expect(other.startSide).toBe(opposite(plan.startSide));
      const number = next(1, plan.rows.length);
      const what = JSON.stringify([plan.fit, number]);
      for (const stage of ['capacity', 'shared', 'fitted'] as const)
        near(
          places(bar.draw(plan, { stage }), true).sort(byFigures),
          places(bar.draw(other, { stage }), false).sort(byFigures),
          what,
        );
      const [ours, theirs] = [rowCorners(plan, number, true), rowCorners(other, number, false)];
      expect(ours.length, what).toBeGreaterThan(plan.fit.width);
      expectSameCorners(ours, theirs, what);
      // Below four strings the last one ties, whatever the piece.
      if (plan.fit.width >= 4)
        expectSameCorners(corners(gatheringCords(plan), true), corners(gatheringCords(other), false), what);
      near(
        places(outline.draw({ ...plan, chart: null }, { row: number }), true).filter((one) => one.startsWith('rect')),
        places(outline.draw({ ...other, chart: null }, { row: number }), false).filter((one) => one.startsWith('rect')),
        what,
      );
    }
  });
});
