/** From the shock's length to the arm's angle, held to what the links allow. */
import { newtonBetween } from '../numeric/newton-between.ts';
import { shockAt, type Links } from './links.ts';
import type { LinkRange } from './link-range.ts';
import { noLinkage, type NoLinkage } from './no-linkage.ts';
import { turnFromShock } from './rocker-loop.ts';
import { thirdCorner } from '../plane/triangle.ts';

export interface ArmFromShock {
  readonly ok: true;
  /** Radians below the frame's x axis. */
  readonly angle: number;
  readonly how: 'closedForm' | 'bracketed';
  /** Shock length at the angle minus the wanted length, mm. */
  readonly residual: number;
}

/** A closed form that misses the length by more than this has met the wrong crossing or a dead point, mm. */
const CLOSED_FORM_MISS = 1e-10;
/** The bracketed search ends within this, or where no angle lies between two, mm. */
const LENGTH_TOLERANCE = 1e-13;
/** A search that ends further than this from the wanted length has no solution, mm. */
const MOST_MISS = 1e-9;
/** A length outside the allowed range by no more than this is rounding, mm. */
const ROUNDING = 1e-9;

/**
 * Arm angle at which the shock is `length` mm long; the links' range holds one only, and the shock's stroke does not
 * count. Closed form where the loop has one (shock straight, or its far end on the part that carries the rocker),
 * otherwise a search between two angles of the range. Refused where the links cannot make the shock that long or
 * short.
 */
export function angleAtLength(of: Links, range: LinkRange, length: number): ArmFromShock | NoLinkage {
  const longest = range.high.shockLength;
  const shortest = range.low.shockLength;
  if (length > longest + ROUNDING)
    return noLinkage('shockTooLong', { found: length, limit: longest, because: range.high.why });
  if (length < shortest - ROUNDING)
    return noLinkage('shockTooShort', { found: length, limit: shortest, because: range.low.why });
  if (length >= longest)
    return { ok: true, angle: range.high.angle, how: 'closedForm', residual: longest - length };
  if (length <= shortest)
    return { ok: true, angle: range.low.angle, how: 'closedForm', residual: shortest - length };
  const direct = closedForm(of, range, length);
  if (direct !== null) return direct;
  const root = newtonBetween(
    (angle) => {
      const at = shockAt(of, angle);
      return at === null ? null : { value: at.length - length, slope: at.slope };
    },
    range.low.angle,
    range.high.angle,
    LENGTH_TOLERANCE,
  );
  return root.status === 'solved' && Math.abs(root.residual) <= MOST_MISS
    ? { ok: true, angle: root.x, how: 'bracketed', residual: root.residual }
    : noLinkage('armNotFound');
}

function closedForm(of: Links, range: LinkRange, length: number): ArmFromShock | null {
  const middle = (range.low.angle + range.high.angle) / 2;
  let found: number | null;
  if (of.kind === 'direct') {
    const { mount, eye } = of;
    const c = Math.cos(middle);
    const s = Math.sin(middle);
    const left = mount.x * (s * eye.x + c * eye.y) - mount.y * (c * eye.x - s * eye.y) >= 0;
    const size = eye.x * eye.x + eye.y * eye.y;
    const at = thirdCorner(mount.x, mount.y, size, length * length, left ? 1 : -1);
    found = at === null ? null : Math.atan2(eye.x * at.y - eye.y * at.x, eye.x * at.x + eye.y * at.y);
  } else {
    if (range.sides === null) return null;
    const turn = turnFromShock(of.loop, length, range.sides);
    found = turn === null ? null : of.sense * turn;
  }
  if (found === null) return null;
  // The turn is known up to whole turns; the range is narrower than one.
  const angle = found - 2 * Math.PI * Math.round((found - middle) / (2 * Math.PI));
  if (!(angle >= range.low.angle && angle <= range.high.angle)) return null;
  const residual = (shockAt(of, angle)?.length ?? NaN) - length;
  return Math.abs(residual) <= CLOSED_FORM_MISS ? { ok: true, angle, how: 'closedForm', residual } : null;
}
