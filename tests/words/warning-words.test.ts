import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Fit, planRows } from '../../src/solver/index.ts';
import { inspect, type Warning, type WarningCode } from '../../src/solver/inspect.ts';
import { warningWords } from '../../src/words/warning-words.ts';
import { tries } from '../seed.ts';
import { chartedPieces } from '../solver/worlds.ts';
import { expectSayable, expectSentences, strict } from './sayable.ts';

const asked = (warning: Warning): Warning => ({ ...warning, values: strict(warning.values) });

/** The inspector's own codes are all met in random pieces; the compiler keeps this list complete. */
const CODES: Readonly<Record<WarningCode, true>> = {
  'width-differs': true,
  'height-differs': true,
  'never-full-width': true,
  'bundle-over-most': true,
  'first-row-not-plain': true,
  hole: true,
  'picture-cut': true,
  'too-many-colours': true,
  'colour-change-on-turning-knot': true,
  'float-too-long': true,
};

describe('warnings in words', () => {
  test('every warning says what was found and where, why it matters, and what to do', () => {
    const met = new Set<WarningCode>();
    fc.assert(
      fc.property(chartedPieces, fc.integer({ min: 0, max: 4 }), ({ fit, bundles, startSide, chart }, blank) => {
        const names = ['tar', 'chalk', 'rust', 'samphire', 'estuary blue'];
        const palette = names.map((name, index) => ({
          name,
          colour: '#123456',
          ...(index === blank ? { blank: true as const } : index === (blank + 1) % 5 ? { ground: true as const } : {}),
        }));
        // A fifth colour in stretches of its own, so that rows get too many.
        const cells = chart.cells.map((colour, cell) => (cell % 11 === 10 ? 4 : colour));
        const piece: Fit = { ...fit, maxBundle: 2 };
        const rows = planRows({ fit, bundles, startSide });
        if (!Array.isArray(rows)) throw new Error('not planned');
        const told = { ...chart, palette, cells };
        const narrower = { ...told, width: told.width - 1, cells: cells.slice(told.height) };
        const lower = { ...told, height: told.height + 1, cells: new Uint8Array(told.width * (told.height + 1)) };
        for (const each of [told, narrower, lower]) {
          for (const warning of inspect({ chart: each, fit: piece, bundles, rows })) {
            met.add(warning.code);
            const { found, why, todo } = warningWords(asked(warning), palette);
            for (const text of [found, why, todo]) expectSentences(text);
            if (warning.row !== undefined) expect(found).toMatch(new RegExp(`\\brow ${warning.row}\\b`, 'i'));
          }
        }
      }),
      // One piece in thirty has a row of too many colours, and none of the warnings may be missed.
      tries(500),
    );
    expect([...met].sort()).toEqual(Object.keys(CODES).sort());
  });

  test('a long float is told by its colour, its columns and what to do about it', () => {
    const float: Warning = {
      code: 'float-too-long',
      row: 9,
      columns: [4, 10],
      values: { colour: 1, columns: 7, rows: 0, floats: 3 },
    };
    const palette = [
      { name: 'tar', colour: '#222222' },
      { name: 'chalk', colour: '#eeeeee' },
    ];
    const { found, todo } = warningWords(asked(float), palette);
    expect(found).toBe(
      'Row 9, columns 4 to 10: the chalk string runs behind 7 columns to where it is needed next. It is the longest of 3 in this row.',
    );
    expect(todo).toContain('Tie every fifth base over it');
    expectSayable(warningWords({ ...float, values: { ...float.values, rows: 2, floats: 1 } }, palette).found);
  });
});
