import { type Accessor, createEffect, createSignal } from 'solid-js';
import type { Chart } from '../../solver/chart.ts';
import { chartWords } from '../../words/chart-words.ts';
import { readOwnChart } from '../own-chart.ts';
import type { Own } from './use-own.ts';

export interface ChosenChart {
  /** The learner's chart once it is there; null without one. */
  readonly chart: Accessor<Chart | null>;
  /** What kept it from being read, in words. */
  readonly problem: Accessor<string | undefined>;
}

const NOT_FETCHED =
  'The chart could not be fetched. Without a network, open the page of charts once while you have one, or paste the chart as text.';

/** Fetches and reads the chart that the learner chose; the last good one stays until the next is there. */
export function useChart(own: Own): ChosenChart {
  const [chart, setChart] = createSignal<Chart | null>(null);
  const [problem, setProblem] = createSignal<string>();
  createEffect(() => {
    const wanted = own.figures().chart;
    if (wanted === null) {
      setChart(null);
      setProblem(undefined);
      return;
    }
    const isStillWanted = () => JSON.stringify(own.figures().chart) === JSON.stringify(wanted);
    readOwnChart(wanted).then(
      (read) => {
        if (!isStillWanted()) return;
        setProblem(read.ok ? undefined : chartWords(read.problem));
        if (read.ok) setChart(read.chart);
      },
      () => isStillWanted() && setProblem(NOT_FETCHED),
    );
  });
  return { chart, problem };
}
