import type { PieceModel } from './model-types.ts';
import { COLUMN, ROW } from './packed.ts';
import { UNIT } from './pen.ts';

/** Where somebody looks at a piece, and how near: the middle of what is seen, in d, and how many times enlarged. */
export interface Look {
  readonly x: number;
  readonly y: number;
  /** From 1, the whole piece, to `NEAREST`. */
  readonly times: number;
}

/** The same spot of a piece that has been turned round. */
export const turnedLook = (look: Look, { width }: Pick<PieceModel, 'width'>): Look => ({
  ...look,
  x: width * COLUMN - look.x,
});

/** What is seen, in d. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

type Frame = PieceModel['frame'];

/** As near as one can go: a few knots fill the picture of a large piece. */
export const NEAREST = 16;
/** How much nearer one step goes. */
export const NEARER = 1.5;

const between = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** The whole piece, in the middle. */
export const wholeLook = ({ left, right, top, bottom }: Frame): Look => ({
  x: (left + right) / 2,
  y: (top + bottom) / 2,
  times: 1,
});

/** The whole frame, widened to the shape of the place it is shown in; `aspect` is that place's width to its height. */
function room({ left, right, top, bottom }: Frame, aspect: number): Box {
  const [width, height] = [right - left, bottom - top];
  const across = Math.max(width, height * aspect);
  const down = Math.max(height, width / aspect);
  return { left: left - (across - width) / 2, top: top - (down - height) / 2, width: across, height: down };
}

/** What is seen of a piece, always within its room. */
export function boxOf(look: Look, frame: Frame, aspect: number): Box {
  const whole = room(frame, aspect);
  const [width, height] = [whole.width / look.times, whole.height / look.times];
  return {
    left: between(look.x - width / 2, whole.left, whole.left + whole.width - width),
    top: between(look.y - height / 2, whole.top, whole.top + whole.height - height),
    width,
    height,
  };
}

const lookAt = ({ left, top, width, height }: Box, times: number): Look => ({
  x: left + width / 2,
  y: top + height / 2,
  times,
});

/**
 * Nearer by a factor, or farther where it is below 1. What lies at `[across, down]` of the picture, each from 0 to 1,
 * stays where it is; the middle when left out.
 */
export function nearer(
  look: Look,
  frame: Frame,
  aspect: number,
  factor: number,
  [across, down]: readonly [number, number] = [0.5, 0.5],
): Look {
  const box = boxOf(look, frame, aspect);
  const times = between(look.times * factor, 1, NEAREST);
  const [width, height] = [(box.width * look.times) / times, (box.height * look.times) / times];
  const moved: Look = {
    x: box.left + box.width * across + width * (0.5 - across),
    y: box.top + box.height * down + height * (0.5 - down),
    times,
  };
  return lookAt(boxOf(moved, frame, aspect), times);
}

/** Moved on by a part of what is seen: 1 is a whole picture to the right or down. */
export function moved(look: Look, frame: Frame, aspect: number, across: number, down: number): Look {
  const box = boxOf(look, frame, aspect);
  const next = { ...look, x: look.x + across * box.width, y: look.y + down * box.height };
  return lookAt(boxOf(next, frame, aspect), look.times);
}

/** Pixels that a column takes where the box fills a place of so many pixels. */
export const columnPixels = (box: Box, pixelsAcross: number): number => (COLUMN * pixelsAcross) / box.width;

/** A box as the viewBox of a drawing of the piece. */
export const lookBox = ({ left, top, width, height }: Box): string =>
  [left, top, width, height].map((value) => (value * UNIT).toFixed(1)).join(' ');

/** Looks where the last knot was tied, if that is out of sight. */
export function following(look: Look, model: PieceModel, aspect: number): Look {
  const knot = model.places.findLast((place) => place.knot);
  if (look.times === 1 || !knot) return look;
  const box = boxOf(look, model.frame, aspect);
  const y = knot.y + ROW / 2;
  const seen =
    knot.x > box.left + COLUMN &&
    knot.x < box.left + box.width - COLUMN &&
    y > box.top + ROW &&
    y < box.top + box.height - ROW;
  return seen ? look : lookAt(boxOf({ ...look, x: knot.x, y }, model.frame, aspect), look.times);
}
