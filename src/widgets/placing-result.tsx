import { createResource, type JSX, Show } from 'solid-js';
import { outline } from '../figures/outline.ts';
import { showFigure } from '../figures/show.ts';
import { type Margins, pictureLost } from '../solver/advise.ts';
import type { Chart } from '../solver/chart.ts';
import { placedPlan } from '../solver/place-chart.ts';
import { type PlanInput, planPiece } from '../solver/plan.ts';
import { placedWords } from '../words/advice-words.ts';
import { outlineFigureWords } from '../words/figures/outline.ts';
import { DrawnPlate } from './drawn-plate.tsx';
import { createProblemWords } from './problem-words.ts';

interface Props {
  id: string;
  input: PlanInput;
  margins: Margins;
  /** The chart itself, where the page is built with it. */
  drawn?: Chart;
  /** Id of a chart of the index; undefined means the learner's own. */
  chart?: string | null | undefined;
}

/** The learner's chart or one of the index; null where there is none, or none of this size. */
async function chartFor({ id, input }: { id: string | null | undefined; input: PlanInput }): Promise<Chart | null> {
  const [{ readOwnChart }, { loadOwnFigures }] = await Promise.all([
    import('./own-chart.ts'),
    import('../store/own-figures.ts'),
  ]);
  const wanted = id === undefined ? loadOwnFigures().value.chart : id === null ? null : { from: 'index' as const, id };
  const read = wanted && (await readOwnChart(wanted).catch(() => null));
  const fits = read?.ok && read.chart.width === input.width && read.chart.height === input.height;
  return fits ? read.chart : null;
}

/** A chart with plain ground laid round it, its outline, and what of the picture falls into the corners. */
export function PlacingResult(props: Props): JSX.Element {
  const [fetched] = createResource(() => (props.drawn ? null : { id: props.chart, input: props.input }), chartFor);
  const chart = () => props.drawn ?? fetched() ?? null;
  const placed = () => {
    const drawn = chart();
    const plan = planPiece(props.input);
    return drawn && plan.ok ? placedPlan(plan, drawn, props.margins) : null;
  };
  const plan = () => {
    const made = placed();
    return made?.ok ? made : null;
  };
  const problem = createProblemWords(() => {
    const made = placed();
    return made && !made.ok ? made.problem : null;
  });
  return (
    <>
      <Show when={plan()}>
        {(made) => (
          <>
            <p>
              <strong>{placedWords(pictureLost(made()) ?? 0, made())}</strong>
            </p>
            <DrawnPlate
              drawn={showFigure(
                outline,
                made(),
                { lost: true, added: props.margins },
                { id: `${props.id}-placed`, words: outlineFigureWords },
              )}
              caption="The chart with what you added. A framed cell belongs to the picture and falls into a corner."
              wide
            />
          </>
        )}
      </Show>
      <Show when={problem()}>
        <p class="must-do">{problem()}</p>
      </Show>
      <Show when={!chart() && !fetched.loading}>
        <p>There is no chart of this size to place. Choose one on the page “Your piece”.</p>
      </Show>
    </>
  );
}
