import { createEffect, createSignal, type JSX, Show } from 'solid-js';
import type { PlanInput } from '../solver/plan.ts';
import type { Range } from '../solver/problem.ts';
import { createLivePart } from './live-part.ts';
import { useReading } from './reading.ts';
import { WholeNumber } from './whole-number.tsx';

interface Props {
  /** The page holds the result for the example in an element of this id, with `-built` behind it. */
  id: string;
  example: PlanInput;
  /** Id of the example's chart in the index. */
  chart: string | null;
}

/** Plain rows and columns to add; both ends count. */
const ROWS: Range = { low: 0, high: 8 };
const COLUMNS: Range = { low: 0, high: 4 };

/** Moves a picture about on its chart. What draws it is fetched at the first change; until then the page has it. */
export function PlacingTry(props: Props): JSX.Element {
  const reading = useReading(props.example);
  const [above, setAbove] = createSignal<number | string>(0);
  const [below, setBelow] = createSignal<number | string>(0);
  const [sides, setSides] = createSignal<number | string>(0);
  const result = createLivePart(`${props.id}-built`, () =>
    import('./placing-result.tsx').then(({ PlacingResult }) => PlacingResult),
  );
  createEffect(() => {
    if (above() !== 0 || below() !== 0 || sides() !== 0 || reading() !== props.example) result.wake();
  });
  const within = (value: number | string, { low, high }: Range): number =>
    typeof value === 'number' ? Math.min(high, Math.max(low, value)) : low;
  return (
    <div class="placing-try">
      <div class="fields" data-needs-script>
        <WholeNumber label="Plain rows above" value={above()} range={ROWS} onValue={setAbove} />
        <WholeNumber label="Plain rows below" value={below()} range={ROWS} onValue={setBelow} />
        <WholeNumber label="Plain columns on each side" value={sides()} range={COLUMNS} onValue={setSides} />
      </div>
      <div aria-live="polite">
        <Show when={result.part()}>
          {(part) => {
            const Result = part();
            return (
              <Result
                id={props.id}
                input={reading()}
                chart={reading() === props.example ? props.chart : undefined}
                margins={{
                  rowsAbove: within(above(), ROWS),
                  rowsBelow: within(below(), ROWS),
                  columnsLeft: within(sides(), COLUMNS),
                  columnsRight: within(sides(), COLUMNS),
                }}
              />
            );
          }}
        </Show>
      </div>
    </div>
  );
}
