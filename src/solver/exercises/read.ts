/** Why an entry cannot be read; it is no try. */
export type Reason =
  | 'not-a-whole-number'
  | 'too-long'
  | 'not-even-or-odd'
  | 'not-cells'
  | 'outside-the-chart'
  | 'not-on-the-list';

export type Reading<T> =
  | { readonly verdict: 'missing' }
  | { readonly verdict: 'unreadable'; readonly reason: Reason }
  | { readonly verdict: 'read'; readonly value: T };

const unreadable = (reason: Reason): Reading<never> => ({ verdict: 'unreadable', reason });

/**
 * Reads a whole number as a person types it: `14`, ` 14 `, `+3`, `−10` with either minus, `１４` from a wide keyboard.
 * `2.5` and `1e3` are no whole numbers here; nothing entered is `missing`. Never NaN.
 */
export function readWhole(entered: unknown): Reading<number> {
  if (entered === null || entered === undefined) return { verdict: 'missing' };
  if (typeof entered === 'number')
    return Number.isSafeInteger(entered) ? { verdict: 'read', value: entered + 0 } : unreadable('not-a-whole-number');
  if (typeof entered !== 'string') return unreadable('not-a-whole-number');
  const text = entered.normalize('NFKC').trim().replace('\u2212', '-');
  if (text === '') return { verdict: 'missing' };
  if (!/^[+-]? ?\d+$/.test(text)) return unreadable('not-a-whole-number');
  const value = Number(text.replace(' ', '')) + 0;
  return Number.isSafeInteger(value) ? { verdict: 'read', value } : unreadable('too-long');
}

/** Reads `even` or `odd` as 0 or 1, the string that is left over in a half. */
export function readParity(entered: unknown): Reading<number> {
  if (entered === null || entered === undefined) return { verdict: 'missing' };
  if (typeof entered !== 'string') return unreadable('not-even-or-odd');
  const text = entered.trim().toLowerCase();
  if (text === '') return { verdict: 'missing' };
  return text === 'even' || text === 'odd'
    ? { verdict: 'read', value: text === 'odd' ? 1 : 0 }
    : unreadable('not-even-or-odd');
}
