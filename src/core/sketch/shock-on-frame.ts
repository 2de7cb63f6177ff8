/** Centre of the shock’s upper bolt. */
import { bolt } from './bolt.ts';

export const shockOnFrame = bolt('shockOnFrame', 'Shock on frame', 'Centre of the shock’s upper bolt.');
