/** Motion ratio, wheel force and wheel rate over the whole travel of a rear suspension. */
import { leverage, wheelForce, wheelRate, type StrokeSpring } from './leverage.ts';
import type { NoLinkage } from './no-linkage.ts';
import { progression, type Progression } from './progression.ts';
import { suspensionAt, type Suspension } from './suspension.ts';

/** One place of the travel, mm, N and N/mm, all square to the ground with the frame held as travel is counted. */
export interface TravelPoint {
  readonly travel: number;
  /** Arm below the frame's x axis, radians. */
  readonly angle: number;
  readonly shockStroke: number;
  readonly motionRatio: number;
  /** 1/mm. */
  readonly motionRatioSlope: number;
  /** Null at a dead point. */
  readonly leverage: number | null;
  /** Null without springs. */
  readonly wheelForce: number | null;
  readonly wheelRate: number | null;
}

export interface TravelCurves {
  readonly ok: true;
  readonly points: readonly TravelPoint[];
  /** Null when the shock all but stands still somewhere. */
  readonly progression: Progression | null;
}

/** Places from hanging to the end of the travel, both included. */
export const CURVE_POINTS = 201;

/** The curves over travel; `spring` is that of all shocks together by their stroke. Refused where the suspension is. */
export function travelCurves(of: Suspension, spring: StrokeSpring | null): TravelCurves | NoLinkage {
  const points: TravelPoint[] = [];
  for (let i = 0; i < CURVE_POINTS; i++) {
    const travel = (of.wheelTravel * i) / (CURVE_POINTS - 1);
    const at = suspensionAt(of, travel);
    if (!at.ok) return at;
    const force = spring === null ? 0 : spring.force(at.shockStroke);
    points.push({
      travel,
      angle: at.angle,
      shockStroke: at.shockStroke,
      motionRatio: at.motionRatio,
      motionRatioSlope: at.motionRatioSlope,
      leverage: leverage(at.motionRatio),
      wheelForce: spring === null ? null : wheelForce(force, at.motionRatio),
      wheelRate:
        spring === null
          ? null
          : wheelRate(spring.rate(at.shockStroke), force, at.motionRatio, at.motionRatioSlope),
    });
  }
  const known = points.every((point) => point.leverage !== null);
  return { ok: true, points, progression: known ? progression(points.map((p) => p.motionRatio)) : null };
}
