import { expect, test } from 'vitest';
import { type Drawing, type FigureName, figures } from '../../src/figures/index.ts';
import {
  drawPiece,
  MOMENTS,
  type PieceModel,
  partPath,
  pieceModel,
  piecesOf,
  standingAt,
  turnRound,
} from '../../src/figures/piece/index.ts';
import { drawing } from '../seed.ts';
import { drawChart, evening, planned, third } from './drawn.ts';
import { inSight, meetingsOf, ReadPicture, strokesOf } from './over-under.ts';
import { WAYS } from './ways.ts';

const tally = new Map<string, number>();
const show = (name: string, cords: any[], strokes: any[]) => {
  const t0 = performance.now();
  const all = inSight(cords, meetingsOf(cords));
  const t1 = performance.now();
  const read = new ReadPicture(cords, strokes);
  const bad = all.filter((one) => !read.shows(one));
  if (process.env.SEE && name.includes(process.env.SEE))
    for (const b of bad) console.log(cords.find((c) => c.id === b.over.cord).path.slice(0, 0), b);
  const t2 = performance.now();
  for (const b of bad) {
    const key = `${name.split(' ')[0]} ${b.over.cord.replace(/\d+/g, '')} / ${b.under.cord.replace(/\d+/g, '')}`;
    tally.set(key, (tally.get(key) ?? 0) + 1);
  }
  if (bad.length)
    console.log(
      name,
      strokes.length,
      'strokes',
      all.length,
      'meet',
      bad.length,
      'bad',
      bad.filter((b) => b.gap > 0.6).length,
      (t1 - t0).toFixed(0),
      (t2 - t1).toFixed(0),
      bad
        .sort((a, b) => b.gap - a.gap)
        .slice(0, 8)
        .map(
          (b) =>
            `${b.over.cord}@${b.over.at.toFixed(1)} over ${b.under.cord}@${b.under.at.toFixed(1)} gap ${b.gap.toFixed(2)} (${b.x.toFixed(1)},${b.y.toFixed(1)}) ${read.lastAt(b.over)}/${read.lastAt(b.under)}`,
        ),
    );
};
const pieceCords = (m: PieceModel, floats = true) =>
  joinFolds([
    ...m.strings.flatMap((s) => {
      const out: any[] = [];
      let path: any[] = [];
      let n = 0;
      const flush = () => {
        if (path.length > 1) out.push({ id: `${s.id}${n ? '.' + n : ''}`, path });
        n++;
        path = [];
      };
      for (const part of s.parts) {
        if (part.is === 'line' && (part.what === 'tail' || part.what === 'float')) {
          flush();
          if (floats) out.push({ id: `${s.id} ${part.what} ${n++}`, path: part.path });
        } else path.push(...partPath(m, part));
      }
      flush();
      return out;
    }),
    ...(m.laid.fromRow === 1
      ? [
          { id: 'bar', path: m.ring.bar },
          { id: 'wire', path: m.ring.arch },
        ]
      : []),
  ]);
function joinFolds(cords: any[]) {
  const out: any[] = [];
  for (const c of cords) {
    const last = out.at(-1);
    const [a, b] = [last?.path[0], c.path[0]];
    if (a && b && /^base/.test(c.id) && Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) < 1e-6)
      out[out.length - 1] = { id: last.id + '+' + c.id, path: [...last.path].reverse().concat(c.path.slice(1)) };
    else out.push(c);
  }
  return out;
}
test('x', () => {
  const coloured = planned({ width: 12, height: 14, capacity: 8, chart: drawChart(drawing(7), 12, 14) });
  for (const [n, plan] of Object.entries({ evening: coloured, third }))
    for (const name of Object.keys(figures) as FigureName[])
      for (const options of WAYS[name]) {
        const drawn = (figures[name] as any).draw(plan, options) as Drawing<string>;
        for (const shape of drawn.shapes)
          if (shape.tag === 'cords')
            show(
              `${name} ${n} ${JSON.stringify(options)}`,
              pieceCords(shape.model),
              strokesOf(`<svg>${shape.paint('x')}</svg>`, 20),
            );
      }
  for (const plan of process.env.ONLY ? [] : [coloured])
    for (const moment of MOMENTS)
      for (const side of ['front', 'back'] as const) {
        const f = pieceModel(piecesOf(plan, standingAt(plan, moment)));
        const m = side === 'back' ? turnRound(f) : f;
        show(
          `${plan.fit.width} ${moment} ${side}`,
          pieceCords(m, side === 'back'),
          strokesOf(drawPiece(m, { id: 'p', view: side }), 20),
        );
      }
  console.log(tally);
}, 120000);
