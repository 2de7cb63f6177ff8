/** `npm test`: installs what is missing, runs every stage to its end and says how many checks passed and failed. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { countPlaywright, countVitest, total, withEnding } from './counts.js';
import { browserForTests } from './install-browser.js';
import { installPackages, root } from './install.js';

/** A stage that hangs must end while there is time to say so. */
const LONGEST_STAGE_MS = 55 * 60_000;

installPackages();
const reports = mkdtempSync(join(tmpdir(), 'sidestance-test-'));
process.on('exit', () => rmSync(reports, { recursive: true, force: true }));

// The tests under node need it too: some measurements that they try out open the page.
const browser = await browserForTests();

/**
 * Runs one of the installed tools under this node; true when it ended well.
 * @param {string} title
 * @param {string[]} args the tool's script below node_modules, then its arguments
 * @param {NodeJS.ProcessEnv} [env]
 */
function tool(title, [script, ...args], env = {}) {
  console.log(`\n— ${title}`);
  const started = Date.now();
  const done = spawnSync(process.execPath, [`node_modules/${script}`, ...args], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, ...env },
    timeout: LONGEST_STAGE_MS,
  });
  const endedWell = done.status === 0;
  console.log(
    `${title}: ${endedWell ? 'ended well' : 'FAILED'}, ${((Date.now() - started) / 1000).toFixed(1)} s`,
  );
  return endedWell;
}

/** A tool that has no tests to count is one check. @param {string} title @param {string[]} args */
const check = (title, args) => withEnding({ passed: tool(title, args) ? 1 : 0, failed: 0 }, true);

/**
 * Counts a runner's report; without a readable one the stage has crashed, which is one failure.
 * @template T
 * @param {string} file
 * @param {(report: T) => import('./counts.js').Count} count
 * @param {boolean} endedWell
 */
function counted(file, count, endedWell) {
  try {
    return withEnding(count(JSON.parse(readFileSync(file, 'utf8'))), endedWell);
  } catch (error) {
    console.log(`The stage left no report that can be read: ${error}`);
    return { passed: 0, failed: 1 };
  }
}

function nodeTests() {
  const report = join(reports, 'vitest.json');
  const args = [
    'vitest/vitest.mjs',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ];
  return counted(
    report,
    countVitest,
    tool('tests under node', args, browser ? { BROWSER_PATH: browser } : {}),
  );
}

function browserTests() {
  if (
    !readdirSync(`${root}tests`, { recursive: true }).some((file) =>
      /^browser.*\.spec\.ts$/.test(String(file)),
    )
  ) {
    return { passed: 0, failed: 0 };
  }
  if (!browser) {
    console.log('There is no browser to test in. Install Chromium, or name one in BROWSER_PATH.');
    return { passed: 0, failed: 1 };
  }
  const report = join(reports, 'playwright.json');
  const endedWell = tool(
    'tests in the browser',
    ['@playwright/test/cli.js', 'test', '--reporter=list,json'],
    {
      BROWSER_PATH: browser,
      PLAYWRIGHT_JSON_OUTPUT_FILE: report,
    },
  );
  return counted(report, countPlaywright, endedWell);
}

const tsc = (/** @type {string} */ project) => ['typescript/bin/tsc', '-p', project];

const { passed, failed } = total([
  check('format', ['prettier/bin/prettier.cjs', '--check', '--log-level=warn', '.']),
  check('lint', ['eslint/bin/eslint.js', '.', '--max-warnings=0']),
  check('types of the core, which knows no page', tsc('tsconfig.core.json')),
  check('types of the page', tsc('tsconfig.json')),
  check('types of commands and tests', tsc('tsconfig.node.json')),
  check('types of the components', [
    'svelte-check/bin/svelte-check',
    '--tsconfig',
    './tsconfig.json',
    '--fail-on-warnings',
  ]),
  nodeTests(),
  browserTests(),
]);

process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
console.log(`\n${passed} passed, ${failed} failed`);
