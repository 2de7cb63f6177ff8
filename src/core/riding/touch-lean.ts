/** The lean angle at which the first part of the bike touches the ground. */
import { solveBetween } from '../numeric/solve-between.ts';
import { lowestLeaned } from '../standing/touch-height.ts';
import type { Stance } from '../standing/stance.ts';
import { radians } from '../units/convert.ts';
import { balance } from './equilibrium/equilibrium.ts';
import type { StandingBike } from './stand-bike.ts';

/** Leans tried one after the other, radians: fine enough that the first touch is not stepped over. */
const STEP = radians(5);
/** No tyre of the road holds a bike that leans further, radians: from common practice, no source. */
export const MOST_LEAN = radians(70);
/** The lean is found to so much, radians. */
const NEAR = 1e-10;

/**
 * The lean from upright at which the first part touches, radians, 0 where one touches upright; with the springs
 * pressed as deep as that lean presses them, under the load and the forces of the ride state shown. On its stops or at a
 * travel set by hand the bike keeps that travel. Null where no part touches up to `MOST_LEAN` or the bike no longer stands there;
 * see `lowestLeaned` for when there is no height either.
 * Example: part height 200 mm, half width 300 mm, crown radius 85 mm → 36.3°. On tyres without a crown it would be 33.7°.
 */
export function touchLean(on: StandingBike): number | null {
  const heightAt = (lean: number): number => {
    const leaned = leanedOver(on, lean);
    return (leaned === null ? null : lowestLeaned(leaned, lean))?.height ?? NaN;
  };
  const upright = heightAt(0);
  if (!(upright > 0)) return upright <= 0 ? 0 : null;
  for (let from = 0; from < MOST_LEAN; from += STEP) {
    const height = heightAt(from + STEP);
    if (Number.isNaN(height)) return null;
    if (height > 0) continue;
    const found = solveBetween(heightAt, from, from + STEP, NEAR);
    return found.status === 'solved' ? found.x : null;
  }
  return null;
}

function leanedOver({ equilibrium, sprung, ...stance }: StandingBike, lean: number): Stance | null {
  if (equilibrium === undefined || sprung === undefined) return stance;
  if (equilibrium.forces.lean === lean) return equilibrium.stance;
  const found = balance(sprung, { ...equilibrium.forces, lean }, equilibrium.stance.travel);
  return found.ok ? found.stance : null;
}
