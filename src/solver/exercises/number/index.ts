import { exercise } from '../exercise.ts';

export const number = exercise('number');
