import { exercise } from '../exercise.ts';

export const row = exercise('row');
