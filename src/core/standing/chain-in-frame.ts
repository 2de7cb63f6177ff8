/** The taut chain of a machine at any travel and axle position, in frame coordinates: no ground is needed for its length. */
import { refuse } from '../numeric/refusal.ts';
import type { NoPose } from '../chassis/no-pose.ts';
import type { FramePlaces } from '../parts/frame-places.ts';
import type { Point } from '../plane/point.ts';
import type { ChainLoop } from '../drive/chain-loop.ts';
import { chainPath, type ChainPath } from '../drive/chain-path.ts';
import { lowerRun, type LowerRun } from '../drive/lower-run.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import { suspensionAt, withAxleAt, type Suspension } from '../linkage/suspension.ts';

/**
 * What the chain's length depends on: pivot at the origin, frame coordinates, mm. Every Machine is one; it has a type
 * to itself because a machine with a given chain must find its axle here before it is complete.
 */
export interface ChainMachine {
  readonly rear: Suspension;
  readonly places: Pick<FramePlaces, 'countershaft'>;
  /** Pitch-line radius of the chain guide about the pivot; null without a guide. */
  readonly guideRadius: number | null;
  /** The same of the guide under the pivot, for the lower run. */
  readonly lowerGuideRadius: number | null;
}

const PIVOT: Point = { x: 0, y: 0 };

/** Axle with the wheel risen by `rearTravel` mm and the axle `axlePosition` mm back in its slot, frame coordinates. */
export function axleInFrame(
  machine: ChainMachine,
  rearTravel: number,
  axlePosition: number,
): Point | NoLinkage {
  const moved = withAxleAt(machine.rear, axlePosition);
  const { arm } = moved;
  const at = suspensionAt(moved, rearTravel);
  if (!at.ok) return at;
  return { x: -arm * Math.cos(at.angle), y: -arm * Math.sin(at.angle) };
}

/**
 * The same for many places in one slot: the hanging arm has one angle wherever the axle stands, and finding that
 * angle is most of the work, above all with links.
 */
export function axlesInSlot(
  machine: ChainMachine,
  rearTravel: number,
): (axlePosition: number) => Point | NoLinkage {
  const at = rearTravel === 0 ? suspensionAt(machine.rear, 0) : null;
  if (at === null || !at.ok) return (axlePosition) => axleInFrame(machine, rearTravel, axlePosition);
  const cos = Math.cos(at.angle);
  const sin = Math.sin(at.angle);
  return (axlePosition) => {
    const arm = machine.rear.slotFrontArm + axlePosition;
    return arm > 0 ? { x: -arm * cos, y: -arm * sin } : axleInFrame(machine, rearTravel, axlePosition);
  };
}

/** Where the axle stands in its slot as the machine is set, mm back from the slot's front. */
export function setAxlePosition(machine: ChainMachine): number {
  return machine.rear.arm - machine.rear.slotFrontArm;
}

function countershaftInFrame(machine: ChainMachine): Point {
  return machine.places.countershaft;
}

/**
 * The taut chain's path at a rear travel and axle position, mm. The guide's rule is that of the standing bike. No
 * path where the arm cannot reach, the sprockets overlap, or a sprocket covers a guide.
 */
export function chainAt(
  machine: ChainMachine,
  loop: ChainLoop,
  rearTravel: number,
  axlePosition: number,
): ChainPath | NoLinkage {
  const axle = axleInFrame(machine, rearTravel, axlePosition);
  return 'ok' in axle ? axle : chainToAxle(machine, loop, axle);
}

/** The taut chain's path with the axle at a place in the frame; see chainAt. */
export function chainToAxle(machine: ChainMachine, loop: ChainLoop, axle: Point): ChainPath | NoPose {
  const front = countershaftInFrame(machine);
  const { guideRadius: upper, lowerGuideRadius: lower } = machine;
  const guides = upper === null && lower === null ? null : { centre: PIVOT, upper, lower };
  const path = chainPath(loop, axle, front, guides);
  if (path !== null) return path;
  return refuse('sprocketsOverlap', {
    found: Math.hypot(front.x - axle.x, front.y - axle.y),
    limit: loop.rearRadius + loop.frontRadius,
  });
}

/** The taut lower run in frame coordinates, under its guide where that bends it: for lengths and slack, which do not depend on which way is down. */
export function lowerRunInFrame(
  machine: ChainMachine,
  loop: ChainLoop,
  rearTravel: number,
  axlePosition: number,
): LowerRun | NoLinkage {
  const axle = axleInFrame(machine, rearTravel, axlePosition);
  return 'ok' in axle ? axle : lowerRunToAxle(machine, loop, axle);
}

/** The taut lower run with the axle at a place in the frame. */
export function lowerRunToAxle(machine: ChainMachine, loop: ChainLoop, axle: Point): LowerRun | NoPose {
  const front = countershaftInFrame(machine);
  const { lowerGuideRadius: radius } = machine;
  return (
    lowerRun(loop, axle, front, radius === null ? null : { centre: PIVOT, radius }) ?? {
      ok: false,
      reason: 'sprocketsOverlap',
      found: Math.hypot(front.x - axle.x, front.y - axle.y),
      limit: loop.rearRadius + loop.frontRadius,
    }
  );
}
