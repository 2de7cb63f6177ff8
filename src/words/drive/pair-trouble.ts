/** Tells a person why a pair of sprockets cannot be ridden as it is, in a few words for a table, and in full. */
import type { DriveNoun } from '../../core/parts/drive-noun.ts';
import type { NoRunSlack } from '../../core/standing/axle-in-slot.ts';
import { axleMisfitWords } from '../trouble/axle-misfit-words.ts';
import { noStandWords } from '../trouble/no-stand-words.ts';
import { pairObstacleWords } from '../trouble/pair-obstacle-words.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import type { SprocketPair } from '../../core/effects/sprocket-pairs.ts';

/** What is in the way of a pair: a few words, and the sentences with the nearest that works. */
export interface PairTrouble {
  readonly short: string;
  readonly sentences: readonly string[];
}

/** The trouble with a pair, in the user's own units; null for one that can be fitted and stands. */
export function pairTrouble(pair: SprocketPair, drive: DriveNoun, style: NumberStyle): PairTrouble | null {
  const shorts: string[] = [];
  const sentences: string[] = [];
  const { misfit, obstacle } = pair;
  if (misfit !== null) {
    shorts.push(misfitShort(pair, drive, style));
    sentences.push(
      isNoSlack(misfit)
        ? axleMisfitWords({ ...misfit, links: 0, axlePosition: null, nearest: [], slot: 0 }, drive, style)
        : noStandWords(misfit, drive, style),
    );
  } else if (pair.links === null) {
    shorts.push(`no ${drive.loop}`);
    sentences.push(`No ${drive.loop} closes around these sprockets.`);
  }
  if (obstacle !== null) {
    shorts.push(obstacle.reason === 'frontBelowShaft' ? 'too small for the shaft' : 'reaches the pivot');
    sentences.push(pairObstacleWords(obstacle));
  }
  return sentences.length === 0 ? null : { short: shorts.join(', '), sentences };
}

/** Whether the lower run cannot have so much slack with any chain, so that no chain can be named. */
function isNoSlack(misfit: NonNullable<SprocketPair['misfit']>): misfit is NoRunSlack {
  return misfit.reason === 'slackImpossible' && !('nearest' in misfit);
}

function misfitShort({ misfit }: SprocketPair, { loop }: DriveNoun, style: NumberStyle): string {
  if (misfit === null || !('nearest' in misfit)) return 'does not stand';
  const { axlePosition, reason, slot } = misfit;
  const write = (mm: number): string => writeNumber(mm, 'length', style).text;
  if (reason === 'chainTooShort')
    return axlePosition === null
      ? `${loop} too short to close`
      : `axle ${write(-axlePosition)} ahead of its slot`;
  if (reason === 'chainTooLong')
    return axlePosition === null ? `${loop} too long` : `axle ${write(axlePosition - slot)} behind its slot`;
  return reason === 'linksImpossible' ? `${loop} cannot be joined` : 'no place for the axle';
}
