import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder that holds package.json. */
export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** The folder the pages are built into. */
export const OUT = resolve(ROOT, process.env['OUT_DIR'] || 'dist');

/** Where on the server the workbook lives, with a slash at both ends: `/`, `/some/where/`. */
export function basePath(given = process.env['BASE_PATH'] ?? '/'): string {
  const inner = given.replace(/^\/+|\/+$/g, '');
  return inner === '' ? '/' : `/${inner}/`;
}
