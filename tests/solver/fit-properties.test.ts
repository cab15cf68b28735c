import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { capacityRange, type Fit, fitPiece } from '../../src/solver/index.ts';
import { tries } from '../seed.ts';
import './matchers.ts';
import { alternativesOf, everySplit, type Figures, figures, methodUsed, other, strandLimit } from './worlds.ts';

/** Says something of every answer and every alternative, also of those offered beside a problem. */
function forEveryFit(sentence: (fit: Fit, figures: Figures) => void): void {
  fc.assert(
    fc.property(figures, (entered) => {
      const answer = fitPiece(entered);
      const fits = [...(answer.ok ? [answer.fit] : []), ...alternativesOf(answer)];
      for (const fit of fits) sentence(fit, entered);
    }),
    tries(600),
  );
}

/** Says something of the answer alone, where there is one. */
function forEveryAnswer(sentence: (fit: Fit, figures: Figures) => void): void {
  fc.assert(
    fc.property(figures, (entered) => {
      const answer = fitPiece(entered);
      if (answer.ok) sentence(answer.fit, entered);
    }),
    tries(600),
  );
}

const carried = (fit: Fit): number => (fit.oddMethod === 'carried-end' ? 1 : 0);

describe('every split the solver offers', () => {
  test('strings on the bar and columns beside it make the width', () =>
    forEveryFit((fit) => expect(fit.onBar + fit.left.columns + fit.right.columns).toBe(fit.width)));

  test('strands are as many as columns, and one more with a carried end', () =>
    forEveryFit((fit) => expect(fit.onBar + fit.left.strands + fit.right.strands).toBe(fit.width + carried(fit))));

  test('the bar never holds more than it takes, and never fewer than two', () =>
    forEveryFit((fit) => {
      expect(fit.onBar).toBeLessThanOrEqual(fit.capacity);
      expect(fit.onBar).toBeGreaterThanOrEqual(2);
    }));

  test('each fold on the bar gives two strings and a lone string one', () =>
    forEveryFit((fit) => expect(fit.folds * 2 + fit.loneStrings).toBe(fit.onBar)));

  test('folds put strands beside the bar in twos, so each side is even', () =>
    forEveryFit((fit) => {
      for (const side of [fit.left, fit.right]) {
        expect(side.strands % 2).toBe(0);
        expect(side.folds * 2).toBe(side.strands);
      }
    }));

  test('no side bundle is thicker than the limit, an odd limit acting as one less', () =>
    forEveryFit((fit, { maxBundle }) => {
      expect(Math.max(fit.left.strands, fit.right.strands)).toBeLessThanOrEqual(strandLimit(maxBundle));
    }));

  test('only an odd width has an odd string, and exactly one way to deal with it', () =>
    forEveryFit((fit) => {
      expect(fit.oddMethod === null).toBe(fit.width % 2 === 0);
      expect(fit.loneStrings).toBe(fit.oddMethod === 'lone-string' ? 1 : 0);
      expect(fit.carrySide === null).toBe(fit.oddMethod !== 'carried-end');
    }));

  test('a carried end rides on the side where row 1 ends, in a bundle that has one column fewer than strands', () =>
    forEveryFit((fit, { startSide }) => {
      for (const side of ['left', 'right'] as const) {
        const carries = fit.carrySide === side;
        expect(fit[side].columns).toBe(fit[side].strands - (carries ? 1 : 0));
        if (carries) expect(fit[side].strands).toBeGreaterThan(0);
      }
      if (fit.carrySide !== null) expect(fit.carrySide).toBe(other(startSide));
    }));

  test('in the first row each bundle counts as one knot', () =>
    forEveryFit((fit) =>
      expect(fit.firstRowKnots).toBe(fit.onBar + (fit.left.columns > 0 ? 1 : 0) + (fit.right.columns > 0 ? 1 : 0)),
    ));

  test('with one string out per row and side, full width comes in the row that has let the larger bundle out', () =>
    forEveryFit((fit) => {
      const larger = Math.max(fit.left.columns, fit.right.columns);
      expect(fit.rowsToFullWidth).toBe(larger === 0 ? 1 : 1 + (larger - 1)); // one row for each string after the first
    }));

  test('places used, borrowed and idle make all the places there are strings for', () =>
    forEveryFit((fit) => {
      expect(fit.onBar + fit.borrowed + fit.idle).toBe(Math.min(fit.capacity, fit.width));
      expect(fit.borrowed).toBeGreaterThanOrEqual(0);
    }));

  test('sides are level or differ by one fold, and the fit says which', () =>
    forEveryFit((fit) => {
      const apart = fit.left.strands - fit.right.strands;
      expect([0, 2]).toContain(apart);
      expect(fit.level).toBe(apart === 0);
    }));

  test('the figures entered stand in it', () =>
    forEveryFit((fit, entered) => {
      expect(fit).toMatchObject({ width: entered.width, capacity: entered.capacity });
      expect(fit).toHoldNoNaN();
    }));
});

describe('the answer', () => {
  test('is level', () => forEveryAnswer((fit) => expect(fit.left.strands).toBe(fit.right.strands)));

  test('has most on the bar of all level splits by the same way of dealing with an odd string', () =>
    forEveryAnswer((fit, { startSide }) => {
      const better = everySplit(fit.width, fit.capacity, fit.oddMethod, startSide).filter(
        ({ onBar, left, right }) => left === right && onBar > fit.onBar,
      );
      expect(better).toEqual([]);
    }));

  test('deals with an odd string as asked, but where all strings have a place on the bar it is a lone string', () =>
    forEveryAnswer((fit, entered) => expect(fit.oddMethod).toBe(methodUsed(entered, entered.oddMethod))));

  test('borrows two places or none, and leaves one idle or none', () =>
    forEveryAnswer((fit) => {
      expect([0, 2]).toContain(fit.borrowed);
      expect([0, 1]).toContain(fit.idle);
    }));

  test('leaves a place idle exactly where width and capacity are not both even or both odd, or a carried end meets an odd bar', () =>
    forEveryAnswer((fit) => {
      if (fit.width <= fit.capacity) expect(fit.idle).toBe(0);
      else if (fit.oddMethod === 'carried-end') expect(fit.idle).toBe(fit.capacity % 2);
      else expect(fit.idle).toBe(Math.abs(fit.width - fit.capacity) % 2);
    }));

  test('has no bundles where the bar takes the whole width', () =>
    forEveryAnswer((fit) => {
      expect(fit.left.strands === 0).toBe(fit.width <= fit.capacity);
    }));

  test('is, by the maker’s way of saying it, half of width less places, with two borrowed where the half is odd', () =>
    forEveryAnswer((fit) => {
      if (fit.width <= fit.capacity || fit.oddMethod === 'carried-end') return;
      const places = fit.capacity - (Math.abs(fit.width - fit.capacity) % 2);
      const half = (fit.width - places) / 2;
      expect(fit.left.strands).toBe(half % 2 === 0 ? half : half + 1);
      expect(fit.borrowed).toBe(half % 2 === 0 ? 0 : 2);
    }));

  test('depends on the starting side only in the side that carries', () =>
    fc.assert(
      fc.property(figures, (entered) => {
        const here = fitPiece(entered);
        const there = fitPiece({ ...entered, startSide: other(entered.startSide) });
        expect(there.ok).toBe(here.ok);
        if (!here.ok || !there.ok) return;
        expect(there.fit).toEqual(
          here.fit.carrySide === null
            ? here.fit
            : { ...here.fit, carrySide: other(here.fit.carrySide), left: here.fit.right, right: here.fit.left },
        );
      }),
      tries(),
    ));

  test('for an even width is the same whatever is asked for an odd string', () =>
    fc.assert(
      fc.property(figures, (entered) => {
        const even = { ...entered, width: entered.width - (entered.width % 2) };
        const lone = fitPiece({ ...even, oddMethod: 'lone-string' });
        const carried = fitPiece({ ...even, oddMethod: 'carried-end' });
        expect(carried.ok ? carried.fit : carried.problem.code).toEqual(lone.ok ? lone.fit : lone.problem.code);
        expect(alternativesOf(carried)).toEqual(alternativesOf(lone));
      }),
      tries(),
    ));

  test('is the default one where nothing but width and capacity is entered: bundles to 8, a lone string, begun on the left', () =>
    fc.assert(
      fc.property(figures, ({ width, capacity }) => {
        expect(fitPiece({ width, capacity })).toEqual(
          fitPiece({ width, capacity, maxBundle: 8, oddMethod: 'lone-string', startSide: 'left' }),
        );
      }),
      tries(),
    ));

  test('for a wider bundle limit is the same wherever the narrower limit had one', () =>
    fc.assert(
      fc.property(figures, fc.integer({ min: 0, max: 10 }), (entered, more) => {
        const tight = fitPiece(entered);
        const roomy = fitPiece({ ...entered, maxBundle: Math.min(40, entered.maxBundle + more) });
        if (!tight.ok) return;
        expect(roomy.ok).toBe(true);
        if (roomy.ok) expect({ ...roomy.fit, maxBundle: 0 }).toEqual({ ...tight.fit, maxBundle: 0 });
      }),
      tries(),
    ));
});

describe('alternatives', () => {
  const forEveryList = (sentence: (alternatives: readonly Fit[], answer: Fit | null, entered: Figures) => void): void =>
    fc.assert(
      fc.property(figures, (entered) => {
        const answer = fitPiece(entered);
        sentence(alternativesOf(answer), answer.ok ? answer.fit : null, entered);
      }),
      tries(600),
    );
  const sides = (fit: Fit): string => `${fit.oddMethod} ${fit.onBar} ${fit.left.strands} ${fit.right.strands}`;

  test('name each split once and never the answer again', () =>
    forEveryList((alternatives, answer) => {
      const named = [...alternatives, ...(answer === null ? [] : [answer])].map(sides);
      expect(new Set(named).size).toBe(named.length);
    }));

  test('stand level before lopsided, then most on the bar first', () =>
    forEveryList((alternatives) => {
      for (const [i, next] of alternatives.entries()) {
        const before = alternatives[i - 1];
        if (before === undefined) continue;
        expect(before.level || !next.level).toBe(true);
        if (before.level === next.level) expect(before.onBar).toBeGreaterThanOrEqual(next.onBar);
      }
    }));

  test('show the other way of dealing with an odd string at most once', () =>
    forEveryList((alternatives, answer, entered) => {
      const used = methodUsed(entered, entered.oddMethod);
      const others = alternatives.filter(({ oddMethod }) => oddMethod !== used);
      expect(others.length).toBeLessThanOrEqual(entered.width % 2 === 1 && entered.width > entered.capacity ? 1 : 0);
      if (answer !== null) expect(answer.oddMethod).toBe(used);
    }));
});

describe('where a piece cannot be made so', () => {
  const forEveryProblem = (
    sentence: (problem: { code: string; smallestCapacity: number; greatestWidth: unknown }, entered: Figures) => void,
  ): void =>
    fc.assert(
      fc.property(figures, (entered) => {
        const answer = fitPiece(entered);
        if (answer.ok) return;
        const { code, values } = answer.problem;
        sentence(
          { code, smallestCapacity: Number(values['smallestCapacity']), greatestWidth: values['greatestWidth'] },
          entered,
        );
      }),
      tries(600),
    );

  test('the smallest capacity named works, and no smaller one does', () =>
    forEveryProblem(({ smallestCapacity }, entered) => {
      expect(fitPiece({ ...entered, capacity: smallestCapacity }).ok).toBe(true);
      for (let less = smallestCapacity - 1; less >= Math.max(2, smallestCapacity - 6); less--)
        expect(fitPiece({ ...entered, capacity: less }).ok).toBe(false);
    }));

  test('the greatest width named works, and none of the wider ones does', () =>
    forEveryProblem(({ code, greatestWidth }, entered) => {
      if (code !== 'bundle-too-big') return;
      const width = Number(greatestWidth);
      expect(fitPiece({ ...entered, width }).ok).toBe(true);
      for (let wider = width + 1; wider <= Math.min(400, width + 8); wider++)
        expect(fitPiece({ ...entered, width: wider }).ok).toBe(false);
    }));

  test('no level split within the limit is offered beside the problem by the way that was asked for', () =>
    fc.assert(
      fc.property(figures, (entered) => {
        const answer = fitPiece(entered);
        if (answer.ok) return;
        const used = methodUsed(entered, entered.oddMethod);
        expect(alternativesOf(answer).filter((fit) => fit.level && fit.oddMethod === used)).toEqual([]);
      }),
      tries(600),
    ));
});

describe('the capacity of a bar', () => {
  const tenths = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });

  test('is how many whole column pitches go into it: most with the narrow pitch, fewest with the wide one', () =>
    fc.assert(
      fc.property(tenths(80, 900), tenths(10, 40), tenths(0, 10), tenths(0, 10), (bar, low, more, yetMore) => {
        // Counted in tenths of a millimetre, where the division is exact.
        const likely = low + more;
        const high = likely + yetMore;
        const range = capacityRange({
          barWidth: bar / 10,
          columnPitch: { low: low / 10, likely: likely / 10, high: high / 10 },
        });
        expect(range).toMatchObject({
          low: Math.floor(bar / high),
          likely: Math.floor(bar / likely),
          high: Math.floor(bar / low),
        });
      }),
      tries(600),
    ));
});
