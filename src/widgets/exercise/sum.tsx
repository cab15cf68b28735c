import { For, type JSX, Show } from 'solid-js';
import { fieldLabel } from '../../words/exercises/labels.ts';
import type { Value } from '../../words/numbers.ts';
import { ExerciseFrame, type ExerciseProps } from './frame.tsx';
import { lateJudge } from './late-judge.ts';
import { verdicts } from './later.ts';
import { NumberEntry } from './number-entry.tsx';
import type { EntryProps, KindView } from './view.ts';

/** The linked figures of a fitting sum, one under the other as a maker writes them. */
function SumEntry(props: EntryProps<'sum'>): JSX.Element {
  return (
    <div class="entries">
      <For each={props.problem.fields}>
        {(field) => {
          const label = () => fieldLabel(props.problem, field);
          const result = () => props.judged?.fields[field];
          const said = () => {
            const judged = result();
            return (
              (judged && verdicts.part()?.verdictWords(props.problem, field, judged, props.entered[field] as Value)) ??
              ''
            );
          };
          const isGiven = () => props.given[field] !== undefined;
          return (
            <Show
              when={field === 'parity'}
              fallback={
                <NumberEntry
                  id={`${props.id}-${field}`}
                  label={label()}
                  verdict={result()?.verdict}
                  say={said()}
                  given={isGiven()}
                  value={String(props.given[field] ?? props.entered[field] ?? '')}
                  onEnter={(text) => props.onEnter(field, text)}
                  onCheck={() => props.onCheckField(field)}
                />
              }
            >
              <fieldset
                class="entry choice"
                data-verdict={result()?.verdict}
                aria-describedby={`${props.id}-${field}-say`}
              >
                <legend>{label()}</legend>
                <For each={['even', 'odd'] as const}>
                  {(word) => (
                    <label>
                      <input
                        ref={(input) => {
                          if (input.checked && !isGiven()) props.onEnter(field, word);
                        }}
                        data-needs-script
                        type="radio"
                        name={`${props.id}-${field}`}
                        value={word}
                        disabled={isGiven()}
                        checked={(props.given[field] ?? props.entered[field]) === word}
                        onChange={() => props.onEnter(field, word)}
                      />
                      <span>{word}</span>
                    </label>
                  )}
                </For>
                <p class="entry-say" id={`${props.id}-${field}-say`} aria-live="polite">
                  {said()}
                </p>
              </fieldset>
            </Show>
          );
        }}
      </For>
    </div>
  );
}

export const view: KindView<'sum'> = {
  kind: 'sum',
  ...lateJudge<'sum'>(() => import('../../solver/exercises/sum/judge.ts')),
  answer: (entered) => entered as ReturnType<KindView<'sum'>['answer']>,
  Entry: SumEntry,
};

export const SumExercise = (props: ExerciseProps<'sum'>): JSX.Element => <ExerciseFrame asked={props} view={view} />;
