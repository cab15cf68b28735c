import { type JSX, Show } from 'solid-js';
import { capacityRange } from '../figures/capacity-range.ts';
import { showFigure } from '../figures/show.ts';
import { fitPiece } from '../solver/fit.ts';
import type { PlanInput } from '../solver/plan.ts';
import { eachOf } from '../solver/thread/columns.ts';
import { capacityRangeFigureWords } from '../words/figures/capacity-range.ts';
import { fitWords } from '../words/fit-words.ts';
import { DrawnPlate } from './drawn-plate.tsx';
import type { Measures } from './measuring-try.tsx';

interface Props {
  id: string;
  input: PlanInput;
  measures: Measures;
}

/** What a bar takes of a cord, as a range, and whether the plan of the piece can be tied on all of it. */
export function MeasuringResult(props: Props): JSX.Element {
  const fit = () => {
    const made = fitPiece(props.input);
    return made.ok ? made.fit : null;
  };
  return (
    <Show when={fit()}>
      {(made) => (
        <>
          <DrawnPlate
            drawn={showFigure(
              capacityRange,
              { fit: made() },
              {
                thread: { diameter: eachOf(10, props.measures.tenTurns), kind: props.measures.kind },
                barWidth: props.measures.barWidth,
                plan: true,
              },
              { id: `${props.id}-range`, words: capacityRangeFigureWords },
            )}
            caption="Columns of knots on the bar, as wide as they may come out, as is likely, and as narrow as they may. These are estimates."
          />
          <p>
            <strong>{fitWords(made())}.</strong>
          </p>
        </>
      )}
    </Show>
  );
}
