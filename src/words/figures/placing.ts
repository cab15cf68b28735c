import type { Words } from './shared.ts';

/** The chart placed on its ring; its sentences are those of the outline, and these. */
export const placingFigureWords = {
  'placing-nothing': () => 'Plain rows would save nothing more here.',
  'placing-no-picture': () => 'There is no picture on this chart yet.',
} satisfies Words;
