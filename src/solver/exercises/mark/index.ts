import { exercise } from '../exercise.ts';

export const mark = exercise('mark');
