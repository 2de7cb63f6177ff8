/** Tests of what a rider is warned of. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup, withFork, withFrame } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { warningsFor } from './warnings.ts';

it('a bike with room everywhere is warned of nothing, nor is one whose clamps are not known', () => {
  const roomy = withFork(plainBike, { leastHeight: 0, lowerClampDepth: 200 });
  expect(warningsFor(standing(roomy))).toEqual([]);
  expect(warningsFor(standing())).toEqual([]);
});

it('a tyre that would meet the clamp, and a tube that hardly reaches it, are each warned of', () => {
  const tight = withFork(plainBike, { lowerClampDepth: 301 });
  expect(warningsFor(standing(tight))).toEqual(['tyreHitsClamp']);
  const low = { ...plainSetup, forkTubes: 1 };
  expect(warningsFor(standing(withFork(plainBike, { leastHeight: 2 }), low))).toEqual(['tubeTooShort']);
});

it('a chain that lies on its guide is warned of, with chain and belt only', () => {
  const low = withFrame(plainBike, { countershaft: { x: 75, y: -30 }, guideRadius: 40 });
  expect(warningsFor(standing(low))).toEqual(['chainOnGuide']);
  const shaft = { ...low, drive: { ...low.drive, kind: 'shaft' as const } };
  expect(warningsFor(standing(shaft))).toEqual([]);
});

it('little trail comes first', () => {
  const tight = withFork(plainBike, { lowerClampDepth: 330 });
  expect(warningsFor(standing(tight, { ...plainSetup, clampOffset: 60 }))).toEqual([
    'steepAndShort',
    'tyreHitsClamp',
  ]);
});
