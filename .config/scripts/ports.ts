import { createServer } from 'node:net';

/** Whether a server may listen on the port on this device. */
function isFree(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', () => resolve(false));
    probe.listen(port, '127.0.0.1', () => probe.close(() => resolve(true)));
  });
}

/** The first free port from `first` on; throws where none of the next fifty is free. */
export async function freePort(first: number): Promise<number> {
  for (let port = first; port < first + 50; port += 1) if (await isFree(port)) return port;
  throw new Error(`No free port between ${first} and ${first + 49}: set PORT to another number.`);
}
