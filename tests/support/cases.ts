/** How many random cases a property draws and from what seed: the same few in `npm test`, many others in `npm run endure`. */
import fc from 'fast-check';
import { inject, TestRunner, type RunnerTestCase } from 'vitest';

declare module 'vitest' {
  export interface ProvidedContext {
    /** What the random cases come from: a failure comes again from the same seed. */
    readonly seed: number;
    /** How many times as many cases as in `npm test`. */
    readonly times: number;
  }
  export interface TaskMeta {
    /** The random cases a test has drawn, for the report. */
    cases?: number;
  }
}

/** The cases of a property that does not say how many. */
const USUAL = 100;

fc.configureGlobal({ seed: inject('seed'), numRuns: cases(USUAL), reporter: counted });

/**
 * `short` in `npm test`; a test that counts its real checks compares that count with this number too. A slow property
 * names the cases that its long form draws at least.
 */
export function cases(short: number, long = 0): number {
  const times = inject('times');
  return times === 1 ? short : Math.max(long, short * times);
}

/** Adds what a property has drawn to the report of its test, and fails as the library does by itself. */
function counted(details: fc.RunDetails<unknown>): void {
  const { meta } = TestRunner.getCurrentTest<RunnerTestCase>();
  meta.cases = (meta.cases ?? 0) + details.numRuns;
  if (details.failed) throw new Error(fc.defaultReportMessage(details), { cause: details.errorInstance });
}
