import { exercise } from '../exercise.ts';

export const say = exercise('say');
