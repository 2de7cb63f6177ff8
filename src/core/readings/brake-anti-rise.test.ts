/** Tests of the reading brakeAntiRise: the worked number and its absences. */
import { expect, it } from 'vitest';
import { stanceWith } from '../../../tests/support/standing.ts';
import type { RearBrake } from '../standing/rear-brake.ts';
import { brakeAntiRise } from './brake-anti-rise.ts';
import { absent } from './absent.ts';

const stay: RearBrake = {
  caliper: 'ownStay',
  anchor: { x: 0, y: 0 },
  bracketRadius: 90,
  stayLength: 580,
  bracketSide: 'above',
};

it('of a pivot 342 up and 570 ahead with a load-transfer slope of 0.4 is 150, the caliper on the arm', () => {
  const on = stanceWith({
    centre: { y: 560 },
    pose: { wheelbase: 1400, pivot: { x: 570, y: 342 } },
    machine: { brake: { caliper: 'onArm' } },
  });
  expect(brakeAntiRise.read(on)).toBeCloseTo(150, 10);
});

it('with a stay to the pivot itself is that of a caliper on the arm, whatever its length', () => {
  const onArm = brakeAntiRise.read(stanceWith({ machine: { brake: { caliper: 'onArm' } } }));
  for (const stayLength of [550, 580, 600])
    expect(brakeAntiRise.read(stanceWith({ machine: { brake: { ...stay, stayLength } } }))).toBeCloseTo(
      Number(onArm),
      9,
    );
});

it('has no number where the stay cannot reach, points at the axle, or the bike has no centre of gravity', () => {
  const held = (brake: RearBrake) => brakeAntiRise.read(stanceWith({ machine: { brake } }));
  expect(held({ ...stay, stayLength: 100 })).toBe(absent('stayCannotClose'));
  expect(held({ ...stay, bracketRadius: 0.5 })).toBe(absent('stayThroughAxle'));
  expect(brakeAntiRise.read(stanceWith({ mass: 0 }))).toBe(absent('noMass'));
});
