import { type Accessor, batch, createEffect, createSignal } from 'solid-js';
import type { Chart } from '../../solver/chart.ts';
import { chartWords } from '../../words/chart-words.ts';
import { readOwnChart } from '../own-chart.ts';
import type { Own } from './use-own.ts';

export interface ChosenChart {
  /** The learner's chart once it is there; null without one. */
  readonly chart: Accessor<Chart | null>;
  /** What kept it from being read, in words. */
  readonly problem: Accessor<string | undefined>;
  /** Whether the chart that is wanted is still on its way. */
  readonly waiting: Accessor<boolean>;
}

const NOT_FETCHED =
  'The chart could not be fetched. Without a network, open the page of charts once while you have one, or paste the chart as text.';

/** Fetches and reads the chart that the learner chose; the last good one stays until the next is there. */
export function useChart(own: Own): ChosenChart {
  const [chart, setChart] = createSignal<Chart | null>(null);
  const [problem, setProblem] = createSignal<string>();
  /** The choice that has been answered last, with its chart or with a problem. */
  const [answered, setAnswered] = createSignal<string | null>(null);
  const choice = () => {
    const wanted = own.figures().chart;
    return wanted && JSON.stringify(wanted);
  };
  createEffect(() => {
    const wanted = own.figures().chart;
    if (wanted === null) {
      setChart(null);
      setProblem(undefined);
      return;
    }
    const asked = JSON.stringify(wanted);
    const answer = (problem: string | undefined, read?: Chart) => {
      if (choice() !== asked) return;
      batch(() => {
        setProblem(problem);
        if (read) setChart(read);
        setAnswered(asked);
      });
    };
    readOwnChart(wanted).then(
      (read) => (read.ok ? answer(undefined, read.chart) : answer(chartWords(read.problem))),
      () => answer(NOT_FETCHED),
    );
  });
  return { chart, problem, waiting: () => choice() !== null && choice() !== answered() };
}
