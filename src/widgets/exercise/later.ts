import type { KindName } from '../../solver/exercises/contract.ts';
import type { KindView } from './view.ts';

/** A part of a kind that comes when it is first needed. */
export interface Later<Part> {
  /** Fetches it; once is enough. */
  readonly ready: () => Promise<Part>;
  /** What has come; undefined before that. */
  readonly part: () => Part | undefined;
}

export function later<Part>(fetching: () => Promise<Part>): Later<Part> {
  let part: Part | undefined;
  return {
    ready: async () => {
      part ??= await fetching();
      return part;
    },
    part: () => part,
  };
}

/** What says how figures and cells were judged; it comes with the first check. */
export const verdicts = later(() => import('../../words/exercises/verdict-words.ts'));

/** A judge that is fetched before it is asked: until it has come nothing can be read. */
export const judgeLater =
  <K extends KindName>(fetched: Later<{ readonly judge: KindView<K>['judge'] }>): KindView<K>['judge'] =>
  (problem, answer, options) =>
    fetched.part()?.judge(problem, answer, options) ?? { outcome: 'unreadable', fields: {}, first: null };
