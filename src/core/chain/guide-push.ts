/** How hard a chain that lies over the pivot presses on its guide. */
import type { ChainLoop } from '../drive/chain-loop.ts';
import { chainAt, setAxlePosition } from '../standing/chain-in-frame.ts';
import type { Stance } from '../standing/stance.ts';

export interface GuidePush {
  /** By how much the chain bends over the guide, radians. */
  readonly bend: number;
  /** Force on the guide, toward the pivot, in N for every 1000 N of thrust at the rear patch. */
  readonly perThousand: number;
}

/**
 * The push of a bent upper run on the pivot's guide: two pulls that differ in direction by the bend,
 * 2·pull·sin(bend/2), with the pull thrust·wheelRadius / sprocketRadius. It acts through the pivot, so it does not
 * turn the arm; it wears the guide. Null while the chain runs free.
 */
export function guidePush(stance: Stance, loop: ChainLoop): GuidePush | null {
  const { machine, travel } = stance;
  const path = chainAt(machine, loop, travel.rear, setAxlePosition(machine));
  if ('ok' in path || !path.onGuide) return null;
  const pull = (1000 * machine.rearRadius) / machine.rearSprocketRadius;
  return { bend: path.bend, perThousand: 2 * pull * Math.sin(path.bend / 2) };
}
