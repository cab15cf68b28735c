import type { Crossing, Path, Point, StrandModel } from '../../../src/figures/strand/index.ts';

/** The model with the two sides of one of its listed crossings exchanged: what lay over lies under. */
export function flipped(model: StrandModel, which: number): StrandModel {
  const chosen = model.crossings[which];
  return {
    ...model,
    crossings: model.crossings.map((crossing) =>
      crossing === chosen ||
      (crossing.strand === chosen?.meets && crossing.at === chosen.there && crossing.there === chosen.at)
        ? { ...crossing, over: !crossing.over }
        : crossing,
    ),
  };
}

/** The place so far along a line, in d. */
function placeAlong(path: Path, at: number): Point {
  let walked = 0;
  for (const [i, a] of path.entries()) {
    const b = path[i + 1];
    if (!b) return a;
    const long = Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
    const t = (at - walked) / long;
    if (t <= 1) return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t];
    walked += long;
  }
  return [0, 0, 0];
}

/** The listed crossings that do not say what the lines do: over is where a cord is nearer to the viewer. */
export function againstDepth({ strands, crossings }: StrandModel): Crossing[] {
  const depth = (id: string, at: number): number =>
    placeAlong(strands.find((strand) => strand.id === id)?.path ?? [], at)[2];
  return crossings.filter(({ strand, at, meets, there, over, gap }) => {
    const above = depth(strand, at) - depth(meets, there);
    return above > 0 !== over || Math.abs(Math.abs(above) - gap) > 1e-6;
  });
}
