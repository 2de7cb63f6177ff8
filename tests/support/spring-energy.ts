/** The energy in an end's springs, which the program does not need and the tests compare its forces with. */
import type { AirChamber } from '../../src/core/springs/air-chamber.ts';
import type { CurvedSpring } from '../../src/core/springs/main-spring.ts';
import type { SpringLaw } from '../../src/core/springs/spring-law.ts';

/** The air outside, N/mm². */
const OUTSIDE = 0.101325;

/**
 * Energy in the end's springs and air at a stroke, N·mm, springs from nothing pressed and air from full extension: the
 * integral of `springForce`.
 */
export function springEnergy(law: SpringLaw, at: number): number {
  const pressed = Math.max(0, law.preload + at);
  let energy = (law.rate * pressed * pressed) / 2;
  if (at < law.topOutLength) energy += (law.topOutRate * (law.topOutLength - at) ** 2) / 2;
  if (at > law.bumpStart) {
    const part = (at - law.bumpStart) / law.bumpDepth;
    energy += (law.bumpForce * law.bumpDepth * part ** (law.bumpExponent + 1)) / (law.bumpExponent + 1);
  }
  for (const spring of [law.curved, law.other]) if (spring !== null) energy += mainEnergy(spring, at);
  for (const chamber of law.air ?? []) energy += airEnergy(chamber, at);
  return energy;
}

function mainEnergy(spring: CurvedSpring, at: number): number {
  const pressed = Math.max(0, spring.preload + at);
  if (spring.kind === 'table') return spring.count * underCurve(spring.curve, pressed);
  const { count, rate, thenRate, changeover } = spring;
  const soft = Math.min(pressed, changeover);
  const hard = pressed - soft;
  return count * ((rate * soft * soft) / 2 + hard * rate * soft + (thenRate * hard * hard) / 2);
}

/** Area under the cubic pieces up to a place: each from its ends alone where it lies whole below the place. */
function underCurve({ x, y, slope }: Extract<CurvedSpring, { kind: 'table' }>['curve'], to: number): number {
  let area = 0;
  for (let i = 0; i + 1 < x.length; i++) {
    const h = x[i + 1] - x[i];
    const t = Math.min(1, Math.max(0, (to - x[i]) / h));
    // The integral of each cubic that belongs to an end's height or slope, from 0 to t.
    area +=
      h *
      (y[i] * (t - t ** 3 + t ** 4 / 2) +
        y[i + 1] * (t ** 3 - t ** 4 / 2) +
        slope[i] * h * (t ** 2 / 2 - (2 * t ** 3) / 3 + t ** 4 / 4) -
        slope[i + 1] * h * (t ** 3 / 3 - t ** 4 / 4));
  }
  const last = x.length - 1;
  const beyond = Math.max(0, to - x[last]);
  return area + beyond * y[last] + (slope[last] * beyond * beyond) / 2;
}

function airEnergy({ count, area, volume, exponent, pressure }: AirChamber, at: number): number {
  const squeezed = volume / (volume - area * at);
  const held =
    exponent === 1
      ? pressure * volume * Math.log(squeezed)
      : (pressure * volume * (squeezed ** (exponent - 1) - 1)) / (exponent - 1);
  return count * (held - OUTSIDE * area * at);
}
