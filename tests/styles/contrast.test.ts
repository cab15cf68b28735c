import { describe, expect, it } from 'vitest';
import { block, contrast, type Tokens } from './tokens.ts';

const SHEETS = {
  light: block(":root, :root[data-theme='light']"),
  dark: block(":root[data-theme='dark']"),
  print: block(
    ":root, :root[data-theme='light'], :root[data-theme='dark'], :root:not([data-theme='light'])",
    '@media print',
  ),
} satisfies Record<string, Tokens>;

const GROUNDS = ['paper', 'raised', 'sunk'];
const TEXT = ['ink', 'quiet', 'link', 'must-do', 'right', 'caution'];
const LINES = ['edge', 'focus'];
const pairs = (inks: readonly string[], grounds: readonly string[]) =>
  inks.flatMap((ink) => grounds.map((ground) => [ink, ground] as const));
const TINTED = ['must-do', 'right', 'caution'].flatMap((ink) =>
  pairs([ink, 'ink', 'quiet', 'link'], [`${ink}-ground`]),
);

const of = (tokens: Tokens, name: string) => {
  const value = tokens[name];
  if (value === undefined) throw new Error(`There is no token --${name}.`);
  return value;
};

it('knows the contrast of black on white and of a colour on itself', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  expect(contrast('#777777', '#777777')).toBe(1);
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});

describe.each(Object.entries(SHEETS))('on the %s page', (_sheet, tokens) => {
  it.each([...pairs(TEXT, GROUNDS), ...TINTED, ['on-must-do', 'must-do'] as const])(
    'text in %s on %s has a contrast of at least 7',
    (ink, ground) => {
      expect(contrast(of(tokens, ink), of(tokens, ground))).toBeGreaterThanOrEqual(7);
    },
  );

  it.each(pairs(LINES, GROUNDS))('a line in %s on %s has a contrast of at least 3', (line, ground) => {
    expect(contrast(of(tokens, line), of(tokens, ground))).toBeGreaterThanOrEqual(3);
  });
});

describe('the colour tokens', () => {
  it('are alike for a dark device and for a dark page by choice', () => {
    expect(block(":root:not([data-theme='light'])", 'prefers-color-scheme: dark')).toEqual(SHEETS.dark);
  });

  it.each(['dark', 'print'] as const)('have the same names on the %s page as on the light one', (sheet) => {
    expect(Object.keys(SHEETS[sheet]).sort()).toEqual(Object.keys(SHEETS.light).sort());
  });
});
