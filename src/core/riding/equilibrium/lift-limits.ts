/** How hard a bike can accelerate or brake before a wheel leaves the ground, in the posture it has at that moment. */
import { refuse } from '../../numeric/refusal.ts';
import { solveBetween } from '../../numeric/solve-between.ts';
import { STANDARD_GRAVITY } from '../../units/convert.ts';
import type { NoEquilibrium } from '../../standing/no-equilibrium.ts';
import type { RideForces } from './ride-forces.ts';
import { settle, type Settled } from './find-equilibrium.ts';
import type { SprungMachine } from '../../springs/sprung-machine.ts';
import type { Travel } from '../../standing/stance.ts';

export interface LiftLimit {
  readonly ok: true;
  /** Acceleration (front) or deceleration (rear) at which the wheel carries nothing, g, positive. */
  readonly limit: number;
  /** The posture at that moment. */
  readonly travel: Travel;
}

/** The limit is found to this, g. */
const TOLERANCE = 1e-10;
/** The search looks as far as this many times the limit of the posture at rest, g. */
const REACH = 3;

/**
 * Acceleration at which the front wheel carries nothing, g, with the fork extended and the rear as it sits then:
 * the posture that belongs to the limit, found together with it. Lean and drag are those of `forces`, whose own
 * acceleration does not count. From moments about the rear patch. No answer when the centre of gravity is behind
 * the rear axle, or too low for the front to lift at all.
 */
export function frontLiftLimit(sprung: SprungMachine, forces: RideForces): LiftLimit | NoEquilibrium {
  return liftLimit(sprung, forces, 'front');
}

/** Deceleration at which the rear wheel carries nothing, g, likewise; with the braking share of `forces`. */
export function rearLiftLimit(sprung: SprungMachine, forces: RideForces): LiftLimit | NoEquilibrium {
  return liftLimit(sprung, forces, 'rear');
}

function liftLimit(
  sprung: SprungMachine,
  forces: RideForces,
  end: 'front' | 'rear',
): LiftLimit | NoEquilibrium {
  let refusal: NoEquilibrium | null = null;
  const settledAt = (amount: number): Settled | null => {
    const settled = settle(sprung, { ...forces, acceleration: end === 'front' ? amount : -amount });
    if (!settled.ok) {
      refusal = settled;
      return null;
    }
    return settled;
  };
  const limitHere = ({ stance: on, loads }: Settled, amount: number): number => {
    // The wheel load falls by weight × height / wheelbase per g, exactly, as long as the posture is held.
    const load = end === 'front' ? loads.frontLoad : loads.rearLoad;
    return amount + (load * on.pose.wheelbase) / (on.mass * STANDARD_GRAVITY * on.centre.y);
  };
  const rest = settledAt(0);
  if (rest === null) return refusal ?? refuse('notConverged');
  if (!(rest.stance.centre.y > 0)) return refuse('neverLifts', { end });
  const first = limitHere(rest, 0);
  if (!(first > 0))
    return end === 'front'
      ? refuse('massBehindRearAxle', { found: rest.stance.centre.x, limit: 0 })
      : refuse('massAheadOfFrontAxle', { found: rest.stance.centre.x, limit: rest.stance.pose.wheelbase });
  const root = solveBetween(
    (amount) => {
      const settled = settledAt(amount);
      return settled === null ? NaN : limitHere(settled, amount) - amount;
    },
    0,
    REACH * first,
    TOLERANCE,
  );
  if (root.status === 'noSignChange') return refuse('neverLifts', { end });
  const there = settledAt(root.x);
  if (root.status !== 'solved' || there === null)
    return refusal ?? refuse('notConverged', { found: Math.abs(root.residual), limit: TOLERANCE });
  return { ok: true, limit: root.x, travel: there.stance.travel };
}

/**
 * How hard the bike may accelerate (front) or slow down (rear) before that wheel carries nothing, g, looked for between
 * none and the `asked` amount at which it lifts. Lean, drag and the brakes' share are those of `forces`; what slows the
 * bike beyond the engine's braking is the brakes'. With a closed throttle drag is part of both amounts. Where the load
 * jumps past zero, as falling rates can let it, the limit is the jump. Null where the wheel lifts without any. Where a
 * tyre is flat before the wheel lifts, that is the answer.
 */
export function limitBelow(
  sprung: SprungMachine,
  forces: RideForces,
  end: 'front' | 'rear',
  asked: number,
): number | NoEquilibrium | null {
  const sign = end === 'front' ? 1 : -1;
  // What drag adds on top is the same at every amount.
  const beside = asked - sign * forces.acceleration;
  let flat: NoEquilibrium | null = null;
  const root = solveBetween(
    (amount) => {
      const by = amount - beside;
      const engineBraking = Math.min(forces.engineBraking ?? 0, Math.max(0, end === 'rear' ? by : 0));
      const settled = settle(sprung, { ...forces, acceleration: sign * by, engineBraking });
      if (!settled.ok) {
        if (settled.reason === 'tyreFlat') flat = settled;
        return NaN;
      }
      return end === 'front' ? settled.loads.frontLoad : settled.loads.rearLoad;
    },
    0,
    asked,
    TOLERANCE,
  );
  return root.status === 'solved' ? root.x : flat;
}
