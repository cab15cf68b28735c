import {
  drawModel,
  type KnotName,
  knots,
  type Stop,
  type StrandModel,
  strandModel,
  tell,
} from '../../figures/strand/index.ts';
import type { Hand } from '../../store/hand.ts';
import { knotTitle, stopSentence } from '../../words/knot-stages.ts';
import { capital, list } from '../../words/numbers.ts';
import { strandSentences } from '../../words/strand-words.ts';
import { lean } from './lean-drawing.ts';

/** One knot at one of its stopping points, ready for a page. */
export interface KnotStage {
  readonly knot: KnotName;
  readonly stop: Stop;
  /** The hand that ties it; `left` is the mirror image. */
  readonly hand: Hand;
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
 * @param hand `left` for the mirror image: the model's own, in lines, names and words
 * @throws where the knot has no such knot or stopping point, with those there are
 */
export function knotStage(knot: KnotName, stop: Stop, strands = 1, hand: Hand = 'right'): KnotStage {
  if (!Object.hasOwn(knots, knot))
    throw new Error(`There is no knot '${knot}'. There are: ${Object.keys(knots).join(', ')}.`);
  if (!stopsOf(knot).includes(stop))
    throw new Error(`'${knot}' does not stop at '${stop}'. It stops at: ${stopsOf(knot).join(', ')}.`);
  const round = knots[knot].bundled ? strands : 1;
  const model = strandModel(knot, { moment: stop, strands: round, handedness: hand });
  const wish = { strands: round, handedness: hand };
  return {
    knot,
    stop,
    hand,
    model,
    title: capital(knotTitle(knot, wish)),
    sentence: stopSentence(knot, stop, wish),
    told: strandSentences(tell(model), { ...model, knot }).join(' '),
  };
}

/** A few letters that stand for a plate at the beginning of the ids in it: its own name would be there a hundred times. */
const shortFor = (id: string): string =>
  `k${[...id].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 46656, 7).toString(36)}`;

/** The sentence beside a drawing and the plate's words say what is in it, so that the drawing has no more than a name. */
function drawings(stages: readonly KnotStage[], id: string, twist: boolean): string[] {
  return stages.map(({ model, title }, i) => {
    const name = stages.length > 1 ? `${title}, ${i + 1} of ${stages.length}` : title;
    return lean(drawModel(model, { id: `${shortFor(id)}${i}`, twist, title: name }));
  });
}

const escaped = (raw: string): string => raw.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** What the hands do from one stage that is shown to the next: the stopping points between them are told as well. */
export function stageSentences(stages: readonly KnotStage[]): string[] {
  return stages.map(({ knot, stop, hand, sentence, model }, i) => {
    const stops = stopsOf(knot);
    const before = stages[i - 1];
    if (stages.length === 1 || (!before && stop === 'drawn-up')) return sentence;
    if (before && before.knot !== knot) return sentence;
    const from = before ? stops.indexOf(before.stop) + 1 : Math.min(1, stops.indexOf(stop));
    const strands = model.strands.filter(({ id }) => /^base(-\d+)?$/.test(id)).length;
    return stops
      .slice(from, stops.indexOf(stop) + 1)
      .map((one) => stopSentence(knot, one, { strands, handedness: hand }))
      .join(' ');
  });
}

/** Each stage of a plate as markup: its drawing and its sentence. */
function stageItems(stages: readonly KnotStage[], id: string): string[] {
  const twisted = drawings(stages, id, true);
  const light = twisted.join('').length <= PLATE_LIMIT ? twisted : drawings(stages, id, false);
  return stageSentences(stages).map((sentence, i) => `${light[i]}<p>${escaped(sentence)}</p>`);
}

/**
 * Stages side by side, each with its sentence, as markup for a plate.
 *
 * @param id of the plate; every id inside begins with what stands for it
 */
export const stagesMarkup = (stages: readonly KnotStage[], id: string): string =>
  `<ol class="stages" role="list" data-stages="${stages.length}">${stageItems(stages, id)
    .map((item) => `<li>${item}</li>`)
    .join('')}</ol>`;

/** What a plate of knots shows. */
export interface KnotPlate {
  /** Two stand beside each other. */
  readonly knots: readonly KnotName[];
  /** Stopping points, in the order of the work. */
  readonly stages: readonly Stop[];
  /** Strings of the base, 1 to 8. */
  readonly strands: number;
}

/** The stages of a plate, knot by knot. */
export const plateStages = ({ knots: names, stages, strands }: KnotPlate, hand: Hand = 'right'): KnotStage[] =>
  names.flatMap((knot) => stages.map((stop) => knotStage(knot, stop, strands, hand)));

/** What the knots of these stages are called, once each. */
export const stageTitles = (stages: readonly KnotStage[]): string =>
  list([...new Set(stages.map(({ title }) => title))]);

/** What a plate of these stages shows, in a sentence. */
export const plateWords = (stages: readonly KnotStage[]): string =>
  `${stageTitles(stages)}, seen over your own shoulder.`;

/** Each stage in words: what the hands do, and which string lies over which. */
export function stagesTold(stages: readonly KnotStage[]): string[] {
  const sentences = stageSentences(stages);
  const several = new Set(stages.map(({ knot }) => knot)).size > 1;
  return stages.map(({ title, told }, i) => `${several ? `${title}. ` : ''}${sentences[i]} ${told}`);
}

/** A plate of knots as its blocks in a page hold it, to be put into a page that stands: part by part, in the same order. */
export function platePieces(
  plate: KnotPlate,
  id: string,
  hand: Hand,
): { readonly items: readonly string[]; readonly words: string; readonly told: readonly string[] } {
  const stages = plateStages(plate, hand);
  return { items: stageItems(stages, id), words: plateWords(stages), told: stagesTold(stages) };
}

/** One stage as a drawing that stands in a file of its own, with its house colours still to be filled in. */
export const stageDrawing = ({ model, title, sentence, told, knot, stop }: KnotStage): string =>
  drawModel(model, { id: `${knot}-${stop}`, title: `${title}: ${sentence}`, description: told });
