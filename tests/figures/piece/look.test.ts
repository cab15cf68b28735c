import { describe, expect, it } from 'vitest';
import {
  boxOf,
  columnPixels,
  following,
  type Look,
  moved,
  NEAREST,
  nearer,
  turnedLook,
  turnRound,
  wholeLook,
} from '../../../src/figures/piece/index.ts';
import { drawing, replay, seed } from '../../seed.ts';
import { lantern } from '../drawn.ts';
import { modelOf } from './pieces.ts';

const model = modelOf(lantern);
const { frame } = model;
const whole = wholeLook(frame);

describe('looking at a piece', () => {
  it('whole, sees all of it in a place of any shape', () => {
    for (const aspect of [0.3, 1, 2.5]) {
      const box = boxOf(whole, frame, aspect);
      expect(box.width / box.height).toBeCloseTo(aspect, 9);
      expect(box.left).toBeLessThanOrEqual(frame.left + 1e-9);
      expect(box.left + box.width).toBeGreaterThanOrEqual(frame.right - 1e-9);
      expect(box.top).toBeLessThanOrEqual(frame.top + 1e-9);
      expect(box.top + box.height).toBeGreaterThanOrEqual(frame.bottom - 1e-9);
    }
  });

  it('nearer, keeps the spot under the pointer where it is, and four times as near columns are four times as wide', () => {
    const at = [0.7, 0.4] as const;
    const spot = (look: Look) => {
      const { left, top, width, height } = boxOf(look, frame, 1.2);
      return [left + width * at[0], top + height * at[1]];
    };
    const near = nearer(whole, frame, 1.2, 4, at);
    const [x = 0, y = 0] = spot(near);
    expect(x).toBeCloseTo(spot(whole)[0] ?? 0, 6);
    expect(y).toBeCloseTo(spot(whole)[1] ?? 0, 6);
    const pixels = (look: Look) => columnPixels(boxOf(look, frame, 1.2), 600);
    expect(pixels(near) / pixels(whole)).toBeCloseTo(4, 6);
  });

  it(`stays within the piece, however it is moved (${replay})`, () => {
    const draw = drawing(seed);
    const room = boxOf(whole, frame, 1);
    let look = whole;
    for (let i = 0; i < 300; i += 1) {
      look =
        draw(0, 1) === 0
          ? nearer(look, frame, 1, draw(1, 40) / 10, [draw(0, 10) / 10, draw(0, 10) / 10])
          : moved(look, frame, 1, draw(0, 20) / 10 - 1, draw(0, 20) / 10 - 1);
      const box = boxOf(look, frame, 1);
      expect(look.times).toBeGreaterThanOrEqual(1);
      expect(look.times).toBeLessThanOrEqual(NEAREST);
      expect(box.left).toBeGreaterThanOrEqual(room.left - 1e-6);
      expect(box.top).toBeGreaterThanOrEqual(room.top - 1e-6);
      expect(box.left + box.width).toBeLessThanOrEqual(room.left + room.width + 1e-6);
      expect(box.top + box.height).toBeLessThanOrEqual(room.top + room.height + 1e-6);
    }
  });

  it('from near, goes after the last knot only where it is out of sight, and sees the whole as it is', () => {
    const begun = modelOf(lantern, { upToRow: 3, upToKnot: 2 });
    expect(following(whole, begun, 1)).toBe(whole);
    const away = nearer(whole, frame, 1, 8, [0.9, 0.9]);
    const gone = following(away, begun, 1);
    const knot = begun.places.findLast((place) => place.knot);
    const box = boxOf(gone, frame, 1);
    expect(knot?.x).toBeGreaterThan(box.left);
    expect(knot?.x).toBeLessThan(box.left + box.width);
    expect(following(gone, begun, 1)).toBe(gone);
  });

  it('at the same spot of a piece turned round, and twice round at the same again', () => {
    const near = nearer(whole, frame, 1, 6, [0.2, 0.3]);
    const back = turnedLook(near, model);
    expect(boxOf(back, turnRound(model).frame, 1).width).toBeCloseTo(boxOf(near, frame, 1).width, 9);
    expect(turnedLook(back, model).x).toBeCloseTo(near.x, 9);
  });
});
