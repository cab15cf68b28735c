import type { ChooseGroup } from '../../../solver/exercises/choose/groups.ts';
import { figure } from '../../numbers.ts';
import type { Hints } from './hint.ts';

export const CHOOSE_KNOTS_HINTS: Pick<
  Hints<'choose'>,
  `look-${ChooseGroup['knots']}` | `do-${ChooseGroup['knots']}`
> = {
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
};
