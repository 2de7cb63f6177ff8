/** What a bike has that some adjusters need. */
import type { Bike } from '../parts/bike.ts';
import { hasRuns } from '../parts/drive-kind.ts';

export const onRuns = ({ drive }: Bike): boolean => hasRuns(drive.kind);
export const onLinks = ({ swingarm }: Bike): boolean => swingarm.links !== null;
