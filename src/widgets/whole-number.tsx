import { createUniqueId, type JSX, Show } from 'solid-js';
import type { Range } from '../solver/problem.ts';

interface Props {
  label: JSX.Element;
  value: number | string;
  /** Both ends count. */
  range: Range;
  /** What the stepper buttons add and take. */
  step?: number;
  unit?: string;
  /** Said beside the field when the value can't be used. */
  problem?: string | undefined;
  onValue: (value: number | string) => void;
}

/**
 * A whole number that can be typed or stepped. What is typed goes out as it stands: the one who asks decides
 * whether it can be used, so that an error can say what was entered.
 */
export function WholeNumber(props: Props): JSX.Element {
  const id = createUniqueId();
  const numeric = () => (typeof props.value === 'number' ? props.value : Number.parseInt(props.value, 10));
  const to = (value: number) => props.onValue(Math.min(props.range.high, Math.max(props.range.low, value)));
  const typed = (text: string) => props.onValue(/^\s*\d+\s*$/.test(text) ? Number(text) : text);
  return (
    <div class="whole-number" classList={{ faulty: Boolean(props.problem) }}>
      <label for={id}>{props.label}</label>
      <div class="stepper">
        <button
          type="button"
          aria-label="one less"
          aria-controls={id}
          onClick={() => to(Number.isNaN(numeric()) ? props.range.low : numeric() - (props.step ?? 1))}
        >
          −
        </button>
        <input
          ref={(input) => {
            // What was typed before the script arrived counts.
            if (input.value !== '' && input.value !== String(props.value)) typed(input.value);
          }}
          id={id}
          type="text"
          inputmode="numeric"
          autocomplete="off"
          value={props.value}
          aria-invalid={props.problem ? 'true' : undefined}
          aria-describedby={props.problem ? `${id}-problem` : undefined}
          onInput={(event) => typed(event.currentTarget.value)}
          onKeyDown={(event) => {
            const by = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
            if (by === 0 || Number.isNaN(numeric())) return;
            event.preventDefault();
            to(numeric() + by * (props.step ?? 1));
          }}
        />
        <button
          type="button"
          aria-label="one more"
          aria-controls={id}
          onClick={() => to(Number.isNaN(numeric()) ? props.range.low : numeric() + (props.step ?? 1))}
        >
          +
        </button>
        <Show when={props.unit}>
          <span class="unit">{props.unit}</span>
        </Show>
      </div>
      <Show when={props.problem}>
        <p class="field-problem" id={`${id}-problem`}>
          {props.problem}
        </p>
      </Show>
    </div>
  );
}
