/** A machine with springs in it: spring laws over the strokes it really has, and where it hangs. */
import { refuse } from '../numeric/refusal.ts';
import { solveBetween } from '../numeric/solve-between.ts';
import { suspensionAt, type Suspension } from '../linkage/suspension.ts';
import type { Machine } from '../standing/machine.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import type { RearBrake } from '../standing/rear-brake.ts';
import type { ForkSprings, ShockSprings, SpringSet } from '../standing/spring-set.ts';
import { LEAST_STROKE, springForce, springLaw, type SpringLaw } from './spring-law.ts';
import { stance, type Stance, type Travel } from '../standing/stance.ts';
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
  /** With both ends at full extension, whether or not the wheels hang there. */
  readonly toppedOut: Stance;
  /** Stands a machine where a search for its rest begins, which a search for a setup asks again and again. */
  readonly standAt: typeof stance;
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
  laws: SpringLaws = NEW_LAWS,
): SprungMachine | NoEquilibrium {
  const { fork, shock } = springs;
  const forkLaw = laws.fork(fork, machine.front.travel);
  if (!forkLaw.ok) return forkLaw;
  const shockLaw = laws.shock(shock, shock.fullLength - shock.closedLength);
  if (!shockLaw.ok) return shockLaw;
  const toppedOut = laws.toppedOut(machine);
  if (!toppedOut.ok) return toppedOut;

  const rearMost = laws.rearMost(shockLaw, machine.rear);
  if (typeof rearMost !== 'number') return rearMost;

  const legLean = machine.front.legLean + toppedOut.pose.pitch;
  const frontWeight = machine.frontUnsprung * STANDARD_GRAVITY * Math.cos(legLean);
  const frontHangs = hangs((travel) => springForce(forkLaw, travel) + frontWeight, forkLaw.stroke);
  const rearHangs = hangs((travel) => {
    const at = travel === 0 ? toppedOut.arm : suspensionAt(machine.rear, travel);
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
    rearEndsBy: shockLaw.coilsEnd && rearMost < machine.rear.wheelTravel ? 'coils' : 'stop',
    hanging: { front: frontHangs, rear: rearHangs },
    toppedOut,
    standAt: laws.standAt,
  };
}

/** Spring laws, the rear wheel's travel on them, and the stances that a search for a rest begins with, worked out anew. */
export const NEW_LAWS = {
  fork: (fork: ForkSprings, stroke: number) => springLaw(fork, fork.legs, stroke, 'front', fork.otherLeg),
  shock: (shock: ShockSprings, stroke: number) => springLaw(shock, shock.shocks, stroke, 'rear'),
  rearMost: rearMostOf,
  toppedOut: (machine: Machine) => stance(machine, { front: 0, rear: 0 }),
  standAt: stance,
} as const;

export type SpringLaws = typeof NEW_LAWS;

/** Most travel of the rear wheel that links and springs leave, mm; no answer where there is none. */
function rearMostOf(law: SpringLaw, rear: Suspension): number | NoEquilibrium {
  const { wheelTravel } = rear;
  if (!(wheelTravel >= LEAST_STROKE))
    return refuse('noStroke', { end: 'rear', found: wheelTravel, limit: LEAST_STROKE });
  const whole = suspensionAt(rear, wheelTravel);
  if (!whole.ok) return whole;
  if (whole.shockStroke <= law.stroke) return wheelTravel;
  const root = solveBetween(
    (travel) => {
      const at = suspensionAt(rear, travel);
      return at.ok ? at.shockStroke - law.stroke : NaN;
    },
    0,
    wheelTravel,
    TRAVEL_TOLERANCE,
  );
  return root.status === 'solved' ? root.x : refuse('notConverged', { end: 'rear' });
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
