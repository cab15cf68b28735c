import rings from '../../content/charts/rings.json';
import { type Chart, type Plan, parseChart, planChart } from '../solver/index.ts';
import { problemWords } from '../words/problems.ts';
import { chartMistakeMessage } from './chart-message.ts';

/** A chart of the index: its id is its file's name. */
export interface ChartEntry {
  readonly id: string;
  readonly title: string;
  readonly chart: Chart;
  /** Knotted columns that the bar of the ring takes for which it was drawn. */
  readonly capacity: number;
  /** The file as it stands, for those who want to paste or change it. */
  readonly text: string;
}

const files = import.meta.glob<string>('../../content/charts/*.chart', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** Every chart in `content/charts/`, narrowest first. A file with a mistake stops the build with its line and column. */
export const charts: readonly ChartEntry[] = Object.entries(files)
  .map(([path, text]): ChartEntry => {
    const id = path.slice(path.lastIndexOf('/') + 1, -'.chart'.length);
    const parsed = parseChart(text);
    if (!parsed.ok) throw new Error(chartMistakeMessage(`content/charts/${id}.chart`, parsed.problem));
    const capacity = (rings as Readonly<Record<string, number>>)[id];
    if (capacity === undefined)
      throw new Error(`content/charts/rings.json does not say for which bar '${id}' was drawn.`);
    return { id, title: parsed.chart.title ?? id, chart: parsed.chart, capacity, text };
  })
  .sort((a, b) => a.chart.width - b.chart.width || a.id.localeCompare(b.id, 'en'));

/** The chart with this id, or a build error that names those there are. */
export function chartEntry(id: string): ChartEntry {
  const found = charts.find((entry) => entry.id === id);
  if (!found)
    throw new Error(
      `There is no chart '${id}' in content/charts/. There are: ${charts.map((entry) => entry.id).join(', ')}.`,
    );
  return found;
}

/** The whole piece of a chart, on the ring it was drawn for. A ring that can't carry it stops the build. */
export function chartPlan({ id, chart, capacity }: ChartEntry): Plan {
  const plan = planChart({ chart, capacity });
  if (!plan.ok)
    throw new Error(`content/charts/rings.json: '${id}' on ${capacity} can't be made: ${problemWords(plan.problem)}`);
  return plan;
}
