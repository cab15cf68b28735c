import type { JSX } from 'solid-js';
import { fieldLabel, fieldUnit } from '../../words/exercises/labels.ts';
import type { Value } from '../../words/numbers.ts';
import { ExerciseFrame, type ExerciseProps } from './frame.tsx';
import { lateJudge } from './late-judge.ts';
import { verdicts } from './later.ts';
import { NumberEntry } from './number-entry.tsx';
import type { EntryProps, KindView } from './view.ts';

/** One figure, with its unit where it has one. */
function FigureEntry(props: EntryProps<'number'>): JSX.Element {
  const result = () => props.judged?.fields.figure;
  const said = () => {
    const judged = result();
    return (
      (judged && verdicts.part()?.verdictWords(props.problem, 'figure', judged, props.entered['figure'] as Value)) ?? ''
    );
  };
  return (
    <div class="entries">
      <NumberEntry
        id={`${props.id}-figure`}
        label={fieldLabel(props.problem, 'figure')}
        unit={fieldUnit(props.problem)}
        value={String(props.entered['figure'] ?? '')}
        verdict={result()?.verdict}
        say={said()}
        onEnter={(text) => props.onEnter('figure', text)}
        onCheck={() => props.onCheckField('figure')}
      />
    </div>
  );
}

export const view: KindView<'number'> = {
  kind: 'number',
  ...lateJudge<'number'>(() => import('../../solver/exercises/number/judge.ts')),
  answer: (entered) => entered as ReturnType<KindView<'number'>['answer']>,
  Entry: FigureEntry,
};

export const NumberExercise = (props: ExerciseProps<'number'>): JSX.Element => (
  <ExerciseFrame asked={props} view={view} />
);
