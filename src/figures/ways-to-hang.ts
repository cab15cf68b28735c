import type { Fit } from '../solver/piece.ts';
import type { Plan } from '../solver/plan.ts';
import { cord } from './cord.ts';
import { ACROSS, type Drawing, d, type Figure, path, type Shape, step } from './drawing.ts';

export interface WaysToHangOptions {
  /** Ways drawn at most, the answer among them; four when left out. */
  readonly most?: number | undefined;
  readonly across?: number | undefined;
}

export type WaysToHangKey = 'ways' | 'ways-answer' | 'ways-level' | 'ways-aslant' | 'ways-alone' | 'label-way';

type WaysPlan = Pick<Plan, 'fit' | 'alternatives'>;

const MARGIN = 14;
/** Room between bar and bundle, in dots. */
const GAP = 1.5;
const WIDEST = 12;
const EACH = 58;

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

const dot = (x: number, y: number, r: number): string =>
  d`M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;

function draw(plan: WaysPlan, options: WaysToHangOptions = {}): Drawing<WaysToHangKey> {
  const { across = ACROSS } = options;
  const ways = waysOf(plan, options);
  const shapes: Shape<WaysToHangKey>[] = [];
  ways.forEach((fit, at) => {
    const top = at * EACH;
    const { left, onBar, right, lone, carried } = valuesOf(fit);
    const pitch = Math.min(WIDEST, (across - 2 * MARGIN) / (left + onBar + right + 2 * GAP));
    const r = pitch * 0.38;
    const y = top + 42;
    let x = (across - (left + onBar + right + 2 * GAP) * pitch) / 2 + pitch / 2;
    let [folds, single, riding] = ['', '', ''];
    for (let strand = 0; strand < left; strand += 1, x += pitch)
      if (carried === 'left' && strand === 0) riding += dot(x, y, r);
      else folds += dot(x, y, r);
    x += GAP * pitch;
    const bar = [x - pitch * 0.6, x + (onBar - 0.4) * pitch] as const;
    for (let strand = 0; strand < onBar; strand += 1, x += pitch)
      if (lone > 0 && strand === onBar - 1) single += dot(x, y, r);
      else folds += dot(x, y, r);
    x += GAP * pitch;
    for (let strand = 0; strand < right; strand += 1, x += pitch)
      if (carried === 'right' && strand === right - 1) riding += dot(x, y, r);
      else folds += dot(x, y, r);
    shapes.push(
      {
        tag: 'text',
        x: MARGIN,
        y: top + 16,
        say: step('label-way', { ...valuesOf(fit), answer: at === 0 ? 1 : 0 }),
        is: at === 0 ? 'strong' : '',
        'text-anchor': 'start',
      },
      cord(5, d`M${bar[0]} ${y - r - 6}H${bar[1]}`, 'metal'),
      path('dot', folds),
      path('dot single', single),
      path('dot riding', riding),
    );
  });
  return { width: across, height: ways.length * EACH, shapes };
}

/** The answer of the fitting sum and other ways to hang the same chart: a dot for each string. */
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
