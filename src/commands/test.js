/** `npm test`: installs what is missing, runs every stage to its end, the checks beside one another, and says how many checks passed and failed. */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { countPlaywright, countVitest, total, withEnding } from './counts.js';
import { browserForTests, firefoxForTests } from './install-browser.js';
import { installPackages, root } from './install.js';

/** A stage that hangs must end while there is time to say so. */
const LONGEST_STAGE_MS = 55 * 60_000;

installPackages();
const reports = mkdtempSync(join(tmpdir(), 'sidestance-test-'));
process.on('exit', () => rmSync(reports, { recursive: true, force: true }));

// The tests under node need it too: some measurements that they try out open the page.
const browser = await browserForTests();
const firefox = firefoxForTests();

/**
 * Runs one of the installed tools under this node; true when it ended well.
 * @param {string} title
 * @param {string[]} args the tool's script below node_modules, then its arguments
 * @param {{ env?: NodeJS.ProcessEnv, together?: boolean }} [how] `together`: beside others, so that its lines are kept
 *   until it ends
 * @returns {Promise<boolean>}
 */
function tool(title, [script, ...args], { env = {}, together = false } = {}) {
  if (!together) console.log(`\n— ${title}`);
  const started = Date.now();
  const run = spawn(process.execPath, [`node_modules/${script}`, ...args], {
    cwd: root,
    stdio: ['ignore', together ? 'pipe' : 'inherit', together ? 'pipe' : 'inherit'],
    env: { ...process.env, ...env },
    timeout: LONGEST_STAGE_MS,
  });
  /** @type {Buffer[]} */
  const said = [];
  for (const stream of [run.stdout, run.stderr]) stream?.on('data', (chunk) => said.push(chunk));
  return new Promise((fulfil, reject) => {
    run.on('error', reject);
    run.on('close', (status) => {
      const endedWell = status === 0;
      if (together) console.log(`\n— ${title}`);
      process.stdout.write(Buffer.concat(said));
      console.log(
        `${title}: ${endedWell ? 'ended well' : 'FAILED'}, ${((Date.now() - started) / 1000).toFixed(1)} s`,
      );
      fulfil(endedWell);
    });
  });
}

/**
 * Runs tools that have no tests to count, each of which is one check. None of them uses more than one core, so as many
 * run beside one another as there are cores. @param {[title: string, args: string[]][]} checks
 */
async function inTurns(checks) {
  const waiting = [...checks];
  /** @type {import('./counts.js').Count[]} */
  const counts = [];
  async function runRest() {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const endedWell = await tool(...next, { together: true });
      counts.push(withEnding({ passed: endedWell ? 1 : 0, failed: 0 }, true));
    }
  }
  await Promise.all(Array.from({ length: availableParallelism() }, runRest));
  return counts;
}

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

async function nodeTests() {
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
    await tool('tests under node', args, { env: browser ? { BROWSER_PATH: browser } : {} }),
  );
}

const pageTests = readdirSync(`${root}tests/browser`)
  .filter((file) => file.endsWith('.spec.ts'))
  .map((file) => readFileSync(`${root}tests/browser/${file}`, 'utf8'));

async function browserTests() {
  if (pageTests.length === 0) return { passed: 0, failed: 0 };
  if (!browser) {
    console.log('There is no browser to test in. Install Chromium, or name one in BROWSER_PATH.');
    return { passed: 0, failed: 1 };
  }
  if (!firefox) {
    const stories = pageTests.reduce((sum, text) => sum + text.split("'@engines'").length - 1, 0);
    console.log(`There is no Firefox here, so ${stories} stories run in Chromium alone.`);
  }
  const report = join(reports, 'playwright.json');
  const endedWell = await tool(
    'tests in the browser',
    ['@playwright/test/cli.js', 'test', '--reporter=list,json'],
    {
      env: {
        BROWSER_PATH: browser,
        ...(firefox && { FIREFOX_PATH: firefox }),
        PLAYWRIGHT_JSON_OUTPUT_FILE: report,
      },
    },
  );
  return counted(report, countPlaywright, endedWell);
}

const tsc = (/** @type {string} */ project) => ['typescript/bin/tsc', '-p', project];

// The longest first, so that no core waits long for the last.
const checks = await inTurns([
  [
    'types of the page and its components',
    ['svelte-check/bin/svelte-check', '--tsconfig', './tsconfig.json', '--fail-on-warnings'],
  ],
  ['lint', ['eslint/bin/eslint.js', '.', '--max-warnings=0']],
  ['format', ['prettier/bin/prettier.cjs', '--check', '--log-level=warn', '.']],
  ['types of commands and tests', tsc('tsconfig.node.json')],
  ['types of the core, which knows no page', tsc('tsconfig.core.json')],
]);
const { passed, failed } = total([...checks, await nodeTests(), await browserTests()]);

process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
console.log(`\n${passed} passed, ${failed} failed`);
