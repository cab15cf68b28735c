import { createEffect, createSignal, For, type JSX, Show } from 'solid-js';
import { fieldLabel } from '../../words/exercises/labels.ts';
import { ExerciseFrame, type ExerciseProps } from './frame.tsx';
import { judgeLater, later } from './later.ts';
import type { Model } from './say-check.ts';
import type { Entered, EntryProps, KindView } from './view.ts';

const checking = later(() => import('./say-check.ts'));

const textIn = (entered: Entered): string => String(entered['text'] ?? '');
const isWritten = (entered: Entered): boolean => textIn(entered).trim() !== '';
/** The points ticked; null until the sentence was compared. */
const pointsIn = (entered: Entered): readonly unknown[] | null =>
  Array.isArray(entered['points']) ? entered['points'] : null;

/** A sentence of the learner's own, and then what a maker would say, to tick off against it. */
function SayEntry(props: EntryProps<'say'>): JSX.Element {
  const [model, setModel] = createSignal<Model | null>(null);
  const shown = () => isWritten(props.entered) && pointsIn(props.entered) !== null;
  createEffect(() => {
    const { problem } = props;
    if (!shown()) setModel(null);
    else
      void checking.ready().then(({ modelOf }) => {
        if (problem === props.problem && shown()) setModel(modelOf(problem));
      });
  });
  const tick = (point: string, on: boolean) => {
    const others = (pointsIn(props.entered) ?? []).filter((one) => one !== point);
    props.onEnter('points', (on ? [...others, point] : others) as string[]);
  };
  return (
    <div class="say">
      <label for={`${props.id}-text`}>{fieldLabel(props.problem, 'points')}</label>
      <textarea
        ref={(area) => {
          // What was typed before the script arrived counts.
          if (area.value !== '' && area.value !== textIn(props.entered)) props.onEnter('text', area.value);
        }}
        id={`${props.id}-text`}
        data-needs-script
        rows="3"
        maxlength="600"
        value={textIn(props.entered)}
        onInput={(event) => props.onEnter('text', event.currentTarget.value)}
      />
      <span class="write-lines" aria-hidden="true">
        <span />
        <span />
        <span />
      </span>
      <button
        type="button"
        data-needs-script
        aria-disabled={!isWritten(props.entered)}
        onClick={() => {
          if (isWritten(props.entered) && pointsIn(props.entered) === null) props.onEnter('points', []);
        }}
      >
        Compare with a model answer
      </button>
      <div class="model" aria-live="polite">
        <Show when={model()}>
          {(compared) => (
            <>
              <p>A maker might say:</p>
              <blockquote>{compared().answer}</blockquote>
              <fieldset class="ticks">
                <legend>Tick what you said too, in your own words.</legend>
                <For each={compared().points}>
                  {({ point, says }) => (
                    <label>
                      <input
                        type="checkbox"
                        checked={pointsIn(props.entered)?.includes(point) ?? false}
                        onChange={(event) => tick(point, event.currentTarget.checked)}
                      />
                      <span>I said that {says}.</span>
                    </label>
                  )}
                </For>
              </fieldset>
            </>
          )}
        </Show>
      </div>
    </div>
  );
}

const view: KindView<'say'> = {
  kind: 'say',
  ready: checking.ready,
  judge: judgeLater(checking),
  answer: (entered) =>
    ({ points: isWritten(entered) ? entered['points'] : null }) as ReturnType<KindView<'say'>['answer']>,
  Entry: SayEntry,
  // The model answer is for comparing: something of the learner's own comes first.
  showsWorking: isWritten,
};

export const SayExercise = (props: ExerciseProps<'say'>): JSX.Element => <ExerciseFrame asked={props} view={view} />;
