/** The anti-squat at which the throttle neither loads nor unloads the rear spring, with the unsprung mass at the rear counted. */
import { refuse } from '../../numeric/refusal.ts';
import type { NoEquilibrium } from '../../standing/no-equilibrium.ts';
import type { Stance } from '../../standing/stance.ts';

export interface NeutralAntiSquat {
  readonly ok: true;
  /** Per cent; 100 for a massless arm and wheel, a few points more with real ones. */
  readonly neutral: number;
  /** How far it lies from 100 because of the rear unsprung mass, percentage points. */
  readonly shift: number;
}

/**
 * Anti-squat at which opening the gas asks nothing of the rear spring while the posture is held, per cent. The
 * rear unsprung mass is pushed forward at its axle, not at the height of the pivot: its inertia about the pivot,
 * m·a·(pivot height − axle height), presses the rear down and has to be held up as well. Dividing the balance about
 * the pivot by the load transfer gives 100·(1 + unsprung/mass · armSlope · wheelbase/centre height), with armSlope that
 * of the arm, axle to pivot; what the swingarm carries above its own line counts the other way, by its moment over arm and slope. Lean and speed do not enter. Not counted: a nose that rises carries the centre back,
 * which presses the rear down by some tenths of a millimetre more. No answer without a centre of gravity above the ground.
 */
export function neutralAntiSquat(on: Stance): NeutralAntiSquat | NoEquilibrium {
  if (!(on.mass > 0)) return refuse('noMass');
  if (!(on.centre.y > 0)) return refuse('neverLifts', { end: 'front' });
  const armSlope = (on.pose.pivot.y - on.rearAxle.y) / on.pose.pivot.x;
  const part = on.machine.rearUnsprung / on.mass;
  const turned = on.machine.armMoment / (on.machine.rear.arm * on.mass);
  const shift =
    (100 * part * armSlope * on.pose.wheelbase) / on.centre.y -
    (100 * turned * on.pose.wheelbase) / on.centre.y;
  return { ok: true, neutral: 100 + shift, shift };
}
