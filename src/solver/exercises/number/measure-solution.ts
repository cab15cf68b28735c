import { capacityBy, columnBy, MEASURE_RULES } from './measures.ts';
import type { MeasureQuestion } from './problem.ts';
import type { NumberStep } from './solution.ts';

/** A capacity, worked out from what was measured. */
export function workMeasures(problem: MeasureQuestion): NumberStep[] {
  const { barWidth } = problem;
  const column = columnBy(MEASURE_RULES, problem);
  const steps: NumberStep[] = [];
  if (problem.ask === 'capacity-low') {
    const { tenTurns, widest } = problem;
    const thickness = MEASURE_RULES.thickness(tenTurns);
    steps.push(
      { key: 'one-turn', values: { tenTurns, thickness }, gives: null },
      { key: 'widest-column', values: { thickness, widest, column }, gives: null },
    );
  } else {
    const { knots, swatchWidth } = problem;
    steps.push({ key: 'swatch-column', values: { knots, swatchWidth, column }, gives: null });
  }
  const places = barWidth / column;
  steps.push({
    key: 'columns-on-bar',
    values: { barWidth, column, places, columns: capacityBy(MEASURE_RULES, problem) },
    gives: 'figure',
  });
  return steps;
}
