import type { OutlineFigures } from '../../solver/exercises/outline.ts';
import { count, figure, ordinal } from '../numbers.ts';

/** 'in every row', 'in every third row'. */
export const often = (step: number): string => (step === 1 ? 'in every row' : `in every ${ordinal(step)} row`);

/** '6 on each side', or both sides apart. */
export const bundles = ([left, right]: OutlineFigures['bundles'], what: string): string =>
  left === right
    ? `${figure(left)} on each side${what}`
    : `${figure(left)} on the left and ${figure(right)} on the right${what}`;

/** All that decides the outline of a piece. */
export function shapedPiece({
  width,
  height,
  bundles: mounted,
  closing,
  openingStep,
  closingStep,
}: OutlineFigures): string {
  const closes =
    Math.max(...closing) < 2
      ? 'It keeps its full width to the end.'
      : `It closes to bundles of ${bundles(closing, '')} in the last row, with one string taken in on each side ${often(closingStep)}.`;
  return `The chart is ${count(width, 'column')} wide and ${count(height, 'row')} high. The side bundles hold ${bundles(mounted, '')} in row 1. After that, one string is let out on each side ${often(openingStep)}. ${closes}`;
}
