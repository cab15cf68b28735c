import { createEffect, createSignal, type JSX, Show } from 'solid-js';
import type { Moment } from '../../figures/piece/index.ts';
import { planChart } from '../../solver/chart-plan.ts';
import { type Plan, type PlanInput, planPiece } from '../../solver/plan.ts';
import { ownReading } from '../../store/reading.ts';
import { readOwnChart } from '../own-chart.ts';
import { ownPlan } from '../own-plan.ts';
import { PieceViewer } from './piece-viewer.tsx';

interface Props {
  id: string;
  input: PlanInput;
  /** Id of the chart of the worked example; null without one. */
  chart: string | null;
  from?: Moment | undefined;
  focus: boolean;
}

/** The plan of the page's own example, with its chart where that can be fetched. */
async function examplePlan(input: PlanInput, id: string | null): Promise<Plan | null> {
  const read = id === null ? null : await readOwnChart({ from: 'index', id }).catch(() => null);
  // The example's chart is drawn for the example's size; where its cells give it another shape, that shape counts.
  const plan = read?.ok ? planChart({ ...input, chart: read.chart }) : planPiece(input);
  return plan.ok ? plan : null;
}

/** The viewer on the piece that a page is read with: its worked example, or the learner's own. */
export function PageViewer(props: Props): JSX.Element {
  const [plan, setPlan] = createSignal<Plan | null>(null);
  createEffect(() => {
    const { input } = props;
    const made = ownReading() ? ownPlan(input) : examplePlan(input, props.chart);
    // Figures may have changed again while a chart was fetched.
    void made.then((found) => input === props.input && setPlan(found));
  });
  return (
    <Show when={plan()}>
      {(found) => <PieceViewer id={props.id} plan={found()} from={props.from} focus={props.focus} />}
    </Show>
  );
}
