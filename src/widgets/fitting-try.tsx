import { createEffect, createMemo, createSignal, For, type JSX, Show } from 'solid-js';
import { bar } from '../figures/bar.ts';
import { showFigure } from '../figures/show.ts';
import { CAPACITIES, type FitInput, fitPiece, ODD_METHODS, WIDTHS } from '../solver/fit.ts';
import type { OddMethod } from '../solver/piece.ts';
import { wholeNumberProblem } from '../solver/problem.ts';
import { choiceWord } from '../words/fields.ts';
import { barWords } from '../words/figure-words.ts';
import { fitStepSum, fitStepWords } from '../words/fit-steps.ts';
import { fitWords } from '../words/fit-words.ts';
import { problemWords } from '../words/problems.ts';
import { Choice } from './choice.tsx';
import { DrawnPlate } from './drawn-plate.tsx';
import { useReading } from './reading.ts';
import { WholeNumber } from './whole-number.tsx';

interface Props {
  id: string;
  example: FitInput & { readonly height: number };
}

type Stage = 'capacity' | 'shared' | 'fitted';
const STAGES: Readonly<Record<Stage, string>> = {
  capacity: 'every place taken',
  shared: 'spare strings shared',
  fitted: 'the answer',
};

const STAGE_CAPTIONS: Readonly<Record<Stage, string>> = {
  capacity: 'Every place of the bar is taken; the others find none.',
  shared: 'Half of the spare strings on each side, before anything is borrowed.',
  fitted: 'The answer: every string belongs to a fold.',
};

/** Any ring with any chart: the sum step by step, in words and as a drawing of bar and sides. */
export function FittingTry(props: Props): JSX.Element {
  const reading = useReading(props.example);
  const [width, setWidth] = createSignal<number | string>(props.example.width);
  const [capacity, setCapacity] = createSignal<number | string>(props.example.capacity);
  const [oddMethod, setOddMethod] = createSignal<OddMethod>('lone-string');
  const [stage, setStage] = createSignal<Stage>('fitted');
  createEffect(() => {
    setWidth(reading().width);
    setCapacity(reading().capacity);
    setOddMethod(reading().oddMethod ?? 'lone-string');
  });

  const startSide = () => reading().startSide ?? 'left';
  const result = createMemo(() =>
    fitPiece({
      width: width() as number,
      capacity: capacity() as number,
      oddMethod: oddMethod(),
      startSide: startSide(),
      maxBundle: reading().maxBundle,
    }),
  );
  const fitted = () => {
    const found = result();
    return found.ok ? found : null;
  };
  const problem = () => {
    const found = result();
    return found.ok ? null : found.problem;
  };
  const working = () => {
    const found = result();
    return found.ok ? found.working : 'working' in found.problem ? found.problem.working : [];
  };
  const faulty = (field: string, value: number | string, range: { low: number; high: number }) => {
    const wrong = wholeNumberProblem(field, value, range);
    return wrong ? problemWords(wrong) : undefined;
  };

  return (
    <div class="fitting-try">
      <div class="fields" data-needs-script>
        <WholeNumber
          label="The bar takes"
          unit="columns"
          value={capacity()}
          {...CAPACITIES}
          problem={faulty('capacity', capacity(), CAPACITIES)}
          onValue={setCapacity}
        />
        <WholeNumber
          label="The chart is wide"
          unit="columns"
          value={width()}
          {...WIDTHS}
          problem={faulty('width', width(), WIDTHS)}
          onValue={setWidth}
        />
        <Show when={typeof width() === 'number' && Number(width()) % 2 === 1}>
          <Choice legend="The odd string is" choices={ODD_METHODS} value={oddMethod()} words={choiceWord} onValue={setOddMethod} />
        </Show>
      </div>
      <Show when={fitted()}>
        {(found) => (
          <>
            <div data-needs-script>
              <Choice
                legend="Show"
                choices={['capacity', 'shared', 'fitted'] as const}
                value={stage()}
                words={(each) => STAGES[each]}
                onValue={setStage}
              />
            </div>
            <DrawnPlate
              drawn={showFigure(
                bar,
                { fit: found().fit, startSide: startSide() },
                { stage: stage() },
                { id: `${props.id}-bar`, words: barWords },
              )}
              caption={STAGE_CAPTIONS[stage()]}
            />
            <output class="answer" aria-live="polite">
              <p>
                <strong>{fitWords(found().fit)}.</strong>
              </p>
            </output>
          </>
        )}
      </Show>
      <Show when={problem()}>
        {(found) => (
          <Show when={found().code === 'bundle-too-big' || found().code === 'too-narrow'}>
            <output class="answer" aria-live="polite">
              <p class="must-do">{problemWords(found())}</p>
            </output>
          </Show>
        )}
      </Show>
      <ol class="working">
        <For each={working()}>
          {(step) => (
            <li>
              <Show when={fitStepSum(step)}>
                <span class="sum">{fitStepSum(step)}</span>
              </Show>{' '}
              {fitStepWords(step)}
            </li>
          )}
        </For>
      </ol>
    </div>
  );
}
