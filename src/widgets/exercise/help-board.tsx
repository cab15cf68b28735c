import { createSignal, For, type JSX, Show } from 'solid-js';
import type { JudgedOf, KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import { Working } from '../working-list.tsx';
import type { Explained, HelpBoard, LikeIt } from './help.ts';
import { Question } from './question.tsx';
import type { Entered, KindView } from './view.ts';

/** Everything that was fetched for a learner who asked for help or went wrong, in the order of the board. */
export function Board(props: { board: () => HelpBoard | null }): JSX.Element {
  const board = () => props.board();
  return (
    <>
      <Show when={board()?.slips}>
        {(slips) => (
          <div class="slips">
            <Show when={slips().say}>
              <p>{slips().say}</p>
            </Show>
            <For each={slips().slips}>
              {({ did, why, next }) => (
                <p>
                  <strong>{did}</strong> {why} {next}
                </p>
              )}
            </For>
          </div>
        )}
      </Show>
      <For each={board()?.hints ?? []}>{(text) => <p class="hint">{text}</p>}</For>
      <Show when={board()?.worked}>
        {(worked) => (
          <div class="worked">
            <p>{worked().says}</p>
            {shownCase(worked())}
          </div>
        )}
      </Show>
      <Show when={board()?.solution}>
        {(steps) => (
          <div class="worked">
            <p>The working, with these figures:</p>
            <Working steps={steps()} />
          </div>
        )}
      </Show>
    </>
  );
}

/** The case as the page was built with it, or made since. */
function shownCase(worked: LikeIt): JSX.Element {
  if ('built' in worked) return [...worked.built.cloneNode(true).childNodes];
  return (
    <>
      <Question words={worked.question} />
      <Working steps={worked.steps} />
    </>
  );
}

/** The smallest case on which the slips that fit an answer differ: it decides between them. */
export function FollowUp<K extends KindName>(props: {
  view: KindView<K>;
  id: string;
  asked: NonNullable<HelpBoard['followUp']>;
  onSettled: (found: Explained) => void;
}): JSX.Element {
  const { Entry } = props.view;
  const [entered, setEntered] = createSignal<Entered>({});
  const problem = () => props.asked.problem as ProblemOf<K>;
  const [unreadable, setUnreadable] = createSignal<JudgedOf<K> | null>(null);
  const settle = () => {
    const verdict = props.view.judge(problem(), props.view.answer(entered()));
    if (verdict.outcome === 'unreadable') {
      setUnreadable(() => verdict);
      return;
    }
    void props.asked.settle(props.view.answer(entered())).then((found) => {
      setEntered({});
      setUnreadable(null);
      props.onSettled(found);
    });
  };
  return (
    <fieldset class="follow-up">
      <legend>One more case tells which it was</legend>
      <Question words={props.asked.question} />
      <Entry
        id={props.id}
        problem={problem()}
        question={props.asked.question}
        entered={entered()}
        given={{}}
        judged={unreadable()}
        onEnter={(field, entry) => setEntered({ ...entered(), [field]: entry })}
        onCheckField={settle}
      />
      <button type="button" onClick={settle}>
        Check this case
      </button>
    </fieldset>
  );
}
