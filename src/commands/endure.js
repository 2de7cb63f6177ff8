/** `npm run endure`: draws the random cases of the properties many times over, from a new seed, then the long trials of tests/endure, and prints the figures of both. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { benchNames, ENDURANCE, runBenches } from './benches.js';
import { chosenTrials, enduredLines } from './endured.js';
import { installPackages, root } from './install.js';

installPackages();
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    times: { type: 'string', default: '20' },
    seed: { type: 'string', default: String(Date.now() % 2 ** 31) },
    short: { type: 'boolean', default: false },
    help: { type: 'boolean', default: false },
  },
});
const [times, seed] = [values.times, values.seed].map(Number);
const folder = `${root}tests/endure`;
if (values.help || !Number.isInteger(times) || times < 1 || !Number.isInteger(seed)) {
  console[values.help ? 'log' : 'error'](
    `npm run endure -- [--times N] [--seed N] [--short] [NAME…]: times and seed are whole numbers, and times at least 1. A name is part of the name of a test that draws random cases, or a long trial: ${benchNames(folder, ENDURANCE).join(', ')}.`,
  );
  process.exit(values.help ? 0 : 2);
}

const files = ['src', 'tests']
  .flatMap((within) =>
    readdirSync(root + within, { recursive: true }).map((name) => join(within, String(name))),
  )
  .filter(
    (file) => file.endsWith('.test.ts') && readFileSync(root + file, 'utf8').includes('support/cases.ts'),
  );
const names = benchNames(folder, ENDURANCE);
const chosen = chosenTrials(positionals, names, files);
if (chosen.unknown.length > 0) {
  console.error(
    `No test that draws random cases is named ${chosen.unknown.join(' or ')}, and no long trial. Long trials are: ${names.join(', ')}.`,
  );
  process.exit(2);
}

/** @type {string[]} */
const failed = [];
if (chosen.files.length > 0 && !drawsWell(chosen.files))
  failed.push(`the random cases; again with npm run endure -- --times ${times} --seed ${seed}`);
failed.push(
  ...runBenches(folder, chosen.names, {
    short: values.short,
    print: (line) => console.log(line),
    ending: ENDURANCE,
    strict: true,
  }),
);
console.log(failed.length === 0 ? '\nAll of it held.' : `\nFailed: ${failed.join(', ')}.`);
process.exitCode = failed.length === 0 ? 0 : 1;

/** Draws the cases of these test files and prints what was drawn; true when every test passed. @param {string[]} tests */
function drawsWell(tests) {
  console.log(`${times} times as many cases as npm test, from seed ${seed}; ${tests.length} files.`);
  const reports = mkdtempSync(join(tmpdir(), 'sidestance-endure-'));
  process.on('exit', () => rmSync(reports, { recursive: true, force: true }));
  const report = join(reports, 'vitest.json');
  const { status } = spawnSync(
    process.execPath,
    [
      'node_modules/vitest/vitest.mjs',
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
      ...tests,
    ],
    {
      cwd: root,
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, ENDURE_TIMES: String(times), ENDURE_SEED: String(seed) },
    },
  );
  for (const line of enduredLines(JSON.parse(readFileSync(report, 'utf8')), root)) console.log(line);
  return status === 0;
}
