import { hangingBase, spreadOf } from './bundle.ts';
import { bottom, edge, hanging } from './frame.ts';
import { type Key, keys } from './keys.ts';
import type { Path } from './point.ts';
import { down, freeAfter, type Route, towards } from './route.ts';
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
    keys([freeAfter(route, 3, towards(0, 0.95, -0.3))]),
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

/** The bundle without its innermost string, which hangs, or comes to hang, right beside it. */
function beside(strands: number): { readonly rest: StillCord[]; readonly at: number; readonly lead: number } {
  const rest = hangingBase(strands - 1);
  const at = spreadOf(strands - 1).x + 1.05;
  return { rest, at, lead: at + 2.2 };
}

const frameBeside = (at: number): Tying['frame'] => ({ left: -at - 3, right: at + 7, top: -5, bottom });

/**
 * At the start of a row the innermost string of a bundle of `strands` (2 or more) passes behind the leading
 * string to its inner side.
 */
export const letOut = (strands: number): Tying => {
  const { rest, at, lead } = beside(strands);
  return {
    moving: [{ id: 'freed', role: 'freed', from: 'start' }],
    still: [...rest, hangs('leading', 'leading', lead)],
    keys: ({ length }: FreeEnd) => passBehind(fromAbove(at), at, lead + 2.4, length),
    drawUp: null,
    spread: asItIs,
    frame: frameBeside(at),
  };
};

/**
 * At the start of a row the next string passes behind the leading string to its outer side and joins the
 * bundle, which then has `strands` (2 or more).
 */
export const takeIn = (strands: number): Tying => {
  const { rest, at, lead } = beside(strands);
  return {
    moving: [{ id: 'joining', role: 'freed', from: 'start' }],
    still: [...rest, hangs('leading', 'leading', lead)],
    keys: ({ length }: FreeEnd) => passBehind(fromAbove(lead + 2.4), lead + 2.4, at, length),
    drawUp: null,
    spread: asItIs,
    frame: frameBeside(at),
  };
};

/** A resting string runs along the back, behind five base strings, to where its colour is next needed. */
export const float: Tying = {
  moving: [{ id: 'resting', role: 'resting', from: 'start' }],
  still: [-4.8, -2.4, 0, 2.4, 4.8].map((x, i) => hangs(`base-${i + 1}`, 'base', x)),
  keys: ({ length }: FreeEnd) => {
    const route: Route = [
      [
        [-edge - 1, 0, 0],
        [-edge, 0, 0],
        [-6.6, 0, -0.2],
        [-6.1, 0.1, -0.7],
      ],
      [
        [-5.4, 0.2, -1.2],
        [-2.4, 0.3, -1.3],
        [0, 0.3, -1.3],
        [2.4, 0.3, -1.3],
        [4.8, 0.3, -1.2],
      ],
      [
        [edge - 0.5, 0.3, -0.8],
        [edge, 0.3, -0.8],
        [edge + 0.5, 0.3, -0.8],
        [edge + length, 0.3, -0.8],
      ],
    ];
    return [
      keys([freeAfter(route, 1, towards(0, 1, -0.1))], 'at-rest'),
      keys([freeAfter(route, 1, towards(0.3, 0.5, -0.8))]),
      keys([freeAfter(route, 2, towards(1, 0, 0))], 'passed-behind'),
    ];
  },
  drawUp: null,
  spread: asItIs,
  frame: { left: -edge, right: edge, top: -5, bottom },
};
