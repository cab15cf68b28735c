import { describe, expect, test } from 'vitest';
import { altered } from '../../src/figures/altered.ts';
import { knotAt } from '../../src/figures/cord-rows.ts';
import { fault } from '../../src/figures/fault.ts';
import { gathering, gatheringCords } from '../../src/figures/gathering.ts';
import { levelEnds, levelEndsCords } from '../../src/figures/level-ends.ts';
import { COLUMN, type PieceModel, pieceModel, ROW, stringPath } from '../../src/figures/piece/index.ts';
import { steadyRing, steadyRingCords } from '../../src/figures/steady-ring.ts';
import { crossingsOf, type Path, passes } from '../../src/figures/strand/index.ts';
import { swatch, swatchCords } from '../../src/figures/swatch.ts';
import { tightFloat, tightFloatCords } from '../../src/figures/tight-float.ts';
import { trialRow, trialRowCords } from '../../src/figures/trial-row.ts';
import type { Plan } from '../../src/solver/index.ts';
import { drawing, replay, seed } from '../seed.ts';
import { drawPlan, evening, lantern, planned, shapesOf, small, third } from './drawn.ts';
import { greatestGap } from './piece/pieces.ts';

const plans: readonly Plan[] = [
  lantern,
  third,
  evening,
  small,
  planned({ width: 5, height: 4, capacity: 5, startSide: 'right' }),
];
const knotsOf = (model: PieceModel) => model.places.filter(({ knot }) => knot);
const pathOf = (model: PieceModel, id: string): Path => {
  const string = model.strings.find((one) => one.id === id);
  if (!string) throw new Error(`there is no string ${id}`);
  return stringPath(model, string);
};
/** The heights at which knots stand, each cord's own shape taken in. */
const heightOf = (model: PieceModel, { shape, y }: PieceModel['places'][number]): number => {
  const ys = (model.shapes[shape]?.leads[0] ?? []).map((point) => point[1] + y);
  return (Math.min(...ys) + Math.max(...ys)) / 2;
};
const range = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

describe('cords that are led otherwise', () => {
  test('are as they were where nothing is changed', () => {
    for (const { fit, outline, rows } of plans) {
      const model = pieceModel({ fit, bundles: outline, rows });
      const same = altered(model, { line: (point) => point, place: ({ x, y }) => ({ x, y }), knot: () => null });
      expect(same.places).toEqual(model.places);
      for (const { id, parts } of model.strings) {
        const own = same.strings.find((string) => string.id === id);
        expect(own?.parts.map(({ is }) => is)).toEqual(parts.map(({ is }) => is));
        const [before, after] = [pathOf(model, id), pathOf(same, id)];
        expect([after[0], after.at(-1)]).toEqual([before[0], before.at(-1)]);
      }
      expect(greatestGap(same)).toBeLessThan(1e-6);
    }
  });

  test('stay whole wherever a fault leads them', () => {
    for (const plan of plans)
      for (const model of [
        trialRowCords(plan, { crowded: true }).model,
        steadyRingCords(plan, { turned: true }).model,
        tightFloatCords(plan, { tight: true }),
        tightFloatCords(plan),
        levelEndsCords(plan, { slipped: true }).model,
      ])
        expect(greatestGap(model)).toBeLessThan(0.03);
  });
});

describe('a row along the bar', () => {
  test('has as many knots as it says, flat side by side, and no more than the bar has room for', () => {
    for (const plan of plans) {
      const { room, tied, model } = trialRowCords(plan);
      expect([room, model.knots, model.width]).toEqual([tied, room, room]);
      expect(room).toBe(Math.min(8, plan.fit.capacity - (plan.fit.capacity % 2)));
      const knots = knotsOf(model);
      expect(range(knots.map((knot) => heightOf(model, knot)))).toBeLessThan(0.2);
      for (const { x, knot } of knots) expect(x).toBeCloseTo(((knot?.column ?? 0) - 0.5) * COLUMN, 6);
      expect(trialRow.describe(plan).map(({ key, values }) => [key, values['columns']])).toEqual([
        ['trial-row', room],
        ['trial-row-flat', room],
      ]);
    }
  });

  test('stacks up in two layers where more are tied in the same room', () => {
    for (const plan of plans) {
      const flat = trialRowCords(plan).model;
      const { room, tied, model } = trialRowCords(plan, { crowded: true });
      expect(tied).toBeGreaterThan(room);
      expect(model.knots).toBe(tied);
      expect(model.ring).toEqual(flat.ring);
      const knots = knotsOf(model).sort((a, b) => a.x - b.x);
      expect(Math.min(...knots.map(({ x }) => x))).toBeGreaterThan(0);
      expect(Math.max(...knots.map(({ x }) => x))).toBeLessThan(room * COLUMN);
      for (const [i, knot] of knots.entries()) {
        const next = knots[i + 1];
        if (!next) continue;
        expect(next.x - knot.x).toBeLessThan(COLUMN * 0.75);
        expect(Math.abs(heightOf(model, next) - heightOf(model, knot))).toBeGreaterThan(ROW * 0.6);
      }
      const said = trialRow.describe(plan, { crowded: true });
      expect(said.map(({ values }) => values['columns'])).toEqual([tied, room]);
    }
  });
});

describe('the ends of folds', () => {
  const endsOf = (model: PieceModel): number[] => model.strings.map(({ id }) => pathOf(model, id).at(-1)?.[1] ?? 0);

  test('are level, or one end has lost what the other end of its fold has got', () => {
    for (const plan of plans) {
      const level = endsOf(levelEndsCords(plan).model);
      expect(range(level)).toBe(0);
      const { model, short } = levelEndsCords(plan, { slipped: true });
      const ends = endsOf(model);
      const column = short ?? 0;
      expect(column % 2).toBe(1);
      const changed = ends.map((end, i) => end - (level[i] ?? 0));
      expect(changed[column - 1]).toBeLessThan(-3);
      expect(changed[column]).toBeCloseTo(-(changed[column - 1] ?? 0), 6);
      expect(changed.filter((by) => by !== 0)).toHaveLength(2);
      expect(levelEnds.describe(plan, { slipped: true })[1]?.values).toEqual({ column, other: column + 1 });
      expect(levelEnds.describe(plan)).toHaveLength(1);
    }
  });
});

describe('the ring', () => {
  const offOf = (model: PieceModel): number[] =>
    model.rows.map(({ row }) => {
      const xs = knotsOf(model).flatMap(({ knot, x }) => (knot?.row === row ? [x] : []));
      return (Math.min(...xs) + Math.max(...xs)) / 2 - (model.width * COLUMN) / 2;
    });

  test('is held by scrap strings that go over its wire, through it, and back under it, above straight rows', () => {
    for (const plan of plans) {
      const { model, scraps } = steadyRingCords(plan);
      expect(range(model.ring.bar.map(([, y]) => y))).toBe(0);
      for (const off of offOf(model)) expect(off).toBeCloseTo(0, 6);
      expect(scraps).toHaveLength(3);
      for (const path of scraps) {
        const met = crossingsOf([
          { id: 'scrap', path },
          { id: 'wire', path: model.ring.arch },
        ]).filter(({ strand }) => strand === 'scrap');
        expect(met.map(({ meets, over }) => [meets, over])).toEqual([
          ['wire', true],
          ['wire', false],
        ]);
      }
      expect(shapesOf(steadyRing.draw(plan)).filter(({ is }) => is === 'pin')).toHaveLength(3);
    }
  });

  test('slants where nothing holds it, and each row has gone to the other side than the one before', () => {
    for (const plan of plans) {
      const { model, scraps } = steadyRingCords(plan, { turned: true });
      expect(scraps).toEqual([]);
      const [from, to] = [model.ring.bar[0], model.ring.bar.at(-1)];
      expect((to?.[1] ?? 0) - (from?.[1] ?? 0)).toBeGreaterThan(0.1 * ((to?.[0] ?? 0) - (from?.[0] ?? 0)));
      const off = offOf(model);
      for (const [i, own] of off.entries()) {
        expect(Math.abs(own)).toBeGreaterThan(0.8);
        if (i > 0) expect(Math.sign(own)).toBe(-Math.sign(off[i - 1] ?? 0));
      }
      // Heads stay on their bar.
      for (const { shape, x, y } of model.places)
        if (shape === 'larks-head') {
          const part = (x - (from?.[0] ?? 0)) / ((to?.[0] ?? 0) - (from?.[0] ?? 0));
          expect(y).toBeCloseTo((from?.[1] ?? 0) + ((to?.[1] ?? 0) - (from?.[1] ?? 0)) * part, 0);
        }
    }
  });
});

describe('a float from behind', () => {
  const widthOf = (model: PieceModel, row: number): number =>
    range(knotsOf(model).flatMap(({ knot, x }) => (knot?.row === row ? [x] : [])));

  test('runs behind as many columns as it says, and draws its row together where it was pulled tight', () => {
    for (const tight of [false, true]) {
      const model = tightFloatCords(evening, { tight });
      const { row = 0, columns } = tightFloat.describe(evening, { tight })[0]?.values ?? {};
      const floats = model.strings.flatMap(({ colour, parts }) =>
        colour === 1 ? parts.flatMap((part) => (part.is === 'line' && part.what === 'float' ? [part.path] : [])) : [],
      );
      expect(floats).toHaveLength(1);
      const met = crossingsOf([
        { id: 'float', path: floats[0] ?? [] },
        ...model.strings.flatMap(({ id, role }) => (role === 'base' ? [{ id, path: pathOf(model, id) }] : [])),
      ]).filter(({ strand }) => strand === 'float');
      // Seen from behind it lies before all of them; the base of either knot at its ends may be one of them.
      expect(met.every(({ over }) => over)).toBe(true);
      expect(new Set(met.map(({ meets }) => meets)).size).toBeGreaterThanOrEqual(Number(columns));
      const own = widthOf(model, Number(row));
      const other = widthOf(model, Number(row) + 2);
      if (tight) expect(own).toBeLessThan(other * 0.75);
      else expect(own).toBeCloseTo(other, 6);
    }
  });

  test('keeps the strings of every row in their knots', () => {
    const model = tightFloatCords(evening, { tight: true });
    for (const { knot, x, y } of knotsOf(model)) {
      const path = pathOf(model, `base-${knot?.column}`);
      const near = path.filter((point) => point[1] > y + ROW * 0.2 && point[1] < y + ROW * 0.8);
      for (const point of near) expect(point[0]).toBeCloseTo(x, 6);
    }
  });
});

describe('a swatch', () => {
  test('has the columns and rows that it is measured over, and no bar', () => {
    for (const plan of plans) {
      const { columns, rows } = swatch.describe(plan)[0]?.values ?? {};
      const model = swatchCords(plan);
      expect(model.knots).toBe(Number(columns) * Number(rows));
      expect(model.places.filter(({ knot }) => !knot)).toEqual([]);
      expect(range(knotsOf(model).map(({ x }) => x))).toBeCloseTo((Number(columns) - 1) * COLUMN, 6);
      expect(range(knotsOf(model).map(({ y }) => y))).toBeCloseTo((Number(rows) - 1) * ROW, 6);
    }
  });
});

describe('rows with a fault in their cords', () => {
  const practice = planned({ width: 12, height: 16, capacity: 4 });
  const cordsOf = (options: Parameters<typeof fault.draw>[1]): PieceModel => {
    const shape = shapesOf(fault.draw(practice, options)).find(({ tag }) => tag === 'cords');
    if (shape?.tag !== 'cords') throw new Error('there are no cords');
    return shape.model;
  };

  test('a loose edge has the same knot, whose loops stand out', () => {
    const [loose, drawn] = [cordsOf({ fault: 'edge-loose' }), cordsOf({ fault: 'edge-loose', mended: true })];
    const row = practice.rows[2];
    if (!row) throw new Error('there is no third row');
    const at = loose.places.findIndex(({ knot }) => knot?.row === 3 && knot.column === row.lastColumn);
    const shapes = [loose, drawn].map((model) => model.shapes[model.places[at]?.shape ?? '']);
    const [out = 0, close = 0] = shapes.map((shape) => Math.max(...(shape?.leads[0] ?? []).map(([x]) => x)));
    expect(out - close).toBeGreaterThan(1.5);
    // Its passes over and under are those of the knot, only wider.
    const [worked, right] = shapes.map((shape) => {
      const strands = [
        { id: 'leading', role: 'leading', path: shape?.leads[0] ?? [] },
        ...(drawn.shapes[drawn.places[at]?.shape ?? '']?.bases ?? []).map((path, i) => ({
          id: `base-${i + 1}`,
          role: 'base',
          path: path.map(([x, y, z]) => [x, y < ROW / 2 ? y - 4 : y + 4, z] as const),
        })),
      ];
      return passes({ strands, crossings: crossingsOf(strands) }, 'leading');
    });
    expect(worked).toBe(right);
    expect(right).toMatch(/^o1 u1 s/);
    expect(loose.places.filter((place, i) => place.shape !== drawn.places[i]?.shape)).toHaveLength(1);
    expect(loose.places[at]?.x).toBeCloseTo(knotAt(practice.fit, row, row.lastColumn), 6);
  });

  test('a leading string that ran out ends in the middle of its row, too short to go on', () => {
    const [short, whole] = [cordsOf({ fault: 'ran-out' }), cordsOf({ fault: 'ran-out', mended: true })];
    const row = practice.rows[2]?.knots ?? 0;
    const inRow = (model: PieceModel): number => knotsOf(model).filter(({ knot }) => knot?.row === 3).length;
    expect([inRow(short), inRow(whole)]).toEqual([row >> 1, row]);
    const ends = (model: PieceModel): number[] =>
      model.strings.flatMap(({ role, parts }) =>
        role === 'leading'
          ? parts.flatMap((part) =>
              part.is === 'line' && part.what === 'end' ? [range(part.path.map(([, y]) => y))] : [],
            )
          : [],
      );
    expect(ends(short)).toHaveLength(1);
    expect(ends(short)[0]).toBeLessThan(2.5);
    expect(ends(whole)[0]).toBeGreaterThan(5);
    expect(fault.describe(practice, { fault: 'ran-out' }).at(-1)?.values).toMatchObject({ row: 3, knots: row >> 1 });
  });
});

describe('an unequal gathering', () => {
  test(`takes in more on the left than on the right, and every string once, on 60 pieces at random (${replay})`, () => {
    const next = drawing(seed);
    for (let piece = 0; piece < 60; piece += 1) {
      const plan = drawPlan(next);
      const { fewer, perSide, lopsided, model } = gatheringCords(plan, { unequal: true });
      if (plan.finish.perSide === 0 || plan.fit.width < 4) {
        expect(lopsided).toBe(0);
        continue;
      }
      const what = JSON.stringify(plan.finish);
      const tied = (side: string): number =>
        model.places.filter(({ shape }) => shape.startsWith(`gathering-${side}`)).length;
      const torn = fewer ? 2 : 0;
      expect([tied('left'), tied('right')], what).toEqual([perSide + lopsided - torn, perSide - lopsided - torn]);
      expect(lopsided, what).toBeGreaterThan(0);
      expect(greatestGap(model), what).toBeLessThan(1e-6);
      const said = gathering.describe(plan, { unequal: true });
      const unequal = said.find(({ key }) => key === 'gathering-unequal')?.values;
      expect(Number(unequal?.['left']) + Number(unequal?.['right']), what).toBe(2 * plan.finish.perSide);
      const gathered = said.filter(({ key }) => key === 'gathering-side').map(({ values }) => Number(values['count']));
      expect(
        gathered.reduce((sum, count) => sum + count, 0),
        what,
      ).toBe(2 * plan.finish.perSide);
    }
  });
});

test('the same is drawn every time', () => {
  for (const [figure, options] of [
    [trialRow, { crowded: true }],
    [levelEnds, { slipped: true }],
    [steadyRing, { turned: true }],
    [tightFloat, { tight: true }],
    [swatch, {}],
  ] as const) {
    const drawn = () =>
      shapesOf(figure.draw(lantern, options)).map((shape) => (shape.tag === 'cords' ? shape.paint('x') : shape));
    expect(drawn()).toEqual(drawn());
  }
});
