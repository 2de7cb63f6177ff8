/** A chain that is bar tight somewhere in the rear travel, though slack was set on the stand. */
import type { Machine } from '../standing/machine.ts';
import { linksInSlot, slotOn } from '../standing/axle-in-slot.ts';
import { setAxlePosition } from '../standing/chain-in-frame.ts';
import { slackToSet } from './slack-to-set.ts';
import { tightestPlace } from './tightest-place.ts';

export interface BarTight {
  /** Rise of the rear axle from hanging where the chain is tightest, mm. */
  readonly rearTravel: number;
  /** By how much the chain is too short there, mm. */
  readonly short: number;
  /** Slack at the middle of the lower run that is set with the wheel hanging, up and down together, mm. */
  readonly slackSet: number;
  /** The slack to set so that `leastSlack` is left there, mm; null where no slack in the slot gives that. */
  readonly slackToSet: number | null;
}

/** Too short by less than this counts as rounding, mm. */
const ROUNDING = 0.005;

/**
 * Where a chain has no slack left at the tightest place of the travel, with the slack that is set on the stand. Null
 * for a chain with slack to spare, for belt, shaft and hub drives, and where there is no such place. `leastSlack` is
 * what the manual wants left there, mm.
 */
export function barTight(machine: Machine, leastSlack: number): BarTight | null {
  const { chain, driveKind } = machine;
  if (chain === null || driveKind !== 'chain') return null;
  const { loop, slot } = chain;
  const axlePosition = setAxlePosition(machine);
  const links = chain.links ?? linksInSlot(slotOn(machine, slot), loop, axlePosition);
  const tightest = tightestPlace(machine, loop, axlePosition);
  if (typeof links !== 'number' || !tightest.ok) return null;
  const short = (tightest.links - links) * loop.pitch;
  if (short <= ROUNDING) return null;
  const wanted = slackToSet(machine, loop, { links, leastSlack, measuredAt: 0, slot: slot.slot });
  return {
    rearTravel: tightest.rearTravel,
    short,
    slackSet: slot.slack,
    slackToSet: wanted.ok && wanted.inSlot ? wanted.slack.total : null,
  };
}
