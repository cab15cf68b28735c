import { exercise } from '../exercise.ts';

export const sum = exercise('sum');
