import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { exercises } from '../../../src/solver/exercises/index.ts';

const ROOT = resolve(import.meta.dirname, '../../../src/solver/exercises');
const PARTS = [
  'problem.ts',
  'make.ts',
  'solve.ts',
  'judge.ts',
  'fade.ts',
  'solution.ts',
  'hints.ts',
  'clues.ts',
  'missteps.ts',
  'index.ts',
];
const folders = readdirSync(ROOT).filter((name) => statSync(join(ROOT, name)).isDirectory());

test('each kind of exercise has a folder, and each folder a kind', () =>
  expect(folders.sort()).toEqual(Object.keys(exercises).sort()));

test.each(folders)('the folder of %s has every part of a kind', (folder) =>
  expect(readdirSync(join(ROOT, folder))).toEqual(expect.arrayContaining(PARTS)),
);

/** The files that a file brings along; what is imported as a type alone is left out by the compiler. */
function bringsAlong(file: string, seen = new Set<string>()): Set<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const [, names, path] of readFileSync(file, 'utf8').matchAll(
    /^(?:import|export) ([^;]*?) from '(\.[^']+)';/gms,
  )) {
    const typesAlone = names?.startsWith('type ') || /^\{(?:\s*type [^,}]+,?)+\s*\}$/.test(names ?? '');
    if (!typesAlone && path) bringsAlong(resolve(dirname(file), path), seen);
  }
  return seen;
}

test('asking and marking bring along no slips, no hints and no worked steps', () => {
  const files = [...bringsAlong(join(ROOT, 'asking.ts'))];
  expect(files).toContain(join(ROOT, 'sum/judge.ts'));
  expect(files.filter((file) => /missteps|solution|helping|like\.ts/.test(file))).toEqual([]);
});

test('the slips of one family of figures bring along none of another family', () => {
  const family = {
    'fit-missteps.ts': 'fitting',
    'row-missteps.ts': 'rows',
    'thread-missteps.ts': 'thread',
    'measure-missteps.ts': 'measuring',
  };
  for (const [file, own] of Object.entries(family)) {
    const brought = [...bringsAlong(join(ROOT, 'number', file))].map((path) => /missteps\/(\w+)\.ts$/.exec(path)?.[1]);
    expect(
      brought.filter((name) => name !== undefined && ['fitting', 'rows', 'thread', 'measuring'].includes(name)),
    ).toEqual([own]);
  }
});

test('the first two hints bring along no maker of other figures and no worked steps', () => {
  const files = folders.flatMap((folder) => [...bringsAlong(join(ROOT, folder, 'clues.ts'))]);
  expect(files).toContain(join(ROOT, 'sum/clues.ts'));
  expect(files.filter((file) => /\/(make|solution|like|hints)\.ts/.test(file))).toEqual([]);
});
