import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  CHOOSE_ASKS,
  type KindName,
  MARK_TARGETS,
  NUMBER_ASKS,
  type ProblemOf,
  ROW_PHASES,
  SEQUENCES,
  type SumField,
} from '../../../src/solver/exercises/index.ts';
import { slipsOf } from '../../../src/solver/missteps/slips.ts';
import { makeWith } from '../exercises/draws.ts';

/**
 * Slips that some learner's answer cannot tell apart, by what is asked. `NEW_COLLISIONS=1` writes the list anew, in
 * a run of its own that compares nothing: a longer list means that more answers need a follow-up question.
 */
const FILE = new URL('./collisions.json', import.meta.url);
const SEEDS = 250;
const FEW: readonly SumField[] = ['spare', 'onBar', 'bundle'];
const FOLDS: readonly SumField[] = ['foldsOnBar', 'foldsEachSide'];

function collisions<K extends KindName>(kind: K, problems: readonly ProblemOf<K>[]): string[] {
  const found = new Set<string>();
  for (const problem of problems) {
    const byAnswer = new Map<string, Set<string>>();
    for (const { slips, answer } of slipsOf[kind].singles(problem)) {
      const text = JSON.stringify(answer);
      byAnswer.set(text, (byAnswer.get(text) ?? new Set()).add(slips[0]));
    }
    for (const slips of byAnswer.values()) {
      const listed = [...slips].sort();
      listed.forEach((one, n) => {
        for (const other of listed.slice(n + 1)) found.add(`${one} = ${other}`);
      });
    }
  }
  return [...found].sort();
}

const problems = <K extends KindName>(kind: K, options: Parameters<typeof makeWith<K>>[2]): ProblemOf<K>[] =>
  Array.from({ length: SEEDS }, (_, n) => makeWith(kind, `collision ${n}`, options));

const now: Record<string, string[]> = {
  'sum, all figures': collisions('sum', problems('sum', {})),
  'sum, spare, on the bar and bundle': collisions('sum', problems('sum', { fields: FEW })),
  'sum, folds': collisions('sum', problems('sum', { fields: FOLDS })),
};
for (const ask of NUMBER_ASKS) now[`number, ${ask}`] = collisions('number', problems('number', { ask }));
for (const phase of ROW_PHASES) now[`row, ${phase}`] = collisions('row', problems('row', { phase }));
for (const target of MARK_TARGETS) now[`mark, ${target}`] = collisions('mark', problems('mark', { target }));

for (const of of SEQUENCES) now[`order, ${of}`] = collisions('order', problems('order', { of }));
for (const ask of CHOOSE_ASKS) now[`choose, ${ask}`] = collisions('choose', problems('choose', { ask }));

if (process.env['NEW_COLLISIONS'] === '1') {
  test('the list of collisions is written anew', () => {
    writeFileSync(FILE, `${JSON.stringify(now, null, 2)}\n`);
    expect(Object.keys(now).length).toBeGreaterThan(10);
  });
} else {
  test('the slips that give the same answer are those on the list, and no others', () =>
    expect(now).toEqual(JSON.parse(readFileSync(FILE, 'utf8'))));
}

test('in a whole sum every slip has an answer of its own', () => expect(now['sum, all figures']).toEqual([]));
