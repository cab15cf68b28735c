import { createEffect, createSignal, createUniqueId, type JSX, on, Show } from 'solid-js';
import type { PlanInput } from '../solver/plan.ts';
import { createLivePart } from './live-part.ts';
import { useReading } from './reading.ts';
import type { RowStart, RowsSize } from './rows-start.ts';

interface Props {
  /** The page holds the first row in an element of this id, with `-built` behind it. */
  id: string;
  example: PlanInput;
  from: RowStart;
  /** Of the example. */
  size: RowsSize;
}

/** Walk a piece row by row and knot by knot. What plans and draws the row is fetched at the first step. */
export function RowsTry(props: Props): JSX.Element {
  const id = createUniqueId();
  const reading = useReading(props.example);
  const [size, setSize] = createSignal(props.size);
  const [row, setRow] = createSignal(props.size.first);
  const [knot, setKnot] = createSignal<number | null>(null);
  const result = createLivePart(`${props.id}-built`, () =>
    import('./rows-result.tsx').then(({ RowsResult }) => RowsResult),
  );
  let begun = JSON.stringify(props.example);
  /** Nobody has walked yet with these figures. */
  let fresh = true;
  let knotsTied: HTMLInputElement | undefined;

  const tied = () => Math.min(knot() ?? Number.POSITIVE_INFINITY, size().knots);
  const go = (wanted: number) => {
    setRow(Math.min(size().rows, Math.max(1, wanted)));
    setKnot(null);
  };
  const to = (wanted: number) => {
    fresh = false;
    go(wanted);
  };
  /** One knot on; after the last, the next row. */
  const next = () => {
    fresh = false;
    if (tied() < size().knots) setKnot(tied() + 1);
    else if (row() < size().rows) {
      setRow(row() + 1);
      setKnot(0);
    }
  };
  const back = () => {
    fresh = false;
    if (tied() > 0) setKnot(tied() - 1);
    else if (row() > 1) to(row() - 1);
  };
  /** With other figures the walk begins anew, where the lesson begins it. */
  const measured = (now: RowsSize) => {
    setSize(now);
    const piece = JSON.stringify(reading());
    if (begun !== piece && fresh) go(now.first);
    else if (row() > now.rows) setRow(now.rows);
    begun = piece;
  };
  createEffect(
    on(reading, () => {
      fresh = true;
    }),
  );
  createEffect(() => {
    if (row() !== props.size.first || knot() !== null || reading() !== props.example) result.wake();
  });
  // The browser holds a slider's value to its end of before; the value is set again when the end has moved.
  createEffect(() => {
    const { knots } = size();
    if (knotsTied) knotsTied.value = String(Math.min(tied(), knots));
  });

  return (
    <div class="rows-try">
      <div class="walk" data-needs-script>
        <label for={`${id}-row`}>Row</label>
        <input
          id={`${id}-row`}
          type="range"
          min="1"
          max={size().rows}
          value={row()}
          onInput={(event) => to(Number(event.currentTarget.value))}
        />
        <label for={`${id}-knot`}>Knots tied</label>
        <input
          ref={knotsTied}
          id={`${id}-knot`}
          type="range"
          min="0"
          max={size().knots}
          value={tied()}
          onInput={(event) => {
            fresh = false;
            setKnot(Number(event.currentTarget.value));
          }}
        />
        <div class="steps">
          <button type="button" onClick={() => to(row() - 1)} aria-disabled={row() === 1}>
            Row before
          </button>
          <button type="button" onClick={back} aria-disabled={row() === 1 && tied() === 0}>
            Knot back
          </button>
          <button type="button" onClick={next} aria-disabled={row() === size().rows && tied() === size().knots}>
            Next knot
          </button>
          <button type="button" onClick={() => to(row() + 1)} aria-disabled={row() === size().rows}>
            Next row
          </button>
        </div>
      </div>
      <div aria-live="polite">
        <Show when={result.part()}>
          {(part) => {
            const Result = part();
            return (
              <Result id={props.id} input={reading()} row={row()} knot={knot()} from={props.from} onSize={measured} />
            );
          }}
        </Show>
      </div>
    </div>
  );
}
