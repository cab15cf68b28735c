import { describe, expect, it } from 'vitest';
import { keyed } from '../../../src/widgets/frames/keys.ts';
import { FRAME_KEYS } from '../../../src/words/frame-words.ts';

const press = (key: string, focus: 'typing' | 'pressing' | 'elsewhere' = 'elsewhere', digits = '') =>
  keyed(digits, { key, chord: false, focus });

describe('keys', () => {
  it.each(['ArrowRight', 'ArrowDown', 'PageDown', ' '])('%s goes on', (key) => {
    expect(press(key)?.wish).toBe('on');
  });

  it('digits wait for Enter, and any other key puts them away', () => {
    const one = press('1')?.digits ?? '';
    const twelve = press('2', 'elsewhere', one)?.digits ?? '';
    expect(press('Enter', 'elsewhere', twelve)).toEqual({ digits: '', wish: null, frame: 12 });
    expect(press('ArrowLeft', 'elsewhere', twelve)).toEqual({ digits: '', wish: 'back', frame: null });
    expect(press('Enter')).toBeNull();
  });

  it('leave a field its letters, digits and arrows, but a clicker still goes on and back', () => {
    for (const key of ['b', '7', 'ArrowRight', ' ', 'Enter', 'End']) expect(press(key, 'typing')).toBeNull();
    expect(press('PageDown', 'typing')?.wish).toBe('on');
    expect(press('PageUp', 'typing')?.wish).toBe('back');
  });

  it('leave a button its space and Enter', () => {
    expect(press(' ', 'pressing')).toBeNull();
    expect(press('Enter', 'pressing', '4')).toBeNull();
    expect(press('ArrowRight', 'pressing')?.wish).toBe('on');
  });

  it('leave the browser its own', () => {
    expect(keyed('', { key: 'f', chord: true, focus: 'elsewhere' })).toBeNull();
  });

  it('do what the list of keys says: every single letter and sign in it is one', () => {
    const listed = FRAME_KEYS.flatMap(({ keys }) => keys).filter((key) => /^[a-z.?]$/.test(key));
    expect(listed.length).toBeGreaterThan(8);
    expect(listed.filter((key) => !press(key)?.wish)).toEqual([]);
    expect(new Set(listed.map((key) => press(key)?.wish)).size).toBe(listed.length - 1);
  });

  it('are the same with the shift key', () => {
    expect(press('B')?.wish).toBe('dark');
  });
});
