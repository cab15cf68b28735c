import type { Crossing } from './crossings.ts';

/** What `passes` and `orderDown` need of a model. */
export interface Crossed {
  readonly strands: readonly { readonly id: string; readonly role: string }[];
  readonly crossings: readonly Crossing[];
}

/** One pass of a cord over or under the whole base, or over or under its own earlier stroke. */
interface Pass {
  readonly word: string;
  /** Where it meets each base: the height of the crossing down that base. */
  readonly down: ReadonlyMap<string, number>;
}

/**
 * The passes of `strand` round the base strings in order along it, as the craft, section 5, writes them:
 * `o1` over the base, `u1` under it, `s` over its own earlier stroke, `ŝ` under it; a self-crossing is
 * named at its later pass. A bundle counts as one base: each o or u is one unbroken group of a crossing with
 * every string of it. Where that does not hold, the list says so with `broken`, so that no such knot is taken
 * for a right one; an `s` over any stroke but the one that led into the last o is `s?`, and a `ŝ` under
 * anything but the upright stroke between the last two u's is `ŝ?`.
 * A cord's crossings with itself before it first meets these bases belong to an earlier knot and are left out.
 */
export function passes(model: Crossed, strand: string, bases: readonly string[] = basesOf(model)): string {
  return passList(model, strand, bases)
    .map(({ word }) => word)
    .join(' ');
}

/**
 * The same passes in their order down the base, from the ring. Every string of a bundle has to give the
 * same order; where they differ, all are listed with ` | ` between.
 */
export function orderDown(model: Crossed, strand: string, bases: readonly string[] = basesOf(model)): string {
  const list = passList(model, strand, bases).filter(({ down }) => down.size > 0);
  const orders = bases.map((base) =>
    list
      .filter(({ down }) => down.has(base))
      .sort((a, b) => (a.down.get(base) ?? 0) - (b.down.get(base) ?? 0))
      .map(({ word }) => word)
      .join(' '),
  );
  return [...new Set(orders)].join(' | ');
}

const basesOf = (model: Crossed): string[] => model.strands.filter(({ role }) => role === 'base').map(({ id }) => id);

function passList(model: Crossed, strand: string, bases: readonly string[]): Pass[] {
  const list: Pass[] = [];
  const counts = { o: 0, u: 0 };
  let group: Crossing[] = [];
  let strokeFrom = 0;
  let lastOver = 0;
  let lastPass = 0;
  const unders: number[] = [];
  const close = () => {
    const [head] = group;
    if (!head) return;
    const kind = head.over ? 'o' : 'u';
    counts[kind]++;
    const whole = group.length === bases.length && new Set(group.map(({ meets }) => meets)).size === bases.length;
    if (head.over) {
      strokeFrom = lastPass;
      lastOver = head.at;
    } else unders.push(head.at);
    lastPass = head.at;
    list.push({
      word: `${kind}${counts[kind]}${whole ? '' : '-broken'}`,
      down: new Map(group.map(({ meets, y }) => [meets, y])),
    });
    group = [];
  };
  for (const crossing of model.crossings) {
    if (crossing.strand !== strand) continue;
    if (bases.includes(crossing.meets)) {
      const [head] = group;
      const full = group.some(({ meets }) => meets === crossing.meets);
      if (head && (head.over !== crossing.over || full)) close();
      group.push(crossing);
      if (group.length === bases.length) close();
    } else if (crossing.meets === strand && crossing.pass === 'later') {
      close();
      if (list.length === 0) continue;
      const stroke = crossing.there > strokeFrom && crossing.there < lastOver;
      const upright = crossing.there > (unders.at(-2) ?? 0) && crossing.there < (unders.at(-1) ?? 0);
      list.push({ word: crossing.over ? (stroke ? 's' : 's?') : upright ? 'ŝ' : 'ŝ?', down: new Map() });
    }
  }
  close();
  return list;
}
