import { rulerMark } from '../units.ts';
import { measured, unitsOf } from './measured.ts';
import type { Words } from './shared.ts';

/** Ten turns round a pencil. */
export const tenTurnsFigureWords = {
  'ten-turns': (values) =>
    `Ten turns of the cord lie side by side round a pencil. Together they take ${measured(values)}.`,
  'ten-turns-one': (values) => `So one turn, and the cord, is ${measured(values)} thick.`,
  'label-ten-turns': (values) => `ten turns: ${measured(values)}`,
  'label-mark': (values) => rulerMark(Number(values['at']), unitsOf(values)),
  'label-unit': (values) => (unitsOf(values) === 'inches' ? 'in' : 'mm'),
} satisfies Words;
