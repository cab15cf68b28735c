import { createEffect, createMemo, createSignal, createUniqueId, For, type JSX, Show } from 'solid-js';
import { row as rowFigure } from '../figures/row.ts';
import { showFigure } from '../figures/show.ts';
import { type PlanInput, planPiece } from '../solver/plan.ts';
import { rowFigureWords } from '../words/figure-words.ts';
import { rowSummary, rowWords } from '../words/row-words.ts';
import { problemWords } from '../words/problems.ts';
import { DrawnPlate } from './drawn-plate.tsx';
import { useReading } from './reading.ts';

interface Props {
  id: string;
  example: PlanInput;
  /** Where the walk begins. */
  from?: 'start' | 'opening' | 'closing';
}

/** Walk a piece row by row and knot by knot: what moves first, which knots, and where the leading string is. */
export function RowsTry(props: Props): JSX.Element {
  const id = createUniqueId();
  const input = useReading(props.example);
  const planned = createMemo(() => planPiece(input()));
  const plan = () => {
    const made = planned();
    return made.ok ? made : null;
  };
  const rows = () => plan()?.rows ?? [];
  const first = () => (props.from === 'closing' ? (plan()?.outline.firstClosingRow ?? rows().length) : props.from === 'opening' ? 2 : 1);
  const [row, setRow] = createSignal(Math.min(first(), rows().length));
  const [knot, setKnot] = createSignal<number | null>(null);
  createEffect((before: unknown) => {
    const now = plan();
    if (before !== undefined && now !== before) to(first());
    return now;
  });

  const current = () => rows()[row() - 1];
  const tied = () => knot() ?? current()?.knots ?? 0;
  const to = (wanted: number) => {
    setRow(Math.min(rows().length, Math.max(1, wanted)));
    setKnot(null);
  };
  /** One knot on; after the last, the next row. */
  const next = () => {
    const knots = current()?.knots ?? 0;
    if (tied() < knots) setKnot(tied() + 1);
    else if (row() < rows().length) {
      setRow(row() + 1);
      setKnot(0);
    }
  };
  const back = () => {
    if (tied() > 0) setKnot(tied() - 1);
    else if (row() > 1) to(row() - 1);
  };

  return (
    <div class="rows-try">
      <Show when={plan()} fallback={<p>{(() => { const made = planned(); return made.ok ? '' : problemWords(made.problem); })()}</p>}>
        {(made) => (
          <Show when={current()}>
            {(now) => (
              <>
                <output class="row-now" aria-live="polite">
                  <p class="row-head">{rowSummary(now())}</p>
                </output>
                <DrawnPlate
                  drawn={showFigure(rowFigure, made(), { row: row(), knot: tied() }, { id: `${props.id}-row`, words: rowFigureWords })}
                  caption={`Row ${row()}, with ${tied()} of ${now().knots} knots tied.`}
                />
                <div class="walk" data-needs-script>
                  <label for={`${id}-row`}>Row</label>
                  <input id={`${id}-row`} type="range" min="1" max={rows().length} value={row()} onInput={(event) => to(Number(event.currentTarget.value))} />
                  <label for={`${id}-knot`}>Knots tied</label>
                  <input id={`${id}-knot`} type="range" min="0" max={now().knots} value={tied()} onInput={(event) => setKnot(Number(event.currentTarget.value))} />
                  <div class="steps">
                    <button type="button" onClick={() => to(row() - 1)} disabled={row() === 1}>
                      Row before
                    </button>
                    <button type="button" onClick={back} disabled={row() === 1 && tied() === 0}>
                      Knot back
                    </button>
                    <button type="button" onClick={next} disabled={row() === rows().length && tied() === now().knots}>
                      Next knot
                    </button>
                    <button type="button" onClick={() => to(row() + 1)} disabled={row() === rows().length}>
                      Next row
                    </button>
                  </div>
                </div>
                <ol class="row-lines">
                  <For each={rowWords({ row: now(), before: rows()[row() - 2], fit: made().fit })}>{(line) => <li>{line.text}</li>}</For>
                </ol>
              </>
            )}
          </Show>
        )}
      </Show>
    </div>
  );
}
