import { type Accessor, createEffect, createSignal } from 'solid-js';
import type { Chart } from '../../solver/chart.ts';
import { parseChart } from '../../solver/chart-text.ts';
import { chartWords } from '../../words/chart-words.ts';
import type { Own } from './use-own.ts';

export interface ChosenChart {
  /** The learner's chart once it is there; null without one. */
  readonly chart: Accessor<Chart | null>;
  /** What kept it from being read, in words. */
  readonly problem: Accessor<string | undefined>;
}

/** Fetches and reads the chart that the learner chose; the last good one stays until the next is there. */
export function useChart(own: Own, chartsAt: string): ChosenChart {
  const [chart, setChart] = createSignal<Chart | null>(null);
  const [problem, setProblem] = createSignal<string>();
  const take = (text: string) => {
    const read = parseChart(text);
    setProblem(read.ok ? undefined : chartWords(read.problem));
    if (read.ok) setChart(read.chart);
  };
  createEffect(() => {
    const wanted = own.figures().chart;
    if (wanted === null) {
      setChart(null);
      setProblem(undefined);
    } else if (wanted.from === 'text') take(wanted.text);
    else {
      const { id } = wanted;
      fetch(`${chartsAt}${id}.txt`)
        .then(async (answer) => {
          if (!answer.ok) throw new Error(String(answer.status));
          const text = await answer.text();
          const now = own.figures().chart;
          if (now?.from === 'index' && now.id === id) take(text);
        })
        .catch(() =>
          setProblem(
            'The chart could not be fetched. Without a network, open the page of charts once while you have one, or paste the chart as text.',
          ),
        );
    }
  });
  return { chart, problem };
}
