/** The chain on the page: which one is on the bike, how worn, how slack, and what the bike makes of it. */
import type { Drive } from '../../core/parts/bike.ts';
import type { ChainLoop } from '../../core/drive/chain-loop.ts';
import {
  chainWear,
  usualWearLimit,
  type ChainWear,
  type MeasuredChain,
  type WearReason,
} from '../../core/drive/chain-wear.ts';
import type { Result } from '../../core/numeric/result.ts';
import { chainForAxle } from '../../core/chain/chain-for-axle.ts';
import {
  axleForChain,
  type AxleMisfit,
  type AxlePlace,
  type AxleSlot,
} from '../../core/standing/axle-in-slot.ts';
import { axleSlot, loopOf, stretchOf, wornLoopOf } from '../../core/standing/chain-of.ts';
import { hangingOn, slackAt, slackThroughTravel } from '../../core/chain/slack-through-travel.ts';
import { tightestPlace } from '../../core/chain/tightest-place.ts';
import { adjusterRange, type AdjusterRange } from '../../core/standing/adjuster-range.ts';
import { adjusterOf } from '../../core/adjusters/all-adjusters.ts';
import { adjusterLabel } from '../../core/adjusters/named-adjusters.ts';
import {
  CLEAR_BY,
  fewestClearFrontTeeth,
  guideClearance,
  lowerGuideClearance,
} from '../../core/chain/guide-clearance.ts';
import { longestClearShock, type ClearShock } from '../../core/chain/clear-shock.ts';
import { guidePush } from '../../core/chain/guide-push.ts';
import { pairObstacle, type PairObstacle } from '../../core/chain/pair-obstacle.ts';
import { inSlackSteps, slackToSet } from '../../core/chain/slack-to-set.ts';
import { stance, type Stance } from '../../core/standing/stance.ts';
import { isChainAsBefore } from '../../document/chain-as-before.ts';
import { setBikeField, setAdjuster, type Edited } from '../../document/edits.ts';
import { sameValue } from '../../document/same-document.ts';
import type { BikeSession } from '../bike-session.svelte.ts';
import type { Standing, Stood } from '../standing.svelte.ts';
import { slackHad } from '../slack-had.ts';
import { axlePlace, keptMm, takeChain } from './take-chain.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** Places through the travel in the curves. */
const PLACES = 41;
/** Chains tried where one does not fit, in steps longer (+) and shorter (−). */
const CHAINS_TRIED: readonly number[] = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5];
/** Places of the axle that nobody can tell apart, mm. */
const SAME_PLACE = 0.05;
/** Slack less than the least by so little is still enough, mm. */
const SLACK_ROUNDING = 0.2;

export class Chain {
  readonly #session: BikeSession;
  readonly #standing: Standing;

  readonly #drive: Drive = $derived.by(() => this.#session.document.bike.drive);
  /** Slack to keep where the chain is tightest, mm. */
  readonly leastSlack: number = $derived(this.#drive.leastSlack);
  /** The chain as measured; without a length it counts as new. */
  readonly measuredLinks: number = $derived(this.#drive.measuredLinks);
  readonly measuredLength: number | null = $derived(this.#drive.measuredLength);
  /** Wear at which its maker calls this chain worn out, per cent; null while nobody has typed it. */
  readonly makersLimit: number | null = $derived(this.#drive.wearLimit);

  /** The bike that the chain is laid on; null while it cannot stand, or has no chain. */
  readonly on: Stood | null = $derived.by(() => {
    const { problem, live } = this.#standing;
    return problem === null && live !== null && live.bike.drive.kind === 'chain' ? live : null;
  });
  /** The chain said to be on the bike, in links, which then places the axle; null where only its slack is known. */
  readonly linksOn: number | null = $derived.by(() => this.#session.document.setup.chainLinks);
  /** Slack set at the middle of the lower run with the wheel hanging, mm up and down together. */
  readonly slackSet: number = $derived.by(() => this.#session.document.setup.chainSlack);
  /** What its adjuster offers, mm. */
  readonly slackRange: AdjusterRange = $derived.by(() =>
    adjusterRange(adjusterOf('chainSlack'), this.#session.document.bike, this.#session.document.setup),
  );
  /** Whether a half link may join an odd number of links. */
  readonly halfLink: boolean = $derived.by(() => this.#session.document.bike.drive.halfLink);
  /** Where the axle stands, mm back from the slot's front; null without a bike. */
  readonly axlePosition: number | null = $derived.by(() => axlePlace(this.#standing));

  readonly limit: number = $derived.by(() => {
    const { setup } = this.#session.document;
    return this.makersLimit ?? usualWearLimit(Math.max(setup.frontTeeth, setup.rearTeeth));
  });
  /** Wear as measured, or why the figures cannot be right; null for a chain not measured. */
  readonly wear: Result<ChainWear, WearReason> | null = $derived.by(() =>
    this.measuredLength === null
      ? null
      : this.wearOf({ links: this.measuredLinks, length: this.measuredLength }),
  );
  /** Longer than new by wear, per cent; a chain that measures short counts as new. */
  readonly stretchPercent: number = $derived(stretchOf(this.#drive));
  /** How much further back wear lets the axle stand than the same chain new would, mm; null without such a chain. */
  readonly wornBack: number | null = $derived.by(() => {
    const { on, freshLoop, slot, linksOn, axlePosition } = this;
    if (on === null || freshLoop === null || slot === null || linksOn === null || axlePosition === null)
      return null;
    if (this.stretchPercent === 0) return null;
    const fresh = axleForChain(on.stance.machine, freshLoop, slot, linksOn);
    return fresh.axlePosition === null ? null : axlePosition - fresh.axlePosition;
  });
  /** The chain over its sprockets, worn as it is. */
  readonly loop: ChainLoop | null = $derived.by(() => {
    const { on } = this;
    if (on === null) return null;
    return wornLoopOf(on.bike.drive, on.setup.frontTeeth, on.setup.rearTeeth);
  });
  readonly #slotAsSet: AxleSlot | null = $derived.by(() =>
    this.on === null ? null : axleSlot(this.on.bike, this.on.setup),
  );
  /** The slot, and the slack that the chain has with the wheel hanging. */
  readonly slot: AxleSlot | null = $derived.by(() => {
    const set = this.#slotAsSet;
    return set === null || !(this.slackNow > 0) ? set : { ...set, slack: this.slackNow };
  });

  /** The chain that fits the axle's place, with the whole ones next to it. */
  readonly asked = $derived.by(() => {
    const { on, loop, slot, axlePosition } = this;
    if (on === null || loop === null || slot === null || axlePosition === null) return null;
    return chainForAxle(on.stance.machine, loop, slot, axlePosition);
  });
  /** The whole chains about that length, each with where it puts the axle: the next shorter and longer, and that on the bike. */
  readonly near: readonly (AxlePlace | AxleMisfit)[] = $derived.by(() => {
    const { on, loop, slot, asked, linksOn } = this;
    if (on === null || loop === null || slot === null || asked === null || !asked.ok) return [];
    const step = this.halfLink ? 1 : 2;
    const choices = asked.choices.map((choice) => choice.links);
    // An axle that stands where a whole chain puts it needs that one; then those on both sides are of use.
    const here = asked.choices.find((choice) => choice.ok && this.standsAt(choice.axlePosition));
    if (here !== undefined) choices.splice(0, Infinity, here.links - step, here.links, here.links + step);
    if (linksOn !== null && !choices.includes(linksOn)) choices.push(linksOn);
    return choices.sort((a, b) => a - b).map((each) => axleForChain(on.stance.machine, loop, slot, each));
  });
  /**
   * Length of the chain whose slack is shown, in links: of the one on the bike, else of one that has the slack
   * set on the stand with the axle where it is, whole or not.
   */
  readonly links: number | null = $derived.by(() => {
    if (this.linksOn !== null) return this.linksOn;
    if (this.linksBefore !== null) return this.linksBefore;
    const { asked } = this;
    return asked === null || !asked.ok ? null : asked.exactLinks;
  });
  /** The same at the baseline, where the chain has been left alone since; null where hands were on it, or nothing was changed. */
  readonly linksBefore: number | null = $derived.by(() => {
    const { loop, axlePosition } = this;
    const slot = this.#slotAsSet;
    const { document } = this.#session;
    const { baseline } = this.#standing;
    if (loop === null || slot === null || axlePosition === null || baseline === null) return null;
    if (!isChainAsBefore(document) || sameValue(document.setup, document.baseline.setup)) return null;
    const asked = chainForAxle(baseline.stance.machine, loop, slot, axlePosition);
    return asked.ok ? asked.exactLinks : null;
  });
  /** Slack with the wheel hanging as the bike is set, whatever was set on the stand before. */
  readonly slackHanging = $derived.by(() => {
    const chain = this.#chain();
    return chain === null ? null : slackAt(chain.stance.machine, chain, 0);
  });
  /**
   * Slack that the chain has with the wheel hanging, mm: as it was set, or what has come of that where the rear was
   * changed since and the chain left alone; 0 where it hangs bar tight.
   */
  readonly slackNow: number = $derived.by(() => slackHad(this.#session.document) ?? this.slackSet);

  /** Slack through the travel, with the axle where it is. */
  readonly slack = $derived.by(() => {
    const chain = this.#chain();
    return chain === null ? null : slackThroughTravel(chain.stance.machine, chain, PLACES);
  });
  /** The tightest place and the slack there. */
  readonly tightest = $derived.by(() => {
    const chain = this.#chain();
    if (chain === null) return null;
    const place = tightestPlace(chain.stance.machine, chain.loop, chain.axlePosition);
    return place.ok ? slackAt(chain.stance.machine, chain, place.rearTravel) : place;
  });
  /** Whether the tightest place keeps the least slack; true without a bike that stands. */
  readonly slackEnough: boolean = $derived.by(() => {
    const { tightest } = this;
    if (tightest === null || !tightest.ok) return true;
    return tightest.slack.ok && tightest.slack.total > this.leastSlack - SLACK_ROUNDING;
  });
  /** Slack as the bike is now, in its ride state. */
  readonly now = $derived.by(() => {
    const chain = this.#chain();
    return chain === null ? null : slackAt(chain.stance.machine, chain, chain.stance.travel.rear);
  });
  /** The lower run as it hangs now. */
  readonly hanging = $derived.by(() => {
    const chain = this.#chain();
    return chain === null ? null : hangingOn(chain.stance, chain.loop, chain.links);
  });
  /** The slack to set with the wheel hanging, so that the tightest place keeps the least. */
  readonly toSet = $derived.by(() => {
    const chain = this.#chain();
    if (chain === null || this.slot === null) return null;
    const { links, loop, stance: standing } = chain;
    const { leastSlack, slot } = this;
    return slackToSet(standing.machine, loop, { links, leastSlack, measuredAt: 0, slot: slot.slot });
  });

  /** That slack in the steps in which it is set, mm; null where there is none. */
  readonly slackToSet: number | null = $derived.by(() => {
    const { toSet } = this;
    return toSet !== null && toSet.ok ? inSlackSteps(toSet.slack.total, 'up') : null;
  });
  /** Whether the axle stands already where that slack puts it. */
  readonly isSet: boolean = $derived.by(() => {
    const { toSet } = this;
    return toSet !== null && toSet.ok && this.standsAt(toSet.axlePosition);
  });
  /** The chain nearest in length with which that slack puts the axle into its slot; null when this one does, or none. */
  readonly betterLinks: number | null = $derived.by(() => {
    const { toSet, loop, on, slot, leastSlack } = this;
    if (toSet === null || on === null || loop === null || slot === null || this.links === null) return null;
    if (this.linksOn === null || (toSet.ok && toSet.inSlot)) return null;
    const step = slot.rule.halfLink ? 1 : 2;
    const first = step * Math.round(this.links / step);
    for (const away of CHAINS_TRIED) {
      const links = first + away * step;
      const wanted = { links, leastSlack, measuredAt: 0, slot: slot.slot };
      const tried = slackToSet(on.stance.machine, loop, wanted);
      if (tried.ok && tried.inSlot) return links;
    }
    return null;
  });

  /** The chain as new: what the readings and the side view go by. */
  readonly freshLoop: ChainLoop | null = $derived.by(() => {
    const { on } = this;
    if (on === null) return null;
    return loopOf(on.bike.drive, on.setup.frontTeeth, on.setup.rearTeeth);
  });
  /** Why these sprockets cannot be fitted, with the nearest that can; null when they can. */
  readonly obstacle: PairObstacle | null = $derived.by(() => {
    const { on } = this;
    if (on === null) return null;
    const { chainPitch, leastFrontTeeth } = on.bike.drive;
    return pairObstacle(on.stance.machine, chainPitch, leastFrontTeeth);
  });
  /** The gap to the pivot's guide through the travel. */
  readonly clearance = $derived.by(() => {
    const { on, freshLoop: loop } = this;
    return on === null || loop === null ? null : guideClearance(on.stance.machine, loop, PLACES);
  });
  /** The same of the lower run and the guide under the pivot; null without one. */
  readonly lowerClearance = $derived.by(() => {
    const { on, freshLoop: loop } = this;
    if (on === null || loop === null || on.stance.machine.lowerGuideRadius === null) return null;
    return lowerGuideClearance(on.stance.machine, loop, PLACES);
  });
  /** The bike where the gap is least, with the push on the guide there; null where it cannot stand so. */
  readonly tightestOnGuide = $derived.by(() => {
    const { on, freshLoop: loop, clearance } = this;
    if (on === null || loop === null || clearance === null || !clearance.ok) return null;
    const there = stance(on.stance.machine, { front: on.stance.travel.front, rear: clearance.leastAt });
    return there.ok ? { stance: there, push: guidePush(there, loop) } : null;
  });
  /** The front sprocket of fewest teeth within the adjuster's range that keeps clear of the guide; null when none does. */
  readonly fewestClear = $derived.by(() => {
    const { on, freshLoop: loop } = this;
    if (on === null || loop === null) return null;
    return fewestClearFrontTeeth(
      on.stance.machine,
      loop,
      adjusterRange(adjusterOf('frontTeeth'), on.bike, on.setup),
      CLEAR_BY,
    );
  });
  /** The longest shock that keeps clear of the guide; null where every one does, or none. */
  readonly clearShock: ClearShock | null = $derived.by(() => {
    const { clearance } = this;
    if (clearance === null || !clearance.ok) return null;
    const { bike, setup } = this.#session.history.present;
    return longestClearShock(bike, setup);
  });

  constructor({ session, standing }: Pick<Workbench, 'session' | 'standing'>) {
    this.#session = session;
    this.#standing = standing;
  }

  /** Wear of a chain measured so, on the bike's own pitch. */
  wearOf(measured: MeasuredChain): Result<ChainWear, WearReason> {
    return chainWear(measured, this.#session.document.bike.drive.chainPitch, this.limit);
  }

  /** Whether the axle stands at a place, as nearly as anyone can see in its slot. */
  standsAt(place: number): boolean {
    return this.axlePosition !== null && Math.abs(place - this.axlePosition) < SAME_PLACE;
  }

  /** Puts the axle at a place where the chain keeps the slack that it has, as one entry of the history; no chain places it then. */
  setAxle(axlePosition: number, label: string): void {
    const slack = this.slot?.slack ?? this.slackSet;
    this.#session.commit((from): Edited => {
      const set = setAdjuster(from, 'chainSlack', slack);
      return set.ok ? setAdjuster(set.value, 'axlePosition', keptMm(axlePosition)) : set;
    }, label);
  }

  /** Sets how slack the chain is left with the wheel hanging. */
  setSlackTo(slack: number): void {
    this.#session.commit(
      (from) => setAdjuster(from, 'chainSlack', slack),
      adjusterLabel('chainSlack', this.#drive.kind),
    );
  }

  /** Sets the shock's length, as one entry of the history. */
  setShock(shockLength: number): void {
    this.#session.commit(
      (from) => setAdjuster(from, 'shockLength', shockLength),
      adjusterLabel('shockLength', this.#drive.kind),
    );
  }

  /** Fits a sprocket, as one entry of the history. */
  setTeeth(end: 'front' | 'rear', teeth: number): void {
    const adjuster = end === 'front' ? 'frontTeeth' : 'rearTeeth';
    this.#session.commit(
      (from) => setAdjuster(from, adjuster, teeth),
      `${adjusterLabel(adjuster, this.#drive.kind)}, ${teeth} teeth`,
    );
  }

  /**
   * Sets the slack that keeps the least at the tightest place, as one entry of the history. The chain on the bike then
   * takes the axle along; without one the axle itself is put there.
   */
  setSlack(label: string): void {
    const { toSet, slackToSet } = this;
    if (toSet === null || !toSet.ok || slackToSet === null) return;
    const { axlePosition } = toSet;
    const follows = this.linksOn !== null;
    this.#session.commit((from): Edited => {
      const set = setAdjuster(from, 'chainSlack', slackToSet);
      return follows || !set.ok ? set : setAdjuster(set.value, 'axlePosition', keptMm(axlePosition));
    }, label);
  }

  /** Puts a chain of so many links on the bike, which then places the axle; null leaves the axle where it stands. */
  takeChain(links: number | null): void {
    const slack = this.slot?.slack ?? this.slackSet;
    takeChain({ session: this.#session, standing: this.#standing }, links, slack);
  }

  /** Allows a half link, or does not. */
  allowHalfLink(allowed: boolean): void {
    this.#session.commit((from) => setBikeField(from, 'drive.halfLink', allowed), 'Half link');
  }

  /** Over how many links the chain was measured, and how long they are; null counts it as new. */
  setMeasured(links: number, length: number | null): void {
    const label = length === null ? 'Chain counted as new' : 'Chain measured';
    this.#session.commit((from): Edited => {
      const counted = setBikeField(from, 'drive.measuredLinks', links);
      return counted.ok ? setBikeField(counted.value, 'drive.measuredLength', length) : counted;
    }, label);
  }

  /** Sets the wear at which its maker calls the chain worn out, per cent. */
  setLimit(percent: number): void {
    this.#session.commit((from) => setBikeField(from, 'drive.wearLimit', percent), 'Chain’s wear limit');
  }

  /** The slack to keep where the chain is tightest, mm. */
  setLeastSlack(slack: number): void {
    this.#session.commit((from) => setBikeField(from, 'drive.leastSlack', slack), 'Least chain slack');
  }

  #chain(): {
    readonly stance: Stance;
    readonly loop: ChainLoop;
    readonly links: number;
    readonly axlePosition: number;
  } | null {
    const { on, loop, links, axlePosition } = this;
    if (on === null || loop === null || links === null || axlePosition === null) return null;
    return { stance: on.stance, loop, links, axlePosition };
  }
}
