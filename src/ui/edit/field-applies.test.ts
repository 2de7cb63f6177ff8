/** Tests of which figures the form shows. */
import { expect, it } from 'vitest';
import { plainBike } from '../../../tests/support/plain-bike.ts';
import type { Bike } from '../../core/parts/bike.ts';
import { TOUCH_KEYS } from '../../core/parts/touch-parts.ts';
import { BIKE_FIELDS } from '../../document/fields/editable-fields.ts';
import { fieldApplies } from './field-applies.ts';

const hidden = (bike: Bike) =>
  BIKE_FIELDS.map(({ path }) => path).filter((path) => !fieldApplies(bike, path));
/** Asked for in the Chain tab, beside what follows from them, whatever the drive. */
const OF_CHAIN = ['drive.measuredLinks', 'drive.measuredLength', 'drive.wearLimit', 'drive.leastSlack'];
/** Only of tyres that give. */
const OF_TYRES = ['frontWheel.tyreMeasuredUnder', 'rearWheel.tyreMeasuredUnder'];
/** Only of a shaft whose housing a torque arm holds. */
const OF_TORQUE_ARM = [
  'housing.armAnchor.x',
  'housing.armAnchor.y',
  'housing.boltRadius',
  'housing.armLength',
];
/** Only of parts that may touch, as far as they are measured. */
const OF_PARTS = TOUCH_KEYS.flatMap((key) => [`frame.touching.${key}.x`, `frame.touching.${key}.y`]);
const driven = (kind: Bike['drive']['kind']): Bike => ({
  ...plainBike,
  drive: { ...plainBike.drive, kind },
  rearBrake: { ...plainBike.rearBrake, caliper: 'ownStay' },
});

it('all figures are, of a bike with a chain and a caliper on a stay, but those of the Chain tab', () => {
  expect(hidden(driven('chain'))).toEqual([...OF_PARTS, ...OF_TYRES, ...OF_CHAIN, ...OF_TORQUE_ARM]);
  expect(hidden(driven('belt'))).toEqual([...OF_PARTS, ...OF_TYRES, ...OF_CHAIN, ...OF_TORQUE_ARM]);
});

it('those of run and guide are not with a shaft, and those of the gearbox not with a hub motor', () => {
  const ofRuns = [
    'frame.countershaft.x',
    'frame.countershaft.y',
    'frame.guideRadius',
    'frame.lowerGuideRadius',
    ...OF_PARTS,
    ...OF_TYRES,
    'drive.chainPitch',
    'drive.leastFrontTeeth',
  ];
  expect(hidden(driven('shaft'))).toEqual([...ofRuns, ...OF_CHAIN, ...OF_TORQUE_ARM]);
  expect(hidden(driven('hub'))).toEqual([...ofRuns, 'drive.primaryRatio', ...OF_CHAIN, ...OF_TORQUE_ARM]);
});

it('those of the stay are not with a caliper on the swingarm', () => {
  expect(hidden(plainBike)).toEqual([
    ...OF_PARTS,
    ...OF_TYRES,
    ...OF_CHAIN,
    ...OF_TORQUE_ARM,
    'rearBrake.stayAnchor.x',
    'rearBrake.stayAnchor.y',
    'rearBrake.bracketRadius',
    'rearBrake.stayLength',
  ]);
});

it('those of a torque arm are, of a shaft whose housing one holds', () => {
  const shaft = driven('shaft');
  const held = { ...shaft, housing: { ...shaft.housing, heldBy: 'torqueArm' as const } };
  for (const path of OF_TORQUE_ARM) expect(hidden(held)).not.toContain(path);
});

it('the weight that a tyre was measured under is, of a tyre that gives', () => {
  const gives = { ...plainBike, frontWheel: { ...plainBike.frontWheel, tyreRate: 160 } };
  expect(hidden(gives)).not.toContain('frontWheel.tyreMeasuredUnder');
  expect(hidden(gives)).toContain('rearWheel.tyreMeasuredUnder');
});

it('the place of a part that may touch is, once its half width is known', () => {
  const { touching } = plainBike.frame;
  const known = { ...touching, belly: { ...touching.belly, halfWidth: 120 } };
  const bike = { ...plainBike, frame: { ...plainBike.frame, touching: known } };
  expect(hidden(bike)).toEqual(hidden(plainBike).filter((path) => !path.startsWith('frame.touching.belly')));
});
