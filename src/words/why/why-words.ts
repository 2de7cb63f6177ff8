/** The explanation of a change: one headline in lay words, then a few sentences, the biggest first, each with its causes. */
import type { DriveNoun } from '../../core/parts/drive-noun.ts';
import { EXPLAINED, type AdjusterCause, type AdjusterSplit } from '../../core/effects/split-by-adjuster.ts';
import type { EndChange, Why } from '../../core/effects/why.ts';
import { isBeyondUsual } from '../../core/readings/usual.ts';
import { adjusterOf } from '../../core/adjusters/all-adjusters.ts';
import { nameDrive } from '../../core/parts/drive-noun.ts';
import { QUANTITIES, type QuantityKey } from '../../core/units/all-quantities.ts';
import {
  metricOfSteps,
  roundsToNothing,
  shownSteps,
  writeChange,
  writeNumber,
  type NumberStyle,
} from '../../core/units/number-style.ts';
import { BEYOND_USUAL } from '../change/beyond-usual.ts';
import { isLess } from '../../core/units/least-told.ts';
import { listAll } from '../list-all.ts';
import { noticedOf } from '../change/ways-told.ts';
import { VERBS, wordOf, type Verbs } from './why-verbs.ts';
import { writeShort } from '../write-short.ts';

export interface WhySentence {
  /** The reading the sentence is about. */
  readonly reading: string;
  readonly text: string;
}

export interface WhyStory {
  /** Null when no change is large enough for a sentence. */
  readonly headline: string | null;
  readonly sentences: readonly WhySentence[];
  /** The changes too small for a sentence, with their figures; empty if nothing changed. */
  readonly small: string;
}

/** Sentences at most, the biggest changes. */
export const MOST_SENTENCES = 5;
/** Clauses of the headline at most. */
const MOST_CLAUSES = 3;

/** Why the steering turns slower or quicker with the trail. */
const LONGER_ARM = 'The lever that keeps it straight is longer.';
const SHORTER_ARM = 'The lever that keeps it straight is shorter.';
/**
 * Trail lost at once of which Why speaks, mm: five times what is noticed. Common practice, no source. Whether the bike
 * may be ridden is for the warnings alone to say, so this orders nothing against them.
 */
const MUCH_TRAIL = 10;
const MUCH_LIGHTER = 'Much less trail: clear every warning first, then ride gently.';
/** Where no trail is left. */
export const NO_TRAIL = 'the steering does not centre itself, do not ride like this';
/** The same as a headline. */
const NO_TRAIL_HEADLINE = 'The steering does not centre itself. Do not ride like this.';

interface Change {
  readonly split: AdjusterSplit;
  readonly verbs: Verbs;
  /** Of the numbers as they are written, so that a person who subtracts them finds it. */
  readonly steps: number;
  readonly weight: number;
}

/** The changes that are written otherwise than zero, the one that a rider notices most first. */
function changesWritten(splits: readonly AdjusterSplit[], style: NumberStyle): Change[] {
  return splits
    .map((split): Change => {
      const verbs = VERBS[split.key];
      const { quantity } = verbs;
      const { fromCore } = QUANTITIES[quantity];
      const noticed = noticedOf(EXPLAINED[split.key]);
      const steps =
        shownSteps(fromCore(split.after), quantity, style) -
        shownSteps(fromCore(split.before), quantity, style);
      return { split, verbs, steps, weight: Math.abs(metricOfSteps(steps, quantity, style)) / noticed };
    })
    .filter(({ steps }) => steps !== 0)
    .sort((a, b) => b.weight - a.weight);
}

/** The changes that sentences name. */
function changesTold(splits: readonly AdjusterSplit[], style: NumberStyle): Change[] {
  const told = changesWritten(splits, style).filter(({ split, verbs: { quantity } }) => {
    const { fromCore } = QUANTITIES[quantity];
    return !isLess(fromCore(split.after) - fromCore(split.before), quantity);
  });
  const first = told.slice(0, MOST_SENTENCES);
  // The steering is felt first, and Why speaks of it by its trail: it never drops off the end.
  const trail = told.find(({ split }) => split.key === 'trail');
  return trail === undefined || trail.weight < 1 || first.includes(trail)
    ? first
    : [...first.slice(0, -1), trail];
}

/** As many sentences as a page has room for; the one about trail never drops off the end. */
export function firstSentences(all: readonly WhySentence[], most: number): readonly WhySentence[] {
  const first = all.slice(0, most);
  const trail = all.find(({ reading }) => reading === 'trail');
  return trail === undefined || most === 0 || first.includes(trail) ? first : [...first.slice(0, -1), trail];
}

/** "Too small for a gauge or a rider to notice: rake −0.04°, trail −0.2 mm." */
function smallWords(splits: readonly AdjusterSplit[], style: NumberStyle): string {
  const changes = changesWritten(splits, style).slice(0, MOST_CLAUSES);
  if (changes.length === 0) return '';
  const written = changes.map(({ split, verbs: { quantity }, steps }) => {
    const { label } = EXPLAINED[split.key];
    return `${label.toLowerCase()} ${writeChange(metricOfSteps(steps, quantity, style), quantity, style).text}`;
  });
  return `Too small for a gauge or a rider to notice: ${written.join(', ')}.`;
}

/** What a change did, in lay words and then with figures and causes. `explained` says what the springs had to do with it. */
export function whyStory(
  splits: readonly AdjusterSplit[],
  explained: Why,
  drive: DriveNoun,
  style: NumberStyle,
): WhyStory {
  const changes = changesTold(splits, style);
  if (changes.length === 0) return { headline: null, sentences: [], small: smallWords(splits, style) };
  const topics = new Map<string, string>();
  const seat = changes.find(({ split }) => split.key === 'seatHeight')?.steps ?? 0;
  for (const { split, verbs, steps, weight } of changes) {
    // A seat that rose while its end went deeper reads as two opposites; the sentence below says what it is.
    if ((split.key === 'rearTravel' || split.key === 'frontTravel') && steps * seat > 0) continue;
    // Of the steering trail speaks, where a rider notices it: it is what the hands feel.
    if (!topics.has(verbs.topic) || (split.key === 'trail' && weight >= 1))
      topics.set(verbs.topic, wordOf(verbs.clause, split, steps));
  }
  const beyond = changes.find(({ split }) => isBeyond(split));
  const clauses = listAll([...topics.values()].slice(0, MOST_CLAUSES));
  const grave = splits.some(hasNoTrail)
    ? NO_TRAIL_HEADLINE
    : beyond && `${EXPLAINED[beyond.split.key].label}: ${BEYOND_USUAL}. Check the figures.`;
  const only = onlyCause(changes, drive, style);
  const trail = splits.find(({ key }) => key === 'trail');
  const lighter = trail !== undefined && trail.before - trail.after >= MUCH_TRAIL ? ` ${MUCH_LIGHTER}` : '';
  return {
    headline: grave ?? `${capital(clauses)}.${only === null ? '' : ` All from ${only}.`}${lighter}`,
    sentences: changes.map((change) => ({
      reading: change.split.key,
      text: changeSentence(change, explained, only === null || grave ? drive : null, style),
    })),
    small: '',
  };
}

/** How large a change must be for Why, where the others are, and from which change on a feel is named. */
export function leastToldWords(style: NumberStyle): string {
  const least = [
    writeShort(QUANTITIES.angle.leastTold, 'angle', style),
    writeNumber(QUANTITIES.length.leastTold, 'length', style).text,
    '1\u00a0point of a percentage',
  ];
  return `At most ${MOST_SENTENCES} changes are shown, those a rider notices most. Changes below ${least[0]}, ${least[1]} or ${least[2]} are in Readings only. ${feltFrom(style)}`;
}

/** "Riders notice about 2.0 mm of trail or 0.25° of rake; up to twice that Why says “slightly”." */
function feltFrom(style: NumberStyle): string {
  const [trail, rake] = [EXPLAINED.trail, EXPLAINED.rake].map(
    (reading) =>
      `${writeNumber(noticedOf(reading), reading.quantity, style).text} of ${reading.label.toLowerCase()}`,
  );
  return `Riders notice about ${trail} or ${rake}; up to twice that it is called slight.`;
}

/** `drive` names the causes; null leaves them out, where the headline has said it. */
function changeSentence(
  { split, verbs, steps, weight }: Change,
  explained: Why,
  drive: DriveNoun | null,
  style: NumberStyle,
): string {
  const { quantity } = verbs;
  const because =
    // Below what a rider notices the figure says it all.
    split.key === 'trail' && weight >= 1 && split.before > 0 && split.after > 0
      ? ` ${steps > 0 ? LONGER_ARM : SHORTER_ARM}`
      : '';
  const change = writeChange(metricOfSteps(steps, quantity, style), quantity, style).text;
  const clause = clauseOf(split, verbs, steps, explained, style);
  const causes = drive === null ? '' : causesTold(split, quantity, drive, style);
  const { label } = EXPLAINED[split.key];
  return `${label} ${change}, ${clause}${causes}.${because}`;
}

function isBeyond({ key, after }: Pick<AdjusterSplit, 'key' | 'after'>): boolean {
  const reading = EXPLAINED[key];
  return isBeyondUsual(reading, QUANTITIES[reading.quantity].fromCore(after));
}

function hasNoTrail({ key, after }: AdjusterSplit): boolean {
  return key === 'trail' && after <= 0;
}

function clauseOf(
  split: AdjusterSplit,
  verbs: Verbs,
  steps: number,
  { front, rear }: Why,
  style: NumberStyle,
): string {
  const { key } = split;
  if (hasNoTrail(split)) return NO_TRAIL;
  if (isBeyond(split)) return BEYOND_USUAL;
  const clause = wordOf(verbs.short, split, steps);
  const end = key === 'frontTravel' ? front : key === 'rearTravel' ? rear : null;
  const springs = end === null ? [] : springCauses(end, style);
  return springs.length === 0 ? clause : `${clause}, with ${listAll(springs)}`;
}

/**
 * The causes whose shares are written otherwise than zero, the biggest first. Each share is the difference of the figures
 * written before and after it, as the steps of the work show them, so they add up to the change as it is written.
 */
function causesShown(
  { before, after, parts }: AdjusterSplit,
  quantity: QuantityKey,
  drive: DriveNoun,
  style: NumberStyle,
): { readonly cause: string; readonly share: number }[] {
  const { fromCore } = QUANTITIES[quantity];
  let reached = before;
  const shares = parts.map(({ amount }, i) => {
    const from = reached;
    reached = i === parts.length - 1 ? after : from + amount;
    return shownSteps(fromCore(reached), quantity, style) - shownSteps(fromCore(from), quantity, style);
  });
  return parts
    .map(({ cause }, i) => ({ cause: causeName(cause, drive), share: shares[i] }))
    .filter(({ share }) => share !== 0)
    .sort((a, b) => Math.abs(b.share) - Math.abs(a.share));
}

/** The one cause of all these changes; null where there are several. */
function onlyCause(changes: readonly Change[], drive: DriveNoun, style: NumberStyle): string | null {
  const [first, ...others] = changes.map(({ split, verbs: { quantity } }) => {
    const told = causesShown(split, quantity, drive, style);
    return told.length === 1 ? told[0].cause : null;
  });
  return others.every((cause) => cause === first) ? first : null;
}

/** ": −0.97° from the shock, −0.19° from the fork", or ", all from the shock". */
function causesTold(
  split: AdjusterSplit,
  quantity: QuantityKey,
  drive: DriveNoun,
  style: NumberStyle,
): string {
  const told = causesShown(split, quantity, drive, style);
  if (told.length === 0) return '';
  if (told.length === 1) return `, all from ${told[0].cause}`;
  const written = told.map(
    ({ cause, share }) =>
      `${writeChange(metricOfSteps(share, quantity, style), quantity, style).text} from ${cause}`,
  );
  return `: ${written.join(', ')}`;
}

/** What a cause is called behind "from". */
function causeName(cause: AdjusterCause, drive: DriveNoun): string {
  if (cause === 'bike') return 'the bike’s own figures';
  const { label, part } = adjusterOf(cause);
  const name = nameDrive(part ?? label, drive);
  return part === undefined ? name.charAt(0).toLowerCase() + name.slice(1) : name;
}

/** What has changed of springs and load, by visible amounts, toward where the end has gone. */
export function springCauses(
  { travel, rate, preload, push, leverage }: EndChange,
  style: NumberStyle,
): string[] {
  const causes: readonly { deeper: number; quantity: QuantityKey; words: readonly [string, string] }[] = [
    { deeper: -rate, quantity: 'rate', words: ['softer springing', 'stiffer springing'] },
    { deeper: -preload, quantity: 'length', words: ['less preload', 'more preload'] },
    { deeper: push, quantity: 'force', words: ['more load on it', 'less load on it'] },
  ];
  const told = causes
    .filter(({ deeper, quantity }) => deeper * travel > 0 && isNoticed(deeper, quantity, style))
    .map(({ words: [whenDeeper, whenHigher] }) => (travel > 0 ? whenDeeper : whenHigher));
  if (told.length > 0 || leverage * travel <= 0 || roundsToNothing(leverage, 'ratio', style)) return told;
  // The leverage follows the travel, so it is the cause only where nothing else is.
  return [`${leverage > 0 ? 'more' : 'less'} leverage of the wheel on the shock`];
}

/** Whether a change of a spring or a load is written, and of a load large enough to set the bike lower. */
function isNoticed(change: number, quantity: QuantityKey, style: NumberStyle): boolean {
  if (roundsToNothing(change, quantity, style)) return false;
  return quantity !== 'force' || Math.abs(change) >= QUANTITIES.force.noticed;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
