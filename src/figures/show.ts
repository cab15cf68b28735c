import type { Figure, Words } from './drawing.ts';
import { toSvg } from './svg.ts';

export interface ShowOptions<Key extends string> {
  /** Unique in the page: every id of the drawing begins with it. */
  readonly id: string;
  /** A sentence or label for every key of the figure. */
  readonly words: Words<Key>;
  /** Ids of a title and description that the page has itself; the drawing then holds none of its own. */
  readonly labelledBy?: string | undefined;
}

export interface DrawnFigure {
  readonly svg: string;
  readonly title: string;
  /** The same content in words, from the same data. */
  readonly description: string;
  /** The description, sentence by sentence. */
  readonly steps: readonly string[];
}

/** Draws one figure of a plan, and puts it into words. */
export function showFigure<Options extends object, Key extends string, Needs>(
  figure: Figure<string, Options, Key, Needs>,
  plan: Needs,
  options: Options | undefined,
  { id, words, labelledBy }: ShowOptions<Key>,
): DrawnFigure {
  const [title = '', ...steps] = figure.describe(plan, options).map(({ key, values }) => words[key](values));
  const description = steps.join(' ');
  return {
    svg: toSvg(figure.name, figure.draw(plan, options), { id, words, title, description, labelledBy }),
    title,
    description,
    steps,
  };
}
