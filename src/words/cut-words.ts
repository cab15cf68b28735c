import type { PaletteEntry } from '../solver/chart.ts';
import type { CutPieces, PiecePlace } from '../solver/thread/index.ts';
import type { LeadingColour } from '../solver/thread/leading.ts';
import type { MakingTime } from '../solver/thread/time.ts';
import { capital, count, times } from './numbers.ts';
import { colourName } from './row-words.ts';
import { countRange, durationRange, lengthRange, sourceWord, type UnitSystem } from './units.ts';

const PLACES: Readonly<Record<PiecePlace, string>> = {
  bar: 'the bar',
  left: 'the left bundle',
  right: 'the right bundle',
  lone: 'the lone string',
};

/** Where a cut piece hangs, as a heading: 'The left bundle'. */
export const placeWords = (place: PiecePlace): string => capital(PLACES[place]);

/** One kind of piece to cut: 'Cut 7 pieces of about 1.2 m (1–1.4) for the bar, each folded in half.' */
export const cutWords = ({ place, count: pieces, length }: CutPieces, units: UnitSystem): string =>
  `Cut ${count(pieces, 'piece')} of ${lengthRange(length, units, true)} for ${PLACES[place]}, ${place === 'lone' ? 'not ' : pieces === 1 ? '' : 'each '}folded in half.`;

/** The leading string of one colour: knots, length, working lengths, and how often a new one is joined. */
export function leadingWords(
  { colour, knots, length, floatCount, floats, workingLengths, joins }: LeadingColour,
  units: UnitSystem,
  palette?: readonly PaletteEntry[] | null,
): string {
  const name = colour === null ? 'Leading string' : capital(colourName(palette, colour));
  const back = floatCount === 0 ? '' : ` Of that, ${lengthRange(floats, units)} runs along the back.`;
  const joined =
    joins.high === 0
      ? ''
      : ` You join a new one ${joins.low === joins.high ? times(joins.high) : countRange(joins, 'time')}.`;
  return `${name}: ${count(knots, 'knot')}, ${lengthRange(length, units, true)}.${back} Have ${countRange(workingLengths, 'working length')} ready.${joined}`;
}

/** Time for the whole piece and its parts. */
export const timeWords = (time: MakingTime): string =>
  `${capital(durationRange(time))} in all: ${durationRange(time.parts.knotting)} for the knots, ${durationRange(time.parts.mounting)} for mounting, ${durationRange(time.parts.finishing)} for finishing.`;

/** What an estimate is, where one stands. */
export const estimateWords = (source: 'estimate' | 'measured'): string =>
  source === 'estimate'
    ? `This is an ${sourceWord(source)}, with its range. Measure a swatch, and your own figure takes its place.`
    : 'This is measured on your own swatch.';
