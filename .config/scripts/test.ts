import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run } from './run.ts';

/** What one step adds to the count at the end. */
interface Tally {
  passed: number;
  failed: number;
}

interface UnitReport {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly testResults: readonly {
    readonly status: string;
    readonly assertionResults: readonly { status: string }[];
  }[];
}

interface BrowserReport {
  readonly stats: { readonly expected: number; readonly unexpected: number; readonly flaky: number };
  readonly errors: readonly unknown[];
}

const scratch = await mkdtemp(join(tmpdir(), 'evenfold-test-'));
const tallies: [name: string, Tally][] = [];

function heading(name: string): void {
  console.log(`\n── ${name} ${'─'.repeat(Math.max(0, 76 - name.length))}`);
}

/** A step that counts as one: right when its command ends with 0. */
async function step(name: string, command: string, args: readonly string[], env?: Record<string, string>) {
  heading(name);
  const code = await run(command, args, env);
  tallies.push([name, code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 }]);
  return code === 0;
}

/** A step whose tests count one by one. A run that fails without naming a test, or runs none, counts as one failure. */
async function tests<Report>(
  name: string,
  report: string,
  command: string,
  args: readonly string[],
  env: Record<string, string>,
  count: (report: Report) => Tally,
) {
  heading(name);
  const code = await run(command, args, env);
  let tally: Tally;
  try {
    tally = count(JSON.parse(await readFile(report, 'utf8')));
  } catch {
    tally = { passed: 0, failed: 1 };
  }
  if (tally.failed === 0 && (code !== 0 || tally.passed === 0)) tally.failed = 1;
  tallies.push([name, tally]);
}

function countUnit({ numPassedTests, numFailedTests, testResults }: UnitReport): Tally {
  const broken = testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  );
  return { passed: numPassedTests, failed: numFailedTests + broken.length };
}

function countBrowser({ stats, errors }: BrowserReport): Tally {
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky + errors.length };
}

/**
 * The browser tests in which addresses matter: links, files that are fetched, what is kept on the device. Behaviour
 * inside a page is the same wherever the workbook is served, and trying it twice would take another ten minutes.
 */
const OF_ADDRESSES = ['shell', 'no-script', 'offline'];

async function browserTests(name: string, env: Record<string, string>, only: readonly string[]) {
  const report = join(scratch, `${name.replaceAll(/\W+/g, '-')}.json`);
  const args = ['test', '--config', '.config/playwright.config.ts', ...only.map((file) => `e2e/${file}.test`)];
  // What axe finds on a page does not depend on its address either.
  if (only.length > 0) args.push('--grep-invert', 'axe finds');
  await tests(name, report, 'playwright', args, { ...env, E2E_REPORT: report }, countBrowser);
}

/** The build and its browser tests, at one place on a server. A build that fails leaves nothing to test: one failure. */
async function builtAndTried(where: string, env: Record<string, string>, only: readonly string[] = []) {
  const built = await step(`build ${where}`, 'astro', ['build'], env);
  if (built) await browserTests(`browser tests ${where}`, env, only);
  else tallies.push([`browser tests ${where}`, { passed: 0, failed: 1 }]);
}

// It reads the pages as well as every TypeScript file of the project.
await step('types', 'astro', ['check', '--minimumFailingSeverity', 'warning']);
await step('lint', 'biome', ['ci', '--config-path=.config/lint.json', '--error-on-warnings', '--colors=off']);
const unitReport = join(scratch, 'unit.json');
await tests(
  'unit tests',
  unitReport,
  'vitest',
  [
    'run',
    '--config',
    '.config/vitest.config.ts',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${unitReport}`,
  ],
  {},
  countUnit,
);
await step('dead code', 'knip', ['--config', '.config/knip.json', '--no-progress']);
// All of them run where addresses are hardest to get right.
await builtAndTried('at /some/where/', { BASE_PATH: '/some/where/', OUT_DIR: './dist-elsewhere' });
await builtAndTried('at /', { BASE_PATH: '/', OUT_DIR: './dist' }, OF_ADDRESSES);

await rm(scratch, { recursive: true, force: true });

heading('all');
for (const [name, { passed, failed }] of tallies) console.log(`${name}: ${passed} passed, ${failed} failed`);
const passed = tallies.reduce((sum, [, tally]) => sum + tally.passed, 0);
const failed = tallies.reduce((sum, [, tally]) => sum + tally.failed, 0);
process.exitCode = failed === 0 ? 0 : 1;
console.log(`${passed} passed, ${failed} failed`);
