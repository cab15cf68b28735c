import { SUM_FIELDS, type SumField, type SumFigures, type SumProblem, type SumSolution } from './problem.ts';

/** One way to work a figure out, from the problem and the figures before it. */
export type Rule = (problem: SumProblem, before: Readonly<SumFigures>) => number;

/** 1 where a carried end makes one strand more than there are columns; a straight piece has no bundle for it. */
export const carriedEnds = ({ oddMethod, width, capacity }: SumProblem): number =>
  oddMethod === 'carried-end' && width % 2 === 1 && width > capacity ? 1 : 0;

/** 1 where one string of an odd width is fixed on the bar by itself. */
export const hasLoneString = (problem: SumProblem): number => (problem.width % 2) - carriedEnds(problem);

/** 1 for an odd number on either side of zero. */
const oddness = (figure: number): number => Math.abs(figure % 2);

/**
 * Every figure with the rules that give it (craft, section 3). The first is the one a maker works by; the
 * others are as good, and a figure that any of them gives from what was entered before follows from it.
 * They agree on true figures, and part only after a slip: half of an odd number may be written either way.
 */
export const SUM_RULES: { readonly [F in SumField]: readonly [Rule, ...Rule[]] } = {
  places: [(p) => (p.width <= p.capacity ? p.width : p.capacity - oddness(p.width + carriedEnds(p) - p.capacity))],
  spare: [(p, b) => p.width + carriedEnds(p) - b.places],
  eachSide: [(_, b) => Math.floor(b.spare / 2), (_, b) => Math.ceil(b.spare / 2)],
  parity: [(_, b) => oddness(b.eachSide)],
  borrowed: [(_, b) => (b.parity === 1 ? 2 : 0), (_, b) => oddness(b.eachSide) * 2],
  onBar: [(_, b) => b.places - b.borrowed],
  bundle: [
    (_, b) => b.eachSide + Math.ceil(b.borrowed / 2),
    (_, b) => b.eachSide + Math.floor(b.borrowed / 2),
    (p, b) => (p.width + carriedEnds(p) - b.onBar) / 2,
  ],
  foldsOnBar: [(_, b) => Math.floor(b.onBar / 2), (p, b) => Math.ceil((b.onBar - hasLoneString(p)) / 2)],
  loneStrings: [(_, b) => oddness(b.onBar)],
  foldsEachSide: [(_, b) => Math.ceil(b.bundle / 2), (_, b) => Math.floor(b.bundle / 2)],
  firstRowKnots: [
    (_, b) => b.onBar + (b.bundle ? 2 : 0),
    (_, b) => 2 * b.foldsOnBar + b.loneStrings + (b.bundle ? 2 : 0),
    (p, b) => p.width + carriedEnds(p) - 2 * Math.max(0, b.bundle - 1),
  ],
  fullWidthRow: [(_, b) => Math.max(1, b.bundle)],
};

/** Rules put in the place of a maker's own, given also what the maker's rule would say. */
export type Overrides = {
  readonly [F in SumField]?: (problem: SumProblem, before: Readonly<SumFigures>, usual: number) => number;
};

const NOTHING_YET: Readonly<SumFigures> = {
  places: 0,
  spare: 0,
  eachSide: 0,
  parity: 0,
  borrowed: 0,
  onBar: 0,
  bundle: 0,
  foldsOnBar: 0,
  loneStrings: 0,
  foldsEachSide: 0,
  firstRowKnots: 0,
  fullWidthRow: 0,
};

/**
 * Works the whole sum, every figure from the ones before it. With overrides it goes wrong there and stays
 * consistent after it, which is what a learner's slip does.
 *
 * @returns all figures, asked for or not; whole numbers for any problem whose figures are whole
 */
export function workOut(problem: SumProblem, overrides: Overrides = {}): SumFigures {
  const figures: SumFigures = { ...NOTHING_YET };
  for (const field of SUM_FIELDS) {
    const usual = SUM_RULES[field][0](problem, figures);
    // + 0 turns the −0 of "half of nothing, the wrong way round" into 0.
    figures[field] = (overrides[field]?.(problem, figures, usual) ?? usual) + 0;
  }
  return figures;
}

/** A figure as it is entered and shown. */
export const asEntered = (field: SumField, figure: number): number | 'even' | 'odd' =>
  field === 'parity' ? (figure === 1 ? 'odd' : 'even') : figure;

/** The figures that the problem asks for, out of all. */
export function asked(problem: SumProblem, figures: Readonly<SumFigures>): SumSolution {
  const answer: Record<string, number | 'even' | 'odd'> = {};
  for (const field of problem.fields) answer[field] = asEntered(field, figures[field]);
  return answer;
}

/**
 * The right answer: every figure asked for.
 *
 * @example solve({ kind: 'sum', width: 26, capacity: 16, …, fields: ['spare', 'onBar', 'bundle'] })
 * // { spare: 10, onBar: 14, bundle: 6 }
 */
export const solve = (problem: SumProblem): SumSolution => asked(problem, workOut(problem));
