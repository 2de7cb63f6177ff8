/** Whether a rear suspension stiffens through its travel, in per cent and in words. */

export type ProgressionWord =
  'progressive' | 'nearlyStraight' | 'falling' | 'risingThenFalling' | 'fallingThenRising';

export interface Progression {
  /** Motion ratio at the end of the travel over that hanging, less one, per cent: above zero is progressive. */
  readonly ratioRisePercent: number;
  /** The same as workshops quote it: how much the leverage falls from hanging to the end, per cent of it hanging. */
  readonly leverageFallPercent: number;
  /** Highest over lowest motion ratio anywhere, less one, per cent. */
  readonly spreadPercent: number;
  readonly word: ProgressionWord;
}

/** A ratio that stays within this of itself through the whole travel is nearly straight, per cent. */
const NEARLY_STRAIGHT_PERCENT = 4;
/** A hump or a dip counts when it stands out from both ends by this, as a part of the whole spread. */
const STANDS_OUT = 0.2;

/**
 * Judges motion ratios in order from hanging to the end of the travel, all above zero. A hump that stands well out
 * from both ends is rising then falling, a dip the reverse. Null with fewer than two ratios or one not above zero.
 */
export function progression(ratios: readonly number[]): Progression | null {
  if (ratios.length < 2 || !ratios.every((ratio) => ratio > 0 && Number.isFinite(ratio))) return null;
  const first = ratios[0];
  const last = ratios[ratios.length - 1];
  const most = Math.max(...ratios);
  const least = Math.min(...ratios);
  const spread = most - least;
  const spreadPercent = 100 * (most / least - 1);
  const word = (): ProgressionWord => {
    if (spreadPercent < NEARLY_STRAIGHT_PERCENT) return 'nearlyStraight';
    const hump = most - Math.max(first, last);
    const dip = Math.min(first, last) - least;
    if (Math.max(hump, dip) > STANDS_OUT * spread)
      return hump >= dip ? 'risingThenFalling' : 'fallingThenRising';
    return last > first ? 'progressive' : 'falling';
  };
  return {
    ratioRisePercent: 100 * (last / first - 1),
    leverageFallPercent: 100 * (1 - first / last),
    spreadPercent,
    word: word(),
  };
}

/** The words for a person, a few each. */
export const PROGRESSION_WORDS: Readonly<Record<ProgressionWord, string>> = {
  progressive: 'progressive: stiffens toward the end',
  nearlyStraight: 'nearly straight',
  falling: 'falling: softens toward the end',
  risingThenFalling: 'rising, then falling',
  fallingThenRising: 'falling, then rising',
};
