import type { Problem, Refusal } from '../../problem.ts';
import { drawFigures } from '../draw-figures.ts';
import type { FitFigures } from '../figures.ts';
import { knownLevel, type Level } from '../level.ts';
import { draw, type Seed } from '../seed.ts';
import { SUM_FIELDS, type SumField, type SumOptions, type SumProblem } from './problem.ts';
import { hasLoneString } from './solve.ts';

/** The fields that can be asked of these figures, in the order of the sum. */
function fieldsFor(figures: FitFigures, wanted: readonly SumField[] | undefined): SumField[] {
  const listed = SUM_FIELDS.filter((field) => wanted?.includes(field) ?? true);
  const fields = listed.length > 0 ? listed : [...SUM_FIELDS];
  const asked = fields.filter(
    (field) => field !== 'loneStrings' || hasLoneString({ kind: 'sum', ...figures, fields }) > 0,
  );
  return asked.length > 0 ? asked : fields;
}

/**
 * A fitting sum: a chart and a bar drawn from the seed, or the learner's own where `options` give them, and
 * the figures asked for. A level that is not one of the four counts as `mixed`.
 *
 * @returns the problem; a refusal only where `options` hold figures that can be made into none
 */
export function make(seed: Seed, level: Level): SumProblem;
export function make(seed: Seed, level: Level, options: SumOptions): SumProblem | Refusal<Problem>;
export function make(seed: Seed, level: Level, options: SumOptions = {}): SumProblem | Refusal<Problem> {
  const figures = drawFigures(draw(seed), knownLevel(level), options);
  return 'ok' in figures ? figures : { kind: 'sum', ...figures, fields: fieldsFor(figures, options.fields) };
}
