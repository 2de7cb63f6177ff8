/** The energy in an end's springs, which the program does not need and the tests compare its forces with. */
import type { SpringLaw } from '../../src/core/springs/spring-law.ts';

/** Energy in the end's springs at a stroke, N·mm, from nothing pressed: the integral of `springForce`. */
export function springEnergy(law: SpringLaw, at: number): number {
  const pressed = Math.max(0, law.preload + at);
  let energy = (law.rate * pressed * pressed) / 2;
  if (at < law.topOutLength) energy += (law.topOutRate * (law.topOutLength - at) ** 2) / 2;
  if (at > law.bumpStart) {
    const part = (at - law.bumpStart) / law.bumpDepth;
    energy += (law.bumpForce * law.bumpDepth * part ** (law.bumpExponent + 1)) / (law.bumpExponent + 1);
  }
  return energy;
}
