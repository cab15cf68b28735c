import type { Kept } from './log.ts';
import { isEvent } from './read-event.ts';

/** Of each slip so many happenings are kept, the newest: what came up lately can be told from them. */
export const SLIPS_KEPT = 20;

/** Which events of a group are kept: the first or the last so many, in the order of the log. */
interface Rule {
  readonly group: string;
  readonly keep: 'first' | 'last';
  readonly most?: number;
}

const first = (...group: readonly unknown[]): Rule => ({ group: `first ${JSON.stringify(group)}`, keep: 'first' });
const last = (...group: readonly unknown[]): Rule => ({ group: `last ${JSON.stringify(group)}`, keep: 'last' });

/**
 * What an event may be kept for; it stays as long as one rule wants it. Each rule is what some figure of the progress is
 * read from: whoever lets a figure depend on more adds a rule.
 */
function rulesFor(event: Kept): readonly Rule[] | null {
  // Of a later version, or not to be read: somebody else may know what it is good for.
  if (!isEvent(event)) return null;
  const { act } = event;
  switch (act) {
    case 'opened':
    case 'read':
      return [first(act, event.lesson)];
    case 'ticked':
      return [last(act, event.lesson, event.check), ...(event.on ? [first(act, 'on', event.lesson)] : [])];
    case 'chosen':
      return [first(act, event.skill), last(act, event.skill)];
    case 'tried': {
      const { exercise, seed, skills, lesson, outcome } = event;
      // The first with its figures tells something of a skill, and the last when an exercise was tried.
      const figures = [first(act, exercise, seed, skills), last(act, exercise)];
      return outcome === 'right' ? [...figures, first('right', exercise), first('worked', lesson)] : figures;
    }
    case 'slipped':
      return event.slips.map((slip) => ({ group: `slip ${slip}`, keep: 'last', most: SLIPS_KEPT }));
  }
}

/**
 * The events that some figure of the progress is read from; repeats, and old happenings of a slip, go. Only the first or
 * the last few of a group are ever kept for a rule, and these are the same whether parts of the log were gone through
 * before or not: compacting what was compacted, or a part of it, changes nothing.
 *
 * @param events in the order of a log
 */
export function compact(events: readonly Kept[]): readonly Kept[] {
  const kept = new Set<Kept>();
  const groups = new Map<string, number>();
  const go = (order: readonly Kept[], keep: Rule['keep']) => {
    for (const event of order) {
      const rules = rulesFor(event);
      if (rules === null) kept.add(event);
      for (const { group, most = 1, ...rule } of rules ?? []) {
        const there = groups.get(group) ?? 0;
        if (rule.keep !== keep || there >= most) continue;
        groups.set(group, there + 1);
        kept.add(event);
      }
    }
  };
  go(events, 'first');
  go(events.toReversed(), 'last');
  return events.filter((event) => kept.has(event));
}
