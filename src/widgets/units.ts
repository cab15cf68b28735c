import { type Accessor, createSignal, onCleanup, onMount } from 'solid-js';
import type { UnitSystem } from '../words/units.ts';

/** The units that lengths on the page are shown in; metric while it is built. */
export function useUnits(): Accessor<UnitSystem> {
  const [units, setUnits] = createSignal<UnitSystem>('metric');
  onMount(() => {
    const page = document.documentElement;
    const follow = () => setUnits(page.dataset['units'] === 'inches' ? 'inches' : 'metric');
    follow();
    const watching = new MutationObserver(follow);
    watching.observe(page, { attributeFilter: ['data-units'] });
    onCleanup(() => watching.disconnect());
  });
  return units;
}
