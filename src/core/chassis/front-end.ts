/** The front end in frame coordinates: steering axis, fork legs and front axle. */
import { radians } from '../units/convert.ts';
import type { Bike } from './bike.ts';
import { fromPivot } from './pivot-move.ts';
import type { Setup } from './setup.ts';

/** Lengths and directions of the front end that the dials fix, before any travel is used; mm, radians. */
export interface FrontEnd {
  /** The point of the axis at the top clamp, frame coordinates. */
  readonly headX: number;
  readonly headY: number;
  /** Lean of the axis back from the frame's y axis, head insert included. */
  readonly axisAngle: number;
  /** Lean of the legs back from the frame's y axis. */
  readonly legLean: number;
  readonly clampOffset: number;
  readonly axleLead: number;
  /** Top clamp to axle along the legs, topped out. */
  readonly legLength: number;
  readonly travel: number;
  /** Fork tube, without an extender on it, standing out above the top clamp, mm. */
  readonly tubeAbove: number;
  /** Tube beyond the least that the clamps must hold, mm; null when that is not known. */
  readonly tubeSpare: number | null;
  /** Top of the upper clamp down to the underside of the lower one, along the legs, mm; null when not known. */
  readonly lowerClampDepth: number | null;
}

/**
 * The front end as dialled, in coordinates of the pivot where it stands. A head insert turns axis and clamps about the middle of the head tube, so the point
 * at the top clamp moves a little as well. Legs stand out by the fork height, which takes length away below.
 */
export function frontEnd(bike: Bike, setup: Setup): FrontEnd {
  const { axisAngleDeg, headTubeLength } = bike.frame;
  const { leastHeight, lowerClampDepth } = bike.fork;
  const steeringHead = fromPivot(bike.frame.steeringHead, setup);
  const drawn = radians(axisAngleDeg);
  const axisAngle = radians(axisAngleDeg + setup.headInsertDeg);
  const half = headTubeLength / 2;
  return {
    headX: steeringHead.x + half * (Math.sin(drawn) - Math.sin(axisAngle)),
    headY: steeringHead.y - half * (Math.cos(drawn) - Math.cos(axisAngle)),
    axisAngle,
    legLean: axisAngle - radians(bike.fork.legAngleDeg),
    clampOffset: setup.clampOffset,
    axleLead: bike.fork.axleLead,
    legLength: bike.fork.length + setup.forkExtender - setup.forkHeight,
    travel: bike.fork.travel,
    tubeAbove: setup.forkHeight - setup.forkExtender,
    tubeSpare: leastHeight === null ? null : setup.forkHeight - setup.forkExtender - leastHeight,
    lowerClampDepth,
  };
}

/** Front axle in frame coordinates, mm, with `travelUsed` mm of fork travel used along the legs. */
export function frontAxleX(front: FrontEnd, travelUsed: number): number {
  return (
    front.headX +
    front.clampOffset * Math.cos(front.axisAngle) +
    (front.legLength - travelUsed) * Math.sin(front.legLean) +
    front.axleLead * Math.cos(front.legLean)
  );
}

export function frontAxleY(front: FrontEnd, travelUsed: number): number {
  return (
    front.headY +
    front.clampOffset * Math.sin(front.axisAngle) -
    (front.legLength - travelUsed) * Math.cos(front.legLean) +
    front.axleLead * Math.sin(front.legLean)
  );
}

/**
 * Offset that counts: the axle's distance ahead of the steering axis, square to the axis, mm. With legs along
 * the axis it is clamp offset + axle lead; with tilted legs it changes with travel.
 */
export function effectiveOffset(front: FrontEnd, travelUsed: number): number {
  const tilt = front.legLean - front.axisAngle;
  return (
    front.clampOffset + (front.legLength - travelUsed) * Math.sin(tilt) + front.axleLead * Math.cos(tilt)
  );
}
