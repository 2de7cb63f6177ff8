/** The front end in frame coordinates: steering axis, fork legs and front axle. */
import { radians } from '../units/convert.ts';
import type { Bike } from '../parts/bike.ts';
import type { FramePoint } from '../parts/frame-point.ts';
import { fromPivot } from './pivot-move.ts';
import type { PartSetup } from '../adjusters/machine-part-adjusters.ts';

/** Lengths and directions of the front end that the adjusters fix, before any travel is used; mm, radians. */
export interface FrontEnd {
  /** The point of the axis at the top clamp, frame coordinates. */
  readonly head: FramePoint;
  /** Lean of the axis back from the frame's y axis, head-angle cups included. */
  readonly axisAngle: number;
  /** Lean of the legs back from the frame's y axis. */
  readonly legLean: number;
  /** The way down the axis and down the legs, of length one, frame coordinates. */
  readonly downAxis: FramePoint;
  readonly downLegs: FramePoint;
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
 * The front end with its adjusters set, in coordinates of the pivot as it stands. Head-angle cups turn axis and
 * clamps about the middle of the head tube, so the point at the top clamp moves a little too. The tube above the top
 * clamp is missing below it.
 */
export function frontEnd(bike: Bike, setup: PartSetup<'front'>): FrontEnd {
  const { axisAngleDeg, headTubeLength } = bike.frame;
  const { leastHeight, lowerClampDepth } = bike.fork;
  const steeringHead = fromPivot(bike.frame.steeringHead, setup);
  const drawn = radians(axisAngleDeg);
  const axisAngle = radians(axisAngleDeg + setup.headAngleCupsDeg);
  const downAxis = wayDown(axisAngle);
  const legLean = axisAngle - radians(bike.fork.legAngleDeg);
  const half = headTubeLength / 2;
  return {
    head: {
      x: steeringHead.x + half * (Math.sin(drawn) - downAxis.x),
      y: steeringHead.y - half * (Math.cos(drawn) + downAxis.y),
    },
    axisAngle,
    legLean,
    downAxis,
    downLegs: wayDown(legLean),
    clampOffset: setup.clampOffset,
    axleLead: bike.fork.axleLead,
    legLength: bike.fork.length + setup.forkExtenders - setup.forkTubes,
    travel: bike.fork.travel,
    tubeAbove: setup.forkTubes - setup.forkExtenders,
    tubeSpare: leastHeight === null ? null : setup.forkTubes - setup.forkExtenders - leastHeight,
    lowerClampDepth,
  };
}

/** The way down a line that leans back from the frame's y axis, of length one. */
function wayDown(lean: number): FramePoint {
  return { x: Math.sin(lean), y: -Math.cos(lean) };
}

/** The place `down` mm along the legs from the top clamp and `ahead` mm square ahead of them, frame coordinates, mm. */
export function onLegs(front: FrontEnd, down: number, ahead: number): FramePoint {
  const { head, clampOffset, downAxis, downLegs } = front;
  return {
    x: head.x - clampOffset * downAxis.y + down * downLegs.x - ahead * downLegs.y,
    y: head.y + clampOffset * downAxis.x + down * downLegs.y + ahead * downLegs.x,
  };
}

/** Front axle in frame coordinates, mm, with `travelUsed` mm of fork travel used along the legs. */
export function frontAxle(front: FrontEnd, travelUsed: number): FramePoint {
  return onLegs(front, front.legLength - travelUsed, front.axleLead);
}

/**
 * Effective offset: the axle's distance ahead of the steering axis, square to the axis, mm. With legs along the axis
 * it is triple-clamp offset + axle lead; with tilted legs it changes with travel.
 */
export function effectiveOffset(front: FrontEnd, travelUsed: number): number {
  const tilt = front.legLean - front.axisAngle;
  return (
    front.clampOffset + (front.legLength - travelUsed) * Math.sin(tilt) + front.axleLead * Math.cos(tilt)
  );
}
