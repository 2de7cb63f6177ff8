/** The rod’s bolt on the swingarm. */
import { bolt } from './bolt.ts';

export const rodOnArm = bolt('rodOnArm', 'Rod on swingarm', 'The rod’s bolt on the swingarm.');
