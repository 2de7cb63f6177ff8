/** How a change comes about, part by part of the geometry: the mechanism behind the sentences of why-words. */
import { heightPlace } from '../../core/effects/height-places.ts';
import { driveNoun } from '../../core/parts/drive-noun.ts';
import { placeWords } from '../change/height-words.ts';
import { exactSteps, isLess } from '../../core/units/least-told.ts';
import { listAll } from '../list-all.ts';
import { sharedSteps } from '../../core/units/shared-steps.ts';
import { wordBySize, type ChangeWords } from '../../core/readings/change-words.ts';
import { EXPLAINED, type ExplainedKey } from '../../core/effects/split-by-adjuster.ts';
import { noticedOf } from '../change/ways-told.ts';
import { MOST_SENTENCES, NO_TRAIL, springCauses, type WhySentence } from './why-words.ts';
import { QUANTITIES, type QuantityKey } from '../../core/units/all-quantities.ts';
import {
  metricOfSteps,
  shownSteps,
  writeChange,
  writeNumber,
  type NumberStyle,
} from '../../core/units/number-style.ts';
import type {
  ChainCause,
  Part,
  RakeCause,
  Split,
  SwingarmCause,
  SwingarmPartCause,
  TrailCause,
  WheelbaseCause,
  Why,
} from '../../core/effects/why.ts';

export const RAKE_WORDS: Readonly<Record<RakeCause, string>> = {
  framePitch: 'the frame’s pitch',
  axisInFrame: 'the axis in the frame',
};
export const TRAIL_WORDS: Readonly<Record<TrailCause, string>> = {
  tyre: 'the front tyre',
  rake: 'rake',
  offset: 'offset',
};
export const WHEELBASE_WORDS: Readonly<Record<WheelbaseCause, string>> = {
  behindPivot: 'rear wheel to pivot',
  aheadOfPivot: 'pivot to front wheel',
};
export const SWINGARM_WORDS: Readonly<Record<SwingarmCause, string>> = {
  pivotHeight: 'pivot height',
  axleHeight: 'rear tyre',
  armLength: 'the distance from pivot to axle',
};
const SWINGARM_PART_WORDS: Readonly<Record<SwingarmPartCause, string>> = {
  pivotHeight: 'pivot height',
  pivotAhead: 'how far the pivot is ahead of the rear patch',
  loadTransfer: 'the load-transfer line',
};
/** `run` is what pulls beside the pivot: a chain, a belt or a torque arm. */
const runWords = (run: string): Readonly<Record<ChainCause, string>> => ({
  pullPerThrust: `the ${run}’s pull for the same thrust`,
  lever: 'its distance from the pivot',
  pivotAhead: 'how far the pivot is ahead of the rear patch',
  loadTransfer: 'the load-transfer line',
});

/** A sentence with what its change weighs: how many times what a rider notices. What moved the bike comes in any case. */
interface WeighedSentence extends WhySentence {
  readonly weight: number;
}

/** A mechanism in sentences: first those that say most, in the order of cause and effect; and all of them. */
export interface MechanismStory {
  readonly first: readonly WhySentence[];
  readonly all: readonly WhySentence[];
}

/** As many sentences first as the explanation by adjuster has at most. */
export function mechanismStory(explained: Why, style: NumberStyle): MechanismStory {
  const all = weighedSentences(explained, style);
  // Trail is what the hands feel: it never waits behind the others.
  const weight = (each: WeighedSentence): number => (each.reading === 'trail' ? Infinity : each.weight);
  const kept = [...all]
    .sort((a, b) => Number(weight(b) > weight(a)) - Number(weight(b) < weight(a)))
    .slice(0, MOST_SENTENCES);
  return { first: all.filter((sentence) => kept.includes(sentence)), all };
}

/** The sentences for a change, first what the frame did, then each reading that moved by a visible amount. */
function weighedSentences(explained: Why, style: NumberStyle): WeighedSentence[] {
  const sentences: WeighedSentence[] = [];
  const run = explained.torqueArm ? 'torque arm' : driveNoun(explained.drive).loop;
  const eccentric = eccentricSentence(explained, style);
  if (eccentric !== null) sentences.push({ reading: 'swingarmAngle', text: eccentric, weight: Infinity });
  for (const sunk of travelSentences(explained, style)) sentences.push(sunk);
  const moved = movedSentence(explained, style);
  if (moved !== null) sentences.push({ reading: 'pivotHeight', text: moved, weight: Infinity });
  const [pitch] = shownShares(explained.rake, 'angle', style);
  if (!isLess(pitch, 'angle'))
    sentences.push({
      reading: 'rake',
      text: `The frame pitched ${written(Math.abs(pitch), 'angle', style)} nose ${pitch < 0 ? 'down' : 'up'}.`,
      weight: Math.abs(pitch) / QUANTITIES.angle.noticed,
    });
  const add = <Cause extends string>(
    reading: string,
    name: string,
    quantity: QuantityKey,
    change: Split<Cause> | null,
    words: Readonly<Record<Cause, string>>,
    verbs: ChangeWords,
  ) => {
    if (change === null) return;
    const text = changeSentence(name, quantity, change, words, verbs, style);
    const { fromCore } = QUANTITIES[quantity];
    const weight =
      Math.abs(fromCore(change.after) - fromCore(change.before)) /
      (reading in EXPLAINED ? noticedOf(EXPLAINED[reading as ExplainedKey]) : QUANTITIES[quantity].noticed);
    if (text !== null) sentences.push({ reading, text, weight });
  };
  add('rake', 'Rake', 'angle', explained.rake, RAKE_WORDS, {
    more: 'the steering gets slower',
    less: 'the steering gets quicker',
    felt: {
      from: noticedOf(EXPLAINED.rake),
      gauge: { more: 'the axis is slacker', less: 'the axis is steeper' },
    },
  });
  add('trail', 'Trail', 'length', explained.trail, TRAIL_WORDS, {
    ...(explained.trail.after > 0
      ? {
          more: 'the steering is steadier',
          less: 'the steering turns quicker',
          felt: {
            from: noticedOf(EXPLAINED.trail),
            gauge: { more: 'longer', less: 'shorter' },
          },
        }
      : { more: NO_TRAIL, less: NO_TRAIL }),
    acrossZero: { more: 'the steering centres itself now', less: NO_TRAIL },
  });
  add('swingarmAngle', 'Swingarm angle', 'angle', explained.swingarmAngle, SWINGARM_WORDS, {
    more: 'it is steeper',
    less: 'it is flatter',
    belowZero: { more: 'the axle rises less above the pivot', less: 'the axle rises more above the pivot' },
    acrossZero: { more: 'the axle is now below the pivot', less: 'the axle is now above the pivot' },
  });
  add(
    'antiSquat',
    'Anti-squat',
    'percent',
    explained.antiSquat,
    {},
    {
      more: 'the drive holds the rear up more on the gas',
      less: 'the drive holds the rear up less on the gas',
      belowZero: {
        more: 'the drive pulls the rear down less on the gas',
        less: 'the drive pulls the rear down more on the gas',
      },
    },
  );
  add(
    'antiSquatSwingarm',
    'Anti-squat, swingarm’s part',
    'percent',
    explained.swingarm,
    SWINGARM_PART_WORDS,
    {
      more: 'the swingarm holds the rear up more',
      less: 'the swingarm holds the rear up less',
      belowZero: {
        more: 'the swingarm pulls the rear down less',
        less: 'the swingarm pulls the rear down more',
      },
    },
  );
  const pulled = explained.torqueArm ? 'antiSquat' : 'antiSquatChain';
  add(pulled, `Anti-squat, ${run}’s part`, 'percent', explained.chain, runWords(run), {
    more: `the ${run} holds the rear up more`,
    less: `the ${run} holds the rear up less`,
    belowZero: {
      more: `the ${run} pulls the rear down less`,
      less: `the ${run} pulls the rear down more`,
    },
  });
  add('wheelbase', 'Wheelbase', 'length', explained.wheelbase, WHEELBASE_WORDS, {
    more: 'longer',
    less: 'shorter',
  });
  return sentences;
}

function changeSentence<Cause extends string>(
  name: string,
  quantity: QuantityKey,
  change: Split<Cause>,
  words: Readonly<Record<Cause, string>>,
  verbs: ChangeWords,
  style: NumberStyle,
): string | null {
  const { fromCore } = QUANTITIES[quantity];
  const before = shownSteps(fromCore(change.before), quantity, style);
  const after = shownSteps(fromCore(change.after), quantity, style);
  if (after === before || isLess(fromCore(change.after) - fromCore(change.before), quantity)) return null;
  const steps = (count: number) => writeNumber(metricOfSteps(count, quantity, style), quantity, style).text;
  const changed = (count: number) => writeChange(metricOfSteps(count, quantity, style), quantity, style).text;
  const shares = shownShares(change, quantity, style);
  const told = change.parts
    .map((part, i) => ({ cause: part.cause, share: shares[i] }))
    .filter(({ share }) => share !== 0)
    .map(({ cause, share }) => ({
      amount: writeChange(share, quantity, style).text,
      cause: words[cause],
    }));
  const verb = wordBySize(verbs, fromCore(change.before), fromCore(change.after));
  const split =
    told.length === 0
      ? ''
      : told.length === 1
        ? `, all from ${told[0].cause}`
        : ` (${listAll(told.map(({ amount, cause }) => `${amount} from ${cause}`))})`;
  return `${name} ${changed(after - before)}, from ${steps(before)} to ${steps(after)}: ${verb}${split}.`;
}

/** The parts of a change as they are written, metric: they add up to the change as it is written. */
export function shownShares<Cause extends string>(
  { before, after, parts }: Split<Cause>,
  quantity: QuantityKey,
  style: NumberStyle,
): number[] {
  const { fromCore } = QUANTITIES[quantity];
  const shares = sharedSteps(
    parts.map((part: Part<Cause>) => exactSteps(fromCore(part.amount), quantity, style)),
    shownSteps(fromCore(after), quantity, style) - shownSteps(fromCore(before), quantity, style),
  );
  return shares.map((share) => metricOfSteps(share, quantity, style));
}

/** Where an eccentric carried the pivot in the frame, when by a visible amount. */
function eccentricSentence({ pivotForward, pivotUp }: Why, style: NumberStyle): string | null {
  const ways = [
    { by: pivotForward, more: 'forward', less: 'back' },
    { by: pivotUp, more: 'up', less: 'down' },
  ].filter(({ by }) => !isLess(by, 'length'));
  if (ways.length === 0) return null;
  const told = ways.map(
    ({ by, more, less }) => `${written(Math.abs(by), 'length', style)} ${by > 0 ? more : less}`,
  );
  return `The eccentric moved the pivot ${listAll(told)} in the frame.`;
}

/** How much deeper or higher each end rides in its travel, when it counts, and with what springs and load. */
function travelSentences({ front, rear }: Why, style: NumberStyle): WeighedSentence[] {
  const ends = [
    { reading: 'frontTravel', name: 'fork', change: front },
    { reading: 'rearTravel', name: 'rear', change: rear },
  ];
  return ends
    .filter(({ change }) => !isLess(change.travel, 'length'))
    .map(({ reading, name, change }) => {
      return {
        reading,
        text: travelTold(name, change.travel, springCauses(change, style), style),
        weight: Math.abs(change.travel) / QUANTITIES.length.noticed,
      };
    });
}

/** "The fork uses 2.1 mm less of its travel, with stiffer springing." */
export function travelTold(
  name: string,
  travel: number,
  causes: readonly string[],
  style: NumberStyle,
): string {
  const amount = written(Math.abs(travel), 'length', style);
  const why = causes.length === 0 ? '' : `, with ${listAll(causes)}`;
  return `The ${name} uses ${amount} ${travel > 0 ? 'more' : 'less'} of its travel${why}.`;
}

/** How far the frame's two ends, the seat and the centre of gravity rose; null below the least change that a sentence names. */
function movedSentence(explained: Why, style: NumberStyle): string | null {
  const { pivotHeight, frontHeight, seatHeight, centreHeight } = explained;
  const moved = [
    { name: 'the swingarm pivot', height: pivotHeight },
    { name: `the ${placeWords(heightPlace('front'))}`, height: frontHeight },
    { name: 'the seat', height: seatHeight },
    { name: 'the centre of gravity', height: centreHeight },
  ]
    .filter(({ height: { before, after } }) => !isLess(after - before, 'length'))
    .map(({ name, height }) => ({ name, rise: shownDifference(height, style) }));
  const told = [
    movedTold(
      'rose',
      moved.filter(({ rise }) => rise > 0),
      style,
    ),
    movedTold(
      'sank',
      moved.filter(({ rise }) => rise < 0),
      style,
    ),
  ].filter(Boolean);
  if (told.length === 0) return null;
  const text = told.join('; ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/** "the seat rose 19.1 mm and the pivot 9.0 mm"; the verb is said once. */
function movedTold(
  verb: string,
  moved: readonly { readonly name: string; readonly rise: number }[],
  style: NumberStyle,
): string {
  return listAll(
    moved.map(
      ({ name, rise }, i) =>
        `${name} ${i === 0 ? `${verb} ` : ''}${written(Math.abs(rise), 'length', style)}`,
    ),
  );
}

/** The difference of two heights as they are written, so that a person who subtracts the readings finds it. */
function shownDifference({ before, after }: Split<never>, style: NumberStyle): number {
  const steps = shownSteps(after, 'length', style) - shownSteps(before, 'length', style);
  return metricOfSteps(steps, 'length', style);
}

function written(value: number, quantity: QuantityKey, style: NumberStyle): string {
  return writeNumber(value, quantity, style).text;
}
