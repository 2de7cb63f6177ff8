/** The rows of a printed page: readings before and after, the steps of the work, and every adjuster as it is set. */
import { ADJUSTERS, adjusterOf } from '../../core/adjusters/all-adjusters.ts';
import { namedAdjusters, type NamedAdjuster } from '../../core/adjusters/named-adjusters.ts';
import type { AdjusterKey, Setup } from '../../core/adjusters/setup.ts';
import { doesApply } from '../../core/adjusters/does-apply.ts';
import type { WalkStep } from '../../core/effects/walk.ts';
import { SPRING_DOUBT } from '../../core/measure/spread/spring-doubt.ts';
import type { Bike } from '../../core/parts/bike.ts';
import type { DriveKind } from '../../core/parts/drive-kind.ts';
import { wordTold } from '../change/ways-told.ts';
import { metricReading } from '../../core/readings/metric-reading.ts';
import type { Reading } from '../../core/readings/reading.ts';
import type { Sag } from '../../core/riding/ride-changes.ts';
import type { StandingBike } from '../../core/riding/stand-bike.ts';
import type { QuantityKey } from '../../core/units/all-quantities.ts';
import { shownDifference, writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { asideBetween, asideText } from '../change/aside-text.ts';
import { differenceOf } from '../change/difference-text.ts';
import { COVERAGE, writePlusMinus } from '../plus-minus.ts';
import { settingDifferences, settingWords, type SettingDifference } from '../change/setup-difference.ts';

/** A reading on paper, before and after. */
export interface ReadingPrinted {
  readonly key: string;
  readonly label: string;
  readonly before: string;
  readonly now: string;
  /** Signed, with the word for it; "same" where the figures written are equal; empty where one is missing. */
  readonly change: string;
}

const NO_NUMBER = '–';

/** What stands below readings with a ±. */
export const PAPER_PLUS_MINUS = {
  readings: `±: 95 %, by what was measured on this bike; how far springs move it counts as ±${Math.round(100 * COVERAGE * SPRING_DOUBT)} %.`,
  changes: 'A change is surer than the figures: what was measured wrong is wrong in both.',
} as const;

/** What a bike reads, as it is written, with its ± where that is known; a dash where it does not stand or has no number. */
export function writeReading(
  reading: Reading,
  on: StandingBike | null,
  style: NumberStyle,
  withPlusMinus: WithPlusMinus | null = null,
): string {
  const value = on === null ? null : metricReading(reading, on);
  if (typeof value !== 'number') return NO_NUMBER;
  return withPlusMinus?.(reading, value)?.value ?? writeNumber(value, reading.quantity, style).text;
}

/** What a bike read when its sheet was kept, from the metric numbers of one ride state, with its ± where `u` has its standard deviation; a dash where none was kept. */
export function writeKept(
  { key, quantity }: Reading,
  kept: Readonly<Record<string, number>> | undefined,
  style: NumberStyle,
  u?: Readonly<Record<string, number>>,
): string {
  const value = kept?.[key];
  const own = u?.[key];
  if (value === undefined) return NO_NUMBER;
  return own === undefined
    ? writeNumber(value, quantity, style).text
    : writePlusMinus(value, own, quantity, style);
}

/** A reading of a measured bike and its change, each with its ±, in words; null where nobody measured the bike. */
export type WithPlusMinus = (
  reading: Reading,
  value: number,
) => { readonly value: string; readonly error: string | null; readonly change: string } | null;

/** Readings before and after; the change is that of the figures as they are written. */
export function readingsPrinted(
  readings: readonly Reading[],
  before: StandingBike | null,
  now: StandingBike | null,
  style: NumberStyle,
  withPlusMinus: WithPlusMinus | null = null,
): ReadingPrinted[] {
  return readings.map((reading) => {
    const value = now === null ? null : metricReading(reading, now);
    const spread = typeof value === 'number' ? (withPlusMinus?.(reading, value) ?? null) : null;
    return {
      key: reading.key,
      label: reading.label,
      before: writeReading(reading, before, style),
      now: spread?.value ?? writeReading(reading, now, style),
      change: writeReadingChange(reading, before, now, style) + (spread?.change ?? ''),
    };
  });
}

/** The ± of readings in one line, for a table whose figures go without; null where none of them is measured. */
export function plusMinusLine(
  readings: readonly Reading[],
  now: StandingBike | null,
  withPlusMinus: WithPlusMinus | null,
): string | null {
  const errors = readings.flatMap((reading) => {
    const value = now === null ? null : metricReading(reading, now);
    const error = typeof value === 'number' ? (withPlusMinus?.(reading, value)?.error ?? null) : null;
    return error === null ? [] : [`${reading.label.toLowerCase()} ${error}`];
  });
  return errors.length === 0 ? null : `These figures are sure to: ${errors.join(', ')}.`;
}

/** The change of a reading as it is written, signed and with its word where it is large enough for one; "same" for equal figures, empty where one is missing. */
export function writeReadingChange(
  reading: Reading,
  before: StandingBike | null,
  now: StandingBike | null,
  style: NumberStyle,
): string {
  if (before === null || now === null) return '';
  const [was, is] = [metricReading(reading, before), metricReading(reading, now)];
  if (typeof was !== 'number' || typeof is !== 'number') return '';
  const { direction, arrow, amount } = differenceOf(is, was, reading.quantity, style);
  if (direction === 'same') return 'same';
  return `${arrow} ${amount}${wordTold(reading, was, is)}`;
}

/** One step of the work, as a mechanic reads it at the bench. */
export interface StepPrinted {
  /** Such as "Shock length 0.0 mm → 3.0 mm (1.5 turns longer)"; several where they belong together. */
  readonly turns: readonly string[];
  /** What the bike reads then, in the order of the readings asked for. */
  readonly readings: readonly string[];
}

/** The steps of a walk in words. */
export function stepsPrinted(
  steps: readonly WalkStep[],
  from: Setup,
  bike: Bike,
  readings: readonly Reading[],
  style: NumberStyle,
): StepPrinted[] {
  const { kind } = bike.drive;
  return steps.map(({ turned, setup, on }, place) => {
    const before = place === 0 ? from : steps[place - 1].setup;
    const turns = settingDifferences(before, setup, kind, style)
      .filter(({ key }) => turned.includes(key))
      .map(
        ({ key, label, from: was, to }) =>
          `${label} ${was} → ${to}${counted(key, before, setup, bike, style)}`,
      );
    return { turns, readings: readings.map((reading) => writeReading(reading, on, style)) };
  });
}

/** The workshop's second way of counting a turn, with the way it goes, in brackets; empty where there is none. */
function counted(key: AdjusterKey, before: Setup, after: Setup, bike: Bike, style: NumberStyle): string {
  const adjuster = ADJUSTERS.find((each) => each.key === key);
  if (adjuster === undefined || (adjuster.holds !== 'number' && adjuster.holds !== 'wholeNumber')) return '';
  const at = (setup: Setup) => adjuster.aside?.(setup[adjuster.key], bike) ?? null;
  const between = asideBetween(at(after), at(before));
  const text = between === null ? '' : asideText(between, style);
  if (between === null || text === '') return '';
  return ` (${text} ${between.amount > 0 ? adjuster.more : adjuster.less})`;
}

/** An adjuster on paper as it is set. */
export interface AdjusterPrinted {
  readonly key: AdjusterKey;
  readonly label: string;
  readonly value: string;
}

/**
 * Every adjuster of these kinds that this bike has, in the order of the page; what changes nothing, such as the height of
 * a passenger of no weight, is left out. Turns of a thread stand behind the figure; both count from the adjuster's zero.
 */
export function adjustersPrinted(
  kinds: readonly NamedAdjuster['kind'][],
  bike: Bike,
  setup: Setup,
  style: NumberStyle,
): AdjusterPrinted[] {
  return namedAdjusters(bike.drive.kind)
    .filter((each) => kinds.includes(each.kind) && doesApply(each, bike, setup) && !isIdle(each, setup))
    .map((adjuster) => ({
      key: adjuster.key,
      label: adjuster.label,
      value: settingWords(adjuster, setup, style) + turnsFromZero(adjuster, bike, setup, style),
    }));
}

/** Whether an adjuster changes nothing, because the one that it needs is at zero. */
function isIdle(adjuster: NamedAdjuster, setup: Setup): boolean {
  return adjuster.holds === 'number' && adjuster.needs !== undefined && setup[adjuster.needs] === 0;
}

function turnsFromZero(adjuster: NamedAdjuster, bike: Bike, setup: Setup, style: NumberStyle): string {
  if (adjuster.holds !== 'number') return '';
  const aside = adjuster.aside?.(setup[adjuster.key], bike) ?? null;
  if (aside?.counted !== 'turns') return '';
  const text = asideText(aside, style);
  return text === '' ? '' : ` (${aside.amount < 0 ? '\u2212' : ''}${text})`;
}

/** How an adjuster's figure is counted: from where, and which way is plus. */
export interface CountPrinted {
  readonly key: AdjusterKey;
  readonly label: string;
  readonly text: string;
  /** Whether zero is how the part came, and the figure goes both ways from there. */
  readonly isSigned: boolean;
}

/** A figure in one of these quantities is counted from nothing, as teeth are. */
const COUNTED_FROM: ReadonlySet<QuantityKey> = new Set<QuantityKey>(['length', 'angle', 'pressure', 'rate']);
/** A help text up to where its first sentence ends or goes into more. */
const FIRST_CLAUSE = /^[^.;:]+/;

/** How the figures of these adjusters are counted, as each one's help begins; none for counts, sizes and loads. Of a rate it says of how many springs it is. */
export function countsPrinted(keys: readonly AdjusterKey[], kind: DriveKind): CountPrinted[] {
  return namedAdjusters(kind).flatMap((adjuster): CountPrinted[] => {
    const { key, label, help } = adjuster;
    const isCounted = adjuster.holds === 'number' && COUNTED_FROM.has(adjuster.quantity);
    if (!keys.includes(key) || adjuster.kind !== 'part' || !isCounted) return [];
    const text = `${FIRST_CLAUSE.exec(help)?.[0] ?? help}.`;
    return [{ key, label, text, isSigned: text.includes('(+)') }];
  });
}

/** A sag on paper: what it is, and what the program has for it. */
export interface SagPrinted {
  readonly label: string;
  readonly computed: string;
}

/** Free and rider sag of both ends; a dash where the springs are not known. */
export function sagPrinted(sag: Sag | null, style: NumberStyle): SagPrinted[] {
  const row = (kind: 'free' | 'rider', end: 'front' | 'rear'): SagPrinted => ({
    label: `${end === 'front' ? 'Front' : 'Rear'} ${kind} sag`,
    computed: sag === null ? NO_NUMBER : writeNumber(sag[kind][end], 'length', style).text,
  });
  return [row('free', 'front'), row('free', 'rear'), row('rider', 'front'), row('rider', 'rear')];
}

/** What differs between two setups: parts that were turned, which is work, and load and riding, which is no work. */
export interface Differences {
  readonly work: readonly SettingDifference[];
  readonly loads: readonly SettingDifference[];
}

/** The differences of two setups, apart by whether they are work. */
export function differencesPrinted(from: Setup, to: Setup, bike: Bike, style: NumberStyle): Differences {
  const all = settingDifferences(from, to, bike.drive.kind, style);
  const isWork = ({ key }: SettingDifference): boolean => adjusterOf(key).kind === 'part';
  return { work: all.filter(isWork), loads: all.filter((each) => !isWork(each)) };
}

/**
 * What was done, as a customer understands it: "Shock length: 7.0 mm longer", "Fork tubes above clamp [yoke]: tubes up 5.0 mm",
 * "Rear sprocket: 47 teeth instead of 45 teeth".
 */
export function doneWords(
  { key, label, from, to }: SettingDifference,
  { before, after }: { readonly before: Setup; readonly after: Setup },
  style: NumberStyle,
): string {
  const adjuster = ADJUSTERS.find((each) => each.key === key);
  if (adjuster?.holds !== 'number') return `${label}: ${to} instead of ${from}`;
  const { quantity, more, less, figure } = adjuster;
  const change = shownDifference(before[adjuster.key], after[adjuster.key], quantity, style);
  if (change === 0) return `${label}: ${to} instead of ${from}`;
  const amount = writeNumber(Math.abs(change), quantity, style).text;
  const word = change > 0 ? more : less;
  return figure === undefined ? `${label}: ${amount} ${word}` : `${label}: ${word} ${amount}`;
}

/** `to` with its parts still as in `from`: where the work begins, under the load of now. */
export function beforeTheWork(from: Setup, to: Setup): Setup {
  const parts = ADJUSTERS.filter(({ kind }) => kind === 'part').map(({ key }) => [key, from[key]]);
  return { ...to, ...(Object.fromEntries(parts) as Partial<Setup>) };
}
