import { exercise } from '../exercise.ts';

export const order = exercise('order');
