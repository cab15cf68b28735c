import type { ChooseGroup } from '../../../solver/exercises/choose/groups.ts';
import { figure } from '../../numbers.ts';
import type { Hints } from './hint.ts';

export const CHOOSE_SUM_HINTS: Pick<Hints<'choose'>, `look-${ChooseGroup['sum']}` | `do-${ChooseGroup['sum']}`> = {
  'look-borrow': () => 'Look at the spare strings, and at half of them.',
  'do-borrow': () => 'Halve the spare strings. Each side is made of folds, so it has to be even, and both sides alike.',
  'look-odd-half': ({ eachSide }) => `Look at ${figure(eachSide)}, and think of folds. Each gives two strings.`,
  'do-odd-half': () => 'Every string of the chart has to hang somewhere. What a side gains, another place has to lose.',
  'look-fold-or-string': ({ strands }) =>
    `Look at the ${figure(strands)} ends that hang down, and at what one cut piece gives.`,
  'do-fold-or-string': () =>
    'A fold hangs by its middle, and both its ends are used. Count pieces first, then ends in one piece.',
  'look-safe-sheet': ({ low }) => `Think of the least that the bar may take, ${figure(low)}.`,
  'do-safe-sheet': () => 'A plan is safe if its strings on the bar find room even then.',
};
