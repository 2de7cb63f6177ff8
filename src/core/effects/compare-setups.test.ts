/** Tests of setups laid side by side. */
import { describe, expect, it } from 'vitest';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { ADJUSTERS } from '../adjusters/all-adjusters.ts';
import { doesApply } from '../adjusters/does-apply.ts';
import { adjustersBetween, compareSetups, partsApart, takeAdjuster } from './compare-setups.ts';

const asSet = (setup = sprungSetup) => ({ bike: linkedBike, setup });

describe('setups side by side', () => {
  it('differ in what one of them has otherwise than the first, and the rest of what the bike has is counted', () => {
    const higher = asSet({ ...sprungSetup, shockLength: 4 });
    const shorter = asSet({ ...sprungSetup, shockLength: 4, rearTeeth: sprungSetup.rearTeeth + 1 });
    const { differing, same } = compareSetups(asSet(), [higher, shorter]);
    expect(differing).toEqual(['shockLength', 'rearTeeth']);
    const has = ADJUSTERS.filter((each) => doesApply(each, linkedBike, sprungSetup));
    expect(same).toBe(has.length - 2);
  });

  it('have an axle that its chain places by the chain alone', () => {
    const onChain = { ...sprungSetup, chainLinks: 114, axlePosition: 3 };
    const other = { ...onChain, chainLinks: 116, axlePosition: 9 };
    expect(adjustersBetween(onChain, other)).toEqual(['chainLinks']);
    const byHand = { ...onChain, chainLinks: null, axlePosition: 9 };
    expect(adjustersBetween(onChain, byHand)).toEqual(['axlePosition', 'chainLinks']);
    expect(takeAdjuster(onChain, byHand, 'axlePosition')).toBe(byHand);
  });

  it('are taken over one adjuster at a time', () => {
    const other = { ...sprungSetup, shockLength: 4, forkTubes: sprungSetup.forkTubes + 2 };
    const half = takeAdjuster(sprungSetup, other, 'forkTubes');
    expect(half).toEqual({ ...sprungSetup, forkTubes: other.forkTubes });
    expect(takeAdjuster(half, other, 'shockLength')).toBe(other);
  });
});

describe('the measured parts of two bikes', () => {
  it('are one bike’s under another name, with other gears or with a half link', () => {
    const { drive } = linkedBike;
    const other = { ...linkedBike, name: 'Other', drive: { ...drive, gearRatios: [2.6], halfLink: true } };
    expect(partsApart(linkedBike, other)).toEqual([]);
  });

  it('are named where a figure differs', () => {
    const { fork, rearWheel } = linkedBike;
    const other = {
      ...linkedBike,
      fork: { ...fork, length: fork.length + 1 },
      rearWheel: { ...rearWheel, unsprungMass: rearWheel.unsprungMass + 1 },
    };
    expect(partsApart(linkedBike, other)).toEqual(['fork', 'rearWheel']);
  });
});
