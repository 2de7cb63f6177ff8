/** The whole bike standing on the ground at given travel: every point and force line that readings are made of. */
import { refuse } from '../numeric/refusal.ts';
import { effectiveOffset, frontAxle } from '../chassis/front-end.ts';
import { onGround, poseOnGround, type Pose } from '../chassis/pose.ts';
import { chainSlope, swingarmSlope } from '../drive/squat-slope.ts';
import { hasRuns } from '../parts/drive-kind.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import { suspensionAt, type SuspensionAt } from '../linkage/suspension.ts';
import type { Point } from '../plane/point.ts';
import type { Machine } from './machine.ts';
import { stayHold, type StayHold } from './rear-brake.ts';
import { staySlope } from './stay-slope.ts';
import { travelWithin } from './travel-within.ts';

/** Travel used from topped out, mm: fork along the legs, rear axle square to the ground with the frame held. */
export interface Travel {
  readonly front: number;
  readonly rear: number;
}

/**
 * A bike on its wheels. Ground frame: seen from its right side, mm, x forward, y up, from the rear contact
 * patch; angles in radians, counter-clockwise.
 */
export interface Stance {
  readonly ok: true;
  readonly machine: Machine;
  readonly travel: Travel;
  readonly pose: Pose;
  readonly arm: SuspensionAt;
  /** Steering axis from vertical, leaning back positive. */
  readonly rake: number;
  /** Front axle ahead of the steering axis, square to it. */
  readonly offset: number;
  readonly rearAxle: Point;
  readonly frontAxle: Point;
  readonly countershaft: Point;
  /** Line pivot → rear axle below horizontal. */
  readonly swingarmAngle: number;
  /**
   * Free upper run above the pivot, square to the run, as if no guide were there; negative when it would pass below. This
   * and the pull's lever mean nothing with a shaft or hub drive, whose chain slope is zero without a torque arm.
   */
  readonly upperRunLever: number;
  /** Lever of the chain's pull about the pivot: the free run's, or the guide's radius when the run bends. */
  readonly pullLever: number;
  /** What holds the housing of a shaft; null without a torque arm. */
  readonly torqueHold: StayHold | null;
  /** The two parts of the squat line's slope; see squat-slope.ts. A torque arm's part counts as the chain's. */
  readonly swingarmSlope: number;
  readonly chainSlope: number;
  /** Whole mass with rider and load, kg, and its centre. With no mass at all the centre is the rear patch. */
  readonly mass: number;
  readonly centre: Point;
}

/** Least distance of the pivot ahead of the rear contact patch for the arm to be a swingarm, mm. */
const LEAST_PIVOT_AHEAD = 10;
/** Least length of fork that must remain between top clamp and axle, mm. */
const LEAST_LEG = 50;
/** Most rake at which the axis still meets the ground ahead of the bike, radians. */
const MOST_RAKE = 1.3;

/** Stands the machine on the ground at the travel asked for, or says which parts cannot meet. */
export function stance(machine: Machine, asked: Travel): Stance | NoLinkage {
  const { front } = machine;
  if (!Number.isFinite(asked.front) || !Number.isFinite(asked.rear)) return refuse('inputNotANumber');
  const beyond = asked.front > front.travel || asked.rear > machine.rear.wheelTravel;
  const travel = beyond
    ? {
        front: travelWithin(asked.front, front.travel),
        rear: travelWithin(asked.rear, machine.rear.wheelTravel),
      }
    : asked;
  if (travel.front > front.travel || travel.front < 0)
    return refuse('forkTravelBeyond', { end: 'front', found: travel.front, limit: front.travel });
  if (travel.rear > machine.rear.wheelTravel || travel.rear < 0)
    return refuse('rearTravelBeyond', { end: 'rear', found: travel.rear, limit: machine.rear.wheelTravel });
  const leg = front.legLength - travel.front;
  if (!(leg >= LEAST_LEG)) return refuse('forkTooShort', { end: 'front', found: leg, limit: LEAST_LEG });
  const arm = suspensionAt(machine.rear, travel.rear);
  if (!arm.ok) return arm;

  const rearFrameX = -machine.rear.arm * arm.cos;
  const rearFrameY = -machine.rear.arm * arm.sin;
  const axle = frontAxle(front, travel.front);
  const { rearRadius, frontRadius } = machine;
  const pose = poseOnGround(rearFrameX, rearFrameY, axle.x, axle.y, rearRadius, frontRadius);
  if (!pose.ok) return pose;
  const rake = front.axisAngle + pose.pitch;
  if (!(Math.abs(rake) < MOST_RAKE)) return refuse('axisFlat', { found: rake, limit: MOST_RAKE });
  const { cos, sin } = pose;
  const { x: pivotX, y: pivotY } = pose.pivot;
  if (!(pivotX >= LEAST_PIVOT_AHEAD))
    return refuse('pivotBehindPatch', { found: pivotX, limit: LEAST_PIVOT_AHEAD });

  const countershaft = onGround(pose, machine.places.countershaft);
  const centresX = countershaft.x;
  const centresY = countershaft.y - rearRadius;
  const square = centresX * centresX + centresY * centresY;
  const centres = Math.sqrt(square);
  const difference = machine.rearSprocketRadius - machine.frontSprocketRadius;
  const between = machine.rearSprocketRadius + machine.frontSprocketRadius;
  const runs = hasRuns(machine.driveKind);
  if (runs && !(centres > between)) return refuse('sprocketsOverlap', { found: centres, limit: between });
  if (runs && !(centresX > 0)) return refuse('countershaftBehindAxle');
  const runLength = runs ? Math.sqrt(square - difference * difference) : 0;
  // The way of the upper run, as `chainRun` has it; only here it is no object, because a search makes millions of stances.
  const topCos = runs ? (centresX * runLength + centresY * difference) / square : 0;
  const topSin = runs ? (centresY * runLength - centresX * difference) / square : 0;
  // The upper run passes the rear axle at the rear pitch radius, on its upper side.
  const upperRunLever = machine.rearSprocketRadius - ((pivotY - rearRadius) * topCos - pivotX * topSin);
  // The guide can only bend a run that passes the pivot between its ends.
  const pivotAlong = (pivotY - rearRadius) * topSin + pivotX * topCos;
  const passesPivot = pivotAlong > 0 && pivotAlong < runLength;
  const pullLever =
    machine.guideRadius !== null && passesPivot && upperRunLever < machine.guideRadius
      ? machine.guideRadius
      : upperRunLever;

  const torqueHold =
    machine.torqueArm === null ? null : stayHold(machine.torqueArm, machine.rear.arm, arm.angle);
  if (torqueHold !== null && !torqueHold.ok) {
    const { found, limit } = torqueHold;
    const reason = torqueHold.reason === 'stayThroughAxle' ? 'torqueArmInLine' : 'torqueArmCannotClose';
    return refuse(reason, { end: 'rear', found, limit });
  }
  const torqueSlope = torqueHold === null ? 0 : staySlope(torqueHold, rearRadius, pivotX);

  const { rearUnsprung, frontUnsprung, armMoment } = machine;
  let mass = 0;
  let momentX = 0;
  let momentY = 0;
  for (const { mass: part, at, height } of machine.carried) {
    mass += part;
    momentX += part * (pivotX + cos * at.x - sin * at.y);
    momentY += part * (pivotY + sin * at.x + cos * at.y + height);
  }
  mass = mass + rearUnsprung + frontUnsprung;
  momentX += frontUnsprung * pose.wheelbase;
  momentY = momentY + rearUnsprung * rearRadius + frontUnsprung * frontRadius;
  const swingarmAngle = arm.angle + pose.pitch;
  if (armMoment !== 0) {
    momentX -= armMoment * Math.sin(swingarmAngle);
    momentY += armMoment * Math.cos(swingarmAngle);
  }

  return {
    ok: true,
    machine,
    travel,
    pose,
    arm,
    rake,
    offset: effectiveOffset(front, travel.front),
    rearAxle: { x: 0, y: rearRadius },
    frontAxle: { x: pose.wheelbase, y: frontRadius },
    countershaft,
    swingarmAngle,
    upperRunLever,
    pullLever,
    torqueHold,
    swingarmSlope: swingarmSlope(pivotX, pivotY),
    chainSlope: runs ? chainSlope(pivotX, pullLever, rearRadius, machine.rearSprocketRadius) : torqueSlope,
    mass,
    centre: mass > 0 ? { x: momentX / mass, y: momentY / mass } : { x: 0, y: 0 },
  };
}
