import { createEffect, createSignal, createUniqueId, type JSX, on, Show } from 'solid-js';
import { inchesOf, readInches } from '../words/inches.ts';
import { useUnits } from './units.ts';

interface Props {
  label: JSX.Element;
  /** null where nothing was measured. */
  value: number | null;
  /** What is counted; left out for a length, which is given and taken in mm and shown in the reader's own units. */
  unit?: string | undefined;
  hint?: string;
  /** mm that the buttons add and take; without it there are none. */
  step?: number;
  /** Says what is wrong with a value, or nothing. */
  problemOf: (value: number | string) => string | undefined;
  /** null when the field was emptied. */
  onValue: (value: number | null) => void;
}

/** Reads a figure as people type it, with a point or a comma; null when it is no number. */
const read = (text: string): number | null => {
  const plain = text.trim().replace(',', '.');
  return /^\d+(\.\d*)?$|^\.\d+$/.test(plain) ? Number(plain) : null;
};

/** A measured figure with its unit. Only what can be used goes out; what was typed stays, with what is wrong with it. */
export function Measure(props: Props): JSX.Element {
  const id = createUniqueId();
  const units = useUnits();
  const inInches = () => props.unit === undefined && units() === 'inches';
  const [typed, setTyped] = createSignal<string | null>(null);
  const reading = (text: string) => (inInches() ? readInches(text) : read(text));
  const shown = () => (props.value !== null && inInches() ? inchesOf(props.value) : props.value);
  const problem = () => {
    const text = typed();
    return text === null || text.trim() === '' ? undefined : props.problemOf(reading(text) ?? text);
  };
  const take = (text: string) => {
    setTyped(text);
    if (text.trim() === '') props.onValue(null);
    else if (!problem()) props.onValue(reading(text));
  };
  const by = (step: number) => {
    const next = Math.round(((props.value ?? 0) + step) * 100) / 100;
    if (props.problemOf(next)) return;
    setTyped(null);
    props.onValue(next);
  };
  // What was typed in other units gives way to what was taken of it.
  createEffect(on(inInches, () => setTyped(null), { defer: true }));
  return (
    <div class="measure" classList={{ faulty: Boolean(problem()) }}>
      <label for={id}>{props.label}</label>
      <div class="stepper">
        <Show when={props.step}>
          {(step) => (
            <button type="button" aria-label="a little less" aria-controls={id} onClick={() => by(-step())}>
              −
            </button>
          )}
        </Show>
        <input
          ref={(input) => {
            // What was typed before the script arrived counts.
            if (input.value !== '' && input.value !== String(props.value ?? '')) take(input.value);
          }}
          id={id}
          type="text"
          inputmode={inInches() ? 'text' : 'decimal'}
          autocomplete="off"
          value={typed() ?? shown() ?? ''}
          aria-invalid={problem() ? 'true' : undefined}
          aria-describedby={`${id}-hint`}
          onInput={(event) => take(event.currentTarget.value)}
        />
        <Show when={props.step}>
          {(step) => (
            <button type="button" aria-label="a little more" aria-controls={id} onClick={() => by(step())}>
              +
            </button>
          )}
        </Show>
        <span class="unit">{props.unit ?? (inInches() ? 'in' : 'mm')}</span>
      </div>
      <p id={`${id}-hint`} classList={{ 'field-problem': Boolean(problem()), note: !problem() }}>
        <Show when={problem()} fallback={props.hint}>
          {problem()}
        </Show>
      </p>
    </div>
  );
}
