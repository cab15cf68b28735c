import { capital, count, type Values } from '../numbers.ts';
import { length } from '../units.ts';
import { unitsOf } from './measured.ts';
import type { Words } from './shared.ts';

const CUT_PLACES: Words = {
  bar: ({ count: number }) => `${count(number, 'fold')} for the bar`,
  left: ({ count: number }) => `${count(number, 'fold')}, left side`,
  right: ({ count: number }) => `${count(number, 'fold')}, right side`,
  lone: ({ count: number }) => count(number, 'lone string'),
};
const cutPlace = (values: Values): string => CUT_PLACES[String(values['place'])]?.(values) ?? '';
const about = ({ source }: Values): string => (source === 'measured' ? '' : 'about ');

/** The strings to cut. */
export const cutStringsFigureWords = {
  'cut-strings': ({ pieces }) => `${count(pieces, 'string')} to cut, drawn to one scale.`,
  'cut-strings-piece': (values) => {
    const { low = 0, likely = 0, high = 0, place } = values;
    const units = unitsOf(values);
    const range = low === high ? '' : ` (from ${length(Number(low), units)} to ${length(Number(high), units)})`;
    return `${capital(cutPlace(values))}: ${about(values)}${length(Number(likely), units, true)}${values['count'] === 1 ? '' : ' each'}${range}, ${place === 'lone' ? 'not folded' : 'folded in half'}.`;
  },
  'label-cut': cutPlace,
  'label-cut-length': (values) => about(values) + length(Number(values['mm']), unitsOf(values), true),
  'label-length': (values) => length(Number(values['mm']), unitsOf(values)),
} satisfies Words;
