/** Every pair of sprockets in stated ranges, each with its chain, its axle place and the bike that stands on them. */
import type { Bike } from '../parts/bike.ts';
import type { NoStand } from '../riding/no-stand.ts';
import type { Setup } from '../adjusters/setup.ts';
import { beltLoop, chainLoop, type ChainLoop } from '../drive/chain-loop.ts';
import { teethPossible } from '../drive/sprocket.ts';
import { linksFrom, linksUpTo, type LinkRule } from '../drive/whole-links.ts';
import { withAxleAt } from '../linkage/suspension.ts';
import { antiSquat } from '../readings/anti-squat.ts';
import type { Absent } from '../readings/absent.ts';
import { chainSliderClearance } from '../readings/chain-slider-clearance.ts';
import {
  axleBetween,
  chainsBetween,
  linksInSlot,
  slotEnds,
  slotOn,
  type AxleMisfit,
  type NoRunSlack,
  type SlotOnMachine,
} from '../standing/axle-in-slot.ts';
import { setAxlePosition } from '../standing/chain-in-frame.ts';
import { chainMomentPerThousand } from '../chain/chain-moment.ts';
import { withRear } from '../standing/arm-mass.ts';
import { machine, type Machine, type NoMachine } from '../standing/machine.ts';
import { pairObstacle, type PairObstacle } from '../chain/pair-obstacle.ts';
import type { LoadCase } from '../riding/states/load-case.ts';
import { loadCase, type RideStateKey } from '../riding/states/all-ride-states.ts';
import { stanceInRide } from '../riding/stand-bike.ts';
import type { Stance, Travel } from '../standing/stance.ts';

export interface TeethRange {
  readonly least: number;
  readonly most: number;
}

export interface PairsAsked {
  readonly bike: Bike;
  /** Its teeth and axle position are those compared with; each pair puts its own in their place. */
  readonly setup: Setup;
  /**
   * Every pair gets the chain of these adjusters where it fits, and else the one that puts the axle nearest to where they
   * have it: the same for all, so that a pair's figures do not depend on the pair that is on the bike. Left out: `setup`.
   */
  readonly near?: Setup;
  /** Travel used in which the readings are taken, mm; or a ride state, in which each pair finds its own. */
  readonly ride: Travel | RideStateKey;
  readonly front: TeethRange;
  readonly rear: TeethRange;
  /** Fewest teeth that go over the countershaft. */
  readonly leastFront: number;
  /** Chains in hand, links; null to take whatever chain fits. */
  readonly linksInHand: readonly number[] | null;
  readonly rule: LinkRule;
  /** Slack at the middle of the lower run, up and down together, mm, with the rear axle risen by `setAt` mm, as it is set. */
  readonly slack: number;
  readonly setAt: number;
  /** Chain longer than new by wear, per cent. */
  readonly stretchPercent: number;
}

/** One pair, all of it computed together with the chain that was chosen. mm, radians, per cent. */
export interface SprocketPair {
  readonly frontTeeth: number;
  readonly rearTeeth: number;
  readonly ratio: number;
  /**
   * The chosen chain: the one that is there where it puts the axle into its slot, or else, of those that do, the one
   * nearest to the axle place asked about.
   */
  readonly links: number | null;
  /** All chains, of those in hand, that put the axle into its slot. */
  readonly fitting: readonly number[];
  /** Where the axle stands with it; outside the slot the misfit says where. */
  readonly axlePosition: number | null;
  readonly misfit: AxleMisfit | NoStand | NoRunSlack | null;
  readonly obstacle: PairObstacle | null;
  /** Travel used as the bike stands with this pair, mm; null where the axle has no place or the bike no pose. */
  readonly travel: Travel | null;
  readonly wheelbase: number | null;
  readonly swingarmAngle: number | null;
  readonly antiSquat: number | Absent | null;
  readonly pivotGap: number | null;
  /** N·m about the pivot for every 1000 N of thrust, pulling the rear down. */
  readonly chainMoment: number | null;
}

/**
 * All pairs in the ranges asked, front teeth first. Each pair gets its chain, the chain puts the axle into its slot,
 * and the bike is stood anew with that axle: swingarm, ride height, angles and chain change together. Travel used is
 * kept, or found anew in the ride state. Teeth that no sprocket can have are left out. Or why the bike as set has no
 * machine at all.
 */
export function sprocketPairs(asked: PairsAsked): readonly SprocketPair[] | NoStand {
  const base = pairBase(asked);
  if (!('machine' in base)) return base;
  const pairs: SprocketPair[] = [];
  for (let front = Math.ceil(asked.front.least); front <= asked.front.most; front++) {
    if (!teethPossible(front)) continue;
    for (let rear = Math.ceil(asked.rear.least); rear <= asked.rear.most; rear++)
      if (teethPossible(rear)) pairs.push(sprocketPair(asked, base, front, rear));
  }
  return pairs;
}

/** What all pairs of one bike and setup have in common, found once. */
export interface PairBase {
  /** What pairs are put into, with the setup's own. */
  readonly machine: Machine;
  readonly slot: SlotOnMachine;
  readonly ride: LoadCase;
  /**
   * Where that machine comes to rest, near which every pair does. One start for all, so that what a pair finds, should
   * it have several rests, depends on no other pair; left out where it comes to none.
   */
  readonly near: Travel | undefined;
  /** The axle place that chains are chosen near, mm back from its slot's front: where the chain puts it, or its adjuster. */
  readonly axlePosition: number;
  /** The chain that is there, links: the one named, or the whole one nearest to that place; null where no chain fits. */
  readonly links: number | null;
}

/**
 * What pairs are put into, whatever chain is on the bike and however far out of its slot the axle is set, since
 * each pair brings its own chain and place. Or why there is none.
 */
function pairBase(asked: PairsAsked): PairBase | NoMachine {
  const { bike, setup, near = setup, ride, rule, slack, setAt } = asked;
  const axlePosition = Math.min(bike.swingarm.slot, Math.max(0, setup.axlePosition));
  const made = machine(bike, { ...setup, axlePosition, chainLinks: null });
  if (!made.ok) return made;
  const riding: LoadCase =
    typeof ride === 'string' ? loadCase(ride, setup) : { kind: 'travel', travel: ride, setBy: {} };
  const on = stanceInRide(made, riding);
  const slot = slotOn(made, { slot: bike.swingarm.slot, slack, rearTravel: setAt, rule });
  const present = presentAxlePosition(bike, near);
  return {
    machine: made,
    slot,
    ride: riding,
    near: on.ok ? on.travel : undefined,
    axlePosition: present,
    links: near.chainLinks ?? wholeChain(slot, loopOver(asked, near.frontTeeth, near.rearTeeth), present),
  };
}

/** The chain or belt over these teeth, worn as it is. */
function loopOver({ bike, stretchPercent }: PairsAsked, frontTeeth: number, rearTeeth: number): ChainLoop {
  const { chainPitch, kind } = bike.drive;
  const around = kind === 'belt' ? beltLoop : chainLoop;
  return stretchPercent === 0
    ? around(frontTeeth, rearTeeth, chainPitch)
    : around(frontTeeth, rearTeeth, chainPitch, stretchPercent);
}

/** The whole chain in the slot that is nearest to an axle place; null where none is. */
function wholeChain(slot: SlotOnMachine, loop: ChainLoop, axlePosition: number): number | null {
  const all = chainsBetween(slotEnds(slot, loop), slot.slot.rule);
  if (!Array.isArray(all) || all.length === 0) return null;
  return chosenChain(slot, loop, all, null, axlePosition);
}

/** A chain on the bike puts the axle elsewhere than its adjuster says; a chain that does not fit leaves only the adjuster. */
function presentAxlePosition(bike: Bike, setup: Setup): number {
  if (setup.chainLinks === null) return setup.axlePosition;
  const onChain = machine(bike, setup);
  return onChain.ok ? setAxlePosition(onChain) : setup.axlePosition;
}

/**
 * The pair that is on the bike, with its axle where it stands now: where the chain on the bike puts it, or where it is
 * set, and then the chain named is the one nearest to that place. Or why the bike has no machine.
 */
export function pairAsItStands(asked: PairsAsked): SprocketPair | NoStand {
  const { bike, setup } = asked;
  const { axlePosition, chainLinks, frontTeeth, rearTeeth } = setup;
  const base = pairBase(asked);
  if (!('machine' in base)) return base;
  const linksInHand = chainLinks === null ? null : [chainLinks];
  const pair = sprocketPair({ ...asked, linksInHand }, base, frontTeeth, rearTeeth);
  if (chainLinks !== null) return pair;
  const made = machine(bike, setup);
  if (!made.ok) return made;
  const on = stanceInRide(made, base.ride, base.near);
  const obstacle = pairObstacle(made, bike.drive.chainPitch, asked.leastFront);
  return { ...pair, ...readingsOf(on), axlePosition, obstacle, misfit: on.ok ? null : on };
}

/** One pair alone; `base` is that of the bike and setup asked about. */
function sprocketPair(
  asked: PairsAsked,
  base: PairBase,
  frontTeeth: number,
  rearTeeth: number,
): SprocketPair {
  const { chainPitch } = asked.bike.drive;
  const fresh = loopOver({ ...asked, stretchPercent: 0 }, frontTeeth, rearTeeth);
  const loop = asked.stretchPercent === 0 ? fresh : loopOver(asked, frontTeeth, rearTeeth);
  const ends = slotEnds(base.slot, loop);
  const all = chainsBetween(ends, asked.rule);
  const bare = { ...NOTHING, frontTeeth, rearTeeth, ratio: rearTeeth / frontTeeth };
  if (!Array.isArray(all)) return { ...bare, misfit: all };
  const { linksInHand } = asked;
  const fitting = linksInHand === null ? all : all.filter((links) => linksInHand.includes(links));
  const own = fitting.find((chain) => chain === base.links);
  const links = own ?? chosenChain(base.slot, loop, fitting, linksInHand, base.axlePosition);
  if (links === null) return { ...bare, fitting };
  const place = axleBetween(base.slot, loop, ends, links);
  const misfit = place.ok ? null : place;
  const { axlePosition } = place;
  if (axlePosition === null) return { ...bare, links, fitting, misfit };
  const placed: Machine = {
    ...withRear(base.machine, withAxleAt(base.machine.rear, axlePosition)),
    frontTeeth,
    rearTeeth,
    frontSprocketRadius: fresh.frontRadius,
    rearSprocketRadius: fresh.rearRadius,
  };
  const obstacle = pairObstacle(placed, chainPitch, asked.leastFront);
  const on = stanceInRide(placed, base.ride, base.near);
  const why = misfit ?? (on.ok ? null : on);
  return { ...bare, links, fitting, axlePosition, misfit: why, obstacle, ...readingsOf(on) };
}

function readingsOf(on: Stance | NoStand): Pick<SprocketPair, keyof typeof NOT_STANDING> {
  if (!on.ok) return NOT_STANDING;
  return {
    travel: on.travel,
    wheelbase: on.pose.wheelbase,
    swingarmAngle: on.swingarmAngle,
    antiSquat: antiSquat.read(on),
    pivotGap: chainSliderClearance.read(on) as number,
    chainMoment: chainMomentPerThousand(on),
  };
}

const NOT_STANDING = {
  travel: null,
  wheelbase: null,
  swingarmAngle: null,
  antiSquat: null,
  pivotGap: null,
  chainMoment: null,
} as const;

const NOTHING = {
  ...NOT_STANDING,
  links: null,
  fitting: [],
  axlePosition: null,
  misfit: null,
  obstacle: null,
} as const;

/** The fitting chain nearest to the present axle place; when none fits, the chain nearest to it, to say how far off it is. */
function chosenChain(
  slot: SlotOnMachine,
  loop: ChainLoop,
  fitting: readonly number[],
  linksInHand: readonly number[] | null,
  axlePosition: number,
): number | null {
  if (fitting.length === 1) return fitting[0];
  const wanted = linksInSlot(slot, loop, axlePosition);
  if (typeof wanted !== 'number') return null;
  const { rule } = slot.slot;
  const offered = linksInHand ?? [linksUpTo(wanted, rule), linksFrom(wanted, rule)];
  const among = fitting.length > 0 ? fitting : offered;
  return among.reduce<number | null>(
    (best, links) => (best === null || Math.abs(links - wanted) < Math.abs(best - wanted) ? links : best),
    null,
  );
}
