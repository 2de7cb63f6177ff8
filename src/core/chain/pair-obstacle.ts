/** Sprockets that cannot be fitted: fewer teeth than the shaft allows, or so many that one reaches the pivot. */
import { beltPitchRadius } from '../drive/chain-loop.ts';
import { LEAST_TEETH, MOST_TEETH, pitchRadius } from '../drive/sprocket.ts';
import type { Machine } from '../standing/machine.ts';

/** What stands in the way of a pair, with the nearest tooth count that works; null when none does. */
export interface PairObstacle {
  readonly reason: 'frontBelowShaft' | 'pivotInsideFront' | 'pivotInsideRear';
  readonly found: number;
  readonly nearest: number | null;
}

/** The most teeth whose pitch circle stays clear of a point so far from its centre, mm; null when not even the fewest do. */
function mostTeethWithin({ driveKind }: Machine, distance: number, pitch: number): number | null {
  const radius = driveKind === 'belt' ? beltPitchRadius : pitchRadius;
  for (let teeth = MOST_TEETH; teeth >= LEAST_TEETH; teeth--)
    if (radius(teeth, pitch) < distance) return teeth;
  return null;
}

/**
 * Why the machine's sprockets cannot be fitted, or null. The swingarm pivot must lie outside both pitch circles;
 * `leastFront` is the fewest teeth that go over the countershaft.
 */
export function pairObstacle(machine: Machine, pitch: number, leastFront: number): PairObstacle | null {
  const { frontTeeth, rearTeeth } = machine;
  if (frontTeeth < leastFront) return { reason: 'frontBelowShaft', found: frontTeeth, nearest: leastFront };
  const toPivot = Math.hypot(machine.places.countershaft.x, machine.places.countershaft.y);
  // Some bikes have the countershaft on the pivot's axis: the sprocket turns about the pivot.
  if (toPivot > COAXIAL && machine.frontSprocketRadius >= toPivot)
    return {
      reason: 'pivotInsideFront',
      found: frontTeeth,
      nearest: mostTeethWithin(machine, toPivot, pitch),
    };
  if (machine.rearSprocketRadius >= machine.rear.arm)
    return {
      reason: 'pivotInsideRear',
      found: rearTeeth,
      nearest: mostTeethWithin(machine, machine.rear.arm, pitch),
    };
  return null;
}

/** Countershafts nearer to the pivot than this turn about the pivot itself, mm. */
const COAXIAL = 5;
