/** Runs measurements one after another, each in a separate process, so that one that fails or hangs stops no other. */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** What the files of measurements end in; those of long trials of the page end in the other. */
export const BENCH = '.bench.ts';
export const ENDURANCE = '.endure.ts';

/** More than any takes on a busy machine; one that takes longer hangs. */
const LONGEST_MS = 60 * 60_000;

/**
 * The names of the measurements in a folder: a file `pose.bench.ts` is `pose`.
 * @param {string} folder
 * @param {string} [ending]
 * @returns {string[]}
 */
export function benchNames(folder, ending = BENCH) {
  return readdirSync(folder)
    .filter((file) => file.endsWith(ending))
    .map((file) => file.slice(0, -ending.length))
    .sort();
}

/**
 * The measurements that the command line names; all of them when it names none. With `--short` they run through
 * without measuring. @param {string[]} args @param {string[]} names @returns {{ chosen: string[], unknown: string[],
 * short: boolean }}
 */
export function chosenBenches(args, names) {
  const given = args.filter((each) => each !== '--short').map((each) => each.replace(/\.bench(\.ts)?$/, ''));
  return {
    chosen: given.length === 0 ? names : names.filter((name) => given.includes(name)),
    unknown: given.filter((each) => !names.includes(each)),
    short: args.includes('--short'),
  };
}

/**
 * Runs the measurements; returns the names of those that failed, which with `strict` every missed goal is. What they
 * print goes straight to the terminal, or nowhere when `quiet`.
 * @param {string} folder
 * @param {string[]} names
 * @param {{ short: boolean, print: (line: string) => void, quiet?: boolean, ending?: string, strict?: boolean }} options
 * @returns {string[]}
 */
export function runBenches(folder, names, { short, print, quiet = false, ending = BENCH, strict = false }) {
  const runner = fileURLToPath(new URL('./run-bench.js', import.meta.url));
  return names.filter((name) => {
    print(short ? `\n— ${name}, only tried out: its figures are no measurements` : `\n— ${name}`);
    const file = `${folder}/${name}${ending}`;
    const flags = [...(short ? ['--short'] : []), ...(strict ? ['--strict'] : [])];
    const output = quiet ? 'ignore' : 'inherit';
    const ran = spawnSync(process.execPath, [runner, file, ...flags], {
      stdio: ['ignore', output, output],
      timeout: LONGEST_MS,
    });
    if (ran.status === 0) return false;
    print(`${name} FAILED: ${ran.error?.message ?? `it ended with ${ran.signal ?? ran.status}`}`);
    return true;
  });
}
