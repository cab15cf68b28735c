import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { build } from 'esbuild';
import type { KeptFile } from '../../src/offline/kept-page.ts';
import { searchText } from './search-text.ts';

const WORKER = 'worker.js';

/** Files with a checksum in their names never change under one name. */
const HASHED = /^assets\/.*[.-][\w-]{8,}\.\w+$/;

/** Every file below `folder` that the worker keeps, sorted, so that the same build gives the same worker. */
function keptFiles(folder: string): KeptFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .filter((path) => path !== WORKER)
    .sort()
    .map((url) => ({
      url,
      revision: HASHED.test(url)
        ? null
        : createHash('sha256')
            .update(readFileSync(join(folder, url)))
            .digest('hex')
            .slice(0, 16),
    }));
}

/**
 * What can only be made once all pages are there: the text that the search reads, and the service worker with the list
 * of everything to keep. A browser takes a worker as one classic script, so it is bundled here and not with the pages.
 */
export function offline(): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const folder = fileURLToPath(dir);
        const sections = searchText(folder);
        writeFileSync(join(folder, 'search', 'sections.json'), JSON.stringify(sections));
        const files = keptFiles(folder);
        await build({
          entryPoints: [fileURLToPath(new URL('../../src/offline/worker.ts', import.meta.url))],
          outfile: join(folder, WORKER),
          bundle: true,
          minify: true,
          format: 'iife',
          target: 'es2022',
          define: { KEPT: JSON.stringify(files), 'process.env.NODE_ENV': '"production"' },
          logLevel: 'warning',
        });
        logger.info(`${sections.length} sections to search, ${files.length} files to keep`);
      },
    },
  };
}
