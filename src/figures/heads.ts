import { larksHead, loneString, type Stretch, smooth } from './bar-cords.ts';
import { cord } from './cord.ts';
import type { Shape } from './drawing.ts';

export interface HeadsPlace {
  /** Heights of the bar's middle and of the strings' ends. */
  readonly bar: number;
  readonly foot: number;
  /** Whether the lone string is fixed the other way round, its end towards the bar's middle. */
  readonly turned: boolean;
}

/** Where a corner of a kept cord is in the drawing, from the middle of its place: a lark's head and a lone string. */
export function headsAt(weight: number, pitch: number, { bar, turned }: Omit<HeadsPlace, 'foot'>) {
  const wider = Math.min(1.5, (pitch / weight - 0.52) / 1.45);
  const way = turned ? -1 : 1;
  const y = (v: number): number => bar + v * weight;
  return {
    fold: (u: number): number => u * wider * weight,
    lone: (u: number): number => (u - 1.35) * 0.62 * way * weight,
    y,
  };
}

/**
 * A lark's head, drawn wider where the columns leave room, and a lone string, drawn together into its one place; each
 * in two symbols, `fold` and `lone`, painted after the bar, and `fold-behind` and `lone-behind`, painted before it. They
 * are used at their places along the bar.
 *
 * @param weight width of the cords, and pitch that of a column, in units of the drawing
 */
export function heads<Key extends string>(weight: number, pitch: number, place: HeadsPlace): Shape<Key> {
  const { bar, foot, turned } = place;
  const at = headsAt(weight, pitch, place);
  const leg = pitch * 0.45;
  const way = turned ? -1 : 1;
  const placed = (stretches: readonly Stretch[], x: (u: number) => number): Stretch[] =>
    stretches.map((stretch) => stretch.map(([u, v]) => [x(u), at.y(v)]));
  /** Strings that hang on below what is kept of them do so down to their column. */
  const hanging = (stretch: Stretch, low: number, to: (x: number) => number | null): Stretch => {
    const end = (at: Stretch[number] | undefined): Stretch => {
      const column = at && at[1] > bar + low * weight ? to(at[0]) : null;
      return column === null
        ? []
        : [
            [column, foot],
            [column, Math.min(foot - Math.min(8, weight), bar + (low + 3) * weight)],
          ];
    };
    return [...end(stretch[0]), ...stretch, ...[...end(stretch.at(-1))].reverse()];
  };
  const fold = placed(larksHead.behind, at.fold).map((one) => hanging(one, 2.6, (x) => Math.sign(x) * leg));
  const [loop, ...over] = placed(larksHead.before, at.fold).reverse();
  const lone = (stretches: readonly Stretch[]): Shape<Key>[] =>
    placed(stretches, at.lone).map((one) => cord(weight, smooth(hanging(one, 3.9, (x) => (x * way > 0 ? 0 : null)))));
  const symbol = (id: string, shapes: Shape<Key>[]): Shape<Key> => ({ tag: 'g', id, shapes });
  return {
    tag: 'defs',
    shapes: [
      symbol('fold-behind', [cord(weight, fold.map(smooth).join(''))]),
      symbol('fold', [cord(weight, over.map(smooth).join('')), cord(weight, smooth(loop ?? []), 'across')]),
      symbol('lone-behind', lone(loneString.behind)),
      symbol('lone', lone(loneString.before)),
    ],
  };
}
