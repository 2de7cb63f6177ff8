/** The rear brake's hold on the bike: caliper on the swingarm, or on a bracket with a stay. */
import { refuse } from '../numeric/refusal.ts';
import type { FramePoint } from '../parts/frame-point.ts';
import type { Point } from '../plane/point.ts';
import type { HousingMount, RearBrakeMount } from '../parts/bike.ts';
import type { PivotMove } from '../adjusters/machine-part-adjusters.ts';
import { fromPivot } from '../chassis/pivot-move.ts';
import { swingarmSlope } from '../drive/squat-slope.ts';
import type { NoEquilibrium } from './no-equilibrium.ts';

export type RearBrake =
  | { readonly caliper: 'onArm' }
  | {
      readonly caliper: 'ownStay';
      /** Where the stay is bolted to the frame. */
      readonly anchor: FramePoint;
      /** Rear axle to where the stay is bolted to the caliper's bracket, mm. */
      readonly bracketRadius: number;
      /** Bolt to bolt, mm. */
      readonly stayLength: number;
      /** On which side of the line from axle to anchor the bracket's bolt lies. */
      readonly bracketSide: 'above' | 'below';
    };

/** The torque arm that holds a shaft's housing, as a stay; null where the swingarm holds it. */
export function torqueArmOf(mount: HousingMount, setup: PivotMove): StayedBrake | null {
  const { heldBy, armAnchor, boltRadius, armLength, boltSide } = mount;
  if (heldBy === 'swingarm') return null;
  return {
    caliper: 'ownStay',
    anchor: fromPivot(armAnchor, setup),
    bracketRadius: boltRadius,
    stayLength: armLength,
    bracketSide: boltSide,
  };
}

/**
 * The rear brake of a bike, its stay's anchor seen from the pivot where the adjusters hold it. A caliper on a shaft's
 * housing brakes through what holds the housing.
 */
export function rearBrakeOf(
  mount: RearBrakeMount,
  setup: PivotMove,
  torqueArm: StayedBrake | null,
): RearBrake {
  const { caliper, stayAnchor, bracketRadius, stayLength, bracketSide } = mount;
  if (caliper === 'onHousing') return torqueArm ?? { caliper: 'onArm' };
  return caliper === 'onArm'
    ? { caliper }
    : { caliper, anchor: fromPivot(stayAnchor, setup), bracketRadius, stayLength, bracketSide };
}

/** The part of a machine that the rear brake's hold depends on, mm. */
export interface BrakedMachine {
  readonly rear: { readonly arm: number };
  readonly rearRadius: number;
}

/** Closer to the axle than this the stay cannot hold the caliper, mm. */
const LEAST_LEVER = 1;

export type StayedBrake = Extract<RearBrake, { readonly caliper: 'ownStay' }>;

/** A caliper's stay as it lies, frame coordinates, mm: the bracket's bolt, the frame's, and the rear axle. */
export interface StayPlaces {
  readonly ok: true;
  readonly axle: FramePoint;
  readonly bolt: FramePoint;
  readonly anchor: FramePoint;
}

/**
 * Where the stay lies with the arm at `armAngle` below the frame's x axis, radians: bracket and stay as two bars
 * between axle and anchor. No answer when they cannot reach.
 */
export function stayPlaces(brake: StayedBrake, arm: number, armAngle: number): StayPlaces | NoEquilibrium {
  const { anchor, bracketRadius, stayLength, bracketSide } = brake;
  const axle = { x: -arm * Math.cos(armAngle), y: -arm * Math.sin(armAngle) };
  const toX = anchor.x - axle.x;
  const toY = anchor.y - axle.y;
  const apart = Math.hypot(toX, toY);
  const along = (apart * apart + bracketRadius * bracketRadius - stayLength * stayLength) / (2 * apart);
  const square = bracketRadius * bracketRadius - along * along;
  if (!(square > 0 && bracketRadius > 0 && stayLength > 0))
    return refuse('stayCannotClose', { end: 'rear', found: stayLength });
  const aside = Math.sqrt(square) * (bracketSide === 'above' ? 1 : -1) * (toX >= 0 ? 1 : -1);
  const bolt = {
    x: axle.x + (along * toX - aside * toY) / apart,
    y: axle.y + (along * toY + aside * toX) / apart,
  };
  return { ok: true, axle, bolt, anchor };
}

/** A stay that holds the caliper, frame coordinates. */
export interface StayHold extends StayPlaces {
  /** Direction from the bracket's bolt to the anchor. */
  readonly stayX: number;
  readonly stayY: number;
  /** Distances of the stay's line from axle and pivot, mm, positive where a pull toward the anchor turns counter-clockwise. */
  readonly aboutAxle: number;
  readonly aboutPivot: number;
}

/** How the stay holds the caliper with the arm at `armAngle`; no answer when it cannot reach or passes through the axle. */
export function stayHold(brake: StayedBrake, arm: number, armAngle: number): StayHold | NoEquilibrium {
  const places = stayPlaces(brake, arm, armAngle);
  if (!places.ok) return places;
  const { axle, bolt, anchor } = places;
  const stayX = (anchor.x - bolt.x) / brake.stayLength;
  const stayY = (anchor.y - bolt.y) / brake.stayLength;
  const aboutAxle = (bolt.x - axle.x) * stayY - (bolt.y - axle.y) * stayX;
  const aboutPivot = bolt.x * stayY - bolt.y * stayX;
  return Math.abs(aboutAxle) >= LEAST_LEVER
    ? { ok: true, axle, bolt, anchor, stayX, stayY, aboutAxle, aboutPivot }
    : refuse('stayThroughAxle', { end: 'rear', found: Math.abs(aboutAxle), limit: LEAST_LEVER });
}

/**
 * Slope (rise per run toward the front) of the line from the rear contact patch along which a rear braking force may
 * act without loading or unloading the rear spring. Caliper on the arm: through the pivot. Caliper on a stay: through
 * the crossing of arm line and stay, found from the stay's force (braking moment over its distance from the axle) and
 * its moment about the pivot, so that parallel lines need no special case. `armAngle` is that of the arm below the
 * frame's x axis, radians; pivot in the ground frame, mm. No answer when the stay cannot reach or passes through the
 * axle.
 */
export function rearBrakeSlope(
  brake: RearBrake,
  machine: BrakedMachine,
  armAngle: number,
  pivot: Point,
): number | NoEquilibrium {
  const arm = swingarmSlope(pivot.x, pivot.y);
  if (brake.caliper === 'onArm') return arm;
  const hold = stayHold(brake, machine.rear.arm, armAngle);
  return hold.ok ? arm - (machine.rearRadius * hold.aboutPivot) / (hold.aboutAxle * pivot.x) : hold;
}
