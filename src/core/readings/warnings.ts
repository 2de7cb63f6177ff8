/** What about a standing bike a rider must be warned of, whatever the readings on show. */
import { hasRuns } from '../parts/drive-kind.ts';
import type { StandingBike } from '../riding/stand-bike.ts';
import { forkTubeSpare } from './fork-tube-spare.ts';
import { steepAndShort } from './steep-and-short.ts';
import { tyreToClampGap } from './tyre-to-clamp-gap.ts';
import type { Absent } from './absent.ts';

export type Warning =
  /** Little trail. */
  | 'steepAndShort'
  /** The front tyre meets the lower clamp before the fork is fully in. */
  | 'tyreHitsClamp'
  /** The clamps hold less tube than the maker's manual asks for. */
  | 'tubeTooShort'
  /** The chain lies on the guide over the pivot and wears it. */
  | 'chainOnGuide';

/** The warnings for a bike as it stands, the gravest first; none of them is a judgement of the bike. */
export function warningsFor(on: StandingBike): Warning[] {
  const found: Warning[] = [];
  if (steepAndShort(on)) found.push('steepAndShort');
  if (belowZero(forkTubeSpare.read(on))) found.push('tubeTooShort');
  if (belowZero(tyreToClampGap.read(on))) found.push('tyreHitsClamp');
  if (hasRuns(on.machine.driveKind) && on.pullLever > on.upperRunLever) found.push('chainOnGuide');
  return found;
}

function belowZero(value: number | Absent): boolean {
  return typeof value === 'number' && value < 0;
}
