/** The explanation of a change in plain sentences. */
import type { QuantityKey } from '../units/quantity.ts';
import { QUANTITIES } from '../units/quantity.ts';
import {
  metricOfSteps,
  roundsToNothing,
  shownSteps,
  writeNumber,
  type NumberStyle,
} from '../units/number-style.ts';
import type {
  AntiSquatCause,
  ChainCause,
  Part,
  RakeCause,
  Split,
  SwingarmCause,
  TrailCause,
  Why,
} from './why.ts';

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
const ANTI_SQUAT_WORDS: Readonly<Record<AntiSquatCause, string>> = {
  swingarm: 'swingarm',
  chain: 'chain',
  loadTransfer: 'the load-transfer line',
};
const CHAIN_WORDS: Readonly<Record<ChainCause, string>> = {
  pullPerThrust: 'the chain’s pull for the same thrust',
  lever: 'its distance from the pivot',
  pivotAhead: 'how far the pivot is ahead of the rear patch',
  loadTransfer: 'the load-transfer line',
};

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
  add('antiSquat', 'Anti-squat', 'percent', explained.antiSquat, ANTI_SQUAT_WORDS, {
    more: lifts ? 'the rear lifts more on the gas' : 'the rear squats less on the gas',
    less: lifts ? 'the rear lifts less on the gas' : 'the rear squats more on the gas',
  });
  add('antiSquatChain', 'The chain’s part', 'percent', explained.chain, CHAIN_WORDS, {
    more: 'the chain pulls the rear down less',
    less: 'the chain pulls the rear down more',
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
        : ` (${listed(told.map(({ amount, cause }) => `${amount} from ${cause}`))})`;
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
  const text = listed(told);
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function written(value: number, quantity: QuantityKey, style: NumberStyle): string {
  return writeNumber(value, quantity, style).text;
}

function listed(items: readonly string[]): string {
  return items.length < 2
    ? items.join('')
    : `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`;
}
