/** Setups laid side by side: which adjusters differ, which measured parts of their bikes do, and one adjuster taken over. */
import { ADJUSTERS, adjusterOf, type Adjuster } from '../adjusters/all-adjusters.ts';
import { isAdjusterChanged } from '../adjusters/changed-adjusters.ts';
import { doesApply } from '../adjusters/does-apply.ts';
import type { AdjusterKey, Setup } from '../adjusters/setup.ts';
import type { Bike, Drive } from '../parts/bike.ts';
import { haveSameFigures } from '../parts/same-figures.ts';

/** A bike with where its adjusters stand. */
export interface SetBike {
  readonly bike: Bike;
  readonly setup: Setup;
}

/** The adjusters of several setups of one bike. */
export interface SetupsCompared {
  /** Those that one of the setups has otherwise than the first, in the order of the page. */
  readonly differing: readonly AdjusterKey[];
  /** How many others the bike has: all setups have them alike. */
  readonly same: number;
}

/**
 * Which adjusters differ among setups of bikes with the same measured parts, and how many of those that the bike has do
 * not. Each is held against the first; an axle that its chain places counts by its chain.
 */
export function compareSetups(first: SetBike, others: readonly SetBike[]): SetupsCompared {
  const differs = ({ key }: Adjuster): boolean =>
    others.some(({ setup }) => isAdjusterChanged(key, setup, first.setup));
  const differing = ADJUSTERS.filter(differs).map(({ key }) => key);
  const has = (adjuster: Adjuster): boolean =>
    [first, ...others].some(({ bike, setup }) => doesApply(adjuster, bike, setup));
  return { differing, same: ADJUSTERS.filter((each) => has(each) && !differs(each)).length };
}

/** The adjusters that `to` has otherwise than `from`, in the order of the page. */
export function adjustersBetween(from: Setup, to: Setup): AdjusterKey[] {
  return ADJUSTERS.map(({ key }) => key).filter((key) => isAdjusterChanged(key, to, from));
}

/** A part of a bike that is measured. */
export type MeasuredPart = Exclude<keyof Bike, 'name' | 'about' | 'invented' | 'bodywork'>;

const MEASURED_PARTS: readonly MeasuredPart[] = [
  'frame',
  'fork',
  'swingarm',
  'shock',
  'rearBrake',
  'housing',
  'frontWheel',
  'rearWheel',
  'drive',
];

/** What of a drive is fitted or noted, and moves no point of the bike. */
const NOTED: readonly (keyof Drive)[] = [
  'halfLink',
  'primaryRatio',
  'gearRatios',
  'wearLimit',
  'leastSlack',
  'leastFrontTeeth',
];

/**
 * The parts whose measured figures differ between two bikes; empty when an adjuster at one figure means the same on both.
 * A half link in the chain, gearbox ratios and limits of wear, slack and teeth may differ.
 */
export function partsApart(one: Bike, other: Bike): MeasuredPart[] {
  const noted = Object.fromEntries(NOTED.map((key) => [key, other.drive[key]])) as Partial<Drive>;
  const mine: Bike = { ...one, drive: { ...one.drive, ...noted } };
  return MEASURED_PARTS.filter((part) => !haveSameFigures({ ...other, [part]: mine[part] }, other));
}

/**
 * `present` with one adjuster as `other` has it. An axle set by hand takes the chain off, as it is on `other`. Once no
 * adjuster differs any more it is `other` itself.
 */
export function takeAdjuster(present: Setup, other: Setup, key: AdjusterKey): Setup {
  const adjuster: Adjuster = adjusterOf(key);
  const placedBy = 'placedBy' in adjuster ? adjuster.placedBy : undefined;
  const chain = placedBy === undefined ? {} : { [placedBy]: other[placedBy] };
  const taken: Setup = { ...present, ...chain, [key]: other[key] };
  return adjustersBetween(taken, other).length === 0 ? other : taken;
}
