import { createEffect, createSignal, type JSX, Show } from 'solid-js';
import type { FitInput } from '../solver/fit.ts';
import type { OddMethod } from '../solver/piece.ts';
import { wholeNumberProblem } from '../solver/problem.ts';
import { CAPACITIES, ODD_METHODS, WIDTHS } from '../solver/ranges.ts';
import { choiceWord } from '../words/choices.ts';
import { Choice } from './choice.tsx';
import { createLivePart } from './live-part.ts';
import { createProblemWords } from './problem-words.ts';
import { useReading } from './reading.ts';
import { WholeNumber } from './whole-number.tsx';

interface Props {
  /** The page holds the result for the example in an element of this id, with `-built` behind it. */
  id: string;
  example: FitInput & { readonly height: number };
}

const STAGES = ['capacity', 'shared', 'fitted'] as const;
export type Stage = (typeof STAGES)[number];
const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  capacity: 'every place taken',
  shared: 'spare strings shared',
  fitted: 'the answer',
};

/** Any ring with any chart. What draws and works the sum is fetched at the first change; until then the page has it. */
export function FittingTry(props: Props): JSX.Element {
  const reading = useReading(props.example);
  const [width, setWidth] = createSignal<number | string>(props.example.width);
  const [capacity, setCapacity] = createSignal<number | string>(props.example.capacity);
  const [oddMethod, setOddMethod] = createSignal<OddMethod>(props.example.oddMethod ?? 'lone-string');
  const [stage, setStage] = createSignal<Stage>('fitted');
  const capacityFault = createProblemWords(() => wholeNumberProblem('capacity', capacity(), CAPACITIES));
  const widthFault = createProblemWords(() => wholeNumberProblem('width', width(), WIDTHS));
  const result = createLivePart(`${props.id}-built`, () =>
    import('./fitting-result.tsx').then(({ FittingResult }) => FittingResult),
  );
  let read = props.example;
  createEffect(() => {
    const now = reading();
    if (now === read) return;
    read = now as typeof read;
    setWidth(now.width);
    setCapacity(now.capacity);
    setOddMethod(now.oddMethod ?? 'lone-string');
  });
  /** Something was changed, perhaps before the script arrived. */
  createEffect(() => {
    const { example } = props;
    const same = width() === example.width && capacity() === example.capacity && stage() === 'fitted';
    if (!same || oddMethod() !== (example.oddMethod ?? 'lone-string')) result.wake();
  });

  const input = (): FitInput => ({
    width: width() as number,
    capacity: capacity() as number,
    oddMethod: oddMethod(),
    startSide: reading().startSide,
    maxBundle: reading().maxBundle,
  });
  return (
    <div class="fitting-try">
      <div data-needs-script>
        <div class="fields">
          <WholeNumber
            label="The bar takes"
            unit="columns"
            value={capacity()}
            range={CAPACITIES}
            problem={capacityFault()}
            onValue={setCapacity}
          />
          <WholeNumber
            label="The chart is wide"
            unit="columns"
            value={width()}
            range={WIDTHS}
            problem={widthFault()}
            onValue={setWidth}
          />
        </div>
        <Show when={typeof width() === 'number' && Number(width()) % 2 === 1}>
          <Choice
            legend="The odd string is"
            choices={ODD_METHODS}
            value={oddMethod()}
            words={choiceWord}
            onValue={setOddMethod}
          />
        </Show>
        <Choice legend="Show" choices={STAGES} value={stage()} words={(each) => STAGE_WORDS[each]} onValue={setStage} />
      </div>
      <div aria-live="polite">
        <Show when={result.part()}>
          {(part) => {
            const Result = part();
            return <Result id={props.id} input={input()} stage={stage()} />;
          }}
        </Show>
      </div>
    </div>
  );
}
