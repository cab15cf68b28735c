import type { Fit } from '../solver/piece.ts';
import { OVER_WIRE, overWire, smooth, WIRE_THICK } from './bar-cords.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, text } from './drawing.ts';

export interface FoldsWhyOptions {
  readonly across?: number | undefined;
}

export type FoldsWhyKey =
  | 'folds-why'
  | 'folds-why-one'
  | 'folds-why-over'
  | 'folds-why-odd'
  | 'folds-why-even'
  | 'label-one-string'
  | 'label-two-ends'
  | 'label-side-of'
  | 'label-side-folds';

export interface FoldsWhyPlan {
  readonly fit: Fit;
}

/** An odd side and the even one next to it; one of them is half of this plan's spare strings, where there are any. */
function sidesOf({ fit }: FoldsWhyPlan): { odd: number; even: number } {
  const half = (fit.left.strands + fit.right.strands - fit.borrowed) / 2;
  // The lesson speaks of five strands on a side.
  if (half === 0) return { odd: 5, even: 6 };
  return half % 2 ? { odd: half, even: half + 1 } : { odd: Math.max(1, half - 1), even: Math.max(2, half) };
}

/** Heights of the wire that the sides hang from, and of their ends; the same of the one fold above them. */
const SIDES = { wire: 150, foot: 252 };
const ONE = { wire: 27, foot: 74 };
/** The widest column, and the thickest cord. */
const WIDEST = 22;
const THICKEST = 8;

type Part = Shape<FoldsWhyKey>;

/** Folds over a wire, and a single string with the partner it lacks: what hangs behind the wire, the wire, what before. */
function hung(centre: number, strings: number, room: number, { wire, foot }: typeof SIDES): Part[] {
  const pitch = Math.min(WIDEST, room / strings);
  const weight = Math.min(THICKEST, pitch * 0.46);
  const x = (strand: number): number => centre + (strand - (strings - 1) / 2) * pitch;
  const leg = (crown: number, to: number): string =>
    smooth([...overWire(weight, [crown, wire], [to, wire]), [to, foot - weight], [to, foot]]);
  let [behind, before] = ['', ''];
  for (let strand = 0; strand + 1 < strings; strand += 2) {
    const crown = (x(strand) + x(strand + 1)) / 2;
    // One half lies before the wire, the other behind it.
    before += leg(crown, x(strand) + pitch * 0.12);
    behind += leg(crown, x(strand + 1) - pitch * 0.12);
  }
  const [own, missing] = [x(strings - 1), x(strings - 1) + pitch];
  const crown = own + pitch * 0.12;
  const top = wire - OVER_WIRE * weight;
  const half = (strings * pitch) / 2 + 12;
  const over = strings % 2;
  return [
    cord(weight, behind, 'legs'),
    cord(WIRE_THICK * weight, d`M${centre - half} ${wire}H${centre + half}`, 'metal'),
    path(
      'missing',
      over ? d`M${crown} ${top}C${crown} ${top - 14} ${missing} ${top - 14} ${missing} ${top + 4}V${foot - 6}` : '',
    ),
    cord(weight, before, 'folds'),
    cord(weight, over ? leg(crown, own) : '', 'must single'),
  ];
}

function draw(plan: FoldsWhyPlan, { across = ACROSS }: FoldsWhyOptions = {}): Drawing<FoldsWhyKey> {
  const { odd, even } = sidesOf(plan);
  const [left, right] = [across * 0.25, across * 0.75];
  const room = across / 2 - 48;
  const shapes: Part[] = [
    twist(THICKEST),
    // One cut string, straight and folded.
    cord(THICKEST, d`M${left - 62} 40H${left + 62}`, 'across base'),
    path('fold-line', d`M${left} 26v28`),
    text(left, 92, step('label-one-string')),
    ...hung(right, 2, room, ONE),
    text(right, 92, step('label-two-ends', { strings: 2 })),
    path('rule', d`M14 108H${across - 14}`),
  ];
  for (const [centre, strings] of [
    [left, odd],
    [right, even],
  ] as const) {
    const over = strings % 2;
    shapes.push(
      ...hung(centre, strings, room, SIDES),
      text(centre, SIDES.foot + 22, step('label-side-of', { strings }), over ? 'must strong' : 'strong'),
      text(centre, SIDES.foot + 39, step('label-side-folds', { folds: strings >> 1, over }), over ? 'must' : ''),
    );
  }
  return { width: across, height: SIDES.foot + 48, shapes };
}

/** How one cut string gives two base strings, and why an odd side can't be made of folds while an even one can. */
export const foldsWhy: Figure<'folds-why', FoldsWhyOptions, FoldsWhyKey, FoldsWhyPlan> = {
  name: 'folds-why',
  draw,
  describe(plan) {
    const { odd, even } = sidesOf(plan);
    return [
      step<FoldsWhyKey>('folds-why', { odd, even }),
      step<FoldsWhyKey>('folds-why-one'),
      step<FoldsWhyKey>('folds-why-over'),
      step<FoldsWhyKey>('folds-why-odd', { strings: odd, folds: odd >> 1 }),
      step<FoldsWhyKey>('folds-why-even', { strings: even, folds: even >> 1 }),
    ];
  },
};
