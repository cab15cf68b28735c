import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  DRAWN_ASKS,
  DRAWN_TARGETS,
  exercises,
  LEVELS,
  MARK_TARGETS,
  NUMBER_ASKS,
} from '../../../src/solver/exercises/index.ts';
import { KINDS } from './draws.ts';

/**
 * What seeds give, for ever: somebody has these exercises on paper. `NEW_VECTORS=1` writes the file anew, in a
 * run of its own that compares nothing; a change here means that printed sheets of earlier versions no longer
 * match their codes.
 */
const FILE = new URL('./vectors.json', import.meta.url);
const SEEDS = [0, 1, 2, 7, 97, 4294967295, '', 'saltmarsh', 'tuesday/3', 'estuary blue'];

const drawn = KINDS.flatMap((kind) =>
  LEVELS.flatMap((level) => SEEDS.map((seed) => [`${kind} ${level} "${seed}"`, exercises[kind].make(seed, level)])),
);
/** What is asked only by its name. */
const asked = [
  ...NUMBER_ASKS.filter((ask) => !DRAWN_ASKS.some((each) => each === ask)).flatMap((ask) =>
    LEVELS.map((level) => [`number ${ask} ${level}`, exercises.number.make('saltmarsh', level, { ask })]),
  ),
  ...MARK_TARGETS.filter((target) => !DRAWN_TARGETS.some((each) => each === target)).flatMap((target) =>
    LEVELS.map((level) => [`mark ${target} ${level}`, exercises.mark.make('saltmarsh', level, { target })]),
  ),
];
const now = Object.fromEntries([...drawn, ...asked]);

if (process.env['NEW_VECTORS'] === '1') {
  test('the vectors are written anew', () => {
    const lines = Object.entries(now).map(([name, problem]) => `  ${JSON.stringify(name)}: ${JSON.stringify(problem)}`);
    writeFileSync(FILE, `{\n${lines.join(',\n')}\n}\n`);
    expect(Object.keys(now).length).toBeGreaterThan(100);
  });
} else {
  test('a seed gives the exercise it always gave', () => expect(now).toEqual(JSON.parse(readFileSync(FILE, 'utf8'))));
}
