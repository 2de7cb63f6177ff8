/** How much chain a lower run takes up with its middle held aside, and with a slack. */
import type { Refusal } from '../numeric/refusal.ts';
import { solveBetween } from '../numeric/solve-between.ts';
import type { Point } from '../plane/point.ts';
import { runMiddle, spareOf, type LowerRun } from './lower-run.ts';
import { tautRun } from './taut-run.ts';

/** `tooTight`: the chain is too short; `tooSlack`: it could be pushed further than half the run is long. */
export type NoSlackReason = 'tooTight' | 'tooSlack' | 'notConverged' | 'notANumber';

/** Why a run has no slack; `spare` is the chain beyond the taut length, mm. */
export type NoSlack = Refusal<NoSlackReason, { readonly spare: number }>;

/** Slack is found to this, mm. */
export const SLACK_STEP = 1e-10;
/** Most slack either way, in parts of the run's length. */
export const MOST_PART = 0.5;

/** A run bent at its middle: where the middle is held, and the angle and length of both straight pieces. */
interface Bend {
  readonly held: Point;
  readonly rearAngle: number;
  readonly frontAngle: number;
  readonly length: number;
}

/** The run with its middle held `aside` mm below its taut line (negative: above); null within a pitch circle. */
export function bendAt(run: LowerRun, aside: number): Bend | null {
  const { loop, rear, front, angle } = run;
  const middle = runMiddle(run);
  const x = middle.x + aside * Math.sin(angle);
  const y = middle.y - aside * Math.cos(angle);
  const behind = Math.hypot(x - rear.x, y - rear.y);
  const ahead = Math.hypot(front.x - x, front.y - y);
  if (!(behind > loop.rearRadius && ahead > loop.frontRadius)) return null;
  const rearPiece = Math.sqrt(behind * behind - loop.rearRadius * loop.rearRadius);
  const frontPiece = Math.sqrt(ahead * ahead - loop.frontRadius * loop.frontRadius);
  // No place of a run rises by more than its middle does, so a run that clears its guide by more goes straight.
  if (run.gap < 0 || -aside > run.gap) return roundGuide(run, { x, y });
  return {
    held: { x, y },
    rearAngle: Math.atan2(y - rear.y, x - rear.x) + Math.atan2(loop.rearRadius, rearPiece),
    frontAngle: Math.atan2(front.y - y, front.x - x) - Math.atan2(loop.frontRadius, frontPiece),
    length: rearPiece + frontPiece,
  };
}

/** The run with its middle held so that it may meet the guide; null where the middle lies within the guide or a sprocket. */
function roundGuide({ loop, rear, front, guide }: LowerRun, held: Point): Bend | null {
  const at = { centre: held, radius: 0 };
  const behind = tautRun({ rear: { centre: rear, radius: loop.rearRadius }, front: at }, guide, -1);
  const ahead = tautRun({ rear: at, front: { centre: front, radius: loop.frontRadius } }, guide, -1);
  if (behind === null || ahead === null) return null;
  return {
    held,
    rearAngle: behind.rearAngle,
    frontAngle: ahead.frontAngle,
    length: behind.length + ahead.length,
  };
}

/**
 * Chain beyond the taut length, mm, that is used up when the middle of the run is held `aside` mm below its taut
 * line (negative: above): two straight pieces, each a tangent of its sprocket, or round the guide; wraps counted in
 * teeth. null when the middle would lie within a pitch circle or the guide.
 */
export function spareForAside(run: LowerRun, aside: number): number | null {
  const bend = bendAt(run, aside);
  return bend === null ? null : spareOf(run, bend.length, bend.rearAngle, bend.frontAngle) - run.bentBy;
}

/**
 * Chain beyond the taut length, mm, at which a run has `total` mm of slack up and down together, or why it cannot. Up
 * and down use up the same chain: one equation for how much of the slack lies below the taut line.
 */
export function spareForSlack(run: LowerRun, total: number): { ok: true; spare: number } | NoSlack {
  if (!Number.isFinite(total)) return { ok: false, reason: 'notANumber', spare: 0 };
  if (total <= LEAST_SLACK) return { ok: true, spare: 0 };
  if (total > MOST_PART * run.length) return { ok: false, reason: 'tooSlack', spare: 0 };
  // Nearly as on a string: half up and half down, and their difference grows like this.
  const rise = (4 * total) / run.length;
  let down = total / 2 + run.rest;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const below = spareForAside(run, down);
    const above = spareForAside(run, down - total);
    if (below === null || above === null) break;
    const step = (above - below) / rise;
    // When both are this close, the error of their mean is the square of the error of the place.
    if (Math.abs(step) <= ALIKE) return { ok: true, spare: (below + above) / 2 };
    down += step;
  }
  const unlike = (way: number): number =>
    (spareForAside(run, way) ?? NaN) - (spareForAside(run, way - total) ?? NaN);
  const found = solveBetween(unlike, run.rest, run.rest + total, SLACK_STEP);
  if (found.status === 'solved') return { ok: true, spare: spareForAside(run, found.x) ?? NaN };
  return { ok: false, reason: found.status === 'noValue' ? 'tooSlack' : 'notConverged', spare: 0 };
}

/**
 * Steps to the place at which slack up and slack down use the same chain, each leaving some hundredths of the way; if
 * they do not end, as with very large slack, the root is searched between two places.
 */
const MOST_ROUNDS = 12;
/** Slack so small that it uses less chain than its length is rounded by, mm. */
const LEAST_SLACK = 1e-5;
/** Places this close count as the same, mm. */
const ALIKE = 1e-6;
