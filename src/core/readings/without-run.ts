/** Whether a bike's drive pulls along a run at all. */
import { hasRuns } from '../parts/drive-kind.ts';
import type { Stance } from '../standing/stance.ts';
import type { AbsentReason } from './reading.ts';

/** Why a stance has no chain run to tell of; null with a chain or a belt. */
export function withoutRun({ machine }: Stance): AbsentReason | null {
  return hasRuns(machine.driveKind) ? null : 'noRun';
}
