/** Every pair of sprockets in stated ranges, each with its chain, its axle place and the bike that stands on them. */
import type { Bike } from '../chassis/bike.ts';
import type { NoStand } from '../springs/no-stand.ts';
import type { Setup } from '../chassis/setup.ts';
import { beltLoop, chainLoop, type ChainLoop } from '../drive/chain-loop.ts';
import { teethPossible } from '../drive/sprocket.ts';
import { linksFrom, linksUpTo, type LinkRule } from '../drive/whole-links.ts';
import { withAxleAt } from '../linkage/suspension.ts';
import { antiSquat } from '../readings/anti-squat.ts';
import type { AbsentReason } from '../readings/reading.ts';
import { topRunPivotGap } from '../readings/top-run-pivot-gap.ts';
import {
  axleForChain,
  chainsThatFit,
  linksForPlace,
  type AxleMisfit,
  type AxleSlot,
  type NoChainPlay,
} from '../springs/axle-in-slot.ts';
import { chainMomentPerThousand } from '../springs/chain-moment.ts';
import { machine, type Machine, type NoMachine } from '../springs/machine.ts';
import { pairObstacle, type PairObstacle } from '../springs/pair-obstacle.ts';
import type { RideState } from '../springs/ride-state.ts';
import { standMachine } from '../springs/stand-bike.ts';
import { stance, type Stance, type Travel } from '../springs/stance.ts';

export interface TeethRange {
  readonly least: number;
  readonly most: number;
}

export interface PairsAsked {
  readonly bike: Bike;
  /** Its teeth and axle position are those compared with; each pair puts its own in their place. */
  readonly setup: Setup;
  /** Travel used in which the readings are taken, mm; or a ride state, in which each pair finds its own. */
  readonly ride: Travel | RideState;
  readonly front: TeethRange;
  readonly rear: TeethRange;
  /** Fewest teeth that go over the countershaft. */
  readonly leastFront: number;
  /** Chains in hand, links; null to take whatever chain fits. */
  readonly linksInHand: readonly number[] | null;
  readonly rule: LinkRule;
  /** Play at the middle of the bottom run, up and down together, mm, with the rear axle risen by `setAt` mm: the slack that is set. */
  readonly play: number;
  readonly setAt: number;
  /** Chain longer than new by wear, per cent. */
  readonly stretchPercent: number;
}

/** One pair, all of it computed together with the chain that was chosen. mm, radians, per cent. */
export interface SprocketPair {
  readonly frontTeeth: number;
  readonly rearTeeth: number;
  readonly ratio: number;
  /** The chosen chain: of those that put the axle into its slot the one nearest to the present axle place. */
  readonly links: number | null;
  /** All chains, of those in hand, that put the axle into its slot. */
  readonly fitting: readonly number[];
  /** Where the axle stands with it; outside the slot it is told with the misfit. */
  readonly axlePosition: number | null;
  readonly misfit: AxleMisfit | NoStand | NoChainPlay | null;
  readonly obstacle: PairObstacle | null;
  /** The bike on its wheels with this pair, for any reading; null where the axle has no place or the bike no pose. */
  readonly stance: Stance | null;
  readonly wheelbase: number | null;
  readonly swingarmAngle: number | null;
  readonly antiSquat: number | AbsentReason | null;
  readonly pivotGap: number | null;
  /** N·m about the pivot for every 1000 N of thrust, pulling the rear down. */
  readonly chainMoment: number | null;
}

/**
 * All pairs in the ranges asked, front teeth first. Each pair gets its chain, the chain puts the axle into its slot,
 * and the bike is stood anew with that axle: swingarm, ride height, angles and chain change together. Travel used is
 * kept, or found anew in the ride state. Teeth that no sprocket can have are left out. Or why the bike as dialled has no machine at all.
 */
export function sprocketPairs(asked: PairsAsked): readonly SprocketPair[] | NoStand {
  const base = machineForPairs(asked);
  if (!base.ok) return base;
  const pairs: SprocketPair[] = [];
  let near: Travel | undefined;
  for (let front = Math.ceil(asked.front.least); front <= asked.front.most; front++) {
    if (!teethPossible(front)) continue;
    for (let rear = Math.ceil(asked.rear.least); rear <= asked.rear.most; rear++)
      if (teethPossible(rear)) {
        // The next pair comes to rest near where this one does.
        const pair = sprocketPair(asked, base, front, rear, near);
        near = pair.stance?.travel ?? near;
        pairs.push(pair);
      }
  }
  return pairs;
}

/**
 * The machine that pairs are put into, whatever chain is on the bike and however far out of its slot the axle is
 * dialled, since each pair brings its own chain and place. Or why there is none.
 */
export function machineForPairs({ bike, setup }: PairsAsked): Machine | NoMachine {
  const axlePosition = Math.min(bike.swingarm.slot, Math.max(0, setup.axlePosition));
  return machine(bike, { ...setup, axlePosition, chainLinks: null });
}

/**
 * The pair that is on the bike, with its axle where it stands now: where the chain on the bike puts it, or where it is
 * dialled, and then the chain named is the one nearest to that place. Or why the bike has no machine.
 */
export function pairAsItStands(asked: PairsAsked): SprocketPair | NoStand {
  const { bike, setup } = asked;
  const { axlePosition, chainLinks, frontTeeth, rearTeeth } = setup;
  const base = machineForPairs(asked);
  if (!base.ok) return base;
  const linksInHand = chainLinks === null ? null : [chainLinks];
  const pair = sprocketPair({ ...asked, linksInHand }, base, frontTeeth, rearTeeth);
  if (chainLinks !== null) return pair;
  const made = machine(bike, setup);
  if (!made.ok) return made;
  const on = stood(asked, made);
  const obstacle = pairObstacle(made, bike.drive.chainPitch, asked.leastFront);
  const placed = { ...pair, ...NOT_STANDING, axlePosition, obstacle };
  return on.ok ? { ...placed, misfit: null, ...readingsOf(on) } : { ...placed, misfit: on };
}

/**
 * One pair alone; `base` is the machine for pairs of the bike and setup asked about, `near` a travel to look near first.
 */
export function sprocketPair(
  asked: PairsAsked,
  base: Machine,
  frontTeeth: number,
  rearTeeth: number,
  near?: Travel,
): SprocketPair {
  const { bike, rule, setup } = asked;
  const { chainPitch, kind } = bike.drive;
  const around = kind === 'belt' ? beltLoop : chainLoop;
  const fresh = around(frontTeeth, rearTeeth, chainPitch);
  const loop =
    asked.stretchPercent === 0 ? fresh : around(frontTeeth, rearTeeth, chainPitch, asked.stretchPercent);
  const withTeeth: Machine = {
    ...base,
    frontTeeth,
    rearTeeth,
    frontSprocketRadius: fresh.frontRadius,
    rearSprocketRadius: fresh.rearRadius,
  };
  const slot: AxleSlot = { slot: bike.swingarm.slot, play: asked.play, rearTravel: asked.setAt, rule };
  const bare = { frontTeeth, rearTeeth, ratio: rearTeeth / frontTeeth };
  const all = chainsThatFit(withTeeth, loop, slot);
  if (!Array.isArray(all)) return { ...bare, ...NOTHING, misfit: all };
  const { linksInHand } = asked;
  const fitting = linksInHand === null ? all : all.filter((links) => linksInHand.includes(links));
  const links = chosenChain(withTeeth, loop, slot, fitting, linksInHand, setup.axlePosition);
  if (links === null) return { ...bare, ...NOTHING, fitting };
  const place = axleForChain(withTeeth, loop, slot, links);
  const misfit = place.ok ? null : place;
  const { axlePosition } = place;
  if (axlePosition === null) return { ...bare, ...NOTHING, links, fitting, misfit };
  const placed: Machine = { ...withTeeth, rear: withAxleAt(base.rear, axlePosition) };
  const obstacle = pairObstacle(placed, bike.drive.chainPitch, asked.leastFront);
  const on = stood(asked, placed, near);
  const found = { ...bare, ...NOTHING, links, fitting, axlePosition, misfit, obstacle };
  return on.ok ? { ...found, ...readingsOf(on) } : { ...found, misfit: misfit ?? on };
}

/** The machine on its wheels, in the ride state or at the travel asked for. */
function stood({ ride, setup }: PairsAsked, placed: Machine, near?: Travel): Stance | NoStand {
  return typeof ride === 'string' ? standMachine(placed, setup, ride, near) : stance(placed, ride);
}

function readingsOf(on: Stance): Pick<SprocketPair, keyof typeof NOT_STANDING> {
  return {
    stance: on,
    wheelbase: on.pose.wheelbase,
    swingarmAngle: on.swingarmAngle,
    antiSquat: antiSquat.read(on),
    pivotGap: topRunPivotGap.read(on) as number,
    chainMoment: chainMomentPerThousand(on),
  };
}

const NOT_STANDING = {
  stance: null,
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
  machine: Machine,
  loop: ChainLoop,
  slot: AxleSlot,
  fitting: readonly number[],
  linksInHand: readonly number[] | null,
  axlePosition: number,
): number | null {
  const wanted = linksForPlace(machine, loop, slot, axlePosition);
  if (typeof wanted !== 'number') return null;
  const offered = linksInHand ?? [linksUpTo(wanted, slot.rule), linksFrom(wanted, slot.rule)];
  const among = fitting.length > 0 ? fitting : offered;
  return among.reduce<number | null>(
    (best, links) => (best === null || Math.abs(links - wanted) < Math.abs(best - wanted) ? links : best),
    null,
  );
}
