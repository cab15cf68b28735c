import type { Fit } from '../solver/piece.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step, text } from './drawing.ts';

export interface FoldsWhyOptions {
  readonly across?: number | undefined;
}

export type FoldsWhyKey =
  | 'folds-why'
  | 'folds-why-one'
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

const RAIL = 148;
const FOOT = 252;

/** Folds over a rail, and a single string with the partner it lacks. */
function sideOf(centre: number, strings: number, room: number): Shape<FoldsWhyKey>[] {
  const pitch = Math.min(22, room / strings);
  const weight = Math.min(8, pitch * 0.56);
  const x = (strand: number): number => centre + (strand - (strings - 1) / 2) * pitch;
  const over = strings % 2;
  let folds = '';
  for (let strand = 0; strand + 1 < strings; strand += 2) {
    const [a, b] = [x(strand) + pitch * 0.12, x(strand + 1) - pitch * 0.12];
    const bend = Math.min(14, (b - a) / 2 + 2);
    folds += d`M${a} ${FOOT}V${RAIL + 4}C${a} ${RAIL - bend} ${b} ${RAIL - bend} ${b} ${RAIL + 4}V${FOOT}`;
  }
  const [own, missing] = [x(strings - 1), x(strings - 1) + pitch];
  return [
    cord(weight, folds, 'folds'),
    path(
      'missing',
      over
        ? d`M${own} ${RAIL - 10}C${own} ${RAIL - 26} ${missing} ${RAIL - 26} ${missing} ${RAIL - 8}V${FOOT - 6}`
        : '',
    ),
    cord(weight, over ? d`M${own} ${RAIL - 6}V${FOOT}` : '', 'must single'),
  ];
}

function draw(plan: FoldsWhyPlan, { across = ACROSS }: FoldsWhyOptions = {}): Drawing<FoldsWhyKey> {
  const { odd, even } = sidesOf(plan);
  const [left, right] = [across * 0.25, across * 0.75];
  const room = across / 2 - 48;
  const rail = (centre: number, y: number, half: number): string => d`M${centre - half} ${y}H${centre + half}`;
  const half = (strings: number): number => Math.min(22, room / strings) * strings * 0.5 + 12;
  const shapes: Shape<FoldsWhyKey>[] = [
    twist(8),
    // One cut string, straight and folded.
    cord(7, d`M${left - 62} 40H${left + 62}`, 'across base'),
    path('fold-line', d`M${left} 26v28`),
    text(left, 92, step('label-one-string')),
    cord(6, rail(right, 24, 34), 'metal'),
    cord(8, d`M${right - 7} 72V26C${right - 7} 10 ${right + 7} 10 ${right + 7} 26V72`, 'folds'),
    text(right, 92, step('label-two-ends', { strings: 2 })),
    path('rule', d`M14 108H${across - 14}`),
  ];
  for (const [centre, strings] of [
    [left, odd],
    [right, even],
  ] as const) {
    const over = strings % 2;
    shapes.push(
      cord(6, rail(centre, RAIL, half(strings)), 'metal'),
      ...sideOf(centre, strings, room),
      text(centre, FOOT + 22, step('label-side-of', { strings }), over ? 'must strong' : 'strong'),
      text(centre, FOOT + 39, step('label-side-folds', { folds: strings >> 1, over }), over ? 'must' : ''),
    );
  }
  return { width: across, height: FOOT + 48, shapes };
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
      step<FoldsWhyKey>('folds-why-odd', { strings: odd, folds: odd >> 1 }),
      step<FoldsWhyKey>('folds-why-even', { strings: even, folds: even >> 1 }),
    ];
  },
};
