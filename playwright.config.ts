/** How the tests in the browser run: the page is built once and served as `npm start` serves it, on a port of this run's own. */
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';
import { defineConfig, devices, type Project } from '@playwright/test';
import { findBrowser, findFirefox } from './src/commands/find-browser.js';

/** A port nothing listens on. */
function freePort(): Promise<number> {
  return new Promise((fulfil, reject) => {
    const probe = createServer();
    probe.on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => {
        if (address && typeof address === 'object') fulfil(address.port);
        else reject(new Error('the probe has no port'));
      });
    });
  });
}

// Each worker reads this file anew; the environment hands it what the first reading chose.
process.env.SIDESTANCE_TEST_PORT ??= String(await freePort());
const browser = await findBrowser();
const firefox = findFirefox();
if (browser) process.env.BROWSER_PATH = browser;
const address = `http://127.0.0.1:${process.env.SIDESTANCE_TEST_PORT}`;

const viaTouch = /\.touch\.spec\.ts$/;

/** The main stories once more in a Firefox of the system, which Playwright reaches through a bridge. */
const inFirefox = (path: string): Project => ({
  name: 'firefox',
  grep: /@engines/,
  // The way to it is new in Playwright and loses its line now and then.
  retries: 1,
  use: {
    browserName: 'firefox',
    channel: 'moz-firefox',
    // Whether one window can be emptied for the next test over this way has not been tried.
    reuseContext: false,
    viewport: { width: 1280, height: 720 },
    launchOptions: {
      executablePath: fileURLToPath(new URL('tests/support/firefox-bridge.js', import.meta.url)),
      args: [],
      env: { ...process.env, FIREFOX_PATH: path } as Record<string, string>,
    },
  },
});

export default defineConfig({
  testDir: 'tests/browser',
  outputDir: 'test-results',
  fullyParallel: true,
  forbidOnly: true,
  retries: 0,
  workers: 2,
  // A busy or slow machine takes several times as long and is no reason to fail.
  timeout: 120_000,
  expect: { timeout: 20_000 },
  globalTimeout: 50 * 60_000,
  reporter: 'list',
  use: {
    baseURL: address,
    // One window for all tests of a worker, emptied of all that it kept before each: a fresh one has to start a process
    // and compile the page's scripts again. Playwright leaves its network cut off, so tests that cut it take a fresh one.
    reuseContext: true,
    // What a test lets the network answer, or not, must not be answered from the device; the tests of that allow it.
    serviceWorkers: 'block',
    // A trace of each test takes as long as the test; `--trace retain-on-failure` records one where it is wanted.
    trace: 'off',
    screenshot: 'only-on-failure',
    launchOptions: {
      executablePath: browser,
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  projects: [
    { name: 'desktop', testIgnore: viaTouch, use: { viewport: { width: 1280, height: 720 } } },
    {
      name: 'touch',
      testMatch: viaTouch,
      use: { ...devices['Pixel 7'], viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    },
    ...(firefox === undefined ? [] : [inFirefox(firefox)]),
  ],
  webServer: {
    // Run by node itself: a killed npx would leave its child serving an old page to the next run.
    command: `"${process.execPath}" src/commands/start.js --strict-port --port ${process.env.SIDESTANCE_TEST_PORT}`,
    url: address,
    reuseExistingServer: false,
    timeout: 120_000,
  },
});
