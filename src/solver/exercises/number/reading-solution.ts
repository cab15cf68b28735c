import { bundlesIn, firstKnotColumn, OUTLINE_RULES } from '../outline.ts';
import type { ChartQuestion } from './problem.ts';
import type { NumberStep } from './solution.ts';
import { fromOutline, lengthsOf, rowForPicture } from './solve.ts';

/** How a chart is read or its picture placed, worked out. */
export function workChart(problem: ChartQuestion): NumberStep[] {
  switch (problem.ask) {
    case 'column-of-knot': {
      const { row, knot, startSide } = problem;
      const bundles = bundlesIn(OUTLINE_RULES, problem, row);
      const first = firstKnotColumn(OUTLINE_RULES, problem, row, bundles, startSide);
      const begins = OUTLINE_RULES.beginsLeft(row, startSide) ? 'left' : 'right';
      return [
        { key: 'bundles-in-row', values: { row, left: bundles[0], right: bundles[1] }, gives: null },
        { key: 'row-begins', values: { row, startSide, begins, first }, gives: null },
        {
          key: 'column-of-knot',
          values: {
            knot,
            begins,
            first,
            steps: OUTLINE_RULES.stepsTo(knot),
            column: fromOutline(OUTLINE_RULES, problem),
          },
          gives: 'figure',
        },
      ];
    }
    case 'knots-of-colour': {
      const lengths = lengthsOf(problem);
      const { row, colour } = problem;
      const stretches = lengths.length;
      const knots = fromOutline(OUTLINE_RULES, problem);
      return [
        { key: 'stretches-of-colour', values: { row, colour, stretches }, gives: null },
        { key: 'knots-of-colour', values: { colour, stretches, sum: lengths.join(' + '), knots }, gives: 'figure' },
      ];
    }
    case 'plain-rows-above': {
      const { pictureRow, inset, bundles } = problem;
      const row = rowForPicture(OUTLINE_RULES, problem);
      return [
        { key: 'row-for-picture', values: { inset, bundle: Math.max(...bundles), row }, gives: null },
        { key: 'plain-rows-above', values: { pictureRow, row, plain: row - pictureRow }, gives: 'figure' },
      ];
    }
  }
}
