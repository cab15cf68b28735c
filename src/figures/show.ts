import type { DrawnUnits, Figure, Words } from './drawing.ts';
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
  /** The drawing; of a figure that tells lengths both, first in metric units and then in inches, for the switch to show one. */
  readonly svg: string;
  readonly title: string;
  /** The same content in words, from the same data. */
  readonly description: string;
  /** The same in inches, where it tells lengths. */
  readonly inInches?: string;
  /** The description, sentence by sentence. */
  readonly steps: readonly string[];
}

/** Draws one figure of a plan, and puts it into words. One that tells lengths is drawn in both units unless one is asked for. */
export function showFigure<Options extends object, Key extends string, Needs>(
  figure: Figure<string, Options, Key, Needs>,
  plan: Needs,
  options: Options | undefined,
  show: ShowOptions<Key>,
): DrawnFigure {
  if (!figure.measures || (options && 'units' in options)) return drawOnce(figure, plan, options, show);
  const [metric, inches] = (['metric', 'inches'] as const).map((units) => {
    const { id } = show;
    const drawn = drawOnce(figure, plan, { ...options, units } as unknown as Options, {
      ...show,
      id: units === 'metric' ? id : `${id}-${units}`,
    });
    return { ...drawn, svg: drawn.svg.replace('<svg', `<svg data-units="${units satisfies DrawnUnits}"`) };
  }) as [DrawnFigure, DrawnFigure];
  return { ...metric, svg: metric.svg + inches.svg, inInches: inches.description };
}

function drawOnce<Options extends object, Key extends string, Needs>(
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
