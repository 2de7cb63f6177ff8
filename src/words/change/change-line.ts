/** What changed most between two sets of readings, in one line. */
import { wordTold } from './ways-told.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { differenceOf } from './difference-text.ts';
import { mostChanged, type ChangedReading, type Compared } from './most-changed.ts';

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
    first: `${amount(most)}${wordTold(most.reading, most.before, most.now)}.`,
    rest: others.map((other) => `${amount(other)}.`).join(' '),
  };
}
