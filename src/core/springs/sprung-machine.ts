/** A machine with springs in it: spring laws over the strokes it really has, and where it hangs. */
import { refuse } from '../numeric/refusal.ts';
import { solveBetween } from '../numeric/solve-between.ts';
import { suspensionAt } from '../linkage/suspension.ts';
import type { Machine } from '../standing/machine.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import type { RearBrake } from '../standing/rear-brake.ts';
import type { SpringSet } from '../standing/spring-set.ts';
import { LEAST_STROKE, springForce, springLaw, type SpringLaw } from './spring-law.ts';
import { stance, type Travel } from '../standing/stance.ts';
import { STANDARD_GRAVITY } from '../units/convert.ts';

/** What ends the travel at full compression. */
export type TravelEnd = 'stop' | 'coils';

export interface SprungMachine {
  readonly ok: true;
  readonly machine: Machine;
  readonly springs: SpringSet;
  readonly fork: SpringLaw;
  readonly shock: SpringLaw;
  readonly brake: RearBrake;
  /** Most travel there is, mm: fork along the legs, rear wheel as `Travel` counts it. */
  readonly most: Travel;
  readonly frontEndsBy: TravelEnd;
  readonly rearEndsBy: TravelEnd;
  /** Travel at which each wheel hangs in the air, mm: zero where nothing pulls the end in by then. */
  readonly hanging: Travel;
}

/** The rear wheel's travel is found from the shock's stroke to this, mm. */
const TRAVEL_TOLERANCE = 1e-10;

/**
 * Puts springs into a machine, whose loads may change afterwards without doing this again. Refused
 * when a spring is impossible, with what is wrong with it, or when the machine does not stand topped out.
 */
export function sprungMachine(
  machine: Machine,
  springs: SpringSet = machine.springs,
  brake: RearBrake = machine.brake,
): SprungMachine | NoEquilibrium {
  const { fork, shock } = springs;
  const forkLaw = springLaw(fork, fork.legs, machine.front.travel, 'front', fork.otherLeg);
  if (!forkLaw.ok) return forkLaw;
  const shockLaw = springLaw(shock, shock.shocks, shock.fullLength - shock.closedLength, 'rear');
  if (!shockLaw.ok) return shockLaw;
  const toppedOut = stance(machine, { front: 0, rear: 0 });
  if (!toppedOut.ok) return toppedOut;

  const { wheelTravel } = machine.rear;
  if (!(wheelTravel >= LEAST_STROKE))
    return refuse('noStroke', { end: 'rear', found: wheelTravel, limit: LEAST_STROKE });
  const whole = suspensionAt(machine.rear, wheelTravel);
  if (!whole.ok) return whole;
  let rearMost = wheelTravel;
  if (whole.shockStroke > shockLaw.stroke) {
    const root = solveBetween(
      (travel) => {
        const at = suspensionAt(machine.rear, travel);
        return at.ok ? at.shockStroke - shockLaw.stroke : NaN;
      },
      0,
      wheelTravel,
      TRAVEL_TOLERANCE,
    );
    if (root.status !== 'solved') return refuse('notConverged', { end: 'rear' });
    rearMost = root.x;
  }

  const legLean = machine.front.legLean + toppedOut.pose.pitch;
  const frontWeight = machine.frontUnsprung * STANDARD_GRAVITY * Math.cos(legLean);
  const frontHangs = hangs((travel) => springForce(forkLaw, travel) + frontWeight, forkLaw.stroke);
  const rearHangs = hangs((travel) => {
    const at = suspensionAt(machine.rear, travel);
    if (!at.ok) return NaN;
    const angle = at.angle + toppedOut.pose.pitch;
    // Mass above the arm's line leans forward over the pivot and still turns the arm the way it hangs.
    return (
      springForce(shockLaw, at.shockStroke) * at.lever +
      machine.rearUnsprung * STANDARD_GRAVITY * (machine.rear.arm * Math.cos(angle)) +
      machine.armMoment * STANDARD_GRAVITY * Math.sin(angle)
    );
  }, rearMost);
  if (frontHangs === null) return refuse(pullsIn(forkLaw), { end: 'front' });
  if (rearHangs === null) return refuse(pullsIn(shockLaw), { end: 'rear' });

  return {
    ok: true,
    machine,
    springs,
    fork: forkLaw,
    shock: shockLaw,
    brake,
    most: { front: forkLaw.stroke, rear: rearMost },
    frontEndsBy: forkLaw.coilsEnd ? 'coils' : 'stop',
    rearEndsBy: shockLaw.coilsEnd && rearMost < wheelTravel ? 'coils' : 'stop',
    hanging: { front: frontHangs, rear: rearHangs },
  };
}

/** What pulls an end in that hangs nowhere. */
function pullsIn({ topOutRate }: SpringLaw): 'topOutImpossible' | 'balanceTooStrong' {
  return topOutRate > 0 ? 'topOutImpossible' : 'balanceTooStrong';
}

/** Where a wheel in the air comes to rest, mm; null when what pulls it in would swallow the whole travel. */
function hangs(outward: (travel: number) => number, most: number): number | null {
  if (outward(0) >= 0) return 0;
  const root = solveBetween(outward, 0, most, TRAVEL_TOLERANCE);
  return root.status === 'solved' ? root.x : null;
}
