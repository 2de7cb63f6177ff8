/** What is known of each end of a bike at rest: travel, forces, wheel load and wheel rate. */
import {
  frontWheelRate,
  rearForceAtWheel,
  rearMotionRatio,
  rearWheelRate,
} from '../../springs/at-the-wheel.ts';
import type { NoEquilibrium } from '../../standing/no-equilibrium.ts';
import type { RideForces } from './ride-forces.ts';
import type { Settled } from './find-equilibrium.ts';
import type { SprungMachine } from '../../springs/sprung-machine.ts';
import { springForce, springRate } from '../../springs/spring-law.ts';

/** Carried by its springs; or on a stop: fully extended, at the end of the travel, or with the coils closed. */
export type Rest = 'onSprings' | 'toppedOut' | 'bottomed' | 'coilsClosed';

interface EndReport {
  readonly rest: Rest;
  /** From full extension, and to the end of the travel, mm: fork along the legs, rear wheel as `Travel` has it. */
  readonly travelUsed: number;
  readonly travelLeft: number;
  /** N that the stop holds, along the legs or at the rear axle, by size; zero on the springs. */
  readonly stopForce: number;
  /** Of the tyre on the ground, N: vertical, which lean does not change, and in the bike's own plane. */
  readonly wheelLoad: number;
  readonly wheelLoadInPlane: number;
  /** Force at the wheel per travel, both square to the ground with the frame held, N/mm, of the springs alone. */
  readonly wheelRate: number;
}

export interface FrontReport extends EndReport {
  /** Both legs together along the legs, N and N/mm. */
  readonly springForce: number;
  readonly rateAlongLegs: number;
}

export interface RearReport extends EndReport {
  /** All shocks together along the shock, N, and at the wheel square to the ground with the frame held. */
  readonly springForce: number;
  readonly forceAtWheel: number;
  readonly shockStroke: number;
  /** Shock stroke per rise of the axle, square to the ground as the bike stands; workshops also quote its inverse. */
  readonly motionRatio: number;
}

/** Both ends of a bike that has settled. */
export function endReports(
  sprung: SprungMachine,
  settled: Settled,
  forces: RideForces,
): { readonly ok: true; readonly front: FrontReport; readonly rear: RearReport } | NoEquilibrium {
  const { fork, shock, most } = sprung;
  const { stance: on, found, loads } = settled;
  const toPlane = Math.cos(forces.lean);
  const { front: frontUsed, rear: rearUsed } = on.travel;

  const frontRest = restAt(frontUsed, found.at.pushX, most.front, sprung.frontEndsBy);
  const rearRest = restAt(rearUsed, found.at.pushY, most.rear, sprung.rearEndsBy);
  const rearRate = rearWheelRate(sprung, rearUsed, on.pose.pitch, on.arm);
  if (typeof rearRate !== 'number') return rearRate;
  return {
    ok: true,
    front: {
      rest: frontRest,
      travelUsed: frontUsed,
      travelLeft: most.front - frontUsed,
      stopForce: frontRest === 'onSprings' ? 0 : Math.abs(found.at.pushX),
      wheelLoad: loads.frontLoad * toPlane,
      wheelLoadInPlane: loads.frontLoad,
      springForce: springForce(fork, frontUsed),
      rateAlongLegs: springRate(fork, frontUsed),
      wheelRate: frontWheelRate(sprung, on),
    },
    rear: {
      rest: rearRest,
      travelUsed: rearUsed,
      travelLeft: most.rear - rearUsed,
      stopForce: rearRest === 'onSprings' ? 0 : Math.abs(found.at.pushY),
      wheelLoad: loads.rearLoad * toPlane,
      wheelLoadInPlane: loads.rearLoad,
      springForce: springForce(shock, on.arm.shockStroke),
      forceAtWheel: rearForceAtWheel(sprung, on),
      shockStroke: on.arm.shockStroke,
      motionRatio: rearMotionRatio(on),
      wheelRate: rearRate,
    },
  };
}

function restAt(used: number, push: number, most: number, endsBy: SprungMachine['rearEndsBy']): Rest {
  if (used === 0 && push < 0) return 'toppedOut';
  if (used === most && push > 0) return endsBy === 'coils' ? 'coilsClosed' : 'bottomed';
  return 'onSprings';
}
