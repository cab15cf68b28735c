import { exercise } from '../exercise.ts';

export const spot = exercise('spot');
