/** The bike with its front wheel against a wall and the clutch let out: what lifts, what sinks, and how hard it can push. */
import { refuse, type Refusal } from '../../numeric/refusal.ts';
import type { NoEquilibrium } from '../../standing/no-equilibrium.ts';
import type { SprungMachine } from '../../springs/sprung-machine.ts';
import type { Stance } from '../../standing/stance.ts';
import { STANDARD_GRAVITY } from '../../units/convert.ts';
import { balance, type Equilibrium } from './equilibrium.ts';
import { endReports } from './end-at-rest.ts';
import { settle } from './find-equilibrium.ts';
import { AT_REST } from './ride-forces.ts';

export type NoWallReason =
  /** A thrust that is no force forward, N. */
  | 'wallThrustImpossible'
  /** More thrust than the front wheel stays down at, or than the rear tyre grips with; both in N. */
  | 'frontLiftsAtWall'
  | 'rearTyreSpins';

/** Why the wall test has no answer; forces in N. */
export type NoWall = NoEquilibrium | Refusal<NoWallReason>;

/** The bike at rest against the wall, beside the same bike with the clutch in. */
export interface AgainstWall {
  readonly ok: true;
  /** Both on the same springs, upright, with what the machine carries. */
  readonly from: Equilibrium;
  readonly pressed: Equilibrium;
  /** Of the rear wheel from clutch in to clutch out, mm of rear travel: positive lifts the rear, negative sinks it. */
  readonly rearLift: number;
  /** Of the fork along its legs, mm: positive rises, negative goes in. */
  readonly frontRise: number;
  /** Slope of the squat line pressed, and the one at which a massless wheel and arm would neither lift nor sink. */
  readonly squatSlope: number;
  readonly neutralSlope: number;
}

/** Beyond this no drive pushes, N. */
const MOST_THRUST = 1e6;

/**
 * Slope of the squat line at which pressing against a wall neither lifts nor sinks the rear: front wheel radius over
 * wheelbase, no unit. From moments: the thrust loads the rear by thrust · radius / wheelbase and lifts it by thrust · slope.
 * Weight and inertia do not enter, because nothing accelerates. Always has an answer on a bike that stands.
 */
export function neutralWallSlope({ machine, pose }: Stance): number {
  return machine.frontRadius / pose.wheelbase;
}

/** The hardest that a bike can push, N, and what ends it. */
export interface WallLimit {
  readonly thrust: number;
  readonly endedBy: 'frontLifts' | 'rearTyreSpins';
}

/**
 * The hardest push against a wall in the posture given, N: at weight · (centre ahead of the rear patch) / front radius the
 * front wheel leaves the floor, and before that the rear tyre may spin. `grip` is the tyre's friction on the floor, no
 * unit. From moments about the rear patch and thrust ≤ grip · rear load. Always has an answer.
 */
export function wallLimit({ machine, pose, mass, centre }: Stance, grip: number): WallLimit {
  const weight = mass * STANDARD_GRAVITY;
  const lifts = (weight * centre.x) / machine.frontRadius;
  const rearLoad = (weight * (pose.wheelbase - centre.x)) / pose.wheelbase;
  // The push itself presses the tyre down, so a tyre with much grip never spins.
  const share = 1 - (grip * machine.frontRadius) / pose.wheelbase;
  const spins = share > 0 ? (grip * rearLoad) / share : Number.POSITIVE_INFINITY;
  return spins < lifts
    ? { thrust: spins, endedBy: 'rearTyreSpins' }
    : { thrust: lifts, endedBy: 'frontLifts' };
}

/**
 * Stands the bike with its front wheel against an upright wall and lets the clutch out until the rear tyre pushes with
 * `thrust` N. A round tyre meets the wall at the height of its axle, so the wall pushes back there with the same
 * force. The rear gains thrust · radius / wheelbase of load, the front loses it, and along the legs the fork feels
 * load · cos + thrust · sin less the unsprung front. `grip` is the rear tyre's friction on the floor. Friction on the wall
 * is left out. From statics; nothing accelerates. No answer, with the reason, where the front wheel lifts, the rear tyre
 * spins or the bike finds no rest.
 */
export function pressAgainstWall(sprung: SprungMachine, thrust: number, grip: number): AgainstWall | NoWall {
  if (!(thrust >= 0 && thrust <= MOST_THRUST))
    return refuse('wallThrustImpossible', { found: thrust, limit: MOST_THRUST });
  const from = balance(sprung, AT_REST);
  if (!from.ok) return from;
  const forces = { ...AT_REST, wallThrust: thrust };
  const settled = settle(sprung, forces, from.stance.travel);
  if (!settled.ok) return settled;
  const { stance, loads, found } = settled;
  const limit = wallLimit(stance, grip);
  if (thrust > limit.thrust)
    return refuse(limit.endedBy === 'frontLifts' ? 'frontLiftsAtWall' : 'rearTyreSpins', {
      found: thrust,
      limit: limit.thrust,
    });
  const ends = endReports(sprung, settled, forces);
  if (!ends.ok) return ends;
  const { front, rear } = ends;
  const { stable, miss, rounds } = found;
  const pressed: Equilibrium = { ok: true, stance, forces, loads, front, rear, stable, miss, rounds };
  return {
    ok: true,
    from,
    pressed,
    rearLift: from.stance.travel.rear - stance.travel.rear,
    frontRise: from.stance.travel.front - stance.travel.front,
    squatSlope: stance.swingarmSlope + stance.chainSlope,
    neutralSlope: neutralWallSlope(stance),
  };
}
