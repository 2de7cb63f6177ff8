/** A change in whole sentences from cause to effect, for a person who reads them out to a customer. */
import { driveNoun } from '../../core/parts/drive-noun.ts';
import { changeWord, wordBySize, type ChangeWords } from '../../core/readings/change-words.ts';
import type { Split, Why } from '../../core/effects/why.ts';
import { isLess } from '../../core/units/least-told.ts';
import { listAll } from '../list-all.ts';
import { QUANTITIES, type QuantityKey } from '../../core/units/all-quantities.ts';
import { shownDifference, shownSteps, writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { heightPlace } from '../../core/effects/height-places.ts';
import { EXPLAINED } from '../../core/effects/split-by-adjuster.ts';
import { noticedOf } from '../change/ways-told.ts';
import { capital, placeWords } from '../change/height-words.ts';
import { shownShares, travelTold } from './why-mechanism.ts';
import type { SettingDifference } from '../change/setup-difference.ts';
import { layClause } from './why-verbs.ts';
import { NO_TRAIL, springCauses } from './why-words.ts';

/** Above the figures: what the lever of the trail does. Common practice, no source. */
const LEVER = 'Trail is the lever by which the road pulls the front wheel straight.';
const LEVER_CHANGED: ChangeWords = {
  more: 'With a longer lever the wheel is held straight more firmly, and the bar needs more push to turn in.',
  less: 'With a shorter lever the bike turns in quicker, and the wheel is held straight less firmly.',
  felt: {
    from: noticedOf(EXPLAINED.trail),
    gauge: {
      more: 'Few riders notice so little.',
      less: 'Few riders notice so little.',
    },
    slightly: {
      more: 'With a slightly longer lever the wheel is held straight a little more firmly, and the bar needs a little more push to turn in.',
      less: 'With a slightly shorter lever the bike turns in a little quicker, and the wheel is held straight a little less firmly.',
    },
  },
};

/**
 * Paragraphs: what was done, what the springs did, how the change reached the steering, and how it reached the drive, each from its cause to what the rider
 * has of it; only what a sentence of Why would name. The last names the ride state. Empty where nothing of them
 * moved enough.
 */
export function readOut(
  explained: Why,
  done: readonly SettingDifference[],
  rideState: string,
  style: NumberStyle,
): readonly string[] {
  const told = causesTold(explained, style);
  if (told.length === 0) return [];
  return [
    ...(done.length === 0 ? [] : [doneTold(done)]),
    ...told,
    `All figures are for the ride state “${rideState}”. Only a test ride shows how it feels.`,
  ];
}

/** A paragraph for the springs, one for the steering and one for the drive, each where it moved enough. */
export function causesTold(explained: Why, style: NumberStyle): readonly string[] {
  return [springsTold(explained, style), steeringTold(explained, style), gasTold(explained, style)].filter(
    (text) => text !== '',
  );
}

/** "The fork uses 2.1 mm less of its travel, with stiffer springing.": what springs and loads did, without the geometry. */
function springsTold({ front, rear }: Why, style: NumberStyle): string {
  return [
    { name: 'fork', change: front },
    { name: 'rear', change: rear },
  ]
    .flatMap(({ name, change }) => {
      const causes = springCauses({ ...change, leverage: 0 }, style);
      const isQuiet = causes.length === 0 || isLess(change.travel, 'length');
      return isQuiet ? [] : [travelTold(name, change.travel, causes, style)];
    })
    .join(' ');
}

/** "What was done: shock length from 0.0 mm to 6.0 mm." */
function doneTold(done: readonly SettingDifference[]): string {
  const each = done.map(
    ({ label, from, to }) => `${label.charAt(0).toLowerCase()}${label.slice(1)} from ${from} to ${to}`,
  );
  return `What was done: ${listAll(each)}.`;
}

function steeringTold(explained: Why, style: NumberStyle): string {
  const { rake, trail } = explained;
  if (!isTold(rake, 'angle', style) && !isTold(trail, 'length', style)) return '';
  return [
    frameTold(explained, style),
    isTold(rake, 'angle', style) ? rakeTold(rake, style) : '',
    trailTold(explained, style),
  ]
    .filter((text) => text !== '')
    .join(' ');
}

/** How the frame moved, and the axis in it. */
function frameTold({ pivotHeight, frontHeight, rake }: Why, style: NumberStyle): string {
  const moved = [
    { name: 'swingarm pivot', height: pivotHeight },
    { name: placeWords(heightPlace('front')), height: frontHeight },
  ]
    .map(({ name, height }) => ({
      name,
      rise: shownDifference(height.before, height.after, 'length', style),
    }))
    .filter(({ rise }) => !isLess(rise, 'length'))
    .map(
      ({ name, rise }, i) =>
        `the ${name} ${i === 0 ? 'stands ' : ''}${written(Math.abs(rise), 'length', style)} ${rise > 0 ? 'higher' : 'lower'}`,
    );
  const [pitch, inFrame] = shownShares(rake, 'angle', style);
  const tipped = isLess(pitch, 'angle')
    ? ''
    : `the frame is tipped nose ${pitch < 0 ? 'down' : 'up'} by ${written(Math.abs(pitch), 'angle', style)}`;
  const turned = isLess(inFrame, 'angle')
    ? ''
    : ` The steering axis stands ${written(Math.abs(inFrame), 'angle', style)} ${inFrame < 0 ? 'steeper' : 'slacker'} in the frame.`;
  if (tipped === '') return turned.trim();
  const raised = moved.join(' and ');
  return `${capital(raised === '' ? tipped : `${raised}, so ${tipped}`)}.${turned}`;
}

function rakeTold(rake: Split<string>, style: NumberStyle): string {
  const word = changeWord({ more: 'slacker', less: 'steeper' }, rake.before, rake.after);
  return `The steering axis stands ${word} on the road: rake was ${inCore(rake.before, 'angle', style)} and is ${inCore(rake.after, 'angle', style)}.`;
}

/** What changed the trail besides the rake, the trail itself, and what its lever does. */
function trailTold({ trail }: Why, style: NumberStyle): string {
  const figures = `trail was ${written(trail.before, 'length', style)} and is ${written(trail.after, 'length', style)}`;
  if (!isTold(trail, 'length', style)) return `The trail stays nearly as it is: ${figures}.`;
  if (trail.after <= 0) return `${capital(figures)}: ${NO_TRAIL}.`;
  const [tyre, , offset] = shownShares(trail, 'length', style);
  const causes = [
    isLess(offset, 'length')
      ? ''
      : `The front axle stands ${offset < 0 ? 'further ahead of' : 'nearer to'} the axis. `,
    isLess(tyre, 'length') ? '' : `The front tyre holds its axle ${tyre > 0 ? 'higher' : 'lower'}. `,
  ].join('');
  if (trail.before <= 0) return `${causes}${capital(figures)}: ${layClause('trail', trail)}.`;
  const shift = shownDifference(trail.before, trail.after, 'length', style);
  const way = shift > 0 ? 'further ahead of' : 'nearer to';
  return (
    `${causes}The axis meets the road ${written(Math.abs(shift), 'length', style)} ${way} the point on which the front tyre ` +
    `stands: ${figures}. ${LEVER} ${wordBySize(LEVER_CHANGED, trail.before, trail.after)}`
  );
}

/** What swingarm and chain each do as the gas opens, and both together. */
function gasTold(
  { antiSquat, swingarm, chain, swingarmAngle, torqueArm, drive }: Why,
  style: NumberStyle,
): string {
  if (antiSquat === null || !isTold(antiSquat, 'percent', style)) return '';
  const run = torqueArm ? 'torque arm' : driveNoun(drive).loop;
  const slope = changeWord(
    {
      more: 'slopes down more steeply from the pivot to the rear axle',
      less: 'slopes down less steeply from the pivot to the rear axle',
      belowZero: { more: 'points up less toward the rear axle', less: 'points up more toward the rear axle' },
      acrossZero: { more: 'slopes down to the rear axle now', less: 'points up to the rear axle now' },
    },
    swingarmAngle.before,
    swingarmAngle.after,
  );
  const angles = isTold(swingarmAngle, 'angle', style)
    ? `The swingarm ${slope}: it was at ${inCore(swingarmAngle.before, 'angle', style)} and is at ${inCore(swingarmAngle.after, 'angle', style)}.`
    : '';
  const share = (name: string, part: Split<string> | null): string => {
    if (part === null || !isTold(part, 'percent', style)) return '';
    const verb = changeWord(
      {
        more: 'holds the rear up more',
        less: 'holds the rear up less',
        belowZero: { more: 'pulls the rear down less', less: 'pulls the rear down more' },
      },
      part.before,
      part.after,
    );
    return `The ${name}’s part of the anti-squat was ${written(part.before, 'percent', style)} and is ${written(part.after, 'percent', style)}: it ${verb}.`;
  };
  const whole = `Anti-squat as a whole was ${written(antiSquat.before, 'percent', style)} and is ${written(antiSquat.after, 'percent', style)}: ${layClause('antiSquat', antiSquat)}.`;
  return [angles, share('swingarm', swingarm), share(run, chain), whole]
    .filter((text) => text !== '')
    .join(' ');
}

/** Whether a change is written at all, and large enough for a sentence. */
function isTold({ before, after }: Split<string>, quantity: QuantityKey, style: NumberStyle): boolean {
  const { fromCore } = QUANTITIES[quantity];
  const [was, is] = [fromCore(before), fromCore(after)];
  return !isLess(is - was, quantity) && shownSteps(was, quantity, style) !== shownSteps(is, quantity, style);
}

const inCore = (value: number, quantity: QuantityKey, style: NumberStyle): string =>
  written(QUANTITIES[quantity].fromCore(value), quantity, style);

const written = (metric: number, quantity: QuantityKey, style: NumberStyle): string =>
  writeNumber(metric, quantity, style).text;
