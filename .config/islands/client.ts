import { type JSX, sharedConfig } from 'solid-js';
import { createComponent, hydrate } from 'solid-js/web';

type Widget = (props: Record<string, unknown>) => JSX.Element;

/** What Solid's own script in the page would set up; here, no page has to hold it. */
const HYDRATION = { events: [], completed: new WeakSet(), r: {}, fe() {} };

/**
 * Solid takes hydration as over at the first event, and draws every island that wakes later anew: focus and typed text
 * would be lost. Ours wake one by one, so it is never over.
 * It can go when Solid no longer ends hydration for the whole page (solid-js/web, `eventHandler`).
 */
const neverDone = (holder: object): void => {
  Object.defineProperty(holder, 'done', { get: () => false, set() {}, configurable: true });
};

/** Wakes an island: its markup stands there already, and stays. */
export default (element: HTMLElement) => (component: Widget, props: Record<string, unknown>) => {
  if (!element.hasAttribute('ssr')) return;
  if (!('_$HY' in globalThis)) {
    Object.assign(globalThis, { _$HY: HYDRATION });
    neverDone(HYDRATION);
    neverDone(sharedConfig);
  }
  const renderId = element.dataset['solidRenderId'] ?? '';
  const dispose = hydrate(() => createComponent(component, props), element, { renderId });
  element.addEventListener('astro:unmount', dispose, { once: true });
};
