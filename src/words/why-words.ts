/** The explanation of a change in plain sentences. */
import { listAll } from './list-all.ts';
import type { QuantityKey } from '../core/units/all-quantities.ts';
import { QUANTITIES } from '../core/units/all-quantities.ts';
import {
  metricOfSteps,
  roundsToNothing,
  shownSteps,
  writeNumber,
  type NumberStyle,
} from '../core/units/number-style.ts';
import type {
  AntiSquatCause,
  ChainCause,
  EndChange,
  Part,
  RakeCause,
  Split,
  SwingarmCause,
  TrailCause,
  Why,
} from '../core/effects/why.ts';

export interface WhySentence {
  /** The reading the sentence is about; the frame's pitch goes with rake. */
  readonly reading: string;
  readonly text: string;
}

const RAKE_WORDS: Readonly<Record<RakeCause, string>> = {
  framePitch: 'the frame’s pitch',
  axisInFrame: 'the axis in the frame',
};
const TRAIL_WORDS: Readonly<Record<TrailCause, string>> = {
  tyre: 'the front tyre',
  rake: 'rake',
  offset: 'offset',
};
const SWINGARM_WORDS: Readonly<Record<SwingarmCause, string>> = {
  pivotHeight: 'pivot height',
  axleHeight: 'rear tyre',
  armLength: 'arm length',
};
/** `run` is what pulls beside the pivot: a chain or a belt. */
const antiSquatWords = (run: string): Readonly<Record<AntiSquatCause, string>> => ({
  swingarm: 'swingarm',
  chain: run,
  loadTransfer: 'the load-transfer line',
});
const runWords = (run: string): Readonly<Record<ChainCause, string>> => ({
  pullPerThrust: `the ${run}’s pull for the same thrust`,
  lever: 'its distance from the pivot',
  pivotAhead: 'how far the pivot is ahead of the rear patch',
  loadTransfer: 'the load-transfer line',
});

/** Anti-squat at which the rear neither squats nor lifts, per cent. */
const NEUTRAL = 100;

/** What a number is called when it goes up and when it goes down. */
interface Verbs {
  readonly more: string;
  readonly less: string;
}

/** The sentences for a change, first what the frame did, then each reading that moved by a visible amount. */
export function whySentences(explained: Why, style: NumberStyle): WhySentence[] {
  const sentences: WhySentence[] = [];
  // A bike that lost its chain tells of a chain still.
  const run = explained.drive === 'belt' ? 'belt' : 'chain';
  const eccentric = eccentricSentence(explained, style);
  if (eccentric !== null) sentences.push({ reading: 'swingarmAngle', text: eccentric });
  for (const sunk of travelSentences(explained, style)) sentences.push(sunk);
  const moved = movedSentence(explained, style);
  if (moved !== null) sentences.push({ reading: 'pivotHeight', text: moved });
  const pitch = QUANTITIES.angle.fromCore(explained.pitch);
  if (!roundsToNothing(pitch, 'angle', style))
    sentences.push({
      reading: 'rake',
      text: `The frame pitched ${written(Math.abs(pitch), 'angle', style)} nose ${pitch < 0 ? 'down' : 'up'}.`,
    });
  const lifts = (explained.antiSquat?.after ?? 0) > NEUTRAL;
  const add = <Cause extends string>(
    reading: string,
    name: string,
    quantity: QuantityKey,
    change: Split<Cause> | null,
    words: Readonly<Record<Cause, string>>,
    verbs: Verbs,
  ) => {
    const text = change && changeSentence(name, quantity, change, words, verbs, style);
    if (text !== null) sentences.push({ reading, text });
  };
  add('rake', 'Rake', 'angle', explained.rake, RAKE_WORDS, {
    more: 'the steering slows',
    less: 'the steering quickens',
  });
  add('trail', 'Trail', 'length', explained.trail, TRAIL_WORDS, {
    more: 'the steering steadies itself more',
    less:
      explained.trail.after > 0
        ? 'the steering gets lighter and quicker'
        : 'the steering no longer centres itself, do not ride like this',
  });
  add('swingarmAngle', 'Swingarm angle', 'angle', explained.swingarmAngle, SWINGARM_WORDS, {
    more: 'it is steeper',
    less: 'it is flatter',
  });
  add('antiSquat', 'Anti-squat', 'percent', explained.antiSquat, antiSquatWords(run), {
    more: lifts ? 'the rear lifts more on the gas' : 'the rear squats less on the gas',
    less: lifts ? 'the rear lifts less on the gas' : 'the rear squats more on the gas',
  });
  add('antiSquatChain', `The ${run}’s part`, 'percent', explained.chain, runWords(run), {
    more: `the ${run} pulls the rear down less`,
    less: `the ${run} pulls the rear down more`,
  });
  add(
    'wheelbase',
    'Wheelbase',
    'length',
    explained.wheelbase,
    {},
    {
      more: 'the bike is longer',
      less: 'the bike is shorter',
    },
  );
  return sentences;
}

function changeSentence<Cause extends string>(
  name: string,
  quantity: QuantityKey,
  change: Split<Cause>,
  words: Readonly<Record<Cause, string>>,
  verbs: Verbs,
  style: NumberStyle,
): string | null {
  const { fromCore } = QUANTITIES[quantity];
  const before = shownSteps(fromCore(change.before), quantity, style);
  const after = shownSteps(fromCore(change.after), quantity, style);
  if (after === before) return null;
  const steps = (count: number, signed = false) =>
    writeNumber(metricOfSteps(count, quantity, style), quantity, style, { signed }).text;
  const amounts = change.parts.map((part: Part<Cause>) => fromCore(part.amount));
  const shares = sharedSteps(amounts, after - before, fromCore(change.after) - fromCore(change.before));
  const told = change.parts
    .map((part, i) => ({ cause: part.cause, share: shares[i] }))
    .filter(({ share }) => share !== 0)
    .map(({ cause, share }) => ({ amount: steps(share, true), cause: words[cause] }));
  const verb = after > before ? verbs.more : verbs.less;
  const split =
    told.length === 0
      ? ''
      : told.length === 1
        ? `, all from ${told[0].cause}`
        : ` (${listAll(told.map(({ amount, cause }) => `${amount} from ${cause}`))})`;
  return `${name} ${steps(after - before, true)}, from ${steps(before)} to ${steps(after)}: ${verb}${split}.`;
}

/**
 * The parts as whole numbers of shown steps that add up to `total` steps: each cut to whole steps, and what is left
 * given to those that lost most (largest remainder).
 */
function sharedSteps(amounts: readonly number[], total: number, whole: number): number[] {
  if (amounts.length === 0) return [];
  const exact = amounts.map((amount) => (whole === 0 ? 0 : (amount / whole) * total));
  const cut = exact.map(Math.floor);
  const missing = Math.round(total - cut.reduce((sum, steps) => sum + steps, 0));
  const order = exact.map((steps, i) => ({ i, lost: steps - cut[i] })).sort((a, b) => b.lost - a.lost);
  for (const { i } of order.slice(0, missing)) cut[i] += 1;
  return cut;
}

/** Where an eccentric carried the pivot in the frame, when by a visible amount. */
function eccentricSentence({ pivotForward, pivotUp }: Why, style: NumberStyle): string | null {
  const ways = [
    { by: pivotForward, more: 'forward', less: 'back' },
    { by: pivotUp, more: 'up', less: 'down' },
  ].filter(({ by }) => !roundsToNothing(by, 'length', style));
  if (ways.length === 0) return null;
  const told = ways.map(
    ({ by, more, less }) => `${written(Math.abs(by), 'length', style)} ${by > 0 ? more : less}`,
  );
  return `The eccentric moved the pivot ${listAll(told)} in the frame.`;
}

/** Every change shifts the springs a little; travel that changed by less than this is not what happened, mm. */
const LEAST_TRAVEL_TOLD = 1;

/** How much deeper or higher each end rides in its travel, when it counts, and with what springs and load. */
function travelSentences({ front, rear }: Why, style: NumberStyle): WhySentence[] {
  const ends = [
    { reading: 'frontTravel', name: 'fork', change: front },
    { reading: 'rearTravel', name: 'rear', change: rear },
  ];
  return ends
    .filter(({ change }) => Math.abs(change.travel) >= LEAST_TRAVEL_TOLD)
    .map(({ reading, name, change }) => {
      const causes = springCauses(change, style);
      const amount = written(Math.abs(change.travel), 'length', style);
      const why = causes.length === 0 ? '' : `, with ${listAll(causes)}`;
      return {
        reading,
        text: `The ${name} rides ${amount} ${change.travel > 0 ? 'deeper' : 'higher'} in its travel${why}.`,
      };
    });
}

/** What has changed of springs and load, by visible amounts, toward where the end has gone. */
function springCauses({ travel, rate, preload, push }: EndChange, style: NumberStyle): string[] {
  const causes: readonly { deeper: number; quantity: QuantityKey; words: readonly [string, string] }[] = [
    { deeper: -rate, quantity: 'rate', words: ['softer springs', 'stiffer springs'] },
    { deeper: -preload, quantity: 'length', words: ['less preload', 'more preload'] },
    { deeper: push, quantity: 'force', words: ['more load on it', 'less load on it'] },
  ];
  return causes
    .filter(({ deeper, quantity }) => deeper * travel > 0 && !roundsToNothing(deeper, quantity, style))
    .map(({ words: [whenDeeper, whenHigher] }) => (travel > 0 ? whenDeeper : whenHigher));
}

/** How far the two ends of the frame rose, when by a visible amount. */
function movedSentence({ pivotRise, headRise }: Why, style: NumberStyle): string | null {
  const ends = [
    { name: 'swingarm pivot', rise: pivotRise },
    { name: 'steering head', rise: headRise },
  ].filter(({ rise }) => !roundsToNothing(rise, 'length', style));
  if (ends.length === 0) return null;
  const told = ends.map(
    ({ name, rise }) =>
      `the ${name} ${rise > 0 ? 'rose' : 'sank'} ${written(Math.abs(rise), 'length', style)}`,
  );
  const text = listAll(told);
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function written(value: number, quantity: QuantityKey, style: NumberStyle): string {
  return writeNumber(value, quantity, style).text;
}
