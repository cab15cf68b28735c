import { type Example, exampleOf } from '../entries/examples.ts';

/** The worked example that a lesson is read with: the page says which; elsewhere it is the lantern. */
export const runningExample = (locals: App.Locals): Example => exampleOf(locals.example ?? 'lantern');
