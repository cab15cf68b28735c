import { describe, expect, it } from 'vitest';
import {
  basesFor,
  type CrossingChoice,
  checkCrossing,
  closeUp,
  crossingPlaces,
  type KnotName,
  knots,
  pickCrossing,
  type StrandModel,
  strandModel,
  tell,
  type Whereabouts,
} from '../../../src/figures/strand/index.ts';
import { flipped } from './flipped.ts';

/** Milliseconds that a machine with much else to do may take for one test. */
const busy = 60_000;

const names = Object.keys(knots) as KnotName[];

/** Every knot at every stop, for both hands, round the fewest strings and round three. */
function* figures(): Generator<{ name: string; model: StrandModel }> {
  for (const knot of names)
    for (const { name: stop } of strandModel(knot, { moment: 0, crossings: false }).stops)
      for (const handedness of ['right', 'left'] as const)
        for (const strands of new Set([basesFor(knot)[0], Math.min(3, basesFor(knot)[1])]))
          yield {
            name: `${knot} ${stop} ${handedness} ${strands}`,
            model: strandModel(knot, { moment: stop, handedness, strands }),
          };
}

/** What the figure says, in words or in steps, of this pass: over or under. Someone who only hears has no more. */
function heard(model: StrandModel, place: Whereabouts): 'over' | 'under' | null {
  if (place.along !== 'told') return null;
  const along = tell(model).filter(({ key, values }) => values['strand'] === place.strand && key.startsWith('passes'));
  const step = along[place.pass - 1];
  return step ? (step.key.startsWith('passes-over') ? 'over' : 'under') : null;
}

describe('which string is over here', { timeout: busy }, () => {
  it('can be asked of every crossing in the picture, each once', () => {
    for (const { name, model } of figures()) {
      const { left, right, top, bottom } = model.frame;
      const seen = model.crossings.filter(({ x, y }) => x > left && x < right && y > top && y < bottom);
      expect(crossingPlaces(model).length, name).toBe(seen.length / 2);
    }
  });

  it('has one right answer at every crossing, and says of each other what was mixed up', () => {
    for (const { name, model } of figures())
      for (const [i, { choices, strands }] of crossingPlaces(model).entries()) {
        const found = choices.map((choice) => checkCrossing(model, i, choice)?.outcome);
        expect(found.filter((outcome) => outcome === 'right').length, name).toBe(1);
        expect(found.filter((outcome) => outcome === 'under').length, name).toBe(1);
        expect(choices.length, name).toBeGreaterThan(1);
        if (strands[0] === strands[1]) expect(choices.length, name).toBe(2);
      }
  });

  it('is answered by the lines: turned over, the other string is right', () => {
    for (const knot of ['forward', 'larks-head', 'square-knot', 'join'] as const) {
      const model = strandModel(knot);
      for (const [i, place] of crossingPlaces(model).entries()) {
        const which = model.crossings.findIndex(
          ({ x, y, strand }) => x === place.x && y === place.y && strand === place.strands[0],
        );
        const other = flipped(model, which);
        for (const choice of place.choices) {
          const [before, after] = [model, other].map((one) => checkCrossing(one, i, choice)?.outcome);
          expect(after).toBe(before === 'right' ? 'under' : before === 'under' ? 'right' : before);
        }
      }
    }
  });

  it('can be answered by ear: counting the passes that are told leads to the right string', () => {
    for (const { name, model } of figures())
      for (const [i, { where, choices, strands }] of crossingPlaces(model).entries()) {
        const [one, other] = where.map((place) => heard(model, place));
        const said = one ?? other;
        expect(said, name).not.toBeNull();
        if (one && other) expect(one, name).not.toBe(other);
        const over = (one ? one === 'over' : other === 'under') ? 0 : 1;
        const earlier = where[0].pass < where[1].pass === (over === 0);
        const named = choices.find((choice: CrossingChoice) =>
          'part' in choice
            ? choice.part === (earlier ? 'earlier' : 'later')
            : 'bundle' in choice
              ? choice.bundle.includes(strands[over])
              : choice.strand === strands[over],
        );
        expect(named && checkCrossing(model, i, named)?.outcome, name).toBe('right');
      }
  });

  it('tells where the crossing is along both strings, within what there is to count', () => {
    for (const { name, model } of figures())
      for (const { where } of crossingPlaces(model))
        for (const { pass, of } of where) {
          expect(pass, name).toBeGreaterThan(0);
          expect(pass, name).toBeLessThanOrEqual(of);
        }
  });

  it('says which time it is that a string goes over the other', () => {
    const model = strandModel('forward');
    const times = crossingPlaces(model).flatMap(({ strands }, i) =>
      strands.includes('base') ? [checkCrossing(model, i, { strand: 'leading' })] : [],
    );
    expect(times.filter((found) => found?.outcome === 'right').map((found) => found?.time)).toEqual([1, 2, 3]);
  });

  it('comes to every crossing of a knot, by the seed, and to the same one again by the same seed', () => {
    for (const knot of names) {
      const model = strandModel(knot, { strands: 3 });
      const met = Array.from({ length: 400 }, (_, seed) => pickCrossing(model, seed));
      const places = crossingPlaces(model).length;
      expect(new Set(met).size, knot).toBe(Math.max(1, places));
      expect(
        met.map((_, seed) => pickCrossing(model, String(seed))),
        knot,
      ).toEqual(met);
      if (places === 0) expect(met[0]).toBeNull();
    }
    expect(pickCrossing(strandModel('let-out', { moment: 'at-rest' }), 1)).toBeNull();
    expect(checkCrossing(strandModel('let-out', { moment: 'at-rest' }), 0, { strand: 'leading' })).toBeNull();
  });

  it('is fair: where another pass lies on top it says so, and the drawing has the place in its middle', () => {
    const hidden = crossingPlaces(strandModel('forward')).filter(({ covered }) => covered);
    // The second pass under the base, which the string’s own last pass crosses.
    expect(hidden.every(({ strands }) => strands.includes('base'))).toBe(true);
    expect(hidden.length).toBeLessThan(crossingPlaces(strandModel('forward')).length / 3);
    expect(closeUp({ x: 1, y: -2 }, 3)).toEqual({ left: -2, right: 4, top: -5, bottom: 1 });
  });
});
