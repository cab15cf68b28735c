/** Where a showing is: a frame, from 1, and how many of its steps have been taken, from 0. */
export interface Place {
  readonly frame: number;
  readonly step: number;
}

/** A line that was drawn on a frame: places as parts of the frame’s width and height, 0 to 1, one after the other. */
export type Stroke = readonly number[];

/** A lesson as it is being shown. It holds all that the two windows have in common, and can be sent as it is. */
export interface Show {
  /** Where the speaker is. */
  readonly at: Place;
  /** What the room keeps looking at while the speaker looks on; null where it follows. */
  readonly held: Place | null;
  readonly dark: boolean;
  readonly timer: {
    /** Milliseconds used up to the last stop. */
    readonly spent: number;
    /** When it began to run, as the device’s clock has it; null while it stands. */
    readonly since: number | null;
  };
  /** What was drawn, by frame. It is kept nowhere else. */
  readonly ink: Readonly<Record<number, readonly Stroke[]>>;
}

/** Steps of each frame, the first frame first; 0 for a frame that is not shown with these figures. */
export type Deck = readonly number[];

export type Move =
  | { readonly do: 'on' | 'back' | 'first' | 'last' | 'dark' | 'hold' | 'clock' | 'again' | 'wipe' }
  | { readonly do: 'to'; readonly frame: number; readonly step?: number }
  | { readonly do: 'draw'; readonly frame: number; readonly stroke: Stroke };

export const START: Show = {
  at: { frame: 1, step: 0 },
  held: null,
  dark: false,
  timer: { spent: 0, since: null },
  ink: {},
};

const stepsOf = (deck: Deck, frame: number): number => deck[frame - 1] ?? 0;

/** The next frame that is shown, in one direction; the same one where there is none. */
function neighbour(deck: Deck, from: number, way: 1 | -1): number {
  for (let frame = from + way; frame >= 1 && frame <= deck.length; frame += way)
    if (stepsOf(deck, frame) > 0) return frame;
  return from;
}

/** The place nearest to a wanted one that this deck has. */
export function placeIn(deck: Deck, { frame, step }: Place): Place {
  const inside = Math.min(Math.max(1, Math.trunc(frame) || 1), Math.max(1, deck.length));
  const shown = stepsOf(deck, inside) > 0 ? inside : neighbour(deck, inside, inside === deck.length ? -1 : 1);
  const last = Math.max(0, stepsOf(deck, shown) - 1);
  return { frame: shown, step: shown === inside ? Math.min(Math.max(0, Math.trunc(step) || 0), last) : 0 };
}

function onward(deck: Deck, { frame, step }: Place): Place {
  if (step + 1 < stepsOf(deck, frame)) return { frame, step: step + 1 };
  const next = neighbour(deck, frame, 1);
  return next === frame ? { frame, step } : { frame: next, step: 0 };
}

function backward(deck: Deck, { frame, step }: Place): Place {
  if (step > 0) return { frame, step: step - 1 };
  const before = neighbour(deck, frame, -1);
  return before === frame ? { frame, step } : { frame: before, step: Math.max(0, stepsOf(deck, before) - 1) };
}

/** Milliseconds used, at a moment of the device’s clock. */
export const spentAt = ({ timer: { spent, since } }: Show, now: number): number =>
  spent + (since === null ? 0 : Math.max(0, now - since));

/** What the room sees. */
export const seenBy = (show: Show, role: 'room' | 'speaker'): Place =>
  role === 'room' && show.held ? show.held : show.at;

/**
 * The show after a move. The timer begins with the first move onward. Nothing else depends on the clock.
 *
 * @param now milliseconds of the device’s clock
 */
export function moved(show: Show, move: Move, deck: Deck, now: number): Show {
  const goTo = (at: Place): Show => ({ ...show, at });
  switch (move.do) {
    case 'on': {
      const { timer } = show;
      const begins = timer.since === null && timer.spent === 0;
      return { ...goTo(onward(deck, show.at)), timer: begins ? { spent: 0, since: now } : timer };
    }
    case 'back':
      return goTo(backward(deck, show.at));
    case 'first':
      return goTo(placeIn(deck, { frame: 1, step: 0 }));
    case 'last':
      return goTo(placeIn(deck, { frame: deck.length, step: 0 }));
    case 'to':
      return goTo(placeIn(deck, { frame: move.frame, step: move.step ?? 0 }));
    case 'dark':
      return { ...show, dark: !show.dark };
    case 'hold':
      return { ...show, held: show.held ? null : show.at };
    case 'clock':
      return {
        ...show,
        timer: show.timer.since === null ? { ...show.timer, since: now } : { spent: spentAt(show, now), since: null },
      };
    case 'again':
      return { ...show, timer: { spent: 0, since: show.timer.since === null ? null : now } };
    case 'draw':
      return { ...show, ink: { ...show.ink, [move.frame]: [...(show.ink[move.frame] ?? []), move.stroke] } };
    case 'wipe': {
      const { [show.at.frame]: _wiped, ...ink } = show.ink;
      return { ...show, ink };
    }
  }
}

/** `#4` is the fourth frame, `#4.2` that frame with two steps taken; null for any other address. */
export function placeInAddress(hash: string): Place | null {
  const [, frame, step] = /^#(\d{1,4})(?:\.(\d{1,3}))?$/.exec(hash) ?? [];
  return frame === undefined ? null : { frame: Number(frame), step: Number(step ?? 0) };
}

export const addressOf = ({ frame, step }: Place): string => (step === 0 ? `#${frame}` : `#${frame}.${step}`);
