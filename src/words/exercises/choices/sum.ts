import type { ChooseGroup } from '../../../solver/exercises/choose/groups.ts';
import { count, figure } from '../../numbers.ts';
import { type AskedOf, onBar } from './saying.ts';

export const SUM_CHOICES: AskedOf<ChooseGroup['sum']> = {
  borrow: {
    given: onBar,
    ask: () => 'How many strings do you borrow from the bar, and why?',
    choices: {
      none: () => 'None, since each side gets half of the spare strings as it is',
      one: () => 'One, since one string makes an odd number even',
      two: () => 'Two, one for each side',
      four: () => 'Four, two for each side',
    },
  },
  'odd-half': {
    given: (values) =>
      `${onBar(values)}${values['places'] === values['capacity'] ? '' : ' One place stays idle.'} ${count(values['spare'], 'string')} are spare, so each side gets ${figure(values['eachSide'])}. That is odd.`,
    ask: () => 'What do you do about it?',
    choices: {
      'one-from-the-bar': ({ onBar: left }) =>
        `Give each side one string more, from the bar. The bar keeps ${figure(left)}.`,
      'left-odd': ({ eachSide }) => `Leave each side at ${figure(eachSide)}.`,
      'one-less': () => 'Give each side one string less, and forget about those two.',
      'bar-kept': ({ places }) => `Give each side one string more. The bar keeps its ${figure(places)}.`,
    },
  },
  'fold-or-string': {
    given: ({ strands }) => `Each side bundle holds ${count(strands, 'string')}. They hang in folds through the ring.`,
    ask: () => 'What do you cut for one side?',
    choices: {
      'half-as-many-folds': ({ folds }) => `${count(folds, 'piece')}, each as long as two ends`,
      'as-many-folds': ({ strands }) => `${count(strands, 'piece')}, each as long as two ends`,
      'single-strings': ({ strands }) => `${count(strands, 'piece')}, each as long as one end`,
      'short-folds': ({ folds }) => `${count(folds, 'piece')}, each as long as one end`,
    },
  },
  'safe-sheet': {
    given: ({ width, capacity, low, high }) =>
      `The chart is ${count(width, 'column')} wide. The bar most likely takes ${count(capacity, 'string')}. Until a row is tried, it may turn out to be ${figure(low)} or ${figure(high)}. A plan was made for each.`,
    ask: () => 'Which plan is safe, whatever the trial row says?',
    choices: {
      low: ({ low, onBarLow }) => `The one for ${figure(low)}, with ${figure(onBarLow)} on the bar`,
      likely: ({ capacity, onBarLikely }) => `The one for ${figure(capacity)}, with ${figure(onBarLikely)} on the bar`,
      high: ({ high, onBarHigh }) => `The one for ${figure(high)}, with ${figure(onBarHigh)} on the bar`,
    },
  },
};
