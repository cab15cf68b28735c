import type { ChoiceSlip } from '../../solver/exercises/choose/missteps.ts';
import { count, figure, noun, type Values } from '../numbers.ts';
import type { SlipText } from './slip-text.ts';
import { tellsChoices } from './tell-choices.ts';

const WORDS: { readonly [Slip in ChoiceSlip]?: (values: Values) => SlipText } = {
  'rows-in-centimetres': ({ height }) => ({
    did: `took ${count(height, 'row')} for as many centimetres`,
    why: 'A row is as high as its knots are thick. That is some millimetres, not a whole centimetre.',
    next: 'Measure how high a row is in your swatch. Take that once for each row.',
  }),
  'take-up-forgotten': ({ height }) => ({
    did: `reckoned ${count(height, 'row')} as if the string went straight`,
    why: 'A base string bends a little round every knot. In the end it would be too short to hold.',
    next: 'Add a little for the bends, and more for mounting, finishing and holding.',
  }),
  'long-float-left': ({ span }) => ({
    did: `left ${count(span, 'column')} of string hanging free`,
    why: 'More than five columns make a loop that fingers and keys catch in.',
    next: 'Catch it under a knot on the way.',
  }),
  'float-pulled-tight': ({ span }) => ({
    did: 'pulled the float tight',
    why: `The ${noun(span, 'column', 'columns')} it skips would be drawn together, and the piece would curl.`,
    next: 'Lay the string flat along the back, with the row lying as wide as it is.',
  }),
  'caught-without-need': ({ span }) => ({
    did: 'caught a float that is short enough',
    why: `${count(span, 'column')} ${noun(span, 'is', 'are')} no more than five. Such a float lies well by itself, and a knot over it shows a little on the front.`,
    next: 'Let it run. Catch only what skips more than five.',
  }),
  'ended-too-soon': ({ span }) => ({
    did: 'ended the string and joined a new one',
    why: `It is needed again after ${count(span, 'column')}. Each end has a tail to hide, and two tails in one row make it thick.`,
    next: 'End a colour only when it rests for ten rows.',
  }),
  'joined-on-turning-knot': ({ start, startBundle }) => ({
    did: 'joined the new colour on the turning knot',
    why: `That knot holds ${count(startBundle, 'string')} on the ${start} and turns the string back. A fresh end in it slips out, and the bundle comes loose.`,
    next: 'Tie the turning knot with the old string. Join on the next ordinary knot.',
  }),
  'colour-left-out': ({ row }) => ({
    did: 'put off the colour to the next row',
    why: `The picture would be one row off. Row ${figure(row)} can have its colour, only not on the knot of the bundle.`,
    next: 'Join on the first ordinary knot of this row.',
  }),
  'trimmed-too-early': ({ height, single }) => ({
    did: `wanted to trim as soon as row ${figure(height)} was tied`,
    why: `${count(single, 'single string')} ${noun(single, 'has', 'have')} to be gathered and tied still. Short ends can’t be held, and the last turning knots open.`,
    next: 'Lay the leading strings into the bundles, gather, and tie the square knots. Trim after that.',
  }),
  'trimmed-before-square-knots': () => ({
    did: 'wanted to trim before the square knots',
    why: 'The gathered strings are held by one knot each. The last two strings still have to be tied round all of them, and need their length.',
    next: 'Tie two or three square knots and draw them tight. Trim after that.',
  }),
  'loose-blamed': ({ core }) => ({
    did: 'blamed the winding on loose knots',
    why: `A loose square knot slides along its core of ${count(core, 'string')}. It does not wind round it.`,
    next: 'Look at the halves. In a flat knot the second is the mirror image of the first.',
  }),
  'ends-blamed': ({ core }) => ({
    did: 'blamed the winding on the core',
    why: `The lengths of its ${count(core, 'string')} show only below the knots. How the knots lie comes from the two strings that tie.`,
    next: 'Look at which of the two went over first in each half.',
  }),
};

/** What lies behind a choice that is not right. */
export const tellWorkChoice = tellsChoices(WORDS);
