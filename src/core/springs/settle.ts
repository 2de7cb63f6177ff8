/** The search for the travel at which every push of a bike under steady forces is held. */
import { solveInBox, type BoxSolution, type Pushes } from '../numeric/solve-in-box.ts';
import { noBalance, type NoBalance } from './no-balance.ts';
import { forcesWrong, type RideForces } from './ride-forces.ts';
import type { SprungMachine } from './sprung-machine.ts';
import { springForce } from './spring-law.ts';
import { steadyLoads, type SteadyLoads } from './steady-loads.ts';
import { stance, type Stance, type Travel } from './stance.ts';

/** How far from balance an answer may be, mm of travel: ten thousand times the rounding of the pushes over the rates. */
const TOLERANCE = 1e-9;

/** Where the search begins, as parts of the travel at both ends; the later ones only when the first fails. */
const STARTS: readonly (readonly [number, number])[] = [
  [0.35, 0.35],
  [0.05, 0.1],
  [0.8, 0.8],
  [0.05, 0.8],
  [0.8, 0.1],
];

/** Where the solver ended, with the loads there; wheel loads may be negative, as if the ground could pull. */
export interface Settled {
  readonly ok: true;
  readonly found: BoxSolution;
  readonly stance: Stance;
  readonly loads: SteadyLoads;
}

/**
 * Travel at both ends at which every push is held, without asking whether the wheels stay on the ground.
 * For the limits at which they lift; everyone else wants `balance`.
 */
export function settle(sprung: SprungMachine, forces: RideForces, near?: Travel): Settled | NoBalance {
  const wrong = forcesWrong(forces);
  if (wrong !== null) return wrong;
  const { machine, fork, shock, brake, most } = sprung;
  let refusal: NoBalance | null = null;
  const pushes: Pushes = (front, rear, into) => {
    const on = stance(machine, { front, rear });
    if (!on.ok) {
      refusal = on;
      return false;
    }
    const loads = steadyLoads(on, forces, brake);
    if (!loads.ok) {
      refusal = loads;
      return false;
    }
    into[0] = loads.frontPush - springForce(fork, front);
    into[1] = loads.rearPush - (springForce(shock, on.arm.shockStroke) * on.arm.lever) / on.pose.originX;
    return true;
  };
  let best: BoxSolution | null = null;
  const begin = (startX: number, startY: number): boolean => {
    const found = solveInBox({
      pushes,
      lowX: 0,
      highX: most.front,
      lowY: 0,
      highY: most.rear,
      startX,
      startY,
      tolerance: TOLERANCE,
    });
    if (best === null || (found.status === 'solved' && (best.status !== 'solved' || found.stable)))
      best = found;
    return found.status === 'solved' && found.stable;
  };
  if (!(near !== undefined && begin(near.front, near.rear)))
    for (const [front, rear] of STARTS) if (begin(front * most.front, rear * most.rear)) break;

  const found = best as BoxSolution | null;
  if (found === null || found.status === 'noValue') return refusal ?? noBalance('inputNotANumber');
  if (found.status === 'notConverged')
    return noBalance('notConverged', { found: found.miss, limit: TOLERANCE });
  const on = stance(machine, { front: found.x, rear: found.y });
  if (!on.ok) return on;
  const loads = steadyLoads(on, forces, brake);
  return loads.ok ? { ok: true, found, stance: on, loads } : loads;
}
