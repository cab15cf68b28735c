import type { JSX } from 'solid-js';
import type { QuestionWords } from '../../words/exercises/question-words.ts';

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
