import { describe, expect, it } from 'vitest';
import { type KnotName, knots, mirrorKnot, type Stop, strandModel, tell } from '../../src/figures/strand/index.ts';
import { knotTitle, mirroredWords, stopSentence } from '../../src/words/knot-stages.ts';
import { strandSentences } from '../../src/words/strand-words.ts';

const busy = 30_000;
const names = Object.keys(knots) as KnotName[];
const stopsOf = (knot: KnotName): readonly Stop[] =>
  strandModel(knot, { moment: 0, crossings: false }).stops.map(({ name }) => name);

const everyStop: readonly Stop[] = [
  'at-rest',
  'laid-over',
  'passed-behind',
  'brought-through',
  'laid-over-again',
  'passed-behind-again',
  'brought-through-again',
  'drawn-up',
];

describe('the stages of a knot in words', { timeout: busy }, () => {
  it('has a sentence at every stopping point of every knot, on one string and on a bundle, and at no other', () => {
    for (const knot of names)
      for (const stop of everyStop)
        for (const strands of [1, 4])
          for (const handedness of ['left', 'right'] as const) {
            const sentence = stopSentence(knot, stop, { strands, handedness });
            if (stopsOf(knot).includes(stop)) expect(sentence, `${knot} ${stop}`).toMatch(/^[A-Z][^{}]{15,}\.$/);
            else expect(sentence, `${knot} ${stop}`).toBe('');
          }
  });

  it('says another thing at every stop of one knot', () => {
    for (const knot of names) {
      const said = stopsOf(knot).map((stop) => stopSentence(knot, stop));
      expect(new Set(said).size, knot).toBe(said.length);
    }
  });

  it('tells the left hand the mirror image, and the right hand again what it was told', () => {
    for (const knot of names)
      for (const stop of stopsOf(knot)) {
        const right = stopSentence(knot, stop);
        expect(stopSentence(knot, stop, { handedness: 'left' })).toBe(mirroredWords(right));
        expect(mirroredWords(mirroredWords(right))).toBe(right);
      }
  });

  it('tells a knot and its mirror image alike, but for left and right', () => {
    for (const knot of names) {
      if (mirrorKnot(knot) === knot) continue;
      for (const stop of stopsOf(knot))
        expect(stopSentence(mirrorKnot(knot), stop)).toBe(mirroredWords(stopSentence(knot, stop)));
    }
  });

  it('says the side on which the leading string comes in and leaves as the drawing has it', () => {
    for (const knot of ['forward', 'backward', 'forward-backward', 'backward-forward'] as const) {
      const told = tell(strandModel(knot));
      const [from, to] = [told[0]?.values['side'], told.at(-1)?.values['side']];
      expect(stopSentence(knot, 'at-rest')).toContain(`from the ${from}`);
      expect(stopSentence(knot, 'drawn-up')).toMatch(new RegExp(`(?:back|is) on the ${to}`));
    }
  });

  it('names every knot', () => {
    for (const knot of names) expect(knotTitle(knot), knot).toMatch(/^[a-z].{3,}$/);
    expect(knotTitle('backward-forward')).toBe('backward-forward knot');
    expect(knotTitle('forward', { handedness: 'left' })).toBe('backward knot');
  });
});

describe('a drawing of cords in words', { timeout: busy }, () => {
  const wordsOf = (knot: KnotName, strands: number, moment: Stop) => {
    const model = strandModel(knot, { strands, moment });
    return strandSentences(tell(model), { ...model, knot });
  };

  it('has words for every cord, side and pass of every knot at every stop', () => {
    for (const knot of names)
      for (const stop of stopsOf(knot))
        for (const sentence of wordsOf(knot, 3, stop)) {
          expect(sentence, `${knot} ${stop}`).toMatch(/^[A-Z].*\.$/);
          expect(sentence, `${knot} ${stop}`).not.toMatch(/\?|undefined/);
        }
  });

  it('follows the leading string over and under, in order', () => {
    expect(wordsOf('forward-half-hitch', 1, 'drawn-up')).toEqual([
      'The base string hangs straight down.',
      'The leading string comes from the left. It passes under itself, then over the base string, then under the base string and then over itself. It leaves to the left.',
    ]);
  });

  it('names all the strings of a bundle as one, and a single one of them by its place', () => {
    const all = wordsOf('forward', 5, 'drawn-up').join(' ');
    expect(all).toContain('over all 5 strings of the bundle');
    expect(all).toContain('Five strings of the bundle hang straight down');
    expect(wordsOf('carry-behind', 1, 'passed-behind').join(' ')).toContain('under all 2 strings at the edge');
  });

  it('says as many overs and unders as the drawing has', () => {
    for (const knot of names) {
      const model = strandModel(knot, { strands: 2 });
      const steps = tell(model).filter(({ key }) => key.startsWith('passes')).length;
      const said = strandSentences(tell(model), { ...model, knot })
        .join(' ')
        .match(/\b(?:over|under) (?!the edge)/g);
      expect(said?.length, knot).toBe(steps);
    }
  });
});
