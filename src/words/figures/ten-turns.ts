import { figure } from '../numbers.ts';
import type { Words } from './shared.ts';

/** Ten turns round a pencil. */
export const tenTurnsFigureWords = {
  'ten-turns': ({ mm }) =>
    `Ten turns of the cord lie side by side round a pencil. Together they take ${figure(mm)} mm.`,
  'ten-turns-one': ({ mm }) => `So one turn, and the cord, is ${figure(mm)} mm thick.`,
  'label-ten-turns': ({ mm }) => `ten turns: ${figure(mm)} mm`,
  'label-mm': () => 'mm',
} satisfies Words;
