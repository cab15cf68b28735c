import { createEffect, For, type JSX, Show } from 'solid-js';
import { row as rowFigure } from '../figures/row.ts';
import { showFigure } from '../figures/show.ts';
import { type PlanInput, planPiece } from '../solver/plan.ts';
import { rowFigureWords } from '../words/figures/row.ts';
import { rowSummary, rowWords } from '../words/row-words.ts';
import { DrawnPlate } from './drawn-plate.tsx';
import { createProblemWords } from './problem-words.ts';
import { firstRow, type RowStart, type RowsSize } from './rows-start.ts';

interface Props {
  id: string;
  input: PlanInput;
  row: number;
  /** Knots of it that are tied; null: all. */
  knot: number | null;
  from: RowStart;
  /** Tells how many rows and knots there are to walk, so that the sliders end where the piece does. */
  onSize?: (size: RowsSize) => void;
}

/** One row of a piece, tied as far as asked: what moves first, which knots, and where the leading string is. */
export function RowsResult(props: Props): JSX.Element {
  const planned = () => planPiece(props.input);
  const plan = () => {
    const made = planned();
    return made.ok ? made : null;
  };
  const problem = createProblemWords(() => {
    const made = planned();
    return made.ok ? null : made.problem;
  });
  const rows = () => plan()?.rows ?? [];
  /** A piece with fewer rows than the one walked before ends with its own last row. */
  const at = () => Math.min(props.row, rows().length);
  const current = () => rows()[at() - 1];
  const tied = () => Math.min(props.knot ?? Number.POSITIVE_INFINITY, current()?.knots ?? 0);
  createEffect(() => {
    const made = plan();
    if (made)
      props.onSize?.({ rows: made.rows.length, knots: current()?.knots ?? 0, first: firstRow(made, props.from) });
  });
  return (
    <Show when={plan()} fallback={<p class="must-do">{problem()}</p>}>
      {(made) => (
        <Show when={current()}>
          {(now) => (
            <>
              <p class="row-head">{rowSummary(now())}</p>
              <DrawnPlate
                drawn={showFigure(
                  rowFigure,
                  made(),
                  { row: at(), knot: tied() },
                  { id: `${props.id}-row`, words: rowFigureWords },
                )}
                caption={`Row ${at()}, with ${tied()} of ${now().knots} knots tied.`}
              />
              <ol class="row-lines">
                <For each={rowWords({ row: now(), before: rows()[at() - 2], fit: made().fit })}>
                  {(line) => <li>{line.text}</li>}
                </For>
              </ol>
            </>
          )}
        </Show>
      )}
    </Show>
  );
}
