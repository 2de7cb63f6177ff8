/** The shock’s bolt away from the rocker, on frame or swingarm. */
import { bolt } from './bolt.ts';

export const shockFarEnd = bolt(
  'shockFarEnd',
  'Shock, other end',
  'The shock’s bolt away from the rocker, on frame or swingarm.',
);
