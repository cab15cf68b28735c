import { For, type JSX } from 'solid-js';
import { fieldLabel } from '../../words/exercises/labels.ts';
import { ExerciseFrame, type ExerciseProps } from './frame.tsx';
import { lateJudge } from './late-judge.ts';
import { later } from './later.ts';
import type { EntryProps, KindView } from './view.ts';

const checking = later(() => import('./choose-check.ts'));

/** A few choices, of which one is taken. */
function ChooseEntry(props: EntryProps<'choose'>): JSX.Element {
  const chosen = () => props.entered['choice'];
  const verdict = (choice: string) => (chosen() === choice ? props.judged?.fields.choice?.verdict : undefined);
  return (
    <fieldset class="choices">
      <legend>{fieldLabel(props.problem, 'choice')}</legend>
      <For each={props.problem.choices}>
        {(choice, index) => (
          <label data-verdict={verdict(choice)}>
            <input
              ref={(input) => {
                // What was chosen before the script arrived counts.
                if (input.checked && chosen() !== choice) props.onEnter('choice', choice);
              }}
              data-needs-script
              type="radio"
              name={`${props.id}-choice`}
              value={choice}
              checked={chosen() === choice}
              onChange={() => props.onEnter('choice', choice)}
            />
            <span class="tick-here" aria-hidden="true" />
            <span>{props.question.parts?.[index()]}</span>
          </label>
        )}
      </For>
    </fieldset>
  );
}

export const view: KindView<'choose'> = {
  kind: 'choose',
  ...lateJudge<'choose'>(checking.ready),
  outcome: ({ outcome }) => checking.part()?.outcomes[outcome] ?? '',
  answer: (entered) => entered as ReturnType<KindView<'choose'>['answer']>,
  Entry: ChooseEntry,
};

export const ChooseExercise = (props: ExerciseProps<'choose'>): JSX.Element => (
  <ExerciseFrame asked={props} view={view} />
);
