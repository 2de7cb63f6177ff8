/** What is still open before the bike goes out: why it cannot stand, what a rider must be warned of, and notes not made. */
import type { WarningWords } from './warning-words.ts';

export interface OpenPoints {
  /** What is open, one sentence each, the gravest first. */
  readonly points: readonly string[];
  /** "2 points are open", "No warnings here": the line above them. */
  readonly heading: string;
}

/**
 * `advice` says why the bike cannot stand and is null where it does; `notes` are the labels of a setup sheet's notes
 * that nobody made.
 */
export function openPoints(
  advice: string | null,
  warnings: readonly WarningWords[],
  notes: readonly string[] = [],
): OpenPoints {
  const points = [
    ...(advice === null ? [] : [advice]),
    ...warnings.map(({ lead, text }) => `${lead}. ${text}`),
    ...(notes.length === 0 ? [] : [`Not noted yet: ${notes.join(', ')}.`]),
  ];
  return { points, heading: headingOf(points.length) };
}

function headingOf(count: number): string {
  if (count === 0) return 'No warnings here. Check the bike itself before it goes out.';
  return `${count === 1 ? '1 point is' : `${count} points are`} open before the bike goes out.`;
}
