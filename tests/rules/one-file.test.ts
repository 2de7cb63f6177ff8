/** Adds a made-up thing of each kind to a copy of the source, and looks for it in type check, schema and command. */
import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { runnerImport } from 'vite';
import { afterAll, expect, it } from 'vitest';
import { MADE_UP, MADE_UP_THINGS } from '../support/made-up-things.ts';
import { copySource } from '../support/source-copy.ts';

const { adjuster, point, quantity, reading, state } = MADE_UP;
/** All code is checked, which takes a busy machine minutes, ms. */
const PATIENCE_MS = 400_000;
const copy = copySource(MADE_UP_THINGS);
afterAll(() => copy.remove());

/** The output of the type check, of code and components. */
async function typesChecked(): Promise<string> {
  const tool = join(copy.folder, 'node_modules/svelte-check/bin/svelte-check');
  const args = [tool, '--tsconfig', 'tsconfig.json', '--output', 'machine', '--threshold', 'error'];
  try {
    return (await promisify(execFile)(process.execPath, args, { cwd: copy.folder })).stdout;
  } catch (error) {
    return error instanceof Error && 'stdout' in error ? String(error.stdout) : String(error);
  }
}

async function load<Module>(file: string): Promise<Module> {
  const options = { root: copy.folder, configFile: false, logLevel: 'silent' } as const;
  return (await runnerImport<Module>(join(copy.folder, file), options)).module;
}

it(
  'R16: a made-up thing of each kind, one file and one row, passes the type check',
  async () => {
    expect(await typesChecked()).toMatch(/COMPLETED [1-9]\d* FILES 0 ERRORS/);
  },
  PATIENCE_MS,
);

it('R16: a made-up thing of each kind, one file and one row, shows in schema, help and readings', async () => {
  const { documentJsonSchema } = await load<typeof import('../../src/document/schema/json-schema.ts')>(
    'src/document/schema/json-schema.ts',
  );
  const { readingsCommand } =
    await load<typeof import('../../src/commands/readings.ts')>('src/commands/readings.ts');
  const schema = JSON.stringify(documentJsonSchema());
  const help = readingsCommand(['--help']).out;
  const demo = join(copy.folder, 'src/document/demos/demo-road-sport.json');
  const printed = readingsCommand([demo, '--set', `${adjuster.key}=${adjuster.value + 1}`]);
  const places = { schema, help, readings: printed.out + printed.err };
  const wanted: readonly (readonly [string, keyof typeof places, string])[] = [
    ['The quantity', 'schema', `Unit: ${quantity.symbol}.`],
    ['The quantity', 'help', quantity.symbol],
    ['The adjuster', 'schema', `"${adjuster.key}":`],
    ['The adjuster', 'help', adjuster.label],
    ['The point', 'schema', `"${point.key}":`],
    ['The reading', 'help', reading.label],
    ['The reading', 'readings', `"${reading.key}":`],
    ['The ride state', 'help', state.label],
    ['The ride state', 'readings', `"${state.key}":`],
  ];
  const missing = wanted
    .filter(([, place, words]) => !places[place].includes(words))
    .map(([thing, place, words]) => `${thing} does not show in the ${place}: ${words}`);
  expect(missing).toEqual([]);
  expect(printed.code).toBe(0);
});
