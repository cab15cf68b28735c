import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Chart, PaletteEntry } from '../../src/solver/chart.ts';
import { type ChartFault, checkChart, keysOf } from '../../src/solver/chart-check.ts';
import { blankOf, groundOf, isPicture } from '../../src/solver/chart-ground.ts';
import {
  type ChartMistake,
  type ChartMistakeKey,
  DEFAULT_KEYS,
  formatChart,
  parseChart,
} from '../../src/solver/chart-text.ts';

const BOAT = `chart Little boat
colour . chalk #f4ead5 ground
colour # tar #20283c
colour o estuary blue #2f6378
colour _ outside none blank

__....__
_...#.._
...##...
#######.
.#####..
oooooooo
`;

function parsed(text: unknown): Chart {
  const result = parseChart(text);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.chart;
}

function mistake(text: unknown): ChartMistake {
  const result = parseChart(text);
  if (result.ok) throw new Error('this text has no mistake');
  return result.problem;
}

function chartOf(rows: readonly string[], palette: readonly PaletteEntry[]): Chart {
  const cells = Uint8Array.from(rows.join(''), (cell) => DEFAULT_KEYS.indexOf(cell));
  return { width: rows[0]?.length ?? 0, height: rows.length, palette, cells };
}

const hex = fc.oneof(
  fc.stringMatching(/^#[0-9a-fA-F]{6}$/),
  fc.stringMatching(/^#[0-9a-f]{3}$/),
  fc.constantFrom('madder', 'light blue'),
);
const words = fc.oneof(
  fc.constantFrom(
    'tar',
    'estuary blue',
    'ground',
    'none',
    '#fff',
    'a #fff ground',
    'none blank',
    '5" rope',
    '',
    ' ',
    'two  spaces',
  ),
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.string({ maxLength: 12 }),
);

/** A key for each entry: the default one throughout, any keys in any order, or default ones with others among them. */
const keyLists = fc.oneof(
  fc.constant([...DEFAULT_KEYS]),
  fc.shuffledSubarray([...DEFAULT_KEYS, ...'XYZ"\\\'{}|é水_;,/'], { minLength: 32, maxLength: 32 }),
  fc
    .array(fc.boolean(), { minLength: 32, maxLength: 32 })
    .map((own) =>
      own.map(
        (is, place) => ('ABCDEFGHIJKLMNOPQRSTUVWXYZ"\\é水_;'[place] ?? '').slice(0, is ? 1 : 0) || DEFAULT_KEYS[place],
      ),
    ),
);

/** Charts of every kind that code may hand in: with and without keys, title, ground, blank. */
const charts: fc.Arbitrary<Chart> = fc
  .record({
    title: fc.option(words, { nil: undefined }),
    width: fc.integer({ min: 2, max: 24 }),
    height: fc.integer({ min: 1, max: 24 }),
    names: fc.array(fc.tuple(words, hex), { minLength: 1, maxLength: 32 }),
    ground: fc.nat({ max: 40 }),
    blank: fc.nat({ max: 40 }),
    keys: keyLists,
    seed: fc.infiniteStream(fc.nat({ max: 31 })),
  })
  .map(({ title, width, height, names, ground, blank, keys, seed }) => {
    const palette = names.map(([name, colour], place): PaletteEntry => {
      const key = keys[place] ?? '';
      return {
        name,
        colour: place === blank ? 'none' : colour,
        ...(key === DEFAULT_KEYS[place] ? {} : { key }),
        ...(place === blank ? { blank: true } : {}),
        ...(place === ground && place !== blank ? { ground: true } : {}),
      };
    });
    const cells = Uint8Array.from({ length: width * height }, () => (seed.next().value ?? 0) % palette.length);
    return { ...(title === undefined ? {} : { title }), width, height, palette, cells };
  });

describe('the text form of a chart', () => {
  test('says the same chart after it is written and read again', () => {
    fc.assert(
      fc.property(charts, (chart) => {
        expect(parsed(formatChart(chart))).toStrictEqual(chart);
      }),
    );
  });

  test('is the same text after it is read and written again', () => {
    expect(formatChart(parsed(BOAT))).toBe(BOAT);
    fc.assert(
      fc.property(charts, (chart) => {
        const text = formatChart(chart);
        expect(formatChart(parsed(text))).toBe(text);
      }),
    );
  });

  test('holds title, sizes, colours and cells, row 1 and column 1 first', () => {
    const chart = parsed(BOAT);
    expect(chart).toMatchObject({ title: 'Little boat', width: 8, height: 6 });
    expect(chart.palette).toStrictEqual([
      { name: 'chalk', colour: '#f4ead5', ground: true },
      { name: 'tar', colour: '#20283c' },
      { name: 'estuary blue', colour: '#2f6378' },
      { name: 'outside', colour: 'none', blank: true, key: '_' },
    ]);
    expect([...chart.cells.subarray(8, 16)]).toEqual([3, 0, 0, 0, 1, 0, 0, 3]);
  });

  test('reads the same with either line end, a byte-order mark, spaces after the colours and empty lines around', () => {
    const chart = parsed(BOAT);
    const [header = '', rows = ''] = BOAT.split('\n\n');
    expect(parsed(BOAT.replaceAll('\n', '\r\n'))).toStrictEqual(chart);
    expect(parsed(`\uFEFF${BOAT}`)).toStrictEqual(chart);
    expect(parsed(`\n${header.replaceAll('\n', '  \t\n')} \n \n\n${rows}\n \n`)).toStrictEqual(chart);
    expect(parsed(BOAT.trimEnd())).toStrictEqual(chart);
  });

  test('needs no title', () => {
    const untitled = parsed(BOAT.slice(BOAT.indexOf('\n') + 1));
    expect('title' in untitled).toBe(false);
    expect(formatChart(untitled)).toBe(BOAT.slice(BOAT.indexOf('\n') + 1));
  });

  test('gives 32 colours without keys 32 keys', () => {
    const palette = Array.from({ length: 32 }, (_, place) => ({ name: `dye ${place}`, colour: '#123456' }));
    const chart: Chart = { width: 32, height: 1, palette, cells: Uint8Array.from({ length: 32 }, (_, at) => at) };
    expect(formatChart(chart)).toMatch(/\n\n\.#ox\+\*=-~:%@&\$\?!abcdeghkmnprstuw\n$/);
    expect(parsed(formatChart(chart))).toStrictEqual(chart);
  });

  test('never stops at a text that was spoilt by hand, and points at a place inside it', () => {
    const spoiled = fc.tuple(
      charts,
      fc.array(fc.tuple(fc.nat(), fc.nat({ max: 9 }), fc.string({ unit: 'binary' })), { minLength: 1 }),
    );
    fc.assert(
      fc.property(spoiled, ([chart, slips]) => {
        let text = formatChart(chart);
        for (const [where, gone, typed] of slips) {
          const at = where % (text.length + 1);
          text = text.slice(0, at) + typed + text.slice(at + gone);
        }
        expectPlaceInside(text);
      }),
    );
  });

  test('never stops at a text whose lines were lost, doubled or put in another order', () => {
    fc.assert(
      fc.property(charts, fc.array(fc.nat(), { maxLength: 30 }), (chart, order) => {
        const lines = formatChart(chart).split('\n');
        expectPlaceInside(order.map((number) => lines[number % lines.length]).join('\n'));
      }),
    );
  });

  test('never stops at anything that is no text', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        fc.pre(typeof value !== 'string');
        expect(mistake(value)).toMatchObject({ line: 1, column: 1, values: { mistake: 'not-text' } });
      }),
    );
  });
});

function expectPlaceInside(text: string): void {
  const result = parseChart(text);
  if (result.ok) {
    expect(checkChart(result.chart)).toBeNull();
    return;
  }
  const { line, column, values } = result.problem;
  const lines = text.replace(/^\uFEFF/, '').split(/\r?\n/);
  expect(line).toBeGreaterThanOrEqual(1);
  expect(line).toBeLessThanOrEqual(lines.length);
  expect(column).toBeGreaterThanOrEqual(1);
  expect(column).toBeLessThanOrEqual((lines[line - 1] ?? '').length + 1);
  expect(values.stands).toBeDefined();
  expect(values.works).toBeDefined();
}

describe('a mistake in the text of a chart', () => {
  const ink = 'colour # tar #20283c\n';
  const two = `colour . chalk #fff\n${ink}`;
  const long = Array.from(
    { length: 33 },
    (_, place) => `colour ${'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456'[place]} dye #000\n`,
  );
  type Case = [
    says: string,
    text: unknown,
    key: ChartMistakeKey,
    line: number,
    column: number,
    stands?: string | number,
  ];
  const cases: Case[] = [
    ['something that is no text can be no chart', 42, 'not-text', 1, 1, 'number'],
    ['an empty text holds no chart', '', 'empty-text', 1, 1],
    ['a text of empty lines holds no chart', ' \n\r\n\t\n', 'empty-text', 1, 1],
    [
      'a line that is neither title nor colour has no meaning above the rows',
      `shade . chalk #fff\n${two}\n.#\n`,
      'unknown-line',
      1,
      1,
      'shade',
    ],
    ['rows that follow the colours need an empty line before them', `${two}.#.\n`, 'no-empty-line', 3, 1, '.#.'],
    ['a title line needs its title', `chart \n${two}\n.#\n`, 'no-title', 1, 7],
    ['a chart has one title', `chart A\n${two}chart B\n\n.#\n`, 'second-title', 4, 1, 'B'],
    ['a colour line needs its key', 'colour\n\n..\n', 'no-key', 1, 7],
    ['a key is one character, not two', 'colour ## tar #000\n\n##\n', 'key-not-a-key', 1, 8, '##'],
    ['a key is a character one can see', 'colour \u200b tar #000\n\n..\n', 'key-not-a-key', 1, 8, '\u200b'],
    ['a key stands for one colour', `${ink}colour # rust #a4502c\n\n##\n`, 'key-taken', 2, 8, '#'],
    ['a colour line needs more than its key', 'colour # \n\n##\n', 'no-name', 1, 10],
    ['a colour needs a name', 'colour # #20283c\n\n##\n', 'no-name', 1, 10, '#20283c'],
    ['a name needs a colour', 'colour # tar\n\n##\n', 'no-colour', 1, 13],
    ['a name needs a colour before its mark', 'colour # deep tar ground\n\n##\n', 'no-colour', 1, 18, 'ground'],
    ['a quoted name needs a colour', 'colour # "tar"\n\n##\n', 'no-colour', 1, 15],
    ['a colour has three or six figures', `colour # tar #20283\n\n##\n`, 'bad-colour', 1, 14, '#20283'],
    ['a colour in quotes carries no address', 'colour # tar "url(x)"\n\n##\n', 'bad-colour', 1, 14, 'url(x)'],
    ['only the blank entry may have no colour', 'colour # tar none\n\n##\n', 'none-without-blank', 1, 14],
    ['a mark is ground or blank', 'colour # tar #20283c grund\n\n##\n', 'unknown-mark', 1, 22, 'grund'],
    ['a chart has one ground', 'colour . chalk #fff ground\ncolour # tar #000 ground\n\n.#\n', 'second-ground', 2, 19],
    ['a chart has one blank entry', 'colour . out none blank\ncolour # off none blank\n\n.#\n', 'second-blank', 2, 19],
    ['quotes that open must close', 'colour # "tar #20283c\n\n##\n', 'open-quotes', 1, 10],
    ['quotes hold what a JSON string may hold', 'chart "a\\q"\n', 'open-quotes', 1, 7],
    ['a quoted title is the whole title', `chart "A" boat\n${ink}\n##\n`, 'after-quotes', 1, 11, 'boat'],
    ['a quoted name is the whole name', 'colour # "tar" black #000\n\n##\n', 'after-quotes', 1, 16, 'black'],
    ['a quoted name stands apart', 'colour # "tar"#000\n\n##\n', 'after-quotes', 1, 15, '#000'],
    ['a name is quoted whole or not at all', 'colour # old "tar" #000\n\n##\n', 'after-quotes', 1, 14, 'tar'],
    ['a chart has at most 32 colours', `${long.join('')}\nAB\n`, 'too-many-colours', 33, 1, 33],
    ['rows need colours', 'chart Boat\n\n', 'no-colours', 1, 11],
    ['colours need rows', ink, 'no-rows', 1, 21],
    ['colours need rows after the empty line too', `${ink}\n\n`, 'no-rows', 1, 21],
    ['no row of a chart is empty', `${two}\n.#\n\n.#\n`, 'empty-row', 5, 1],
    ['every cell is one of the keys', `${two}\n.#\n.?\n`, 'unknown-key', 5, 2, '?'],
    [
      'a cell beyond the common characters is shown whole',
      `${two}\n.#\n.\u{1f41f}\n`,
      'unknown-key',
      5,
      2,
      '\u{1f41f}',
    ],
    ['a row holds no spaces', `${two}\n.#\n.# \n`, 'space-in-row', 5, 3, ' '],
    ['a row is not shorter than the first', `${two}\n.#.\n.#\n`, 'ragged-row', 5, 3, 2],
    ['a row is not longer than the first', `${two}\n.#.\n.#.#.\n`, 'ragged-row', 5, 4, 5],
    ['a chart has at least two columns', `${two}\n.\n#\n`, 'too-narrow', 4, 2, 1],
    ['a chart has at most 400 columns', `${two}\n${'.'.repeat(401)}\n`, 'too-wide', 4, 401, 401],
    ['a chart has at most 1000 rows', `${two}\n${'.#\n'.repeat(1001)}`, 'too-high', 1004, 1, 1001],
  ];

  test.each(cases)('%s', (_, text, key, line, column, stands) => {
    const problem = mistake(text);
    expect(problem).toMatchObject({ code: 'chart-mistake', line, column, values: { mistake: key } });
    if (stands !== undefined) expect(problem.values.stands).toBe(stands);
  });

  test('says what would work there', () => {
    expect(mistake(`${two}\n.?\n`).values.works).toBe('. #');
    expect(mistake(`${two}\n.#.\n.#\n`).values.works).toBe(3);
    expect(mistake(`${two}\n${'.'.repeat(401)}\n`).values.works).toBe(400);
    expect(mistake('colour # tar #20283\n\n##\n').values.works).toBe('#rrggbb, #rgb');
    expect(mistake('colour # tar #20283c grund\n\n##\n').values.works).toBe('ground, blank');
    expect(mistake('colour . a #000\ncolour . b #000\n\n..\n').values.works).toMatch(/^# o x/);
  });

  test('shows a very long word by its beginning', () => {
    expect(mistake(`colour # tar #${'0'.repeat(5000)}\n\n##\n`).values.stands).toBe(`#${'0'.repeat(39)}…`);
  });
});

describe('a chart that code hands in', () => {
  const good = parsed(BOAT);
  const [chalk = { name: '', colour: '' }, tar = { name: '', colour: '' }] = good.palette;

  test('passes when it is a chart', () => {
    fc.assert(
      fc.property(charts, (chart) => {
        expect(checkChart(chart)).toBeNull();
      }),
    );
  });

  test('is refused, not thrown at, whatever it is', () => {
    const near = fc.record(
      {
        title: fc.anything(),
        width: fc.oneof(fc.constant(2), fc.anything()),
        height: fc.oneof(fc.constant(1), fc.anything()),
        palette: fc.oneof(fc.array(fc.anything()), fc.array(fc.record({ name: fc.anything(), colour: fc.anything() }))),
        cells: fc.oneof(fc.uint8Array(), fc.anything()),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.oneof(fc.anything(), near), (value) => {
        const problem = checkChart(value);
        if (problem === null) expect(parsed(formatChart(value as Chart)).width).toBe((value as Chart).width);
      }),
    );
  });

  const sizes: [says: string, change: object, code: string, field: string][] = [
    ['a chart one column wide is too narrow', { width: 1 }, 'out-of-range', 'width'],
    ['a chart 401 columns wide is too wide', { width: 401 }, 'out-of-range', 'width'],
    ['a chart has whole columns', { width: 7.5 }, 'not-a-whole-number', 'width'],
    ['a chart has a row', { height: 0 }, 'out-of-range', 'height'],
    ['a chart has at most 1000 rows', { height: 1001 }, 'out-of-range', 'height'],
    ['a chart has a colour', { palette: [] }, 'out-of-range', 'palette'],
    ['a chart has no 33rd colour', { palette: Array.from({ length: 33 }, () => tar) }, 'out-of-range', 'palette'],
  ];
  test.each(sizes)('%s', (_, change, code, field) => {
    expect(checkChart({ ...good, ...change })).toMatchObject({ code, field });
  });

  const faults: [says: string, change: object, fault: ChartFault][] = [
    ['a title is text', { title: 7 }, 'title-not-text'],
    ['a palette is a list', { palette: { 0: tar } }, 'palette-not-a-list'],
    ['a palette holds entries', { palette: ['tar'] }, 'entry-not-an-entry'],
    ['an entry has a name', { palette: [{ colour: '#000' }] }, 'name-not-text'],
    ['an entry has a colour', { palette: [{ name: 'tar', colour: '#00' }] }, 'colour-not-a-colour'],
    ['only the blank entry has no colour', { palette: [{ name: 'tar', colour: 'none' }] }, 'colour-not-a-colour'],
    ['a mark is set or not', { palette: [{ ...tar, ground: 'yes' }] }, 'mark-not-a-mark'],
    [
      'an entry is not ground and blank at once',
      { palette: [{ ...tar, ground: true, blank: true }] },
      'both-ground-and-blank',
    ],
    ['a chart has one ground', { palette: [chalk, { ...tar, ground: true }] }, 'second-ground'],
    [
      'a chart has one blank entry',
      {
        palette: [
          { ...tar, blank: true },
          { ...tar, blank: true },
        ],
      },
      'second-blank',
    ],
    ['a key is one character', { palette: [{ ...tar, key: 'tt' }] }, 'key-not-a-key'],
    ['a key stands for one colour', { palette: [{ ...tar, key: '#' }, chalk] }, 'key-taken'],
    ['cells are bytes', { cells: [...good.cells] }, 'cells-not-bytes'],
    ['there are as many cells as columns times rows', { cells: good.cells.subarray(1) }, 'cells-count'],
  ];
  test.each(faults)('%s', (_, change, fault) => {
    expect(checkChart({ ...good, ...change })).toMatchObject({ code: 'chart-mistake', values: { mistake: fault } });
  });

  test('has no cell outside its palette, and the first such cell is named', () => {
    const cells = good.cells.slice();
    cells[11] = 4;
    expect(checkChart({ ...good, cells })).toMatchObject({
      row: 2,
      values: { mistake: 'index-outside-palette', column: 4, works: 3 },
    });
  });

  test('is not written while something is wrong with it', () => {
    expect(() => formatChart({ ...good, width: 7 })).toThrow(RangeError);
  });
});

describe('ground and blank', () => {
  const plain = (...names: string[]): PaletteEntry[] => names.map((name) => ({ name, colour: '#777' }));

  test('the ground is the marked entry, however rare', () => {
    const [chalk, tar] = plain('chalk', 'tar');
    if (chalk === undefined || tar === undefined) throw new Error('two entries');
    expect(groundOf(chartOf(['..', '..'], [chalk, { ...tar, ground: true }]))).toBe(1);
  });

  test('without a mark the ground is the commonest colour on the rim, however common another is inside', () => {
    expect(groundOf(chartOf(['#####', '#...#', '#...#', '#...#', '#####'], plain('chalk', 'tar')))).toBe(1);
    expect(groundOf(chartOf(['o####', '#.oo#', '#ooo#', '#ooo#', 'oo##.'], plain('chalk', 'tar', 'rust')))).toBe(1);
  });

  test('a rim shared evenly belongs to the earlier entry', () => {
    expect(groundOf(chartOf(['##..'], plain('chalk', 'tar')))).toBe(0);
    expect(groundOf(chartOf(['oo##', '##oo'], plain('chalk', 'tar', 'rust')))).toBe(1);
  });

  test('each corner is counted once, and so is a single row or a column pair', () => {
    expect(groundOf(chartOf(['.##.', '.oo.', 'o##o'], plain('chalk', 'tar', 'rust')))).toBe(0);
    expect(groundOf(chartOf(['#.', '#.', '#o'], plain('chalk', 'tar', 'rust')))).toBe(1);
  });

  test('blank cells are no ground', () => {
    const palette: PaletteEntry[] = [{ name: 'outside', colour: 'none', blank: true }, ...plain('tar', 'rust')];
    expect(groundOf(chartOf(['..o.', '.##.', '....'], palette))).toBe(2);
    expect(groundOf(chartOf(['...', '.o.', '...'], palette))).toBe(1);
    expect(blankOf(chartOf(['...', '.o.', '...'], palette))).toBe(0);
    expect(blankOf(chartOf(['..'], plain('chalk')))).toBeNull();
  });

  test('the picture is what is neither ground nor blank', () => {
    const inPicture = isPicture(parsed(BOAT));
    expect([0, 1, 2, 3].map(inPicture)).toEqual([false, true, true, false]);
    expect(keysOf(parsed(BOAT))).toEqual(['.', '#', 'o', '_']);
  });
});
