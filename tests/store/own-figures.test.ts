import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitPiece } from '../../src/solver/index.ts';
import {
  type OwnFigures,
  type OwnFiguresChange,
  ownFiguresOn,
  ownFiguresProblems,
  STARTING_FIGURES,
} from '../../src/store/own-figures.ts';
import { problemWords } from '../../src/words/problems.ts';
import { tries } from '../seed.ts';
import { expectSentences } from '../words/sayable.ts';
import { blockedShelf, noShelf, SharedShelf } from './shelf.ts';

const KEY = 'evenfold.own-figures';
const released = readFileSync(new URL('fixtures/own-figures.v1.json', import.meta.url), 'utf8');

function withKept(text: string) {
  const device = new SharedShelf();
  device.texts.set(KEY, text);
  return { device, own: ownFiguresOn(device.page()) };
}

describe('the learner’s own figures', () => {
  test('before anything is entered they are the evening’s piece, which the solver can plan', () => {
    const { value, entered, keeping } = ownFiguresOn(new SharedShelf().page()).load();
    expect(value).toEqual(STARTING_FIGURES);
    expect(entered).toBe(false);
    expect(keeping).toEqual({ kept: true });
    expect(fitPiece(value).ok).toBe(true);
    expect(ownFiguresProblems(STARTING_FIGURES)).toEqual([]);
  });

  test('what is entered is there again on the next page', () => {
    const device = new SharedShelf();
    expect(ownFiguresOn(device.page()).save({ width: 26, cord: { kind: 'firm' } })).toEqual({ kept: true });
    const { value, entered } = ownFiguresOn(device.page()).load();
    expect(entered).toBe(true);
    expect(value).toEqual({ ...STARTING_FIGURES, width: 26, cord: { ...STARTING_FIGURES.cord, kind: 'firm' } });
  });

  test('figures saved by the first release still open, every field of them', () => {
    const { own } = withKept(released);
    // What the outline follows was not asked then; a chart's own shape is what its drawer meant.
    expect(own.load()).toEqual({
      value: { ...JSON.parse(released), follows: 'chart' },
      entered: true,
      keeping: { kept: true },
    });
  });

  test('two pages change different figures and neither loses its own', () => {
    const device = new SharedShelf();
    const [one, other] = [ownFiguresOn(device.page()), ownFiguresOn(device.page())];
    one.load();
    other.load();
    one.save({ width: 20, ring: { barWidth: 30 } });
    other.save({ height: 40, ring: { barThickness: 3 } });
    for (const page of [one, other])
      expect(page.load().value).toMatchObject({ width: 20, height: 40, ring: { barWidth: 30, barThickness: 3 } });
  });

  test('a page hears of its own changes and of another page’s, until it stops listening', () => {
    const device = new SharedShelf();
    const [one, other] = [ownFiguresOn(device.page()), ownFiguresOn(device.page())];
    const widths: number[] = [];
    const stop = one.subscribe(({ value }) => widths.push(value.width));
    one.save({ width: 14 });
    other.save({ width: 16 });
    device.wipe();
    expect(widths).toEqual([14, 16, STARTING_FIGURES.width]);
    stop();
    other.save({ width: 18 });
    expect(widths).toHaveLength(3);
    expect(device.listening).toBe(0);
  });

  test.each([
    ['no storage', noShelf, 'no-storage'],
    ['blocked storage', blockedShelf, 'blocked'],
  ])('with %s what is on screen stays, and the reason is given', (_, device, why) => {
    const own = ownFiguresOn(device);
    expect(own.save({ width: 26 })).toEqual({ kept: false, why });
    own.save({ capacity: 16 });
    expect(own.load()).toMatchObject({
      value: { width: 26, capacity: 16 },
      entered: true,
      keeping: { kept: false, why },
    });
    expect(own.forget()).toEqual({ kept: false, why });
    expect(own.load().value).toEqual(STARTING_FIGURES);
  });

  test('on a full device the last figures stay kept and the new ones stay on screen, and both meet when there is room', () => {
    const device = new SharedShelf();
    const own = ownFiguresOn(device.page());
    own.save({ width: 20 });
    device.room = 10;
    expect(own.save({ height: 40 })).toEqual({ kept: false, why: 'full' });
    expect(own.load()).toMatchObject({ value: { width: 20, height: 40 }, keeping: { kept: false, why: 'full' } });
    expect(ownFiguresOn(device.page()).load().value).toMatchObject({ width: 20, height: STARTING_FIGURES.height });
    device.room = 10_000;
    expect(own.save({ capacity: 10 })).toEqual({ kept: true });
    expect(ownFiguresOn(device.page()).load().value).toMatchObject({ width: 20, height: 40, capacity: 10 });
  });

  test.each([
    '',
    'not json',
    '[]',
    'null',
    '7',
    '{}',
    '{"version":"1"}',
    '{"version":0}',
    '{"version":1.5,"width":20}',
  ])('what can’t be read, %j, is told and does no harm', (text) => {
    const { own } = withKept(text);
    expect(own.load()).toEqual({
      value: STARTING_FIGURES,
      entered: false,
      keeping: { kept: false, why: 'unreadable' },
    });
    expect(own.save({ width: 20 })).toEqual({ kept: true });
    expect(own.load()).toMatchObject({ value: { width: 20 }, keeping: { kept: true } });
  });

  test('figures of a later version are shown as far as they are known, and never written over', () => {
    const later = JSON.stringify({ version: 2, width: 20, capacity: 'as measured', colour: 'tar' });
    const { device, own } = withKept(later);
    expect(own.load()).toMatchObject({
      value: { width: 20, capacity: STARTING_FIGURES.capacity },
      keeping: { kept: false, why: 'newer' },
    });
    expect(own.save({ height: 40 })).toEqual({ kept: false, why: 'newer' });
    expect(own.load().value.height).toBe(40);
    expect(device.texts.get(KEY)).toBe(later);
  });

  test('a figure that the solver refuses is not kept; the others of the same change are', () => {
    const own = ownFiguresOn(new SharedShelf().page());
    expect(own.save({ width: 401, height: 40, cord: { diameter: 0.1, kind: 'firm' } })).toEqual({
      kept: false,
      why: 'refused',
    });
    expect(own.load()).toMatchObject({
      value: {
        width: STARTING_FIGURES.width,
        height: 40,
        cord: { diameter: STARTING_FIGURES.cord.diameter, kind: 'firm' },
      },
      keeping: { kept: true },
    });
  });

  test('bad fields in kept figures start afresh, good ones stay', () => {
    const bad = {
      version: 1,
      width: 20,
      height: 0.5,
      oddMethod: 'both',
      chart: { from: 'index', id: '../secret' },
      ring: 'round',
      cord: { kind: 'firm', measured: 'much' },
      name: 'someone',
    };
    const { own } = withKept(JSON.stringify(bad));
    expect(own.load().value).toEqual({
      ...STARTING_FIGURES,
      width: 20,
      cord: { ...STARTING_FIGURES.cord, kind: 'firm' },
    });
  });

  test('each problem of a change is told in words', () => {
    const change = {
      width: 1,
      closingBundle: 0,
      startSide: 'top',
      ring: { barWidth: -1 },
      cord: { workingLength: 5, measured: { perKnot: 0 } },
    };
    const problems = ownFiguresProblems(change as unknown as OwnFiguresChange);
    expect(problems.map(({ field }) => field)).toEqual([
      'width',
      'startSide',
      'closingBundle',
      'barWidth',
      'workingLength',
      'perKnot',
    ]);
    for (const problem of problems) expectSentences(problemWords(problem));
  });

  test('a change of hand takes the start side with it, unless the learner chose one', () => {
    const own = ownFiguresOn(new SharedShelf().page());
    own.save({ handedness: 'left' });
    expect(own.load().value.startSide).toBe('right');
    own.save({ startSide: 'left' });
    own.save({ handedness: 'right' });
    expect(own.load().value.startSide).toBe('left');
    own.save({ handedness: 'left', startSide: 'left' });
    expect(own.load().value.startSide).toBe('left');
  });

  test('after forgetting, nothing is left on the device', () => {
    const device = new SharedShelf();
    const own = ownFiguresOn(device.page());
    own.save({ width: 20 });
    expect([...device.texts.keys()]).toEqual([KEY]);
    expect(own.forget()).toEqual({ kept: true });
    expect(device.texts.size).toBe(0);
    expect(own.load()).toMatchObject({ value: STARTING_FIGURES, entered: false });
  });

  test('any text whatever can stand in the storage and what is loaded can be planned with', () =>
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.json(),
          fc
            .record(
              {
                version: fc.constantFrom(1, 2),
                width: fc.anything(),
                cord: fc.anything(),
                chart: fc.anything(),
                ring: fc.anything(),
              },
              { requiredKeys: ['version'] },
            )
            .map((record) => JSON.stringify(record, (_, value) => (typeof value === 'bigint' ? String(value) : value))),
        ),
        (text) => {
          const { own } = withKept(text);
          const { value } = own.load();
          expect(ownFiguresProblems(value)).toEqual([]);
          expect(Object.keys(value).sort()).toEqual(Object.keys(STARTING_FIGURES).sort());
          own.save({ height: 20 });
          expect(own.load().value.height).toBe(20);
        },
      ),
      tries(200),
    ));

  test('what is saved is what is loaded', () =>
    fc.assert(
      fc.property(
        fc.record<Partial<OwnFigures>>(
          {
            width: fc.integer({ min: 2, max: 400 }),
            capacity: fc.integer({ min: 2, max: 400 }),
            closingBundle: fc.option(fc.integer({ min: 1, max: 400 })),
            oddMethod: fc.constantFrom('lone-string', 'carried-end'),
            startSide: fc.constantFrom('left', 'right'),
            chart: fc.oneof(
              fc.constant(null),
              fc.string().map((text) => ({ from: 'text', text }) as const),
            ),
          },
          { requiredKeys: [] },
        ),
        (change) => {
          const device = new SharedShelf();
          expect(ownFiguresOn(device.page()).save(change)).toEqual({ kept: true });
          expect(ownFiguresOn(device.page()).load().value).toEqual({ ...STARTING_FIGURES, ...change });
        },
      ),
      tries(100),
    ));
});
