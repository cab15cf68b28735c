import type { ChooseGroup } from '../../../solver/exercises/choose/groups.ts';
import { figure } from '../../numbers.ts';
import type { Hints } from './hint.ts';

export const CHOOSE_SHAPE_HINTS: Pick<
  Hints<'choose'>,
  `look-${ChooseGroup['shape']}` | `do-${ChooseGroup['shape']}`
> = {
  'look-corner-cells': ({ side }) => `Look at the column in which the knot of the ${side} bundle stands.`,
  'do-corner-cells': () =>
    'The knot stands in the innermost column of the bundle. Only the columns outside it are empty.',
  'look-closing-end': () => 'Look at the row of which you know the bundles for certain.',
  'do-closing-end': () => 'Begin where the closing bundles are whole, and take one string off for each row.',
  'look-bundle-knot': ({ row }) =>
    `Look at one edge of row ${figure(row)}. How often is the leading string tied there?`,
  'do-bundle-knot': () => 'Count knots and not strings. One knot may hold many strings.',
};
