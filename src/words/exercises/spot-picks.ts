import type { SpotFault, SpotField, SpotProblem, SpotResult } from '../../solver/exercises/spot/problem.ts';
import { rightAt } from '../../solver/exercises/spot/solution.ts';
import { lineOf } from './steps/saying.ts';
import { SPOT_STEPS } from './steps/spot.ts';

/** How each fault would show, for those who chose it where it is not. */
const WOULD: Readonly<Record<SpotFault, string>> = {
  'leans-wrong': 'If it did, one single string would have a knot that leans unlike those beside it.',
  'ordinary-on-bundle': 'If it did, a bundle would have a forward or a backward knot, and not one that turns.',
  'turns-wrong':
    'If it did, an edge would have a turning knot that begins on its outer side, where the leading string is not.',
  'lead-wrong-side': 'If it did, the leading string would rest outside a bundle, or inside a single edge string.',
  'out-on-wrong-side': 'If it did, the string let out would hang on the outer side of its bundle.',
  'two-let-out':
    'If it did, two strings of one side would be out, and the bundle would be two strings smaller than before.',
  'strings-counted': 'If it did, the row would have as many knots as the piece has columns, though a bundle gets one.',
  'bundles-left-out': 'If it did, the figure would count the single strings alone, without a knot for each bundle.',
  'row-after': 'If it did, both bundles would be one step further than this row.',
  'row-before': 'If it did, both bundles would be as in the row above.',
  'one-side-only': 'If it did, one bundle would be as in the row above, and the other not.',
  'not-halved': 'If it did, the half would be as large as all the spare strings.',
  'none-borrowed': 'If it did, the half would be odd, and 0 would be borrowed.',
  'one-borrowed': 'If it did, 1 would be borrowed.',
  'borrowed-from-even': 'If it did, the half would be even, and 2 would be borrowed all the same.',
  'bar-kept': 'If it did, as many strings would hang on the bar as there are places, though 2 are borrowed.',
};

/** The answer to picks that do not fit: why that place is right, and how the fault that was chosen would show. */
export function picksWords(problem: SpotProblem, fields: { readonly [F in SpotField]?: SpotResult }): string {
  const { place, fault } = fields;
  const says: string[] = [];
  if (place?.verdict === 'wrong' && place.picked) {
    const values = rightAt(problem, place.picked as Parameters<typeof rightAt>[1]);
    says.push(`What you picked is as it should be. ${lineOf(SPOT_STEPS, { key: `right-${problem.in}`, values }).text}`);
  }
  if (fault?.verdict === 'wrong' && fault.picked)
    says.push(`The name does not fit. ${WOULD[fault.picked as SpotFault]}`);
  return says.join(' ');
}
