import { figure } from '../../numbers.ts';
import type { Hints } from './hint.ts';

export const SPOT_HINTS: Hints<'spot'> = {
  'look-row': ({ direction }) =>
    `The row goes ${direction === 'rightward' ? 'from left to right' : 'from right to left'}. Follow the leading string from its first knot to where it rests.`,
  'do-row': () =>
    'At each knot, ask on which side the leading string comes in and on which side it goes out. Ask at each edge how many strings it should have.',
  'look-fault-row': () => 'Look at the place you picked: how many strings, which knot, and on which side.',
  'do-fault-row': () => 'Say what should stand there. Then choose the name that tells the difference.',
  'look-plan': () => 'Read down the bundles, row by row. Then read down the knots.',
  'do-plan': ({ width }) =>
    `From row to row each bundle changes by the step that the question says. The knots are the ${figure(width)} columns, less one column fewer than each bundle has strings.`,
  'look-fault-plan': () => 'Look whether the bundles of that row are off, or only its knots.',
  'do-fault-plan': () => 'Work that row out for yourself. Then choose the name that tells the difference.',
  'look-sum': () => 'Begin with the first line. Each line follows from those above it.',
  'do-sum': () => 'Work each line out from the lines as they stand. Stop at the first that does not come out.',
  'look-fault-sum': () => 'Look at the line you picked, and at the line it should follow from.',
  'do-fault-sum': () => 'Say what should stand in that line. Then choose the name that tells the difference.',
};
