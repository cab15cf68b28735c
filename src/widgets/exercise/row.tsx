import { For, type JSX } from 'solid-js';
import { MOST_MOVES, ROW_ACTS, type RowAct } from '../../solver/exercises/row/problem.ts';
import { ACT_NAMES } from '../../words/exercises/act-names.ts';
import { capital } from '../../words/numbers.ts';
import { createDrawing, Drawn } from './drawn.tsx';
import { ExerciseFrame, type ExerciseProps } from './frame.tsx';
import { lateJudge } from './late-judge.ts';
import type { Entered, EntryProps, KindView } from './view.ts';

const givenIn = (entered: Entered): readonly RowAct[] => (entered['acts'] ?? []) as readonly RowAct[];
const tiedIn = (entered: Entered): readonly RowAct[] => (entered['tied'] ?? []) as readonly RowAct[];

/** A row to be tied: seven things that hands can do, the row as far as it is tied, and the same in words. */
function RowEntry(props: EntryProps<'row'>): JSX.Element {
  const given = () => givenIn(props.given);
  const acts = () => [...given(), ...tiedIn(props.entered)];
  const wrongAt = () => Object.values(props.judged?.fields ?? {}).find((result) => result?.at)?.at;
  const drawing = createDrawing(`${props.id}-drawn`, () => JSON.stringify([props.problem, acts(), wrongAt()]));
  let board: HTMLDivElement | undefined;

  const act = (one: RowAct) => props.onEnter('tied', [...tiedIn(props.entered), one]);
  const undo = () => props.onEnter('tied', tiedIn(props.entered).slice(0, -1));
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

  return (
    <div class="tying">
      <Drawn
        id={`${props.id}-drawn`}
        class="tied-drawing"
        drawing={drawing()}
        html={(draws) => draws.rowDrawing(`${props.id}-row`, props.problem, acts())}
      />
      <Drawn
        class="tied-lead"
        live
        drawing={drawing()}
        html={(draws) => draws.rowNews(props.problem, acts(), given().length)}
      />
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
        <button type="button" aria-keyshortcuts="Backspace" onClick={undo}>
          Undo
        </button>
        <button type="button" onClick={() => props.onEnter('tied', [])}>
          Start again
        </button>
      </div>
      <Drawn
        class="tied-list"
        drawing={drawing()}
        html={(draws) => draws.rowList(props.problem, acts(), given().length, wrongAt())}
      />
      <ol
        class="write-lines"
        aria-hidden="true"
        innerHTML={'<li class="write-here"></li>'.repeat(props.problem.width + MOST_MOVES)}
      />
    </div>
  );
}

export const view: KindView<'row'> = {
  kind: 'row',
  ...lateJudge<'row'>(() => import('../../solver/exercises/row/judge.ts')),
  judgedWhole: true,
  answer: (entered) => ({ acts: [...givenIn(entered), ...tiedIn(entered)] }),
  Entry: RowEntry,
};

export const RowExercise = (props: ExerciseProps<'row'>): JSX.Element => <ExerciseFrame asked={props} view={view} />;
