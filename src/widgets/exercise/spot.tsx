import { createEffect, For, type JSX, Show } from 'solid-js';
import { judge } from '../../solver/exercises/spot/judge.ts';
import { SPOT_FAULTS, type SpotField, type SpotPlace, type SpotRow } from '../../solver/exercises/spot/problem.ts';
import { placesOf } from '../../solver/exercises/spot/solve.ts';
import { FAULT_NAMES, placeWords } from '../../words/exercises/spot-sheet.ts';
import { Drawn } from './drawn.tsx';
import { ExerciseFrame, type ExerciseProps } from './frame.tsx';
import type { EntryProps, KindView } from './view.ts';

/** A sheet with a fault: the places as a list to choose from, the drawing where there is one, and the names. */
function SpotEntry(props: EntryProps<'spot'>): JSX.Element {
  let box: HTMLDivElement | undefined;
  const picked = (field: SpotField) => props.given[field] ?? props.entered[field];
  const drawn = () => (props.problem.in === 'row' ? props.problem : null);
  // The drawing is not made anew for a pick: the parts that belong to it are told so.
  createEffect(() => {
    const place = picked('place');
    drawn();
    for (const part of box?.querySelectorAll('.f-pick') ?? [])
      part.classList.toggle('f-picked', part.classList.contains(place === 'lead' ? 'f-lead-place' : `f-${place}`));
  });
  const pickAt = ({ target }: MouseEvent) => {
    if (props.given['place'] !== undefined || !(target instanceof Element)) return;
    const part = target.closest('.f-pick');
    const place = placesOf(props.problem).find((each) =>
      part?.classList.contains(each === 'lead' ? 'f-lead-place' : `f-${each}`),
    );
    if (place) props.onEnter('place', place);
  };

  const Choices = (own: {
    field: SpotField;
    legend: string;
    choices: readonly (readonly [id: string, says: string])[];
  }): JSX.Element => {
    const verdict = () => props.judged?.fields[own.field]?.verdict;
    const say = () =>
      ({
        right: 'This is right.',
        wrong: own.field === 'place' ? 'This is as it should be. Look on.' : 'This is not what happened there.',
        missing: 'Choose one.',
        follows: '',
        unreadable: '',
      })[verdict() ?? 'follows'];
    return (
      <fieldset class="entry spot" data-verdict={verdict()} aria-describedby={`${props.id}-${own.field}-say`}>
        <legend>{own.legend}</legend>
        <For each={own.choices}>
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
            draw={(drawing) => drawing.spotDrawing(`${props.id}-row`, sheet() as SpotRow)}
            shows={JSON.stringify(sheet())}
            onClick={pickAt}
          />
        )}
      </Show>
      <Choices
        field="place"
        legend="Where is it?"
        choices={placesOf(props.problem).map((place: SpotPlace) => [place, placeWords(props.problem, place)] as const)}
      />
      <button type="button" data-needs-script onClick={() => props.onCheckField('place')}>
        Check the place
      </button>
      <Choices
        field="fault"
        legend="What is it?"
        choices={SPOT_FAULTS[props.problem.in].map((fault) => [fault, FAULT_NAMES[fault]] as const)}
      />
    </div>
  );
}

const view: KindView<'spot'> = {
  kind: 'spot',
  judge,
  answer: ({ place, fault }) => ({ place, fault }),
  Entry: SpotEntry,
};

export const SpotExercise = (props: ExerciseProps<'spot'>): JSX.Element => <ExerciseFrame asked={props} view={view} />;
