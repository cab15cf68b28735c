import type { Knot } from '../solver/piece.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, d, path, type Shape, text } from './drawing.ts';
import { isTurning, knotStrokes } from './knots.ts';

/** Strings under one knot, or single ones that wait for theirs; counted from the left, both ends counting. */
export interface DrawnUnit {
  readonly strings: readonly [from: number, to: number];
  readonly knot: Knot | null;
  /** It came out of its bundle, or went into it, in this row. */
  readonly moved?: boolean | undefined;
  /** The place of a sheet that it belongs to, where places can be picked. */
  readonly place?: string | undefined;
}

/** A row as somebody has tied it, rightly or not. */
export interface DrawnRow {
  readonly width: number;
  readonly rightward: boolean;
  /** From left to right. */
  readonly units: readonly DrawnUnit[];
  /** Base strings to the left of the leading string: before the row, at its first knot, and now. */
  readonly begins: number;
  readonly enters: number;
  readonly at: number;
  /** The leading string passes behind the edge strings before its first knot. */
  readonly carried?: boolean | undefined;
  /** Whether the end of the leading string can be picked as a place. */
  readonly picksLead?: boolean | undefined;
}

const WIDEST = 30;
/** Heights from the top: where the strings begin, the middle of the knots, where the strings end. */
const TOP = 28;
const KNOTS = 92;
const FOOT = 156;

/**
 * A row as it was tied: each base string or bundle, the knot round it if it has one, and where the leading string is. It
 * draws what is there, right or wrong, and takes nothing from a plan.
 */
export function drawTiedRow(row: DrawnRow): Drawing<never> {
  const { units, width, rightward } = row;
  const breadth = ({ strings: [from, to] }: DrawnUnit): number =>
    from === to ? 1 : 1 + Math.min(1.6, (to - from) * 0.32);
  const pitch = Math.min(WIDEST, (ACROSS - 56) / units.reduce((sum, unit) => sum + breadth(unit), 0));
  let edge = (ACROSS - units.reduce((sum, unit) => sum + breadth(unit), 0) * pitch) / 2;
  const laid = units.map((unit) => {
    const left = edge;
    edge += breadth(unit) * pitch;
    return { ...unit, left, right: edge, x: (left + edge) / 2 };
  });
  const weight = Math.min(8, pitch * 0.46);
  const thread = Math.min(8, pitch * 0.44);
  const [first, last] = [laid[0], laid.at(-1)];
  /** Where the leading string is when so many base strings hang to its left. */
  const place = (at: number): number => {
    if (at <= 0) return (first?.left ?? 0) - thread;
    if (at >= width) return (last?.right ?? ACROSS) + thread;
    const unit = laid.find(({ strings: [from, to] }) => at >= from - 1 && at < to);
    if (!unit) return last?.right ?? ACROSS;
    const [from, to] = unit.strings;
    return unit.left + ((unit.right - unit.left) * (at - from + 1)) / (to - from + 1);
  };

  let [singles, moved, waiting] = ['', '', ''];
  const bundles: string[] = [];
  let packed = weight;
  for (const unit of laid) {
    const { x, left, right, knot } = unit;
    const strands = unit.strings[1] - unit.strings[0] + 1;
    if (!knot) waiting += d`M${x} ${KNOTS}h0`;
    if (strands === 1) {
      const line = d`M${x} ${TOP}V${FOOT}`;
      if (unit.moved) moved += line;
      else singles += line;
      continue;
    }
    const apart = Math.min(weight * 1.02, (right - left - 3) / strands);
    packed = Math.min(packed, apart * 1.25);
    const lines = ['', ''];
    for (let strand = 0; strand < strands; strand += 1) {
      const off = (strand - (strands - 1) / 2) * apart;
      const tight = off * 0.62;
      lines[strand % 2] +=
        d`M${x + off} ${TOP}C${x + off} ${TOP + 40} ${x + tight} ${KNOTS - 30} ${x + tight} ${KNOTS}S${x + off} ${FOOT - 36} ${x + off} ${FOOT}`;
    }
    bundles.push(...lines);
  }
  const strings = [
    cord<never>(weight, singles, 'base'),
    ...bundles.map((one) => cord<never>(packed, one, 'bundle')),
    cord<never>(weight, moved, 'must moved'),
  ];

  const tied = laid.some(({ knot }) => knot !== null);
  const [begins, enters, here] = [place(row.begins), place(row.enters), place(row.at)];
  const sign = rightward ? 1 : -1;
  const lead = cord<never>(
    thread,
    d`M${begins} ${TOP - 8}C${begins} ${TOP + 30} ${enters} ${KNOTS - 48} ${enters} ${tied ? KNOTS - weight : KNOTS + 6}`,
    'lead',
  );
  const tail = cord<never>(
    thread,
    d`M${here} ${KNOTS + (tied ? weight * 0.8 : 4)}C${here} ${KNOTS + 28} ${here + sign * 9} ${KNOTS + 30} ${here + sign * 9} ${FOOT + 14}`,
    'lead end',
  );
  const shapes: Shape<never>[] = [twist(weight), ...(row.carried ? [lead, ...strings] : [...strings, lead]), tail];
  for (const { knot, x, left, right, strings: around } of laid) {
    if (!knot) continue;
    const half = around[0] === around[1] ? pitch / 2 : (right - left) * 0.36 + thread * 0.6;
    shapes.push(
      cord(thread, knotStrokes(knot, x, KNOTS, half, thread), `lead knot ${isTurning(knot) ? 'turning' : knot}`),
    );
  }
  shapes.push(path('waiting', waiting));
  for (const {
    strings: [from, to],
    x,
    left,
    right,
    place: picks,
  } of laid) {
    shapes.push(text(x, 15, from === to ? `${from}` : `${from}–${to}`, 'quiet'));
    if (picks)
      shapes.push({
        tag: 'rect',
        is: `pick ${picks}`,
        x: left,
        y: TOP - 8,
        width: right - left,
        height: FOOT - TOP + 12,
        rx: 4,
      });
  }
  if (row.picksLead) shapes.push({ tag: 'circle', is: 'pick lead-place', cx: here + sign * 9, cy: FOOT + 12, r: 15 });
  return { width: ACROSS, height: FOOT + 32, shapes };
}
