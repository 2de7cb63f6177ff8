/** The centre of gravity of bike, rider and load, when there is any mass to have one. */
import type { Stance } from '../standing/stance.ts';
import { absent, type Absent } from './absent.ts';

/** A centre of gravity lower than this, mm, is rounding: no bike lies so flat, and ratios over it would be noise. */
const LEAST_HEIGHT = 1e-3;

/** Why a stance has no usable centre of gravity; null when it has one above the ground. */
export function withoutCentre(stance: Stance): Absent | null {
  if (!(stance.mass > 0)) return absent('noMass');
  return stance.centre.y > LEAST_HEIGHT ? null : absent('centreOnGround');
}
