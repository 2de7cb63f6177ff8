/** Whatever numbers a file, a field or a hand gives, the core answers with finite numbers or a reason. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { absentWords } from '../../src/words/absent-words.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { stance } from '../../src/core/standing/stance.ts';
import { absurdBike, likelyBike, type RandomBike } from '../support/random-bikes.ts';

const RUNS = cases(10_000);
/** How long the two counts may take on a slow machine, ms. */
const PATIENCE_MS = cases(30_000, 3_000_000);

/** Whether the bike stood; throws when any answer is neither a finite number nor a reason. */
function answers({ bike, setup, travel }: RandomBike): boolean {
  const made = machine(bike, setup);
  const on = made.ok ? stance(made, travel) : made;
  if (!on.ok) {
    if (typeof on.reason !== 'string' || on.reason.length === 0) throw new Error('refused without a reason');
    for (const number of Object.values(on))
      if (typeof number === 'number' && !Number.isFinite(number)) throw new Error(`refused for ${number}`);
    return false;
  }
  for (const reading of READINGS) {
    const value = reading.read(on);
    if (typeof value === 'number' ? !Number.isFinite(value) : !absentWords(value))
      throw new Error(`${reading.key} is ${JSON.stringify(value)}`);
  }
  return true;
}

it(
  'absurd bikes each give finite readings or a reason, and nothing is thrown',
  () => {
    let stood = 0;
    fc.assert(
      fc.property(absurdBike, (bike) => {
        if (answers(bike)) stood++;
      }),
      { numRuns: RUNS },
    );
    // Both outcomes have to be common for the count to mean anything.
    expect(stood).toBeGreaterThan(RUNS / 20);
    expect(stood).toBeLessThan((RUNS * 19) / 20);
  },
  PATIENCE_MS,
);

it('nine in ten likely bikes stand, so the properties over them mean something', () => {
  let stood = 0;
  fc.assert(
    fc.property(likelyBike, (bike) => {
      if (answers(bike)) stood++;
    }),
    { numRuns: cases(1000) },
  );
  expect(stood).toBeGreaterThan(cases(900));
});
