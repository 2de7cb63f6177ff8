/** What about a standing bike a rider must be warned of, whatever the readings on show. */
import { hasRuns } from '../parts/drive-kind.ts';
import { stance, type Stance } from '../standing/stance.ts';
import { freeRadius } from '../standing/tyres.ts';
import { lowerPull } from '../standing/drive-slopes.ts';
import type { StandingBike } from '../riding/stand-bike.ts';
import { forkTubeSpare } from './fork-tube-spare.ts';
import { groundClearance } from './ground-clearance.ts';
import { steepAndShort } from './steep-and-short.ts';
import { tyreToClampGap } from './tyre-to-clamp-gap.ts';
import type { Absent } from './absent.ts';

export type Warning =
  /** The rear tyre reaches further forward than the swingarm pivot: no such bike can be. */
  | 'pivotInTyre'
  /** The tyres reach into one another: no such bike can be. */
  | 'tyresOverlap'
  /** A sprocket with its chain reaches the ground: no such bike can be. */
  | 'frontSprocketOnGround'
  | 'rearSprocketOnGround'
  /** The fork tubes end below the top of the clamp. */
  | 'tubeOutOfClamp'
  /** Little trail. */
  | 'steepAndShort'
  /** The front tyre meets the lower clamp before the fork is fully in. */
  | 'tyreHitsClamp'
  /** The clamps hold less tube than the maker's manual allows. */
  | 'tubeTooShort'
  /** The chain lies on the guide over the pivot and wears it. */
  | 'chainOnGuide'
  /** It is clear of that guide as the bike stands, and lies on it with both wheels hanging. */
  | 'chainOnGuideHanging'
  /** The lower run lies under the guide while the throttle is closed, and wears it. */
  | 'lowerRunOnGuide'
  /** A measured part such as the footrest is on the ground with the bike upright. */
  | 'partOnGround';

/**
 * The warnings for a bike as it stands: first what cannot be built at all, then the gravest; none of them is a judgement
 * of the bike. `rested` is the same bike at rest with its rider on board, by which the trail is judged: on the brakes
 * every bike has little.
 */
export function warningsFor(on: StandingBike, rested: StandingBike): Warning[] {
  const { machine } = on;
  const frontTyre = freeRadius(machine.tyres, 'front', machine.frontRadius);
  const rearTyre = freeRadius(machine.tyres, 'rear', machine.rearRadius);
  const runs = hasRuns(machine.driveKind);
  const found: readonly (readonly [Warning, boolean])[] = [
    ['pivotInTyre', machine.rear.arm < rearTyre],
    ['tyresOverlap', axlesApart(on) < frontTyre + rearTyre],
    ['frontSprocketOnGround', runs && on.countershaft.y < machine.frontSprocketRadius],
    ['rearSprocketOnGround', runs && machine.rearSprocketRadius > machine.rearRadius],
    ['tubeOutOfClamp', machine.front.tubeAbove < 0],
    ['steepAndShort', steepAndShort(rested)],
    ['tubeTooShort', belowZero(forkTubeSpare.read(on))],
    ['tyreHitsClamp', belowZero(tyreToClampGap.read(on))],
    ['chainOnGuide', runs && onGuide(on)],
    ['chainOnGuideHanging', runs && !onGuide(on) && onGuideHanging(on)],
    ['lowerRunOnGuide', runs && lowerPull(on).onGuide],
    ['partOnGround', belowZero(groundClearance.read(on))],
  ];
  return found.flatMap(([key, isSo]) => (isSo ? [key] : []));
}

function onGuide({ pullLever, upperRunLever }: Stance): boolean {
  return pullLever > upperRunLever;
}

/** A chain comes nearest to the guide over the pivot with the wheel hanging, as a rule. */
function onGuideHanging({ machine }: StandingBike): boolean {
  const hung = stance(machine, { front: 0, rear: 0 });
  return hung.ok && onGuide(hung);
}

function axlesApart({ frontAxle, rearAxle }: StandingBike): number {
  return Math.hypot(frontAxle.x - rearAxle.x, frontAxle.y - rearAxle.y);
}

function belowZero(value: number | Absent): boolean {
  return typeof value === 'number' && value < 0;
}
