import { exercise } from '../exercise.ts';

export const choose = exercise('choose');
