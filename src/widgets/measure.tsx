import { createSignal, createUniqueId, type JSX, Show } from 'solid-js';

interface Props {
  label: JSX.Element;
  /** null where nothing was measured. */
  value: number | null;
  unit: string;
  hint?: string;
  /** Says what is wrong with a value, or nothing. */
  problemOf: (value: number | string) => string | undefined;
  /** null when the field was emptied. */
  onValue: (value: number | null) => void;
}

/** Reads a length as people type it, with a point or a comma; null when it is no number. */
const read = (text: string): number | null => {
  const plain = text.trim().replace(',', '.');
  return /^\d+(\.\d*)?$|^\.\d+$/.test(plain) ? Number(plain) : null;
};

/** A measured figure with its unit. Only what can be used goes out; what was typed stays, with what is wrong with it. */
export function Measure(props: Props): JSX.Element {
  const id = createUniqueId();
  const [typed, setTyped] = createSignal<string | null>(null);
  const problem = () => {
    const text = typed();
    return text === null || text.trim() === '' ? undefined : props.problemOf(read(text) ?? text);
  };
  const take = (text: string) => {
    setTyped(text);
    if (text.trim() === '') props.onValue(null);
    else if (!problem()) props.onValue(read(text));
  };
  return (
    <div class="measure" classList={{ faulty: Boolean(problem()) }}>
      <label for={id}>{props.label}</label>
      <div class="stepper">
        <input
          id={id}
          type="text"
          inputmode="decimal"
          autocomplete="off"
          value={typed() ?? props.value ?? ''}
          aria-invalid={problem() ? 'true' : undefined}
          aria-describedby={`${id}-hint`}
          onInput={(event) => take(event.currentTarget.value)}
        />
        <span class="unit">{props.unit}</span>
      </div>
      <p id={`${id}-hint`} classList={{ 'field-problem': Boolean(problem()), note: !problem() }}>
        <Show when={problem()} fallback={props.hint}>
          {problem()}
        </Show>
      </p>
    </div>
  );
}
