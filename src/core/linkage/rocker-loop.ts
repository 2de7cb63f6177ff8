/** The loop of swingarm, rod and rocker with the shock on it: closed form, with first and second derivatives. */
import type { Point } from '../plane/point.ts';
import { thirdCorner } from '../plane/triangle.ts';

/**
 * Rocker, rod and shock in coordinates fixed to the part that carries the rocker (frame or swingarm), origin at
 * the swingarm pivot, mm. The other part (swingarm or frame) turns about that pivot by the angle `turn`,
 * counter-clockwise. It is a four-bar: the rod's end on the other part is the crank pin.
 */
export interface RockerLoop {
  readonly pivot: Point;
  /** The rod's end on the other part at turn zero. */
  readonly rodEnd: Point;
  readonly rodLength: number;
  /** From the rocker's pivot to the rod and to the shock, as drawn. */
  readonly toRod: Point;
  readonly toShock: Point;
  /** On which side of the way rocker pivot → rod end the rocker lies: 1 left. The branch it was drawn in. */
  readonly side: 1 | -1;
  /** The shock's other end, at turn zero when it is on the other part. */
  readonly far: Point;
  readonly farTurns: boolean;
}

/** The shock on the loop at one turn, in plain numbers; slopes and bends per radian (squared) of turn. */
export interface LoopShock {
  /** How far the rocker has turned counter-clockwise from where it was drawn. */
  readonly cosRocker: number;
  readonly sinRocker: number;
  /** Rocker's radians counter-clockwise per radian of turn. */
  readonly rockerSlope: number;
  readonly shockLength: number;
  readonly shockSlope: number;
  readonly shockBend: number;
}

/** The loop at one turn. Coordinates as in `RockerLoop`. */
export interface LoopPosition extends LoopShock {
  readonly rodEnd: Point;
  /** From the rocker's pivot to the rod and to the shock. */
  readonly toRod: Point;
  readonly toShock: Point;
  readonly far: Point;
}

const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;

/**
 * The loop with the other part turned, on the branch it was drawn in. Null where rod and rocker cannot meet, or
 * lie in one line.
 */
export function loopAt(loop: RockerLoop, turn: number): LoopPosition | null {
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  const at = shockOnLoop(loop, c, s);
  if (at === null) return null;
  const { rodEnd, toRod, toShock, far, farTurns } = loop;
  const { cosRocker, sinRocker, rockerSlope, shockLength, shockSlope, shockBend } = at;
  // Field by field: to spread the shock here took a quarter of the time in which a sheet of measurements is fitted.
  return {
    cosRocker,
    sinRocker,
    rockerSlope,
    shockLength,
    shockSlope,
    shockBend,
    rodEnd: turned(rodEnd, c, s),
    toRod: turned(toRod, cosRocker, sinRocker),
    toShock: turned(toShock, cosRocker, sinRocker),
    far: farTurns ? turned(far, c, s) : far,
  };
}

const turned = ({ x, y }: Point, c: number, s: number): Point => ({ x: c * x - s * y, y: s * x + c * y });

/**
 * The shock on the loop by cosine and sine of the turn, null as above. Derivatives by differentiating the closure
 * |rod|² = const twice. It makes no points, because a search for a setup asks it millions of times.
 */
export function shockOnLoop(loop: RockerLoop, c: number, s: number): LoopShock | null {
  const { pivot, toRod: rod0, toShock: shock0, far: far0 } = loop;
  const bx = c * loop.rodEnd.x - s * loop.rodEnd.y;
  const by = s * loop.rodEnd.x + c * loop.rodEnd.y;
  const radius2 = dot(rod0, rod0);
  const toRod = thirdCorner(bx - pivot.x, by - pivot.y, radius2, loop.rodLength * loop.rodLength, loop.side);
  if (toRod === null) return null;
  const dx = pivot.x + toRod.x - bx;
  const dy = pivot.y + toRod.y - by;
  const lean = toRod.x * dy - toRod.y * dx;
  if (lean === 0) return null;
  const rockerSlope = (bx * dy - by * dx) / lean;
  const rodMoveX = by - rockerSlope * toRod.y;
  const rodMoveY = rockerSlope * toRod.x - bx;
  const rockerBend =
    (rockerSlope * rockerSlope * (dx * toRod.x + dy * toRod.y) -
      (dx * bx + dy * by) -
      (rodMoveX * rodMoveX + rodMoveY * rodMoveY)) /
    lean;

  const cosRocker = dot(rod0, toRod) / radius2;
  const sinRocker = cross(rod0, toRod) / radius2;
  const sx = cosRocker * shock0.x - sinRocker * shock0.y;
  const sy = sinRocker * shock0.x + cosRocker * shock0.y;
  const turns = loop.farTurns ? 1 : 0;
  const fx = loop.farTurns ? c * far0.x - s * far0.y : far0.x;
  const fy = loop.farTurns ? s * far0.x + c * far0.y : far0.y;
  const ex = pivot.x + sx - fx;
  const ey = pivot.y + sy - fy;
  const shockLength = Math.sqrt(ex * ex + ey * ey);
  if (shockLength === 0) return null;
  const moveX = turns * fy - rockerSlope * sy;
  const moveY = rockerSlope * sx - turns * fx;
  const bendX = turns * fx - rockerBend * sy - rockerSlope * rockerSlope * sx;
  const bendY = turns * fy + rockerBend * sx - rockerSlope * rockerSlope * sy;
  const shockSlope = (ex * moveX + ey * moveY) / shockLength;
  return {
    cosRocker,
    sinRocker,
    rockerSlope,
    shockLength,
    shockSlope,
    shockBend:
      (moveX * moveX + moveY * moveY + ex * bendX + ey * bendY - shockSlope * shockSlope) / shockLength,
  };
}

/** A range of turn, radians, low to high. */
export interface TurnRange {
  readonly low: number;
  readonly high: number;
  /** Whether rod and rocker lie in line at that end; otherwise it was the search that ended. */
  readonly lowInLine: boolean;
  readonly highInLine: boolean;
}

/**
 * The turns between `low` and `high` (less than a whole turn apart) at which rod and rocker meet, in one piece with
 * or nearest to `near`. Closed form: the square of the distance rocker pivot → rod end is a cosine of the turn.
 * Null when they meet nowhere there.
 */
export function closedRange(loop: RockerLoop, near: number, low: number, high: number): TurnRange | null {
  const rocker = Math.hypot(loop.toRod.x, loop.toRod.y);
  const pivotAway = Math.hypot(loop.pivot.x, loop.pivot.y);
  const crank = Math.hypot(loop.rodEnd.x, loop.rodEnd.y);
  const swing = 2 * pivotAway * crank;
  const nearestSquare = (rocker - loop.rodLength) ** 2;
  const furthestSquare = (rocker + loop.rodLength) ** 2;
  const cosineAt = (square: number) => (pivotAway * pivotAway + crank * crank - square) / swing;
  const cosMost = cosineAt(nearestSquare);
  const cosLeast = cosineAt(furthestSquare);
  if (!(cosMost >= -1 && cosLeast <= 1)) return null;
  // Measured from where the rod's end is nearest to the rocker's pivot, the loop closes from `from` to `to`, both ways.
  const from = cosMost >= 1 ? 0 : Math.acos(cosMost);
  const to = cosLeast <= -1 ? Math.PI : Math.acos(cosLeast);
  const centre = Math.atan2(cross(loop.rodEnd, loop.pivot), dot(loop.rodEnd, loop.pivot));
  const pieces: [number, number, boolean, boolean][] = [];
  for (let round = -2; round <= 2; round++) {
    const at = centre + round * 2 * Math.PI;
    if (from === 0 && to === Math.PI) pieces.push([at - Math.PI, at + 3 * Math.PI, false, false]);
    else if (from === 0) pieces.push([at - to, at + to, true, true]);
    else if (to === Math.PI) pieces.push([at + from, at + 2 * Math.PI - from, true, true]);
    else pieces.push([at - to, at - from, true, true], [at + from, at + to, true, true]);
  }
  let best: TurnRange | null = null;
  let bestAway = Infinity;
  for (const [a, b, aInLine, bInLine] of pieces) {
    const range: TurnRange = {
      low: Math.max(a, low),
      high: Math.min(b, high),
      lowInLine: aInLine && a >= low,
      highInLine: bInLine && b <= high,
    };
    if (!(range.low < range.high)) continue;
    const away = Math.max(range.low - near, near - range.high, 0);
    if (away < bestAway) {
      best = range;
      bestAway = away;
    }
  }
  return best;
}

/** The rod length nearest to the loop's own with which it could close at some turn, mm. */
export function nearestRodLength(loop: RockerLoop): number {
  const rocker = Math.hypot(loop.toRod.x, loop.toRod.y);
  const pivotAway = Math.hypot(loop.pivot.x, loop.pivot.y);
  const crank = Math.hypot(loop.rodEnd.x, loop.rodEnd.y);
  const nearest = Math.abs(pivotAway - crank);
  const furthest = pivotAway + crank;
  const least = Math.max(nearest - rocker, rocker - furthest, 0);
  return Math.min(Math.max(loop.rodLength, least), furthest + rocker);
}

/**
 * Turn at which the shock has a length, in closed form, when its far end is on the rocker's own carrier. The sides
 * choose among the crossings. Null when the circles do not reach each other.
 */
export function turnFromShock(loop: RockerLoop, shockLength: number, sides: LoopSides): number | null {
  const { pivot, toShock, toRod, far, rodEnd } = loop;
  const arm = thirdCorner(
    far.x - pivot.x,
    far.y - pivot.y,
    dot(toShock, toShock),
    shockLength * shockLength,
    sides.shock,
  );
  if (arm === null) return null;
  const size = dot(toShock, toShock);
  const cosRocker = dot(toShock, arm) / size;
  const sinRocker = cross(toShock, arm) / size;
  const end = thirdCorner(
    pivot.x + cosRocker * toRod.x - sinRocker * toRod.y,
    pivot.y + sinRocker * toRod.x + cosRocker * toRod.y,
    dot(rodEnd, rodEnd),
    loop.rodLength * loop.rodLength,
    sides.rod,
  );
  return end === null ? null : Math.atan2(cross(rodEnd, end), dot(rodEnd, end));
}

/** 1 left, −1 right: the shock's end on the rocker of the way pivot → far end, the rod's end of the way origin → rocker. */
export interface LoopSides {
  readonly shock: 1 | -1;
  readonly rod: 1 | -1;
}

/** On which sides shock and rod lie, for `turnFromShock`; they change only at dead points of the shock. */
export function sidesAt(loop: RockerLoop, at: LoopPosition): LoopSides {
  const { pivot } = loop;
  const toFar = { x: at.far.x - pivot.x, y: at.far.y - pivot.y };
  const rodTop = { x: pivot.x + at.toRod.x, y: pivot.y + at.toRod.y };
  return {
    shock: cross(toFar, at.toShock) >= 0 ? 1 : -1,
    rod: cross(rodTop, at.rodEnd) >= 0 ? 1 : -1,
  };
}
