import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fileName, formatProgress, LONGEST_FILE, readProgressFile } from '../../../src/store/progress/file.ts';
import { EMPTY_LOG, type Log, mergeLogs } from '../../../src/store/progress/log.ts';
import { fileProblemWords } from '../../../src/words/progress-words.ts';
import { expectSayable } from '../../words/sayable.ts';
import { DAY, MONDAY, tried } from './events.ts';

const log: Log = mergeLogs(EMPTY_LOG, {
  events: [tried(MONDAY), tried(MONDAY + DAY, { outcome: 'not-right', seed: 'own {"width":26}' })],
});
const text = formatProgress(log, new Date(MONDAY));

/** What is said of a file that is refused; it is said in letters that the faces have. */
function refusal(file: string): string {
  const read = readProgressFile(file);
  if (read.ok) throw new Error('it was taken');
  const words = fileProblemWords(read.problem);
  expectSayable(words);
  return words;
}

describe('a saved file', () => {
  test('is read back as it was', () => {
    expect(readProgressFile(text)).toEqual({ ok: true, log });
    expect(readProgressFile(formatProgress(EMPTY_LOG))).toEqual({ ok: true, log: EMPTY_LOG });
    expect(readProgressFile(`\uFEFF${text}`)).toEqual({ ok: true, log });
  });

  test('says what it is and of which version, holds an event a line, and is named by the day alone', () => {
    expect(text.split('\n').slice(0, 5)).toEqual([
      '{',
      '  "says": "progress of an Evenfold learner",',
      '  "version": 1,',
      '  "saved": "2026-03-02",',
      '  "events": [',
    ]);
    expect(text.split('\n').filter((line) => line.includes('"act"'))).toHaveLength(2);
    expect(fileName(new Date(MONDAY))).toBe('evenfold-progress-2026-03-02.json');
  });

  test('of the first release still opens', () => {
    const released = readFileSync(new URL('../fixtures/progress-file.v1.json', import.meta.url), 'utf8');
    const read = readProgressFile(released);
    expect(read.ok && read.log.events).toEqual(JSON.parse(released).events);
  });

  test('of an older form is brought up step by step', () => {
    const old = JSON.stringify({ says: 'progress of an Evenfold learner', version: 1, happened: log.events });
    const steps = {
      1: (raw: Readonly<Record<string, unknown>>) => ({ list: raw['happened'] }),
      2: (raw: Readonly<Record<string, unknown>>) => ({ events: raw['list'] }),
    };
    expect(readProgressFile(old, steps, 3)).toEqual({ ok: true, log });
    expect(readProgressFile(old, { 1: steps[1] }, 3)).toEqual({ ok: false, problem: { code: 'not-ours' } });
  });
});

describe('a file that is no good is refused with what is wrong and where', () => {
  test('one that breaks off', () => {
    const cut = text.slice(0, text.indexOf('"outcome"'));
    expect(refusal(cut)).toMatch(
      /^This file is damaged or breaks off( in line 6, column \d+)?\. Nothing was taken from it, and your progress here is as it was\.$/,
    );
  });

  test('one with a slip of the pen in line 3', () => {
    expect(refusal(text.replace('"version": 1,', '"version": 1 1,'))).toContain('in line 3, column 16');
  });

  test.each([
    ['another program’s', '{"events":[]}'],
    ['a list', '[1,2]'],
    ['one without a version', '{"says":"progress of an Evenfold learner","events":[]}'],
    ['one without events', '{"says":"progress of an Evenfold learner","version":1}'],
  ])('%s', (_, file) => {
    expect(refusal(file)).toContain('not a progress file of the workbook');
  });

  test('one of a later version', () => {
    expect(refusal(text.replace('"version": 1', '"version": 2'))).toContain('from a later version');
  });

  test('one that is far too long', () => {
    expect(refusal(' '.repeat(LONGEST_FILE + 1))).toContain('too long');
  });

  test.each([
    [
      '"outcome":"not-right"',
      '"outcome":"nearly"',
      'in line 7 can’t be read: “outcome” says “nearly”. One of right and not-right',
    ],
    ['"day":"2026-03-03"', '"day":"Tuesday"', '“day” says “Tuesday”. A day such as 2026-03-09 would do.'],
    ['"skills":["widening"]', '"skills":["singing"]', 'Entry 1 in line 6 can’t be read: “skills” says [“singing”].'],
    ['"act":"tried"', '"act":"sung"', '“act” says “sung”. One of opened, read, ticked, tried, slipped and chosen'],
    ['"level":"alone",', '', '“level” is missing. One of worked, half-worked, alone and mixed would do.'],
    [`"at":${MONDAY}`, '"at":"Monday"', 'Entry 1 in line 6 can’t be read: its “id” or its “at” is missing or damaged.'],
  ])('one in which %s became %s', (stands, becomes, says) => {
    expect(text).toContain(stands);
    expect(refusal(text.replace(stands, becomes))).toContain(says);
  });
});
