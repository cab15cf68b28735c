import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import {
  describePiece,
  drawPiece,
  type PieceModel,
  partPath,
  pieceModel,
  stringPath,
  turnRound,
} from '../../../src/figures/piece/index.ts';
import { COLUMN, ROW } from '../../../src/figures/piece/packed.ts';
import { UNIT } from '../../../src/figures/piece/pen.ts';
import { fitPiece, mirrorPiece, type Plan } from '../../../src/solver/index.ts';
import { pieceFigureWords } from '../../../src/words/figures/piece.ts';
import { drawing, replay, seed } from '../../seed.ts';
import { drawPlan, evening, lantern, planned, third } from '../drawn.ts';
import { chartPlan, expanded, modelOf } from './pieces.ts';

const slow = 20_000;
const lanternChart = chartPlan('lantern', 16);
const carried = planned({ width: 21, height: 26, capacity: 15, oddMethod: 'carried-end' });
const knotsOf = (plan: Plan): number => plan.rows.reduce((sum, { knots }) => sum + knots, 0);

/** The greatest gap between two parts of a string that follow each other, over all strings. */
function greatestGap(model: PieceModel): number {
  let greatest = 0;
  for (const string of model.strings)
    for (const [i, part] of string.parts.entries()) {
      const before = string.parts[i - 1];
      if (!before) continue;
      const [a, b] = [partPath(model, before).at(-1), partPath(model, part)[0]];
      if (!a || !b) throw new Error(`${string.id} has an empty part`);
      greatest = Math.max(greatest, Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]));
    }
  return greatest;
}

describe('a whole piece as cord', { timeout: slow }, () => {
  it("ties as many knots as the plan's rows say: 164 for the evening's piece", () => {
    expect(modelOf(evening).knots).toBe(164);
    for (const plan of [evening, lantern, third, carried]) {
      const model = modelOf(plan);
      expect(model.places.filter(({ knot }) => knot).length).toBe(knotsOf(plan));
      expect(model.knots).toBe(knotsOf(plan));
    }
  });

  it('has each knot in its row and column, of the kind and on the strings that the row says', () => {
    for (const plan of [lanternChart, third, evening]) {
      const { places } = modelOf(plan);
      let at = 0;
      for (const row of plan.rows)
        for (const run of row.runs)
          for (let i = 0; i < run.count; i += 1, at += 1) {
            const place = places[at];
            const column = run.columns[0] + (row.direction === 'rightward' ? i : -i);
            expect(place?.knot).toEqual({ row: row.row, column, strands: run.strands });
            expect(place?.shape.replace('-stop', '')).toBe(`${run.knot} ${run.strands}`);
            expect(place?.y).toBeCloseTo((row.row - 1) * ROW, 9);
            if (run.strands === 1) expect(place?.x).toBeCloseTo((column - 0.5) * COLUMN, 9);
            expect(place?.colour).toBe(run.colour ?? null);
          }
    }
  });

  it('runs every base string unbroken from the ring to its trimmed end, one for each column', () => {
    for (const plan of [lanternChart, evening, third, carried]) {
      const model = modelOf(plan);
      const bases = model.strings.filter(({ role }) => role === 'base');
      expect(bases.length).toBe(plan.fit.width + (plan.fit.carrySide ? 1 : 0));
      for (const base of bases) {
        const path = stringPath(model, base);
        expect(path[0]?.[1], base.id).toBeLessThan(0);
        expect(path.at(-1)?.[1], base.id).toBeGreaterThan(plan.rows.length * ROW + 8);
      }
      expect(greatestGap(model)).toBeLessThan(1e-6);
    }
  });

  it('runs the string of every colour unbroken from its start to its end, through each of its knots once', () => {
    const model = modelOf(lanternChart);
    const leads = model.strings.filter(({ role }) => role === 'leading');
    const through = leads.flatMap(({ parts }) => parts.flatMap((part) => (part.is === 'shape' ? [part.place] : [])));
    expect([...through].sort((a, b) => a - b)).toEqual(Array.from({ length: model.knots }, (_, i) => i));
    for (const lead of leads)
      for (const part of lead.parts)
        if (part.is === 'shape') expect(model.places[part.place]?.colour).toBe(lead.colour);
    const floats = leads.flatMap(({ parts }) =>
      parts.flatMap((part) => (part.is === 'line' && part.what === 'float' ? [part.path] : [])),
    );
    expect(floats.length).toBeGreaterThan(20);
    for (const path of floats) expect(Math.min(...path.map(([, , z]) => z))).toBeLessThan(-1.5);
  });

  it(`breaks no string, on 6 pieces at random, whole or begun (${replay})`, () => {
    const draw = drawing(seed);
    for (let i = 0; i < 6; i += 1) {
      const plan = drawPlan(draw);
      const upToRow = draw(0, plan.rows.length);
      const upToKnot = draw(0, plan.rows[upToRow - 1]?.knots ?? 0);
      for (const model of [modelOf(plan), modelOf(plan, { upToRow, upToKnot })]) {
        const what = JSON.stringify([plan.fit, model.upToRow, model.upToKnot]);
        expect(greatestGap(model), what).toBeLessThan(1e-6);
        for (const string of model.strings)
          expect(stringPath(model, string).flat().every(Number.isFinite), what).toBe(true);
      }
    }
  });

  it('passes every base string through each knot that is tied round it', () => {
    for (const plan of [lantern, third, carried]) {
      const model = modelOf(plan);
      const bases = model.strings.filter(({ role }) => role === 'base').map((base) => stringPath(model, base));
      for (const place of model.places) {
        if (!place.knot) continue;
        for (const own of model.shapes[place.shape]?.bases ?? []) {
          const [x, y] = [place.x + (own[0]?.[0] ?? 0), place.y + ROW / 2];
          const near = bases.some((path) =>
            path.some((b, i) => {
              const a = path[i - 1];
              return (
                a && a[1] <= y && b[1] >= y && Math.abs(a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]) - x) < 0.02
              );
            }),
          );
          expect(near, `${place.shape} in row ${place.knot.row}`).toBe(true);
        }
      }
    }
  });

  it('begins with strings that only hang, and shows only the knots that are tied', () => {
    expect(modelOf(evening, { upToRow: 0 }).knots).toBe(0);
    const begun = modelOf(evening, { upToRow: 2, upToKnot: 3 });
    expect(begun.knots).toBe((evening.rows[0]?.knots ?? 0) + 3);
    expect(begun.ending).toBe('hanging');
    expect(begun.places.filter(({ knot }) => knot).length).toBe(begun.knots);
    expect(modelOf(evening, { upToRow: 99, upToKnot: 99 }).knots).toBe(164);
    expect(modelOf(evening, { ending: 'hanging' }).ending).toBe('hanging');
  });

  it('gathers the singles as the finish says and ties two square knots', () => {
    const { places } = modelOf(lantern);
    const count = (name: string): number => places.filter(({ shape }) => shape.startsWith(name)).length;
    expect(count('gathering-left')).toBe(lantern.finish.perSide);
    expect(count('gathering-right')).toBe(lantern.finish.perSide);
    expect(count('square-knot')).toBe(2);
    expect(count('larks-head')).toBe(lantern.fit.folds);
    expect(modelOf(third).places.filter(({ shape }) => shape.startsWith('lone-string')).length).toBe(1);
  });

  it('of a mirrored plan is mirrored, knot by knot and string by string', () => {
    for (const plan of [lanternChart, third, carried]) {
      const { fit, bundles, rows, chart } = mirrorPiece({
        fit: plan.fit,
        bundles: plan.outline,
        startSide: plan.startSide,
        rows: plan.rows,
        ...(plan.chart ? { chart: plan.chart } : {}),
      });
      const model = modelOf(plan);
      const other = pieceModel({ fit, bundles, rows: rows ?? [], chart });
      const across = plan.fit.width * COLUMN;
      expect(other.places.length).toBe(model.places.length);
      for (const [i, place] of model.places.entries()) {
        if (!place.knot) continue;
        const mirror = other.places[i];
        expect(mirror?.x).toBeCloseTo(across - place.x, 6);
        expect(mirror?.shape.startsWith('forward')).toBe(!place.shape.startsWith('forward'));
      }
      const leads = (one: PieceModel) => one.strings.filter(({ role }) => role === 'leading');
      for (const [i, lead] of leads(model).entries()) {
        const twin = leads(other)[i];
        if (!twin) throw new Error('a string has no mirror image');
        const ends = (one: PieceModel, string: typeof lead) =>
          string.parts.filter((part) => part.is === 'line' && part.what !== 'end').map((part) => partPath(one, part));
        expect(
          ends(other, twin)
            .flat()
            .map(([x]) => x.toFixed(4).replace(/^-(0\.0+)$/, '$1')),
        ).toEqual(
          ends(model, lead)
            .flat()
            .map(([x]) => (across - x + 0).toFixed(4).replace(/^-(0\.0+)$/, '$1')),
        );
      }
    }
  });

  it('turned round twice is the same again', () => {
    const model = modelOf(evening);
    const twice = turnRound(turnRound(model));
    expect(twice.view).toBe('front');
    for (const [i, string] of model.strings.entries()) {
      const again = twice.strings[i];
      if (!again) throw new Error('a string is lost');
      const path = stringPath(twice, again);
      const off = stringPath(model, string).map((point, j) =>
        Math.max(...([0, 1, 2] as const).map((axis) => Math.abs(point[axis] - (path[j]?.[axis] ?? Number.NaN)))),
      );
      expect(Math.max(...off)).toBeLessThan(1e-9);
    }
  });
});

describe('the drawing of a whole piece', { timeout: slow }, () => {
  it('uses a shape once for each knot, in the place where the model has it, in its colour', () => {
    for (const view of ['front', 'back'] as const) {
      const model = view === 'front' ? modelOf(lanternChart) : turnRound(modelOf(lanternChart));
      const uses = expanded(drawPiece(model, { id: 'p', view })).filter(
        ({ tag }) => tag.name === 'use' && /^#p-[0-9a-z]$/.test(tag.at['href'] ?? ''),
      );
      const drawn = uses
        .map(({ matrix, colour }) => `${matrix[4]} ${matrix[5]} ${colour}`)
        .filter((one) => !one.endsWith(' '));
      const wanted = model.places
        .filter(({ knot }) => knot)
        .map(
          ({ x, y, colour }) =>
            `${Math.round(x * UNIT)} ${Math.round(y * UNIT)} ${model.chart?.palette[colour ?? 0]?.colour ?? ''}`,
        );
      expect(drawn.sort()).toEqual(wanted.sort());
    }
  });

  it('of a 26 × 32 piece at full cord detail takes at most 100 kB, and 12 kB packed', () => {
    for (const view of ['front', 'back'] as const) {
      const svg = drawPiece(modelOf(lanternChart), { id: 'lantern', view });
      expect(svg.length, view).toBeLessThanOrEqual(100_000);
      expect(gzipSync(svg).length, view).toBeLessThanOrEqual(12_000);
    }
  });

  it('holds no figure that is none, no id twice, and refers only to what it holds', () => {
    for (const plan of [lanternChart, third, planned({ width: 2, height: 1, capacity: 2 })])
      for (const level of ['cord', 'stitch', 'cell'] as const)
        for (const view of ['front', 'back'] as const) {
          const svg = drawPiece(modelOf(plan), { id: 'p', level, view });
          expect(svg).not.toMatch(/NaN|undefined|Infinity/);
          const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
          expect(new Set(ids).size).toBe(ids.length);
          expect(() => expanded(svg)).not.toThrow();
        }
  });

  it('of the smallest piece, 2 × 1, has both knots; of 400 × 1000 it falls back to cells and stays small', () => {
    expect(modelOf(planned({ width: 2, height: 1, capacity: 2 })).knots).toBe(2);
    const fit = fitPiece({ width: 400, capacity: 400 });
    if (!fit.ok) throw new Error(fit.problem.code);
    const draw = drawing(seed);
    const chart = {
      width: 400,
      height: 1000,
      palette: [
        { name: 'chalk', colour: '#f4efe2' },
        { name: 'tar', colour: '#22252b' },
      ],
      cells: Uint8Array.from({ length: 400_000 }, () => (draw(0, 7) === 0 ? 1 : 0)),
    };
    const model = modelOf(planned({ width: 400, height: 1000, capacity: 400, chart }));
    expect(model.coarse).toBe(true);
    const svg = drawPiece(model, { id: 'p' });
    expect(svg).not.toMatch(/NaN|undefined/);
    expect(svg.length).toBeLessThan(600_000);
    expect(svg).toContain('fill="#22252b"');
  });

  it('has a name and a text for those who hear it, or is hidden from them', () => {
    const model = modelOf(evening);
    expect(drawPiece(model, { id: 'p', title: 'A & B', description: 'Text' })).toContain(
      'aria-labelledby="p-title p-text"><title id="p-title">A &#38; B</title><desc id="p-text">Text</desc>',
    );
    expect(drawPiece(model, { id: 'p' })).toContain('aria-hidden="true"');
  });
});

describe('the piece in words', () => {
  it('says its size, knots and colours, and how it is mounted and finished', () => {
    const say = (model: PieceModel): string[] =>
      describePiece(model).map(({ key, values }) => pieceFigureWords[key](values));
    expect(say(modelOf(lanternChart))).toEqual([
      'Lantern as it hangs: 26 columns wide and 32 rows high.',
      'On the bar: 7 lark’s heads. Through the ring: 3 side folds on the left and 3 on the right.',
      'Row 1 has 16 knots; the full width of 26 is reached in row 6.',
      'From row 28 on it narrows, to 16 knots in the last row.',
      `${knotsOf(lanternChart)} knots are tied.`,
      'Its colours: chalk, tar, rust, brass and straw.',
      'The strings are gathered, tied off and trimmed.',
    ]);
    expect(say(modelOf(evening, { upToRow: 3, upToKnot: 2 }))[1]).toBe(
      'It is tied to row 3 of 14, with 2 of 12 knots in that row.',
    );
    expect(
      say(turnRound(modelOf(lanternChart))).some((text) => /^At the back lie \d+ floats and \d+ tails\.$/.test(text)),
    ).toBe(true);
  });

  it('has figures for every sentence, on any piece', () => {
    const draw = drawing(seed);
    for (let i = 0; i < 20; i += 1)
      for (const model of [modelOf(drawPlan(draw), { upToRow: draw(0, 9) })])
        for (const { key, values } of [...describePiece(model), ...describePiece(turnRound(model))])
          expect(pieceFigureWords[key](values)).not.toMatch(/\?|undefined|NaN/);
  });
});
