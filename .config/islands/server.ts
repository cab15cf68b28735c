import type { JSX } from 'solid-js';
import { createComponent, renderToString } from 'solid-js/web';

type Widget = (props: Record<string, unknown>) => JSX.Element;

/** Islands of one page are told apart by their number; every string of an island's ids begins with it. */
const counts = new WeakMap<object, number>();

function nextId(page: object): string {
  const count = counts.get(page) ?? 0;
  counts.set(page, count + 1);
  return `s${count}`;
}

export default {
  name: '@astrojs/solid-js',
  check: (component: unknown): boolean => typeof component === 'function',
  renderToStaticMarkup(this: { result: object }, component: Widget, props: Record<string, unknown>) {
    const renderId = nextId(this.result);
    return {
      attrs: { 'data-solid-render-id': renderId },
      html: renderToString(() => createComponent(component, props), { renderId }),
    };
  },
};
