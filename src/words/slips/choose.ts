import type { ChoiceSlip } from '../../solver/exercises/choose/missteps.ts';
import { count, figure, noun, type Values } from '../numbers.ts';
import type { SlipText } from './slip-text.ts';

/** What a learner who chose by this slip thought, why it does not come out, and the next step. */
export const CHOICE_SLIP_WORDS: Readonly<Record<ChoiceSlip, (values: Values) => SlipText>> = {
  'direction-not-swapped': ({ row, startSide, start }) => ({
    did: `let row ${figure(row)} go the same way as row 1`,
    why: `Row 1 begins on the ${startSide} and ends on the other side. The leading string waits there, so row ${figure(row)} begins on the ${start}.`,
    next: 'Turn the way at each row. Odd rows go like row 1, and even rows go back.',
  }),
  'row-late': ({ row, start }) => ({
    did: `took the way of the row before or after row ${figure(row)}`,
    why: `Every second row goes the same way. Row ${figure(row)} is odd, so it goes like row 1 and begins on the ${start}.`,
    next: 'Find the side where the leading string waits. The row begins there.',
  }),
  'knots-alternated': ({ row, knot }) => ({
    did: 'changed the knot from string to string',
    why: `The leading string travels one way through the whole of row ${figure(row)}. Each ordinary knot has to leave it on the far side of its string.`,
    next: `Tie a ${knot} on every single string of this row.`,
  }),
  'turning-knots-swapped': ({ side }) => ({
    did: 'took the turning knot of the other edge',
    why: `At the ${side} edge the leading string comes from the inner side. This knot would begin outside, where the string is not.`,
    next: 'Begin with the half hitch that goes towards the edge. Then tie the one that comes back.',
  }),
  'ordinary-knot-on-bundle': ({ side, ask, left, right }) => ({
    did: 'tied an ordinary knot round a bundle',
    why: `An ordinary knot leaves the leading string outside ${ask === 'edge-knot' ? `the ${side} bundle` : `the bundles of ${figure(left)} and ${figure(right)}`}. The next row would have no way back in.`,
    next: 'A bundle always takes a turning knot. It leaves the leading string on the inner side.',
  }),
  'turning-knot-on-edge-strings': ({ left, right }) => ({
    did: 'gave every string at the edges a turning knot of its own',
    why: `At the edges ${left === 1 && right === 1 ? 'a single string hangs on each side' : `${figure(left)} strings hang on the left and ${figure(right)} on the right, each lot tied as one`}. A turning knot sends the leading string back, so a second one beside it can’t be reached.`,
    next: 'Turn only where the leading string has to come back to the inner side, and turn once.',
  }),
  'last-string-forgotten': ({ row, start }) => ({
    did: `tied the last string of the ${start} bundle with an ordinary knot`,
    why: `When row ${figure(row)} begins, the leading string still lies on the inner side of this string. An ordinary knot begins on the outer side.`,
    next: `Tie a turning knot round this one string. After row ${figure(row)} no knot at this edge has to turn.`,
  }),
  'turning-knot-kept': ({ row, start }) => ({
    did: 'kept the turning knot although the bundle is gone',
    why: `Before row ${figure(row)} the leading string is outside the ${start} edge string. It can tie this string and go on at once.`,
    next: 'Tie an ordinary knot on every string of this row.',
  }),
  'leading-string-outside': ({ end, endBundle }) => ({
    did: 'left the leading string outside the bundle',
    why: `The ${count(endBundle, 'string')} on the ${end} are held by a turning knot. It takes the string out and brings it back.`,
    next: 'Follow both halves of the turning knot with a finger. You end on the inner side.',
  }),
  'leading-string-inside': ({ end }) => ({
    did: 'brought the leading string back inside a single edge string',
    why: `One string hangs at the ${end} edge, and its knot is an ordinary one. That leaves the leading string on the far side of it.`,
    next: 'Follow the row to its last knot. The string is outside then, ready for the next row.',
  }),
  'turned-before-freeing': ({ start, startBefore }) => ({
    did: `tied the turning knot round all ${figure(startBefore)} strings of the ${start} bundle`,
    why: 'The string that should come out is then held in the knot, and the row has one knot too few.',
    next: 'Let the innermost string out first. Then tie the turning knot round the rest.',
  }),
  'turned-before-taking-in': ({ start, startBundle }) => ({
    did: 'began with the turning knot, before the new string had joined',
    why: `The knot has to hold ${count(startBundle, 'string')} on the ${start}. One of them is still outside it.`,
    next: 'Bring the strings together first. Then tie the knot round all of them.',
  }),
  'moves-mixed-up': ({ start, startBefore, startBundle }) => ({
    did: 'mixed up letting out and taking in',
    why: `The ${start} edge goes from ${figure(startBefore)} to ${count(startBundle, 'string')} here. ${Number(startBundle) < Number(startBefore) ? 'A string has to leave it' : startBundle === startBefore ? 'No string leaves it, and none joins' : 'A string has to join it'}.`,
    next: 'Compare the edge with the row before. Smaller lets out, larger takes in, alike leaves all as it is.',
  }),
  'moved-without-need': ({ row, start, startBundle }) => ({
    did: 'let a string out where none has to go',
    why:
      row === 1
        ? `Row 1 ties the bundle on the ${start} as it hangs there, with all its ${count(startBundle, 'string')}.`
        : `The ${start} edge holds ${count(startBundle, 'string')} in row ${figure(row)}, as it did before.`,
    next: 'Let a string out only in a row whose bundle is smaller than the one before.',
  }),
  'carried-though-inside': ({ start, startBefore }) => ({
    did: 'carried the leading string behind strings that it is already inside of',
    why: `The bundle of ${figure(startBefore)} on the ${start} was tied with a turning knot. So the leading string waits on the inner side.`,
    next: 'Let the next single string pass behind the leading string, and join the bundle.',
  }),
  'joined-though-outside': ({ start }) => ({
    did: 'brought a string to the leading string, which is still outside',
    why: `The ${start} edge was one single string, tied with an ordinary knot. The leading string waits outside it and can’t turn round a bundle from there.`,
    next: 'Carry the leading string behind the two edge strings. Then it is inside.',
  }),
  'outermost-let-out': ({ startBefore }) => ({
    did: 'let out the string nearest to the edge',
    why: `It would have to cross the ${noun(Number(startBefore) - 1, 'other', 'others')} to get to the single strings, and the edge would lie askew.`,
    next: 'Let out the innermost string. It hangs next to the single strings already.',
  }),
  'two-let-out': ({ startBefore, startBundle }) => ({
    did: 'let two strings out at once',
    why: `This row goes from ${figure(startBefore)} to ${count(startBundle, 'string')}. With two out, a hole stands at the edge and the sides are no longer alike.`,
    next: 'Let out one string on this side. The next one has its own row.',
  }),
  'corner-cells-s-a-side': ({ bundle }) => ({
    did: `counted all ${figure(bundle)} columns of the bundle as corner cells`,
    why: 'One knot holds the bundle, and it stands in the innermost of these columns. That cell belongs to the picture.',
    next: 'Leave out the innermost column.',
  }),
  'bundle-knot-outermost': ({ bundle }) => ({
    did: 'put the knot of the bundle at the outer edge',
    why: `The ${count(bundle, 'string')} are drawn together towards the middle. The knot stands beside the single strings, in the innermost column.`,
    next: 'Look for the empty cells outside the knot, not inside it.',
  }),
  'closing-from-wrong-end': ({ height }) => ({
    did: 'counted the closing rows from the ring',
    why: `The number of rows to the ring says nothing of the end. Row ${figure(height)} is where the bundles have to be whole.`,
    next: `Begin in row ${figure(height)}, and count back.`,
  }),
  'closing-after-opening': ({ fullWidthRow, firstClosingRow }) => ({
    did: `began to close as soon as the width was full, in row ${figure(fullWidthRow)}`,
    why: `Then the piece would have no straight part, and its end would be far from the last row. Closing begins in row ${figure(firstClosingRow)} here.`,
    next: 'Find the last row first, and count back from it.',
  }),
  'bundle-counted-as-strings': ({ left, right, knots }) => ({
    did: 'counted a knot for each string of a bundle',
    why: `One knot holds all ${figure(left)} on the left, and one all ${figure(right)} on the right. The row has ${count(knots, 'knot')}.`,
    next: 'Count one for each bundle, however thick it is.',
  }),
  'bundle-not-counted': ({ single, knots }) => ({
    did: 'left the bundles out of the count',
    why: `The ${count(single, 'single string')} have a knot each, and each bundle has one too. With both of them the row has ${count(knots, 'knot')}.`,
    next: 'Add one knot for each bundle.',
  }),
  'one-borrowed': ({ eachSide, borrowed }) => ({
    did: 'borrowed one string for two sides',
    why:
      borrowed === 0
        ? `Each side has ${figure(eachSide)}, which is even. One string more would make one of them odd.`
        : `Each side has ${figure(eachSide)}, which is odd. One string more helps one of them, and the other stays odd.`,
    next: borrowed === 0 ? 'Leave an even half as it is.' : 'Borrow one for each side.',
  }),
  'four-borrowed': ({ eachSide }) => ({
    did: 'borrowed two strings for each side',
    why: `${figure(eachSide)} and two more are ${figure(Number(eachSide) + 2)}. That is odd again.`,
    next: 'One more on each side makes it even.',
  }),
  'borrowed-though-even': ({ eachSide }) => ({
    did: 'borrowed from the bar although each side is even',
    why: `${figure(eachSide)} can be made of folds as it is. With one more, each side would have ${figure(Number(eachSide) + 1)}, which is odd.`,
    next: 'Look first whether the half is even or odd. Borrow only where it is odd.',
  }),
  'odd-side-left-odd': ({ eachSide }) => ({
    did: 'left both sides odd',
    why: `${count(eachSide, 'string')} can’t hang in folds. One end would have no other.`,
    next: 'Make each side even with one string more. Think where these strings come from.',
  }),
  'odd-side-rounded-down': ({ eachSide, width }) => ({
    did: 'took one string off each side, and let two of them go',
    why: `The chart has ${count(width, 'column')}, and each needs its string. With ${figure(Number(eachSide) - 1)} on each side two columns have none.`,
    next: 'Go the other way: one string more on each side, and two fewer on the bar.',
  }),
  'sides-raised-bar-kept': ({ places, strands, width }) => ({
    did: 'raised both sides and kept the bar as it was',
    why: `${figure(places)} on the bar and ${figure(strands)} on each side are two more than the ${figure(width)} that are needed.`,
    next: 'Take from the bar what the sides gain.',
  }),
  'strings-counted-as-folds': ({ strands, folds }) => ({
    did: `took a whole fold for each of the ${count(strands, 'string')}`,
    why: `Each fold hangs down as two. So many folds would give ${count(2 * Number(strands), 'string')} on one side.`,
    next: `Halve first: ${figure(strands)} strings are ${count(folds, 'fold')}.`,
  }),
  'singles-cut': ({ strands }) => ({
    did: `cut ${count(strands, 'single string')}`,
    why: 'A single string has nothing to hang by. A fold hangs by its middle, on the ring or on the bar.',
    next: 'Cut pieces of double length, half as many, and fold them.',
  }),
  'not-doubled': ({ folds }) => ({
    did: `cut the ${count(folds, 'fold')} as long as one end`,
    why: 'A fold is used from both its ends. Folded in half, this one hangs down only half as far as it should.',
    next: 'Take the length of one end twice for each fold.',
  }),
  'likely-trusted': ({ capacity, onBarLikely, low }) => ({
    did: `trusted the likely figure, ${figure(capacity)}`,
    why: `That sheet puts ${count(onBarLikely, 'string')} on the bar. If the bar takes ${figure(low)}, they stack up and nothing lies flat.`,
    next: 'Ask of a sheet whether it can be tied on the narrowest ring too.',
  }),
  'most-on-bar': ({ high, onBarHigh, low }) => ({
    did: `took the sheet with the most on the bar, ${figure(onBarHigh)}`,
    why: `It is right only for a bar that takes ${figure(high)}. On one that takes ${figure(low)} the knots would stack up.`,
    next: 'The more hang on the bar, the fewer rings it fits. Begin with the narrowest ring.',
  }),
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
