/** Which chain, in whole links, can be put on a bike as it is set, whatever chain is on it now. */
import type { Bike } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import { chainForAxle } from './chain-for-axle.ts';
import {
  axleForChain,
  type AxleMisfit,
  type AxlePlace,
  type AxleSlot,
  type NoRunSlack,
} from '../standing/axle-in-slot.ts';
import { axleSlot, loopOf } from '../standing/chain-of.ts';
import { machine, type NoMachine } from '../standing/machine.ts';
import type { ChainLoop } from '../drive/chain-loop.ts';
import type { ChainMachine } from '../standing/chain-in-frame.ts';

interface ChainlessBike {
  readonly ok: true;
  readonly made: ChainMachine;
  readonly loop: ChainLoop;
  readonly slot: AxleSlot;
}

/** The bike without its chain, the axle at the front of its slot, where every chain can be tried. */
function withoutChain(bike: Bike, setup: Setup): ChainlessBike | NoMachine {
  const made = machine(bike, { ...setup, chainLinks: null, axlePosition: 0 });
  if (!made.ok) return made;
  const loop = loopOf(bike.drive, setup.frontTeeth, setup.rearTeeth);
  return { ok: true, made, loop, slot: axleSlot(bike, setup) };
}

/** Where a chain of `links` links puts the axle, mm back from its slot's front; or why it cannot be put on. */
export function chainFit(bike: Bike, setup: Setup, links: number): AxlePlace | NoMachine {
  const on = withoutChain(bike, setup);
  return on.ok ? axleForChain(on.made, on.loop, on.slot, links) : on;
}

/**
 * The chain that leaves the axle in its slot and is nearest in length to the one that `axlePosition`, mm back from
 * the slot's front, needs. Or why no chain does.
 */
export function nearestChain(
  bike: Bike,
  setup: Setup,
  axlePosition: number,
): { readonly ok: true; readonly links: number } | AxleMisfit | NoMachine | NoRunSlack {
  const on = withoutChain(bike, setup);
  if (!on.ok) return on;
  const asked = chainForAxle(on.made, on.loop, on.slot, axlePosition);
  if (!asked.ok) return asked;
  const fitting = asked.choices.find((choice) => choice.ok);
  if (fitting !== undefined) return { ok: true, links: fitting.links };
  const [misfit] = asked.choices;
  if (misfit.ok) return { ok: true, links: misfit.links };
  const [links] = misfit.nearest;
  return links === undefined ? misfit : { ok: true, links };
}
