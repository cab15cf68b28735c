/** A figure out of a step or problem: what the solver's `values` hold, and nothing where a name is missing. */
export type Value = number | string | null | undefined;
export type Values = Readonly<Record<string, number | string>>;

/** In place of a figure that is not there, so that no sentence shows a made-up one. */
const MISSING = '?';

/**
 * A figure as it is read: a true minus sign, a comma at every third digit from 10,000, at most `decimals`
 * decimals (default 2). Text stands as it is; nothing, and what is no finite number, is a question mark.
 */
export function figure(value: Value, decimals = 2): string {
  if (typeof value === 'string') return value;
  if (typeof value !== 'number' || !Number.isFinite(value)) return MISSING;
  const [whole = '', part] = String(Number(Math.abs(value).toFixed(decimals))).split('.');
  const grouped = whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, ',');
  const digits = part === undefined ? grouped : `${grouped}.${part}`;
  return value < 0 && /[1-9]/.test(digits) ? `−${digits}` : digits;
}

const plural = (noun: string): string => `${noun}${/(?:s|x|ch|sh)$/.test(noun) ? 'es' : 's'}`;

/** The noun alone, in the number that goes with `value`: 'fold' for 1, 'folds' for 0, 2 and 1.5. */
export const noun = (value: Value, one: string, many: string = plural(one)): string => (value === 1 ? one : many);

/** `count(7, 'fold')` is '7 folds', `count(1, 'fold')` is '1 fold'. */
export const count = (value: Value, one: string, many?: string): string => `${figure(value)} ${noun(value, one, many)}`;

const WORDS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
    ' ',
  );

/** Zero to twenty in words, anything else in digits. */
export const numberWord = (value: number): string => WORDS[value] ?? figure(value);

const ORDINALS = ' first second third fourth fifth sixth seventh eighth ninth tenth'.split(' ');

/** First to tenth in words, then 11th, 21st … for whole numbers from 1. */
export function ordinal(value: number): string {
  const word = ORDINALS[value];
  if (word) return word;
  const tens = Math.floor(value / 10) % 10;
  return `${figure(value)}${(tens === 1 ? undefined : ['', 'st', 'nd', 'rd'][value % 10]) || 'th'}`;
}

/** Once, twice, three times. */
export const times = (value: number): string =>
  value === 1 ? 'once' : value === 2 ? 'twice' : `${numberWord(value)} times`;

/** 'a', 'a and b', 'a, b and c'. */
export const list = (items: readonly string[], last: 'and' | 'or' = 'and'): string =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;

/** The text with a capital at its beginning. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
