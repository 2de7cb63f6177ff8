/** A plain damped Newton method for the points and constraints of a standing bike, with differences for derivatives. */
import type { Point } from '../../src/core/plane/point.ts';
import { FREE_POINTS, type AnyPoint, type FreePoint, type PoseConstraints } from './pose-constraints.ts';

const UNKNOWNS = 2 * FREE_POINTS.length;
/** Step of the differences, mm: half the digits of a length near 1000. */
const STEP = 1e-5;
/** Largest error left, mm: every equation is scaled to a length. */
const CONVERGED = 1e-9;
const ROUNDS = 50;

interface Equations {
  readonly pose: PoseConstraints;
  /** Index of each free point's x among the unknowns. */
  readonly place: ReadonlyMap<AnyPoint, number>;
}

function errors({ pose, place }: Equations, unknowns: Float64Array, into: Float64Array): void {
  const x = (id: AnyPoint): number => {
    const at = place.get(id);
    return at === undefined ? (pose.given.get(id)?.x ?? NaN) : unknowns[at];
  };
  const y = (id: AnyPoint): number => {
    const at = place.get(id);
    return at === undefined ? (pose.given.get(id)?.y ?? NaN) : unknowns[at + 1];
  };
  pose.constraints.forEach((each, i) => {
    switch (each.kind) {
      case 'distance':
        into[i] = Math.hypot(x(each.a) - x(each.b), y(each.a) - y(each.b)) - each.length;
        return;
      case 'height':
        into[i] = y(each.a) - each.height;
        return;
      case 'onLine': {
        const dx = x(each.to) - x(each.from);
        const dy = y(each.to) - y(each.from);
        const cross = dx * (y(each.a) - y(each.from)) - dy * (x(each.a) - x(each.from));
        into[i] = cross / Math.hypot(dx, dy);
        return;
      }
      case 'square': {
        const dx = x(each.d) - x(each.c);
        const dy = y(each.d) - y(each.c);
        into[i] = ((x(each.b) - x(each.a)) * dx + (y(each.b) - y(each.a)) * dy) / Math.hypot(dx, dy);
        return;
      }
    }
  });
}

function largest(values: Float64Array): number {
  let most = 0;
  for (const value of values) most = Math.max(most, Math.abs(value));
  return most;
}

/** Solves rows·step = right in place, by elimination with the largest pivot. */
function eliminate(rows: Float64Array[], right: Float64Array): void {
  const n = right.length;
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(rows[i][k]) > Math.abs(rows[best][k])) best = i;
    [rows[k], rows[best]] = [rows[best], rows[k]];
    [right[k], right[best]] = [right[best], right[k]];
    for (let i = k + 1; i < n; i++) {
      const factor = rows[i][k] / rows[k][k];
      if (factor === 0) continue;
      for (let j = k; j < n; j++) rows[i][j] -= factor * rows[k][j];
      right[i] -= factor * right[k];
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    for (let j = k + 1; j < n; j++) right[k] -= rows[k][j] * right[j];
    right[k] /= rows[k][k];
  }
}

/** The points that meet the constraints, begun near them; throws when it does not get there. */
export function dampedNewton(
  pose: PoseConstraints,
  near: ReadonlyMap<FreePoint, Point>,
): Map<FreePoint, Point> {
  const equations: Equations = { pose, place: new Map(FREE_POINTS.map((id, i) => [id, 2 * i])) };
  let unknowns = new Float64Array(UNKNOWNS);
  FREE_POINTS.forEach((id, i) => {
    const p = near.get(id);
    unknowns[2 * i] = p?.x ?? NaN;
    unknowns[2 * i + 1] = p?.y ?? NaN;
  });
  const now = new Float64Array(UNKNOWNS);
  const probe = new Float64Array(UNKNOWNS);
  const rows = Array.from({ length: UNKNOWNS }, () => new Float64Array(UNKNOWNS));
  errors(equations, unknowns, now);
  for (let round = 0; round < ROUNDS && largest(now) > CONVERGED; round++) {
    for (let j = 0; j < UNKNOWNS; j++) {
      const kept = unknowns[j];
      unknowns[j] = kept + STEP;
      errors(equations, unknowns, probe);
      unknowns[j] = kept;
      for (let i = 0; i < UNKNOWNS; i++) rows[i][j] = (probe[i] - now[i]) / STEP;
    }
    const step = Float64Array.from(now);
    eliminate(rows, step);
    const before = largest(now);
    for (let damping = 1; damping > 1e-4; damping /= 2) {
      const tried = unknowns.map((value, j) => value - damping * step[j]);
      errors(equations, tried, now);
      if (largest(now) < before) {
        unknowns = tried;
        break;
      }
    }
  }
  if (!(largest(now) <= CONVERGED)) throw new Error(`Newton stopped ${largest(now)} mm away`);
  return new Map(FREE_POINTS.map((id, i) => [id, { x: unknowns[2 * i], y: unknowns[2 * i + 1] }]));
}
