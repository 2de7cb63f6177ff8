/** Tyres that give under load: their rates, and their radii with no load on them. */
import { refuse } from '../numeric/refusal.ts';
import type { NoPose } from '../chassis/no-pose.ts';
import type { Bike, Wheel } from '../parts/bike.ts';
import { STANDARD_GRAVITY } from '../units/convert.ts';

export interface TyreGive {
  /** Load over sink, N/mm; null for a rigid tyre. */
  readonly rate: number | null;
  /** Outside radius with no load on it, mm. */
  readonly freeRadius: number;
  /** Height of the sidewall, mm. */
  readonly sidewall: number;
}

export interface Tyres {
  readonly ok: true;
  readonly front: TyreGive;
  readonly rear: TyreGive;
}

/**
 * The tyres of a bike by their measured radii, mm; null where both are rigid. A tyre that was measured under load is
 * larger without it, by the load over the rate. No answer when a rate is zero or less.
 */
export function tyresOf(bike: Bike, frontRadius: number, rearRadius: number): Tyres | NoPose | null {
  const { frontWheel, rearWheel } = bike;
  if (frontWheel.tyreRate === null && rearWheel.tyreRate === null) return null;
  if (frontWheel.tyreRate !== null && !(frontWheel.tyreRate > 0))
    return refuse('tyreRateNotAboveZero', { end: 'front', found: frontWheel.tyreRate, limit: 0 });
  if (rearWheel.tyreRate !== null && !(rearWheel.tyreRate > 0))
    return refuse('tyreRateNotAboveZero', { end: 'rear', found: rearWheel.tyreRate, limit: 0 });
  const least = Math.min(frontWheel.tyreMeasuredUnder, rearWheel.tyreMeasuredUnder);
  if (least < 0) return refuse('massNegative', { found: least, limit: 0 });
  return { ok: true, front: giveOf(frontWheel, frontRadius), rear: giveOf(rearWheel, rearRadius) };
}

function giveOf(wheel: Wheel, measured: number): TyreGive {
  const freeRadius = measured + sinkMeasuredWith(wheel);
  return { rate: wheel.tyreRate, freeRadius, sidewall: freeRadius - wheel.rimDiameter / 2 };
}

/** What a tyre's measured radius is short of the free one, mm: the load it was measured under over its rate. */
export function sinkMeasuredWith({ tyreRate, tyreMeasuredUnder }: Wheel): number {
  return tyreRate === null ? 0 : (tyreMeasuredUnder * STANDARD_GRAVITY) / tyreRate;
}

/** Radius of a tyre with no load on it, mm; `rigid` is that of one that does not give. */
export function freeRadius(tyres: Tyres | null, end: 'front' | 'rear', rigid: number): number {
  return tyres === null ? rigid : tyres[end].freeRadius;
}
