import { syllable } from 'syllable';
import { type Condition, holds } from '../../src/solver/conditions.ts';
import { type CutFigure, cutFigure } from '../../src/solver/cut-figures.ts';
import { type FigureName, namedFigure, namedRow } from '../../src/solver/named-figures.ts';
import type { Plan } from '../../src/solver/plan.ts';
import { isRingLength, type RingFigure, ringFigure } from '../../src/solver/ring-figures.ts';
import type { Thread } from '../../src/solver/thread/index.ts';
import { type FigureForm, figureText } from '../../src/words/figure-text.ts';
import { numberWord } from '../../src/words/numbers.ts';
import { lengthRange, measuredLengths } from '../../src/words/units.ts';

/** A block of a lesson as it is written: its name, what the writer set, and what stands inside. */
export interface Block {
  readonly tag: string;
  readonly set: Readonly<Record<string, unknown>>;
  readonly inside: readonly Part[];
  /** Line of the file, from 1. */
  readonly line: number;
}
export type Part = string | Block;

const TAG = /<(\/?)([A-Z]\w*)((?:\s+[\w-]+(?:=(?:"[^"]*"|\{[^}]*\}))?)*)\s*(\/?)>/g;
const SETTING = /([\w-]+)(?:=(?:"([^"]*)"|\{([^}]*)\}))?/g;

/** `{3}`, `{true}` and `{['spare', 'onBar']}`: a lesson holds figures and lists of names, no code. */
const settingOf = (code: string): unknown => JSON.parse(code.replaceAll("'", '"'));

const settings = (text: string): Record<string, unknown> =>
  Object.fromEntries(
    [...text.matchAll(SETTING)].map(([, name, words, code]) => [
      name,
      words ?? (code === undefined ? true : settingOf(code)),
    ]),
  );

/** The body of a lesson's file, after its front matter, as text and blocks. */
export function partsOf(file: string): readonly Part[] {
  const from = file.indexOf('\n---\n', 4) + 5;
  const lineAt = (place: number): number => file.slice(0, place).split('\n').length;
  const open: { tag: string; set: Record<string, unknown>; inside: Part[]; line: number }[] = [
    { tag: '', set: {}, inside: [], line: 1 },
  ];
  const top = () => open.at(-1) as (typeof open)[number];
  let done = from;
  TAG.lastIndex = from;
  for (let found = TAG.exec(file); found; found = TAG.exec(file)) {
    const [whole, closing, tag = '', set = '', alone] = found;
    top().inside.push(file.slice(done, found.index));
    done = found.index + whole.length;
    if (closing) {
      const ended = open.pop();
      if (ended?.tag !== tag) throw new Error(`line ${lineAt(found.index)}: </${tag}> ends <${ended?.tag}>`);
      top().inside.push(ended);
    } else {
      const block = { tag, set: settings(set), inside: [], line: lineAt(found.index) };
      if (alone) top().inside.push(block);
      else open.push(block);
    }
  }
  top().inside.push(file.slice(done));
  const [whole, unclosed] = open;
  if (!whole || unclosed) throw new Error(`line ${unclosed?.line}: <${unclosed?.tag}> has no end`);
  return whole.inside;
}

/** Every block, those inside others too. */
export function* blocksIn(parts: readonly Part[]): Generator<Block> {
  for (const part of parts) {
    if (typeof part === 'string') continue;
    yield part;
    yield* blocksIn(part.inside);
  }
}

/** What a lesson is read with. */
export interface Reading {
  readonly plan: Plan;
  readonly thread: Thread;
  /** The plan of a worked example that a figure asks for by its id. */
  readonly planOf: (example: string) => Plan;
}

/** The figure that an `<N>` shows, or null where this piece has none. */
export function numberOf({ set }: Block, { plan, planOf }: Reading): number | null {
  const own = typeof set['example'] === 'string' ? planOf(set['example']) : plan;
  const row = namedRow(own, set['row'] as number | FigureName | undefined, (set['after'] as number | undefined) ?? 0);
  return namedFigure(own, set['of'] as FigureName, row);
}

/** In place of a figure that the piece has not got. */
export const NO_FIGURE = '[no such figure]';

/** Marks the beginning of a point in the running text. */
const POINT = '\u2022';

function textOf(part: Part, reading: Reading, without: readonly string[]): string {
  if (typeof part === 'string') return part;
  const { tag, set, inside } = part;
  const within = (): string => inside.map((each) => textOf(each, reading, without)).join('');
  switch (tag) {
    case 'N': {
      const value = numberOf(part, reading);
      return value === null
        ? NO_FIGURE
        : figureText(value, (set['as'] as FigureForm | undefined) ?? 'digits', set['unit'] as string | undefined);
    }
    case 'Length': {
      const length = cutFigure(reading.plan, reading.thread, set['of'] as CutFigure);
      return length === null ? NO_FIGURE : lengthRange(length, 'metric', true);
    }
    case 'Ring': {
      const of = set['of'] as RingFigure;
      const value = ringFigure(reading.plan, reading.thread, null, of);
      return isRingLength(of)
        ? measuredLengths(value).metric
        : figureText(value, 'digits', set['unit'] as string | undefined);
    }
    case 'Term':
    case 'Motion':
      return within();
    case 'When':
      return holds(reading.plan, set['is'] as Condition) ? within() : '';
    // A reader sees none of these.
    case 'FrameHere':
    case 'RoomOnly':
    case 'SpeakerNotes':
      return '';
    case 'ReadersOnly':
      return within();
    default:
      return `\n\n${without.includes(tag) ? '' : within()}\n\n`;
  }
}

/** A paragraph, or a point of a list. */
export interface Passage {
  readonly text: string;
  readonly point: boolean;
}

/**
 * The running text of a lesson as this piece shows it, without its headings.
 *
 * @param without blocks that are left out, by their names
 */
export function passagesOf(parts: readonly Part[], reading: Reading, without: readonly string[] = []): Passage[] {
  return parts
    .map((part) => textOf(part, reading, without))
    .join('')
    .replace(/^#+ .*$/gm, '')
    .replace(/^ *(?:[-*]|\d+\.) +/gm, `\n\n${POINT}`)
    .split(/\n[ \t]*\n/)
    .map((passage) => passage.replace(/[*_]/g, '').replace(/\s+/g, ' ').trim())
    .filter((passage) => passage !== '')
    .map((passage) => ({ text: passage.replace(POINT, ''), point: passage.startsWith(POINT) }));
}

const sentences = new Intl.Segmenter('en', { granularity: 'sentence' });

/** Words as a reader counts them: what stands between blanks, a hyphened word once. */
const wordsIn = (text: string): string[] => text.split(' ').filter((word) => /[\p{L}\p{N}]/u.test(word));

const TENS = ['', 'ten', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** A number below a hundred as it is spoken; a larger one is read figure by figure. */
const spoken = (digits: string): string => {
  const value = Number(digits);
  if (value > 99 || digits.includes('.'))
    return [...digits]
      .filter((each) => each !== '.')
      .map(Number)
      .map(numberWord)
      .join(' ');
  return value < 21
    ? numberWord(value)
    : `${TENS[Math.floor(value / 10)]}${value % 10 ? ` ${numberWord(value % 10)}` : ''}`;
};

/** What the reading grade is made from. */
export function countsOf(passages: readonly Passage[]): { sentence: number; word: number; syllable: number } {
  const all = passages.flatMap(({ text }) => wordsIn(text));
  return {
    sentence: passages.reduce((sum, { text }) => sum + [...sentences.segment(text)].length, 0),
    word: all.length,
    syllable: all.reduce((sum, word) => sum + syllable(word.replace(/\d+(?:\.\d+)?/g, spoken)), 0),
  };
}
