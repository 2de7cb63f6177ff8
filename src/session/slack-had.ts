/** The slack that a chain left alone since the baseline has by now, for its panel, its adjuster and the sheet of the day. */
import { chainForAxle } from '../core/chain/chain-for-axle.ts';
import { slackAt } from '../core/chain/slack-through-travel.ts';
import { inSlackSteps } from '../core/chain/slack-to-set.ts';
import { axleSlot, wornLoopOf } from '../core/standing/chain-of.ts';
import { machine } from '../core/standing/machine.ts';
import { isChainAsBefore } from '../document/chain-as-before.ts';
import type { BikeDocument } from '../document/document.ts';
import { sameValue } from '../document/same-document.ts';

/**
 * Slack with the wheel hanging, mm up and down together, in the steps in which it is set: what has come of the slack set at
 * the baseline where the rear was changed since and hands left the chain alone; 0 where it hangs bar tight. Null where it
 * is as it was set, without a chain, and where it is not found.
 */
export function slackHad(present: BikeDocument): number | null {
  const { bike, setup, baseline } = present;
  if (bike.drive.kind !== 'chain' || !isChainAsBefore(present) || sameValue(setup, baseline.setup))
    return null;
  const [before, now] = [baseline.setup, setup].map((asked) => machine(bike, asked));
  if (!before.ok || !now.ok) return null;
  const { axlePosition } = setup;
  const loop = wornLoopOf(bike.drive, setup.frontTeeth, setup.rearTeeth);
  const asked = chainForAxle(before, loop, axleSlot(bike, setup), axlePosition);
  if (!asked.ok) return null;
  const hanging = slackAt(now, { loop, links: asked.exactLinks, axlePosition }, 0);
  if (!hanging.ok) return null;
  const { slack } = hanging;
  return slack.ok ? inSlackSteps(slack.total, 'nearest') : slack.reason === 'tooTight' ? 0 : null;
}
