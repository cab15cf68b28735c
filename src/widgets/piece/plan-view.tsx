import { createMemo, createSignal, For, type JSX, onMount, Show } from 'solid-js';
import { drawFigure } from '../../figures/index.ts';
import { advisePlan, pictureLost } from '../../solver/advise.ts';
import type { Chart } from '../../solver/chart.ts';
import { holds } from '../../solver/conditions.ts';
import { inspect } from '../../solver/inspect.ts';
import type { Fit, RowPlan } from '../../solver/piece.ts';
import type { Plan } from '../../solver/plan.ts';
import { cutList, type Thread } from '../../solver/thread/index.ts';
import { adviceWords } from '../../words/advice-words.ts';
import { cutWords, estimateWords, leadingWords, timeWords } from '../../words/cut-words.ts';
import { figureWords } from '../../words/figure-words.ts';
import { finishStepWords } from '../../words/finish-words.ts';
import { fitWorking } from '../../words/fit-steps.ts';
import { fitWords } from '../../words/fit-words.ts';
import { problemWords } from '../../words/problems.ts';
import { rowLedger, rowSummary } from '../../words/row-words.ts';
import type { UnitSystem } from '../../words/units.ts';
import { warningWords } from '../../words/warning-words.ts';
import { DrawnPlate } from '../drawn-plate.tsx';
import type { PlanPiece } from '../piece-viewer/plan-piece.tsx';
import { Working } from '../working-list.tsx';

interface Props {
  plan: Plan;
  chart: Chart | null;
  thread: Thread;
  units: UnitSystem;
  /** Whether the outline follows the blank cells of the chart. */
  follows: boolean;
  /** Whether the plan is one of the alternatives, and not the answer. */
  alternative: boolean;
  onAlternative: (fit: Fit | null) => void;
}

/** The whole plan of a piece: sum, chart, cut list, warnings, every row in words, and finishing. */
export function PlanView(props: Props): JSX.Element {
  const fit = () => props.plan.fit;
  const draw = (name: 'bar' | 'outline' | 'chart' | 'gathering' | 'silhouette', options: object) =>
    drawFigure(name, props.plan, options, { id: `plan-${name}`, words: figureWords });
  const cut = createMemo(() =>
    cutList({
      fit: fit(),
      bundles: props.plan.outline,
      rows: props.plan.rows,
      chart: props.chart,
      thread: props.thread,
    }),
  );
  const cutPlan = () => {
    const found = cut();
    return found.ok ? found : null;
  };
  /** Plain rows that save more of the picture than is saved now. */
  const advice = createMemo(() => {
    const lost = pictureLost(props.plan) ?? 0;
    const found = lost > 0 ? advisePlan(props.plan) : null;
    return found ? adviceWords(lost, found) : '';
  });
  const warnings = createMemo(() =>
    props.chart ? inspect({ chart: props.chart, fit: fit(), bundles: props.plan.outline, rows: props.plan.rows }) : [],
  );
  const [walking, setWalking] = createSignal(false);
  /** What draws the whole piece comes after the plan stands. */
  const [piece, setPiece] = createSignal<typeof PlanPiece | null>(null);
  onMount(() => {
    void import('../piece-viewer/plan-piece.tsx').then(({ PlanPiece: Part }) => setPiece(() => Part));
  });
  const palette = () => props.chart?.palette ?? null;
  /** What to do in a row; its heading says already which row it is. */
  const linesOf = (row: RowPlan, before: RowPlan | undefined) =>
    rowLedger({ row, before, fit: fit(), palette: palette() ?? undefined }).filter(({ key }) => key !== 'row');
  return (
    <div class="plan">
      <section aria-labelledby="plan-sum">
        <h2 id="plan-sum" tabindex="-1">
          The fitting sum
        </h2>
        <Working steps={fitWorking(props.plan.working)} />
        <Show when={props.alternative}>
          <p class="must-do">
            You chose another split: {fitWords(fit())}.{' '}
            <button type="button" onClick={() => props.onAlternative(null)}>
              Go back to the answer above
            </button>
          </p>
        </Show>
        <DrawnPlate drawn={draw('bar', { stage: 'fitted' })} caption="Bar and sides as they will hang." />
        <Show when={props.plan.alternatives.length > 0}>
          <details>
            <summary>Other ways to share the strings</summary>
            <ul class="ways">
              <For each={props.plan.alternatives}>
                {(other) => (
                  <li>
                    <button type="button" onClick={() => props.onAlternative(other)}>
                      Plan with this
                    </button>{' '}
                    {fitWords(other)}
                    {other.level ? '.' : '. The sides differ, so the piece hangs a little aslant.'}
                  </li>
                )}
              </For>
            </ul>
          </details>
        </Show>
      </section>

      <section aria-labelledby="plan-chart">
        <h2 id="plan-chart">The chart with its outline</h2>
        <Show when={props.plan.outline.problem}>{(problem) => <p class="must-do">{problemWords(problem())}</p>}</Show>
        <Show when={props.follows}>
          <DrawnPlate
            drawn={draw('silhouette', {})}
            caption="The shape of your chart, dashed, and the nearest outline that can be tied. Each dot is the knot of a bundle."
            wide
          />
        </Show>
        <DrawnPlate
          drawn={draw('outline', {})}
          caption={`${holds(props.plan, 'corners') ? 'Hatched cells lie outside the shape. ' : ''}Each row begins at the side where a cord end is drawn.`}
          wide
        />
      </section>

      <section class="plan-piece" classList={{ open: walking() }} aria-labelledby="plan-finished">
        <h2 id="plan-finished">The finished piece</h2>
        <Show when={piece()} fallback={<p class="note">It is being drawn.</p>}>
          {(part) => {
            const Piece = part();
            return <Piece plan={props.plan} onOpen={setWalking} />;
          }}
        </Show>
      </section>

      <Show when={props.chart}>
        <section aria-labelledby="plan-warnings">
          <h2 id="plan-warnings">Before you begin</h2>
          <Show when={warnings().length > 0} fallback={<p>Nothing in this chart needs special care.</p>}>
            <ul class="warnings">
              <For each={warnings()}>
                {(warning) => {
                  const words = warningWords(warning, palette() ?? undefined);
                  return (
                    <li>
                      <strong>{words.found}</strong> {words.why} {words.todo}
                    </li>
                  );
                }}
              </For>
            </ul>
          </Show>
          <Show when={advice()}>
            <p>{advice()}</p>
          </Show>
        </section>
      </Show>

      <section aria-labelledby="plan-cut">
        <h2 id="plan-cut">What to cut</h2>
        <Show
          when={cutPlan()}
          fallback={
            <p class="field-problem">
              {(() => {
                const found = cut();
                return found.ok ? '' : problemWords(found.problem);
              })()}
            </p>
          }
        >
          {(list) => (
            <>
              <ul class="ticks">
                <For each={list().pieces}>{(piece) => <li>{cutWords(piece, props.units)}</li>}</For>
                <For each={list().leading}>{(colour) => <li>{leadingWords(colour, props.units, palette())}</li>}</For>
              </ul>
              <p>{timeWords(list().time)}</p>
              <p class="note">{estimateWords(list().totals.thread.source)}</p>
            </>
          )}
        </Show>
      </section>

      <section class="all-rows" aria-labelledby="plan-rows">
        <h2 id="plan-rows">Row by row</h2>
        <ol class="rows">
          <For each={props.plan.rows}>
            {(row, index) => (
              <li>
                <p class="row-head">{rowSummary(row, palette())}</p>
                <ul>
                  <For each={linesOf(row, props.plan.rows[index() - 1])}>{(line) => <li>{line.text}</li>}</For>
                </ul>
              </li>
            )}
          </For>
        </ol>
      </section>

      <section aria-labelledby="plan-finish">
        <h2 id="plan-finish">Gathering and finishing</h2>
        <DrawnPlate drawn={draw('gathering', {})} caption="Which string goes where after the last row." />
        <ol>
          <For each={props.plan.finish.steps}>{(step) => <li>{finishStepWords(step)}</li>}</For>
        </ol>
      </section>
    </div>
  );
}
