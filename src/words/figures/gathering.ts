import { count, figure } from '../numbers.ts';
import { side, type Words } from './shared.ts';

/** After the last row. */
export const gatheringFigureWords = {
  gathering: ({ singles, width }) =>
    Number(width) < 4
      ? 'The end of a very narrow piece.'
      : `After the last row, ${count(singles, 'single string')} hang between the two edges.`,
  'gathering-side': ({ side: name, count: number, bundle, becomes }) =>
    `From the ${side({ side: name ?? '' })}, the next ${number === 1 ? 'single string ties a knot' : `${count(number, 'single string')} tie a knot each, one after the other,`} round ${
      bundle === 1 ? 'the edge string' : `the bundle of ${figure(bundle)}`
    }, which grows to ${figure(becomes)}.`,
  'gathering-laid': (values) =>
    `The middle one of the last three is laid, unknotted, against the bundle on the ${side(values)}.`,
  'gathering-behind': ({ side: name, column }) =>
    `String ${figure(column)} passes behind the ${side({ side: name ?? '' })} bundle to its outer side.`,
  'gathering-square': () => 'These two tie square knots round both bundles.',
  'gathering-unequal': ({ left, right }) =>
    `That is a fault: ${figure(left)} were gathered on the left and ${figure(right)} on the right, so the end hangs crooked.`,
  'gathering-too-few': ({ width }) => `The ${count(width, 'string')} are tied together: there are too few to gather.`,
  'label-gathered': ({ count: number }) => `${figure(number)} gathered`,
  'label-middle': () => 'the last two tie',
} satisfies Words;
