/** Every point of a bike that a person can place, from the rear to the front, and the bolts of its links. */
import type { LinkPointKey } from '../linkage/link-drawing.ts';
import { eachFramePlace } from '../parts/frame-places.ts';
import type { Bike } from '../parts/bike.ts';
import { eachTouchPart } from '../parts/touch-parts.ts';
import { touchPoint } from './touch-point.ts';
import type { Point } from '../plane/point.ts';
import type { Stance } from '../standing/stance.ts';
import type { BikePoint } from './bike-point.ts';
import { pointOnFrame } from './point-on-frame.ts';
import { axisFoot } from './axis-foot.ts';
import { frontAxle } from './front-axle.ts';
import { frontPatch } from './front-patch.ts';
import { pivot } from './pivot.ts';
import { rearAxle } from './rear-axle.ts';
import { rearPatch } from './rear-patch.ts';
import { rockerPivot } from './rocker-pivot.ts';
import { rodOnArm } from './rod-on-arm.ts';
import { rodOnFrame } from './rod-on-frame.ts';
import { rodOnRocker } from './rod-on-rocker.ts';
import { shockFarEnd } from './shock-far-end.ts';
import { shockOnArm } from './shock-on-arm.ts';
import { shockOnFrame } from './shock-on-frame.ts';
import { shockOnRocker } from './shock-on-rocker.ts';
import { steeringHead } from './steering-head.ts';

const points = {
  pivot,
  rearAxle,
  rearPatch,
  ...eachFramePlace(pointOnFrame),
  ...eachTouchPart(touchPoint),
  steeringHead,
  axisFoot,
  frontAxle,
  frontPatch,
  shockOnFrame,
  shockOnArm,
  rockerPivot,
  rodOnRocker,
  shockOnRocker,
  rodOnArm,
  rodOnFrame,
  shockFarEnd,
} satisfies Readonly<Record<LinkPointKey, BikePoint>> & Readonly<Record<string, BikePoint>>;

export type PointKey = keyof typeof points;

export const POINTS: Readonly<Record<PointKey, BikePoint>> = points;

/** A point with the key that it has in the list. */
export interface SketchPoint extends BikePoint {
  readonly key: PointKey;
}

/** Every point that some bike has. */
export const SKETCH_POINTS: readonly SketchPoint[] = (Object.keys(points) as PointKey[]).map((key) => ({
  ...POINTS[key],
  key,
}));

/** The points that this bike has. */
export function pointsOf(bike: Bike): readonly SketchPoint[] {
  return SKETCH_POINTS.filter(({ applies }) => applies(bike));
}

/** Where a point of a bike stands, ground frame, mm. Null for a bolt that its links do not have. */
export function pointPlace(stance: Stance, bike: Bike, key: PointKey): Point | null {
  return POINTS[key].place(stance, bike);
}
