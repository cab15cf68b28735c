import { createEffect, createMemo, createSignal, createUniqueId, For, type JSX, on, Show } from 'solid-js';
import {
  type CrossingChoice,
  checkCrossing,
  closeUp,
  crossingPlaces,
  drawModel,
  pickCrossing,
  type StrandModel,
} from '../../figures/strand/index.ts';
import {
  choiceWords,
  crossingAsk,
  crossingHidden,
  crossingVerdict,
  crossingWhere,
} from '../../words/crossing-words.ts';
import type { ToldKnot } from '../../words/knot-stages.ts';
import { capital } from '../../words/numbers.ts';

interface Props {
  knot: ToldKnot;
  model: StrandModel;
  /** Tells where the circle has to be drawn; null: nowhere. */
  onPlace: (place: { readonly x: number; readonly y: number } | null) => void;
}

/** “Which string is over here?”, on one crossing after another of the knot as it stands. */
export function CrossingQuiz(props: Props): JSX.Element {
  const id = createUniqueId();
  const [turn, setTurn] = createSignal(1);
  const [named, setNamed] = createSignal<CrossingChoice | null>(null);
  const [large, setLarge] = createSignal(false);
  const figure = () => ({ ...props.model, knot: props.knot });
  const places = createMemo(() => crossingPlaces(props.model));
  /** The same crossing is not asked for twice running, where there is another. */
  const picked = createMemo<number | null>((before) => {
    const seed = `${props.knot} ${places().length} ${turn()}`;
    const found = pickCrossing(props.model, seed);
    return found !== null && found === before && places().length > 1 ? (found + 1) % places().length : found;
  }, null);
  const place = () => places()[picked() ?? -1] ?? null;
  const verdict = createMemo(() => {
    const [at, answer] = [picked(), named()];
    return at === null || answer === null ? null : checkCrossing(props.model, at, answer);
  });
  const clear = () => {
    setNamed(null);
    setLarge(false);
  };
  createEffect(on([() => props.model, picked], clear, { defer: true }));
  createEffect(() => {
    const at = place();
    props.onPlace(at && { x: at.x, y: at.y });
  });
  return (
    <Show
      when={place()}
      fallback={<p>No strings cross in this picture. Go on to the next stage, and the question comes with it.</p>}
    >
      {(at) => (
        <>
          <fieldset class="knot-answers" aria-describedby={`${id}-where`}>
            <legend>{crossingAsk(at(), figure())}</legend>
            <p id={`${id}-where`}>
              {crossingHidden(at(), figure())} {crossingWhere(at(), figure())}
            </p>
            <div class="knot-buttons">
              <For each={at().choices}>
                {(choice) => (
                  <button type="button" aria-pressed={named() === choice} onClick={() => setNamed(choice)}>
                    {capital(choiceWords(choice, figure()))}
                  </button>
                )}
              </For>
            </div>
          </fieldset>
          <div role="status">
            <Show when={verdict()}>
              {(found) => (
                <p class="knot-verdict" data-found={found().outcome}>
                  {crossingVerdict(found(), named() ?? { strand: '' }, at(), figure())}
                </p>
              )}
            </Show>
          </div>
          <div class="knot-buttons">
            <Show when={verdict() && verdict()?.outcome !== 'right'}>
              <button type="button" aria-expanded={large()} onClick={() => setLarge(!large())}>
                {large() ? 'Hide the large crossing' : 'See this crossing large'}
              </button>
            </Show>
            <button
              type="button"
              onClick={() => {
                clear();
                setTurn(turn() + 1);
              }}
            >
              Another one like it
            </button>
          </div>
          <Show when={large()}>
            <div
              class="knot-large"
              innerHTML={drawModel(
                { strands: props.model.strands, frame: closeUp(at()) },
                { id: `${id}-large`, title: `The crossing, large. ${crossingWhere(at(), figure())}` },
              )}
            />
          </Show>
        </>
      )}
    </Show>
  );
}
