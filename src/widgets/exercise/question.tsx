import { For, type JSX, Show } from 'solid-js';
import type { ExerciseProblem } from '../../solver/exercises/contract.ts';
import { questionWords } from '../../words/exercises/question.ts';

/** What is known, and what is asked. */
export function Question(props: { problem: ExerciseProblem }): JSX.Element {
  const words = () => questionWords(props.problem);
  return (
    <div class="question">
      <p>{words().given}</p>
      <p>
        <strong>{words().ask}</strong>
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
