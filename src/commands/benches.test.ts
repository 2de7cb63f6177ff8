/** Tests running measurements one after another, on a folder of measurements made for the test. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { benchNames, chosenBenches, runBenches } from './benches.js';
import { root } from './install.js';

let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'benches-'));
  const made = {
    'a-throws': "export default () => { throw new Error('no chain fits'); };",
    'b-ends': 'export default () => process.exit(3);',
    'c-late':
      "export default () => { void Promise.reject(new Error('nobody waits')); return ['never told']; };",
    'd-well': "export default async (short: boolean) => [`d is ${short ? 'short' : 'long'}`];",
  };
  for (const [name, text] of Object.entries(made)) writeFileSync(join(folder, `${name}.bench.ts`), text);
  writeFileSync(join(folder, 'd-well.test.ts'), '');
});
afterAll(() => rmSync(folder, { recursive: true }));

it('finds measurements by their ending', () => {
  expect(benchNames(folder)).toEqual(['a-throws', 'b-ends', 'c-late', 'd-well']);
  expect(benchNames(join(root, 'tests/bench'))).toContain('pose');
});

it('takes the measurements named, with or without the ending, and all when none is named', () => {
  const names = ['curves', 'pairs', 'pose'];
  expect(chosenBenches([], names)).toEqual({ chosen: names, unknown: [], short: false });
  expect(chosenBenches(['pose', '--short', 'curves.bench.ts', 'pose.bench'], names)).toEqual({
    chosen: ['curves', 'pose'],
    unknown: [],
    short: true,
  });
  expect(chosenBenches(['chains', 'pose'], names)).toMatchObject({ unknown: ['chains'] });
});

it('runs every measurement, whichever fail, and names those that did', () => {
  const printed: string[] = [];
  const print = (line: string): void => void printed.push(line);
  const failed = runBenches(folder, benchNames(folder), { short: false, print, quiet: true });
  expect(failed).toEqual(['a-throws', 'b-ends', 'c-late']);
  expect(printed.map((line) => line.trim())).toEqual([
    '— a-throws',
    'a-throws FAILED: it ended with 1',
    '— b-ends',
    'b-ends FAILED: it ended with 3',
    '— c-late',
    'c-late FAILED: it ended with 1',
    '— d-well',
  ]);
}, 60_000);

it('prints the failure itself, and the lines of one that ran through', () => {
  const run = (name: string, ...flags: string[]) =>
    spawnSync(
      process.execPath,
      [join(root, 'src/commands/run-bench.js'), join(folder, `${name}.bench.ts`), ...flags],
      { encoding: 'utf8' },
    );
  expect(run('a-throws').stderr).toContain('no chain fits');
  expect(run('d-well').stdout).toBe('d is long\n');
  expect(run('d-well', '--short').stdout).toBe('d is short\n');
}, 60_000);

it('the command lists the measurements when it does not know the one named', () => {
  const ran = spawnSync(process.execPath, [join(root, 'src/commands/bench.js'), 'nothing'], {
    encoding: 'utf8',
  });
  expect(ran.status).toBe(2);
  expect(ran.stderr).toMatch(/^There is no measurement nothing\. There are: .*pose/);
}, 60_000);
