import type { Crossing } from './crossings.ts';
import type { StrandModel } from './model.ts';

/** What one cord does at one place, for those who hear the figure instead of seeing it. */
export type ToldKey =
  | 'starts'
  | 'passes-over'
  | 'passes-under'
  | 'passes-over-bundle'
  | 'passes-under-bundle'
  | 'passes-over-itself'
  | 'passes-under-itself'
  | 'ends';

export interface Told {
  readonly key: ToldKey;
  readonly values: Readonly<Record<string, string | number>>;
}

export type PictureSide = 'top' | 'bottom' | 'left' | 'right' | 'inside';

/** What a cord that is told does at one place, and the crossings that it stands for: several where it passes a bundle. */
export interface ToldPass extends Told {
  readonly crossings: readonly Crossing[];
}

/** A string of the base that hangs straight down: it is told by what passes round it. */
export const hangs = ({ strands }: StrandModel, id: string): boolean =>
  strands.some((one) => one.id === id && one.role === 'base' && one.path.length === 2);

/** The cords that are told one by one, in the order in which they are listed. */
export const toldStrands = (model: StrandModel): string[] =>
  model.strands.filter(({ id, role }) => role !== 'bar' && !hangs(model, id)).map(({ id }) => id);

/** What one cord passes over and under in order along it; neighbouring passes of one kind over a bundle are one. */
export function passesAlong(model: StrandModel, id: string): ToldPass[] {
  const steps: { key: ToldKey; values: Record<string, string | number>; crossings: Crossing[] }[] = [];
  const inBundle = (other: string): boolean => other !== 'neighbour' && hangs(model, other);
  for (const crossing of model.crossings) {
    const { strand, meets, over } = crossing;
    if (strand !== id) continue;
    const last = steps.at(-1);
    const together = last?.crossings.map((one) => one.meets) ?? [];
    if (meets === id)
      steps.push({
        key: over ? 'passes-over-itself' : 'passes-under-itself',
        values: { strand: id },
        crossings: [crossing],
      });
    else if (
      last?.crossings[0]?.over === over &&
      inBundle(meets) &&
      together.every(inBundle) &&
      !together.includes(meets)
    ) {
      last.crossings.push(crossing);
      last.key = over ? 'passes-over-bundle' : 'passes-under-bundle';
      last.values = { strand: id, count: last.crossings.length };
    } else
      steps.push({ key: over ? 'passes-over' : 'passes-under', values: { strand: id, meets }, crossings: [crossing] });
  }
  return steps;
}

/**
 * A figure told cord by cord, from its crossings and lines alone: where each cord that meets anything comes from,
 * what it passes over and under in order along it, where it leaves. Neighbouring passes of one kind over the
 * strings of a bundle are one step with their `count`. Strings that only hang are told by what passes round them.
 * Words are made in `src/words/`. Example: a forward half hitch is told as starts (left), over base, under base,
 * over itself, ends (left).
 */
export function tell(model: StrandModel): Told[] {
  return toldStrands(model).flatMap((id) => {
    const path = model.strands.find((strand) => strand.id === id)?.path;
    return [
      { key: 'starts' as const, values: { strand: id, side: sideOf(path?.[0], model) } },
      ...passesAlong(model, id).map(({ key, values }) => ({ key, values })),
      { key: 'ends' as const, values: { strand: id, side: sideOf(path?.at(-1), model) } },
    ];
  });
}

/** On which side of the picture a place lies. */
export function sideOf(place: readonly [number, number, number] | undefined, { frame }: StrandModel): PictureSide {
  if (!place) return 'inside';
  const out: [PictureSide, number][] = [
    ['left', frame.left - place[0]],
    ['right', place[0] - frame.right],
    ['top', frame.top - place[1]],
    ['bottom', place[1] - frame.bottom],
  ];
  const [side, by] = out.reduce((best, next) => (next[1] > best[1] ? next : best));
  return by > -0.6 ? side : 'inside';
}
