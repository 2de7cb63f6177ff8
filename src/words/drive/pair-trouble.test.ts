/** Tests of the words for a pair of sprockets that cannot be fitted. */
import { CHAIN } from '../../core/parts/drive-noun.ts';
import { describe, expect, it } from 'vitest';
import { ANY_CHAIN, pairsOf } from '../../../tests/support/pairs-asked.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { pairTrouble } from './pair-trouble.ts';
import type { PairsAsked, SprocketPair } from '../../core/effects/sprocket-pairs.ts';

const METRIC = { system: 'metric', decimal: '.' } as const;

function pair(frontTeeth: number, rearTeeth: number, change: Partial<PairsAsked> = {}): SprocketPair {
  const [found] = pairsOf({
    bike: plainBike,
    setup: plainSetup,
    ride: 'toppedOut',
    front: { least: frontTeeth, most: frontTeeth },
    rear: { least: rearTeeth, most: rearTeeth },
    ...ANY_CHAIN,
    ...change,
  });
  return found;
}

const trouble = (each: SprocketPair) => {
  const told = pairTrouble(each, CHAIN, METRIC);
  return told === null ? null : `${told.short}: ${told.sentences.join(' ')}`.replace(/\s/g, ' ');
};

describe('the trouble with a pair', () => {
  it('is none where the chain puts the axle into its slot', () => {
    expect(trouble(pair(15, 45))).toBeNull();
  });

  it('is a chain that does not reach, with the one that does', () => {
    expect(trouble(pair(15, 45, { linksInHand: [110] }))).toMatch(
      /^axle [\d.]+ mm ahead of its slot: A chain of 110 links is too short.* With \d+( or \d+)* links it fits\.$/,
    );
    expect(trouble(pair(15, 45, { linksInHand: [40] }))).toMatch(/^chain too short to close: /);
    expect(trouble(pair(15, 45, { linksInHand: [120] }))).toMatch(/^axle [\d.]+ mm behind its slot: /);
  });

  it('is a sprocket that the shaft is too thick for, or one that reaches the pivot', () => {
    expect(trouble(pair(11, 40))).toMatch(/^too small for the shaft: .* takes 12 teeth or more\.$/);
    expect(trouble(pair(32, 40))).toMatch(/reaches the pivot: .* \d+ teeth or fewer clear it\.$/);
  });

  it('is more slack than a run can have', () => {
    expect(trouble(pair(15, 45, { slack: 2000 }))).toMatch(/^does not stand: .* Set less\.$/);
  });
});
