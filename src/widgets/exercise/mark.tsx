import { createSignal, For, type JSX, Show } from 'solid-js';
import { missed } from '../../solver/exercises/mark/missed.ts';
import type { Cell } from '../../solver/exercises/mark/problem.ts';
import { fieldLabel } from '../../words/exercises/labels.ts';
import { ExerciseFrame, type ExerciseProps } from './frame.tsx';
import { lateJudge } from './late-judge.ts';
import { verdicts } from './later.ts';
import type { Entered, EntryProps, KindView } from './view.ts';

/** In a half-worked form `cells` are those that stand there already, and the learner's own are `marked`. */
const listed = (entered: Entered, field: 'cells' | 'marked'): readonly Cell[] =>
  Array.isArray(entered[field]) ? (entered[field] as readonly Cell[]) : [];
const isAmong = (cells: readonly Cell[], row: number, column: number): boolean =>
  cells.some(([r, c]) => r === row && c === column);

const range = (from: number, to: number): number[] => Array.from({ length: to - from + 1 }, (_, index) => from + index);

/** Part of a chart whose cells are marked with pointer, touch or keys: arrows move, space marks. */
function MarkEntry(props: EntryProps<'mark'>): JSX.Element {
  const shown = () => {
    const { target, from, to, height } = props.problem;
    if (target === 'first-closing-row') return range(1, height);
    // Where a row has to be found, its neighbours stand there too.
    return target === 'colour-in-row' ? range(Math.max(1, from - 2), Math.min(height, to + 2)) : range(from, to);
  };
  const picture = () => props.problem.picture;
  const colourAt = (row: number, column: number) => Number(picture()?.rows[row - 1]?.[column - 1] ?? 0);
  const columns = () => range(1, props.problem.width);
  const [at, setAt] = createSignal<Cell>([0, 1]);
  const place = (): Cell => (shown().includes(at()[0]) ? at() : [shown()[0] ?? 1, 1]);
  /** Which mark a colour has, so that a picture is read without its colours; the ground has none. */
  const markOf = (colour: number) => (colour === picture()?.ground ? undefined : colour);
  const nameAt = (row: number, column: number) => {
    const drawn = picture();
    return drawn ? `, ${drawn.palette[colourAt(row, column)]?.name}` : '';
  };
  const given = (row: number, column: number) => isAmong(listed(props.given, 'cells'), row, column);
  const own = () => (props.given['cells'] ? 'marked' : 'cells');
  const marked = (row: number, column: number) =>
    given(row, column) || isAmong(listed(props.entered, own()), row, column);
  let grid: HTMLTableElement | undefined;

  const toggle = (row: number, column: number) => {
    if (given(row, column)) return;
    const cells = listed(props.entered, own());
    props.onEnter(
      own(),
      marked(row, column) ? cells.filter(([r, c]) => r !== row || c !== column) : [...cells, [row, column]],
    );
  };
  const move = (event: KeyboardEvent) => {
    const step = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] }[event.key];
    if (!step) return;
    event.preventDefault();
    const rows = shown();
    const row = Math.min(rows.at(-1) ?? 1, Math.max(rows[0] ?? 1, place()[0] + (step[0] ?? 0)));
    const column = Math.min(props.problem.width, Math.max(1, place()[1] + (step[1] ?? 0)));
    setAt([row, column]);
    grid?.querySelector<HTMLButtonElement>(`[data-cell="${row}-${column}"]`)?.focus();
  };
  /** Which way a checked cell was judged; its own word, for it must not be told by colour alone. */
  const state = (row: number, column: number) => {
    const result = props.judged?.fields[`row-${row}`];
    return result?.extra?.includes(column) ? 'extra' : result?.right?.includes(column) ? 'right' : undefined;
  };
  const stateWords = (row: number, column: number) =>
    given(row, column) ? ', marked already' : state(row, column) === 'extra' ? ', marked by mistake' : '';

  return (
    <div class="mark-entry">
      <div class="mark-scroll">
        <table
          class="mark-grid"
          style={{ '--columns': props.problem.width }}
          ref={grid}
          onKeyDown={move}
          // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose cells are walked with arrow keys is a grid
          role="grid"
          aria-label="Chart to mark"
        >
          <tbody>
            <For each={shown()}>
              {(row) => (
                <tr>
                  <th scope="row">{row}</th>
                  <For each={columns()}>
                    {(column) => (
                      // biome-ignore lint/a11y/useFocusableInteractive: its button takes the focus
                      <td
                        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a cell of that grid
                        role="gridcell"
                        aria-selected={marked(row, column)}
                        data-mark={picture() && markOf(colourAt(row, column))}
                        style={{ '--thread': picture()?.palette[colourAt(row, column)]?.colour }}
                      >
                        <button
                          data-needs-script
                          type="button"
                          data-cell={`${row}-${column}`}
                          data-state={state(row, column)}
                          aria-pressed={marked(row, column)}
                          data-given={given(row, column) ? '' : undefined}
                          aria-disabled={given(row, column) ? 'true' : undefined}
                          aria-label={`row ${row}, column ${column}${nameAt(row, column)}${stateWords(row, column)}`}
                          tabindex={place()[0] === row && place()[1] === column ? 0 : -1}
                          onFocus={() => setAt([row, column])}
                          onClick={() => toggle(row, column)}
                        />
                      </td>
                    )}
                  </For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <Show when={picture()}>
        {(drawn) => (
          <ul class="mark-colours">
            <For each={drawn().palette}>
              {({ name, colour }, index) => (
                <li>
                  <span class="mark-swatch" data-mark={markOf(index())} style={{ '--thread': colour }} /> {name}
                </li>
              )}
            </For>
          </ul>
        )}
      </Show>
      <ul class="mark-say">
        <For each={shown()}>
          {(row) => {
            const say = () => {
              const judged = props.judged?.fields[`row-${row}`];
              return judged && judged.verdict !== 'right'
                ? `${fieldLabel(props.problem, `row-${row}`)}: ${verdicts.part()?.verdictWords(props.problem, `row-${row}`, judged)}`
                : '';
            };
            return (
              <Show when={say()}>
                <li>{say()}</li>
              </Show>
            );
          }}
        </For>
      </ul>
    </div>
  );
}

export const view: KindView<'mark'> = {
  kind: 'mark',
  ...lateJudge<'mark'>(() => import('../../solver/exercises/mark/judge.ts')),
  answer: (entered, given) => {
    const marked = listed(entered, 'marked');
    // What was given is no try by itself.
    return { cells: given?.['cells'] && marked.length === 0 ? [] : [...listed(entered, 'cells'), ...marked] };
  },
  missed,
  Entry: MarkEntry,
};

export const MarkExercise = (props: ExerciseProps<'mark'>): JSX.Element => <ExerciseFrame asked={props} view={view} />;
