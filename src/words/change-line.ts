/** What changed most between two sets of readings, in an order that a rider feels and in one line. */
import type { Absent } from '../core/readings/absent.ts';
import { changeWord } from '../core/readings/change-words.ts';
import type { Reading } from '../core/readings/reading.ts';
import { QUANTITIES } from '../core/units/all-quantities.ts';
import { shownSteps, type NumberStyle } from '../core/units/number-style.ts';
import { differenceOf } from './difference-text.ts';

/** A reading before and now, metric. */
export interface Compared {
  readonly reading: Reading;
  readonly before: number | Absent | undefined;
  readonly now: number | Absent;
}

export interface ChangedReading {
  readonly reading: Reading;
  readonly before: number;
  readonly now: number;
}

/**
 * The readings whose figures changed. What a rider feels at the bar comes first; in each half, what changed by most of
 * the steps that a rider notices.
 */
export function mostChanged(readings: readonly Compared[], style: NumberStyle): readonly ChangedReading[] {
  const steps = ({ reading, before, now }: ChangedReading): number =>
    Math.abs(now - before) / QUANTITIES[reading.quantity].noticed;
  const isSteering = (changed: ChangedReading): number =>
    changed.reading.group === 'steering' && steps(changed) >= 1 ? 1 : 0;
  return readings
    .flatMap(({ reading, before, now }) =>
      typeof before === 'number' &&
      typeof now === 'number' &&
      shownSteps(before, reading.quantity, style) !== shownSteps(now, reading.quantity, style)
        ? [{ reading, before, now }]
        : [],
    )
    .sort((a, b) => isSteering(b) - isSteering(a) || steps(b) - steps(a));
}

/** "Trail −3.5 mm, quicker steering. Rake −0.58°." for what changed most; null where no figure changed. */
export function changeLine(
  readings: readonly Compared[],
  style: NumberStyle,
  count: number,
): { readonly first: string; readonly rest: string } | null {
  const [most, ...others] = mostChanged(readings, style).slice(0, count);
  if (most === undefined) return null;
  const amount = ({ reading, before, now }: ChangedReading): string =>
    `${reading.label} ${differenceOf(now, before, reading.quantity, style).amount}`;
  return {
    first: `${amount(most)}, ${changeWord(most.reading, most.before, most.now)}.`,
    rest: others.map((other) => `${amount(other)}.`).join(' '),
  };
}
