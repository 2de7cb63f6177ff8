/** The rear suspension of a bike with its adjusters set, solved once for as long as nothing of it changes. */
import type { Swingarm } from '../parts/bike.ts';
import type { RearAdjusters } from './link-adjustments.ts';
import { noLinkage, type NoLinkage } from './no-linkage.ts';
import { adjustersIn, rearLayout } from './rear-layout-of.ts';
import { suspension, withAxleAt, type Suspension } from './suspension.ts';

interface Solution {
  readonly adjusters: RearAdjusters;
  readonly found: Suspension | NoLinkage;
}

/** How many settings of one swingarm are kept: the present one, the baseline, the one before, and one to spare. */
const KEPT = 4;

/** A new sprocket or a heavier rider does not change the links, and solving them takes longer than all the rest. */
const solutions = new WeakMap<Swingarm, Solution[]>();

const sameAdjusters = (a: RearAdjusters, b: RearAdjusters): boolean =>
  a.shockLength === b.shockLength &&
  a.shockMountShim === b.shockMountShim &&
  a.linkLength === b.linkLength &&
  a.pivotForward === b.pivotForward &&
  a.pivotUp === b.pivotUp;

/** Shock and links with their adjusters set and the axle at its place in the slot; refused as `suspension` refuses. */
export function suspensionAsSet(swingarm: Swingarm, setup: RearAdjusters): Suspension | NoLinkage {
  const adjusters = adjustersIn(setup);
  const { axlePosition } = adjusters;
  if (!Number.isFinite(axlePosition)) return noLinkage('inputNotANumber');
  const arm = swingarm.length + axlePosition;
  if (!(arm > 0)) return noLinkage('swingarmCannotReach', { found: arm, limit: 0 });
  const known = solutions.get(swingarm) ?? [];
  let entry = known.find((each) => sameAdjusters(each.adjusters, adjusters));
  if (entry === undefined) {
    const found = suspension(rearLayout(swingarm), swingarm.length, { ...adjusters, axlePosition: 0 });
    entry = { adjusters, found };
    solutions.set(swingarm, [entry, ...known.slice(0, KEPT - 1)]);
  }
  const { found } = entry;
  return found.ok && axlePosition !== 0 ? withAxleAt(found, axlePosition) : found;
}
