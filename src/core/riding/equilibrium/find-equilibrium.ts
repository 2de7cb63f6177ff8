/** The search for the travel at which every push of a bike under steady forces is held. */
import { refuse } from '../../numeric/refusal.ts';
import { solveInBox, type BoxSolution, type BoxRoot } from '../../numeric/solve-in-box.ts';
import type { SprungMachine } from '../../springs/sprung-machine.ts';
import type { NoEquilibrium } from '../../standing/no-equilibrium.ts';
import { stance, type Stance, type Travel } from '../../standing/stance.ts';
import { pushesOn, type Pushes } from './pushes.ts';
import { forcesWrong, type RideForces } from './ride-forces.ts';
import { standOnTyres } from './tyre-sink.ts';
import { steadyLoads, type SteadyLoads } from './steady-loads.ts';

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
  readonly found: BoxRoot<Pushes>;
  readonly stance: Stance;
  readonly loads: SteadyLoads;
}

/**
 * Travel at both ends at which every push is held, without asking whether the wheels stay on the ground.
 * Only for the limits at which they lift; all else uses `equilibrium`.
 */
export function settle(sprung: SprungMachine, forces: RideForces, near?: Travel): Settled | NoEquilibrium {
  const wrong = forcesWrong(forces);
  if (wrong !== null) return wrong;
  return standOnTyres<Settled>(sprung, (onTyres, before) =>
    settleOnRadii(onTyres, forces, before === null ? near : before.stance.travel),
  );
}

/** The same on tyres of given radii. */
function settleOnRadii(
  sprung: SprungMachine,
  forces: RideForces,
  near: Travel | undefined,
): Settled | NoEquilibrium {
  const { most } = sprung;
  let refusal: NoEquilibrium | null = null;
  const startFront = STARTS[0][0] * most.front;
  const startRear = STARTS[0][1] * most.rear;
  const pushesAt = (front: number, rear: number): Pushes | null => {
    const stand = front === startFront && rear === startRear ? sprung.standAt : stance;
    const pushes = pushesAtTravel(sprung, forces, { front, rear }, stand);
    if (pushes.ok) return pushes;
    refusal = pushes;
    return null;
  };
  let best: BoxSolution<Pushes> | null = null;
  const begin = (startX: number, startY: number): boolean => {
    const found = solveInBox({
      pushesAt,
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

  const found = best as BoxSolution<Pushes> | null;
  if (found?.status === 'solved') {
    const { stance: on, loads } = found.at.of;
    return { ok: true, found, stance: on, loads };
  }
  return found?.status === 'notConverged'
    ? refuse('notConverged', { found: found.miss, limit: TOLERANCE })
    : (refusal ?? refuse('inputNotANumber'));
}

function pushesAtTravel(
  sprung: SprungMachine,
  forces: RideForces,
  travel: Travel,
  stand: typeof stance,
): Pushes | NoEquilibrium {
  const on = stand(sprung.machine, travel);
  if (!on.ok) return on;
  const loads = steadyLoads(on, forces, sprung.brake);
  return loads.ok ? pushesOn({ sprung, stance: on, loads }) : loads;
}
