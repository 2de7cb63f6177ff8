/** A bike as it is held while it is measured: where its parts are over the floor. */
import type { Point } from '../../plane/point.ts';
import type { MeasurePartKey } from './measure-parts.ts';

/** Floor frame: mm, x forward from below the rear axle, y up from the floor; angles in radians. */
export interface HeldBike {
  /** Nose-up pitch of the frame's axes. */
  readonly pitch: number;
  /** Front axle over the floor while its wheel stands on it, mm. */
  readonly frontRadius: number;
  /** Outside radii of the tyres with no load on them, mm. */
  readonly freeRadius: { readonly front: number; readonly rear: number };
  /** The value of an unknown that is not of the bike, such as one of a camera; 0 for one that there is not. */
  readonly unknown: (key: string) => number;
  /** Where a point or mark is; null for a bolt that the links do not have. */
  readonly place: (part: MeasurePartKey) => Point | null;
  /** Steering axis from vertical, leaning back positive. */
  readonly rake: number;
  /** Steering axis less fork legs, both from vertical: zero on almost every motorcycle. */
  readonly legTilt: number;
  /** Front axle ahead of the steering axis, square to it, mm. */
  readonly offset: number;
  /** Pitch radii of the sprockets, mm; null without a chain or belt. */
  readonly sprockets: { readonly front: number; readonly rear: number } | null;
  /** Angle of the frame rail in frame coordinates, rising forward. */
  readonly rail: number;
  /** How far the floor rises forward under a gauge that was not zeroed on it. */
  readonly slope: number;
  /** Fork tube between seal and lower clamp, mm. */
  readonly exposedTube: number;
  /** Shock, eye to eye, mm; null where it is not known. */
  readonly eyeToEye: () => number | null;
  /** Whole bike with its fuel and nobody on it, kg, and its centre. */
  readonly weighed: () => { readonly mass: number; readonly centre: Point };
}
