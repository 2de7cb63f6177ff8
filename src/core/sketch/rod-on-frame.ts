/** The rod’s bolt on the frame. */
import { bolt } from './bolt.ts';

export const rodOnFrame = bolt('rodOnFrame', 'Rod on frame', 'The rod’s bolt on the frame.');
