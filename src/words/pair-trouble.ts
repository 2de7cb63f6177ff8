/** Tells a person why a pair of sprockets cannot be ridden as it is, shortly for a table and whole for who asks. */
import type { NoRunSlack } from '../core/standing/axle-in-slot.ts';
import { axleMisfitWords } from './axle-misfit-words.ts';
import { noStandWords } from './no-stand-words.ts';
import { pairObstacleWords } from './pair-obstacle-words.ts';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import type { SprocketPair } from '../core/effects/sprocket-pairs.ts';

/** What is in the way of a pair: a few words, and the sentences with the nearest that works. */
export interface PairTrouble {
  readonly short: string;
  readonly sentences: readonly string[];
}

/** The trouble with a pair, in the user's own units; null for one that can be fitted and stands. */
export function pairTrouble(pair: SprocketPair, style: NumberStyle): PairTrouble | null {
  const shorts: string[] = [];
  const sentences: string[] = [];
  const { misfit, obstacle } = pair;
  if (misfit !== null) {
    shorts.push(misfitShort(pair, style));
    sentences.push(
      isNoSlack(misfit)
        ? axleMisfitWords({ ...misfit, links: 0, axlePosition: null, nearest: [], slot: 0 }, style)
        : noStandWords(misfit, style),
    );
  } else if (pair.links === null) {
    shorts.push('no chain');
    sentences.push('No chain closes around these sprockets.');
  }
  if (obstacle !== null) {
    shorts.push(obstacle.reason === 'frontBelowShaft' ? 'too small for the shaft' : 'reaches the pivot');
    sentences.push(pairObstacleWords(obstacle));
  }
  return sentences.length === 0 ? null : { short: shorts.join(', '), sentences };
}

/** Whether no chain at all has the play asked for, so that none can be named. */
function isNoSlack(misfit: NonNullable<SprocketPair['misfit']>): misfit is NoRunSlack {
  return misfit.reason === 'slackImpossible' && !('nearest' in misfit);
}

function misfitShort({ misfit }: SprocketPair, style: NumberStyle): string {
  if (misfit === null || !('nearest' in misfit)) return 'does not stand';
  const { axlePosition, reason, slot } = misfit;
  const write = (mm: number): string => writeNumber(mm, 'length', style).text;
  if (reason === 'chainTooShort')
    return axlePosition === null
      ? 'chain too short to close'
      : `axle ${write(-axlePosition)} ahead of its slot`;
  if (reason === 'chainTooLong')
    return axlePosition === null ? 'chain too long' : `axle ${write(axlePosition - slot)} behind its slot`;
  return reason === 'linksImpossible' ? 'chain cannot be joined' : 'no place for the axle';
}
