/** Chain and axle: where the axle ends up in its slot with a given chain, and which chains a given axle place takes. */
import type { Refusal } from '../numeric/refusal.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import type { ChainLoop } from '../drive/chain-loop.ts';
import { spareForSlack } from '../drive/run-slack.ts';
import { linksBetween, linksPossible, type LinkRule } from '../drive/whole-links.ts';
import type { Point } from '../plane/point.ts';
import { solveBetween } from '../numeric/solve-between.ts';
import { axlesInSlot, lowerRunToAxle, chainToAxle, type ChainMachine } from './chain-in-frame.ts';

/** The slot and how the chain is set in it. */
export interface AxleSlot {
  /** How far the axle can move back from the slot's front, mm. */
  readonly slot: number;
  /** Slack to leave at the middle of the lower run, up and down together, mm; 0 for a taut chain. */
  readonly slack: number;
  /** Rear travel at which that slack is measured, mm: 0 for a wheel hanging on a paddock stand. */
  readonly rearTravel: number;
  readonly rule: LinkRule;
}

/** The axle's place with a chain. */
export interface AxlePlace {
  readonly ok: true;
  readonly links: number;
  /** Back from the slot's front, mm. */
  readonly axlePosition: number;
  /** Links by which the found place misses the chain's length: rounding. */
  readonly residual: number;
}

/** No chain has this slack: it is not a number, or more than a lower run can be pushed aside. */
export type NoRunSlack = Refusal<'slackImpossible'>;

/** `chainTooShort` would pull the axle ahead of the slot, `chainTooLong` push it out behind. */
export type AxleMisfitReason =
  | 'chainTooShort'
  | 'chainTooLong'
  | 'linksImpossible'
  | 'notConverged'
  | NoRunSlack['reason']
  | NoLinkage['reason'];

/** Why a chain does not put the axle into its slot. */
export type AxleMisfit = Refusal<AxleMisfitReason, AxleMisfitFigures>;

export interface AxleMisfitFigures {
  readonly links: number;
  /** Where the axle would have to be, mm from the slot's front; null when the chain reaches no such place near the slot. */
  readonly axlePosition: number | null;
  /** Chains that put the axle into the slot, nearest to the given one first; empty when none does. */
  readonly nearest: readonly number[];
  /** The slot's length, mm. */
  readonly slot: number;
}

/** How far outside the slot a place is still reported, in parts of the swingarm. */
const TOLD_AHEAD = 0.5;
const TOLD_BEHIND = 1;
/** Axle place is found to this, mm. */
const PLACE_STEP = 1e-10;
/** An axle this far outside its slot is in it, mm: rounding, whether a hand or a chain put it there. */
export const SLOT_ROUNDING = 1e-6;

/** A slot on its machine; what is the same for every chain in it is found once. */
export interface SlotOnMachine {
  readonly machine: ChainMachine;
  readonly slot: AxleSlot;
  readonly axleAt: (axlePosition: number) => Point | NoLinkage;
}

export function slotOn(machine: ChainMachine, slot: AxleSlot): SlotOnMachine {
  return { machine, slot, axleAt: axlesInSlot(machine, slot.rearTravel) };
}

/** Length in links of the chain that a loop takes at the slot's front and at its back; in general no whole numbers. */
export interface SlotEnds {
  readonly least: number | NoLinkage | NoRunSlack;
  readonly most: number | NoLinkage | NoRunSlack;
}

export function slotEnds(on: SlotOnMachine, loop: ChainLoop): SlotEnds {
  return { least: linksInSlot(on, loop, 0), most: linksInSlot(on, loop, on.slot.slot) };
}

/**
 * Length of the chain that has the slot's slack with the axle `axlePosition` mm back from the slot's front, in links;
 * in general no whole number. Or why there is none.
 */
export function linksInSlot(
  { machine, slot, axleAt }: SlotOnMachine,
  loop: ChainLoop,
  axlePosition: number,
): number | NoLinkage | NoRunSlack {
  const axle = axleAt(axlePosition);
  if ('ok' in axle) return axle;
  const path = chainToAxle(machine, loop, axle);
  if ('ok' in path) return path;
  if (slot.slack === 0) return path.links;
  const run = lowerRunToAxle(machine, loop, axle);
  if ('ok' in run) return run;
  const spare = spareForSlack(run, slot.slack);
  return spare.ok ? path.links + spare.spare / loop.pitch : { ok: false, reason: 'slackImpossible' };
}

/**
 * Chains that put the axle into its slot, shortest first; empty when none does, or why there is no bike to try them
 * on.
 */
export function chainsBetween({ least, most }: SlotEnds, rule: LinkRule): number[] | NoLinkage | NoRunSlack {
  if (typeof least !== 'number') return least;
  if (typeof most !== 'number') return most;
  return linksBetween(least, most, rule);
}

/**
 * Where the axle ends up with a chain of `links` links: the place at which the chain, with the given slack at the
 * given travel, is that long. Moving the axle back lengthens the swingarm; travel and shock are kept. Refused with
 * the place it would need and the nearest chains that work.
 */
export function axleForChain(
  machine: ChainMachine,
  loop: ChainLoop,
  slot: AxleSlot,
  links: number,
): AxlePlace | AxleMisfit {
  const on = slotOn(machine, slot);
  return axleBetween(on, loop, slotEnds(on, loop), links);
}

/** What axleForChain gives, from the slot's ends. */
export function axleBetween(
  on: SlotOnMachine,
  loop: ChainLoop,
  ends: SlotEnds,
  links: number,
): AxlePlace | AxleMisfit {
  const { machine, slot } = on;
  const misfit = (reason: AxleMisfit['reason'], axlePosition: number | null): AxleMisfit => {
    const fits = chainsBetween(ends, slot.rule);
    const nearest = Array.isArray(fits)
      ? fits.sort((a, b) => Math.abs(a - links) - Math.abs(b - links) || a - b)
      : [];
    return { ok: false, reason, links, axlePosition, nearest, slot: slot.slot };
  };
  if (!linksPossible(links, slot.rule)) return misfit('linksImpossible', null);
  const { least: here, most: there } = ends;
  if (typeof here !== 'number') return misfit(here.reason, null);
  // Both ends are known by now, and each place costs another search.
  const missing = (axlePosition: number): number => {
    if (axlePosition === 0) return here - links;
    const length = axlePosition === slot.slot ? there : linksInSlot(on, loop, axlePosition);
    return typeof length === 'number' ? length - links : NaN;
  };
  let [low, high] = [0, slot.slot];
  // A chain that does not fit is followed outside the slot, to find how far off it is.
  if (here > links) [low, high] = [-TOLD_AHEAD * machine.rear.slotFrontArm, 0];
  else if (missing(slot.slot) < 0) [low, high] = [slot.slot, TOLD_BEHIND * machine.rear.slotFrontArm];
  const found = solveBetween(missing, low, high, PLACE_STEP);
  if (found.status === 'notConverged') return misfit('notConverged', null);
  if (found.status !== 'solved') return misfit(here > links ? 'chainTooShort' : 'chainTooLong', null);
  const { x, residual } = found;
  if (x < -SLOT_ROUNDING) return misfit('chainTooShort', x);
  if (x > slot.slot + SLOT_ROUNDING) return misfit('chainTooLong', x);
  return { ok: true, links, axlePosition: Math.min(slot.slot, Math.max(0, x)), residual };
}
