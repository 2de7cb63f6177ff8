/** `npm run endure`: draws the random cases of the properties many times over, from a new seed, and prints what was drawn. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { enduredLines } from './endured.js';
import { installPackages, root } from './install.js';

installPackages();
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    times: { type: 'string', default: '20' },
    seed: { type: 'string', default: String(Date.now() % 2 ** 31) },
  },
});
const [times, seed] = [values.times, values.seed].map(Number);
if (!Number.isInteger(times) || times < 1 || !Number.isInteger(seed)) {
  console.error(
    'npm run endure -- [--times N] [--seed N] [PATH…]: both are whole numbers, and --times at least 1.',
  );
  process.exit(2);
}

const files = ['src', 'tests']
  .flatMap((folder) =>
    readdirSync(root + folder, { recursive: true }).map((name) => join(folder, String(name))),
  )
  .filter(
    (file) => file.endsWith('.test.ts') && readFileSync(root + file, 'utf8').includes('support/cases.ts'),
  )
  .filter((file) => positionals.length === 0 || positionals.some((part) => file.includes(part)));
if (files.length === 0) {
  console.error('No test draws random cases there.');
  process.exit(2);
}

console.log(`${times} times as many cases as npm test, from seed ${seed}; ${files.length} files.`);
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
    ...files,
  ],
  {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, ENDURE_TIMES: String(times), ENDURE_SEED: String(seed) },
  },
);
for (const line of enduredLines(JSON.parse(readFileSync(report, 'utf8')), root)) console.log(line);
if (status !== 0) {
  console.log(`Failed. The same cases again: npm run endure -- --times ${times} --seed ${seed}`);
  process.exitCode = 1;
}
