import { bundleName, type ToldKnot } from './knot-stages.ts';
import { capital, count, list, numberWord, type Values } from './numbers.ts';

/** What one cord does at one place. */
export interface ToldStep {
  readonly key: keyof typeof STEPS;
  readonly values: Values;
}

/** A figure of cords, as far as words need it. */
export interface ToldFigure {
  readonly knot: ToldKnot;
  readonly strands: readonly { readonly id: string; readonly role: string }[];
}

const CORDS: Readonly<Record<string, string>> = {
  leading: 'the leading string',
  base: 'the base string',
  fold: 'the fold',
  bar: 'the bar',
  ring: 'the ring',
  lone: 'the lone string',
  resting: 'the resting string',
  freed: 'the freed string',
  joining: 'the string that is taken in',
  single: 'the single string',
  neighbour: 'the string beside the edge',
  new: 'the new leading string',
  old: 'the old leading string',
  'left-cord': 'the left string',
  'right-cord': 'the right string',
};

/** What the strings of a base are, by what they are called as one. */
const STRINGS: Readonly<Record<string, string>> = {
  bundle: 'of the bundle',
  core: 'of the core',
  edge: 'at the edge',
  base: 'of the base',
};

const isBase = ({ role, id }: { readonly id: string; readonly role: string }): boolean =>
  role === 'base' && /^base(-\d+)?$/.test(id);

/** A cord's name in a sentence, from its id: 'the leading string', 'string 2 of the bundle'. */
export function cordName(id: Values[string] | undefined, { knot }: ToldFigure): string {
  const number = /^base-(\d+)$/.exec(String(id))?.[1];
  return number ? `string ${number} ${STRINGS[bundleName(knot)]}` : (CORDS[String(id)] ?? '?');
}

/** What one of the strings that hang together is called: 'a string of the bundle', 'a string at the edge'. */
export const oneOfBundle = ({ knot }: ToldFigure): string => `a string ${STRINGS[bundleName(knot)]}`;

/** What they are called together: 'the strings of the bundle'. */
export const allOfBundle = ({ knot }: ToldFigure): string => `the strings ${STRINGS[bundleName(knot)]}`;

function strings(values: Values, figure: ToldFigure): string {
  const all = figure.strands.filter(isBase).length;
  const number = values['count'];
  return number === all
    ? `all ${count(number, 'string')} ${STRINGS[bundleName(figure.knot)]}`
    : `${count(number, 'string')} ${STRINGS[bundleName(figure.knot)]}`;
}

const COMES: Readonly<Record<string, string>> = {
  top: 'comes from above',
  bottom: 'comes from below',
  left: 'comes from the left',
  right: 'comes from the right',
  inside: 'begins with a cut end that you can see',
};
const LEAVES: Readonly<Record<string, string>> = {
  top: 'leaves upwards',
  bottom: 'hangs down',
  left: 'leaves to the left',
  right: 'leaves to the right',
  inside: 'ends with a cut end that you can see',
};

type Say = (values: Values, figure: ToldFigure) => string;

const STEPS = {
  starts: ({ side }) => COMES[String(side)] ?? '?',
  'passes-over': ({ meets }, figure) => `over ${cordName(meets, figure)}`,
  'passes-under': ({ meets }, figure) => `under ${cordName(meets, figure)}`,
  'passes-over-bundle': (values, figure) => `over ${strings(values, figure)}`,
  'passes-under-bundle': (values, figure) => `under ${strings(values, figure)}`,
  'passes-over-itself': () => 'over itself',
  'passes-under-itself': () => 'under itself',
  ends: ({ side }) => LEAVES[String(side)] ?? '?',
} satisfies Record<string, Say>;

const say = ({ key, values }: ToldStep, figure: ToldFigure): string => (STEPS[key] as Say)(values, figure);

/** What only hangs or lies there, before the cords that are worked with. */
function standing(figure: ToldFigure): string[] {
  const bases = figure.strands.filter(isBase).length;
  const there = [
    ...(figure.strands.some(({ id }) => id === 'bar') ? ['The bar lies across.'] : []),
    ...(figure.strands.some(({ id }) => id === 'ring') ? ['The wire of the ring lies across.'] : []),
    ...(figure.strands.some(({ id }) => id === 'neighbour') ? ['The string beside the edge hangs straight down.'] : []),
  ];
  if (bases === 1) there.push('The base string hangs straight down.');
  else if (bases > 1)
    there.push(
      `${capital(numberWord(bases))} strings ${STRINGS[bundleName(figure.knot)]} hang straight down, counted from the left.`,
    );
  return there;
}

/**
 * A figure of cords in words, sentence by sentence: what hangs there, and for every cord that meets another where it
 * comes from, what it passes over and under in order along it, and where it leaves.
 *
 * @example
 * strandSentences(tell(model), model)
 * // ['The base string hangs straight down.', 'The leading string comes from the left. It passes over …']
 */
export function strandSentences(told: readonly ToldStep[], figure: ToldFigure): string[] {
  const cords: ToldStep[][] = [];
  for (const step of told) {
    if (step.key === 'starts') cords.push([]);
    cords.at(-1)?.push(step);
  }
  return [
    ...standing(figure),
    ...cords.map((steps) => {
      const [first, ...rest] = steps;
      const last = rest.pop();
      if (!first || !last) return '';
      const passes = rest.map((step) => say(step, figure));
      const between =
        passes.length > 0 ? ` It passes ${list(passes.map((pass, i) => (i > 0 ? `then ${pass}` : pass)))}.` : '';
      return `${capital(cordName(first.values['strand'], figure))} ${say(first, figure)}.${between} It ${say(last, figure)}.`;
    }),
  ];
}
