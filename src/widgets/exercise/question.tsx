import { For, type JSX, Show } from 'solid-js';
import type { QuestionWords } from '../../words/exercises/question.ts';

/** What is known, and what is asked. */
export function Question(props: { words: QuestionWords }): JSX.Element {
  return (
    <div class="question">
      <p>{props.words.given}</p>
      <p>
        <strong>{props.words.ask}</strong>
      </p>
    </div>
  );
}

export interface WorkingLine {
  /** The step's sum in figures; empty where it has none. */
  readonly sum: string;
  readonly text: string;
}

/** A working, step by step: the sum, and what it says. */
export function Working(props: { steps: readonly WorkingLine[] }): JSX.Element {
  return (
    <ol class="working">
      <For each={props.steps}>
        {({ sum, text }) => (
          <li>
            <Show when={sum}>
              <span class="sum">{sum}</span>
            </Show>{' '}
            {text}
          </li>
        )}
      </For>
    </ol>
  );
}
