/** Runs every measurement once in its short form, so that none breaks unseen; its figures are no measurements and are not judged. */
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { benchNames } from '../../src/commands/benches.js';

interface Bench {
  readonly default: (short: boolean) => readonly string[] | Promise<readonly string[]>;
}

/** A build of the page and a browser are among what a measurement may need, ms. */
const LONGEST_MS = 180_000;

/** A figure with its unit somewhere, and the verdict at the end. */
const ROW = / -?\d[\d.]* (?:ns|µs|ms|kB|\/s) .*(?:met|MISSED|–)$/;

for (const name of benchNames(fileURLToPath(new URL('.', import.meta.url))))
  it(
    `${name} runs through and ends with its table`,
    async () => {
      const bench = (await import(`./${name}.bench.ts`)) as Bench;
      const lines = await bench.default(true);
      const headings = lines.findIndex((line) => line.startsWith('what '));
      expect(headings).toBeGreaterThanOrEqual(0);
      const rows = lines.slice(headings + 1);
      expect(rows.length).toBeGreaterThan(0);
      expect(rows.filter((row) => !ROW.test(row))).toEqual([]);
    },
    LONGEST_MS,
  );
