/** The rear suspension of a bike with its adjusters set, solved once for as long as nothing of it changes. */
import type { Swingarm } from '../parts/bike.ts';
import type { RearAdjusters } from './link-adjustments.ts';
import { noLinkage, type NoLinkage } from './no-linkage.ts';
import { adjustersIn, rearLayout } from './rear-layout-of.ts';
import { suspension, withAxleAt, type Suspension } from './suspension.ts';

interface Solution {
  /** With the axle at the front end of its slot: a longer arm is no new solution. */
  readonly links: RearAdjusters;
  readonly found: Suspension | NoLinkage;
}

/** How many settings of one swingarm are kept: the present one, the baseline, the one before, and one to spare. */
const KEPT = 4;

/** A new sprocket or a heavier rider does not change the links, and solving them takes longer than all the rest. */
const solutions = new WeakMap<Swingarm, Solution[]>();

function areSame(a: RearAdjusters, b: RearAdjusters): boolean {
  // Each key is that of an adjuster: both come from the function that picks them.
  for (const key in a) if (a[key as keyof RearAdjusters] !== b[key as keyof RearAdjusters]) return false;
  return true;
}

/** Shock and links with their adjusters set and the axle at its place in the slot; refused as `suspension` refuses. */
export function suspensionAsSet(swingarm: Swingarm, setup: RearAdjusters): Suspension | NoLinkage {
  const adjusters = adjustersIn(setup);
  const { axlePosition } = adjusters;
  if (!Number.isFinite(axlePosition)) return noLinkage('inputNotANumber');
  const arm = swingarm.length + axlePosition;
  if (!(arm > 0)) return noLinkage('swingarmCannotReach', { found: arm, limit: 0 });
  const known = solutions.get(swingarm) ?? [];
  const links = { ...adjusters, axlePosition: 0 };
  let entry = known.find((each) => areSame(each.links, links));
  if (entry === undefined) {
    const found = suspension(rearLayout(swingarm), swingarm.length, links);
    entry = { links, found };
    solutions.set(swingarm, [entry, ...known.slice(0, KEPT - 1)]);
  }
  const { found } = entry;
  return found.ok && axlePosition !== 0 ? withAxleAt(found, axlePosition) : found;
}
