import { type Chart, parseChart } from '../solver/index.ts';
import { chartMistakeMessage } from './chart-message.ts';

/** A chart of the index: its id is its file's name. */
export interface ChartEntry {
  readonly id: string;
  readonly title: string;
  readonly chart: Chart;
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
    return { id, title: parsed.chart.title ?? id, chart: parsed.chart, text };
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
