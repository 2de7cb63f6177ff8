/** Whether a bike's drive pulls along a run at all. */
import { hasRuns } from '../parts/drive-kind.ts';
import type { Stance } from '../standing/stance.ts';
import { absent, type Absent } from './absent.ts';

/** Why a stance has no chain run to tell of; null with a chain or a belt. */
export function withoutRun({ machine }: Stance): Absent | null {
  return hasRuns(machine.driveKind) ? null : absent('noRun');
}
