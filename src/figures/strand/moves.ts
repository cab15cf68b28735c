import { hangingBase, spreadOf, standing } from './bundle.ts';
import { type Key, keys } from './keys.ts';
import type { Path } from './point.ts';
import { down, freeAfter, type Route, towards } from './route.ts';
import { bottom, edge, hanging } from './row-knot.ts';
import type { FreeEnd, StillCord, Tying } from './tying.ts';

const asItIs = { x: 0, z: 0 };
/** A hanging end is taken back out of the way of all the others, which hang in front of it. */
const back = towards(0, 0.5, -0.9);

/** A string hanging from above the picture at `x`, as far as the place where a move takes it aside. */
const fromAbove = (x: number, z = 0): Path => [
  [x, -8, z],
  [x, -6, z],
  [x, -4, z],
  [x, -2.4, z],
];

/** From hanging at one side of a string, behind it, to hanging at the other. `to` − `from` is how far. */
function passBehind(held: Path, from: number, to: number, length: number): Key[] {
  const way = to - from;
  const behind: Path = [
    [from + way * 0.08, -1, -0.6],
    [from + way * 0.3, 0, -1.4],
    [from + way * 0.7, 0.8, -1.4],
    [from + way * 0.95, 1.8, -0.8],
    [to, 3.2, 0],
    [to, 4.6, 0],
    ...hanging(to, length),
  ];
  const route: Route = [held, behind.slice(0, 2), behind.slice(2, 4), behind.slice(4)];
  return [
    keys([freeAfter(route, 1, down)], 'at-rest'),
    keys([freeAfter(route, 1, back)]),
    keys([freeAfter(route, 2, towards(Math.sign(way), 0.4, -0.6))]),
    keys([freeAfter(route, 3, towards(Math.sign(way) * 0.4, 0.9, -0.2))]),
    keys([route.flat()], 'passed-behind'),
  ];
}

/** A string that only hangs, from above the picture to below it. */
const hangs = (id: string, role: StillCord['role'], x: number, z = 0): StillCord => ({
  id,
  role,
  path: [
    [x, -14, z],
    [x, 18, z],
  ],
});

/** The leading string outside the two edge strings is carried behind both, to their inner side. */
export const carryBehind: Tying = {
  moving: [{ id: 'leading', role: 'leading', from: 'start' }],
  still: hangingBase(2),
  keys: ({ length }) => passBehind(fromAbove(-3), -3, 3, length),
  drawUp: null,
  spread: asItIs,
  frame: { left: -edge, right: edge, top: -5, bottom },
};

/** At the start of a row the innermost string of a bundle passes behind the leading string to its inner side. */
export const letOut = (strands: number): Tying => {
  const { x: half } = spreadOf(strands);
  const stays = hangingBase(strands).slice(0, -1);
  const [from, z] = standing(strands).at(-1) ?? [0, 0];
  const lead = half + 2.2;
  return {
    moving: [{ id: 'freed', role: 'freed', from: 'start' }],
    still: [...stays, hangs('leading', 'leading', lead)],
    keys: ({ length }: FreeEnd) => passBehind(fromAbove(from, z), from, lead + 2.4, length),
    drawUp: null,
    spread: asItIs,
    frame: { left: -half - 3.5, right: half + 7, top: -5, bottom },
  };
};

/** At the start of a row the next string passes behind the leading string and joins the bundle at its outer side. */
export const takeIn = (strands: number): Tying => {
  const { x: half } = spreadOf(strands);
  const there = hangingBase(strands).slice(0, -1);
  const [to, z] = standing(strands).at(-1) ?? [0, 0];
  const lead = half + 2.2;
  return {
    moving: [{ id: 'joining', role: 'freed', from: 'start' }],
    still: [...there, hangs('leading', 'leading', lead)],
    keys: ({ length }: FreeEnd) =>
      passBehind(fromAbove(lead + 2.4), lead + 2.4, to, length).map((key) => ({
        ...key,
        lines: key.lines.map((line) => settle(line, lead, z)),
      })),
    drawUp: null,
    spread: asItIs,
    frame: { left: -half - 3.5, right: half + 7, top: -5, bottom },
  };
};

/** Past the leading string the joining one comes to lie as deep as its place in the bundle asks. */
const settle = (line: Path, lead: number, z: number): Path =>
  line.map(([x, y, depth]) => [x, y, x < lead - 1 && depth === 0 ? z : depth]);
