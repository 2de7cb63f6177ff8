/** Every pair of sprockets in stated ranges, each with its chain, its axle place and the bike that stands on them. */
import type { Bike } from '../chassis/bike.ts';
import type { NoStand } from '../springs/no-stand.ts';
import type { Setup } from '../chassis/setup.ts';
import { chainLoop, type ChainLoop } from '../drive/chain-loop.ts';
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
import { machine, type Machine } from '../springs/machine.ts';
import { pairObstacle, type PairObstacle } from '../springs/pair-obstacle.ts';
import { stance, type Stance, type Travel } from '../springs/stance.ts';

export interface TeethRange {
  readonly least: number;
  readonly most: number;
}

export interface PairsAsked {
  readonly bike: Bike;
  /** Its teeth and axle position are those compared with; each pair puts its own in their place. */
  readonly setup: Setup;
  /** Travel used in which the readings are taken, mm. */
  readonly travel: Travel;
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
 * kept. Teeth that no sprocket can have are left out. Or why the bike as dialled has no machine at all.
 */
export function sprocketPairs(asked: PairsAsked): readonly SprocketPair[] | NoStand {
  const base = machine(asked.bike, asked.setup);
  if (!base.ok) return base;
  const pairs: SprocketPair[] = [];
  for (let front = Math.ceil(asked.front.least); front <= asked.front.most; front++) {
    if (!teethPossible(front)) continue;
    for (let rear = Math.ceil(asked.rear.least); rear <= asked.rear.most; rear++)
      if (teethPossible(rear)) pairs.push(sprocketPair(asked, base, front, rear));
  }
  return pairs;
}

/** One pair alone; `base` is the machine of the bike and setup asked about. */
export function sprocketPair(
  asked: PairsAsked,
  base: Machine,
  frontTeeth: number,
  rearTeeth: number,
): SprocketPair {
  const { bike, rule, setup } = asked;
  const fresh = chainLoop(frontTeeth, rearTeeth, bike.drive.chainPitch);
  const loop =
    asked.stretchPercent === 0
      ? fresh
      : chainLoop(frontTeeth, rearTeeth, bike.drive.chainPitch, asked.stretchPercent);
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
  const on = stance(placed, asked.travel);
  if (!on.ok) return { ...bare, ...NOTHING, links, fitting, axlePosition, misfit: misfit ?? on, obstacle };
  return {
    ...bare,
    links,
    fitting,
    axlePosition,
    misfit,
    obstacle,
    stance: on,
    wheelbase: on.pose.wheelbase,
    swingarmAngle: on.swingarmAngle,
    antiSquat: antiSquat.read(on),
    pivotGap: topRunPivotGap.read(on) as number,
    chainMoment: chainMomentPerThousand(on),
  };
}

const NOTHING = {
  links: null,
  fitting: [],
  axlePosition: null,
  misfit: null,
  obstacle: null,
  stance: null,
  wheelbase: null,
  swingarmAngle: null,
  antiSquat: null,
  pivotGap: null,
  chainMoment: null,
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
