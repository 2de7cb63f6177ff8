/** The chain or belt of a bike as its setup has it: its loop, and how its axle is set. */
import type { Bike, Drive } from '../chassis/bike.ts';
import type { Setup } from '../chassis/setup.ts';
import { beltLoop, chainLoop, type ChainLoop } from '../drive/chain-loop.ts';
import type { AxleSlot } from './axle-in-slot.ts';

/** The loop over these teeth; of a shaft or hub drive it says nothing, and nobody asks. */
export function loopOf({ kind, chainPitch }: Drive, frontTeeth: number, rearTeeth: number): ChainLoop {
  return (kind === 'belt' ? beltLoop : chainLoop)(frontTeeth, rearTeeth, chainPitch);
}

/** The slot, and the play that the chain is given with the wheel hanging. */
export function axleSlot(bike: Bike, setup: Setup): AxleSlot {
  return {
    slot: bike.swingarm.slot,
    play: setup.chainPlay,
    rearTravel: 0,
    rule: { halfLink: bike.drive.halfLink },
  };
}
