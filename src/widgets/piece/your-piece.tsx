import { createMemo, createSignal, type JSX, onCleanup, onMount, Show } from 'solid-js';
import type { Fit } from '../../solver/piece.ts';
import { type Plan, planPiece } from '../../solver/plan.ts';
import type { Problem } from '../../solver/problem.ts';
import { FOLLOWS, type Follows, splitName } from '../../store/own-figures.ts';
import { ownPlanInput, threadOf } from '../../store/own-reading.ts';
import { loadPreferences, savePreferences, subscribePreferences } from '../../store/preferences.ts';
import { fitWords } from '../../words/fit-words.ts';
import { problemWords } from '../../words/problems.ts';
import { storageWords } from '../../words/storage-words.ts';
import type { UnitSystem } from '../../words/units.ts';
import { Choice } from '../choice.tsx';
import { drawnBy, hasShape, planSplit, splitOf, splitsOf } from '../own-piece.ts';
import { type ChartChoice, ChartForm } from './chart-form.tsx';
import { CordForm } from './cord-form.tsx';
import { PlanView } from './plan-view.tsx';
import { RingForm } from './ring-form.tsx';
import { useChart } from './use-chart.ts';
import { useOwn } from './use-own.ts';
import { WaysForm } from './ways-form.tsx';

interface Props {
  charts: readonly ChartChoice[];
}

const FOLLOWED: Readonly<Record<Follows, string>> = { steps: 'your steps', chart: 'the shape of the chart' };

const UNITS: Readonly<Record<UnitSystem, string>> = { metric: 'centimetres', inches: 'inches' };

/** From ring, cord and chart to a plan that lies on the table. Everything entered stays on this device. */
export function YourPiece(props: Props): JSX.Element {
  const own = useOwn();
  const chosen = useChart(own);
  const [units, setUnits] = createSignal<UnitSystem>('metric');

  onMount(() => {
    const follow = () => {
      const { units: chosenUnits } = loadPreferences().value;
      setUnits(chosenUnits);
      document.documentElement.dataset['units'] = chosenUnits;
    };
    follow();
    onCleanup(subscribePreferences(follow));
    // A chart of the index can send its reader here.
    const wanted = new URLSearchParams(location.search).get('chart');
    const chart = props.charts.find(({ id }) => id === wanted);
    if (!chart) return;
    own.change({ chart: { from: 'index', id: chart.id }, width: chart.width, height: chart.height });
    // Taken up; from here on what is chosen on the page counts.
    history.replaceState(history.state, '', location.pathname);
  });

  const input = createMemo(() => ownPlanInput(own.figures()));
  /** The chart, as soon as it is the one that the figures speak of. */
  const chart = createMemo(() => {
    const found = chosen.chart();
    return found && own.figures().chart && found.width === input().width && found.height === input().height
      ? found
      : null;
  });
  /** A chart that was drawn in a shape is shown in it wherever it hangs, and planned in it unless somebody wants steps. */
  const shaped = createMemo(() => hasShape(chart()));
  const wanted = () => own.figures().follows;
  const drawn = () => drawnBy(chart(), own.figures());
  const answer = createMemo(() => planPiece({ ...input(), ...drawn() }));
  const splits = createMemo(() => splitsOf(answer()));
  /** Another split than the answer, as long as the figures allow it. */
  const other = createMemo(() => splitOf(splits(), own.figures()));
  const choose = (fit: Fit | null) => {
    own.change({ split: fit && splitName(fit) });
    // The button that was pressed goes with the old plan; the focus moves to the new one.
    queueMicrotask(() => document.getElementById('plan-sum')?.focus());
  };
  const result = createMemo<ReturnType<typeof planPiece> | null>((before) => {
    // A plan without the colours of a chart that is on its way would be there for a moment only.
    if (chosen.waiting()) return before;
    const split = other();
    return split ? planSplit(answer(), { ...input(), ...drawn() }, split) : answer();
  }, null);
  const plan = () => {
    const made = result();
    return made?.ok ? made : null;
  };
  const problem = (): (Problem & { readonly alternatives?: readonly Fit[] }) | null => {
    const made = result();
    return !made || made.ok ? null : made.problem;
  };
  const thread = () => threadOf(own.figures());

  return (
    <div class="your-piece">
      <div class="forms only-screen" data-needs-script>
        <section aria-labelledby="form-ring">
          <h2 id="form-ring">The ring</h2>
          <RingForm own={own} />
        </section>
        <section aria-labelledby="form-chart">
          <h2 id="form-chart">The chart</h2>
          <ChartForm own={own} charts={props.charts} chosen={chosen} />
          <Show when={shaped()}>
            <Choice
              legend="The outline follows"
              choices={FOLLOWS}
              value={wanted()}
              words={(each) => FOLLOWED[each]}
              onValue={(follows) => own.change({ follows })}
            />
          </Show>
        </section>
        <section aria-labelledby="form-cord">
          <h2 id="form-cord">The cord</h2>
          <CordForm own={own} />
        </section>
        <section aria-labelledby="form-ways">
          <h2 id="form-ways">Your way of working</h2>
          <WaysForm own={own} fit={plan()?.fit ?? null} />
          <Choice
            legend="Lengths in"
            choices={['metric', 'inches'] as const}
            value={units()}
            words={(each) => UNITS[each]}
            onValue={(each) => savePreferences({ units: each })}
          />
        </section>
        <Show when={!own.keeping().kept}>
          <p class="field-problem" role="status">
            {storageWords(own.keeping())}
          </p>
        </Show>
      </div>
      <output class="for-screen-readers" aria-live="polite">
        {plan() ? `Planned: ${fitWords((plan() as Plan).fit)}.` : ''}
      </output>
      <Show when={problem()}>
        {(found) => (
          <section class="refused" aria-labelledby="plan-refused">
            <h2 id="plan-refused">This can’t be made as it stands</h2>
            <p class="must-do">{problemWords(found())}</p>
            <Show when={(found().alternatives?.length ?? 0) > 0}>
              <p>These can be made all the same:</p>
              <ul class="ways">
                {found().alternatives?.map((fit) => (
                  <li>
                    <button type="button" onClick={() => choose(fit)}>
                      Plan with this
                    </button>{' '}
                    {fitWords(fit)}
                  </li>
                ))}
              </ul>
            </Show>
          </section>
        )}
      </Show>
      <Show when={plan()}>
        {(made) => (
          <PlanView
            plan={made()}
            chart={chart()}
            thread={thread()}
            units={units()}
            alternative={other() !== null}
            follows={drawn().followChart === true}
            onAlternative={choose}
          />
        )}
      </Show>
    </div>
  );
}
