import { capital, count, figure, noun, numberWord, ordinal } from './numbers.ts';

/** How a figure stands in a sentence: 7, seven, Seven (to begin with), 7th. */
export type FigureForm = 'digits' | 'word' | 'Word' | 'ordinal';

/** A figure as a sentence needs it, with what is counted where a unit is given: `7 folds`, `one fold`. */
export function figureText(value: number, form: FigureForm, unit?: string): string {
  switch (form) {
    case 'ordinal':
      return unit ? `${ordinal(value)} ${unit}` : ordinal(value);
    case 'word':
    case 'Word': {
      const words = unit ? `${numberWord(value)} ${noun(value, unit)}` : numberWord(value);
      return form === 'Word' ? capital(words) : words;
    }
    case 'digits':
      return unit ? count(value, unit) : figure(value);
  }
}
