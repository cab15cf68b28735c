import type { ChartFault } from '../solver/chart-check.ts';
import type { ChartMistakeKey } from '../solver/chart-mistake.ts';
import type { Problem } from '../solver/problem.ts';
import { count, figure, type Value } from './numbers.ts';
import { problemWords } from './problems.ts';

type Say = (stands: Value, works: Value, problem: Problem) => string;

const COLOUR_LINE = 'Write a colour as: colour, its key, its name, its shade. For example: colour . chalk #f2ead8';

/** What stands in the text where the mistake is, and what would work there. */
const MISTAKES: Readonly<Record<ChartMistakeKey, Say>> = {
  'not-text': (stands) => `This is no text, but ${stands}. A chart is read from plain text.`,
  'empty-text': () => 'There is nothing here yet. Write a line for each colour, an empty line, and then the rows.',
  'unknown-line': (stands) =>
    `“${stands}” is not the beginning of a line that a chart can have. Above the rows, each line begins with chart or with colour.`,
  'no-empty-line': () => 'The rows begin right under the colours. Put an empty line between them.',
  'no-title': () => 'The title is missing. Write it after the word chart, or take this line away.',
  'second-title': () => 'There is a title already. A chart has only one, so take this line away.',
  'no-key': () => `The colour has no key. ${COLOUR_LINE}`,
  'key-not-a-key': (stands) => `“${stands}” can’t be a key. A key is one character that can be seen. ${COLOUR_LINE}`,
  'key-taken': (stands, works) => `Another colour has the key “${stands}” already. These are free: ${works}`,
  'no-name': () => `The colour has no name. ${COLOUR_LINE}`,
  'no-colour': () => `The colour has no shade. ${COLOUR_LINE}`,
  'bad-colour': (stands) => `“${stands}” is not a shade that can be read. Write it like #f2ead8 or #fea.`,
  'none-without-blank': () =>
    'Only the blank colour can have none as its shade. Write blank after it, or give it a shade like #f2ead8.',
  'unknown-mark': (stands) => `“${stands}” can’t stand here. After the shade only ground or blank can follow.`,
  'second-ground': () => 'Two colours are marked as ground. Only one can be, so take this mark away.',
  'second-blank': () => 'Two colours are marked as blank. Only one can be, so take this mark away.',
  'open-quotes': () => 'The quotes that open here are not closed. Close them on the same line.',
  'after-quotes': (stands) => `“${stands}” follows the closing quotes too soon. Put a space there, or take it away.`,
  'too-many-colours': (_, works) => `This is one colour too many. A chart has ${figure(works)} at most.`,
  'no-colours': () => `The chart has no colours. ${COLOUR_LINE}`,
  'no-rows': (_, works) => `The chart has no rows. Write one line for each row, with these characters: ${works}`,
  'empty-row': (_, works) =>
    `This row is empty. It needs ${count(works, 'character')}, like the first row. If the chart ends here, take away what follows.`,
  'unknown-key': (stands, works) => `No colour has the key “${stands}”. The keys are: ${works}`,
  'space-in-row': () => 'There is a space in this row. A row has no spaces: each character is one cell.',
  'ragged-row': (stands, works) =>
    `This row has ${count(stands, 'character')}, but the first row has ${figure(works)}. All rows need the same number.`,
  'too-narrow': (stands, works) =>
    `The rows have only ${count(stands, 'character')}. A chart is at least ${count(works, 'column')} wide.`,
  'too-wide': (stands, works) =>
    `This row has ${count(stands, 'character')}. A chart is at most ${count(works, 'column')} wide.`,
  'too-high': (stands, works) => `The chart has ${count(stands, 'row')}. It can have ${figure(works)} at most.`,
};

const colourNumber =
  (text: (name: string) => string): Say =>
  (_stands, _works, { values }) =>
    text(`Colour ${figure(values['entry'])}`);

/** What is wrong with a chart that comes from somewhere else than a text. */
const FAULTS: Readonly<Record<ChartFault, Say>> = {
  'title-not-text': () => 'The chart’s title is no text. Give it a title in words, or none.',
  'palette-not-a-list': () => 'The chart has no list of colours. It needs one to 32 of them.',
  'entry-not-an-entry': colourNumber((name) => `${name} is no colour. It needs a name and a shade.`),
  'name-not-text': colourNumber((name) => `${name} has no name. Give it one in words.`),
  'colour-not-a-colour': colourNumber((name) => `${name} has no shade that can be read. Write it like #f2ead8.`),
  'mark-not-a-mark': colourNumber(
    (name) => `${name} is marked in a way that can’t be read. Mark it as ground, as blank, or not at all.`,
  ),
  'both-ground-and-blank': colourNumber((name) => `${name} is both ground and blank. It can only be one of them.`),
  'second-ground': colourNumber((name) => `${name} is the second one marked as ground. Only one can be.`),
  'second-blank': colourNumber((name) => `${name} is the second one marked as blank. Only one can be.`),
  'key-not-a-key': colourNumber(
    (name) => `${name} has a key that can’t be used. A key is one character that can be seen.`,
  ),
  'key-taken': colourNumber((name) => `${name} has the same key as another colour. Each colour needs its own.`),
  'cells-not-bytes': () => 'The chart’s cells can’t be read. Open the chart again from its file.',
  'cells-count': (stands, works) =>
    `The chart has ${count(stands, 'cell')}, but its width and height need ${figure(works)}.`,
  'index-outside-palette': (_, works, { row, values }) =>
    `The cell in row ${figure(row)}, column ${figure(values['column'])} has a colour that the chart has not got. Its colours are numbered 0 to ${figure(works)}.`,
};

/**
 * What is wrong with a chart and what would work, after its place in the text where it has one:
 * 'Line 4, character 7: …'. Any other problem is told as `problemWords` tells it.
 *
 * @param withPlace false where the place is shown already, as in a list of a file's mistakes
 */
export function chartWords(
  problem: Problem & { readonly line?: number; readonly column?: number },
  withPlace = true,
): string {
  const { mistake, stands, works } = problem.values;
  const { line, column } = problem;
  if (problem.code !== 'chart-mistake') return problemWords(problem);
  const say = line === undefined ? FAULTS[mistake as ChartFault] : MISTAKES[mistake as ChartMistakeKey];
  const place = line === undefined || !withPlace ? '' : `Line ${figure(line)}, character ${figure(column)}: `;
  return `${place}${say(stands, works, problem)}`;
}
