import { createEffect, createSignal, type JSX, Show } from 'solid-js';
import type { PlanInput } from '../solver/plan.ts';
import { measureProblem, type Range } from '../solver/problem.ts';
import type { ThreadKind } from '../solver/thread/thread.ts';
import { Choice } from './choice.tsx';
import { createLivePart } from './live-part.ts';
import type { MeasuringInches } from './measuring-inches.tsx';
import { createProblemWords } from './problem-words.ts';
import { useReading } from './reading.ts';
import { useUnits } from './units.ts';
import { WholeNumber } from './whole-number.tsx';

interface Props {
  /** The page holds the result for the example in an element of this id, with `-built` behind it. */
  id: string;
  example: PlanInput;
  /** What was measured of the example's ring: the bar and ten turns in mm, and the cord. */
  measured: Measures;
}

/** A bar and a cord as they are measured at the table. */
export interface Measures {
  /** mm. */
  readonly barWidth: number;
  /** mm that ten turns take. */
  readonly tenTurns: number;
  readonly kind: ThreadKind;
}

/** Both ends count; in mm. */
const BARS: Range = { low: 1, high: 1000 };
const TURNS: Range = { low: 2, high: 100 };
const KINDS = ['soft', 'firm'] as const;
const KIND_WORDS: Readonly<Record<ThreadKind, string>> = { soft: 'soft floss', firm: 'firm cord' };

/** Any bar with any cord. What draws the range is fetched at the first change; until then the page has it. */
export function MeasuringTry(props: Props): JSX.Element {
  const reading = useReading(props.example);
  const [barWidth, setBarWidth] = createSignal<number | string>(props.measured.barWidth);
  const [tenTurns, setTenTurns] = createSignal<number | string>(props.measured.tenTurns);
  const [kind, setKind] = createSignal<ThreadKind>(props.measured.kind);
  const barFault = createProblemWords(() => measureProblem('barWidth', barWidth(), BARS));
  const turnsFault = createProblemWords(() => measureProblem('tenTurns', tenTurns(), TURNS));
  const result = createLivePart(`${props.id}-built`, () =>
    import('./measuring-result.tsx').then(({ MeasuringResult }) => MeasuringResult),
  );
  createEffect(() => {
    const { measured } = props;
    const same = barWidth() === measured.barWidth && tenTurns() === measured.tenTurns && kind() === measured.kind;
    if (!same || reading() !== props.example) result.wake();
  });
  const units = useUnits();
  const [inInches, setInInches] = createSignal<{ readonly Fields: typeof MeasuringInches } | null>(null);
  createEffect(() => {
    if (units() === 'inches' && !inInches())
      void import('./measuring-inches.tsx').then(({ MeasuringInches: Fields }) => setInInches({ Fields }));
  });
  const inches = () => (units() === 'inches' ? inInches() : null);
  const usable = (): Measures | null =>
    measureProblem('barWidth', barWidth(), BARS) || measureProblem('tenTurns', tenTurns(), TURNS)
      ? null
      : { barWidth: Number(barWidth()), tenTurns: Number(tenTurns()), kind: kind() };
  return (
    <div class="measuring-try">
      <div data-needs-script>
        <div class="fields">
          <Show
            when={inches()}
            fallback={
              <>
                <WholeNumber
                  label="The bar is wide"
                  unit="mm"
                  value={barWidth()}
                  range={BARS}
                  problem={barFault()}
                  onValue={setBarWidth}
                />
                <WholeNumber
                  label="Ten turns take"
                  unit="mm"
                  value={tenTurns()}
                  range={TURNS}
                  problem={turnsFault()}
                  onValue={setTenTurns}
                />
              </>
            }
          >
            {(part) => {
              const { Fields } = part();
              return (
                <Fields
                  barWidth={usable()?.barWidth ?? props.measured.barWidth}
                  tenTurns={usable()?.tenTurns ?? props.measured.tenTurns}
                  bars={BARS}
                  turns={TURNS}
                  onBarWidth={setBarWidth}
                  onTenTurns={setTenTurns}
                />
              );
            }}
          </Show>
        </div>
        <Choice
          legend="The cord is"
          choices={KINDS}
          value={kind()}
          words={(each) => KIND_WORDS[each]}
          onValue={setKind}
        />
      </div>
      <div aria-live="polite">
        <Show when={result.part()}>
          {(part) => {
            const Result = part();
            return (
              <Show when={usable()}>
                {(measures) => <Result id={props.id} input={reading()} measures={measures()} />}
              </Show>
            );
          }}
        </Show>
      </div>
    </div>
  );
}
