import { For, type JSX } from 'solid-js';
import { SAY_POINTS, type SayPoint, type SayProblem } from '../../solver/exercises/say/problem.ts';
import { solution } from '../../solver/exercises/say/solution.ts';
import { SAY_CLAUSES, SAY_STEPS } from '../../words/exercises/steps/say.ts';
import { lineOf } from '../../words/exercises/steps/saying.ts';

/** What marks an explanation, and the model answer. A page fetches it when something was written. */
export { judge } from '../../solver/exercises/say/judge.ts';
export { SAY_OUTCOMES as outcomes } from '../../words/exercises/whole-verdicts.ts';

/** The model answer, and its points to tick off. */
export function ModelAnswer(props: {
  problem: SayProblem;
  ticked: readonly unknown[];
  onTick: (point: SayPoint, on: boolean) => void;
}): JSX.Element {
  const steps = () => solution(props.problem);
  const points = (): readonly SayPoint[] => SAY_POINTS[props.problem.topic];
  const says = (index: number) => {
    const step = steps()[index];
    return step ? SAY_CLAUSES[step.key](step.values) : '';
  };
  return (
    <>
      <p>A maker might say:</p>
      <blockquote>
        {steps()
          .map((step) => lineOf(SAY_STEPS, step).text)
          .join(' ')}
      </blockquote>
      <fieldset class="ticks">
        <legend>Tick what you said too, in your own words.</legend>
        <For each={points()}>
          {(point, index) => (
            <label>
              <input
                type="checkbox"
                checked={props.ticked.includes(point)}
                onChange={(event) => props.onTick(point, event.currentTarget.checked)}
              />
              <span>I said that {says(index())}.</span>
            </label>
          )}
        </For>
      </fieldset>
    </>
  );
}
