import { createUniqueId, For, type JSX } from 'solid-js';

interface Props<T extends string> {
  legend: JSX.Element;
  choices: readonly T[];
  value: T;
  words: (choice: T) => JSX.Element;
  onValue: (choice: T) => void;
}

/** A few choices side by side, of which one holds. */
export function Choice<T extends string>(props: Props<T>): JSX.Element {
  const name = createUniqueId();
  return (
    <fieldset class="choice">
      <legend>{props.legend}</legend>
      <For each={props.choices}>
        {(choice) => (
          <label>
            <input
              ref={(input) => {
                // What was chosen before the script arrived counts.
                if (input.checked && props.value !== choice) props.onValue(choice);
              }}
              type="radio"
              name={name}
              checked={props.value === choice}
              onChange={() => props.onValue(choice)}
            />
            <span>{props.words(choice)}</span>
          </label>
        )}
      </For>
    </fieldset>
  );
}
