/** Every part that a tape or a gauge can be held to, with its name. */
import { POINTS, type PointKey } from '../../sketch/points.ts';
import type { Bike } from '../../parts/bike.ts';
import { eachTouchPart } from '../../parts/touch-parts.ts';
import { hasRuns } from '../../parts/drive-kind.ts';

/** `point` and `mark`: one place, a mark being any place on the frame that a person chooses; `line`: what a gauge lies along. */
export type PartShape = 'point' | 'mark' | 'line' | 'wheel' | 'sprocket';

export interface MeasurePart {
  readonly label: string;
  /** Where it is on a motorcycle. */
  readonly help: string;
  readonly shape: PartShape;
  readonly applies: (bike: Bike) => boolean;
}

type Applies = MeasurePart['applies'];

const always: Applies = () => true;
const runs: Applies = ({ drive }) => hasRuns(drive.kind);

function part(shape: PartShape, label: string, help: string, applies: Applies = always): MeasurePart {
  return { label, help, shape, applies };
}

function point(key: PointKey): MeasurePart {
  const { label, help, applies } = POINTS[key];
  return { label, help, shape: 'point', applies };
}

const parts = {
  rearAxle: point('rearAxle'),
  frontAxle: point('frontAxle'),
  pivot: point('pivot'),
  countershaft: point('countershaft'),
  steeringHead: point('steeringHead'),
  axisFoot: point('axisFoot'),
  seat: point('seat'),
  passengerSeat: point('passengerSeat'),
  loadMark: point('loadMark'),
  tank: point('tank'),
  ...eachTouchPart(point),
  shockOnFrame: point('shockOnFrame'),
  shockOnArm: point('shockOnArm'),
  rockerPivot: point('rockerPivot'),
  rodOnRocker: point('rodOnRocker'),
  shockOnRocker: point('shockOnRocker'),
  rodOnArm: point('rodOnArm'),
  rodOnFrame: point('rodOnFrame'),
  shockFarEnd: point('shockFarEnd'),
  markA: part(
    'mark',
    'Mark A',
    'Any place on the frame that you mark, such as a bolt head or a piece of tape.',
  ),
  markB: part('mark', 'Mark B', 'A second place on the frame that you mark.'),
  markC: part('mark', 'Mark C', 'A third place on the frame that you mark.'),
  forkLeg: part('line', 'Fork leg', 'Along the fork tube, or across the top clamp turned by 90°.'),
  swingarm: part('line', 'Swingarm', 'The line from the pivot to the rear axle.'),
  upperRun: part('line', 'Upper chain run', 'Along the top of the chain, pulled tight.', runs),
  lowerRun: part('line', 'Lower chain run', 'Along the bottom of the chain, pulled tight.', runs),
  frameRail: part(
    'line',
    'Frame rail',
    'Any straight rail or face of the frame; it helps in two states only.',
  ),
  frontWheel: part('wheel', 'Front wheel', 'The front tyre on its rim.'),
  rearWheel: part('wheel', 'Rear wheel', 'The rear tyre on its rim.'),
  frontSprocket: part('sprocket', 'Front sprocket', 'The sprocket on the gearbox.', runs),
  rearSprocket: part('sprocket', 'Rear sprocket', 'The sprocket on the rear wheel.', runs),
} as const satisfies Readonly<Record<string, MeasurePart>>;

export type MeasurePartKey = keyof typeof parts;

export const MEASURE_PARTS: Readonly<Record<MeasurePartKey, MeasurePart>> = parts;

export const MEASURE_PART_KEYS = Object.keys(parts) as readonly MeasurePartKey[];
