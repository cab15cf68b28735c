import type { Chart } from './chart.ts';
import { CHART_LIMITS, isColour, isKey, keyAt } from './chart-form.ts';
import type { Problem } from './problem.ts';
import { shown, wholeNumberProblem } from './problem.ts';

/** What can be wrong with a chart that code hands in, beyond its size; a sentence for each is in `src/words/`. */
export type ChartFault =
  | 'title-not-text'
  | 'palette-not-a-list'
  | 'entry-not-an-entry'
  | 'name-not-text'
  | 'colour-not-a-colour'
  | 'mark-not-a-mark'
  | 'both-ground-and-blank'
  | 'second-ground'
  | 'second-blank'
  | 'key-not-a-key'
  | 'key-taken'
  | 'cells-not-bytes'
  | 'cells-count'
  | 'index-outside-palette';

type Loose = Readonly<Record<string, unknown>>;
const isRecord = (value: unknown): value is Loose => typeof value === 'object' && value !== null;

const fault = (
  field: string,
  mistake: ChartFault,
  entered: unknown,
  values: Readonly<Record<string, number | string>> = {},
): Problem => ({ code: 'chart-mistake', field, entered: shown(entered), values: { mistake, ...values } });

/** By its tag, so that bytes from a worker or another window count too. */
const isBytes = (value: unknown): value is Uint8Array =>
  Object.prototype.toString.call(value) === '[object Uint8Array]';

const isMark = (value: unknown): boolean => value === undefined || typeof value === 'boolean';

function entryProblem(entry: unknown, place: number): Problem | null {
  const values = { entry: place + 1 };
  if (!isRecord(entry)) return fault('palette', 'entry-not-an-entry', entry, values);
  const { name, colour, key, ground, blank } = entry;
  if (typeof name !== 'string') return fault('name', 'name-not-text', name, values);
  if (!isMark(ground)) return fault('ground', 'mark-not-a-mark', ground, values);
  if (!isMark(blank)) return fault('blank', 'mark-not-a-mark', blank, values);
  if (ground === true && blank === true) return fault('palette', 'both-ground-and-blank', name, values);
  if (typeof colour !== 'string' || !isColour(colour, blank === true))
    return fault('colour', 'colour-not-a-colour', colour, values);
  if (key !== undefined && !(typeof key === 'string' && isKey(key))) return fault('key', 'key-not-a-key', key, values);
  return null;
}

function paletteProblem(palette: readonly unknown[]): Problem | null {
  const wrongCount = wholeNumberProblem('palette', palette.length, { low: 1, high: CHART_LIMITS.colours });
  if (wrongCount !== null) return wrongCount;
  const keys = new Set<string>();
  let grounds = 0;
  let blanks = 0;
  for (let place = 0; place < palette.length; place += 1) {
    const entry = palette[place];
    const problem = entryProblem(entry, place);
    if (problem !== null) return problem;
    if (!isRecord(entry)) continue;
    const key = keyAt(typeof entry['key'] === 'string' ? entry['key'] : undefined, place);
    if (keys.has(key)) return fault('key', 'key-taken', key, { entry: place + 1 });
    keys.add(key);
    if (entry['ground'] === true) grounds += 1;
    if (entry['blank'] === true) blanks += 1;
    if (grounds > 1) return fault('ground', 'second-ground', entry['name'], { entry: place + 1 });
    if (blanks > 1) return fault('blank', 'second-blank', entry['name'], { entry: place + 1 });
  }
  return null;
}

/**
 * Whether a value that code hands in is a chart: null when it is, else the first problem.
 * Never throws. 'no-chart' is no object at all; 'not-a-whole-number' and 'out-of-range' are about
 * the fields `width`, `height` and `palette` (its length); everything else is a 'chart-mistake'
 * with `values.mistake`, a `ChartFault`, and `values.entry` (from 1), `row` and `values.column`
 * (from 1) or `values.stands` and `values.works` where they apply. Every chart that passes can be
 * written with `formatChart` and read again.
 */
export function checkChart(value: unknown): Problem | null {
  if (!isRecord(value)) return { code: 'no-chart', field: 'chart', entered: shown(value), values: {} };
  const { title, width, height, palette, cells } = value;
  const wrongSize =
    wholeNumberProblem('width', width, CHART_LIMITS.width) ?? wholeNumberProblem('height', height, CHART_LIMITS.height);
  if (wrongSize !== null) return wrongSize;
  if (title !== undefined && typeof title !== 'string') return fault('title', 'title-not-text', title);
  if (!Array.isArray(palette)) return fault('palette', 'palette-not-a-list', palette);
  const wrongPalette = paletteProblem(palette);
  if (wrongPalette !== null) return wrongPalette;
  if (!isBytes(cells)) return fault('cells', 'cells-not-bytes', cells);
  const columns = Number(width);
  const wanted = columns * Number(height);
  if (cells.length !== wanted)
    return fault('cells', 'cells-count', cells.length, { stands: cells.length, works: wanted });
  const colours = palette.length;
  let greatest = 0;
  // Counted, not iterated: every plan of a large chart passes here.
  for (let cell = 0; cell < cells.length; cell += 1) greatest = Math.max(greatest, cells[cell] ?? 0);
  if (greatest < colours) return null;
  const at = cells.findIndex((index) => index >= colours);
  return {
    ...fault('cells', 'index-outside-palette', cells[at], { column: (at % columns) + 1, works: colours - 1 }),
    row: Math.floor(at / columns) + 1,
  };
}

/** The character that stands for each palette entry in the text form, by palette index. */
export const keysOf = (chart: Chart): readonly string[] => chart.palette.map((entry, place) => keyAt(entry.key, place));
