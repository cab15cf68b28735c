import { createEffect, createMemo, createSignal, createUniqueId, For, type JSX, on, onCleanup, Show } from 'solid-js';
import {
  drawModel,
  isStop,
  type KnotName,
  type StrandModel,
  snapped,
  stopAfter,
  stopAt,
  stopBefore,
  tell,
} from '../../figures/strand/index.ts';
import { knotTitle, STOP_NAMES, stopSentence } from '../../words/knot-stages.ts';
import { capital } from '../../words/numbers.ts';
import { strandSentences } from '../../words/strand-words.ts';
import { CrossingQuiz } from './crossing-quiz.tsx';
import { KnotChoices } from './knot-choices.tsx';
import { createKnotState } from './knot-state.ts';
import { createReplay } from './replay.ts';

interface Props {
  /** The knots of the plate; the first is shown. */
  knots: readonly [KnotName, ...KnotName[]];
  /** Strings of the base. */
  strands: number;
  /** Takes the stepper away again. */
  onClose: () => void;
}

/** ms after which nothing that was asked for is still being drawn. */
const SOON = 200;

const REDUCED = '(prefers-reduced-motion: reduce)';

/** Whether motion is unwelcome on this device, now. */
function useStill(): () => boolean {
  const query = matchMedia(REDUCED);
  const [still, setStill] = createSignal(query.matches);
  const heard = () => setStill(query.matches);
  query.addEventListener('change', heard);
  onCleanup(() => query.removeEventListener('change', heard));
  return still;
}

/** Elements that do something of their own with arrow keys, and those that do with the space bar. */
const OWN_ARROWS = 'input, select';
const OWN_SPACE = 'input:not([type="range"]), select, summary, button';

/**
 * A knot to be tied stage by stage: forward, back, slowly by itself, at any moment, for either hand, round any base,
 * in one’s own colours; and the question which string is over at a crossing.
 */
export function KnotStepper(props: Props): JSX.Element {
  const id = createUniqueId();
  const state = createKnotState({ knot: props.knots[0], strands: props.strands, moment: 0 });
  const still = useStill();
  const replay = createReplay(state.stops, state.moment, state.setMoment, still);
  const [asking, setAsking] = createSignal(false);
  const [circle, setCircle] = createSignal<{ readonly x: number; readonly y: number } | null>(null);

  const stage = createMemo(() => stopAt(state.stops(), state.moment()));
  const wish = () => ({ strands: state.strands(), handedness: state.hand() });
  const title = () => capital(knotTitle(state.knot(), wish()));
  const nameOf = (at: number): string => STOP_NAMES[state.stops()[at]?.name ?? 'drawn-up'];
  const sentenceOf = (at: number): string => stopSentence(state.knot(), state.stops()[at]?.name ?? 'drawn-up', wish());
  const count = () => `${stage() + 1} of ${state.stops().length}`;
  const between = () => !isStop(state.stops(), state.moment());
  const told = (model: StrandModel): string => strandSentences(tell(model), { ...model, knot: state.knot() }).join(' ');
  const words = createMemo(() => told(state.model()));
  const ended = () => state.moment() >= 1;

  const drawing = createMemo(() => {
    const ring = asking() ? circle() : null;
    return drawModel(state.model(), {
      id: `${id}-now`,
      title: `${title()}, ${nameOf(stage())}`,
      description: words(),
      ...(ring ? { ring } : {}),
    });
  });
  const byHand = (moment: number) => {
    replay.pause();
    state.setMoment(moment);
  };
  const next = () => byHand(ended() ? 0 : stopAfter(state.stops(), state.moment()));
  const back = () => byHand(stopBefore(state.stops(), state.moment()));
  const keys = (event: KeyboardEvent) => {
    const { key, target } = event;
    if (event.altKey || event.ctrlKey || event.metaKey || !(target instanceof Element)) return;
    if (target.closest(key === ' ' ? OWN_SPACE : OWN_ARROWS)) return;
    const step = key === 'ArrowRight' || key === ' ' ? next : key === 'ArrowLeft' ? back : null;
    if (!step) return;
    event.preventDefault();
    step();
  };
  // Drawing a knot up is worked out once, and takes longer than a frame: it is done before anybody comes to it.
  createEffect(
    on([state.knot, state.strands], () => {
      const timer = setTimeout(() => state.modelAt(1), SOON);
      onCleanup(() => clearTimeout(timer));
    }),
  );
  // A picture with a circle stands still, and a picture that moves has none.
  createEffect(
    on(asking, (now) => {
      if (now) replay.pause();
      else setCircle(null);
    }),
  );
  createEffect(on(replay.playing, (now) => now && setAsking(false)));

  return (
    <section class="knot-stepper" aria-label={`${title()}, step by step`} onKeyDown={keys}>
      <div class="knot-now">
        <div class="knot-drawing" innerHTML={drawing()} />
        <div class="knot-beside">
          <p class="knot-title">{title()}</p>
          <div role="status">
            <p class="knot-stage">
              Stage {count()}: {nameOf(stage())}
            </p>
            <p>{sentenceOf(stage())}</p>
          </div>
          <div class="knot-buttons">
            <button type="button" onClick={back} aria-disabled={state.moment() <= 0}>
              Back
            </button>
            <button type="button" data-kind="must-do" data-knot-next onClick={next}>
              {ended() ? 'From the start' : 'Next stage'}
            </button>
            <button type="button" onClick={() => (replay.playing() ? replay.pause() : replay.play())}>
              {replay.playing() ? 'Pause' : still() ? 'Stage by stage' : 'Play slowly'}
            </button>
          </div>
          <div class="knot-slider">
            <label for={`${id}-moment`}>Moment</label>
            <input
              id={`${id}-moment`}
              type="range"
              min="0"
              max="1"
              step="0.01"
              value={state.moment()}
              aria-valuetext={`${between() ? 'on the way to ' : ''}stage ${count()}, ${nameOf(stage())}`}
              onInput={({ currentTarget }) => byHand(snapped(state.stops(), Number(currentTarget.value)))}
            />
            <ol class="knot-marks" aria-hidden="true">
              <For each={state.stops()}>
                {(stop, i) => (
                  <li style={{ '--at': stop.t }} data-reached={stop.t <= state.moment() ? '' : undefined}>
                    {i() + 1}
                  </li>
                )}
              </For>
            </ol>
          </div>
        </div>
      </div>

      <Show when={still()}>
        <ol class="knot-strip" aria-label="All stages side by side">
          <For each={state.stops()}>
            {(stop, i) => (
              <li aria-current={stage() === i() ? 'step' : undefined}>
                <div
                  innerHTML={drawModel(state.modelAt(stop.t), {
                    id: `${id}-s${i()}`,
                    twist: false,
                    title: `${title()}, ${i() + 1} of ${state.stops().length}`,
                  })}
                />
                <p>
                  {i() + 1}. {sentenceOf(i())}
                </p>
              </li>
            )}
          </For>
        </ol>
      </Show>

      <details>
        <summary>This picture in words</summary>
        <p>{words()}</p>
      </details>
      <details>
        <summary>Hand, strings and colours</summary>
        <KnotChoices state={state} knots={props.knots} />
      </details>
      <details open={asking()} onToggle={({ currentTarget }) => setAsking(currentTarget.open)}>
        <summary>Which string is over here?</summary>
        <Show when={asking()}>
          <CrossingQuiz knot={state.knot()} model={state.model()} onPlace={setCircle} />
        </Show>
      </details>
      <button type="button" onClick={() => props.onClose()}>
        Back to the plate
      </button>
    </section>
  );
}
