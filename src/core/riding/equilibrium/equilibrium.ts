/** Where a bike comes to rest on its springs under steady forces: the quasi-static balance of fork and rear wheel. */
import { refuse } from '../../numeric/refusal.ts';
import { STANDARD_GRAVITY } from '../../units/convert.ts';
import { endReports, type FrontReport, type RearReport } from './end-at-rest.ts';
import type { NoEquilibrium } from '../../standing/no-equilibrium.ts';
import type { RideForces } from './ride-forces.ts';
import { settle, type Settled } from './find-equilibrium.ts';
import { limitBelow } from './lift-limits.ts';
import type { SprungMachine } from '../../springs/sprung-machine.ts';
import type { SteadyLoads } from './steady-loads.ts';
import type { Stance, Travel } from '../../standing/stance.ts';

/** A bike at rest on its springs. N along the bike's own plane unless said otherwise; a push at a stop counts as held. */
export interface Equilibrium {
  readonly ok: true;
  readonly stance: Stance;
  readonly forces: RideForces;
  readonly loads: SteadyLoads;
  readonly front: FrontReport;
  readonly rear: RearReport;
  /** False when the least nudge would make the bike leave this rest, as falling rates can. */
  readonly stable: boolean;
  /** How far, in mm of travel, the answer may be from balance, and the rounds it took. */
  readonly miss: number;
  readonly rounds: number;
}

/**
 * Where the bike sits while steady forces act: standing, on the gas, on the brakes, leaned over. Each end is in
 * balance with its springs or rests on a stop, which is a normal outcome and is reported. `near` is where to look first,
 * such as a neighbouring answer: quicker, and where a falling rate leaves the bike several rests, the one reached from there.
 * Equilibrium used: the whole bike about its contact patches; the front wheel along the legs; arm and rear wheel about
 * the pivot, with the drive's and the brake's slopes (squat-slope.ts, rear-brake.ts) and the unsprung masses'
 * own weight and inertia. From rigid-body statics with inertia forces (d'Alembert).
 * No answer, with the reason, when nothing has mass, a wheel would have to be pulled down, or the parts cannot meet.
 */
export function balance(
  sprung: SprungMachine,
  forces: RideForces,
  near?: Travel,
): Equilibrium | NoEquilibrium {
  const settled = settle(sprung, forces, near);
  if (!settled.ok) return settled;
  const { found, stance: on, loads } = settled;
  const lifted = lifts(sprung, forces, settled);
  if (lifted !== null) return lifted;
  const ends = endReports(sprung, settled, forces);
  if (!ends.ok) return ends;
  const { front, rear } = ends;
  return {
    ok: true,
    stance: on,
    forces,
    loads,
    front,
    rear,
    stable: found.stable,
    miss: found.miss,
    rounds: found.rounds,
  };
}

/** Which wheel the balance would have to pull down, and the most that it stays down at; else null. */
function lifts(
  sprung: SprungMachine,
  forces: RideForces,
  { stance: on, loads }: Settled,
): NoEquilibrium | null {
  const { centre, mass, pose } = on;
  if (!(centre.x > 0)) return refuse('massBehindRearAxle', { found: centre.x, limit: 0 });
  if (!(centre.x < pose.wheelbase))
    return refuse('massAheadOfFrontAxle', { found: centre.x, limit: pose.wheelbase });
  const weight = mass * STANDARD_GRAVITY;
  // Of the posture as it stands: for a bike whose wheel lifts without being driven or slowed.
  const here = (found: number, load: number): number => found + (load * pose.wheelbase) / (weight * centre.y);
  if (loads.frontLoad < 0) {
    const found = loads.acceleration;
    const limit = limitBelow(sprung, forces, 'front', found) ?? here(found, loads.frontLoad);
    return typeof limit === 'number' ? refuse('frontLifts', { end: 'front', found, limit }) : limit;
  }
  if (loads.rearLoad < 0) {
    const found = -loads.acceleration;
    const limit = limitBelow(sprung, forces, 'rear', found) ?? here(found, loads.rearLoad);
    return typeof limit === 'number' ? refuse('rearLifts', { end: 'rear', found, limit }) : limit;
  }
  return null;
}
