import type { Choices, ChooseAsk } from '../../../solver/exercises/choose/problem.ts';
import { count, figure, type Value, type Values } from '../../numbers.ts';

export type Say = (values: Values) => string;

/** What is known, what is asked, and what can be chosen. */
export interface Asked<A extends ChooseAsk> {
  readonly given: Say;
  readonly ask: Say;
  readonly choices: { readonly [C in Choices[A]]: Say };
}

const pace = (step: Value): string => (step === 1 ? 'a row' : `every ${figure(step)} rows`);

export const piece: Say = (values) => {
  const { width, height, mountedLeft, mountedRight, closingLeft, closingRight, startSide } = values;
  const closes =
    closingLeft === 1 && closingRight === 1
      ? 'It keeps its full width to the end.'
      : `It closes in the same way, one string ${pace(values['closingStep'])}, to bundles of ${both(closingLeft, closingRight)} in the last row.`;
  return `The chart is ${count(width, 'column')} wide and ${count(height, 'row')} high. Row 1 begins on the ${startSide}. Its bundles hold ${both(mountedLeft, mountedRight)}, and then each side lets out one string ${pace(values['openingStep'])}. ${closes}`;
};

export const both = (left: Value, right: Value): string =>
  left === right ? `${figure(left)} on each side` : `${figure(left)} on the left and ${figure(right)} on the right`;

export const bundles: Say = ({ row, left, right }) => `In row ${figure(row)} the bundles hold ${both(left, right)}.`;

export const onBar: Say = ({ width, capacity }) =>
  `The chart is ${count(width, 'column')} wide. The bar takes ${count(capacity, 'string')}.`;

export const ends: Say = ({ height, closingLeft, closingRight, single }) =>
  `Row ${figure(height)} is the last row, and it is tied. At the edges hang ${both(closingLeft, closingRight)}, with ${count(single, 'single string')} between.`;

/** 'column 1', 'columns 1 to 5', counted from the edge. */
export const columns = (from: number, to: Value): string =>
  from === to ? `column ${figure(from)}` : `columns ${figure(from)} to ${figure(to)}`;

/** The questions of some asks. */
export type AskedOf<A extends ChooseAsk> = { readonly [Each in A]: Asked<Each> };

/** A choice among those of a question. */
export const choiceIn = (
  asked: { readonly choices: Readonly<Record<string, Say>> } | undefined,
  choice: string,
  values: Values,
): string => asked?.choices[choice]?.(values) ?? figure(undefined);
