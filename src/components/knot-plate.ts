import {
  drawModel,
  type KnotName,
  knots,
  type Stop,
  type StrandModel,
  strandModel,
  tell,
} from '../figures/strand/index.ts';
import { knotTitle, stopSentence } from '../words/knot-stages.ts';
import { capital } from '../words/numbers.ts';
import { strandSentences } from '../words/strand-words.ts';

/** One knot at one of its stopping points, ready for a page. */
export interface KnotStage {
  readonly knot: KnotName;
  readonly stop: Stop;
  readonly model: StrandModel;
  /** The knot's name, with a capital. */
  readonly title: string;
  /** What the maker does up to here. */
  readonly sentence: string;
  /** Which string lies over and under which, from the drawing's own lines. */
  readonly told: string;
}

/** SVG text of one plate at most, in characters; past it the marks of the twist are left out. */
export const PLATE_LIMIT = 60_000;

/** The stopping points of a knot, in the order of the work. */
export const stopsOf = (knot: KnotName): readonly Stop[] =>
  strandModel(knot, { moment: 0, crossings: false }).stops.map(({ name }) => name);

/**
 * A knot at a stopping point.
 *
 * @param strands strings of its base, 1 to 8; a knot that has no bundle takes no notice of it
 * @throws where the knot has no such knot or stopping point, with those there are
 */
export function knotStage(knot: KnotName, stop: Stop, strands = 1): KnotStage {
  if (!Object.hasOwn(knots, knot))
    throw new Error(`There is no knot '${knot}'. There are: ${Object.keys(knots).join(', ')}.`);
  if (!stopsOf(knot).includes(stop))
    throw new Error(`'${knot}' does not stop at '${stop}'. It stops at: ${stopsOf(knot).join(', ')}.`);
  const round = knots[knot].bundled ? strands : 1;
  const model = strandModel(knot, { moment: stop, strands: round });
  return {
    knot,
    stop,
    model,
    title: capital(knotTitle(knot)),
    sentence: stopSentence(knot, stop, { strands: round }),
    told: strandSentences(tell(model), { ...model, knot }).join(' '),
  };
}

/** Marks of the twist as they are drawn: a start, a bend, an end. In a page a straight mark looks the same. */
const MARK = /M(-?[\d.]+) ?(-?[\d.]+)q-?[\d.]+ ?-?[\d.]+ ?(-?[\d.]+) ?(-?[\d.]+)/g;

/** The marks of a drawing in steps from one to the next, in half the characters. */
const lean = (svg: string): string =>
  svg.replace(/ d="(M[^"]*q[^"]*)"/g, (whole, marks: string) => {
    let [x, y] = [0, 0];
    let short = '';
    const rest = marks.replace(MARK, (_mark, ...figures: string[]) => {
      const [fromX = 0, fromY = 0, wayX = 0, wayY = 0] = figures
        .slice(0, 4)
        .map((figure) => Math.round(Number(figure) * 100));
      short += `m${pair(fromX - x, fromY - y)}l${pair(wayX, wayY)}`;
      [x, y] = [fromX + wayX, fromY + wayY];
      return '';
    });
    return rest === '' ? ` d="${short}"` : whole;
  });

/** Two figures of a path, in hundredths, as short as they go. */
function pair(x: number, y: number): string {
  const [a = '', b = ''] = [x, y].map((value) => String(value / 100).replace(/^(-?)0\./, '$1.'));
  return b.startsWith('-') ? a + b : `${a} ${b}`;
}

function drawings(stages: readonly KnotStage[], id: string, twist: boolean): string[] {
  return stages.map(({ model, title, told }, index) =>
    lean(drawModel(model, { id: `${id}-${index + 1}`, twist, title, description: told })),
  );
}

const escaped = (raw: string): string => raw.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/**
 * Stages side by side, each with its sentence, as markup for a plate.
 *
 * @param id every id inside begins with it
 */
export function stagesMarkup(stages: readonly KnotStage[], id: string): string {
  const twisted = drawings(stages, id, true);
  const light = twisted.join('').length <= PLATE_LIMIT ? twisted : drawings(stages, id, false);
  const items = stages.map(({ sentence }, i) => `<li>${light[i]}<p>${escaped(sentence)}</p></li>`);
  return `<ol class="stages" role="list" data-stages="${stages.length}">${items.join('')}</ol>`;
}

/** One stage as a drawing that stands in a file of its own, with its house colours still to be filled in. */
export const stageDrawing = ({ model, title, sentence, told, knot, stop }: KnotStage): string =>
  drawModel(model, { id: `${knot}-${stop}`, title: `${title}: ${sentence}`, description: told });
