/** The neutral zone behind a curve of a line of the drive: its middle at each place of the axis, and its half-width. */
import type { Curve } from '../core/effects/sweep.ts';

export interface NeutralZone {
  /** Half-width, percentage points. */
  readonly band: number;
  /** The middle at a place of the axis, per cent. */
  readonly middle: (x: number) => number;
}

/** The middle with weightless wheels, per cent; also that of the engine-braking line. */
const WEIGHTLESS = 100;

/**
 * The zone about the computed neutral point, straight between the places of its curve and level beyond its ends; about
 * 100 where there is no such curve.
 */
export function neutralZone(band: number, curve: Curve | null): NeutralZone {
  const points = (curve?.x ?? []).flatMap((x, i) => {
    const y = curve?.y[i];
    return typeof y === 'number' ? [{ x, y }] : [];
  });
  return {
    band,
    middle: (x) => {
      const next = points.findIndex((point) => point.x >= x);
      if (next <= 0) return (points.at(next) ?? { y: WEIGHTLESS }).y;
      const [from, to] = [points[next - 1], points[next]];
      return from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x);
    },
  };
}
