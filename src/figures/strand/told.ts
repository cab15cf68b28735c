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

/**
 * A figure told cord by cord, from its crossings and lines alone: where each cord that meets anything comes from,
 * what it passes over and under in order along it, where it leaves. Neighbouring passes of one kind over the
 * strings of a bundle are one step with their `count`. Strings that only hang are told by what passes round them.
 * Words are made in `src/words/`. Example: a forward half hitch is told as starts (left), over base, under base,
 * over itself, ends (left).
 */
export function tell(model: StrandModel): Told[] {
  const bases = new Set(model.strands.filter(({ role }) => role === 'base').map(({ id }) => id));
  const hangs = (id: string): boolean => bases.has(id) && model.strands.some((s) => s.id === id && s.path.length === 2);
  return model.strands
    .filter(({ id, role }) => role !== 'bar' && !hangs(id))
    .flatMap(({ id, path }) => {
      const steps: { key: ToldKey; values: Record<string, string | number> }[] = [];
      let group = new Set<string>();
      for (const { strand, meets, over } of model.crossings) {
        if (strand !== id) continue;
        const last = steps.at(-1);
        if (meets === id) {
          group = new Set();
          steps.push({ key: over ? 'passes-over-itself' : 'passes-under-itself', values: { strand: id } });
        } else if (
          last?.key.startsWith(over ? 'passes-over' : 'passes-under') &&
          hangs(meets) &&
          group.size > 0 &&
          !group.has(meets)
        ) {
          group.add(meets);
          last.key = over ? 'passes-over-bundle' : 'passes-under-bundle';
          last.values = { strand: id, count: group.size };
        } else {
          group = new Set(hangs(meets) ? [meets] : []);
          steps.push({ key: over ? 'passes-over' : 'passes-under', values: { strand: id, meets } });
        }
      }
      return [
        { key: 'starts' as const, values: { strand: id, side: sideOf(path[0], model) } },
        ...steps,
        { key: 'ends' as const, values: { strand: id, side: sideOf(path.at(-1), model) } },
      ];
    });
}

/** On which side of the picture a place lies. */
function sideOf(place: readonly [number, number, number] | undefined, { frame }: StrandModel): PictureSide {
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
