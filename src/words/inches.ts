import { INCH } from '../solver/inch.ts';

const PARTS: Readonly<Record<string, number>> = { '¼': 0.25, '½': 0.5, '¾': 0.75 };

/** A length in mm as inches to type, to a thousandth. */
export const inchesOf = (mm: number): number => Math.round((mm / INCH) * 1000) / 1000;

/** Inches in a text without a unit: with a fraction as a ruler has it, with a sign for a part, or as a decimal figure. */
function inchesIn(text: string): number | null {
  const [, ones = '0', over, under] = /^(?:(\d+)\s+)?(\d+)\/([1-9]\d*)$/.exec(text) ?? [];
  if (over !== undefined) return Number(ones) + Number(over) / Number(under);
  const [, before = '', part] = /^(\d*)\s*([¼½¾])$/.exec(text) ?? [];
  if (part !== undefined) return Number(before) + (PARTS[part] ?? 0);
  return /^(\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : null;
}

/**
 * Reads inches as people type them: `1.5`, `1,5`, `5/8`, `1 5/8`, `1½`, with the sign for inches or without.
 *
 * @returns mm to a hundredth; null where it can't be read
 */
export function readInches(text: string): number | null {
  const inches = inchesIn(
    text
      .replace(/\s*(in|″|")\s*$/, '')
      .replace(',', '.')
      .trim(),
  );
  return inches === null ? null : Math.round(inches * INCH * 100) / 100;
}
