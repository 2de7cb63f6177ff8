/** The gaps between chain and pivot guides through the whole travel, where they close, and which front sprocket keeps the upper open. */
import type { NoLinkage } from '../linkage/no-linkage.ts';
import { chainLoop, type ChainLoop } from '../drive/chain-loop.ts';
import { highestBetween } from '../numeric/highest-between.ts';
import { solveBetween } from '../numeric/solve-between.ts';
import { chainAt, lowerRunInFrame, setAxlePosition, type ChainMachine } from '../standing/chain-in-frame.ts';

/** A stretch of the rear travel, mm. */
export interface TravelStretch {
  readonly from: number;
  readonly to: number;
}

export interface GuideClearance {
  readonly ok: true;
  /** Even places from hanging to bottomed, mm, and the gap at each, of the straight run to the guide's pitch-line radius. */
  readonly rearTravel: readonly number[];
  readonly gap: readonly number[];
  readonly leastGap: number;
  readonly leastAt: number;
  /** Where the chain lies on the guide; empty when it stays clear, has no guide, or does not pass the pivot. */
  readonly touching: readonly TravelStretch[];
}

/** A chain that keeps this clear of a guide is clear of it: it whips a little. Common practice, no source. mm */
export const CLEAR_BY = 1;

/** Places of touching are found to this, mm. */
const PLACE_STEP = 1e-9;

/**
 * Gap of the free upper run above the guide's radius, mm, at a rear travel, as in the reading of the same name;
 * without a guide, above the pivot's centre. Zero or less: the chain lies on the guide.
 */
export function guideGap(machine: ChainMachine, loop: ChainLoop, rearTravel: number): number | NoLinkage {
  const guideRadius = machine.guideRadius ?? 0;
  const path = chainAt({ ...machine, guideRadius }, loop, rearTravel, setAxlePosition(machine));
  return 'ok' in path ? path : path.topLever - guideRadius;
}

/**
 * Gap of the straight lower run below the guide under the pivot, mm, at a rear travel, as in the reading of the same
 * name; without a guide, below the pivot's centre. Zero or less: the chain pulled tight lies on the guide.
 */
export function lowerGuideGap(
  machine: ChainMachine,
  loop: ChainLoop,
  rearTravel: number,
): number | NoLinkage {
  const lowerGuideRadius = machine.lowerGuideRadius ?? 0;
  const run = lowerRunInFrame({ ...machine, lowerGuideRadius }, loop, rearTravel, setAxlePosition(machine));
  return 'ok' in run ? run : run.gap;
}

/** The upper run's gap through the whole travel at `count` places, its least, and where the chain lies on the guide. */
export function guideClearance(
  machine: ChainMachine,
  loop: ChainLoop,
  count: number,
): GuideClearance | NoLinkage {
  const touches = (at: number): boolean => {
    const path = chainAt(machine, loop, at, setAxlePosition(machine));
    return !('ok' in path) && path.onGuide;
  };
  return clearance((at) => guideGap(machine, loop, at), touches, machine.rear.wheelTravel, count);
}

/** The same of the lower run and the guide under the pivot, which it lies on where it is pulled tight. */
export function lowerGuideClearance(
  machine: ChainMachine,
  loop: ChainLoop,
  count: number,
): GuideClearance | NoLinkage {
  const touches = (at: number): boolean => {
    const path = chainAt(machine, loop, at, setAxlePosition(machine));
    return !('ok' in path) && path.underGuide;
  };
  return clearance((at) => lowerGuideGap(machine, loop, at), touches, machine.rear.wheelTravel, count);
}

function clearance(
  gapOf: (rearTravel: number) => number | NoLinkage,
  touches: (rearTravel: number) => boolean,
  wheelTravel: number,
  count: number,
): GuideClearance | NoLinkage {
  const rearTravel: number[] = [];
  const gap: number[] = [];
  for (let i = 0; i < count; i++) {
    const at = (wheelTravel * i) / (count - 1);
    const found = gapOf(at);
    if (typeof found !== 'number') return found;
    rearTravel.push(at);
    gap.push(found);
  }
  const gapAt = (at: number): number => {
    const found = gapOf(at);
    return typeof found === 'number' ? found : NaN;
  };
  const least = highestBetween((at) => -gapAt(at), 0, wheelTravel, count);
  const touching = touches(least.x) ? stretches(gapAt, rearTravel, gap, least.x) : [];
  return { ok: true, rearTravel, gap, leastGap: -least.value, leastAt: least.x, touching };
}

/** The stretches at or below zero, their ends found between the places; the lowest place counts as one of them. */
function stretches(
  gapAt: (at: number) => number,
  places: readonly number[],
  gaps: readonly number[],
  lowest: number,
): TravelStretch[] {
  const at = [...places, lowest].sort((a, b) => a - b);
  const gap = at.map((place) => (place === lowest ? gapAt(lowest) : gaps[places.indexOf(place)]));
  const found: TravelStretch[] = [];
  let from: number | null = null;
  at.forEach((place, i) => {
    const touches = gap[i] <= 0;
    const edge = i === 0 ? place : solveBetween(gapAt, at[i - 1], place, PLACE_STEP).x;
    if (touches && from === null) from = edge;
    if (!touches && from !== null) {
      found.push({ from, to: edge });
      from = null;
    }
  });
  if (from !== null) found.push({ from, to: at[at.length - 1] });
  return found;
}

/** A front sprocket and how near the chain comes to the guide with it. */
export interface ClearFront {
  readonly frontTeeth: number;
  readonly leastGap: number;
}

/** Places through the travel at which a front sprocket is tried before its least gap is narrowed down. */
const TRIED_PLACES = 21;

/**
 * The front sprocket of fewest teeth, from `least` to `most`, with which the chain stays more than `margin` mm clear of
 * the guide through the whole travel, the axle staying where it is; null when none does. A bigger front sprocket
 * lifts the run off the guide.
 */
export function fewestClearFrontTeeth(
  machine: ChainMachine,
  loop: ChainLoop,
  range: { readonly least: number; readonly most: number },
  margin = 0,
): ClearFront | null {
  for (let frontTeeth = range.least; frontTeeth <= range.most; frontTeeth++) {
    const tried = chainLoop(frontTeeth, loop.rearTeeth, loop.pitch);
    const clearance = guideClearance(machine, tried, TRIED_PLACES);
    if (clearance.ok && clearance.leastGap > margin) return { frontTeeth, leastGap: clearance.leastGap };
  }
  return null;
}
