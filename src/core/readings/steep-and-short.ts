/** Whether the steering has become so quick that a rider must be warned. */
import type { Stance } from '../standing/stance.ts';
import { groundTrail } from './trail.ts';

/** Trail below which a road motorcycle may shake its head or tuck, mm. Common practice, no source. */
const SHORT_TRAIL = 80;

/** True when the trail is shorter than common practice keeps to. A caution, not a judgement of the bike. */
export function steepAndShort({ machine, rake, offset }: Stance): boolean {
  return groundTrail(machine.frontRadius, rake, offset) < SHORT_TRAIL;
}
