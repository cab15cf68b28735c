import { existsSync, readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { join } from 'node:path';
import sirv from 'sirv';

/**
 * A plain file server for the built pages under `base` (with a slash at both ends): no rewriting, no single-page
 * fall-back. An unknown address gets the 404 page with status 404; an address outside `base` gets status 404 and a line
 * of text. A folder's address without its last slash leads to the one with it, as common file servers do.
 */
export function staticServer(folder: string, base: string): Server {
  const notFound = readFileSync(join(folder, '404.html'));
  const files = sirv(folder, {
    etag: true,
    dotfiles: false,
    extensions: ['html'],
    setHeaders: (response, path) => {
      response.setHeader('X-Content-Type-Options', 'nosniff');
      const hashed = path.startsWith('/assets/') || path.startsWith('/_astro/');
      response.setHeader('Cache-Control', hashed ? 'public, max-age=31536000, immutable' : 'no-cache');
    },
    onNoMatch: (_request, response) => {
      response.writeHead(404, { 'Content-Type': 'text/html; charset=utf-8' }).end(notFound);
    },
  });
  return createServer((request, response) => {
    const [path = '/', query] = (request.url ?? '/').split('?', 2);
    const tail = query === undefined ? '' : `?${query}`;
    if (`${path}/` === base) {
      response.writeHead(301, { Location: `${base}${tail}` }).end();
    } else if (!path.startsWith(base)) {
      response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' }).end(`Nothing here. Try ${base}\n`);
    } else {
      const inside = path.slice(base.length);
      if (/[^/.]$/.test(inside) && !inside.includes('..') && existsSync(join(folder, inside, 'index.html'))) {
        response.writeHead(301, { Location: `${path}/${tail}` }).end();
        return;
      }
      request.url = `/${inside}${tail}`;
      files(request, response);
    }
  });
}
