import type { SideName } from '../../piece.ts';
import type { Level } from '../level.ts';
import { bundlesIn, OUTLINE_RULES, type OutlineFigures } from '../outline.ts';
import { type Draw, pick } from '../seed.ts';
import type { ChartAsk, ChartQuestion, Stretch } from './problem.ts';

/** Colours of the boathouse's charts; the first is the ground. */
const GROUNDS = ['chalk', 'oyster', 'straw'] as const;
const COLOURS = ['rust', 'tar', 'samphire', 'brass', 'kelp', 'pewter'] as const;

/** A row of a picture: ground and two or three stretches of one or two colours, as wide as the chart. */
function drawStretches(next: Draw, width: number): { stretches: Stretch[]; colour: string } {
  const ground = pick(next, GROUNDS) ?? GROUNDS[0];
  const colour = pick(next, COLOURS) ?? COLOURS[0];
  const other =
    pick(
      next,
      COLOURS.filter((each) => each !== colour),
    ) ?? COLOURS[1];
  const pattern = [ground, colour, ground, colour, ...(width >= 14 ? [ground, other] : []), ground];
  // One cell for each stretch, and the others dealt out; the first stretch of the colour is no longer than needed.
  const cells = pattern.map(() => 1);
  for (let left = width - pattern.length; left > 0; left -= 1) {
    const at = next(0, pattern.length - 1);
    cells[at] = (cells[at] ?? 0) + 1;
  }
  // Stretches of one cell each would hide whether cells or stretches were counted.
  const second = cells[1] ?? 1;
  if (second === 1) {
    const longest = cells.indexOf(Math.max(...cells));
    cells[longest] = (cells[longest] ?? 2) - 1;
    cells[1] = 2;
  }
  return { stretches: pattern.map((each, index) => ({ colour: each, cells: cells[index] ?? 1 })), colour };
}

/** A question about how the chart of this piece is read, or about where its picture can begin. */
export function drawChartQuestion(
  next: Draw,
  level: Level,
  ask: ChartAsk,
  piece: OutlineFigures,
  startSide: SideName,
): ChartQuestion {
  const full = OUTLINE_RULES.fullWidthRow(piece);
  const closing = OUTLINE_RULES.firstClosingRow(piece);
  const lastFull = Math.max(full, (closing > 0 ? closing : piece.height + 1) - 1);
  switch (ask) {
    case 'column-of-knot': {
      // At first in the straight part, where only the direction decides; later in the opening too.
      const row = level === 'mixed' ? next(1, lastFull) : next(full, lastFull);
      const [left, right] = bundlesIn(OUTLINE_RULES, piece, row);
      const knots = OUTLINE_RULES.knots(piece, [left, right]);
      return { kind: 'number', ask, ...piece, row, knot: next(2, Math.min(9, knots)), startSide };
    }
    case 'knots-of-colour':
      return { kind: 'number', ask, ...piece, row: next(full, lastFull), ...drawStretches(next, piece.width) };
    case 'plain-rows-above': {
      const bundle = Math.max(...piece.bundles);
      // Row 1 is plain as a rule, so the picture begins below it.
      const pictureRow = Math.min(next(2, 3), Math.max(1, full - 1));
      const here = Math.max(...bundlesIn(OUTLINE_RULES, piece, pictureRow));
      return { kind: 'number', ask, ...piece, pictureRow, inset: next(1, Math.max(1, Math.min(bundle, here) - 1)) };
    }
  }
}
