import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { ROOT } from './place.ts';
import { surroundings } from './run.ts';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];
const MAC = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

function canRun(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function installed(): string | undefined {
  const folders = [...(process.env['PATH'] ?? '').split(delimiter), '/usr/bin', '/snap/bin'];
  return [...folders.flatMap((folder) => NAMES.map((name) => join(folder, name))), ...MAC].find(canRun);
}

function succeeds(command: string, args: readonly string[]): boolean {
  // Output goes to the error stream: this script's own output is the path alone.
  const env = surroundings({ DEBIAN_FRONTEND: 'noninteractive' });
  return spawnSync(command, args, { cwd: ROOT, stdio: ['ignore', 2, 2], env }).status === 0;
}

function fromPackages(): string | undefined {
  if (spawnSync('apt-get', ['--version']).status !== 0) return undefined;
  const asRoot = (...args: string[]) =>
    process.getuid?.() === 0 ? succeeds('apt-get', args) : succeeds('sudo', ['-n', 'apt-get', ...args]);
  if (!asRoot('update')) return undefined;
  return asRoot('install', '-y', '--no-install-recommends', 'chromium', 'fonts-liberation') ? installed() : undefined;
}

async function fromPlaywright(): Promise<string | undefined> {
  const { chromium } = await import('@playwright/test');
  const usable = () => [chromium.executablePath()].find((path) => path !== '' && canRun(path));
  if (usable() === undefined) succeeds('playwright', ['install', '--with-deps', 'chromium']);
  if (usable() === undefined) succeeds('playwright', ['install', 'chromium']);
  return usable();
}

/**
 * Path of a Chromium for the browser tests: the one CHROMIUM_PATH names, else one that is installed, else one brought
 * with the system's packages, else Playwright's own. Throws with what was tried where none can be had.
 */
export async function browser(): Promise<string> {
  const named = process.env['CHROMIUM_PATH'];
  if (named) {
    if (canRun(named)) return named;
    throw new Error(`CHROMIUM_PATH is ${named}, which is not there or cannot be run.`);
  }
  const found = installed() ?? fromPackages() ?? (await fromPlaywright());
  if (found) return found;
  throw new Error(
    'No Chromium: none is installed, and neither apt-get nor Playwright could bring one. Install one, or name it in CHROMIUM_PATH.',
  );
}

if (import.meta.main) console.log(await browser());
