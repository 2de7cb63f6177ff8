/** How high the parts that may touch stand above the ground, upright and leaned over on round tyres. */
import { onGround } from '../chassis/pose.ts';
import type { TouchKey } from '../parts/touch-parts.ts';
import type { Stance } from './stance.ts';

/** A part and its height above the ground, mm, negative below it. */
export interface TouchHeight {
  readonly key: TouchKey;
  readonly height: number;
}

/** The lowest of the parts with the bike upright; null where none is measured. */
export function lowestUpright({ machine, pose }: Stance): TouchHeight | null {
  return lowest(machine.touching.map(({ key, at }) => ({ key, height: onGround(pose, at).y })));
}

/**
 * The part nearest to the ground with the bike leaned over by `lean` radians at the travel of this stance, and its
 * height above the ground square to it, mm. Each tyre is a torus: a ring of the wheel's radius less the crown's, as
 * thick as the crown. A level ground touches both at once, so leaned over the bike also pitches where the crowns differ:
 * with the axles D apart, cos lean · D · sin(pitch of the line of the axles to the ground) is the difference of the
 * rings' radii · cos lean + that of the crowns. The wheels point straight ahead. Null where no part is measured, or a
 * crown is not known.
 */
export function lowestLeaned(stance: Stance, lean: number): TouchHeight | null {
  const { machine, pose, frontAxle, rearAxle } = stance;
  const { front, rear } = machine.crowns;
  if (front === null || rear === null) return null;
  const [cos, sin] = [Math.cos(lean), Math.sin(lean)];
  const along = { x: frontAxle.x - rearAxle.x, y: frontAxle.y - rearAxle.y };
  const rearRing = machine.rearRadius - rear;
  const frontRing = machine.frontRadius - front;
  const rise = Math.hypot(along.x, along.y);
  const steep = (frontRing - rearRing + (front - rear) / cos) / rise;
  if (!(Math.abs(steep) <= 1)) return null;
  const turn = Math.asin(steep) - Math.atan2(along.y, along.x);
  const up = { x: Math.sin(turn), y: Math.cos(turn) };
  return lowest(
    machine.touching.map(({ key, at, halfWidth }) => {
      const place = onGround(pose, at);
      const above = (place.x - rearAxle.x) * up.x + (place.y - rearAxle.y) * up.y;
      return { key, height: (above + rearRing) * cos + rear - halfWidth * sin };
    }),
  );
}

function lowest(heights: readonly TouchHeight[]): TouchHeight | null {
  return heights.reduce<TouchHeight | null>(
    (found, each) => (found === null || each.height < found.height ? each : found),
    null,
  );
}
