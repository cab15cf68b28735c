import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { basePath, OUT } from './place.ts';
import { freePort } from './ports.ts';
import { run } from './run.ts';
import { staticServer } from './static-server.ts';

const DEFAULT_PORT = 4321;

function wantedPort(): number {
  const given = process.env['PORT'];
  if (given === undefined || given === '') return DEFAULT_PORT;
  const port = Number(given);
  if (Number.isInteger(port) && port >= 1 && port <= 65535) return port;
  console.error(`PORT is “${given}”: a whole number from 1 to 65535 would do.`);
  process.exit(1);
}

const wanted = wantedPort();
if (!process.argv.includes('--no-build') && (await run('astro', ['build'])) !== 0) process.exit(1);
if (!existsSync(join(OUT, '404.html'))) {
  console.error(`Nothing is built in ${OUT}. Leave out --no-build, or run npm run build first.`);
  process.exit(1);
}

const port = await freePort(wanted);
if (port !== wanted) console.log(`Port ${wanted} is taken; using ${port}.`);
const server = staticServer(OUT, basePath());
server.listen(port, () => console.log(`Evenfold is at http://localhost:${port}${basePath()}`));

for (const signal of ['SIGINT', 'SIGTERM'] as const) {
  process.once(signal, () => {
    server.close(() => process.exit(0));
    server.closeAllConnections();
  });
}
