/** What is said when the bike does not stand as it is asked to: what is in the way, and what to change. */
import type { DialKey } from '../core/chassis/setup.ts';
import type { DriveKind } from '../core/drive/drive-kind.ts';
import { driveWords } from '../core/drive/drive-words.ts';
import { dialOf } from '../core/springs/dials.ts';
import { noStandWords, type NoStand } from '../core/springs/no-stand.ts';
import { RIDE_STATE_WORDS } from '../core/springs/ride-state.ts';
import type { NumberStyle } from '../core/units/number-style.ts';

/** `dial` is the one whose value is in the way; a spring rate that nobody has given yet is no mistake, and is asked for. */
export function standAdvice(
  problem: NoStand,
  dial: DialKey | null,
  kind: DriveKind,
  style: NumberStyle,
): string {
  if (problem.reason !== 'rateNotAboveZero' || dial === null)
    return driveWords(noStandWords(problem, style), kind);
  const { label } = dialOf(dial);
  return `${label} is not known yet. Set that dial to the rate printed on the spring; until then the bike is read ${RIDE_STATE_WORDS.toppedOut.toLowerCase()} and ${RIDE_STATE_WORDS.asDialled.toLowerCase()} only.`;
}

/** What the way to a dial is called, such as "Go to Gas". */
export function wayToDial(dial: DialKey): string {
  return `Go to ${dialOf(dial).label}`;
}
