/** The share of each cause in what one step does to a reading: the shares add up to the change as it is written. */
import type { Split, Why } from '../../core/effects/why.ts';
import { READINGS } from '../../core/readings/all-readings.ts';
import { driveNoun } from '../../core/parts/drive-noun.ts';
import { QUANTITIES } from '../../core/units/all-quantities.ts';
import { metricOfSteps, writeChange, type NumberStyle } from '../../core/units/number-style.ts';
import { sharedSteps } from '../../core/units/shared-steps.ts';
import { exactSteps } from '../../core/units/least-told.ts';
import { RAKE_WORDS, SWINGARM_WORDS, TRAIL_WORDS, WHEELBASE_WORDS } from './why-mechanism.ts';

interface Amount {
  readonly cause: string;
  /** In the reading's core unit. */
  readonly amount: number;
}

/** Such as "rake −0.6 mm, offset −0.1 mm"; empty for a reading that is not split, and where nothing is written of it. */
export function causeShares(key: string, explained: Why, style: NumberStyle): string {
  const parts = amountsOf(key, explained);
  const reading = READINGS.find((each) => each.key === key);
  if (reading === undefined || parts.length === 0) return '';
  const { quantity } = reading;
  const { fromCore } = QUANTITIES[quantity];
  const exact = parts.map(({ amount }) => exactSteps(fromCore(amount), quantity, style));
  const total = Math.round(exact.reduce((sum, each) => sum + each, 0));
  return sharedSteps(exact, total)
    .map((share, i) => ({ share, cause: parts[i].cause }))
    .filter(({ share }) => share !== 0)
    .sort((a, b) => Math.abs(b.share) - Math.abs(a.share))
    .map(
      ({ share, cause }) =>
        `${cause} ${writeChange(metricOfSteps(share, quantity, style), quantity, style).text}`,
    )
    .join(', ');
}

function amountsOf(key: string, explained: Why): readonly Amount[] {
  switch (key) {
    case 'rake':
      return named(explained.rake, RAKE_WORDS);
    case 'trail':
      return named(explained.trail, TRAIL_WORDS);
    case 'wheelbase':
      return named(explained.wheelbase, WHEELBASE_WORDS);
    case 'swingarmAngle':
      return named(explained.swingarmAngle, SWINGARM_WORDS);
    case 'antiSquat': {
      const { swingarm, chain, torqueArm, drive } = explained;
      const run = torqueArm ? 'the torque arm' : `the ${driveNoun(drive).loop}`;
      return [...whole(swingarm, 'the swingarm'), ...whole(chain, run)];
    }
    default:
      return [];
  }
}

function named<Cause extends string>(
  { parts }: Split<Cause>,
  words: Readonly<Record<Cause, string>>,
): readonly Amount[] {
  return parts.map(({ cause, amount }) => ({ cause: words[cause], amount }));
}

/** A part of a reading that has its own reading, as one cause. */
function whole(split: Split<string> | null, cause: string): readonly Amount[] {
  return split === null ? [] : [{ cause, amount: split.after - split.before }];
}
