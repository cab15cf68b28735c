/**
 * One small mark for each colour of a palette, in a cell of 10 × 10, so that a chart reads in black and white. The marks
 * are this workbook's own: dot, bar, ring, cross, slash, wedge, dash, square, fall, gable, pair, plus, diamond, wave, rails
 * and corner; past sixteen the same again with a dot in the corner.
 */
const MARKS =
  'M5 5h0|M5 3v4|M5 3.2a1.8 1.8 0 1 0 .1 0z|M3.3 3.3l3.4 3.4m0-3.4l-3.4 3.4|M3.3 6.7l3.4-3.4|M3 3.4h4l-2 3.4z|M3 5h4|M3.4 3.4h3.2v3.2H3.4z|M3.3 3.3l3.4 3.4|M3 6.4l2-3 2 3|M3.5 5h0m3 0h0|M5 3v4M3 5h4|M5 2.8L7.2 5 5 7.2 2.8 5z|M2.6 5q1.2-2.4 2.4 0t2.4 0|M4 3v4m2-4v4|M3.4 6.6V3.4h3.2'.split(
    '|',
  );

/** Path data of the mark of a palette entry, from its index. */
export const markOf = (index: number): string =>
  (MARKS[index % MARKS.length] ?? '') + (index < MARKS.length ? '' : 'M1.8 1.8h0');

/** Whether a mark on this colour must be light: the relative luminance of WCAG 2.2 at which black and white contrast alike. */
export function isDark(colour: string): boolean {
  const digits = colour.replace('#', '');
  const part = digits.length < 6 ? 1 : 2;
  const [red = 0, green = 0, blue = 0] = [0, 1, 2].map((channel) => {
    const raw = digits.slice(channel * part, channel * part + part);
    const value = Number.parseInt(part === 1 ? raw + raw : raw, 16) / 255 || 0;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue < 0.179;
}
