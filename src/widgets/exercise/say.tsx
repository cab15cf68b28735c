import { createEffect, createMemo, createSignal, type JSX, onMount, Show } from 'solid-js';
import { fieldLabel } from '../../words/exercises/labels.ts';
import { ExerciseFrame, type ExerciseProps } from './frame.tsx';
import { lateJudge } from './late-judge.ts';
import { later } from './later.ts';
import type { Entered, EntryProps, KindView } from './view.ts';

const checking = later(() => import('./say-check.tsx'));

const textIn = (entered: Entered): string => String(entered['text'] ?? '');
/** On a frame a room explains aloud, and nobody writes. */
const isAloud = (): boolean => typeof document !== 'undefined' && document.querySelector('[data-frames]') !== null;
const isWritten = (entered: Entered): boolean => textIn(entered).trim() !== '';
/** The points ticked; null until the sentence was compared. */
const pointsIn = (entered: Entered): readonly unknown[] | null =>
  Array.isArray(entered['points']) ? entered['points'] : null;

/** A sentence of the learner's own, and then what a maker would say, to tick off against it. */
function SayEntry(props: EntryProps<'say'>): JSX.Element {
  const [part, setPart] = createSignal<Awaited<ReturnType<typeof checking.ready>> | null>(null);
  // A memo, so that a tick does not draw the points anew and lose the focus.
  /** Known when the page is awake; what the page was built with says nothing of a room. */
  const [aloud, setAloud] = createSignal(false);
  onMount(() => setAloud(isAloud()));
  const isGiven = (entered: Entered): boolean => isWritten(entered) || aloud();
  const shown = createMemo(() => isGiven(props.entered) && pointsIn(props.entered) !== null);
  createEffect(() => {
    if (shown()) void checking.ready().then(setPart);
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
        aria-disabled={!isGiven(props.entered)}
        onClick={() => {
          if (isGiven(props.entered) && pointsIn(props.entered) === null) props.onEnter('points', []);
        }}
      >
        Compare with a model answer
      </button>
      <div class="model" aria-live="polite">
        <Show when={shown() && part()}>
          {(fetched) => {
            const { ModelAnswer } = fetched();
            return <ModelAnswer problem={props.problem} ticked={pointsIn(props.entered) ?? []} onTick={tick} />;
          }}
        </Show>
      </div>
    </div>
  );
}

export const view: KindView<'say'> = {
  kind: 'say',
  ...lateJudge<'say'>(checking.ready),
  outcome: ({ outcome }) => checking.part()?.outcomes[outcome] ?? '',
  answer: (entered) =>
    ({ points: isWritten(entered) || isAloud() ? entered['points'] : null }) as ReturnType<KindView<'say'>['answer']>,
  Entry: SayEntry,
  // The model answer is for comparing: something of the learner's own comes first.
  showsWorking: isWritten,
};

export const SayExercise = (props: ExerciseProps<'say'>): JSX.Element => <ExerciseFrame asked={props} view={view} />;
