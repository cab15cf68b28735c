import { createEffect, createSignal, type JSX, Show } from 'solid-js';
import type { PlanInput } from '../solver/plan.ts';
import { wholeNumberProblem } from '../solver/problem.ts';
import { createLivePart } from './live-part.ts';
import { createProblemWords } from './problem-words.ts';
import { useReading } from './reading.ts';
import { WholeNumber } from './whole-number.tsx';

interface Props {
  /** The page holds the outline of the example in an element of this id, with `-built` behind it. */
  id: string;
  example: PlanInput;
}

/** As far as a shape can be told from its neighbours at a glance; both ends count. */
const STEPS = { low: 1, high: 4 } as const;
const BUNDLES = { low: 1, high: 12 } as const;

/** Any steps and any end for one piece. What plans and draws it is fetched at the first change. */
export function OutlinesTry(props: Props): JSX.Element {
  const reading = useReading(props.example);
  const [opening, setOpening] = createSignal<number | string>(props.example.openingStep ?? 1);
  const [closing, setClosing] = createSignal<number | string>(props.example.closingStep ?? 1);
  /** Empty until somebody chooses: each side then closes to what was mounted. */
  const [bundle, setBundle] = createSignal<number | string>(props.example.closingBundle ?? '');
  const fault = (field: string, value: () => number | string, range: { low: number; high: number }) =>
    createProblemWords(() => wholeNumberProblem(field, value(), range));
  const openingFault = fault('openingStep', opening, STEPS);
  const closingFault = fault('closingStep', closing, STEPS);
  const bundleFault = createProblemWords(() =>
    bundle() === '' ? null : wholeNumberProblem('closingBundle', bundle(), BUNDLES),
  );
  const result = createLivePart(`${props.id}-built`, () =>
    import('./outlines-result.tsx').then(({ OutlinesResult }) => OutlinesResult),
  );
  let read = props.example;
  createEffect(() => {
    const now = reading();
    if (now === read) return;
    read = now;
    setOpening(now.openingStep ?? 1);
    setClosing(now.closingStep ?? 1);
    setBundle(now.closingBundle ?? '');
  });
  /** Something was changed, perhaps before the script arrived. */
  createEffect(() => {
    const { openingStep = 1, closingStep = 1, closingBundle = '' } = props.example;
    const same = opening() === openingStep && closing() === closingStep && bundle() === closingBundle;
    if (!same || reading() !== props.example) result.wake();
  });
  const input = (): PlanInput => ({
    ...reading(),
    openingStep: opening() as number,
    closingStep: closing() as number,
    closingBundle: bundle() === '' ? undefined : (bundle() as number),
  });
  return (
    <div class="outlines-try">
      <div class="fields" data-needs-script>
        <WholeNumber
          label="A string comes out every"
          unit={opening() === 1 ? 'row' : 'rows'}
          value={opening()}
          range={STEPS}
          problem={openingFault()}
          onValue={setOpening}
        />
        <WholeNumber
          label="A string goes in every"
          unit={closing() === 1 ? 'row' : 'rows'}
          value={closing()}
          range={STEPS}
          problem={closingFault()}
          onValue={setClosing}
        />
        <WholeNumber
          label="Bundles in the last row"
          unit={bundle() === '' ? 'as in row 1' : bundle() === 1 ? 'string' : 'strings'}
          value={bundle()}
          range={BUNDLES}
          problem={bundleFault()}
          onValue={setBundle}
        />
      </div>
      <div aria-live="polite">
        <Show when={result.part()}>
          {(part) => {
            const Result = part();
            return <Result id={props.id} input={input()} />;
          }}
        </Show>
      </div>
    </div>
  );
}
