/** What changed most between two sets of readings, in the order that a rider feels. */
import type { Absent } from '../../core/readings/absent.ts';
import type { Reading } from '../../core/readings/reading.ts';
import { isLess } from '../../core/units/least-told.ts';
import { noticedOf } from './ways-told.ts';
import { shownSteps, type NumberStyle } from '../../core/units/number-style.ts';

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
 * The readings whose figures changed. What a rider feels at the bar comes first; in each part, what changed by most of
 * the steps that a rider notices.
 */
export function mostChanged(readings: readonly Compared[], style: NumberStyle): readonly ChangedReading[] {
  const steps = ({ reading, before, now }: ChangedReading): number =>
    Math.abs(now - before) / noticedOf(reading);
  /** Trail before the rest of the steering as soon as a sentence names it: Why speaks of it then. */
  const steering = (changed: ChangedReading): number => {
    const { reading, before, now } = changed;
    if (reading.key === 'trail' && !isLess(now - before, 'length')) return 2;
    return reading.group === 'steering' && steps(changed) >= 1 ? 1 : 0;
  };
  return readings
    .flatMap(({ reading, before, now }) =>
      typeof before === 'number' &&
      typeof now === 'number' &&
      shownSteps(before, reading.quantity, style) !== shownSteps(now, reading.quantity, style)
        ? [{ reading, before, now }]
        : [],
    )
    .sort((a, b) => steering(b) - steering(a) || steps(b) - steps(a));
}
