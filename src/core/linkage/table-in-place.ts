/** The travel table chosen for a bike that has links: the swingarm stays where it is. */
import type { Swingarm } from '../parts/bike.ts';
import { degrees } from '../units/convert.ts';
import type { RearAdjusters } from './link-adjustments.ts';
import { rearLayout } from './rear-layout-of.ts';
import { suspension } from './suspension.ts';

/** Nearer than this the arm is where it was, degrees, and after so many rounds it comes no nearer. */
const NEAR_ENOUGH = 1e-9;
const ROUNDS = 12;

/**
 * The swingarm by its table, with the angle at which the table begins such that, with these adjusters as they are set,
 * the arm hangs at `hanging` radians below the frame's x axis: where it hung by its links. Null where the table is none
 * that a suspension can be made of there.
 */
export function tableInPlace(swingarm: Swingarm, hanging: number, adjusters: RearAdjusters): Swingarm | null {
  let found: Swingarm = { ...swingarm, links: null };
  for (let round = 0; round < ROUNDS; round++) {
    const made = suspension(rearLayout(found), swingarm.length, adjusters);
    if (!made.ok) return null;
    const lower = degrees(hanging - (Math.asin(made.toppedOutSine) - made.framePitch));
    if (Math.abs(lower) < NEAR_ENOUGH) break;
    found = { ...found, toppedOutAngleDeg: found.toppedOutAngleDeg + lower };
  }
  return found;
}
