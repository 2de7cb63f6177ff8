/** Tests of what a rider is warned of. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup, withFork, withFrame } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import type { Bike } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import { standBike } from '../riding/stand-bike.ts';
import { trail } from './trail.ts';
import { warningsFor, type Warning } from './warnings.ts';

/** The warnings of a bike judged as it stands. */
function warned(bike?: Bike, setup?: Setup): Warning[] {
  const on = standing(bike, setup);
  return warningsFor(on, on);
}

it('a bike with room everywhere is warned of nothing, nor is one whose clamps are not known', () => {
  const roomy = withFork(plainBike, { leastHeight: 0, lowerClampDepth: 200 });
  expect(warned(roomy)).toEqual([]);
  expect(warned()).toEqual([]);
});

it('a tyre that would meet the clamp, and a tube that hardly reaches it, are each warned of', () => {
  const tight = withFork(plainBike, { lowerClampDepth: 301 });
  expect(warned(tight)).toEqual(['tyreHitsClamp']);
  const low = { ...plainSetup, forkTubes: 1 };
  expect(warned(withFork(plainBike, { leastHeight: 2 }), low)).toEqual(['tubeTooShort']);
});

it('a chain that lies on its guide is warned of, with chain and belt only', () => {
  const low = withFrame(plainBike, { countershaft: { x: 75, y: -30 }, guideRadius: 40 });
  expect(warned(low)).toEqual(['chainOnGuide']);
  const shaft = { ...low, drive: { ...low.drive, kind: 'shaft' as const } };
  expect(warned(shaft)).toEqual([]);
});

it('little trail comes first', () => {
  const tight = withFork(plainBike, { lowerClampDepth: 330 });
  expect(warned(tight, { ...plainSetup, clampOffset: 60 })).toEqual(['steepAndShort', 'tyreHitsClamp']);
});

it('a pivot inside the rear tyre, tyres in one another and sprockets on the ground are each warned of', () => {
  expect(warned(plainBike, { ...plainSetup, rearTyre: { diameter: 1170 } })).toContain('pivotInTyre');
  expect(
    warned(plainBike, { ...plainSetup, frontTyre: { diameter: 1500 }, rearTyre: { diameter: 1500 } }),
  ).toContain('tyresOverlap');
  expect(warned(plainBike, { ...plainSetup, rearTyre: { diameter: 210 } })).toContain('rearSprocketOnGround');
  const deep = withFrame(plainBike, { countershaft: { x: 90, y: -385 } });
  expect(warned(deep)).toContain('frontSprocketOnGround');
  expect(warned({ ...deep, drive: { ...deep.drive, kind: 'shaft' } })).not.toContain('frontSprocketOnGround');
});

it('tubes that end below the top of the clamp are warned of, extenders or not', () => {
  expect(warned(plainBike, { ...plainSetup, forkTubes: -1 })).toEqual(['tubeOutOfClamp']);
  expect(warned(plainBike, { ...plainSetup, forkTubes: 0 })).toEqual([]);
  expect(warned(plainBike, { ...plainSetup, forkTubes: 5, forkExtenders: 8 })).toEqual(['tubeOutOfClamp']);
});

it('trail is judged at rest with the rider on board, not on the brakes', () => {
  const { bike, setup } = SPRUNG_ROAD;
  const stood = (clampOffset: number, state: 'riderUp' | 'braking') => {
    const on = standBike(bike, { ...setup, clampOffset }, state);
    if (!on.ok) throw new Error(on.reason);
    return on;
  };
  const short = (offset: number) => [
    Number(trail.read(stood(offset, 'riderUp'))),
    Number(trail.read(stood(offset, 'braking'))),
  ];
  const between = Array.from({ length: 40 }, (_, i) => 20 + i).find((offset) => {
    const [rested, braked] = short(offset);
    return rested > 80 && braked < 80;
  });
  if (between === undefined) throw new Error('no offset has the trail cross the limit under braking');
  expect(warningsFor(stood(between, 'braking'), stood(between, 'riderUp'))).not.toContain('steepAndShort');
  expect(warningsFor(stood(between, 'braking'), stood(between, 'braking'))).toContain('steepAndShort');
});
