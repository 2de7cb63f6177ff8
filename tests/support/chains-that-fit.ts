/** The chains that put the axle into its slot, from one machine and loop. */
import type { ChainLoop } from '../../src/core/drive/chain-loop.ts';
import type { ChainMachine } from '../../src/core/standing/chain-in-frame.ts';
import { chainsBetween, slotEnds, slotOn, type AxleSlot } from '../../src/core/standing/axle-in-slot.ts';

export function chainsThatFit(
  machine: ChainMachine,
  loop: ChainLoop,
  slot: AxleSlot,
): ReturnType<typeof chainsBetween> {
  return chainsBetween(slotEnds(slotOn(machine, slot), loop), slot.rule);
}
