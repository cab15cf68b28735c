import { describe, expect, it } from 'vitest';
import {
  basesFor,
  checkCrossing,
  crossingPlaces,
  type KnotName,
  knots,
  strandModel,
} from '../../src/figures/strand/index.ts';
import {
  choiceWords,
  crossingAsk,
  crossingHidden,
  crossingVerdict,
  crossingWhere,
} from '../../src/words/crossing-words.ts';
import { mirroredWords } from '../../src/words/knot-stages.ts';
import { expectSayable, expectSentences } from './sayable.ts';

const busy = 60_000;
const names = Object.keys(knots) as KnotName[];

describe('the words for “which string is over here”', { timeout: busy }, () => {
  it('ask, place, name and judge every crossing of every knot in whole sentences', () => {
    const outcomes = new Set<string>();
    for (const knot of names)
      for (const { name: stop } of strandModel(knot, { moment: 0, crossings: false }).stops)
        for (const strands of new Set([basesFor(knot)[0], Math.min(3, basesFor(knot)[1])])) {
          const model = strandModel(knot, { moment: stop, strands });
          const figure = { ...model, knot };
          for (const [i, place] of crossingPlaces(model).entries()) {
            expect(crossingAsk(place, figure)).toMatch(/^(?:[A-Z].*\. )?W.*\?$/);
            expectSentences(crossingWhere(place, figure));
            if (place.covered) expectSentences(crossingHidden(place, figure));
            else expect(crossingHidden(place, figure)).toBe('');
            const buttons = place.choices.map((choice) => choiceWords(choice, figure));
            expect(new Set(buttons).size, knot).toBe(buttons.length);
            for (const choice of place.choices) {
              const found = checkCrossing(model, i, choice);
              if (!found) throw new Error('no verdict');
              outcomes.add(found.outcome);
              const said = crossingVerdict(found, choice, place, figure);
              // Where another string was named the verdict asks again, and a question mark stands at its end.
              if (found.outcome === 'elsewhere') expectSayable(said.replace(/\?$/, '.'));
              else expectSentences(said);
            }
          }
        }
    expect(outcomes).toEqual(new Set(['right', 'under', 'elsewhere']));
  });

  it('say where, why, and what was mixed up', () => {
    const model = strandModel('forward');
    const figure = { ...model, knot: 'forward' as const };
    const places = crossingPlaces(model);
    const place = places[4];
    if (!place) throw new Error('no crossing');
    expect(crossingWhere(place, figure)).toBe(
      'Along the leading string the circle marks pass 6 of 9, counted from where it comes from the left. Along the base string it is place 4 of 5, counted from the top.',
    );
    const verdict = (strand: string): string => {
      const found = checkCrossing(model, 4, { strand });
      return found ? crossingVerdict(found, { strand }, place, figure) : '';
    };
    expect(verdict('leading')).toBe(
      'Right: the leading string is over here. Count along the leading string from where it comes from the left: pass 6 of 9 goes over the base string, for the second time. Of the 5 places along the base string it is the fourth from the top.',
    );
    expect(verdict('base')).toMatch(
      /^The base string is in the circle, but it lies under: over and under have changed/,
    );
  });

  it('keep the answer open where the string named is at another place', () => {
    const model = strandModel('let-out', { strands: 2 });
    const [place] = crossingPlaces(model);
    const found = checkCrossing(model, 0, { strand: 'base' });
    if (!place || !found) throw new Error('no crossing');
    const figure = { ...model, knot: 'let-out' as const };
    expect(crossingVerdict(found, { strand: 'base' }, place, figure)).toBe(
      'The base string is not at this crossing. In the circle the freed string meets the leading string. Which of them is over?',
    );
  });

  it('tell the left hand the mirror image', () => {
    for (const knot of ['forward', 'forward-backward', 'caught-float', 'take-in'] as const) {
      const said = (handedness: 'right' | 'left'): string[] => {
        const model = strandModel(knot, { handedness });
        const figure = { ...model, knot };
        return crossingPlaces(model).map((place) => `${crossingAsk(place, figure)} ${crossingWhere(place, figure)}`);
      };
      expect(said('left')).toEqual(said('right').map(mirroredWords));
    }
  });
});
