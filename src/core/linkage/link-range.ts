/** How far the arm can swing before the links stop it or the shock stands still, and why. */
import { solveBetween } from '../numeric/solve-between.ts';
import { shockAt, type Links, type RockerLinks } from './links.ts';
import { noLinkage, type NoLinkage, type WayEnd } from './no-linkage.ts';
import { closedRange, loopAt, nearestRodLength } from './rocker-loop.ts';

export interface LinkEnd {
  /** Arm angle, radians below the frame's x axis. */
  readonly angle: number;
  readonly why: WayEnd;
}

/** The arm angles, low (wheel up) to high (wheel down), over which the shock is pressed in as the wheel rises. */
export interface LinkRange {
  readonly ok: true;
  readonly low: LinkEnd;
  readonly high: LinkEnd;
}

/** Beyond this sine against the ground the arm stands upright. */
export const STEEPEST_SINE = 0.999;
/** How many places of each side are looked at for a dead point. */
const LOOKS = 48;
/** A dead point is found to this, radians. */
const DEAD_POINT_TOLERANCE = 1e-13;
/** Where rod and rocker lie in line the shock's speed has no bound; the way ends this much before, radians. */
const SHORT_OF_LINE = 1e-7;
/** A shock that moves less than this at the drawn angle is at a dead point, mm per radian. */
const LEAST_LEVER = 1e-3;

/**
 * The piece of the arm's way around the drawn angle in which the links close on the drawn branch and the shock
 * moves with the arm in one sense. `framePitch` is the frame's nose-up pitch, radians. Where rod and rocker come
 * into line is closed form; dead points of the shock are sought between narrowing places, with the second
 * derivative to catch two close together. Refused when the loop closes nowhere, or the shock is pulled, not pressed.
 */
export function linkRange(of: Links, framePitch: number): LinkRange | NoLinkage {
  const upright = Math.asin(STEEPEST_SINE);
  let low: LinkEnd = { angle: -upright - framePitch, why: 'armUpright' };
  let high: LinkEnd = { angle: upright - framePitch, why: 'armUpright' };
  const { drawnAngle } = of;
  if (!(drawnAngle > low.angle && drawnAngle < high.angle))
    return noLinkage('swingarmCannotReach', { found: drawnAngle, limit: high.angle });
  if (of.kind === 'rocker') {
    const closed = closedArmRange(of, low, high);
    if (closed === null)
      return noLinkage('linkageCannotClose', {
        found: of.loop.rodLength,
        limit: nearestRodLength(of.loop),
      });
    [low, high] = closed;
  }
  const start = Math.min(Math.max(drawnAngle, low.angle), high.angle);
  const here = shockAt(of, start);
  if (here === null) return noLinkage('drawnAtDeadPoint', { found: start });
  if (Math.abs(here.slope) < LEAST_LEVER)
    return noLinkage('drawnAtDeadPoint', { found: start, because: whyStill(of, start) });
  if (here.slope < 0) return noLinkage('shockPulled', { found: here.slope, limit: 0 });
  const up = firstDeadPoint(of, start, low.angle);
  const down = firstDeadPoint(of, start, high.angle);
  return {
    ok: true,
    low: up === null ? low : { angle: up, why: whyStill(of, up) },
    high: down === null ? high : { angle: down, why: whyStill(of, down) },
  };
}

function closedArmRange(of: RockerLinks, low: LinkEnd, high: LinkEnd): [LinkEnd, LinkEnd] | null {
  const { sense, loop, drawnAngle } = of;
  const from = sense > 0 ? low.angle : -high.angle;
  const to = sense > 0 ? high.angle : -low.angle;
  const range = closedRange(loop, sense * drawnAngle, from, to);
  if (range === null || range.high - range.low < 4 * SHORT_OF_LINE) return null;
  const first: LinkEnd = range.lowInLine
    ? { angle: sense * (range.low + SHORT_OF_LINE), why: 'rodAndRockerInLine' }
    : sense > 0
      ? low
      : high;
  const second: LinkEnd = range.highInLine
    ? { angle: sense * (range.high - SHORT_OF_LINE), why: 'rodAndRockerInLine' }
    : sense > 0
      ? high
      : low;
  return sense > 0 ? [first, second] : [second, first];
}

/** The dead point nearest to `start` on the way to `end`, on the side of it where the shock still moves; or null. */
function firstDeadPoint(of: Links, start: number, end: number): number | null {
  const slope = (angle: number): number => shockAt(of, angle)?.slope ?? NaN;
  const bend = (angle: number): number => shockAt(of, angle)?.bend ?? NaN;
  const stillAt = (from: number, to: number): number | null => {
    const root = solveBetween(slope, from, to, DEAD_POINT_TOLERANCE);
    return root.status === 'solved' ? root.x : null;
  };
  const way = end - start;
  if (way === 0) return null;
  let last = start;
  let lastAt = shockAt(of, start);
  for (let look = 1; look <= LOOKS && lastAt !== null; look++) {
    // Near a line of rod and rocker the length goes as a square root; these places follow it.
    const part = Math.sin(((Math.PI / 2) * look) / LOOKS);
    const next = look === LOOKS ? end : start + way * part;
    const nextAt = shockAt(of, next);
    if (nextAt === null) return last;
    if (nextAt.slope <= 0) return stillAt(last, next) ?? last;
    const toward = Math.sign(way);
    if (lastAt.bend * toward < 0 && nextAt.bend * toward > 0) {
      const least = solveBetween(bend, last, next, DEAD_POINT_TOLERANCE);
      if (least.status === 'solved' && slope(least.x) <= 0) return stillAt(last, least.x) ?? last;
    }
    last = next;
    lastAt = nextAt;
  }
  return null;
}

/** What stands in line where the shock stands still. */
function whyStill(of: Links, angle: number): WayEnd {
  if (of.kind === 'direct') return 'shockThroughPivot';
  const { loop, sense } = of;
  if (loop.farTurns) return 'shockEndsMoveAlike';
  const at = loopAt(loop, sense * angle);
  if (at === null) return 'rodAndRockerInLine';
  const { toShock, far } = at;
  const shockLever =
    (toShock.x * (loop.pivot.y - far.y) - toShock.y * (loop.pivot.x - far.x)) /
    (at.shockLength * Math.hypot(toShock.x, toShock.y));
  return Math.abs(shockLever) < Math.abs(at.rockerSlope) ? 'shockThroughRocker' : 'rodThroughPivot';
}
