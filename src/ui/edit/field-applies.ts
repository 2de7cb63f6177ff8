/** Which of the bike's figures say something about this bike; the form leaves the others out. */
import type { Bike } from '../../core/parts/bike.ts';
import { hasRuns } from '../../core/parts/drive-kind.ts';
import { TOUCH_KEYS, type TouchKey } from '../../core/parts/touch-parts.ts';

const runs = (bike: Bike): boolean => hasRuns(bike.drive.kind);
const hasGears = (bike: Bike): boolean => bike.drive.kind !== 'hub';
const hasStay = (bike: Bike): boolean => bike.rearBrake.caliper === 'ownStay';

const torqueArm = (bike: Bike): boolean => bike.drive.kind === 'shaft' && bike.housing.heldBy === 'torqueArm';

/** Of the chain as it is now; its own tab has their fields, beside what follows from them. */
const elsewhere = (): boolean => false;
const byTable = (bike: Bike): boolean => bike.swingarm.links === null;

const legsAlike = (bike: Bike): boolean => bike.fork.otherLeg === null;

const tyreGives =
  (end: 'frontWheel' | 'rearWheel') =>
  (bike: Bike): boolean =>
    bike[end].tyreRate !== null;

const touches =
  (key: TouchKey) =>
  (bike: Bike): boolean =>
    bike.frame.touching[key].halfWidth !== null;

const NEEDS: Readonly<Record<string, (bike: Bike) => boolean>> = {
  'swingarm.toppedOutAngleDeg': byTable,
  'swingarm.wheelTravel': byTable,
  'swingarm.tablePitchDeg': byTable,
  ...Object.fromEntries(
    TOUCH_KEYS.flatMap((key) =>
      ['x', 'y'].map((axis) => [`frame.touching.${key}.${axis}`, touches(key)] as const),
    ),
  ),
  'fork.springLegs': legsAlike,
  'frame.countershaft.x': runs,
  'frame.countershaft.y': runs,
  'frame.guideRadius': runs,
  'frame.lowerGuideRadius': runs,
  'frontWheel.tyreMeasuredUnder': tyreGives('frontWheel'),
  'rearWheel.tyreMeasuredUnder': tyreGives('rearWheel'),
  'drive.chainPitch': runs,
  'drive.leastFrontTeeth': runs,
  'drive.primaryRatio': hasGears,
  'drive.measuredLinks': elsewhere,
  'drive.measuredLength': elsewhere,
  'drive.wearLimit': elsewhere,
  'drive.leastSlack': elsewhere,
  'rearBrake.stayAnchor.x': hasStay,
  'rearBrake.stayAnchor.y': hasStay,
  'rearBrake.bracketRadius': hasStay,
  'rearBrake.stayLength': hasStay,
  'housing.armAnchor.x': torqueArm,
  'housing.armAnchor.y': torqueArm,
  'housing.boltRadius': torqueArm,
  'housing.armLength': torqueArm,
};

/** Whether the form shows a field, by its path, for this bike. */
export function fieldApplies(bike: Bike, path: string): boolean {
  return NEEDS[path]?.(bike) ?? true;
}
