import { MEASURING_SLIPS, type MeasuringSlip, slippedMeasures } from '../../missteps/measuring.ts';
import { pitchesOf } from '../../thread/pitch.ts';
import { capacityBy } from './measures.ts';
import { isMeasureQuestion, type MeasureQuestion, type NumberProblem } from './problem.ts';
import { type Procedures, slipsBy } from './procedures.ts';
import { solve } from './solve.ts';

const byMeasures = (slip: MeasuringSlip, problem: NumberProblem): number[] => [
  isMeasureQuestion(problem) ? capacityBy(slippedMeasures(slip), problem) : solve(problem).figure,
];

export const MEASURE_PROCEDURES: Procedures = new Map(
  MEASURING_SLIPS.map((slip) => [slip, (problem: NumberProblem) => byMeasures(slip, problem)]),
);

/** Short bars first. */
export function* smallMeasures({ kind, ask }: MeasureQuestion): Generator<NumberProblem> {
  for (const barWidth of [20, 25, 30, 34, 41]) {
    if (ask === 'capacity-by-swatch') {
      for (const [knots, swatchWidth] of [
        [10, 20],
        [10, 25],
        [12, 30],
      ] as const)
        yield { kind, ask, barWidth, knots, swatchWidth };
    } else
      for (const threadKind of ['soft', 'firm'] as const) {
        const { low, high } = pitchesOf({ diameter: 1, kind: threadKind }).column;
        yield { kind, ask, barWidth, tenTurns: 10, threadKind, narrowest: low, widest: high };
      }
  }
}

/** The slips of measuring a ring. */
export const slips = slipsBy(MEASURE_PROCEDURES, (problem) =>
  isMeasureQuestion(problem) ? smallMeasures(problem) : [],
);
