/** Air shut in by a leg or a shock: its force over the stroke, and what makes it impossible. */
import { refuse } from '../numeric/refusal.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import type { FilledAir } from '../standing/spring-set.ts';

/** The air outside, N/mm²: the standard atmosphere. A gauge shows what is above it. */
const OUTSIDE = 0.101325;

/** Exponents beyond these no air has. */
const LEAST_EXPONENT = 1;
const MOST_EXPONENT = 2;

/** So small a part of the volume at full extension counts as none left: a pump could not tell it from oil. */
const NONE_LEFT = 1e-6;

/**
 * One chamber of air, `count` of them alike. With an area above zero it pushes the end out and shrinks with the stroke;
 * a balance chamber has an area below zero, grows with the stroke and pulls the end in.
 */
export interface AirChamber {
  readonly kind: 'air';
  readonly count: number;
  /** mm². */
  readonly area: number;
  /** At full extension, mm³. */
  readonly volume: number;
  readonly exponent: number;
  /** At full extension, N/mm², with that of the air outside. */
  readonly pressure: number;
}

/**
 * Force at a stroke, N, positive pushing the end out: A · (p0 · (V0 / V)ⁿ − outside), with V = V0 − A · stroke.
 * Polytropic change of an ideal gas: textbook thermodynamics. The volume must not be used up at that stroke.
 */
export function airForce({ count, area, volume, exponent, pressure }: AirChamber, at: number): number {
  return count * area * (pressure * (volume / (volume - area * at)) ** exponent - OUTSIDE);
}

/** Rate at a stroke, N/mm: the slope of `airForce`. */
export function airRate({ count, area, volume, exponent, pressure }: AirChamber, at: number): number {
  const left = volume - area * at;
  return (count * area * area * pressure * exponent * (volume / left) ** exponent) / left;
}

/**
 * The pressure that a gauge has to show at full extension, N/mm², so that the chambers push with `force` N at a stroke:
 * `airForce` solved for the pressure. Null where even no air at all would push more.
 */
export function pressureFor(
  { count, area, volume, exponent }: AirChamber,
  force: number,
  at: number,
): number | null {
  const there = force / (count * area) + OUTSIDE;
  return there > 0 ? there * ((volume - area * at) / volume) ** exponent - OUTSIDE : null;
}

/**
 * The chambers of `count` legs or shocks alike over a whole `stroke` mm, which end at `reach` mm where coils close
 * before. Refused: sizes that are none, a pressure below no air at all, and air that is used up within reach, with the
 * stroke at which the end locks.
 */
export function airChambers(
  air: FilledAir,
  count: number,
  stroke: number,
  reach: number,
  end: 'front' | 'rear',
): { readonly ok: true; readonly chambers: readonly AirChamber[] } | NoEquilibrium {
  const { bore, slidingTube, exponent, gap, steelVolume, balance } = air;
  const least = Math.min(bore, slidingTube);
  if (!(least > 0)) return refuse('airSizeImpossible', { end, found: least, limit: 0 });
  if (!(exponent >= LEAST_EXPONENT && exponent <= MOST_EXPONENT))
    return refuse('airExponentImpossible', {
      end,
      found: exponent,
      limit: exponent < LEAST_EXPONENT ? LEAST_EXPONENT : MOST_EXPONENT,
    });
  const area = circle(slidingTube);
  const volume = circle(bore) * gap - steelVolume + area * stroke;
  if (!(volume - area * reach > NONE_LEFT * volume))
    return refuse('noAirLeft', { end, found: Math.max(0, volume / area), limit: stroke });
  const pressure = air.pressure + OUTSIDE;
  if (!(pressure > 0)) return refuse('airPressureImpossible', { end, found: air.pressure, limit: -OUTSIDE });
  const main: AirChamber = { kind: 'air', count, area, volume, exponent, pressure };
  if (balance === null) return { ok: true, chambers: [main] };
  const ring = circle(balance.bore) - circle(balance.rod);
  const smallest = Math.min(ring, balance.volume);
  if (!(smallest > 0)) return refuse('balanceChamberImpossible', { end, found: smallest, limit: 0 });
  const opposing = balance.pressure + OUTSIDE;
  if (!(opposing > 0))
    return refuse('airPressureImpossible', { end, found: balance.pressure, limit: -OUTSIDE });
  const counter: AirChamber = {
    kind: 'air',
    count,
    area: -ring,
    volume: balance.volume,
    exponent,
    pressure: opposing,
  };
  return { ok: true, chambers: [main, counter] };
}

/** Area of a circle of a diameter, mm². */
function circle(diameter: number): number {
  return (Math.PI / 4) * diameter * diameter;
}
