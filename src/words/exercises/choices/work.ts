import type { ChooseGroup } from '../../../solver/exercises/choose/groups.ts';
import { count, figure } from '../../numbers.ts';
import { type AskedOf, bundles, ends } from './saying.ts';

export const WORK_CHOICES: AskedOf<ChooseGroup['work']> = {
  'rows-length': {
    given: ({ height }) => `A piece has ${count(height, 'row')}. You have measured in your swatch how high one row is.`,
    ask: () => 'How much of a base string do the rows take?',
    choices: {
      'pitch-and-more': ({ height }) => `${figure(height)} times the height of a row, and a little more`,
      centimetres: ({ height }) => `${figure(height)} centimetres`,
      'pitch-alone': ({ height }) => `${figure(height)} times the height of a row, exactly`,
    },
  },
  float: {
    given: ({ span }) => `A colour is not needed for ${count(span, 'column')}. Then the same row needs it again.`,
    ask: () => 'What do you do with its string?',
    choices: {
      leave: () => 'Let it run along the back, lying flat',
      catch: () => 'Let it run along the back, and catch it under a knot on the way',
      'pull-tight': () => 'Pull it tight along the back, so that nothing hangs out',
      end: () => 'End it, and join a new one when it is needed',
    },
  },
  'colour-change': {
    given: (values) =>
      `${bundles(values)} Row ${figure(values['row'])} begins on the ${figure(values['start'])}, and a new colour is to begin at that edge.`,
    ask: () => 'Where does the new colour join?',
    choices: {
      'next-ordinary': () => 'On the first ordinary knot after the turning knot',
      'turning-knot': () => 'On the turning knot, since a thick bundle holds it best',
      'next-row': () => 'In the row after this one, without a change here',
    },
  },
  trim: {
    given: ends,
    ask: () => 'When do you trim the ends?',
    choices: {
      'after-square-knots': () => 'When the square knots round both bundles are drawn tight',
      'after-last-row': () => 'Now, so that nothing is in the way',
      'after-gathering': () => 'When the single strings are gathered into the bundles',
    },
  },
  spiral: {
    given: ({ core }) =>
      `Two square knots hold a core of ${count(core, 'string')}. They do not lie flat: they wind round it like a stair.`,
    ask: () => 'What made them wind?',
    choices: {
      'same-half': () => 'The same half was tied each time, and not its mirror image',
      loose: () => 'They were not drawn tight enough',
      uneven: ({ core }) => `The ${count(core, 'string')} of the core were not equally long`,
    },
  },
};
