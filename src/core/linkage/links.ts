/** A link layout with its adjusters set, in plain numbers, and the shock's length at any angle of the arm. */
import { distance, rotate, type Point } from '../plane/point.ts';
import { radians } from '../units/convert.ts';
import { fromPivot } from '../chassis/pivot-move.ts';
import type { RearAdjusters } from './link-adjustments.ts';
import { armPointInFrame, farEndInFrame, levelArm } from './link-drawing.ts';
import type { DirectLayout, LinkLayout, RockerLayout } from '../parts/rear-layout.ts';
import { wrongNumber } from '../numeric/wrong-number.ts';
import { noLinkage, type NoLinkage } from './no-linkage.ts';
import { shockOnLoop, type RockerLoop } from './rocker-loop.ts';

interface LinksBase {
  readonly ok: true;
  /** Arm angle of the drawing, radians below the frame's x axis. */
  readonly drawnAngle: number;
  /** Eye to eye with the adjuster as it stands, mm. */
  readonly fullLength: number;
  readonly closedLength: number;
}

/** The shock straight between a frame point and an arm point (arm level), mm from the pivot as it stands. */
export interface DirectLinks extends LinksBase {
  readonly kind: 'direct';
  readonly mount: Point;
  readonly eye: Point;
}

export interface RockerLinks extends LinksBase {
  readonly kind: 'rocker';
  readonly loop: RockerLoop;
  /** The loop's turn per radian of arm angle: 1 with the rocker on the frame, −1 with it on the swingarm. */
  readonly sense: 1 | -1;
}

export type Links = DirectLinks | RockerLinks;

/** Shock length at an arm angle, mm, with first and second derivative by the angle, per radian. */
export interface ShockAt {
  readonly length: number;
  /** Above zero where the shock is pressed in as the wheel rises: the angle counts downward. */
  readonly slope: number;
  readonly bend: number;
}

/** Below this no rod, rocker arm or mount is a part of a motorcycle, mm. */
const LEAST_LENGTH = 1;
/** Sine between rod and rocker below which they were drawn in one line. */
const IN_LINE_SINE = 1e-6;

const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });

/**
 * The layout with its adjusters set. Rod length and the rocker's shape are taken from the drawing; only then are rod,
 * shim and pivot changed, so that an adjuster bends no part. Refused when a part has no length, the shock no stroke,
 * rod and rocker were drawn in one line, or an adjuster is turned that the layout does not have.
 */
export function links(layout: LinkLayout, adjusters: RearAdjusters): Links | NoLinkage {
  const wrong = wrongNumber(layout) ?? wrongNumber(adjusters);
  if (wrong !== null) return noLinkage(wrong);
  const { fullLength, closedLength } = layout.shock;
  if (!(closedLength > 0 && fullLength > closedLength))
    return noLinkage('strokeImpossible', { found: fullLength, limit: closedLength });
  const closedNow = closedLength + adjusters.shockLength;
  if (!(closedNow > 0)) return noLinkage('strokeImpossible', { found: closedNow, limit: 0 });
  const base: LinksBase = {
    ok: true,
    drawnAngle: radians(layout.drawnAngleDeg),
    fullLength: fullLength + adjusters.shockLength,
    closedLength: closedNow,
  };
  return layout.kind === 'direct'
    ? directLinks(base, layout, adjusters)
    : rockerLinks(base, layout, adjusters);
}

function directLinks(
  base: LinksBase,
  layout: DirectLayout,
  adjusters: RearAdjusters,
): DirectLinks | NoLinkage {
  if (adjusters.linkLength !== 0) return noLinkage('adjusterNeedsLinks', { found: adjusters.linkLength });
  const eyeDrawn = armPointInFrame(layout.shockOnArm, base.drawnAngle);
  const shimmed = shift(layout.shockOnFrame, eyeDrawn, adjusters.shockMountShim);
  if (shimmed === null) return noLinkage('partHasNoLength', { found: 0, limit: LEAST_LENGTH });
  const mount = fromPivot(shimmed, adjusters);
  const eye = levelArm(layout.shockOnArm);
  const least = Math.min(Math.hypot(mount.x, mount.y), Math.hypot(eye.x, eye.y));
  if (!(least >= LEAST_LENGTH)) return noLinkage('partHasNoLength', { found: least, limit: LEAST_LENGTH });
  return { kind: 'direct', mount, eye, ...base };
}

function rockerLinks(
  base: LinksBase,
  layout: RockerLayout,
  adjusters: RearAdjusters,
): RockerLinks | NoLinkage {
  const { drawnAngle } = base;
  const { shockMountShim, linkLength } = adjusters;
  const onFrame = layout.kind === 'rockerOnFrame';
  // The carrier's own coordinates as drawn: frame coordinates, or those of the arm lying level.
  const toCarrier = (p: Point): Point => (onFrame ? p : rotate(p, -drawnAngle));
  const held = onFrame
    ? {
        pivot: layout.rockerPivot,
        rod: layout.rodOnRocker,
        shock: layout.shockOnRocker,
        end: armPointInFrame(layout.rodOnArm, drawnAngle),
      }
    : {
        pivot: levelArm(layout.rockerPivot),
        rod: levelArm(layout.rodOnRocker),
        shock: levelArm(layout.shockOnRocker),
        end: toCarrier(layout.rodOnFrame),
      };
  const toRod = minus(held.rod, held.pivot);
  const toShock = minus(held.shock, held.pivot);
  const drawnRod = distance(held.rod, held.end);
  const rodLength = drawnRod + linkLength;
  const fold = cross(minus(held.end, held.pivot), toRod);
  const sine = cross(toRod, minus(held.end, held.rod)) / (Math.hypot(toRod.x, toRod.y) * drawnRod);

  const farDrawn = toCarrier(farEndInFrame(layout.shockFarEnd, drawnAngle));
  const shimmed = shift(farDrawn, held.shock, shockMountShim);
  if (shimmed === null) return noLinkage('partHasNoLength', { found: 0, limit: LEAST_LENGTH });
  const farTurns = (layout.shockFarEnd.on === 'frame') !== onFrame;
  // Unshimmed mounts are taken as they were typed, without turning them there and back.
  const far =
    shockMountShim === 0
      ? layout.shockFarEnd.on === 'frame'
        ? layout.shockFarEnd.at
        : levelArm(layout.shockFarEnd.at)
      : farTurns
        ? rotate(shimmed, onFrame ? -drawnAngle : drawnAngle)
        : shimmed;
  const farMoved = layout.shockFarEnd.on === 'frame' ? fromPivot(far, adjusters) : far;
  const pivot = onFrame ? fromPivot(held.pivot, adjusters) : held.pivot;
  const rodEnd =
    layout.kind === 'rockerOnFrame' ? levelArm(layout.rodOnArm) : fromPivot(layout.rodOnFrame, adjusters);
  const least = Math.min(
    rodLength,
    drawnRod,
    Math.hypot(toRod.x, toRod.y),
    Math.hypot(toShock.x, toShock.y),
    Math.hypot(pivot.x, pivot.y),
    Math.hypot(rodEnd.x, rodEnd.y),
  );
  if (!(least >= LEAST_LENGTH)) return noLinkage('partHasNoLength', { found: least, limit: LEAST_LENGTH });
  if (!(Math.abs(sine) >= IN_LINE_SINE)) return noLinkage('drawnInLine');
  return {
    kind: 'rocker',
    sense: onFrame ? 1 : -1,
    loop: { pivot, rodEnd, rodLength, toRod, toShock, side: fold > 0 ? 1 : -1, far: farMoved, farTurns },
    ...base,
  };
}

/** A mount moved by a shim's thickness toward the shock's other eye; null when the two eyes are in one place. */
function shift(mount: Point, toward: Point, by: number): Point | null {
  const length = distance(mount, toward);
  if (!(length >= LEAST_LENGTH)) return null;
  return {
    x: mount.x + (by * (toward.x - mount.x)) / length,
    y: mount.y + (by * (toward.y - mount.y)) / length,
  };
}

/**
 * Length of the shock with the arm at an angle (radians below the frame's x axis), as far as the links alone say,
 * on the branch of the drawing. Closed form. Null where they cannot close.
 */
export function shockAt(of: Links, angle: number): ShockAt | null {
  return shockTurned(of, Math.cos(angle), Math.sin(angle));
}

/** The same by cosine and sine of that angle. */
export function shockTurned(of: Links, c: number, s: number): ShockAt | null {
  if (of.kind === 'rocker') {
    const at = shockOnLoop(of.loop, c, of.sense * s);
    return at === null
      ? null
      : { length: at.shockLength, slope: of.sense * at.shockSlope, bend: at.shockBend };
  }
  const x = c * of.eye.x - s * of.eye.y;
  const y = s * of.eye.x + c * of.eye.y;
  const ex = x - of.mount.x;
  const ey = y - of.mount.y;
  const length = Math.sqrt(ex * ex + ey * ey);
  if (length === 0) return null;
  const slope = (ey * x - ex * y) / length;
  return { length, slope, bend: (x * x + y * y - (ex * x + ey * y) - slope * slope) / length };
}
