/** Tyres that give under the loads of a standing bike: the radii at which each carries its load. */
import { refuse } from '../../numeric/refusal.ts';
import type { NoEquilibrium } from '../../standing/no-equilibrium.ts';
import type { Machine } from '../../standing/machine.ts';
import type { TyreGive } from '../../standing/tyres.ts';
import type { SprungMachine } from '../../springs/sprung-machine.ts';
import type { SteadyLoads } from './steady-loads.ts';

/** How far a radius may be from the one at which the tyre carries its load, mm: as far as the travel of the balance. */
const TOLERANCE = 1e-9;
/** Each round leaves a few per cent of the miss: the load hardly changes with the radius. */
const MOST_ROUNDS = 60;

/** What a way of standing has to say for its tyres to settle. */
interface Loaded {
  readonly ok: true;
  readonly loads: SteadyLoads;
}

/**
 * A bike standing in some way, `stand`, on radii at which each tyre carries its load: radius = free radius − load in the
 * bike's own plane / rate, mm and N. A wheel that the balance would have to pull down hangs on its free radius. Rigid tyres
 * stand at once. No answer when the bike does not stand so, when a tyre would sink further than its sidewall is high, or
 * when loads and radii do not settle.
 */
export function standOnTyres<T extends Loaded>(
  sprung: SprungMachine,
  stand: (sprung: SprungMachine, before: T | null) => T | NoEquilibrium,
): T | NoEquilibrium {
  const { tyres } = sprung.machine;
  if (tyres === null) return stand(sprung, null);
  let { frontRadius, rearRadius } = sprung.machine;
  let before: T | null = null;
  let miss = Infinity;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const machine: Machine = { ...sprung.machine, frontRadius, rearRadius };
    const stood = stand({ ...sprung, machine }, before);
    if (!stood.ok) return stood;
    const { frontLoad, rearLoad } = stood.loads;
    const front = sinkOf(tyres.front, frontLoad, rearLoad);
    const rear = sinkOf(tyres.rear, rearLoad, frontLoad);
    const nextFront = tyres.front.freeRadius - front;
    const nextRear = tyres.rear.freeRadius - rear;
    miss = Math.max(Math.abs(nextFront - frontRadius), Math.abs(nextRear - rearRadius));
    if (miss <= TOLERANCE) return stood;
    if (front > tyres.front.sidewall)
      return refuse('tyreFlat', { end: 'front', found: front, limit: tyres.front.sidewall });
    if (rear > tyres.rear.sidewall)
      return refuse('tyreFlat', { end: 'rear', found: rear, limit: tyres.rear.sidewall });
    frontRadius = nextFront;
    rearRadius = nextRear;
    before = stood;
  }
  return refuse('notConverged', { found: miss, limit: TOLERANCE });
}

/**
 * How far a tyre sinks under its load, mm. While the search would have the ground pull the other
 * wheel down, this one carries more than the whole bike. The other wheel lifts first, so this tyre is held to its sidewall.
 */
function sinkOf({ rate, sidewall }: TyreGive, load: number, otherLoad: number): number {
  if (rate === null) return 0;
  const sink = Math.max(0, load) / rate;
  return otherLoad < 0 ? Math.min(sink, Math.max(0, sidewall)) : sink;
}
