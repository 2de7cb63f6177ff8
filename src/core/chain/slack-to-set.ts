/** The slack to set on the paddock stand, so that the tightest place of the travel keeps the least slack allowed. */
import type { Refusal } from '../numeric/refusal.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import type { ChainLoop } from '../drive/chain-loop.ts';
import { chainSlack, type RunSlack } from '../drive/chain-slack.ts';
import { spareForSlack, type NoSlack } from '../drive/run-slack.ts';
import { solveBetween } from '../numeric/solve-between.ts';
import { slackAt } from './slack-through-travel.ts';
import { lowerRunInFrame, setAxlePosition, type ChainMachine } from '../standing/chain-in-frame.ts';
import { tightestPlace, type TightestPlace } from './tightest-place.ts';

export interface SlackWanted {
  readonly links: number;
  /** Least slack at the tightest place, up and down together, mm. */
  readonly leastSlack: number;
  /**
   * Rear travel at which the mechanic measures, mm: 0 hanging on a paddock stand, or that of the bike on its wheels.
   */
  readonly measuredAt: number;
  readonly slot: number;
}

export interface SlackToSet {
  readonly ok: true;
  readonly tightest: TightestPlace;
  /** Axle back from the slot's front that gives this, mm, and whether the slot reaches there. */
  readonly axlePosition: number;
  readonly inSlot: boolean;
  /** Slack to measure at the middle of the run, at the travel where the mechanic measures. */
  readonly slack: RunSlack;
  /** Slack that remains at the tightest place, found again from the axle's place. */
  readonly leastSlack: number;
}

export type NoSlackToSet = Refusal<NoLinkage['reason'] | NoSlack['reason'] | 'chainDoesNotReach'>;

/** The axle place is found to this, mm, and two rounds count as the same within this, mm. */
const PLACE_STEP = 1e-10;
const AGREED = 1e-9;
const MOST_ROUNDS = 30;
/** Slack is set to this, mm: nobody sets it finer. */
const SLACK_STEP = 0.1;
/** Slack so little above a whole step is that step, in steps: rounding of its computation. */
const SAME_STEP = 1e-6;
/** How far outside the slot the axle is followed, in parts of the swingarm. */
const FOLLOWED = 0.3;

/**
 * The slack to measure on the paddock stand with a chain of `links` links. At the tightest place of the travel the
 * slack is to be `leastSlack`; that fixes the spare chain there, the spare chain fixes the axle's place, and the
 * axle's place fixes the slack where it is measured. Slack depends a little on the axle's place, so it takes rounds
 * until they agree. No answer when the chain cannot reach or cannot have this slack.
 */
export function slackToSet(
  machine: ChainMachine,
  loop: ChainLoop,
  wanted: SlackWanted,
): SlackToSet | NoSlackToSet {
  const { links, leastSlack, measuredAt, slot } = wanted;
  let axlePosition = Math.min(slot, Math.max(0, setAxlePosition(machine)));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const tightest = tightestPlace(machine, loop, axlePosition);
    if (!tightest.ok) return { ok: false, reason: tightest.reason };
    const run = lowerRunInFrame(machine, loop, tightest.rearTravel, axlePosition);
    if ('ok' in run) return { ok: false, reason: run.reason };
    const spare = spareForSlack(run, leastSlack);
    if (!spare.ok) return { ok: false, reason: spare.reason };
    const next = axleWithSpare(machine, loop, links, spare.spare, slot);
    if (next === null) return { ok: false, reason: 'chainDoesNotReach' };
    const agreed = Math.abs(next - axlePosition) <= AGREED;
    axlePosition = next;
    if (!agreed) continue;
    const measured = slackAt(machine, { loop, links, axlePosition }, measuredAt);
    if (!measured.ok) return { ok: false, reason: measured.reason };
    if (!measured.slack.ok) return { ok: false, reason: measured.slack.reason };
    const left = chainSlack(run, (links - tightest.links) * loop.pitch);
    return {
      ok: true,
      tightest,
      axlePosition,
      inSlot: axlePosition >= 0 && axlePosition <= slot,
      slack: measured.slack,
      leastSlack: left.ok ? left.total : 0,
    };
  }
  return { ok: false, reason: 'notConverged' };
}

/** Slack in the steps in which it is set, mm: the nearest, or one that is not less. A slack of 34.93 mm at least is set as 35.0 mm. */
export function inSlackSteps(slack: number, way: 'nearest' | 'up'): number {
  const steps = slack / SLACK_STEP;
  const whole = way === 'up' ? Math.ceil(steps - SAME_STEP) : Math.round(steps);
  return Number((whole * SLACK_STEP).toFixed(6));
}

/** Axle place at which the chain has `spare` mm to spare at its tightest; null when it reaches none near the slot. */
function axleWithSpare(
  machine: ChainMachine,
  loop: ChainLoop,
  links: number,
  spare: number,
  slot: number,
): number | null {
  const beyond = FOLLOWED * machine.rear.slotFrontArm;
  const found = solveBetween(
    (axlePosition) => {
      const tightest = tightestPlace(machine, loop, axlePosition);
      return tightest.ok ? tightest.links + spare / loop.pitch - links : NaN;
    },
    -beyond,
    slot + beyond,
    PLACE_STEP,
  );
  return found.status === 'solved' ? found.x : null;
}
