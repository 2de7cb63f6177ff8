/** How much more chain there is than both taut runs need, at the travel a bike stands at. */
import { hasRuns } from '../parts/drive-kind.ts';
import { chainAt, setAxlePosition } from './chain-in-frame.ts';
import { linksInSlot, slotOn } from './axle-in-slot.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import type { NoRunSlack } from './axle-in-slot.ts';
import type { Stance } from './stance.ts';
import { refuse, type Refusal } from '../numeric/refusal.ts';

export interface SpareChain {
  readonly ok: true;
  /** mm; below zero the chain is too tight by so much. */
  readonly spare: number;
  /** The same as a turn of the front sprocket, radians. */
  readonly atFrontSprocket: number;
}

export type NoSpareChain = NoLinkage | NoRunSlack | Refusal<'noRun'>;

/**
 * Spare chain between the pull of one run and that of the other: the chain less the shortest loop over both guides, worn
 * as it is. The chain is the one with its links named, else the one that has the slack set with the wheel hanging. As a
 * turn of the front sprocket a pitch is one tooth. No answer with a shaft or hub drive.
 */
export function spareChain({ machine, travel }: Stance): SpareChain | NoSpareChain {
  const { chain } = machine;
  if (!hasRuns(machine.driveKind) || chain === null) return refuse('noRun');
  const { loop, slot } = chain;
  const at = setAxlePosition(machine);
  const links = chain.links ?? linksInSlot(slotOn(machine, slot), loop, at);
  if (typeof links !== 'number') return links;
  const tight = chainAt(machine, loop, travel.rear, at);
  if ('ok' in tight) return tight;
  const spare = links - tight.links;
  return {
    ok: true,
    spare: spare * loop.pitch,
    atFrontSprocket: (2 * Math.PI * spare) / loop.frontTeeth,
  };
}
