import { describe, expect, it } from 'vitest';
import {
  basesFor,
  type KnotName,
  knots,
  mirrorKnot,
  type Stop,
  strandModel,
} from '../../../src/figures/strand/index.ts';
import { COURSES, type Course, courseOf, coursesIn, mirroredCourse } from './courses.ts';
import { flipped } from './flipped.ts';

/** Milliseconds that a machine with much else to do may take for one test. */
const busy = 60_000;

const names = Object.keys(knots) as KnotName[];
/** The last stop before it is drawn up, or the last there is; and drawn up. */
function lastStops(knot: KnotName): Stop[] {
  const stops = strandModel(knot, { moment: 0, crossings: false }).stops.map(({ name }) => name);
  return stops.at(-1) === 'drawn-up' ? stops.slice(-2) : stops.slice(-1);
}
const sizesOf = (knot: KnotName): number[] => {
  const [least, most] = basesFor(knot);
  return most === 1 ? [1] : [least, 3, most];
};

/** Every figure that a course is written for, with that course. */
function* figures(): Generator<{ knot: KnotName; stop: Stop; strands: number; course: Course }> {
  for (const knot of names)
    for (const stop of lastStops(knot))
      for (const strands of sizesOf(knot)) {
        const course = courseOf(knot, stop, strands);
        if (course) yield { knot, stop, strands, course };
      }
}

describe('the course of every cord', { timeout: busy }, () => {
  it('is written down for every knot that is tied, loose and drawn up', () => {
    for (const knot of names) {
      const met = [...figures()].filter((figure) => figure.knot === knot);
      expect(new Set(met.map(({ stop }) => stop)), knot).toEqual(new Set(lastStops(knot)));
      if (!('mirrorOf' in knots[knot])) expect(COURSES[knot], knot).toBeDefined();
    }
  });

  it('is over and under as the craft says, in every knot, loose and drawn up, round one string and a bundle', () => {
    for (const { knot, stop, strands, course } of figures())
      expect(coursesIn(strandModel(knot, { strands, moment: stop })), `${knot} ${stop} ${strands}`).toEqual(course);
  });

  it('is another as soon as any one crossing of any figure is turned over', () => {
    let turned = 0;
    for (const { knot, stop, strands, course } of figures()) {
      if (strands > 3) continue;
      const model = strandModel(knot, { strands, moment: stop });
      for (const which of model.crossings.keys()) {
        expect(coursesIn(flipped(model, which)), `${knot} ${stop} ${strands}, crossing ${which}`).not.toEqual(course);
        turned += 1;
      }
    }
    expect(turned).toBeGreaterThan(800);
  });

  it('is the same in the mirror, with left and right exchanged', () => {
    for (const { knot, stop, strands, course } of figures()) {
      const left = strandModel(knot, { strands, moment: stop, handedness: 'left' });
      expect(coursesIn(left), `${knot} ${stop}`).toEqual(mirroredCourse(course));
      expect(left.knot).toBe(mirrorKnot(knot));
    }
  });
});
