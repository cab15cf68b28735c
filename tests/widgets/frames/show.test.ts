import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addressOf,
  type Deck,
  type Move,
  moved,
  placeIn,
  placeInAddress,
  type Show,
  START,
  seenBy,
  spentAt,
} from '../../../src/widgets/frames/show.ts';

/** Four frames: one step, three steps, one that is not shown, one step. */
const DECK: Deck = [1, 3, 0, 1];
const led = (moves: readonly Move[], from: Show = START, now = 0): Show =>
  moves.reduce((show, move) => moved(show, move, DECK, now), from);
const on: Move = { do: 'on' };
const back: Move = { do: 'back' };
const placeAfter = (...moves: Move[]): string => addressOf(led(moves).at);

describe('on and back', () => {
  it('take the steps of a frame one by one, and leave out a frame that is not shown', () => {
    const way = [on, on, on, on, on].map((_, count) => placeAfter(...Array.from({ length: count + 1 }, () => on)));
    expect(way).toEqual(['#2', '#2.1', '#2.2', '#4', '#4']);
  });

  it('come back the same way, to a frame that has shown all its steps', () => {
    expect(placeAfter(on, on, on, on, back)).toBe('#2.2');
    expect(placeAfter(on, back, back)).toBe('#1');
  });

  it('undo each other wherever there is a way on', () => {
    const decks = fc
      .array(fc.integer({ min: 0, max: 4 }), { minLength: 2, maxLength: 12 })
      .filter((deck) => deck.some(Boolean));
    fc.assert(
      fc.property(decks, fc.nat(20), fc.nat(4), (deck, frame, step) => {
        const at = placeIn(deck, { frame, step });
        const next = moved({ ...START, at }, on, deck, 0);
        const again = moved(next, back, deck, 0).at;
        expect(again).toEqual(addressOf(next.at) === addressOf(at) ? moved({ ...START, at }, back, deck, 0).at : at);
      }),
    );
  });
});

describe('a jump', () => {
  it('goes to a frame by its number, and to the nearest where there is none', () => {
    expect(placeAfter({ do: 'to', frame: 2 })).toBe('#2');
    expect(placeAfter({ do: 'to', frame: 3 })).toBe('#4');
    expect(placeAfter({ do: 'to', frame: 99 })).toBe('#4');
    expect(placeAfter({ do: 'to', frame: Number.NaN })).toBe('#1');
    expect(placeAfter({ do: 'last' }, { do: 'first' })).toBe('#1');
  });

  it('never leaves the deck', () => {
    const places = fc.record({ frame: fc.double(), step: fc.double() });
    fc.assert(
      fc.property(places, (place) => {
        const { frame, step } = placeIn(DECK, place);
        expect(DECK[frame - 1]).toBeGreaterThan(0);
        expect(step).toBeGreaterThanOrEqual(0);
        expect(step).toBeLessThan(DECK[frame - 1] ?? 0);
      }),
    );
  });
});

describe('the room', () => {
  it('keeps its picture while the speaker looks on, and follows again', () => {
    const held = led([on, { do: 'hold' }, on, on, on]);
    expect(addressOf(seenBy(held, 'room'))).toBe('#2');
    expect(addressOf(seenBy(held, 'speaker'))).toBe('#4');
    const free = moved(held, { do: 'hold' }, DECK, 0);
    expect(addressOf(seenBy(free, 'room'))).toBe('#4');
  });

  it('goes dark and light without losing its place', () => {
    const dark = led([on, { do: 'dark' }]);
    expect(dark.dark).toBe(true);
    expect(led([{ do: 'dark' }], dark)).toMatchObject({ dark: false, at: { frame: 2, step: 0 } });
  });
});

describe('the timer', () => {
  it('begins with the first move onward, and not with the second', () => {
    const begun = moved(START, on, DECK, 5000);
    const later = moved(begun, on, DECK, 9000);
    expect(spentAt(later, 12_000)).toBe(7000);
  });

  it('stands while it is stopped, goes on from there, and begins again at 0', () => {
    const stopped = moved(moved(START, on, DECK, 0), { do: 'clock' }, DECK, 4000);
    expect(spentAt(stopped, 99_000)).toBe(4000);
    expect(spentAt(moved(stopped, on, DECK, 99_000), 99_500)).toBe(4000);
    const running = moved(stopped, { do: 'clock' }, DECK, 100_000);
    expect(spentAt(running, 101_000)).toBe(5000);
    expect(spentAt(moved(running, { do: 'again' }, DECK, 102_000), 103_000)).toBe(1000);
  });

  it('never runs backward, whatever the device’s clock does', () => {
    expect(spentAt(moved(START, on, DECK, 5000), 1000)).toBe(0);
  });
});

describe('what is drawn', () => {
  it('stays with its frame, and is wiped from the frame that is shown alone', () => {
    const stroke = [0.1, 0.1, 0.2, 0.2];
    const drawn = led([
      { do: 'draw', frame: 1, stroke },
      { do: 'draw', frame: 2, stroke },
      { do: 'draw', frame: 2, stroke },
    ]);
    expect(drawn.ink[2]).toHaveLength(2);
    expect(led([on, { do: 'wipe' }], drawn).ink).toEqual({ 1: [stroke] });
  });
});

describe('the address', () => {
  it('holds the frame and the steps that were taken', () => {
    expect(placeInAddress('#4')).toEqual({ frame: 4, step: 0 });
    expect(placeInAddress(addressOf({ frame: 12, step: 3 }))).toEqual({ frame: 12, step: 3 });
  });

  it.each(['', '#', '#plate-a', '#4.', '#-1', '#4.x', '#99999'])('%s is no frame', (hash) => {
    expect(placeInAddress(hash)).toBeNull();
  });
});
