import { createEffect, For, type JSX, Show } from 'solid-js';
import type { SpotField, SpotRow } from '../../solver/exercises/spot/problem.ts';
import { createDrawing, Drawn } from './drawn.tsx';
import { ExerciseFrame, type ExerciseProps } from './frame.tsx';
import { lateJudge } from './late-judge.ts';
import type { EntryProps, KindView } from './view.ts';

/** A sheet with a fault: the places as a list to choose from, the drawing where there is one, and the names. */
function SpotEntry(props: EntryProps<'spot'>): JSX.Element {
  let box: HTMLDivElement | undefined;
  const picked = (field: SpotField) => props.given[field] ?? props.entered[field];
  const drawn = () => (props.problem.in === 'row' ? props.problem : null);
  const drawing = createDrawing(`${props.id}-drawn`, () => JSON.stringify(drawn()));
  // The drawing is not made anew for a pick: the parts that belong to it are told so.
  createEffect(() => {
    const place = picked('place');
    drawing();
    drawn();
    for (const part of box?.querySelectorAll('.f-pick') ?? [])
      part.classList.toggle('f-picked', part.classList.contains(place === 'lead' ? 'f-lead-place' : `f-${place}`));
  });
  const pickAt = ({ target }: MouseEvent) => {
    if (props.given['place'] !== undefined || !(target instanceof Element)) return;
    const part = target.closest('.f-pick');
    const [place] =
      choices('place').find(([id]) => part?.classList.contains(id === 'lead' ? 'f-lead-place' : `f-${id}`)) ?? [];
    if (place) props.onEnter('place', place);
  };

  const choices = (field: SpotField) => props.question?.choices?.[field] ?? [];
  const Choices = (own: { field: SpotField; legend: string }): JSX.Element => {
    const verdict = () => props.judged?.fields[own.field]?.verdict;
    const say = () =>
      ({
        right: 'This is right.',
        wrong: own.field === 'place' ? 'This is as it should be. Look further.' : 'This is not what happened there.',
        missing: 'Choose one.',
        follows: '',
        unreadable: '',
      })[verdict() ?? 'follows'];
    return (
      <fieldset class="entry spot" data-verdict={verdict()} aria-describedby={`${props.id}-${own.field}-say`}>
        <legend>{own.legend}</legend>
        <For each={choices(own.field)}>
          {([id, says]) => (
            <label>
              <input
                ref={(input) => {
                  if (input.checked && props.given[own.field] === undefined) props.onEnter(own.field, id);
                }}
                type="radio"
                data-needs-script
                name={`${props.id}-${own.field}`}
                value={id}
                disabled={props.given[own.field] !== undefined}
                checked={picked(own.field) === id}
                onChange={() => props.onEnter(own.field, id)}
              />
              <span>{says}</span>
            </label>
          )}
        </For>
        <span class="write-here" aria-hidden="true" />
        <p class="entry-say" id={`${props.id}-${own.field}-say`} aria-live="polite">
          {say()}
        </p>
      </fieldset>
    );
  };

  return (
    <div class="spotting" ref={box}>
      <Show when={drawn()}>
        {(sheet) => (
          <Drawn
            id={`${props.id}-drawn`}
            class="tied-drawing"
            drawing={drawing()}
            html={(draws) =>
              draws.spotDrawing(
                `${props.id}-row`,
                sheet() as SpotRow,
                choices('place').map(([, says]) => says),
              )
            }
            onClick={pickAt}
          />
        )}
      </Show>
      <Choices field="place" legend="Where is it?" />
      <button type="button" data-needs-script onClick={() => props.onCheckField('place')}>
        Check the place
      </button>
      <Choices field="fault" legend="What is it?" />
    </div>
  );
}

export const view: KindView<'spot'> = {
  kind: 'spot',
  ...lateJudge<'spot'>(() => import('../../solver/exercises/spot/judge.ts')),
  answer: ({ place, fault }) => ({ place, fault }),
  Entry: SpotEntry,
};

export const SpotExercise = (props: ExerciseProps<'spot'>): JSX.Element => <ExerciseFrame asked={props} view={view} />;
