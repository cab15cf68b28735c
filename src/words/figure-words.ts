import { capital, count, figure, list, noun, type Values } from './numbers.ts';
import { length, type UnitSystem } from './units.ts';

/** A sentence or label from its figures. */
type Words = Readonly<Record<string, (values: Values) => string>>;

const folds = ({ folds: number, over }: Values): string => `${count(number, 'fold')}${over ? ' + 1' : ''}`;
const side = ({ side: name }: Values): string => (name === 'left' ? 'left' : 'right');

/** 'a single string' or 'a bundle of 6'. */
const edge = (bundle: Values[string] | undefined): string =>
  bundle === 1 ? 'a single string' : `a bundle of ${figure(bundle)}`;

/** What stands at the two edges of a row. */
const edges = ({ left, right }: Values): string =>
  left === right
    ? left === 1
      ? 'a single string at either edge'
      : `${edge(left)} at either edge`
    : `${edge(left)} on the left and ${edge(right)} on the right`;

/** The bar: titles, sentences, and the labels in the drawing. */
export const barWords = {
  'bar-capacity': ({ width, capacity }) =>
    `Every place of a bar that takes ${figure(capacity)} is taken; the chart is ${count(width, 'column')} wide.`,
  'bar-shared': ({ width, capacity }) =>
    `Half of the spare strings on each side, before anything is borrowed: ${count(width, 'column')} on a bar that takes ${figure(capacity)}.`,
  'bar-fitted': ({ width, capacity }) => `How ${count(width, 'column')} fit a bar that takes ${figure(capacity)}.`,
  'bar-on-bar': ({ onBar, folds: number, lone }) =>
    `On the bar ${onBar === 1 ? 'hangs' : 'hang'} ${count(onBar, 'string')}: ${count(number, 'fold')}${lone ? ' and a lone string' : ''}.`,
  'bar-empty': ({ empty, idle }) =>
    idle
      ? 'One place of the bar stays idle, at the end where row 1 ends, because width and capacity are not both even or both odd.'
      : `${count(empty, 'place')} of the bar ${empty === 1 ? 'is' : 'are'} not needed and ${empty === 1 ? 'stays' : 'stay'} empty.`,
  'bar-spare': ({ spare, width }) =>
    `Of the ${count(width, 'column')}, ${figure(spare)} have no place on the bar: those are the spare strings.`,
  'bar-no-spare': () => 'No string is spare, so nothing hangs beside the bar.',
  'bar-side': ({ strings, folds: number, over, ...values }) =>
    `On the ${side(values)}, ${count(strings, 'string')} through the ring beside the bar: ${
      over
        ? `${count(number, 'fold')} and one string over. A fold gives two strings, so the one over has no partner.`
        : `${count(number, 'fold')}, every string with its partner.`
    }`,
  'bar-borrowed': ({ borrowed, left, right }) =>
    left === 1 && right === 1
      ? 'Two places of the bar are given up, one at each end: those two strings hang beside the bar, one on each side, so that each side is even.'
      : `${count(borrowed, 'place')} of the bar ${borrowed === 1 ? 'is' : 'are'} given up: ${figure(left)} on the left and ${figure(right)} on the right.`,
  'bar-carried': (values) =>
    `One strand of the ${side(values)} side is a carried end: it rides in the bundle and has no column.`,
  'label-bar-takes': ({ capacity }) => `bar takes ${figure(capacity)}`,
  'label-on-bar': ({ onBar }) => `${figure(onBar)} on the bar`,
  'label-strings': ({ strings }) => count(strings, 'string'),
  'label-folds': folds,
  'label-spare': ({ spare }) => `${figure(spare)} spare`,
  'label-borrowed': ({ borrowed }) => `${figure(borrowed)} borrowed`,
  'label-empty': ({ empty, idle }) => `${figure(empty)} ${idle ? 'idle' : 'empty'}`,
  'label-carried': () => '1 carried end',
} satisfies Words;

/** The chart with its outline. */
export const outlineFigureWords = {
  outline: ({ width, height }) =>
    `The outline of a piece ${count(width, 'column')} wide and ${count(height, 'row')} high.`,
  'outline-rows': ({ from, to }) =>
    from === to ? `Row ${figure(from)} is drawn.` : `Rows ${figure(from)} to ${figure(to)} are drawn.`,
  'outline-first-row': ({ knots, ...values }) => `Row 1 has ${count(knots, 'knot')}, with ${edges(values)}.`,
  'outline-full': ({ row, rows, width }) =>
    row === 1
      ? `The piece has its full width of ${count(width, 'column')} from row 1, for ${count(rows, 'row')}.`
      : `It widens until it has its full width of ${count(width, 'column')} in row ${figure(row)}, and keeps it for ${count(rows, 'row')}.`,
  'outline-never-full': ({ width }) => `No row has the full width of ${count(width, 'column')}.`,
  'outline-closing': ({ row }) => `From row ${figure(row)} on it takes strings in and narrows.`,
  'outline-last-row': ({ row, knots, ...values }) =>
    `Row ${figure(row)}, the last, has ${count(knots, 'knot')}, with ${edges(values)}.`,
  'outline-corners': ({ corners }) =>
    corners === 0
      ? 'There are no corner cells.'
      : `${count(corners, 'corner cell')} ${corners === 1 ? 'lies' : 'lie'} outside the outline: no knot is tied there.`,
  'outline-row': ({ row, knots, side: name, ...values }) =>
    `Row ${figure(row)} is marked: ${count(knots, 'knot')}, with ${edges(values)}. It begins on the ${side({ side: name ?? '' })}.`,
} satisfies Words;

/** The finished picture. */
export const chartFigureWords = {
  chart: ({ title, width, height }) =>
    `${title ? `${title}, finished` : 'The finished piece'}: ${count(width, 'column')} wide and ${count(height, 'row')} high.`,
  'chart-alone': ({ title, width, height }) =>
    `${title || 'A chart'}: ${count(width, 'column')} wide and ${count(height, 'row')} high.`,
  'chart-colours': ({ colours }) => `Its colours: ${list(String(colours).split(', '))}.`,
  'chart-plain': () => 'The shape is drawn plain, since there is no chart.',
} satisfies Words;

const turning = (knot: Values[string] | undefined): boolean => String(knot).includes('-');

/** A place of work, by the strings to its left and right. */
const between = (at: Values[string] | undefined, width: Values[string] | undefined): string =>
  at === 0
    ? 'left of all strings'
    : at === width
      ? 'right of all strings'
      : `between strings ${figure(at)} and ${figure(Number(at) + 1)}`;

const MOVES: Words = {
  'let-out': (values) =>
    `First, the innermost string of the ${side(values)} bundle passes behind the leading string to its inner side.`,
  'take-in': (values) =>
    `First, the next string passes behind the leading string to its outer side and joins the ${side(values)} bundle.`,
  'carry-behind': (values) =>
    `First, the leading string is carried behind the two edge strings on the ${side(values)}, to their inner side.`,
};

/** One row, knot by knot. */
export const rowFigureWords = {
  row: ({ row, knots, begins }) =>
    `Row ${figure(row)}: ${count(knots, 'knot')}, beginning on the ${side({ side: begins ?? '' })}.`,
  'row-so-far': ({ tied, knots }) =>
    tied === 0 ? 'No knot of it is tied yet.' : `${figure(tied)} of ${figure(knots)} knots are tied so far.`,
  'row-moves': ({ move, ...values }) => MOVES[String(move)]?.(values) ?? '',
  'row-freed': ({ column, ...values }) => `String ${figure(column)} leaves the ${side(values)} bundle.`,
  'row-taken-in': ({ bundle, ...values }) =>
    `The ${side(values)} bundle takes a string in and has ${figure(bundle)} now.`,
  'row-run': ({ knot, count: number, strands, from, to, colour }) =>
    `${from === to ? `Column ${figure(from)}` : `Columns ${figure(from)} to ${figure(to)}`}: ${count(number, `${knot} knot`)}${
      strands === 1 ? '' : ` round the bundle of ${count(strands, 'string')}`
    }${colour ? ` in ${colour}` : ''}.`,
  'row-leading': ({ start, at, width }) =>
    `The leading string starts ${between(start, width)} and is now ${between(at, width)}.`,
  'label-knots': ({ knot, count: number }) => (turning(knot) ? String(knot) : `${figure(number)} ${knot}`),
  'label-on-strings': ({ strands, count: number }) =>
    strands === 1 ? noun(number, 'knot') : `knot on ${count(strands, 'string')}`,
} satisfies Words;

const rowEdges = ({ row, knots, ...values }: Values): string =>
  `Row ${figure(row)}: ${count(knots, 'knot')}, with ${edges(values)}.`;

/** The first rows as a stack. */
export const openingFigureWords = {
  opening: ({ rows, width }) =>
    `The first ${rows === 1 ? 'row' : `${figure(rows)} rows`} of a piece ${count(width, 'column')} wide, one under the other.`,
  'opening-row': rowEdges,
  'opening-full': ({ row, width }) => `Row ${figure(row)} has all ${count(width, 'column')}.`,
} satisfies Words;

/** The last rows as a stack. */
export const closingFigureWords = {
  closing: ({ from, to }) =>
    from === to
      ? `Row ${figure(to)}, the last.`
      : `The last rows, ${figure(from)} to ${figure(to)}, one under the other.`,
  'closing-row': rowEdges,
  'closing-none': ({ width }) => `Nothing is taken in: the piece keeps its ${count(width, 'column')} to the end.`,
} satisfies Words;

const CUT_PLACES: Words = {
  bar: ({ count: number }) => `${count(number, 'fold')} for the bar`,
  left: ({ count: number }) => `${count(number, 'fold')}, left side`,
  right: ({ count: number }) => `${count(number, 'fold')}, right side`,
  lone: ({ count: number }) => count(number, 'lone string'),
};
const cutPlace = (values: Values): string => CUT_PLACES[String(values['place'])]?.(values) ?? '';
const unitsOf = ({ units }: Values): UnitSystem => (units === 'inches' ? 'inches' : 'metric');
const about = ({ source }: Values): string => (source === 'measured' ? '' : 'about ');

/** The strings to cut. */
export const cutStringsFigureWords = {
  'cut-strings': ({ pieces }) => `${count(pieces, 'string')} to cut, drawn to one scale.`,
  'cut-strings-piece': (values) => {
    const { low = 0, likely = 0, high = 0, place } = values;
    const units = unitsOf(values);
    const range = low === high ? '' : ` (from ${length(Number(low), units)} to ${length(Number(high), units)})`;
    return `${capital(cutPlace(values))}: ${about(values)}${length(Number(likely), units, true)}${values['count'] === 1 ? '' : ' each'}${range}, ${place === 'lone' ? 'not folded' : 'folded in half'}.`;
  },
  'label-cut': cutPlace,
  'label-cut-length': (values) => about(values) + length(Number(values['mm']), unitsOf(values), true),
  'label-length': (values) => length(Number(values['mm']), unitsOf(values)),
} satisfies Words;

/** After the last row. */
export const gatheringFigureWords = {
  gathering: ({ singles, width }) =>
    Number(width) < 4
      ? 'The end of a very narrow piece.'
      : `After the last row, ${count(singles, 'single string')} hang between the two edges.`,
  'gathering-side': ({ side: name, count: number, bundle, becomes }) =>
    `From the ${side({ side: name ?? '' })}, the next ${number === 1 ? 'single string ties a knot' : `${count(number, 'single string')} tie a knot each, one after the other,`} round ${
      bundle === 1 ? 'the edge string' : `the bundle of ${figure(bundle)}`
    }, which grows to ${figure(becomes)}.`,
  'gathering-laid': (values) =>
    `The middle one of the last three is laid, unknotted, against the bundle on the ${side(values)}.`,
  'gathering-behind': ({ side: name, column }) =>
    `String ${figure(column)} passes behind the ${side({ side: name ?? '' })} bundle to its outer side.`,
  'gathering-square': () => 'These two tie square knots round both bundles.',
  'gathering-too-few': ({ width }) => `The ${count(width, 'string')} are tied together: there are too few to gather.`,
  'label-gathered': ({ count: number }) => `${figure(number)} gathered`,
  'label-middle': () => 'the last two tie',
} satisfies Words;

/** Why an odd side can't be made of folds. */
export const foldsWhyFigureWords = {
  'folds-why': ({ odd, even }) =>
    `Why a side of ${figure(odd)} can’t be made of folds, and a side of ${figure(even)} can.`,
  'folds-why-one': () => 'One cut string, folded in half over the ring, gives two base strings.',
  'folds-why-odd': ({ strings, folds: number }) =>
    `A side of ${figure(strings)} would be ${count(number, 'fold')} and one string over, which has no partner.`,
  'folds-why-even': ({ strings, folds: number }) =>
    `A side of ${figure(strings)} is ${count(number, 'fold')}, and every string has its partner.`,
  'label-one-string': () => 'one cut string',
  'label-two-ends': ({ strings }) => `folded: ${count(strings, 'string')}`,
  'label-side-of': ({ strings }) => `a side of ${figure(strings)}`,
  'label-side-folds': folds,
} satisfies Words;

/** Every sentence and label of every figure. */
export const figureWords = {
  ...barWords,
  ...outlineFigureWords,
  ...chartFigureWords,
  ...rowFigureWords,
  ...openingFigureWords,
  ...closingFigureWords,
  ...cutStringsFigureWords,
  ...gatheringFigureWords,
  ...foldsWhyFigureWords,
};
