import { createEffect, createSignal, For, type JSX, Show } from 'solid-js';
import { judge, readActs } from '../../solver/exercises/row/judge.ts';
import { ROW_ACTS, type RowAct } from '../../solver/exercises/row/problem.ts';
import { tieRow } from '../../solver/exercises/row/tie.ts';
import { ACT_NAMES, doneWords, leadWords } from '../../words/exercises/acts.ts';
import { capital } from '../../words/numbers.ts';
import { Drawn } from './drawn.tsx';
import { ExerciseFrame, type ExerciseProps } from './frame.tsx';
import type { Entered, EntryProps, KindView } from './view.ts';

const givenIn = (entered: Entered): RowAct[] => readActs({ acts: entered['acts'] as readonly unknown[] });
const tiedIn = (entered: Entered): RowAct[] => readActs({ acts: entered['tied'] as readonly unknown[] });

/** A row to be tied: seven things that hands can do, the row as far as it is tied, and the same in words. */
function RowEntry(props: EntryProps<'row'>): JSX.Element {
  const given = () => givenIn(props.given);
  const acts = () => [...given(), ...tiedIn(props.entered)];
  const row = () => tieRow(props.problem, acts());
  const lead = () => `The leading string is ${leadWords(row().at, props.problem.width)}.`;
  const [news, setNews] = createSignal('');
  createEffect(() => {
    // Other figures, or the answer brought back: the news is old.
    props.problem;
    setNews('');
  });
  let board: HTMLDivElement | undefined;

  const put = (next: readonly RowAct[], say: string) => {
    props.onEnter('tied', next);
    // What was entered has changed by now, and with it where the leading string is.
    setNews(`${say} ${lead()}`);
  };
  const act = (one: RowAct) => {
    const next = [...tiedIn(props.entered), one];
    const done = tieRow(props.problem, [...given(), ...next]).done.at(-1);
    if (done) put(next, doneWords(props.problem, done));
  };
  const undo = () => {
    const tied = tiedIn(props.entered);
    if (tied.length > 0) put(tied.slice(0, -1), 'Taken back.');
  };
  const keys = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const one = ROW_ACTS[Number(event.key) - 1];
    const way = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (one) act(one);
    else if (event.key === 'Backspace') undo();
    else if (way) {
      const buttons = [...(board?.querySelectorAll('button') ?? [])];
      const at = buttons.indexOf(document.activeElement as HTMLButtonElement);
      buttons[(at + way + buttons.length) % buttons.length]?.focus();
    } else return;
    event.preventDefault();
  };
  const wrongAt = () => Object.values(props.judged?.fields ?? {}).find((result) => result?.at)?.at;

  return (
    <div class="tying">
      <Drawn
        id={`${props.id}-drawn`}
        draw={(drawing) => drawing.rowDrawing(`${props.id}-row`, props.problem, acts())}
        shows={JSON.stringify([props.problem, acts()])}
      />
      <p class="tied-lead" aria-live="polite">
        {news() || lead()}
      </p>
      {/* biome-ignore lint/a11y/useSemanticElements: buttons, not fields */}
      <div class="acts" role="group" aria-label="What you do next" ref={board} onKeyDown={keys} data-needs-script>
        <For each={ROW_ACTS}>
          {(one, index) => (
            <button type="button" data-act={one} aria-keyshortcuts={`${index() + 1}`} onClick={() => act(one)}>
              <span class="act-key" aria-hidden="true">
                {index() + 1}
              </span>
              {capital(ACT_NAMES[one])}
            </button>
          )}
        </For>
        <button type="button" class="act-undo" aria-keyshortcuts="Backspace" onClick={undo}>
          Undo
        </button>
        <button type="button" onClick={() => put([], 'Taken back to the beginning.')}>
          Start again
        </button>
      </div>
      <Show when={acts().length > 0}>
        <ol class="tied-list">
          <For each={row().done}>
            {(done, index) => (
              <li data-verdict={wrongAt() === index() + 1 ? 'wrong' : undefined} data-given={index() < given().length}>
                {doneWords(props.problem, done)}
                <Show when={index() < given().length}>
                  <span class="note"> Done already.</span>
                </Show>
                <Show when={wrongAt() === index() + 1}>
                  <strong> This is the first that does not follow.</strong>
                </Show>
              </li>
            )}
          </For>
        </ol>
      </Show>
      <ol class="write-lines" aria-hidden="true">
        <For each={ROW_ACTS}>{() => <li class="write-here" />}</For>
      </ol>
    </div>
  );
}

const view: KindView<'row'> = {
  kind: 'row',
  judge,
  judgedWhole: true,
  answer: (entered) => ({ acts: [...givenIn(entered), ...tiedIn(entered)] }),
  Entry: RowEntry,
};

export const RowExercise = (props: ExerciseProps<'row'>): JSX.Element => <ExerciseFrame asked={props} view={view} />;
