import type { JSX } from 'solid-js';
import type { Verdict } from '../../solver/exercises/contract.ts';

interface Props {
  id: string;
  label: JSX.Element;
  /** Empty for a count. */
  unit?: string;
  value: string;
  given?: boolean;
  verdict: Verdict | undefined;
  /** The verdict in words; empty before the first check. */
  say: string;
  onEnter: (text: string) => void;
  onCheck: () => void;
}

/** One figure to be entered, with a line to write on for paper. Enter checks it. */
export function NumberEntry(props: Props): JSX.Element {
  return (
    <div class="entry" data-verdict={props.verdict}>
      <label for={props.id}>
        {props.label}
        {props.unit ? `, in ${props.unit}` : ''}
      </label>
      <input
        ref={(input) => {
          // What was typed before the script arrived counts.
          if (!props.given && input.value !== '' && input.value !== props.value) props.onEnter(input.value);
        }}
        id={props.id}
        data-needs-script
        type="text"
        inputmode="numeric"
        autocomplete="off"
        readonly={props.given}
        value={props.value}
        aria-invalid={
          props.verdict === 'wrong' || props.verdict === 'unreadable' || props.verdict === 'missing'
            ? 'true'
            : undefined
        }
        aria-describedby={`${props.id}-say`}
        onInput={(event) => props.onEnter(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return;
          event.preventDefault();
          props.onCheck();
        }}
      />
      <span class="write-here" aria-hidden="true">
        {props.given ? props.value : ''}
      </span>
      <p class="entry-say" id={`${props.id}-say`} aria-live="polite">
        {props.say}
      </p>
    </div>
  );
}
