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

/** What says how an answer was judged; it comes with the judge. */
export const verdicts = later(() => import('../../words/exercises/verdict-words.ts'));
