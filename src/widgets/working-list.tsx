import { For, type JSX, Show } from 'solid-js';

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
