import { type JSX, Show } from 'solid-js';
import { outline } from '../figures/outline.ts';
import { showFigure } from '../figures/show.ts';
import { type PlanInput, planPiece } from '../solver/plan.ts';
import { outlineFigureWords } from '../words/figures/outline.ts';
import { DrawnPlate } from './drawn-plate.tsx';
import { createProblemWords } from './problem-words.ts';

interface Props {
  id: string;
  input: PlanInput;
}

/** The outline of a piece with its bundles, and the same in words; or what keeps it from being made. */
export function OutlinesResult(props: Props): JSX.Element {
  const planned = () => planPiece(props.input);
  const plan = () => {
    const made = planned();
    return made.ok ? made : null;
  };
  /** A piece that is planned all the same may still have something to be told. */
  const problem = createProblemWords(() => {
    const made = planned();
    return made.ok ? (made.outline.problem ?? null) : made.problem;
  });
  const drawn = () => {
    const made = plan();
    return (
      made && showFigure(outline, made, { show: 'bundles' }, { id: `${props.id}-outline`, words: outlineFigureWords })
    );
  };
  return (
    <>
      <Show when={drawn()}>
        {(shown) => <DrawnPlate drawn={shown()} caption={shown().steps.slice(0, -1).join(' ')} />}
      </Show>
      <Show when={problem()}>
        <p class="must-do">{problem()}</p>
      </Show>
    </>
  );
}
