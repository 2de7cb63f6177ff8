/** Turns the links of the starting bike with its arm, so that they hang it where it was measured. */
import { mapBolts } from '../../linkage/map-bolts.ts';
import { redrawLinks } from '../../linkage/redraw-links.ts';
import { rotate } from '../../plane/point.ts';
import { degrees, radians } from '../../units/convert.ts';
import { boltsOf } from './bolts.ts';
import { postureOf, settingOf, type Posture } from './hold-bike.ts';
import type { Origin } from './unknowns.ts';

/**
 * The values with every bolt of the links turned about the pivot by as much as the arm hangs lower than on the
 * starting bike: the same links, which press the shock as they did. Null without links, or where they cannot close with
 * the arm as it stands.
 */
export function turnLinks(origin: Origin, values: readonly number[]): readonly number[] | null {
  const { links, places } = origin;
  if (links === null) return null;
  const now = postureOf(origin, values);
  const before = postureOf(
    origin,
    origin.unknowns.map(({ start }) => start),
  );
  const by = hangingOf(now) - hangingOf(before);
  const turned = mapBolts(links, { onFrame: (p) => rotate(p, by), onArm: (p) => p });
  const drawnAngleDeg = degrees(radians(links.drawnAngleDeg) + by);
  const seen = redrawLinks({ ...turned, drawnAngleDeg }, now.armAngle);
  if ('ok' in seen) return null;
  const next = [...values];
  for (const { key, at } of boltsOf(seen)) {
    const [x, y] = [places.get(`${key}X`), places.get(`${key}Y`)];
    if (x === undefined || y === undefined) return null;
    next[x] = at.x;
    next[y] = at.y;
  }
  return next;
}

/** The arm's line below horizontal while it hangs, radians. */
function hangingOf(posture: Posture): number {
  return posture.armAngle + settingOf(posture, 'hanging', 'hanging').arm;
}
