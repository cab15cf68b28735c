import { createEffect, createMemo, createSignal, For, type JSX, on } from 'solid-js';
import { type MomentPlan, momentsOf, piecePlate } from '../../figures/piece/index.ts';
import { pieceFigureWords } from '../../words/figures/piece.ts';

interface Props {
  id: string;
  plan: MomentPlan;
  side: 'front' | 'back';
}

/** Two moments of a piece side by side: before and after one step of the technique. */
export function BeforeAfter(props: Props): JSX.Element {
  const moments = createMemo(() => momentsOf(props.plan));
  const steps = () => moments().slice(1);
  const [step, setStep] = createSignal(0);
  createEffect(on(steps, (all) => setStep(Math.min(step(), all.length - 1)), { defer: true }));
  const drawn = createMemo(() =>
    piecePlate(
      props.plan,
      { after: moments()[step()], moment: moments()[step() + 1], side: props.side },
      { id: props.id, words: pieceFigureWords },
    ),
  );
  return (
    <>
      <div class="viewer-moments" innerHTML={drawn().svg} />
      <div class="viewer-work">
        <div class="viewer-steps" data-needs-script>
          <button type="button" onClick={() => setStep(Math.max(0, step() - 1))} aria-disabled={step() === 0}>
            Step before
          </button>
          <button
            type="button"
            onClick={() => setStep(Math.min(steps().length - 1, step() + 1))}
            aria-disabled={step() === steps().length - 1}
          >
            Next step
          </button>
        </div>
        <div aria-live="polite">
          <For each={drawn().steps}>{(sentence) => <p>{sentence}</p>}</For>
        </div>
      </div>
    </>
  );
}
