/** What the Chain panel says: chains and axle places, slack, wear and the clearance to the chain slider, in a mechanic's words. */
import type { NoSlack } from '../../core/drive/run-slack.ts';
import type { NoHangingRun } from '../../core/drive/hanging-run.ts';
import type { ChainWear, MeasuredChain, WearReason } from '../../core/drive/chain-wear.ts';
import { CHAIN } from '../../core/parts/drive-noun.ts';
import type { Result } from '../../core/numeric/result.ts';
import { noLinkageWords } from '../trouble/no-linkage-words.ts';
import type { AxleMisfit, AxlePlace } from '../../core/standing/axle-in-slot.ts';
import { axleMisfitWords } from '../trouble/axle-misfit-words.ts';
import type { SlackAt } from '../../core/chain/slack-through-travel.ts';
import type { GuideClearance, TravelStretch } from '../../core/chain/guide-clearance.ts';
import type { NoSlackToSet, SlackToSet } from '../../core/chain/slack-to-set.ts';
import { roundsToNothing, writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { slackHadWords } from '../change/slack-had-words.ts';

const length = (mm: number, style: NumberStyle): string => writeNumber(mm, 'length', style).text;

/** Links to a hundredth, "111.38". */
export function exactLinksText(links: number, style: NumberStyle): string {
  return links.toFixed(2).replace('.', style.decimal);
}

/** Where a chain puts the axle, and how far that is from where it stands. */
export function placeWords(place: AxlePlace, axlePosition: number, style: NumberStyle): string {
  const moved = place.axlePosition - axlePosition;
  const at = `axle at ${length(place.axlePosition, style)}`;
  if (roundsToNothing(moved, 'length', style)) return `${at}, where it stands`;
  return `${at}, ${length(Math.abs(moved), style)} ${moved > 0 ? 'back' : 'forward'}`;
}

/** Why a chain does not put the axle into its slot, beside its links; other reasons in full. */
export function misfitWords(misfit: AxleMisfit, style: NumberStyle): string {
  const { reason, axlePosition, slot } = misfit;
  if (reason === 'chainTooShort')
    return axlePosition === null
      ? 'too short: it does not reach the slot'
      : `too short: axle ${length(-axlePosition, style)} ahead of its slot`;
  if (reason === 'chainTooLong')
    return axlePosition === null
      ? 'too long: it does not reach the slot'
      : `too long: axle ${length(axlePosition - slot, style)} behind its slot`;
  return axleMisfitWords(misfit, CHAIN, style);
}

/** How slack the chain is at one place. */
export function slackWords({ slack, spare }: SlackAt, style: NumberStyle): string {
  if (slack.ok) return `${length(slack.total, style)} up and down`;
  return noSlackWords(slack, spare, style);
}

/** Of a chain that was left alone while the rear was changed: its slack with the wheel hanging, beside what was set. */
export function asBeforeWords(hanging: SlackAt, slackSet: number, style: NumberStyle): string {
  const set = length(slackSet, style);
  const now = hanging.slack.ok ? length(hanging.slack.total, style) : slackWords(hanging, style);
  return now === set
    ? `The chain is as at the baseline: ${set} of slack with the wheel hanging.`
    : `Nobody has set the chain since the baseline. Its slack with the wheel hanging was ${set} then, now it is ${now}. Do not set it back to ${set}.`;
}

/** Where in the travel a chain is tightest, and how slack it is there. */
export function tightestWords(tightest: SlackAt, style: NumberStyle): string {
  return `As the rear moves up and down, the chain is tightest ${length(tightest.rearTravel, style)} from hanging: ${slackWords(tightest, style)}.`;
}

/** Beside the field of a chain that nobody has set since the baseline: what it has now; null where that is what was set. */
export function slackNowNote(now: number, set: number, style: NumberStyle): string | null {
  const has = length(now, style);
  if (has === length(set, style)) return null;
  return `Set at the baseline. As the bike is now, the chain has ${has} with the wheel hanging: see Chain before you set it.`;
}

/** On paper, where a chain that nobody has set since the baseline has another slack by now: what it has; null where it has not. */
export function slackNowPrinted(now: number, set: number, style: NumberStyle): string | null {
  return length(now, style) === length(set, style) ? null : slackHadWords(now, style);
}

/** Why a run has no slack, or no shape. */
export function noSlackWords(no: NoSlack | NoHangingRun, spare: number, style: NumberStyle): string {
  switch (no.reason) {
    case 'tooTight':
      if (roundsToNothing(spare, 'length', style)) return 'bar tight, with no slack left';
      return `too tight: the chain is ${length(-spare, style)} too short`;
    case 'tooSlack':
      return `too slack: the chain is ${length(spare, style)} too long`;
    case 'underGuide':
      return 'it lies under the chain slider at the pivot, so there is no one curve to draw; the slack figures count the slider';
    case 'notConverged':
    case 'notANumber':
      return 'not found with these figures';
  }
}

/** What to set on the stand, mm, so that the least is kept, and where the axle then stands. */
export function toSetWords(set: SlackToSet, slackToSet: number, slot: number, style: NumberStyle): string {
  const stands = set.inSlot
    ? `The axle then stands ${length(set.axlePosition, style)} back in its slot.`
    : set.axlePosition < 0
      ? `But the axle would stand ${length(-set.axlePosition, style)} ahead of its slot.`
      : `But the axle would stand ${length(set.axlePosition - slot, style)} behind its slot.`;
  return `To keep ${length(set.leastSlack, style)} at its tightest place, set ${length(slackToSet, style)} with the wheel hanging. ${stands}`;
}

/** Why there is no slack to set. */
export function noSlackToSetWords({ reason }: NoSlackToSet, style: NumberStyle): string {
  switch (reason) {
    case 'chainDoesNotReach':
      return 'With that slack this chain does not reach the slot.';
    case 'tooSlack':
      return 'The lower run cannot have this much slack. Keep less.';
    case 'tooTight':
      return 'This chain is too short to be slack anywhere.';
    case 'notANumber':
    case 'notConverged':
      return 'No slack to set was found with these figures.';
    default:
      return noLinkageWords({ ok: false, reason }, CHAIN, style);
  }
}

/** Why figures of wear cannot be right, and which would be. */
export function wearRefusal(
  reason: WearReason,
  measured: MeasuredChain,
  pitch: number,
  style: NumberStyle,
): string {
  switch (reason) {
    case 'linksImpossible':
      return 'Measure over one link or more, counted whole.';
    case 'limitImpossible':
      return 'A limit is more than 0 and less than 12 %.';
    case 'lengthImpossible': {
      const fresh = measured.links * pitch;
      const counted = Math.round(measured.length / pitch);
      const perhaps =
        counted > 0 && counted !== measured.links
          ? ` ${length(measured.length, style)} would be about ${counted} links.`
          : '';
      return `${measured.links} links are ${length(fresh, style)} long when new, so this cannot be their length.${perhaps}`;
    }
  }
}

/**
 * How worn the chain is against the limit of its maker, and what follows. Without that limit there is the measure alone and
 * no verdict.
 */
export function wearWords(wear: ChainWear, limitIsMakers: boolean, style: NumberStyle): string {
  const percent = (value: number): string => writeNumber(value, 'percent', style).text;
  if (wear.percent < 0 && !roundsToNothing(wear.percent, 'percent', style))
    return `${percent(-wear.percent)} shorter than new, which cannot be. Pull the chain tight and measure again.`;
  const longer = roundsToNothing(wear.percent, 'percent', style)
    ? 'As long as new'
    : `${percent(wear.percent)} longer than new`;
  if (!limitIsMakers)
    return `${longer}. Type the limit of the maker’s manual to see whether it is worn out: limits differ from chain to chain.`;
  const limit = `the maker’s limit of ${percent(wear.limit)}`;
  if (wear.done)
    return `${longer}, beyond ${limit}: this chain is worn out. Do not ride: it can jump or break. Replace it together with both sprockets.`;
  return `${longer}, within ${limit}, which is ${length(wear.lengthAtLimit, style)} over these links.`;
}

/** Whether the chain is worn out by its maker's limit, for the head of the panel. */
export function wearDone(wear: Result<ChainWear, WearReason> | null, limitIsMakers: boolean): boolean {
  return limitIsMakers && wear !== null && wear.ok && wear.value.done;
}

function stretchWords({ from, to }: TravelStretch, wheelTravel: number, style: NumberStyle): string {
  if (from <= 0 && to >= wheelTravel) return 'through the whole travel';
  if (from <= 0) return `from hanging to ${length(to, style)} of rear travel`;
  if (to >= wheelTravel) return `from ${length(from, style)} of rear travel to bottomed`;
  return `from ${length(from, style)} to ${length(to, style)} of rear travel`;
}

function travelWords(travel: number, wheelTravel: number, style: NumberStyle): string {
  if (travel <= 0) return 'with the wheel hanging';
  return travel >= wheelTravel ? 'with the wheel bottomed' : `at ${length(travel, style)} of rear travel`;
}

/** Where the chain comes nearest to the pivot's guide, and over which stretch it lies on it. */
export function clearanceWords(
  clearance: GuideClearance,
  hasGuide: boolean,
  wheelTravel: number,
  style: NumberStyle,
): string {
  const { leastGap, leastAt, touching } = clearance;
  const at = travelWords(leastAt, wheelTravel, style);
  if (touching.length > 0) {
    const where = touching.map((stretch) => stretchWords(stretch, wheelTravel, style)).join(' and ');
    return `The chain lies on the chain slider [rub strip] ${where}. Without the slider the chain would pass ${length(-leastGap, style)} below its surface ${at}.`;
  }
  const what = hasGuide
    ? 'the chain slider [rub strip]'
    : 'the pivot’s centre; this bike has no chain slider [rub strip]';
  if (leastGap >= 0 && roundsToNothing(leastGap, 'length', style))
    return `The upper run just touches ${what} ${at}.`;
  return leastGap >= 0
    ? `The upper run stays clear: least clearance ${length(leastGap, style)} ${at}, to ${what}.`
    : `The upper run passes ${length(-leastGap, style)} below ${what}, ${at}.`;
}

/** Where the lower run comes nearest to the guide under the pivot, and over which stretch it lies on it. */
export function lowerClearanceWords(
  { leastGap, leastAt, touching }: GuideClearance,
  wheelTravel: number,
  style: NumberStyle,
): string {
  const at = travelWords(leastAt, wheelTravel, style);
  if (touching.length === 0)
    return `The lower run stays ${length(leastGap, style)} clear under the pivot ${at}.`;
  const where = touching.map((stretch) => stretchWords(stretch, wheelTravel, style)).join(' and ');
  return `Pulled tight, the lower run lies on the chain slider [rub strip] under the pivot ${where}. Without the slider it would pass ${length(-leastGap, style)} above its surface ${at}.`;
}

/** The smallest front sprocket that keeps the upper run clear, and how near the chain then comes. `leastTeeth` is what goes on the shaft. */
export function fewestClearWords(
  teeth: number,
  leastGap: number,
  fitted: number,
  leastTeeth: number,
  style: NumberStyle,
): string {
  const smaller = teeth <= leastTeeth ? ' A smaller one does not go on the shaft.' : '';
  return `The smallest front sprocket that keeps the chain clear has ${teeth} teeth${teeth === fitted ? ', as fitted' : ''}: the chain comes within ${length(leastGap, style)} of the slider.${smaller}`;
}

/** Up to which shock length the upper run stays clear; `touches` where it does not now. */
export function clearShockWords(shockLength: number, touches: boolean, style: NumberStyle): string {
  const { text } = writeNumber(shockLength, 'length', style, { signed: true });
  return touches
    ? `A shock length of ${text} or less keeps it clear too, and lowers the rear.`
    : `With the shock length at ${text} or less it stays clear; longer, it lies on the slider, wears it and pulls the rear down harder.`;
}

/** What a chain on its guide does, where it lies on it hardest. `freeLever` and `guideRadius` in mm. */
export function rubbingWords(
  freeLever: number,
  guideRadius: number,
  newtons: number,
  style: NumberStyle,
): string {
  const straight =
    freeLever < 0 ? `${length(-freeLever, style)} below it` : `only ${length(freeLever, style)} above it`;
  return (
    `Where it presses hardest: when the tyre drives with 1000\u00a0N, the chain presses on its slider with ${Math.round(newtons)}\u00a0N, and both wear.` +
    ` The slider holds the chain ${length(guideRadius, style)} above the pivot’s centre; straight, the chain would pass ${straight}. The higher it passes, the harder it pulls the rear down.`
  );
}
