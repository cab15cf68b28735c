import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { chunkGroups } from './.config/chunks.ts';
import { fonts } from './.config/fonts.ts';
import { islands } from './.config/islands/index.ts';
import { offline } from './.config/offline/index.ts';

const { BASE_PATH, SITE_URL, OUT_DIR } = process.env;

export default defineConfig({
  output: 'static',
  base: BASE_PATH || '/',
  ...(SITE_URL ? { site: SITE_URL } : {}),
  outDir: OUT_DIR || './dist',
  // With a folder for each page and the slash always there, a file server without rewrite rules is enough.
  trailingSlash: 'always',
  build: { format: 'directory', assets: 'assets', inlineStylesheets: 'never' },
  integrations: [mdx(), islands(), offline()],
  fonts: await fonts(),
  devToolbar: { enabled: false },
  prefetch: false,
  markdown: { syntaxHighlight: false },
  vite: {
    plugins: [
      {
        name: 'no-module-preload',
        enforce: 'pre',
        // The script that would fetch a part's own parts ahead of it weighs more than most parts. Astro takes nothing
        // of this from the environment below.
        configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
        // Nor is its helper wanted: where it goes by another name, it comes along and does no harm.
        load: (id) =>
          id === '\0vite/preload-helper.js' ? 'export const __vitePreload = (fetches) => fetches();' : undefined,
      },
    ],
    environments: {
      client: {
        build: {
          rolldownOptions: {
            output: {
              // Small files compress badly: what every lesson loads comes in one, and what every exercise loads.
              codeSplitting: { groups: chunkGroups },
            },
          },
        },
      },
    },
    build: {
      rollupOptions: {
        // Astro marks each lesson with a directive of its own and takes it out again; the bundler's warning about it,
        // once for every lesson, would bury the warnings that matter.
        onwarn: (warning, warn) => {
          if (warning.code !== 'MODULE_LEVEL_DIRECTIVE') warn(warning);
        },
      },
    },
  },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data: blob:",
        "object-src 'none'",
        "base-uri 'self'",
        "form-action 'self'",
      ],
      // Figures carry their colours in style attributes, which no hash can allow.
      styleDirective: { resources: ["'self'", "'unsafe-inline'"] },
    },
  },
});
