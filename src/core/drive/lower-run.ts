/** The lower run between two sprockets, free or bent under a guide: where it touches, and what the wraps give up as it leaves them. */
import type { Circle } from '../plane/circle.ts';
import type { Point } from '../plane/point.ts';
import type { ChainLoop } from './chain-loop.ts';
import { tautRun, type TautRun } from './taut-run.ts';

/**
 * A lower run with the sprocket centres at their places, mm; x toward the front, y up. Angles are those of the
 * chain's way forward above the x axis, radians.
 */
export interface LowerRun {
  readonly loop: ChainLoop;
  readonly rear: Point;
  readonly front: Point;
  /** Angle and length between the touching points of the straight run, which no guide bends. */
  readonly angle: number;
  readonly length: number;
  /** The guide under which the run passes; null without one. */
  readonly guide: Circle | null;
  /** Straight run below the guide; below zero the guide bends it. Without a guide no number is too large. */
  readonly gap: number;
  /** Chain that the taut run takes up beyond the straight one because its guide bends it, mm; 0 where it runs clear. */
  readonly bentBy: number;
  /** Where the taut run passes the straight run's middle, mm below it; 0 where it runs clear. */
  readonly rest: number;
}

/**
 * The taut lower run: the lower outer tangent of both pitch circles, or round `guide` as a string at pitch-line height
 * where the straight run would pass nearer under the guide's centre than its radius. null when the sprockets overlap or
 * one covers the guide.
 */
export function lowerRun(
  loop: ChainLoop,
  rear: Point,
  front: Point,
  guide: Circle | null = null,
): LowerRun | null {
  const dx = front.x - rear.x;
  const dy = front.y - rear.y;
  const centres = Math.hypot(dx, dy);
  const difference = loop.rearRadius - loop.frontRadius;
  if (!(centres > loop.rearRadius + loop.frontRadius)) return null;
  const angle = Math.atan2(dy, dx) + Math.asin(difference / centres);
  const length = Math.sqrt(centres * centres - difference * difference);
  const straight = { loop, rear, front, angle, length, guide, gap: Infinity, bentBy: 0, rest: 0 };
  return guide === null ? straight : underGuide({ ...straight, guide });
}

/** The run with its guide: how far below it passes, and what bends it. */
function underGuide(run: LowerRun & { readonly guide: Circle }): LowerRun | null {
  const { loop, rear, front, guide, angle } = run;
  const x = guide.centre.x - rear.x;
  const y = guide.centre.y - rear.y;
  const gap = loop.rearRadius + y * Math.cos(angle) - x * Math.sin(angle) - guide.radius;
  if (gap >= 0) return { ...run, gap };
  const ends = {
    rear: { centre: rear, radius: loop.rearRadius },
    front: { centre: front, radius: loop.frontRadius },
  };
  const taut = tautRun(ends, guide, -1);
  if (taut === null) return null;
  if (!taut.isBent) return { ...run, gap };
  const bentBy = spareOf(run, taut.length, taut.rearAngle, taut.frontAngle);
  return { ...run, gap, bentBy, rest: restOf(run, taut) };
}

/**
 * How far below the straight run's middle the bent one passes, square to the straight run, mm: on the higher of the
 * lines from both sprockets to the guide.
 */
function restOf(run: LowerRun, { rearAngle, frontAngle }: TautRun): number {
  const middle = runMiddle(run);
  const cos = Math.cos(run.angle);
  const sin = Math.sin(run.angle);
  const depth = ({ x, y }: Point, angle: number): number => {
    const along = (x - middle.x) * cos + (y - middle.y) * sin;
    return (x - middle.x) * sin - (y - middle.y) * cos - along * Math.tan(run.angle - angle);
  };
  return Math.min(
    depth(rearTouch(run, rearAngle), rearAngle),
    depth(frontTouch(run, frontAngle), frontAngle),
  );
}

/** Where a chain that runs forward at `angle` leaves the rear sprocket, on its lower side. */
export function rearTouch(run: LowerRun, angle: number): Point {
  const { loop, rear } = run;
  return { x: rear.x + loop.rearRadius * Math.sin(angle), y: rear.y - loop.rearRadius * Math.cos(angle) };
}

/** Where a chain that runs forward at `angle` meets the front sprocket, on its lower side. */
export function frontTouch(run: LowerRun, angle: number): Point {
  const { loop, front } = run;
  return { x: front.x + loop.frontRadius * Math.sin(angle), y: front.y - loop.frontRadius * Math.cos(angle) };
}

/**
 * Chain beyond the taut length, mm, that a run of `length` mm needs which leaves the rear sprocket at `rearAngle`
 * and meets the front one at `frontAngle`. What it takes off the wraps is counted in teeth.
 */
export function spareOf(run: LowerRun, length: number, rearAngle: number, frontAngle: number): number {
  const { pitch, rearTeeth, frontTeeth } = run.loop;
  const offWraps =
    (rearTeeth * (run.angle - rearAngle) + frontTeeth * (frontAngle - run.angle)) / (2 * Math.PI);
  return length - run.length - pitch * offWraps;
}

/** The middle of the taut run, where slack is measured. */
export function runMiddle(run: LowerRun): Point {
  const from = rearTouch(run, run.angle);
  const to = frontTouch(run, run.angle);
  return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
}
