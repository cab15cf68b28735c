import { figure } from '../../numbers.ts';
import type { Hints } from './hint.ts';

export const CHOOSE_HINTS: Hints<'choose'> = {
  'look-knot-direction': ({ row }) => `Look at the side where row ${figure(row)} begins. The rows turn each time.`,
  'do-knot-direction': () =>
    'Find the side where the leading string waits. From the left it ties forward knots, from the right backward ones.',
  'look-edge-knot': ({ side }) =>
    `Look at the ${side} edge. The leading string has to come back to the inner side there.`,
  'do-edge-knot': () => 'Take the half hitch that goes towards the edge first, and then the one that comes back.',
  'look-turning-knot': ({ row }) =>
    `Look at both edges of row ${figure(row)}, and at the same edges in the row before.`,
  'do-turning-knot': () =>
    'Ask at each edge whether the leading string has to come back to the side it came from. Only there it turns.',
  'look-leading-string': ({ row }) =>
    `Look at the edge where row ${figure(row)} ends. Is it a bundle or a single string?`,
  'do-leading-string': () =>
    'Find the side where the row ends. A turning knot brings the leading string back inside. An ordinary knot leaves it outside.',
  'look-first-move': ({ row, start }) =>
    `Look at the ${start} edge in row ${figure(row)} and in the row before. Does it get smaller, larger, or stay?`,
  'do-first-move': () =>
    'Smaller lets out. Larger takes in: from a single string the leading string has to move, from a bundle the next string does.',
  'look-let-out': () => 'Look at which string of the bundle hangs next to those that are tied one by one.',
  'do-let-out': () => 'Think which of them can leave without crossing the others.',
  'look-corner-cells': ({ side }) => `Look at the column in which the knot of the ${side} bundle stands.`,
  'do-corner-cells': () =>
    'The knot stands in the innermost column of the bundle. Only the columns outside it are empty.',
  'look-closing-end': () => 'Look at the row of which you know the bundles for certain.',
  'do-closing-end': () => 'Begin where the closing bundles are whole, and take one string off for each row.',
  'look-bundle-knot': ({ row }) =>
    `Look at one edge of row ${figure(row)}. How often is the leading string tied there?`,
  'do-bundle-knot': () => 'Count knots and not strings. One knot may hold many strings.',
  'look-borrow': () => 'Look at the spare strings, and at half of them.',
  'do-borrow': () => 'Halve the spare strings. Each side is made of folds, so it has to be even, and both sides alike.',
  'look-odd-half': ({ eachSide }) => `Look at ${figure(eachSide)}, and think of folds. Each gives two strings.`,
  'do-odd-half': () => 'Every string of the chart has to hang somewhere. What a side gains, another place has to lose.',
  'look-fold-or-string': ({ strands }) =>
    `Look at the ${figure(strands)} ends that hang down, and at what one cut piece gives.`,
  'do-fold-or-string': () =>
    'A fold hangs by its middle, and both its ends are used. Count pieces first, then ends in one piece.',
  'look-safe-sheet': ({ low }) => `Look at the narrowest ring of the range, the one that takes ${figure(low)}.`,
  'do-safe-sheet': () => 'A sheet is safe if its strings on the bar find room on the narrowest ring too.',
  'look-rows-length': () => 'Look at what a base string does on its way through a row. Does it go straight?',
  'do-rows-length': () => 'Count in rows first. Then make a length of it, and leave something for the way round.',
  'look-float': ({ span }) =>
    `Look at how long ${figure(span)} columns of loose string are. Five is as much as may hang free.`,
  'do-float': () => 'Count the columns. Up to five, the string may run free. A longer float would catch on a finger.',
  'look-colour-change': ({ start }) =>
    `Look at what holds the new string at the ${start} edge, and where the old one turns back.`,
  'do-colour-change': () => 'Leave turning knots alone. The tails of old and new lie under three ordinary knots.',
  'look-trim': () => 'Look at what holds the last turning knots and the strings you have gathered.',
  'do-trim': () => 'Trim only what no later step needs in its hand.',
  'look-spiral': () => 'Look at the two halves of a square knot. How do they differ?',
  'do-spiral': () => 'Ask of each fault what you would see: loose knots slide, uneven ends hang unlike. What winds?',
};
