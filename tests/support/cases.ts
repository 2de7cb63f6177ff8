/** How many random cases a property draws and from what seed: the same few in `npm test`, many others in `npm run endure`. */
import fc from 'fast-check';
import { expect, inject } from 'vitest';

declare module 'vitest' {
  export interface ProvidedContext {
    /** What the random cases come from: a failure comes again from the same seed. */
    readonly seed: number;
    /** How many times as many cases as in `npm test`. */
    readonly times: number;
    /** Whether each property prints how many cases it has drawn. */
    readonly prints: boolean;
  }
}

/** What a property draws that says nothing else. */
const USUAL = 100;

fc.configureGlobal({
  seed: inject('seed'),
  numRuns: cases(USUAL),
  ...(inject('prints') ? { reporter: printed } : {}),
});

/** `short` in `npm test`; a test that counts what it has really checked holds its count against this number too. */
export function cases(short: number): number {
  return short * inject('times');
}

/** Says how many cases a property has drawn, and fails as the library does by itself. */
function printed(details: fc.RunDetails<unknown>): void {
  const { currentTestName } = expect.getState();
  console.log(`${details.numRuns} cases: ${currentTestName}`);
  if (details.failed) throw new Error(fc.defaultReportMessage(details), { cause: details.errorInstance });
}
