import { type Accessor, createSignal, onCleanup, onMount } from 'solid-js';
import type { PlanInput } from '../solver/plan.ts';
import { ownReading, subscribeReading } from '../store/reading.ts';

/**
 * The figures a widget is read with: the learner's own when the lesson's switch says so, else the worked example.
 * The page is built with the example, so that is what a widget begins with.
 */
export function useReading(example: PlanInput): Accessor<PlanInput> {
  const [input, setInput] = createSignal(example);
  onMount(() => {
    const follow = () => setInput(ownReading() ?? example);
    follow();
    onCleanup(subscribeReading(follow));
  });
  return input;
}
