/** Which chain an axle place needs, and where the whole chains next to it put the axle. */
import type { ChainLoop } from '../drive/chain-loop.ts';
import { linksFrom, linksUpTo } from '../drive/whole-links.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import {
  axleBetween,
  linksInSlot,
  slotEnds,
  slotOn,
  type AxleMisfit,
  type AxlePlace,
  type AxleSlot,
  type NoRunSlack,
} from '../standing/axle-in-slot.ts';
import type { ChainMachine } from '../standing/chain-in-frame.ts';

/** The chain that an axle place needs. */
export interface ChainForAxle {
  readonly ok: true;
  /** Length that would leave the axle exactly there; in general no whole number. */
  readonly exactLinks: number;
  /** Chains next to it that can be joined, with where each would put the axle; the nearer place first. */
  readonly choices: readonly (AxlePlace | AxleMisfit)[];
}

/** The links needed for an axle place, mm from the slot's front, and where the axle sits with the whole chains next to them. */
export function chainForAxle(
  machine: ChainMachine,
  loop: ChainLoop,
  slot: AxleSlot,
  axlePosition: number,
): ChainForAxle | NoLinkage | NoRunSlack {
  const on = slotOn(machine, slot);
  const exactLinks = linksInSlot(on, loop, axlePosition);
  if (typeof exactLinks !== 'number') return exactLinks;
  const ends = slotEnds(on, loop);
  const whole = [...new Set([linksUpTo(exactLinks, slot.rule), linksFrom(exactLinks, slot.rule)])];
  const off = (links: number): number => Math.abs(links - exactLinks);
  whole.sort((a, b) => off(a) - off(b));
  return { ok: true, exactLinks, choices: whole.map((links) => axleBetween(on, loop, ends, links)) };
}
