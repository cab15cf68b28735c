import { LONGEST_FREE_FLOAT } from '../../thread/free-float.ts';
import { rowEnds, sumIn } from '../whole-piece.ts';
import type { ChoiceSlip } from './missteps.ts';
import type { Choices, ChooseAsk, ChooseProblem } from './problem.ts';

/** The question without what can be chosen, which follows from it. */
export type Question = Omit<ChooseProblem, 'choices'>;

/** What a learner picks who makes this slip. */
type Pick<A extends ChooseAsk> = readonly [choice: Choices[A], slip: ChoiceSlip];
/** What a maker picks, and after it what learners pick by their slips. Each choice stands here once. */
export type Picks<A extends ChooseAsk> = readonly [right: Choices[A], ...slipped: Pick<A>[]];

/** In an odd row the way of row 1 is right, and who has the other one has counted on. */
const wayTurned = (row: number): ChoiceSlip => (row % 2 === 0 ? 'direction-not-swapped' : 'row-late');

function turningKnot(question: Question): Picks<'turning-knot'> {
  const { startBundle, endBundle, turnsAtStart } = rowEnds(question);
  if (Math.max(startBundle, endBundle) > 1)
    return ['both-bundles', ['none', 'ordinary-knot-on-bundle'], ['every-edge-string', 'turning-knot-on-edge-string']];
  return turnsAtStart
    ? ['starting-string', ['none', 'last-string-forgotten'], ['every-edge-string', 'turning-knot-on-edge-string']]
    : ['none', ['starting-string', 'turning-knot-kept'], ['every-edge-string', 'turning-knot-on-edge-string']];
}

function leadingString(question: Question): Picks<'leading-string'> {
  const { start, end, endBundle } = rowEnds(question);
  const inside = endBundle > 1;
  return inside
    ? [`${end}-inner`, [`${start}-inner`, wayTurned(question.row)], [`${end}-outer`, 'leading-string-outside']]
    : [`${end}-outer`, [`${start}-outer`, wayTurned(question.row)], [`${end}-inner`, 'leading-string-inside']];
}

function firstMove(question: Question): Picks<'first-move'> {
  switch (rowEnds(question).move) {
    case 'let-out':
      return ['let-out', ['none', 'turned-before-freeing'], ['take-in', 'moves-mixed-up']];
    case 'take-in':
      return [
        'take-in',
        ['carry-behind', 'carried-though-inside'],
        ['none', 'turned-before-taking-in'],
        ['let-out', 'moves-mixed-up'],
      ];
    case 'carry-behind':
      return [
        'carry-behind',
        ['take-in', 'joined-though-outside'],
        ['none', 'turned-before-taking-in'],
        ['let-out', 'moves-mixed-up'],
      ];
    case 'none':
      return ['none', ['let-out', 'moved-without-need'], ['take-in', 'moves-mixed-up']];
  }
}

/** The picks of each question, by the rules of the craft (sections 3 to 9). */
const PICKS: { readonly [A in ChooseAsk]: (question: Question) => Picks<A> } = {
  'knot-direction': (question) => {
    const right = rowEnds(question).start === 'left' ? 'forward' : 'backward';
    return [
      right,
      [right === 'forward' ? 'backward' : 'forward', wayTurned(question.row)],
      ['in-turn', 'knots-alternated'],
    ];
  },
  'edge-knot': ({ side }) => {
    const right = side === 'right' ? 'forward-backward' : 'backward-forward';
    const swapped = side === 'right' ? 'backward-forward' : 'forward-backward';
    return [right, [swapped, 'turning-knots-swapped'], ['ordinary', 'ordinary-knot-on-bundle']];
  },
  'turning-knot': turningKnot,
  'leading-string': leadingString,
  'first-move': firstMove,
  'let-out': () => ['innermost', ['outermost', 'outermost-let-out'], ['two', 'two-let-out']],
  'corner-cells': () => [
    'outside-the-knot',
    ['all-of-the-bundle', 'corner-cells-s-a-side'],
    ['inside-the-edge', 'bundle-knot-outermost'],
  ],
  'closing-end': () => ['last-row', ['ring', 'closing-from-wrong-end'], ['full-width', 'closing-after-opening']],
  'bundle-knot': () => ['one', ['strings', 'bundle-counted-as-strings'], ['nothing', 'bundle-not-counted']],
  borrow: (question) =>
    sumIn(question).parity === 1
      ? ['two', ['one', 'one-borrowed'], ['four', 'four-borrowed'], ['none', 'odd-side-left-odd']]
      : ['none', ['two', 'borrowed-though-even'], ['one', 'one-borrowed']],
  'odd-half': () => [
    'one-from-the-bar',
    ['left-odd', 'odd-side-left-odd'],
    ['one-less', 'odd-side-rounded-down'],
    ['bar-kept', 'sides-raised-bar-kept'],
  ],
  'fold-or-string': () => [
    'half-as-many-folds',
    ['as-many-folds', 'strings-counted-as-folds'],
    ['single-strings', 'singles-cut'],
    ['short-folds', 'not-doubled'],
  ],
  'safe-sheet': () => ['low', ['likely', 'likely-trusted'], ['high', 'most-on-bar']],
  'rows-length': () => ['pitch-and-more', ['centimetres', 'rows-in-centimetres'], ['pitch-alone', 'take-up-forgotten']],
  float: ({ span }) =>
    span > LONGEST_FREE_FLOAT
      ? ['catch', ['leave', 'long-float-left'], ['pull-tight', 'float-pulled-tight'], ['end', 'ended-too-soon']]
      : ['leave', ['catch', 'caught-without-need'], ['pull-tight', 'float-pulled-tight'], ['end', 'ended-too-soon']],
  'colour-change': () => ['next-ordinary', ['turning-knot', 'joined-on-turning-knot'], ['next-row', 'colour-left-out']],
  trim: () => [
    'after-square-knots',
    ['after-last-row', 'trimmed-too-early'],
    ['after-gathering', 'trimmed-before-square-knots'],
  ],
  spiral: () => ['same-half', ['loose', 'loose-blamed'], ['uneven', 'ends-blamed']],
};

/** The picks of a question: what is right, and what each slip leads to. */
export const picksOf = (question: Question): Picks<ChooseAsk> => PICKS[question.ask](question);
