import type { ChoiceSlip } from '../../solver/exercises/choose/missteps.ts';
import { count, figure, type Values } from '../numbers.ts';
import type { SlipText } from './slip-text.ts';
import { tellsChoices } from './tell-choices.ts';

const WORDS: { readonly [Slip in ChoiceSlip]?: (values: Values) => SlipText } = {
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
    why: `Then the piece would have no straight part, and the bundles would be whole long before the last row. Closing begins in row ${figure(firstClosingRow)} here.`,
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
};

/** What lies behind a choice that is not right. */
export const tellShapeChoice = tellsChoices(WORDS);
