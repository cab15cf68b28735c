import type { Slipped, Slips } from '../../missteps/contract.ts';
import { FITTING, FITTING_SLIPS, type FittingSlip, together } from '../../missteps/fitting.ts';
import type { SlipId, SlipSet } from '../../missteps/ids.ts';
import { type FitFigures, makeable } from '../figures.ts';
import { entered } from './judge.ts';
import { SUM_FIELDS, type SumFigures, type SumProblem, type SumSolution } from './problem.ts';
import { asEntered, asked, hasLoneString, workOut } from './solve.ts';

/** From this many figures on, two slips in one sum can be told from chance. */
const FIGURES_FOR_PAIRS = 4;

const sameFields = (problem: SumProblem, one: Readonly<SumFigures>, other: Readonly<SumFigures>): boolean =>
  problem.fields.every((field) => one[field] === other[field]);

/** Each way of making each slip that changes a figure asked for. */
function ways(problem: SumProblem) {
  const truth = workOut(problem);
  return FITTING_SLIPS.flatMap((slip) =>
    FITTING[slip]
      .map((overrides) => ({ slip, overrides, figures: workOut(problem, overrides) }))
      .filter(({ figures }) => !sameFields(problem, truth, figures)),
  );
}

const singles = (problem: SumProblem): Slipped<SumSolution>[] =>
  ways(problem).map(({ slip, figures }) => ({ slips: [slip], answer: asked(problem, figures) }));

/**
 * Two slips in one sum, of which each makes a difference by itself and in the company of the other. Slips
 * that change the same figure cannot be made together.
 */
function pairs(problem: SumProblem): Slipped<SumSolution>[] {
  if (problem.fields.length < FIGURES_FOR_PAIRS) return [];
  const truth = workOut(problem);
  const found: Slipped<SumSolution>[] = [];
  const made = ways(problem);
  made.forEach((one, index) => {
    for (const other of made.slice(index + 1)) {
      const both = one.slip === other.slip ? null : together(one.overrides, other.overrides);
      if (both === null) continue;
      const figures = workOut(problem, both);
      if ([truth, one.figures, other.figures].some((known) => sameFields(problem, known, figures))) continue;
      found.push({ slips: [one.slip, other.slip], answer: asked(problem, figures) });
    }
  });
  return found;
}

const isFitting = (slip: SlipId): slip is FittingSlip => slip in FITTING;

function every(problem: SumProblem, [one, other]: SlipSet): SumSolution[] {
  if (!isFitting(one) || (other !== undefined && !isFitting(other))) return [];
  const overrides = FITTING[one].flatMap((first) =>
    other === undefined ? [first] : FITTING[other].flatMap((second) => together(first, second) ?? []),
  );
  return overrides.map((each) => asked(problem, workOut(problem, each)));
}

/** Smaller sums first; first with the same fields, then with all, on which slips that end alike may part. */
function* followUps(problem: SumProblem): Generator<SumProblem> {
  const { startSide } = problem;
  const method = problem.oddMethod ?? 'lone-string';
  for (const wanted of [problem.fields, SUM_FIELDS]) {
    for (let width = 8; width <= 20; width += 1) {
      for (let capacity = 6; capacity < width; capacity += 1) {
        const figures: FitFigures = { width, capacity, oddMethod: width % 2 === 0 ? null : method, startSide };
        if ((width === problem.width && capacity === problem.capacity) || !makeable(figures, 8)) continue;
        const sum: SumProblem = { kind: 'sum', ...figures, fields: wanted };
        if (hasLoneString(sum) > 0) yield sum;
        else yield { ...sum, fields: wanted.filter((field) => field !== 'loneStrings') };
      }
    }
  }
}

const procedure =
  (slip: FittingSlip) =>
  (problem: SumProblem): SumSolution =>
    asked(problem, workOut(problem, FITTING[slip][0]));

/** The slips of the fitting sum. */
export const slips: Slips<'sum'> = {
  missteps: Object.fromEntries(FITTING_SLIPS.map((slip) => [slip, procedure(slip)])),
  every,
  singles,
  pairs,
  like: (problem, answer, options) => {
    const figures = entered(problem, answer, options);
    const filled = SUM_FIELDS.flatMap((field) => {
      const figure = figures[field];
      return figure === undefined ? [] : [[field, asEntered(field, figure)] as const];
    });
    return (slipped) => filled.length > 0 && filled.every(([field, figure]) => slipped[field] === figure);
  },
  figuresIn: (problem, answer, options) => Object.keys(entered(problem, answer, options)).length,
  followUps,
};
