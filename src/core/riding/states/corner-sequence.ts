/** The corner sequence from braking through the corner to its exit: every place between two ride states as a case of its own. */
import type { Setup } from '../../adjusters/setup.ts';
import { loadCase, RIDE_STATES, type RideStateKey } from './all-ride-states.ts';
import type { InEquilibrium, LoadCase } from './load-case.ts';
import { forcesWrong } from '../equilibrium/ride-forces.ts';

export interface CornerPlace {
  /** 0 where the sequence begins to 1 where it ends. */
  readonly part: number;
  readonly state: RideStateKey;
  readonly label: string;
}

/** The ride states that are places of the corner sequence, in its order. */
export const CORNER_PLACES: readonly CornerPlace[] = RIDE_STATES.flatMap(({ key, label, cornerPart }) =>
  cornerPart === undefined ? [] : [{ part: cornerPart, state: key, label }],
).sort((a, b) => a.part - b.part);

/**
 * What the rider asks of the bike at a part of the corner sequence, 0 to 1. At its places that is the ride state
 * itself, from the same adjusters; between two of them lean, acceleration and engine braking go evenly from one to the
 * other: brake off, lean in, then upright and on the gas. A part outside 0 to 1 counts as the nearer end.
 */
export function cornerSequenceCase(part: number, setup: Setup): LoadCase {
  const at = Math.min(1, Math.max(0, part));
  const place = Math.max(
    0,
    CORNER_PLACES.findIndex((each) => each.part >= at),
  );
  const next = CORNER_PLACES[place];
  const to = loadCase(next.state, setup);
  if (place === 0 || next.part === at || to.kind !== 'equilibrium') return to;
  const before = CORNER_PLACES[place - 1];
  const from = loadCase(before.state, setup);
  if (from.kind !== 'equilibrium' || forcesWrong(from.forces) !== null) return from;
  if (forcesWrong(to.forces) !== null) return to;
  return between(from, to, (at - before.part) / (next.part - before.part));
}

/** A case part of the way from one to another. Brakes and refusals are those of the one that brakes or accelerates more. */
function between(from: InEquilibrium, to: InEquilibrium, part: number): InEquilibrium {
  const mix = (a: number, b: number): number => a + (b - a) * part;
  const [slower, faster] =
    from.forces.acceleration <= to.forces.acceleration ? ([from, to] as const) : ([to, from] as const);
  const acceleration = mix(from.forces.acceleration, to.forces.acceleration);
  const engine = mix(from.forces.engineBraking ?? 0, to.forces.engineBraking ?? 0);
  const { frontLifts } = faster.setBy;
  const { rearLifts } = slower.setBy;
  return {
    ...to,
    forces: {
      acceleration,
      // Where the way crosses over to acceleration the engine no longer brakes.
      engineBraking: Math.min(engine, Math.max(0, -acceleration)),
      slowedByDrag: mix(from.forces.slowedByDrag ?? 0, to.forces.slowedByDrag ?? 0),
      lean: mix(from.forces.lean, to.forces.lean),
      frontBrakeShare: slower.forces.frontBrakeShare,
      drag: to.forces.drag,
    },
    setBy: { ...(frontLifts && { frontLifts }), ...(rearLifts && { rearLifts }) },
  };
}
