/** The steady forces a bike is ridden with: acceleration, engine braking, lean, braking share and drag. */
import { refuse } from '../../numeric/refusal.ts';
import type { Setup } from '../../adjusters/setup.ts';
import { radians } from '../../units/convert.ts';
import type { NoEquilibrium } from '../../standing/no-equilibrium.ts';

export interface Drag {
  /** N, against the direction of travel. */
  readonly force: number;
  /** Above the ground, in the bike's own plane, mm. */
  readonly height: number;
}

export interface RideForces {
  /** Along the direction of travel, g: positive on the gas, negative on the brakes or with the throttle closed. */
  readonly acceleration: number;
  /** How much of the slowing the engine makes through the drive, throttle closed, g; none when left out. */
  readonly engineBraking?: number;
  /**
   * How much of the drag slows the bike on top of `acceleration`, 0 to 1: with the throttle closed all of it, otherwise
   * none, because drive and brakes then make up for it. None when left out.
   */
  readonly slowedByDrag?: number;
  /** From upright, radians. */
  readonly lean: number;
  /** Part of the brakes' force at the front wheel, 0 to 1; the rest is at the rear. Without braking it changes nothing. */
  readonly frontBrakeShare: number;
  /** Air's drag; null for none. It acts on what the springs carry. */
  readonly drag: Drag | null;
  /** Thrust with the front wheel against a wall, N: the wall holds the bike still. None when left out; see against-wall.ts. */
  readonly wallThrust?: number;
}

/** Standing or rolling evenly, upright. */
export const AT_REST: RideForces = { acceleration: 0, lean: 0, frontBrakeShare: 1, drag: null };

/** How hard engine and brakes slow a bike whose throttle is closed, g, each zero or more. */
export interface ThrottleClosed {
  readonly engine: number;
  readonly brakes: number;
  /** Radians. */
  readonly lean: number;
}

/** The throttle closed: the engine brakes through the drive, the brakes add to it, and drag slows the bike on top. */
export function throttleClosedForces({ engine, brakes, lean }: ThrottleClosed, setup: Setup): RideForces {
  return {
    acceleration: -(engine + brakes),
    engineBraking: engine,
    slowedByDrag: 1,
    lean,
    frontBrakeShare: setup.brakeFrontShare / 100,
    drag: dragOf(setup),
  };
}

/** The drag that the adjusters say; null without force. */
export function dragOf({ dragForce, dragHeight }: Setup): Drag | null {
  return dragForce === 0 ? null : { force: dragForce, height: dragHeight };
}

/** Further than this no tyre holds, and 1/cos grows without bound, radians. */
const MOST_LEAN = radians(80);

/** Beyond these no motorcycle is ridden: g, N and mm; far beyond them forces overflow. */
const MOST_ACCELERATION = 100;
const MOST_DRAG = 1e6;

/** What is wrong with the forces as numbers; null when nothing is. */
export function forcesWrong(forces: RideForces): NoEquilibrium | null {
  const { acceleration, lean, frontBrakeShare, drag } = forces;
  const { engineBraking = 0, slowedByDrag = 0 } = forces;
  if (!Number.isFinite(acceleration + engineBraking + slowedByDrag)) return refuse('inputNotANumber');
  if (engineBraking < 0 || (engineBraking > 0 && acceleration > 0))
    return refuse('throttleOpenAndClosed', { found: engineBraking, limit: 0 });
  if (Math.abs(acceleration) > MOST_ACCELERATION)
    return refuse('inputTooLarge', { found: acceleration, limit: MOST_ACCELERATION });
  if (!(Math.abs(lean) <= MOST_LEAN)) return refuse('leanImpossible', { found: lean, limit: MOST_LEAN });
  if (!(frontBrakeShare >= 0 && frontBrakeShare <= 1))
    return refuse('brakeShareImpossible', { found: frontBrakeShare, limit: 1 });
  if (drag !== null && !(drag.force >= 0 && Number.isFinite(drag.force + drag.height)))
    return refuse('dragImpossible', { found: drag.force, limit: 0 });
  if (drag !== null && Math.max(drag.force, Math.abs(drag.height)) > MOST_DRAG)
    return refuse('inputTooLarge', {
      found: Math.max(drag.force, Math.abs(drag.height)),
      limit: MOST_DRAG,
    });
  return null;
}
