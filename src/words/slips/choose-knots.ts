import type { ChoiceSlip } from '../../solver/exercises/choose/missteps.ts';
import { count, figure, noun, type Values } from '../numbers.ts';
import type { SlipText } from './slip-text.ts';
import { tellsChoices } from './tell-choices.ts';

const WORDS: { readonly [Slip in ChoiceSlip]?: (values: Values) => SlipText } = {
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
  'turning-knot-on-edge-string': ({ left, right }) => ({
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
    why: `This row goes from ${figure(startBefore)} to ${count(startBundle, 'string')}. With two out, the edge gets a step, and the sides are no longer alike.`,
    next: 'Let out one string on this side. The next one has its own row.',
  }),
};

/** What lies behind a choice that is not right. */
export const tellKnotsChoice = tellsChoices(WORDS);
