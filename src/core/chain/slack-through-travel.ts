/** The chain's slack through the travel, with the axle where it is. */
import type { NoLinkage } from '../linkage/no-linkage.ts';
import { lowerRun } from '../drive/lower-run.ts';
import type { ChainLoop } from '../drive/chain-loop.ts';
import { chainSlack, type RunSlack } from '../drive/chain-slack.ts';
import type { NoSlack } from '../drive/run-slack.ts';
import { hangingRun, hangsClear, type HangingRun, type NoHangingRun } from '../drive/hanging-run.ts';
import { lowerRunInFrame, chainAt, setAxlePosition, type ChainMachine } from '../standing/chain-in-frame.ts';
import type { Stance } from '../standing/stance.ts';

/** A chain on its bike: its loop, worn as it is, its links, and the axle's place back in the slot, mm. */
export interface FittedChain {
  readonly loop: ChainLoop;
  readonly links: number;
  readonly axlePosition: number;
}

/** Slack at one place of the travel. */
export interface SlackAt {
  readonly ok: true;
  readonly rearTravel: number;
  /** Chain beyond the taut length, mm; below zero it is too tight by so much. */
  readonly spare: number;
  /** How far the lower run's middle can be pushed up and pulled down, or why it cannot. */
  readonly slack: RunSlack | NoSlack;
  /** Whether the taut upper run lies on the pivot's guide, and the lower run under its own. */
  readonly onGuide: boolean;
  readonly underGuide: boolean;
}

/** Slack with the rear axle risen by `rearTravel` mm. No answer where the arm cannot reach or the sprockets overlap. */
export function slackAt(machine: ChainMachine, chain: FittedChain, rearTravel: number): SlackAt | NoLinkage {
  const { loop, links, axlePosition } = chain;
  const path = chainAt(machine, loop, rearTravel, axlePosition);
  if ('ok' in path) return path;
  const run = lowerRunInFrame(machine, loop, rearTravel, axlePosition);
  if ('ok' in run) return run;
  const spare = (links - path.links) * loop.pitch;
  const { onGuide, underGuide } = path;
  return { ok: true, rearTravel, spare, slack: chainSlack(run, spare), onGuide, underGuide };
}

/**
 * Slack at `count` even places from hanging to bottomed; a place without an answer refuses them all with its reason.
 */
export function slackThroughTravel(
  machine: ChainMachine,
  chain: FittedChain,
  count: number,
): SlackAt[] | NoLinkage {
  const places: SlackAt[] = [];
  for (let i = 0; i < count; i++) {
    const at = slackAt(machine, chain, (machine.rear.wheelTravel * i) / (count - 1));
    if (!at.ok) return at;
    places.push(at);
  }
  return places;
}

/**
 * How the lower run of a standing bike hangs, in the ground frame, with a chain of `links` links and the axle where
 * it is set: for the drawing and for the drop at the middle of the run. No answer without spare chain, nor where the
 * guide under the pivot presses on the hanging run.
 */
export function hangingOn(
  stance: Stance,
  loop: ChainLoop,
  links: number,
): HangingRun | NoHangingRun | NoLinkage {
  const { machine } = stance;
  const path = chainAt(machine, loop, stance.travel.rear, setAxlePosition(machine));
  if ('ok' in path) return path;
  const rear = stance.rearAxle;
  const front = stance.countershaft;
  const { lowerGuideRadius: radius } = machine;
  const run = lowerRun(loop, rear, front, radius === null ? null : { centre: stance.pose.pivot, radius });
  if (run === null) return { ok: false, reason: 'sprocketsOverlap' };
  const spare = (links - path.links) * loop.pitch;
  if (run.bentBy > 0 && spare < 0) return { ok: false, reason: 'tooTight', spare };
  const hanging = hangingRun(run, spare + run.bentBy);
  return hanging.ok && !hangsClear(hanging) ? { ok: false, reason: 'underGuide', spare } : hanging;
}
