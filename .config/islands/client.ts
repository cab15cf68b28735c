import type { JSX } from 'solid-js';
import { createComponent, hydrate } from 'solid-js/web';

type Widget = (props: Record<string, unknown>) => JSX.Element;

/** What Solid's own script in the page would set up; here, no page has to hold it. */
const HYDRATION = { events: [], completed: new WeakSet(), r: {}, fe() {} };

/** Wakes an island: its markup stands there already, and stays. */
export default (element: HTMLElement) => (component: Widget, props: Record<string, unknown>) => {
  if (!element.hasAttribute('ssr')) return;
  Object.assign(globalThis, { _$HY: (globalThis as { _$HY?: unknown })._$HY ?? HYDRATION });
  const renderId = element.dataset['solidRenderId'] ?? '';
  const dispose = hydrate(() => createComponent(component, props), element, { renderId });
  element.addEventListener('astro:unmount', dispose, { once: true });
};
