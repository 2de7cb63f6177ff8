/** How far the arm can swing before the links stop it or the shock stands still, and why. */
import { solveBetween } from '../numeric/solve-between.ts';
import { shockAt, type Links, type RockerLinks, type ShockAt } from './links.ts';
import { noLinkage, type NoLinkage, type WayEnd } from './no-linkage.ts';
import { closedRange, loopAt, nearestRodLength, sidesAt, type LoopSides } from './rocker-loop.ts';

export interface LinkEnd {
  /** Arm angle, radians below the frame's x axis. */
  readonly angle: number;
  readonly why: WayEnd;
  /** Eye to eye there, mm. */
  readonly shockLength: number;
}

/** The arm angles, low (wheel up) to high (wheel down), over which the shock is pressed in as the wheel rises. */
export interface LinkRange {
  readonly ok: true;
  readonly low: LinkEnd;
  readonly high: LinkEnd;
  /** On which sides shock and rod lie all over the range; null where no closed form needs to know. */
  readonly sides: LoopSides | null;
}

/** How far to look: to the end of the links' way, or only as far as the shock's stroke goes. */
export type Reach = 'all' | 'stroke';

type Stop = Omit<LinkEnd, 'shockLength'>;

/** Beyond this sine against the ground the arm stands upright, and the axle cannot be told from its mirror image. */
export const STEEPEST_SINE = 0.999;
/** An angle, or a sine, this little beyond its limit is rounding. */
export const ROUNDING = 1e-9;
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
export function linkRange(of: Links, framePitch: number, reach: Reach = 'all'): LinkRange | NoLinkage {
  const upright = Math.asin(STEEPEST_SINE);
  let low: Stop = { angle: -upright - framePitch, why: 'armUpright' };
  let high: Stop = { angle: upright - framePitch, why: 'armUpright' };
  const { drawnAngle } = of;
  if (!(drawnAngle > low.angle && drawnAngle < high.angle))
    return noLinkage('armBeyondLinks', {
      found: drawnAngle,
      limit: drawnAngle > 0 ? high.angle : low.angle,
      because: 'armUpright',
    });
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
  const up = wayEnd(of, start, here, low, reach === 'stroke' ? of.closedLength : -Infinity);
  const down = wayEnd(of, start, here, high, reach === 'stroke' ? of.fullLength : Infinity);
  const atUp = shockAt(of, up.angle);
  const atDown = shockAt(of, down.angle);
  if (atUp === null || atDown === null) return noLinkage('armNotFound');
  const middle = of.kind === 'rocker' ? loopAt(of.loop, (of.sense * (up.angle + down.angle)) / 2) : null;
  return {
    ok: true,
    low: { shockLength: atUp.length, ...up },
    high: { shockLength: atDown.length, ...down },
    sides: of.kind === 'rocker' && middle !== null && !of.loop.farTurns ? sidesAt(of.loop, middle) : null,
  };
}

/** The refusal of an arm angle that lies beyond the way of the links; null within it. */
export function beyondWay({ low, high }: LinkRange, angle: number): NoLinkage | null {
  if (angle >= low.angle - ROUNDING && angle <= high.angle + ROUNDING) return null;
  const end = angle < low.angle ? low : high;
  return noLinkage('armBeyondLinks', { found: angle, limit: end.angle, because: end.why });
}

function closedArmRange(of: RockerLinks, low: Stop, high: Stop): [Stop, Stop] | null {
  const { sense, loop, drawnAngle } = of;
  const from = sense > 0 ? low.angle : -high.angle;
  const to = sense > 0 ? high.angle : -low.angle;
  const range = closedRange(loop, sense * drawnAngle, from, to);
  if (range === null || range.high - range.low < 4 * SHORT_OF_LINE) return null;
  const first: Stop = range.lowInLine
    ? { angle: sense * (range.low + SHORT_OF_LINE), why: 'rodAndRockerInLine' }
    : sense > 0
      ? low
      : high;
  const second: Stop = range.highInLine
    ? { angle: sense * (range.high - SHORT_OF_LINE), why: 'rodAndRockerInLine' }
    : sense > 0
      ? high
      : low;
  return sense > 0 ? [first, second] : [second, first];
}

/**
 * Where the way from `start` toward `end` ends: at the first dead point, just short of it so that the shock still
 * moves; where the shock has passed the length `until`; or at `end`.
 */
function wayEnd(of: Links, start: number, here: ShockAt, end: Stop, until: number): Stop {
  const slope = (angle: number): number => shockAt(of, angle)?.slope ?? NaN;
  const bend = (angle: number): number => shockAt(of, angle)?.bend ?? NaN;
  const deadPoint = (from: number, to: number): Stop => {
    const root = solveBetween(slope, from, to, DEAD_POINT_TOLERANCE);
    const angle = root.status === 'solved' ? root.x : from;
    return { angle, why: whyStill(of, angle) };
  };
  const way = end.angle - start;
  const toward = Math.sign(way);
  if (way === 0) return end;
  let last = start;
  let lastAt = here;
  for (let look = 1; look <= LOOKS; look++) {
    // Near a line of rod and rocker the length goes as a square root; these places follow it.
    const next = look === LOOKS ? end.angle : start + way * Math.sin(((Math.PI / 2) * look) / LOOKS);
    const nextAt = shockAt(of, next);
    if (nextAt === null) return { angle: last, why: 'rodAndRockerInLine' };
    if (nextAt.slope <= 0) return deadPoint(last, next);
    if (lastAt.bend * toward < 0 && nextAt.bend * toward > 0) {
      const least = solveBetween(bend, last, next, DEAD_POINT_TOLERANCE);
      if (least.status === 'solved' && slope(least.x) <= 0) return deadPoint(last, least.x);
    }
    if ((nextAt.length - until) * toward > 0) return { angle: next, why: 'beyondStroke' };
    last = next;
    lastAt = nextAt;
  }
  return end;
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
