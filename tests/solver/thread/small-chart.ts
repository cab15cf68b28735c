import type { Chart } from '../../../src/solver/index.ts';

const NAMES = ['tar', 'chalk', 'rust', 'samphire', 'estuary blue', 'sand', 'plum'];

/** A chart from rows of digits, each digit a palette index. */
export function chartFrom(lines: readonly string[]): Chart {
  const width = lines[0]?.length ?? 0;
  return {
    width,
    height: lines.length,
    palette: NAMES.map((name, index) => ({ name, colour: `#10203${index}` })),
    cells: Uint8Array.from(lines.join(''), Number),
  };
}
