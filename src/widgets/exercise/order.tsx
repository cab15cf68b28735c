import { createSignal, For, type JSX, Show } from 'solid-js';
import type { OrderField, OrderStepId } from '../../solver/exercises/order/problem.ts';
import { fieldLabel } from '../../words/exercises/labels.ts';
import { ExerciseFrame, type ExerciseProps } from './frame.tsx';
import { lateJudge } from './late-judge.ts';
import { later } from './later.ts';
import type { EntryProps, KindView } from './view.ts';

const checking = later(() => import('./order-check.ts'));

/** Steps that are moved up and down: by buttons, by arrow keys, or by dragging. */
function OrderEntry(props: EntryProps<'order'>): JSX.Element {
  let list: HTMLOListElement | undefined;
  const [dragged, setDragged] = createSignal<OrderStepId | null>(null);
  const [said, setSaid] = createSignal('');
  /** Steps that stand already, in a half-worked form; the other one goes in among them. */
  const standing = (): readonly unknown[] => (Array.isArray(props.given['order']) ? props.given['order'] : []);
  const isLoose = (step: OrderStepId) => !standing().includes(step);
  const steps = (): readonly OrderStepId[] => {
    const all = props.problem.steps;
    const placed = props.entered['placed'];
    const known = Array.isArray(placed) ? all.filter((step) => placed.includes(step)) : [];
    if (Array.isArray(placed) && known.length === all.length && placed.length === all.length)
      return placed as unknown as OrderStepId[];
    return [...all.filter(isLoose), ...standing()] as OrderStepId[];
  };
  const wordsOf = (step: OrderStepId) => props.question.parts?.[props.problem.steps.indexOf(step)] ?? '';
  const result = (step: OrderStepId) => props.judged?.fields[`step-${step}` satisfies OrderField];
  const waits = (step: OrderStepId) => {
    const judged = result(step);
    return judged ? (checking.part()?.orderVerdictWords(props.problem, step, judged) ?? '') : '';
  };

  const move = (step: OrderStepId, to: number) => {
    const from = steps().indexOf(step);
    const place = Math.min(steps().length - 1, Math.max(0, to));
    if (place === from) return;
    const others = steps().filter((one) => one !== step);
    props.onEnter('placed', [...others.slice(0, place), step, ...others.slice(place)]);
    setSaid(`Step ${place + 1} of ${steps().length}: ${wordsOf(step)}`);
  };
  /** A step that moves takes the focus along: the page puts it elsewhere in the list. */
  const moveBy = (step: OrderStepId, by: number, button: HTMLElement) => {
    move(step, steps().indexOf(step) + by);
    button.focus();
  };
  const key = (event: KeyboardEvent & { currentTarget: HTMLElement }, step: OrderStepId) => {
    const by = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    if (!by || !(event.target instanceof HTMLElement)) return;
    event.preventDefault();
    moveBy(step, by, event.target);
  };
  /** The place in the list that a height on the screen belongs to. */
  const placeAt = (height: number): number =>
    [...(list?.children ?? [])].filter((item) => {
      const box = item.getBoundingClientRect();
      return box.top + box.height / 2 < height;
    }).length;
  const drag = (event: PointerEvent) => {
    const step = dragged();
    if (step === null) return;
    const from = steps().indexOf(step);
    const above = placeAt(event.clientY);
    move(step, above > from ? above - 1 : above);
  };

  return (
    <fieldset class="order">
      <legend>{fieldLabel(props.problem, `step-${props.problem.steps[0] ?? 'cut'}`)}</legend>
      <ol
        class="steps-in-order"
        ref={list}
        onPointerMove={drag}
        onPointerUp={() => setDragged(null)}
        onPointerCancel={() => setDragged(null)}
      >
        <For each={steps()}>
          {(step, index) => (
            <li
              data-step={step}
              data-verdict={result(step)?.verdict}
              data-dragged={dragged() === step ? '' : undefined}
              onKeyDown={(event) => key(event, step)}
            >
              <span class="place-here" aria-hidden="true" />
              <span
                class="grip"
                classList={{ loose: isLoose(step) }}
                onPointerDown={(event) => {
                  if (!isLoose(step) || event.button !== 0) return;
                  // The list holds on to the pointer: a step that moves in it would let go.
                  list?.setPointerCapture(event.pointerId);
                  setDragged(step);
                }}
              >
                {wordsOf(step)}
              </span>
              <Show when={isLoose(step)}>
                <span class="movers" data-needs-script>
                  <button
                    type="button"
                    aria-label={`Earlier: ${wordsOf(step)}`}
                    aria-disabled={index() === 0}
                    onClick={(event) => moveBy(step, -1, event.currentTarget)}
                  >
                    <span aria-hidden="true">Earlier</span>
                  </button>
                  <button
                    type="button"
                    aria-label={`Later: ${wordsOf(step)}`}
                    aria-disabled={index() === steps().length - 1}
                    onClick={(event) => moveBy(step, 1, event.currentTarget)}
                  >
                    <span aria-hidden="true">Later</span>
                  </button>
                </span>
              </Show>
              <p class="entry-say">{waits(step)}</p>
            </li>
          )}
        </For>
      </ol>
      <p class="for-screen-readers" aria-live="polite">
        {said()}
      </p>
    </fieldset>
  );
}

export const view: KindView<'order'> = {
  kind: 'order',
  ...lateJudge<'order'>(checking.ready),
  outcome: ({ outcome }) => checking.part()?.outcomes[outcome] ?? '',
  answer: (entered) => ({ order: entered['placed'] }) as ReturnType<KindView<'order'>['answer']>,
  Entry: OrderEntry,
};

export const OrderExercise = (props: ExerciseProps<'order'>): JSX.Element => (
  <ExerciseFrame asked={props} view={view} />
);
