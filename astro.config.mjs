import { createHash } from 'node:crypto';
import mdx from '@astrojs/mdx';
import solid from '@astrojs/solid-js';
import { defineConfig } from 'astro/config';
import { generateHydrationScript } from 'solid-js/web';
import { fonts } from './.config/fonts.ts';

const { BASE_PATH, SITE_URL, OUT_DIR } = process.env;

/** @type {(script: string) => `sha256-${string}`} */
const hash = (script) => `sha256-${createHash('sha256').update(script).digest('base64')}`;

// Widgets start with a short script in the page, which Astro's own list of hashes leaves out.
const hydration = generateHydrationScript().replace(/^<script>|<\/script>.*$/g, '');

export default defineConfig({
  output: 'static',
  base: BASE_PATH || '/',
  ...(SITE_URL ? { site: SITE_URL } : {}),
  outDir: OUT_DIR || './dist',
  // With a folder for each page and the slash always there, a file server without rewrite rules is enough.
  trailingSlash: 'always',
  build: { format: 'directory', assets: 'assets', inlineStylesheets: 'never' },
  integrations: [mdx(), solid()],
  fonts: await fonts(),
  devToolbar: { enabled: false },
  prefetch: false,
  markdown: { syntaxHighlight: false },
  vite: {
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
      scriptDirective: { hashes: [hash(hydration)] },
      // Figures carry their colours in style attributes, which no hash can allow.
      styleDirective: { resources: ["'self'", "'unsafe-inline'"] },
    },
  },
});
