import { describe, expect, it } from 'vitest';
import { isNewer, newName, readWindowName, windowName } from '../../../src/widgets/frames/link.ts';

describe('a window’s name', () => {
  it('says which part it has in which showing', () => {
    const session = newName();
    expect(readWindowName(windowName('speaker', session))).toEqual({ role: 'speaker', session });
  });

  it.each(['', 'evenfold', 'evenfold learner abc', 'evenfold room ', 'evenfold room a b', 'room abc'])(
    '“%s” belongs to no showing',
    (name) => {
      expect(readWindowName(name)).toBeNull();
    },
  );

  it('is another for every showing', () => {
    expect(new Set(Array.from({ length: 500 }, newName)).size).toBe(500);
  });
});

it('of two changes at once both windows take the same one', () => {
  const [one, other] = [
    { turn: 4, by: 'a' },
    { turn: 4, by: 'b' },
  ];
  expect(isNewer(one, other)).not.toBe(isNewer(other, one));
  expect(isNewer({ turn: 5, by: 'a' }, other)).toBe(true);
  expect(isNewer(one, one)).toBe(false);
});
