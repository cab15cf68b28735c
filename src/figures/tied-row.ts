import type { Knot } from '../solver/piece.ts';

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

/**
 * Measures of the knots that a page holds, in the 20ths of a cord's diameter in which they are drawn; y is 0 at the top
 * of the row. A test compares each with the strand model.
 */
export const TIED = {
  /** From the middle of one string's column to its boundary. */
  half: 28,
  /** From a string of a bundle to the next, in two layers. */
  next: 8.6,
  /** The most strands that a knot is drawn round; more lie closer. */
  most: 8,
  /** The leading string comes from beyond the boundary, where the knot before takes it over; a turning knot leaves it there. */
  before: 8,
  comes: 20,
  leaves: 54,
  turned: 37,
  /** Between these heights strings are held by the knot. */
  held: [7, 52],
} as const;

const ACROSS = 360;
/** The widest column, and what stays free at both sides together. */
const WIDEST = 40;
const GUTTERS = 60;
/** Heights of the drawing: where strings begin and end; and where the knots' middle is. */
const TOP = 28;
const FOOT = 156;
const KNOTS = 88;
const TEXT = 13;
/** How low a string is led across below the knots, and how much lower the next one; a curve comes down three quarters of it. */
const LOW = 100;
const LOWER = 34;

/** How far the outer strings of a bundle stand from its middle. */
export function reachOf(strands: number): number {
  const drawn = Math.min(TIED.most, strands);
  return ((drawn - 1) * TIED.next) / (drawn > 2 ? 1 : 0.5) / 2;
}

/** How far the boundary of its column lies from the middle of so many strands. */
export const halfOf = (strands: number): number => TIED.half + reachOf(strands);

/** From which side a knot is begun: the leading string lies left of what a forward knot is tied round. */
const wayOf = ({ knot }: { readonly knot: Knot | null }): 1 | -1 => (knot?.startsWith('forward') ? 1 : -1);
const comesTo = (unit: { readonly knot: Knot | null; readonly x: number; readonly strands: number }): number =>
  unit.x - wayOf(unit) * (halfOf(unit.strands) + TIED.before);
/** Whether a string has to be led to a place, and does not come by it anyway. */
const isFar = (across: number): boolean => Math.abs(across) > 24;

const escaped = (raw: string): string => raw.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** Path data with whole figures. */
const d = (parts: TemplateStringsArray, ...values: readonly number[]): string =>
  parts.reduce((data, part, index) => data + Math.round(values[index - 1] ?? 0) + part);

/** Cords that do not cross: one path for their edges, one for their bodies. */
const cords = (data: string, paint: string): string =>
  data && `<g color="var(--${paint})"><path class="pc-e" d="${data}"/><path class="pc-b" d="${data}"/></g>`;

/**
 * A row as it was tied: each base string or bundle, the knot round it if it has one, and where the leading string is. It
 * draws what is there, right or wrong, and takes nothing from a plan. The knots are those of the strand model, which the
 * page holds (`tiedKnots`); where one does not begin where the last one ended, the leading string is seen on its way
 * behind the strings.
 *
 * @returns an SVG element that is one image; every id in it begins with `id`
 */
export function drawTiedRow(id: string, row: DrawnRow, title: string, description: string): string {
  const { units, width, rightward } = row;
  let end = 0;
  const laid = units.map((unit) => {
    const [from, to] = unit.strings;
    const strands = to - from + 1;
    const left = end;
    end += 2 * halfOf(strands);
    return { ...unit, from, to, strands, left, right: end, x: (left + end) / 2 };
  });
  const scale = Math.min(WIDEST / 2 / TIED.half, (ACROSS - GUTTERS) / end);
  const edge = (ACROSS - end * scale) / 2;
  const middle = (TIED.held[0] + TIED.held[1]) / 2;
  const [top, foot] = [middle + (TOP - KNOTS) / scale, middle + (FOOT - KNOTS) / scale];
  /** Where the leading string is when so many base strings hang to its left. */
  const place = (at: number): number => {
    const unit = laid.find(({ from, to }) => at >= from - 1 && at < to);
    return at <= 0
      ? -16
      : at >= width || !unit
        ? end + 16
        : unit.left + ((unit.right - unit.left) * (at - unit.from + 1)) / unit.strands;
  };

  let [behind, singles, moved, waiting, links, knots, labels] = ['', '', '', '', '', '', ''];
  const bundles = ['', ''];
  for (const { x, from, to, strands, left, right, knot, moved: hasMoved, place: picks } of laid) {
    const apart = (right - left - 24) / strands;
    for (let strand = 0; strand < strands; strand += 1) {
      const part = strand - (strands - 1) / 2;
      const [loose, tight] = [x + part * apart, x + (strands > 1 ? (part * 2 * reachOf(strands)) / (strands - 1) : 0)];
      const line =
        strands > 1
          ? d`M${loose} ${top}C${loose} ${top / 2} ${tight} ${top / 3} ${tight} ${TIED.held[0]}V${TIED.held[1]}C${tight} ${96} ${loose} ${foot - 60} ${loose} ${foot}`
          : d`M${x} ${top}V${foot}`;
      if (strands > 1) bundles[strand % 2] += line;
      else if (hasMoved) moved += line;
      else singles += line;
    }
    if (!knot) waiting += d`M${edge + x * scale} ${KNOTS}h0`;
    labels += `<text class="f-quiet" x="${Math.round(edge + x * scale)}" y="15">${from === to ? from : `${from}–${to}`}</text>`;
    if (picks)
      labels += `<rect class="f-pick f-${picks}" x="${Math.round(edge + left * scale)}" y="20" width="${Math.round((right - left) * scale)}" height="140" rx="4"/>`;
  }

  // The leading string from knot to knot, in the order in which they are tied.
  const tied = laid.filter(({ knot }) => knot);
  if (!rightward) tied.reverse();
  const [begins, enters, here] = [row.begins, row.enters, row.at].map(place) as [number, number, number];
  const [first] = tied;
  let [x, y]: readonly [number, number] = [first ? comesTo(first) : enters, TIED.comes];
  const arrival = cords(d`M${begins} ${top + 4}C${begins} ${top / 3} ${x} ${top / 2} ${x} ${y}`, 'l');
  // Behind the strings where it is carried there, or where the first knot begins on the other side of them.
  const hidden = row.carried || isFar(x - enters);
  if (hidden) behind += arrival;
  /** Over to where it is needed next: behind what hangs between, each time a little lower, so that all ways are seen. */
  let ways = 0;
  const across = (to: number, down: number): void => {
    const low = LOW + LOWER * (ways++ % 3);
    behind += cords(d`M${x} ${y}C${x} ${low} ${to} ${low} ${to} ${down}`, 'l');
    [x, y] = [to, down];
  };
  for (const unit of tied) {
    const { x: middle, strands, knot } = unit;
    const [to, way] = [comesTo(unit), wayOf(unit)];
    if (isFar(to - x)) across(to, TIED.comes);
    else links += d`M${x} ${y}L${to} ${TIED.comes}`;
    [x, y] = knot?.includes('-') ? [to, TIED.turned] : [middle + way * halfOf(strands), TIED.leaves];
    knots += `<use href="#tied-${knot}-${Math.min(TIED.most, strands)}" x="${Math.round(middle)}" color="var(--l)"/>`;
  }
  if (isFar(here - x)) across(here, TIED.leaves);
  const tip = here + ((rightward ? 1 : -1) * 9) / scale;
  const tail = d`M${x} ${y}C${here} ${100} ${tip} ${100} ${tip} ${foot + 14 / scale}`;

  if (row.picksLead)
    labels += `<circle class="f-pick f-lead-place" cx="${Math.round(edge + tip * scale)}" cy="${FOOT + 12}" r="15"/>`;
  const strings = cords(singles, 'b') + cords(bundles[0] ?? '', 'b') + cords(bundles[1] ?? '', 'b') + cords(moved, 'a');
  return `<svg class="fig fig-tied-row" viewBox="0 0 ${ACROSS} ${FOOT + 32}" role="img" aria-labelledby="${id}-title ${id}-text" fill="none" font-size="${TEXT}" text-anchor="middle"><title id="${id}-title">${escaped(title)}</title><desc id="${id}-text">${escaped(description)}</desc><g class="f-cords" transform="translate(${edge.toFixed(1)} ${(KNOTS - middle * scale).toFixed(1)}) scale(${scale.toFixed(3)})">${behind}${strings}${hidden ? '' : arrival}${cords(links, 'l')}${knots}${cords(tail, 'l')}</g><path class="f-waiting" d="${waiting}"/>${labels}</svg>`;
}
