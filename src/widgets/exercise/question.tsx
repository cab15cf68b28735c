import { type JSX, Show } from 'solid-js';
import type { QuestionWords } from '../../words/exercises/question-words.ts';

/** What is known, and what is asked. */
export function Question(props: { words: QuestionWords }): JSX.Element {
  return (
    <div class="question">
      <p>{props.words.given}</p>
      <p>
        <strong>{props.words.ask}</strong>
      </p>
      <Show when={props.words.inMillimetres}>
        <p class="note" data-units="inches">
          {props.words.inMillimetres}
        </p>
      </Show>
    </div>
  );
}
