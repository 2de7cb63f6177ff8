/** How far the lower run can be pushed up and pulled down at its middle: what a mechanic measures as slack. */
import { solveBetween } from '../numeric/solve-between.ts';
import type { Point } from '../plane/point.ts';
import { frontTouch, rearTouch, type LowerRun } from './lower-run.ts';
import { bendAt, MOST_PART, SLACK_STEP, spareForAside, type NoSlack } from './run-slack.ts';

/** Slack at the middle of the run, mm, square to the straight run. */
export interface RunSlack {
  readonly ok: true;
  /**
   * From the straight line between the sprockets up and down until the chain is taut again, bent in two halves, each
   * straight or round the guide. `up` is below zero where the guide holds the chain below that line.
   */
  readonly up: number;
  readonly down: number;
  /** Up and down together: the slack of a workshop manual. */
  readonly total: number;
}

/**
 * The run as it lies with its middle held aside, for drawing: from the rear sprocket to the held middle to the front
 * sprocket, in the run's own frame, mm; null as in spareForAside.
 */
export function bentRun(run: LowerRun, aside: number): readonly [Point, Point, Point] | null {
  const bend = bendAt(run, aside);
  if (bend === null) return null;
  return [rearTouch(run, bend.rearAngle), bend.held, frontTouch(run, bend.frontAngle)];
}

/** How far from rest one way (1 down, −1 up) the middle can go with so much spare chain; null when too far. */
function reach(run: LowerRun, spare: number, way: 1 | -1): number | null | 'notConverged' {
  // Straight halves between fixed ends need twice the square over the length: a first guess that is widened.
  let most = Math.sqrt((run.length * spare) / 2) + run.loop.pitch;
  for (;;) {
    const needed = spareForAside(run, run.rest + way * most);
    if (needed === null || most > MOST_PART * run.length) return null;
    if (needed > spare) break;
    most *= 1.5;
  }
  const found = solveBetween(
    (aside) => (spareForAside(run, run.rest + way * aside) ?? NaN) - spare,
    0,
    most,
    SLACK_STEP,
  );
  return found.status === 'solved' ? found.x : 'notConverged';
}

/**
 * Slack of a lower run with `spare` mm of chain beyond the taut length, the upper run being tight. Exact for a chain
 * that bends freely; see spareForAside. Refused without spare, or with so much that the run could be pushed aside
 * further than half its length.
 */
export function chainSlack(run: LowerRun, spare: number): RunSlack | NoSlack {
  if (!Number.isFinite(spare)) return { ok: false, reason: 'notANumber', spare: 0 };
  if (spare < 0) return { ok: false, reason: 'tooTight', spare };
  const { rest } = run;
  if (spare === 0) return { ok: true, up: 0 - rest, down: rest, total: 0 };
  const up = reach(run, spare, -1);
  const down = reach(run, spare, 1);
  if (up === 'notConverged' || down === 'notConverged') return { ok: false, reason: 'notConverged', spare };
  if (up === null || down === null) return { ok: false, reason: 'tooSlack', spare };
  return { ok: true, up: up - rest, down: down + rest, total: up + down };
}
