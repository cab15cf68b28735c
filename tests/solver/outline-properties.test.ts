import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bundleSizes, type Fit, planRows } from '../../src/solver/index.ts';
import { tries } from '../seed.ts';
import './matchers.ts';
import { brokenRule, everySplit, fitOf, mirroredFit, mounted, startedFits, strandLimit } from './worlds.ts';

interface Outline {
  readonly fit: Fit;
  readonly height: number;
  readonly openingStep: number;
  readonly closingStep: number;
  readonly closingBundle: number | undefined;
}

const outlines: fc.Arbitrary<Outline> = fc
  .record({
    started: startedFits,
    height: fc.integer({ min: 1, max: 70 }),
    openingStep: fc.integer({ min: 1, max: 4 }),
    closingStep: fc.integer({ min: 1, max: 4 }),
    closingBundle: fc.option(fc.integer({ min: 1, max: 18 }), { nil: undefined }),
  })
  .map(({ started: { fit }, ...rest }) => ({ fit, ...rest }));

/** The options as a person would enter them: a closing bundle that is not wished for is left out. */
const entered = ({ closingBundle, ...rest }: Outline) =>
  closingBundle === undefined ? rest : { ...rest, closingBundle };

const opened = (mountedHere: number, row: number, step: number): number =>
  Math.max(1, mountedHere - Math.floor((row - 1) / step));
const closed = (closing: number, row: number, height: number, step: number): number =>
  Math.max(1, closing - Math.floor((height - row) / step));

/** The bundles an outline closes to: what was mounted, or the one wished for on both sides. */
function closings({ fit, closingBundle }: Outline): { left: number; right: number } {
  return closingBundle === undefined ? mounted(fit) : { left: closingBundle, right: closingBundle };
}

/** The sizes by the formulas of the craft, whether or not they can be tied. */
function byFormula(outline: Outline): { left: number[]; right: number[] } {
  const { fit, height, openingStep, closingStep } = outline;
  const start = mounted(fit);
  const end = closings(outline);
  const rows = Array.from({ length: height }, (_, i) => i + 1);
  const side = (from: number, to: number): number[] =>
    rows.map((row) => Math.max(opened(from, row, openingStep), closed(to, row, height, closingStep)));
  return { left: side(start.left, end.left), right: side(start.right, end.right) };
}

const closingTooBig = (outline: Outline): boolean => {
  const { fit } = outline;
  const start = mounted(fit);
  const end = closings(outline);
  const limit = Math.max(fit.maxBundle, start.left, start.right);
  if (end.left > limit || end.right > limit) return true;
  return fit.width < 4 ? end.left > 1 || end.right > 1 : end.left + end.right > fit.width - 2;
};

const tooShort = (outline: Outline): boolean => {
  const { fit, height, closingStep } = outline;
  const start = mounted(fit);
  const end = closings(outline);
  return (
    closed(end.left, 1, height, closingStep) > start.left || closed(end.right, 1, height, closingStep) > start.right
  );
};

/** Whether a closing bundle lies between an odd limit and one less, where the craft does not say. */
const unsaid = ({ fit, closingBundle }: Outline): boolean =>
  closingBundle === fit.maxBundle && strandLimit(fit.maxBundle) !== fit.maxBundle;

const eachOutline = (sentence: (outline: Outline) => void, runs = 500): void =>
  fc.assert(
    fc.property(outlines, (outline) => {
      fc.pre(!unsaid(outline));
      sentence(outline);
    }),
    tries(runs),
  );

/** Says something of every outline that can be tied. */
const eachTied = (sentence: (outline: Outline, sizes: ReturnType<typeof bundleSizes>) => void): void =>
  eachOutline((outline) => {
    const sizes = bundleSizes(entered(outline));
    if (sizes.ok) sentence(outline, sizes);
  });

describe('an outline from steps', () => {
  test('lets a bundle out by one every opening step, takes it in by one every closing step, and the larger bundle counts', () =>
    eachTied((outline, sizes) => {
      expect({ left: sizes.left, right: sizes.right }).toEqual(byFormula(outline));
    }));

  test('can be tied exactly where the closing is not too big and the piece not too short for it', () =>
    eachOutline((outline) => {
      const sizes = bundleSizes(entered(outline));
      expect(sizes.ok).toBe(brokenRule(outline.fit, byFormula(outline)) === null && !closingTooBig(outline));
    }, 1500));

  test('starts with what was mounted and ends with the closing bundles', () =>
    eachTied((outline, sizes) => {
      const start = mounted(outline.fit);
      expect([sizes.left[0], sizes.right[0]]).toEqual([start.left, start.right]);
      if (outline.openingStep * Math.max(start.left, start.right) < outline.height) {
        const end = closings(outline);
        expect([sizes.left.at(-1), sizes.right.at(-1)]).toEqual([end.left, end.right]);
      }
    }));

  test('changes each bundle by at most one per row', () =>
    eachTied((_, { left, right }) => {
      for (const side of [left, right])
        for (const [i, size] of side.entries()) expect(Math.abs(size - (side[i - 1] ?? size))).toBeLessThanOrEqual(1);
    }));

  test('can be planned', () =>
    eachTied(({ fit }, { left, right }) => {
      const rows = planRows({ fit, bundles: { left, right } });
      expect(Array.isArray(rows)).toBe(true);
      if (Array.isArray(rows)) expect(rows).toBeWalkable();
    }));

  test('reaches its full width in row 1 + p · (s − 1), if the closing leaves it one', () =>
    eachTied(({ fit, openingStep }, { left, right, firstFullRow, fullWidthRows }) => {
      const s = Math.max(mounted(fit).left, mounted(fit).right);
      const full = left.flatMap((size, i) => (size === 1 && right[i] === 1 ? [i + 1] : []));
      expect(fullWidthRows).toBe(full.length);
      expect(firstFullRow).toBe(full[0] ?? null);
      if (firstFullRow !== null) expect(firstFullRow).toBe(1 + openingStep * (s - 1));
    }));

  test('starts closing in row H − q · (t − 1) + 1, the earlier side counting, and never for a closing bundle of 1', () =>
    eachTied((outline, { firstClosingRow }) => {
      const { height, closingStep } = outline;
      const end = closings(outline);
      const starts = [end.left, end.right].flatMap((t) => (t >= 2 ? [height - closingStep * (t - 1) + 1] : []));
      if (starts.length === 0 || Math.max(...starts) < 1) expect(firstClosingRow).toBeNull();
      else if (Math.min(...starts) >= 1) expect(firstClosingRow).toBe(Math.min(...starts));
      // One side began before the piece did: it has no first closing row, the other still has.
      else expect([null, Math.max(...starts)]).toContain(firstClosingRow);
    }));

  test('takes in for the first time in its first closing row, where it had its full width before', () =>
    eachTied((_, { left, right, firstClosingRow, firstFullRow }) => {
      if (firstClosingRow === null || firstFullRow === null) return;
      const grows = left.findIndex(
        (size, i) => size > (left[i - 1] ?? size) || (right[i] ?? 0) > (right[i - 1] ?? right[i] ?? 0),
      );
      expect(grows + 1).toBe(firstClosingRow);
    }));

  test('with a closing bundle of 1 stays at full width to the end', () =>
    fc.assert(
      fc.property(outlines, (outline) => {
        const sizes = bundleSizes({ ...entered(outline), closingBundle: 1 });
        expect(sizes.firstClosingRow).toBeNull();
        if (sizes.ok && sizes.firstFullRow !== null)
          expect(sizes.fullWidthRows).toBe(outline.height - sizes.firstFullRow + 1);
      }),
      tries(),
    ));

  test('lets out and takes in one string a row where no steps are entered', () =>
    eachOutline(({ fit, height }) => {
      expect(bundleSizes({ fit, height })).toEqual(bundleSizes({ fit, height, openingStep: 1, closingStep: 1 }));
    }, 200));
});

describe('every small world', () => {
  const fits = Array.from({ length: 13 }, (_, i) => i + 2).flatMap((width) =>
    (['lone-string', 'carried-end'] as const).flatMap((asked) => {
      if (width % 2 === 0 && asked === 'carried-end') return [];
      const method = width % 2 === 0 ? null : asked;
      const capacity = method === 'carried-end' ? width - 1 : width;
      const figures = { width, capacity, maxBundle: 6, oddMethod: asked, startSide: 'left' } as const;
      return everySplit(width, capacity, method, 'left')
        .filter(({ left }) => left <= 6)
        .flatMap((split) => [fitOf(split, figures, method), mirroredFit(fitOf(split, figures, method))]);
    }),
  );

  test('can be tied exactly where its sizes break no rule and its closing is within the limit', () => {
    let mismatch: string | null = null;
    const counted = { tied: 0, refused: 0 };
    for (const fit of fits)
      for (let height = 1; height <= 12; height++)
        for (let openingStep = 1; openingStep <= 3; openingStep++)
          for (let closingStep = 1; closingStep <= 3; closingStep++)
            for (const closingBundle of [undefined, 1, 2, 3, 4, 5, 6, 7]) {
              const outline = { fit, height, openingStep, closingStep, closingBundle };
              const sizes = bundleSizes(entered(outline));
              const wanted = byFormula(outline);
              const rule = closingTooBig(outline) ? 'the closing is too big' : brokenRule(fit, wanted);
              counted[sizes.ok ? 'tied' : 'refused']++;
              if (
                sizes.ok !== (rule === null) ||
                (sizes.ok && String([sizes.left, sizes.right]) !== String([wanted.left, wanted.right]))
              )
                mismatch ??= `${JSON.stringify(outline)}: ${rule ?? 'legal'}, ${JSON.stringify(sizes)}`;
            }
    expect(mismatch).toBeNull();
    expect(Math.min(counted.tied, counted.refused)).toBeGreaterThan(1000);
  });
});

describe('an outline that cannot be tied', () => {
  test('has a closing too big, where the closing bundle is above the limit or leaves no two single strings to finish with', () =>
    eachOutline((outline) => {
      if (!closingTooBig(outline) || tooShort(outline)) return;
      const sizes = bundleSizes(entered(outline));
      expect(sizes).toBeRefusedAs('closing-too-big');
      expect([sizes.left, sizes.right]).toEqual([[], []]);
    }, 1500));

  test('is too short, where the closing would ask row 1 for a bigger bundle than was mounted', () =>
    eachOutline((outline) => {
      if (closingTooBig(outline) || !tooShort(outline)) return;
      const sizes = bundleSizes(entered(outline));
      expect(sizes).toBeRefusedAs('too-short');
      expect([sizes.left, sizes.right]).toEqual([[], []]);
    }, 1500));

  test('is one or the other where both are true', () =>
    eachOutline((outline) => {
      if (!closingTooBig(outline) || !tooShort(outline)) return;
      expect(bundleSizes(entered(outline))).toBeRefusedAs('closing-too-big', 'too-short');
    }, 1500));

  test('gets its sizes and a word where it never has its full width', () =>
    eachOutline((outline) => {
      const wanted = byFormula(outline);
      if (brokenRule(outline.fit, wanted) !== null || closingTooBig(outline)) return;
      const sizes = bundleSizes(entered(outline));
      const everFull = wanted.left.some((size, i) => size === 1 && wanted.right[i] === 1);
      expect(sizes.problem?.code).toBe(everFull ? undefined : 'never-full-width');
      expect({ left: sizes.left, right: sizes.right }).toEqual(wanted);
      if (!everFull) expect([sizes.firstFullRow, sizes.fullWidthRows]).toEqual([null, 0]);
    }, 1500));

  test('names figures, none of them missing', () =>
    eachOutline((outline) => {
      const { problem } = bundleSizes(entered(outline));
      if (problem === undefined) return;
      expect(Object.keys(problem.values).length).toBeGreaterThan(0);
      expect(problem).toHoldNoNaN();
    }));

  test('names the largest closing bundle: it is not too big, and one more is', () =>
    eachOutline((outline) => {
      const { problem } = bundleSizes(entered(outline));
      if (problem?.code !== 'closing-too-big' || outline.closingBundle === undefined) return;
      const largest = Number(problem.values['largest']);
      expect(largest).toBeLessThan(outline.closingBundle);
      const withBundle = (closingBundle: number) => bundleSizes({ ...entered(outline), height: 400, closingBundle });
      expect(withBundle(largest).ok).toBe(true);
      expect(withBundle(largest + 1)).toBeRefusedAs('closing-too-big');
    }, 1500));

  test('names the shortest height: it is long enough, and one row less is not', () =>
    eachOutline((outline) => {
      const { problem } = bundleSizes(entered(outline));
      if (problem === undefined || problem.code === 'closing-too-big') return;
      const shortest = Number(problem.values['shortestHeight']);
      expect(shortest).toBeGreaterThan(outline.height);
      const codeAt = (height: number): string | undefined => bundleSizes({ ...entered(outline), height }).problem?.code;
      expect(codeAt(shortest)).not.toBe(problem.code);
      expect(codeAt(shortest - 1)).toBe(problem.code);
    }, 1500));
});
