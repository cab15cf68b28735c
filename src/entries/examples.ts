import { z } from 'astro/zod';
import examplesFile from '../../content/examples.json';
import { type Plan, planPiece } from '../solver/index.ts';
import { problemWords } from '../words/problems.ts';
import { chartEntry } from './charts.ts';

const example = z.strictObject({
  /** How a sentence calls it: 'the lantern'. */
  name: z.string().min(3),
  capacity: z.int(),
  width: z.int(),
  height: z.int(),
  oddMethod: z.enum(['lone-string', 'carried-end']).optional(),
  startSide: z.enum(['left', 'right']).optional(),
  openingStep: z.int().optional(),
  closingStep: z.int().optional(),
  closingBundle: z.int().optional(),
  /** Whether the outline follows the blank cells of the chart. */
  followChart: z.boolean().optional(),
  /** A chart of the index, which then gives width and height. */
  chart: z.string().optional(),
});

/** The figures a plate, an exercise or a try-it needs to make its plan again in the browser. */
export interface ExampleInput {
  readonly capacity: number;
  readonly width: number;
  readonly height: number;
  readonly oddMethod?: 'lone-string' | 'carried-end' | undefined;
  readonly startSide?: 'left' | 'right' | undefined;
  readonly openingStep?: number | undefined;
  readonly closingStep?: number | undefined;
  readonly closingBundle?: number | undefined;
  readonly followChart?: boolean | undefined;
}

export interface Example {
  readonly id: string;
  readonly name: string;
  readonly input: ExampleInput;
  /** The chart's id in the index, where the example has one. */
  readonly chart: string | null;
  readonly plan: Plan;
}

function made(id: string, value: unknown): Example {
  const where = `content/examples.json: '${id}'`;
  const read = example.safeParse(value);
  if (!read.success) throw new Error(`${where}: ${z.prettifyError(read.error)}`);
  const { name, chart, ...figures } = read.data;
  const drawn = chart === undefined ? null : chartEntry(chart);
  if (drawn && (drawn.chart.width !== figures.width || drawn.chart.height !== figures.height))
    throw new Error(
      `${where} says ${figures.width} × ${figures.height}, and its chart '${chart}' is ${drawn.chart.width} × ${drawn.chart.height}. Make them alike.`,
    );
  const plan = planPiece({ ...figures, ...(drawn ? { chart: drawn.chart } : {}) });
  if (!plan.ok) throw new Error(`${where} can't be made: ${problemWords(plan.problem)}`);
  return { id, name, input: figures, chart: chart ?? null, plan };
}

/** The worked examples of `content/examples.json`, by id. */
const examples: Readonly<Record<string, Example>> = Object.fromEntries(
  Object.entries(examplesFile).map(([id, value]) => [id, made(id, value)]),
);

/** The example with this id, or a build error that names those there are. */
export function exampleOf(id: string): Example {
  const found = examples[id];
  if (!found)
    throw new Error(
      `There is no example '${id}' in content/examples.json. There are: ${Object.keys(examples).join(', ')}.`,
    );
  return found;
}
