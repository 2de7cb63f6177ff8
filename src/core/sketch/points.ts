/** The points of a bike that a person puts where they are, and where each stands on the ground frame. */
import type { Bike } from '../parts/bike.ts';
import { hasRuns } from '../parts/drive-kind.ts';
import { onGround } from '../chassis/pose.ts';
import type { LinkPointKey } from '../linkage/link-drawing.ts';
import { linkPoints } from '../linkage/link-points.ts';
import type { Point } from '../plane/point.ts';
import type { Stance } from '../standing/stance.ts';

/** The points that every bike has, but for the countershaft. */
export type PartKey =
  | 'pivot'
  | 'rearAxle'
  | 'frontAxle'
  | 'countershaft'
  | 'steeringHead'
  | 'axisFoot'
  | 'sprungCentre'
  | 'seat'
  | 'passengerSeat'
  | 'tank'
  | 'loadMark'
  | 'rearPatch'
  | 'frontPatch';

export type PointKey = PartKey | LinkPointKey;

/** A point with its name on the page and one sentence on where it is on a motorcycle. */
export interface SketchPoint {
  readonly key: PointKey;
  readonly label: string;
  readonly help: string;
}

export const PART_POINTS: readonly (SketchPoint & { readonly key: PartKey })[] = [
  { key: 'pivot', label: 'Swingarm pivot', help: 'Centre of the swingarm pivot bolt.' },
  { key: 'rearAxle', label: 'Rear axle', help: 'Centre of the rear axle.' },
  {
    key: 'rearPatch',
    label: 'Rear contact patch',
    help: 'Where the rear tyre meets the ground; sets its diameter.',
  },
  { key: 'countershaft', label: 'Countershaft sprocket', help: 'Centre of the front sprocket.' },
  { key: 'steeringHead', label: 'Steering head', help: 'Steering axis at the top of the upper clamp.' },
  {
    key: 'axisFoot',
    label: 'Steering axis, lower end',
    help: 'Any second place on the steering axis: the bottom of the head tube.',
  },
  { key: 'frontAxle', label: 'Front axle', help: 'Centre of the front axle.' },
  {
    key: 'frontPatch',
    label: 'Front contact patch',
    help: 'Where the front tyre meets the ground; sets its diameter.',
  },
  {
    key: 'sprungCentre',
    label: 'Sprung centre of gravity',
    help: 'Centre of gravity of all that the springs carry, without rider and load.',
  },
  { key: 'seat', label: 'Seat mark', help: 'Where the rider’s weight meets the seat.' },
  { key: 'passengerSeat', label: 'Passenger’s seat', help: 'Where the passenger’s weight meets the seat.' },
  { key: 'tank', label: 'Tank', help: 'Centre of the fuel in the tank.' },
  { key: 'loadMark', label: 'Load mark', help: 'Where luggage rests.' },
];

/** The bolts of real rear links; a layout has some of them. */
export const BOLT_POINTS: readonly (SketchPoint & { readonly key: LinkPointKey })[] = [
  { key: 'shockOnFrame', label: 'Shock on frame', help: 'Centre of the shock’s upper bolt.' },
  { key: 'shockOnArm', label: 'Shock on swingarm', help: 'Centre of the shock’s lower bolt.' },
  { key: 'rockerPivot', label: 'Rocker pivot', help: 'Bolt that the rocker turns on.' },
  { key: 'rodOnRocker', label: 'Rod on rocker', help: 'Bolt that joins rod and rocker.' },
  { key: 'shockOnRocker', label: 'Shock on rocker', help: 'Bolt that joins shock and rocker.' },
  { key: 'rodOnArm', label: 'Rod on swingarm', help: 'The rod’s bolt on the swingarm.' },
  { key: 'rodOnFrame', label: 'Rod on frame', help: 'The rod’s bolt on the frame.' },
  {
    key: 'shockFarEnd',
    label: 'Shock, other end',
    help: 'The shock’s bolt away from the rocker, on frame or swingarm.',
  },
];

/** Every point that some bike has. */
export const SKETCH_POINTS: readonly SketchPoint[] = [...PART_POINTS, ...BOLT_POINTS];

/** The points that this bike has: no countershaft without a run of chain or belt, and the bolts of its own links. */
export function pointsOf({ drive, swingarm }: Bike): readonly SketchPoint[] {
  const runs = hasRuns(drive.kind);
  const parts = PART_POINTS.filter(({ key }) => runs || key !== 'countershaft');
  const { links } = swingarm;
  return links === null ? parts : [...parts, ...BOLT_POINTS.filter(({ key }) => key in links)];
}

/** Whether a point is a bolt of the rear links. */
export function isBolt(key: PointKey): key is LinkPointKey {
  return BOLT_POINTS.some((bolt) => bolt.key === key);
}

/** Where the steering axis passes the bottom of the head tube, frame coordinates. */
export function axisFootInFrame({ machine }: Stance, headTubeLength: number): Point {
  const { head, axisAngle } = machine.front;
  return {
    x: head.x + headTubeLength * Math.sin(axisAngle),
    y: head.y - headTubeLength * Math.cos(axisAngle),
  };
}

/** Where a point stands, ground frame, mm. `headTubeLength` is the bike's. Null for a bolt that its links have not. */
export function pointPlace(stance: Stance, key: PointKey, headTubeLength: number): Point | null {
  return isBolt(key) ? boltPlace(stance, key) : partPlace(stance, key, headTubeLength);
}

function boltPlace(stance: Stance, key: LinkPointKey): Point | null {
  const { rear } = stance.machine;
  const points = rear.kind === 'links' ? linkPoints(rear.links, stance.arm.angle) : null;
  const found = points?.find((point) => point.key === key);
  return found === undefined ? null : onGround(stance.pose, found.place);
}

/** Where a part stands, ground frame, mm; for a shaft or hub the countershaft's place means nothing. */
export function partPlace(stance: Stance, key: PartKey, headTubeLength: number): Point {
  const { machine } = stance;
  switch (key) {
    case 'pivot':
      return stance.pose.pivot;
    case 'rearAxle':
      return stance.rearAxle;
    case 'frontAxle':
      return stance.frontAxle;
    case 'rearPatch':
      return { x: 0, y: 0 };
    case 'frontPatch':
      return { x: stance.pose.wheelbase, y: 0 };
    case 'countershaft':
      return stance.countershaft;
    case 'steeringHead':
      return onGround(stance.pose, machine.front.head);
    case 'axisFoot': {
      return onGround(stance.pose, axisFootInFrame(stance, headTubeLength));
    }
    case 'sprungCentre':
    case 'seat':
    case 'passengerSeat':
    case 'tank':
    case 'loadMark':
      return onGround(stance.pose, machine.places[key]);
  }
}
