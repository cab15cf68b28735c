import { type JSX, Show } from 'solid-js';
import { bar } from '../figures/bar.ts';
import { showFigure } from '../figures/show.ts';
import { type FitInput, type FitResult, fitPiece } from '../solver/fit.ts';
import type { Fit } from '../solver/piece.ts';
import { barWords } from '../words/figures/bar.ts';
import { fitWorking } from '../words/fit-steps.ts';
import { fitWords } from '../words/fit-words.ts';
import { DrawnPlate } from './drawn-plate.tsx';
import type { Stage } from './fitting-try.tsx';
import { createProblemWords } from './problem-words.ts';
import { Working, type WorkingLine } from './working-list.tsx';

interface Props {
  id: string;
  input: FitInput;
  stage: Stage;
}

const CAPTIONS: Readonly<Record<Stage, string>> = {
  capacity: 'Every place that can be used is taken. Strings left over are spare.',
  shared: 'Half of the spare strings on each side, before anything is borrowed.',
  fitted: 'The answer: every string belongs to a fold.',
};

/** What is drawn, in a sentence; a lone string is no part of a fold. */
const captionOf = (stage: Stage, { loneStrings }: Fit): string =>
  stage === 'fitted' && loneStrings > 0
    ? 'The answer: every string but the lone one belongs to a fold.'
    : CAPTIONS[stage];

const workingOf = (result: FitResult): readonly WorkingLine[] =>
  fitWorking(result.ok ? result.working : 'working' in result.problem ? result.problem.working : []);

/** The sum for one ring and one chart: drawn, answered, and worked step by step. */
export function FittingResult(props: Props): JSX.Element {
  const result = () => fitPiece(props.input);
  const fit = () => {
    const found = result();
    return found.ok ? found.fit : null;
  };
  /** Figures that are in order, and still make no piece. Those that are not are said beside their field. */
  const unmakeable = createProblemWords(() => {
    const found = result();
    return !found.ok && 'working' in found.problem ? found.problem : null;
  });
  return (
    <>
      <Show when={fit()}>
        {(made) => (
          <>
            <DrawnPlate
              drawn={showFigure(
                bar,
                { fit: made(), startSide: props.input.startSide ?? 'left' },
                { stage: props.stage },
                { id: `${props.id}-bar`, words: barWords },
              )}
              caption={captionOf(props.stage, made())}
            />
            <p>
              <strong>{fitWords(made())}.</strong>
            </p>
          </>
        )}
      </Show>
      <Show when={unmakeable()}>
        <p class="must-do">{unmakeable()}</p>
      </Show>
      <Working steps={workingOf(result())} />
    </>
  );
}
