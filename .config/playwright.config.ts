import { defineConfig } from '@playwright/test';
import { browser } from './scripts/browser.ts';
import { basePath, OUT, ROOT } from './scripts/place.ts';
import { freePort } from './scripts/ports.ts';

// E2E_ADDRESS names a workbook that is being served already, with a slash at its end; without it the pages in OUT_DIR
// are served on E2E_PORT, or on a free port.
const served = process.env['E2E_ADDRESS'];

// The workers read this file again: the first reading settles the browser and the port for all of them.
process.env['CHROMIUM_PATH'] ??= await browser();
if (!served) process.env['E2E_PORT'] ??= String(await freePort(4400));
const port = process.env['E2E_PORT'] ?? '';
const address = served || `http://localhost:${port}${basePath()}`;

export default defineConfig({
  testDir: `${ROOT}/tests/e2e`,
  outputDir: `${ROOT}/test-results`,
  fullyParallel: true,
  forbidOnly: true,
  retries: 0,
  workers: 2,
  timeout: 30_000,
  reporter: process.env['E2E_REPORT'] ? [['line'], ['json', { outputFile: process.env['E2E_REPORT'] }]] : [['line']],
  use: {
    baseURL: address,
    browserName: 'chromium',
    // Keeping the whole workbook for each test would cost more than the test; the tests of keeping allow it.
    serviceWorkers: 'block',
    trace: 'off',
    screenshot: 'only-on-failure',
    launchOptions: {
      executablePath: process.env['CHROMIUM_PATH'],
      chromiumSandbox: process.getuid?.() !== 0,
      args: [
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  ...(served
    ? {}
    : {
        webServer: {
          command: 'node .config/scripts/serve.ts --no-build',
          cwd: ROOT,
          url: address,
          env: { PORT: port, BASE_PATH: basePath(), OUT_DIR: OUT },
          timeout: 20_000,
          reuseExistingServer: false,
          gracefulShutdown: { signal: 'SIGTERM', timeout: 2000 },
        },
      }),
});
