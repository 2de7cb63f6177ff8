/** The chain or belt of a bike with its setup: its loop, and how its axle is set. */
import type { Bike, Drive } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import { chainStretch } from '../drive/chain-wear.ts';
import { beltLoop, chainLoop, type ChainLoop } from '../drive/chain-loop.ts';
import type { LinkRule } from '../drive/whole-links.ts';
import type { AxleSlot } from './axle-in-slot.ts';

/** The loop over these teeth; it means nothing on a shaft or hub drive, which never uses it. */
export function loopOf({ kind, chainPitch }: Drive, frontTeeth: number, rearTeeth: number): ChainLoop {
  return (kind === 'belt' ? beltLoop : chainLoop)(frontTeeth, rearTeeth, chainPitch);
}

/**
 * How much longer than new the chain on the bike has become, per cent; zero for a chain that is not measured, and for
 * a belt.
 */
export function stretchOf({ kind, chainPitch, measuredLinks, measuredLength }: Drive): number {
  if (kind !== 'chain' || measuredLength === null) return 0;
  return chainStretch({ links: measuredLinks, length: measuredLength }, chainPitch);
}

/** The loop as worn, which sets the axle's place and the slack. Angles and levers use the loop as new. */
export function wornLoopOf(drive: Drive, frontTeeth: number, rearTeeth: number): ChainLoop {
  const stretch = stretchOf(drive);
  return stretch === 0
    ? loopOf(drive, frontTeeth, rearTeeth)
    : chainLoop(frontTeeth, rearTeeth, drive.chainPitch, stretch);
}

/** Which lengths exist: a belt is made with any number of teeth, a chain needs a half link for odd ones. */
export function linkRuleOf({ kind, halfLink }: Pick<Drive, 'kind' | 'halfLink'>): LinkRule {
  return { halfLink: kind === 'belt' || halfLink };
}

/** The slot, and the slack that the chain gets with the wheel hanging. */
export function axleSlot(bike: Bike, setup: Pick<Setup, 'chainSlack'>): AxleSlot {
  return {
    slot: bike.swingarm.slot,
    slack: setup.chainSlack,
    rearTravel: 0,
    rule: linkRuleOf(bike.drive),
  };
}
