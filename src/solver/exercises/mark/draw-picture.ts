import { bundlesIn, OUTLINE_RULES, type OutlineFigures } from '../outline.ts';
import { type Draw, pick } from '../seed.ts';
import type { Picture } from './problem.ts';

/** Plain names and colours of the boathouse's charts. */
const GROUNDS = [
  { name: 'chalk', colour: '#f4ead5' },
  { name: 'oyster', colour: '#c8c2b6' },
] as const;
const PAIRS = [
  [
    { name: 'rust', colour: '#a8502c' },
    { name: 'tar', colour: '#20283c' },
  ],
  [
    { name: 'kelp', colour: '#45592f' },
    { name: 'brass', colour: '#e2a93b' },
  ],
  [
    { name: 'estuary blue', colour: '#2f6378' },
    { name: 'rust', colour: '#a8502c' },
  ],
] as const;

const palette = (next: Draw): Picture['palette'] => [
  pick(next, GROUNDS) ?? GROUNDS[0],
  ...(pick(next, PAIRS) ?? PAIRS[0]),
];

/** Mirrored in itself: half of a row, and its mirror image; an odd width has its middle column once. */
const mirrored = (half: string, width: number): string =>
  half +
  [...half]
    .reverse()
    .join('')
    .slice(width % 2 === 1 ? 1 : 0);

/** A picture of the piece's size: bars of two colours, of other lengths in every row, with ground between and round them. */
export function drawStripes(next: Draw, { width, height }: OutlineFigures): Picture {
  const half = Math.ceil(width / 2);
  const row = (): string => {
    const begin = next(1, Math.max(1, Math.floor(half / 3)));
    const long = next(1, Math.max(1, Math.floor(half / 3)));
    const gap = next(1, 2);
    const inner = next(1, 2) === 1 ? '1' : '2';
    return mirrored(
      `${'0'.repeat(begin)}${'1'.repeat(long)}${'0'.repeat(gap)}${inner.repeat(half)}`.slice(0, half),
      width,
    );
  };
  return { ground: 0, palette: palette(next), rows: Array.from({ length: height }, row) };
}

/** A picture whose top is too wide for the corners: in some opening rows it reaches into them. */
export function drawTooWide(next: Draw, piece: OutlineFigures): Picture {
  const { width, height } = piece;
  const half = Math.ceil(width / 2);
  const full = OUTLINE_RULES.fullWidthRow(piece);
  const rows = Array.from({ length: height }, (_, index) => {
    const row = index + 1;
    const bundle = Math.max(...bundlesIn(OUTLINE_RULES, piece, row));
    if ((row === 1 && full > 2) || row === height) return '0'.repeat(width);
    // Somewhere near the corner's edge, before it or beyond it; in the last opening row but one always beyond.
    const inset = row === Math.min(2, full - 1) ? Math.max(0, bundle - 2) : next(Math.max(0, bundle - 3), bundle + 1);
    return mirrored(`${'0'.repeat(inset)}${'1'.repeat(next(1, 3))}${'2'.repeat(half)}`.slice(0, half), width);
  });
  return { ground: 0, palette: palette(next), rows };
}
