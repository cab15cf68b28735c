import { fileURLToPath } from 'node:url';
import solid from '@astrojs/solid-js';
import type { AstroIntegration } from 'astro';

/**
 * Solid islands with a renderer of our own. Astro's wraps each island in Suspense and keeps its props in a reactive
 * store, which costs every reader about 5 kB of script; our islands fetch nothing while rendering and get their props
 * once. Everything else (compiling, SSR settings) stays with @astrojs/solid-js.
 * It can go when that package leaves the two out for islands that do not need them.
 */
export function islands(): AstroIntegration {
  const base = solid();
  const setup = base.hooks['astro:config:setup'];
  return {
    ...base,
    hooks: {
      ...base.hooks,
      'astro:config:setup': (options) =>
        setup?.({
          ...options,
          addRenderer: ({ name }) =>
            options.addRenderer({
              name,
              clientEntrypoint: fileURLToPath(new URL('./client.ts', import.meta.url)),
              serverEntrypoint: fileURLToPath(new URL('./server.ts', import.meta.url)),
            }),
        }),
    },
  };
}
