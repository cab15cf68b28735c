import { spawn } from 'node:child_process';
import { delimiter, join } from 'node:path';
import { ROOT } from './place.ts';

/** What child processes see: the tools of this project first on the path, and no tool that calls home. */
export function surroundings(more: Readonly<Record<string, string>> = {}): NodeJS.ProcessEnv {
  return {
    ...process.env,
    PATH: `${join(ROOT, 'node_modules', '.bin')}${delimiter}${process.env['PATH'] ?? ''}`,
    ASTRO_TELEMETRY_DISABLED: '1',
    ...more,
  };
}

/** Runs a command in the project's folder with its output passed through; returns its exit code, 1 for a signal. */
export function run(
  command: string,
  args: readonly string[],
  more?: Readonly<Record<string, string>>,
): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { cwd: ROOT, stdio: 'inherit', env: surroundings(more) });
    child.once('error', reject);
    child.once('exit', (code) => resolve(code ?? 1));
  });
}
