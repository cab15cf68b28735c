import { createSignal, For, type JSX, onMount, Show } from 'solid-js';
import type { KindName, Level } from '../../solver/exercises/contract.ts';
import { MOST_LEARNERS, readCode } from '../../solver/exercises/sheet-code.ts';
import { KIND_NAMES } from '../../words/exercises/kind-names.ts';
import { Choice } from '../choice.tsx';
import { WholeNumber } from '../whole-number.tsx';
import type { SheetsView } from './sheets-view.tsx';

/** An exercise of the lesson: its id, kind and level, and what the lesson sets. */
export interface SheetExercise {
  readonly id: string;
  readonly kind: KindName;
  readonly level: Level;
  readonly options: object;
  /** Its number in the lesson, from 1; a sheet that leaves some out keeps it. */
  readonly number: number;
}

interface Props {
  /** Address of the lesson, from where the workbook is served. */
  lesson: string;
  title: string;
  order: number;
  exercises: readonly SheetExercise[];
}

export type SheetsFor = 'learners' | 'room';
export type SheetsShow = 'sheets' | 'key';

const FOR: Readonly<Record<SheetsFor, string>> = {
  learners: 'a sheet with other figures for each learner',
  room: 'one sheet for the whole room',
};
const SHOW: Readonly<Record<SheetsShow, string>> = { sheets: 'the sheets', key: 'the key' };

/** Words that nobody mishears across a room. */
const WORDS = ['tide', 'kelp', 'heron', 'rope', 'mast', 'sail', 'gull', 'reed', 'shell', 'pilot', 'barrel', 'anchor'];
const otherCode = (): string => {
  const [word = 0, number = 0] = crypto.getRandomValues(new Uint16Array(2));
  return `${WORDS[word % WORDS.length]}-${10 + (number % 90)}`;
};

/** The form from which a lesson's exercise sheets and their key are made; all it knows stands in the address. */
export function SheetsForm(props: Props): JSX.Element {
  const [typed, setTyped] = createSignal('boathouse');
  const [many, setMany] = createSignal<number | string>(8);
  const [whom, setWhom] = createSignal<SheetsFor>('learners');
  const [show, setShow] = createSignal<SheetsShow>('sheets');
  const [view, setView] = createSignal<typeof SheetsView | null>(null);
  /** Ids of the exercises that are to be on the sheets. */
  const [chosen, setChosen] = createSignal<readonly string[]>(props.exercises.map(({ id }) => id));
  const [problem, setProblem] = createSignal('');

  const wanted = () => props.exercises.filter(({ id }) => chosen().includes(id));
  const code = () => readCode(typed());
  const codeProblem = () =>
    code() === null ? `“${typed()}” has no letter or digit in it. A word and a number will do, such as tide-27.` : '';
  const learners = () => {
    const value = many();
    return typeof value === 'number' && value >= 1 && value <= MOST_LEARNERS ? value : null;
  };
  const manyProblem = () =>
    learners() === null ? `Enter a whole number of learners from 1 to ${MOST_LEARNERS}.` : undefined;

  const keepAddress = () => {
    const address = new URL(location.href);
    const kept = {
      class: code(),
      learners: whom() === 'room' ? '0' : learners(),
      show: show() === 'key' ? 'key' : null,
      only: wanted().length < props.exercises.length ? chosen().join('.') : null,
    };
    for (const [name, value] of Object.entries(kept))
      if (value === null) address.searchParams.delete(name);
      else address.searchParams.set(name, String(value));
    history.replaceState(history.state, '', address);
  };
  const change = (act: () => void) => {
    act();
    keepAddress();
  };
  onMount(() => {
    const asked = new URLSearchParams(location.search);
    setTyped(asked.get('class') || typed());
    const number = asked.get('learners');
    if (number === '0') setWhom('room');
    else if (number !== null && /^\d{1,2}$/.test(number)) setMany(Number(number));
    if (asked.get('show') === 'key') setShow('key');
    const named = asked.get('only')?.split('.') ?? [];
    const only = chosen().filter((id) => named.includes(id));
    if (only.length > 0) setChosen(only);
    keepAddress();
    // Whoever prints at once has the drawings on the sheets, too.
    Promise.all([import('./sheets-view.tsx'), import('../exercise/tied-drawing.ts')]).then(
      ([{ SheetsView }]) => setView(() => SheetsView),
      () => setProblem('The sheets could not be fetched. Open this page once while you have a network.'),
    );
  });

  return (
    <>
      <form class="sheets-form only-screen" data-needs-script onSubmit={(event) => event.preventDefault()}>
        <div class="sheets-code">
          <label for="sheets-code">Code of the class</label>
          <input
            id="sheets-code"
            type="text"
            autocomplete="off"
            autocapitalize="none"
            spellcheck={false}
            value={typed()}
            aria-invalid={code() === null ? 'true' : undefined}
            aria-describedby="sheets-code-note"
            onInput={(event) => change(() => setTyped(event.currentTarget.value))}
          />
          <button type="button" onClick={() => change(() => setTyped(otherCode()))}>
            Another code
          </button>
          <p id="sheets-code-note" classList={{ note: code() !== null, 'field-problem': code() === null }}>
            {codeProblem() || 'The same code makes the same sheets again, on any device. Keep it with the key.'}
          </p>
        </div>
        <Choice
          legend="Make"
          choices={['learners', 'room'] as const}
          value={whom()}
          words={(each) => FOR[each]}
          onValue={(each) => change(() => setWhom(each))}
        />
        <Show when={whom() === 'learners'}>
          <WholeNumber
            label="Learners"
            value={many()}
            range={{ low: 1, high: MOST_LEARNERS }}
            problem={manyProblem()}
            onValue={(value) => change(() => setMany(value))}
          />
        </Show>
        <Choice
          legend="Show"
          choices={['sheets', 'key'] as const}
          value={show()}
          words={(each) => SHOW[each]}
          onValue={(each) => change(() => setShow(each))}
        />
        <details class="sheets-only">
          <summary>
            {wanted().length === props.exercises.length
              ? `All ${props.exercises.length} exercises`
              : `${wanted().length} of ${props.exercises.length} exercises`}
          </summary>
          <fieldset>
            <legend>On the sheets, and in the key</legend>
            <For each={props.exercises}>
              {({ id, kind, number }) => (
                <label>
                  <input
                    type="checkbox"
                    checked={chosen().includes(id)}
                    onChange={(event) => {
                      const on = event.currentTarget.checked;
                      change(() =>
                        setChosen(
                          props.exercises
                            .map((each) => each.id)
                            .filter((each) => (each === id ? on : chosen().includes(each))),
                        ),
                      );
                    }}
                  />
                  Exercise {number}: {KIND_NAMES[kind]}
                </label>
              )}
            </For>
          </fieldset>
          <Show when={wanted().length === 0}>
            <p class="field-problem" role="status">
              No exercise is chosen, so there is no sheet. Choose at least one.
            </p>
          </Show>
        </details>
        <p>
          <button type="button" data-kind="must-do" data-print>
            {show() === 'key' ? 'Print the key' : 'Print the sheets'}
          </button>
        </p>
        <Show when={problem()}>
          <p class="field-problem" role="status">
            {problem()}
          </p>
        </Show>
      </form>
      <Show when={view()}>
        {(loaded) => {
          const View = loaded();
          return (
            <Show when={wanted().length > 0 && code()}>
              {(readable) => (
                <View
                  lesson={props.lesson}
                  title={props.title}
                  order={props.order}
                  code={readable()}
                  learners={whom() === 'room' ? 0 : (learners() ?? 0)}
                  show={show()}
                  exercises={wanted()}
                />
              )}
            </Show>
          );
        }}
      </Show>
    </>
  );
}
