import type { Fit } from '../solver/piece.ts';
import type { Plan } from '../solver/plan.ts';
import { BAR_THICK, overWire, smooth, WIRE_THICK } from './bar-cords.ts';
import { cord, twist } from './cord.ts';
import { ACROSS, type Drawing, d, type Figure, type Shape, step } from './drawing.ts';
import { heads } from './heads.ts';

export interface WaysToHangOptions {
  /** Ways drawn at most, the answer among them; four when left out. */
  readonly most?: number | undefined;
  readonly across?: number | undefined;
}

export type WaysToHangKey = 'ways' | 'ways-answer' | 'ways-level' | 'ways-aslant' | 'ways-alone' | 'label-way';

type WaysPlan = Pick<Plan, 'fit' | 'alternatives' | 'startSide'>;

const MARGIN = 14;
/** Of one way. Its words stand nearer to its own bar than to the strings above them. */
const EACH = 64;
/** Heights of one way: of its words, the bar's middle, and the strings' ends. */
const WORDS = 13;
const BAR = 31;
const FOOT = 54;
/** The widest column, and how wide a string beside the bar hangs and how far from it the first one does, in columns. */
const WIDEST = 11;
const BESIDE = 0.86;
const GAP = 0.8;
/** How far the ring's wire rises beside the bar, in columns. */
const RISE = 0.6;

type Part = Shape<WaysToHangKey>;

/** The answer, then other ways, each sort of them once before the same again. */
function waysOf({ fit, alternatives }: WaysPlan, { most = 4 }: WaysToHangOptions): readonly Fit[] {
  const sortOf = ({ level, oddMethod }: Fit): string => `${level} ${oddMethod}`;
  const sorts = new Set([sortOf(fit)]);
  const first = alternatives.filter((way) => !sorts.has(sortOf(way)) && sorts.add(sortOf(way)));
  const others = alternatives.filter((way) => !first.includes(way));
  return [fit, ...[...first, ...others].slice(0, Math.max(0, most - 1))];
}

const valuesOf = (fit: Fit) => ({
  left: fit.left.strands,
  onBar: fit.onBar,
  right: fit.right.strands,
  lone: fit.loneStrings,
  carried: fit.carrySide ?? '',
});

const roomOf = (strands: number): number => (strands === 0 ? 0 : strands * BESIDE + GAP);

/** One way as it hangs from its bar, and from the ring's wire at either end of it. */
function hung(fit: Fit, startSide: Plan['startSide'], pitch: number, weight: number, across: number): Part[] {
  const { left, onBar, right } = valuesOf(fit);
  const from = (across - (roomOf(left) + onBar + roomOf(right)) * pitch) / 2 + roomOf(left) * pitch;
  const to = from + onBar * pitch;
  let [behind, before, riding, wire] = ['', '', '', ''];
  for (const [side, out, end] of [
    ['left', -1, from],
    ['right', 1, to],
  ] as const) {
    const strands = fit[side].strands;
    if (strands === 0) continue;
    const at = (strand: number): number => end + out * (GAP + (strand + 0.5) * BESIDE) * pitch;
    wire += d`M${end} ${BAR}H${at(strands - 1) + out * pitch * 0.2}q${out * pitch * 0.8} 0 ${out * pitch} ${-RISE * pitch}`;
    for (let strand = 0; strand + 1 < strands; strand += 2) {
      const [inner, outer] = [at(strand), at(strand + 1)];
      const leg = (x: number): string =>
        smooth([...overWire(weight, [(inner + outer) / 2, BAR], [x, BAR]), [x, FOOT - weight], [x, FOOT]]);
      behind += leg(inner);
      // A carried end hangs outside all columns.
      if (fit.carrySide === side && strand + 2 >= strands) riding += leg(outer);
      else before += leg(outer);
    }
  }
  // The lone string hangs where row 1 ends.
  const lone = fit.loneStrings;
  const endsLeft = startSide === 'right';
  const first = from + (lone && endsLeft ? pitch : 0);
  const uses: [href: string, x: number, is: string][] = [];
  for (let fold = 0; fold < (onBar - lone) / 2; fold += 1) uses.push(['fold', first + (2 * fold + 1) * pitch, '']);
  if (lone) uses.push(['lone', (endsLeft ? from : to - pitch) + pitch / 2, 'told']);
  const use = (which: '' | '-behind') =>
    uses.map(([href, x, is]): Part => ({ tag: 'use', is, href: `${href}${which}`, x }));
  return [
    cord(weight, behind, 'legs'),
    ...use('-behind'),
    cord(WIRE_THICK * weight, wire, 'metal'),
    cord(BAR_THICK * weight, d`M${from} ${BAR}H${to}`, 'metal'),
    cord(weight, before, 'folds'),
    cord(weight, riding, 'must folds riding'),
    ...use(''),
  ];
}

function draw(plan: WaysPlan, options: WaysToHangOptions = {}): Drawing<WaysToHangKey> {
  const { across = ACROSS } = options;
  const ways = waysOf(plan, options);
  // One scale for all ways, so that they can be compared.
  const units = Math.max(...ways.map((fit) => fit.onBar + roomOf(fit.left.strands) + roomOf(fit.right.strands) + 2.4));
  const pitch = Math.min(WIDEST, (across - 2 * MARGIN) / units);
  const weight = pitch * 0.44;
  const shapes: Part[] = [
    twist(weight),
    heads(weight, pitch, { bar: BAR, foot: FOOT, turned: plan.startSide === 'right' }),
  ];
  ways.forEach((fit, at) => {
    const y = at * EACH;
    shapes.push(
      {
        tag: 'text',
        x: MARGIN,
        y: y + WORDS,
        say: step('label-way', { ...valuesOf(fit), answer: at === 0 ? 1 : 0 }),
        is: at === 0 ? 'strong' : '',
        'text-anchor': 'start',
      },
      { tag: 'g', transform: `translate(0 ${y})`, shapes: hung(fit, plan.startSide, pitch, weight, across) },
    );
  });
  return { width: across, height: ways.length * EACH, shapes };
}

/** The answer of the fitting sum and other ways to hang the same chart, each as it hangs from bar and ring. */
export const waysToHang: Figure<'ways-to-hang', WaysToHangOptions, WaysToHangKey, WaysPlan> = {
  name: 'ways-to-hang',
  draw,
  describe(plan, options = {}) {
    const [answer, ...others] = waysOf(plan, options);
    return [
      step<WaysToHangKey>('ways', { width: plan.fit.width, capacity: plan.fit.capacity }),
      ...(answer ? [step<WaysToHangKey>('ways-answer', valuesOf(answer))] : []),
      ...others.map((fit) => step<WaysToHangKey>(fit.level ? 'ways-level' : 'ways-aslant', valuesOf(fit))),
      ...(others.length === 0 ? [step<WaysToHangKey>('ways-alone')] : []),
    ];
  },
};
