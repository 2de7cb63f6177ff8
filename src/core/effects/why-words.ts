/** The explanation of a change in plain sentences. */
import type { QuantityKey } from '../units/quantity.ts';
import { QUANTITIES } from '../units/quantity.ts';
import { roundsToNothing, writeNumber, type NumberStyle } from '../units/number-style.ts';
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
const ANTI_SQUAT_WORDS: Readonly<Record<AntiSquatCause, string>> = { swingarm: 'swingarm', chain: 'chain' };
const CHAIN_WORDS: Readonly<Record<ChainCause, string>> = {
  pullPerThrust: 'the chain’s pull for the same thrust',
  lever: 'its distance from the pivot',
  pivotAhead: 'how far the pivot is ahead of the rear patch',
  loadTransfer: 'the load-transfer line',
};

/** What a number is called when it goes up and when it goes down. */
interface Verbs {
  readonly more: string;
  readonly less: string;
}

/** The sentences for a change, first what the frame did, then each reading that moved by a visible amount. */
export function whySentences(explained: Why, style: NumberStyle): WhySentence[] {
  const sentences: WhySentence[] = [];
  const pitch = QUANTITIES.angle.fromCore(explained.pitch);
  if (!roundsToNothing(pitch, 'angle', style))
    sentences.push({
      reading: 'rake',
      text: `The frame pitched ${written(Math.abs(pitch), 'angle', style)} nose ${pitch < 0 ? 'down' : 'up'}.`,
    });
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
    less: 'the steering gets lighter and quicker',
  });
  add('swingarmAngle', 'The swingarm', 'angle', explained.swingarmAngle, SWINGARM_WORDS, {
    more: 'it is steeper',
    less: 'it is flatter',
  });
  add('antiSquat', 'Anti-squat', 'percent', explained.antiSquat, ANTI_SQUAT_WORDS, {
    more: 'the rear squats less on the gas',
    less: 'the rear squats more on the gas',
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
  const before = fromCore(change.before);
  const after = fromCore(change.after);
  if (roundsToNothing(after - before, quantity, style)) return null;
  const parts = change.parts
    .map((part: Part<Cause>) => ({ cause: part.cause, amount: fromCore(part.amount) }))
    .filter((part) => !roundsToNothing(part.amount, quantity, style));
  const from = written(before, quantity, style);
  const to = written(after, quantity, style);
  const signed = writeNumber(after - before, quantity, style, { signed: true }).text;
  const told = parts.map(
    (part) => `${writeNumber(part.amount, quantity, style, { signed: true }).text} from ${words[part.cause]}`,
  );
  const split =
    told.length === 0 ? '' : told.length === 1 ? `, all from ${words[parts[0].cause]}` : `: ${listed(told)}`;
  const verb = after > before ? verbs.more : verbs.less;
  return `${name} went from ${from} to ${to} (${signed}), so ${verb}${split}.`;
}

function written(value: number, quantity: QuantityKey, style: NumberStyle): string {
  return writeNumber(value, quantity, style).text;
}

function listed(items: readonly string[]): string {
  return items.length < 2
    ? items.join('')
    : `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`;
}
