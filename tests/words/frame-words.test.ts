import { describe, expect, it } from 'vitest';
import { frameWords, planWords, timeUsed } from '../../src/words/frame-words.ts';

describe('time', () => {
  it.each([
    [0, '0:00'],
    [59_999, '0:59'],
    [725_000, '12:05'],
    [3_600_000, '60:00'],
  ])('%d milliseconds read %s', (spent, text) => {
    expect(timeUsed(spent)).toBe(text);
  });

  it.each([
    [10, 'as planned'],
    [13, 'as planned'],
    [15, '3 minutes behind the plan'],
    [13.2, '1 minute behind the plan'],
    [4, '4 minutes ahead of the plan'],
  ])('%d minutes used, of a frame planned from 8 to 12, are %s', (minutes, words) => {
    expect(planWords(minutes * 60_000, 8, 12)).toBe(words);
  });
});

it('a frame with steps says which was taken', () => {
  expect(frameWords('Frame 4 of 30: Widening', 1, 3)).toBe('Frame 4 of 30: Widening. Step 2 of 3.');
  expect(frameWords('Frame 4 of 30: Widening', 0, 1)).toBe('Frame 4 of 30: Widening.');
});
