/** Centre of the shock’s lower bolt. */
import { bolt } from './bolt.ts';

export const shockOnArm = bolt('shockOnArm', 'Shock on swingarm', 'Centre of the shock’s lower bolt.');
