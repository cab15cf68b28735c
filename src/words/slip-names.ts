import type { SlipId } from '../solver/missteps/ids.ts';
import { capital, times } from './numbers.ts';

/** Each slip by a short name, as it stands in a list without the figures of a case. */
const SLIP_NAMES: Readonly<Record<SlipId, string>> = {
  'spare-not-halved': 'spare strings not halved',
  'odd-side-left-odd': 'an odd side left odd',
  'odd-side-rounded-down': 'an odd side rounded down',
  'sides-raised-bar-kept': 'sides made larger, with the bar kept as it was',
  'borrowed-not-given': 'strings borrowed and given to neither side',
  'one-borrowed': 'one string borrowed instead of two',
  'borrowed-from-one-side': 'both borrowed strings put on one side',
  'four-borrowed': 'four strings borrowed instead of two',
  'borrowed-though-even': 'strings borrowed though the half was even',
  'folds-counted-as-strings': 'folds counted where strings are asked for',
  'strings-counted-as-folds': 'a whole fold taken for every string',
  'capacity-not-matched': 'the idle place of the bar overlooked',
  added: 'places added where they are taken away',
  'subtracted-wrong-way': 'taken away the wrong way round',
  'all-spare-on-one-side': 'all spare strings hung on one side',
  'capacity-halved-too': 'the places of the bar halved as well',
  'lone-string-forgotten': 'the lone string forgotten',
  'bundle-counted-as-strings': 'a bundle counted as its strings',
  'bundle-not-counted': 'the knots of the bundles not counted',
  'row-late': 'counted one row late',
  'row-early': 'counted one row early',
  'one-string-a-row': 'one string a row in all, not one on each side',
  'full-width-misplaced': 'full width put one row off',
  'corner-cells-s-a-side': 'as many corner cells as the bundle has strings',
  'corner-cells-one-side': 'corner cells of one side only',
  'closing-from-wrong-end': 'closing counted from the ring',
  'closing-misplaced': 'closing begun one row off',
  'closing-counted-as-freed': 'strings in a closing bundle counted as single ones',
  'bundle-knot-outermost': 'the knot of a bundle put at the outer edge',
  'begun-at-wrong-side': 'a row begun at the wrong side',
  'knot-one-off': 'a knot one column off',
  'stretches-counted': 'stretches counted instead of cells',
  'first-stretch-only': 'only the first stretch of a colour taken',
  'plain-corners-marked': 'plain corner cells taken for the picture’s',
  'direction-not-swapped': 'knots not changed for the way back',
  'ordinary-knot-on-bundle': 'an ordinary knot round a bundle',
  'turning-knots-swapped': 'the two turning knots swapped',
  'turning-knot-on-edge-string': 'a turning knot on a single edge string',
  'two-let-out': 'two strings let out at once',
  'carry-behind-forgotten': 'the leading string not carried behind',
  'not-doubled': 'the length not doubled for a fold',
  'rows-in-centimetres': 'rows taken for centimetres',
  'tail-forgotten': 'nothing left to hold',
  'folds-and-strings-mixed': 'folds and base strings mixed up',
  'wrong-unit': 'another unit than was asked for',
  'float-ends-counted': 'the knots that hold a float counted with it',
  'rounded-up': 'part of a column counted as a whole one',
  'other-end-of-range': 'the narrow columns taken instead of the wide ones',
  'turns-not-divided': 'ten turns taken for one',
  'knots-as-thin-as-cord': 'a knot taken to be as narrow as the cord',
  'swatch-turned-round': 'the swatch divided the wrong way round',
  'knots-alternated': 'the knot changed from string to string',
  'last-string-forgotten': 'an ordinary knot on the last string of a bundle',
  'turning-knot-kept': 'a turning knot kept though the bundle is gone',
  'leading-string-outside': 'the leading string left outside the bundle',
  'leading-string-inside': 'the leading string brought inside a single edge string',
  'moves-mixed-up': 'letting out and taking in mixed up',
  'moved-without-need': 'a string let out where none has to go',
  'carried-though-inside': 'the leading string carried behind though it is inside',
  'joined-though-outside': 'a string joined while the leading string is outside',
  'outermost-let-out': 'the outermost string let out first',
  'closing-after-opening': 'closing begun as soon as the width was full',
  'singles-cut': 'single strings cut instead of folds',
  'likely-trusted': 'the likely figure trusted before a trial row',
  'most-on-bar': 'the most on the bar taken for the best',
  'take-up-forgotten': 'rows reckoned as if the string went straight',
  'long-float-left': 'a long float left hanging free',
  'float-pulled-tight': 'a float pulled tight',
  'caught-without-need': 'a short float caught',
  'ended-too-soon': 'a string ended that could have rested',
  'joined-on-turning-knot': 'a new string joined on a turning knot',
  'colour-left-out': 'a colour put off to the next row',
  'loose-blamed': 'winding put down to loose knots',
  'ends-blamed': 'winding put down to the core',
  'turned-before-freeing': 'the turning knot tied before a string is freed',
  'turned-before-taking-in': 'the turning knot tied before a string has joined',
  'freed-knot-first': 'the freed string tied before its bundle',
  'pinned-before-looping': 'the leading string pinned before the bundle is there',
  'ring-left-loose': 'a bundle looped through a ring that can turn',
  'turned-before-looping': 'the turning knot tied before the bundle is looped through',
  'borrowed-before-halving': 'borrowed before the half is known',
  'folds-before-borrowing': 'folds counted before strings are borrowed',
  'trimmed-too-early': 'trimmed before gathering',
  'trimmed-before-square-knots': 'trimmed before the square knots',
  'passed-before-gathering': 'the last two strings passed before the others are gathered',
  'mirror-half-first': 'the second half of a square knot tied first',
  'old-end-cut-first': 'the old end cut before knots hold it',
  'cut-before-measuring': 'string cut before it is measured',
};

const isKnown = (slip: string): slip is SlipId => slip in SLIP_NAMES;

/** How often a slip came up: in the last seven days, or if not then, in the last four weeks. */
export interface SlipTimes {
  readonly week: number;
  readonly month: number;
  /** The most that is counted. */
  readonly most: number;
}

function howOften({ week, month, most }: SlipTimes): string {
  const counted = week > 0 ? week : month;
  return `${times(counted)}${counted >= most ? ' or more' : ''} ${week > 0 ? 'this week' : 'in the last four weeks'}`;
}

/** A slip and how often it came up, such as `One string borrowed instead of two: twice this week`; null for one of a later version. */
export const slipSeenWords = (slip: string, seen: SlipTimes): string | null =>
  isKnown(slip) ? `${capital(SLIP_NAMES[slip])}: ${howOften(seen)}` : null;
