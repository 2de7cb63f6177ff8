/** What the change of an explained reading is to a rider, as Why says it: a lay clause, and a word behind the figure. */
import { EXPLAINED, type AdjusterSplit, type ExplainedKey } from '../../core/effects/split-by-adjuster.ts';
import { waysBySize, wordBySize, type ChangeWords } from '../../core/readings/change-words.ts';
import { QUANTITIES } from '../../core/units/all-quantities.ts';
import type { ToldQuantity } from '../../core/units/least-told.ts';
import { noticedOf } from '../change/ways-told.ts';

export interface Verbs {
  readonly quantity: ToldQuantity;
  /** What is the same to a rider comes into the headline once. */
  readonly topic: string;
  /** A lay clause for the headline. */
  readonly clause: ChangeWords;
  /** What that is, at the end of a sentence with figures. */
  readonly short: ChangeWords;
}

export const VERBS: Readonly<Record<ExplainedKey, Verbs>> = {
  rake: {
    quantity: 'angle',
    topic: 'steering',
    clause: {
      more: 'the steering turns slower',
      less: 'the steering turns quicker',
      felt: {
        from: noticedOf(EXPLAINED.rake),
        gauge: {
          more: 'the steering turns hardly any slower',
          less: 'the steering turns hardly any quicker',
        },
      },
    },
    short: { more: 'slacker axis', less: 'steeper axis' },
  },
  trail: {
    quantity: 'length',
    topic: 'steering',
    clause: {
      more: 'the steering is steadier',
      less: 'the steering turns quicker',
      felt: {
        from: noticedOf(EXPLAINED.trail),
        gauge: {
          more: 'the steering is hardly any steadier',
          less: 'the steering turns hardly any quicker',
        },
      },
      acrossZero: { more: 'the steering centres itself now', less: 'the steering does not centre itself' },
    },
    short: {
      more: 'steadier steering',
      less: 'quicker steering',
      felt: EXPLAINED.trail.felt,
      acrossZero: { more: 'the steering centres itself now', less: 'the steering does not centre itself' },
    },
  },
  wheelbase: {
    quantity: 'length',
    topic: 'wheelbase',
    clause: { more: 'the wheelbase is longer', less: 'the wheelbase is shorter' },
    short: { more: 'longer', less: 'shorter' },
  },
  seatHeight: {
    quantity: 'length',
    topic: 'seat',
    clause: { more: 'the seat is higher', less: 'the seat is lower' },
    short: { more: 'higher', less: 'lower' },
  },
  swingarmAngle: {
    quantity: 'angle',
    topic: 'swingarm',
    clause: {
      more: 'the swingarm is steeper',
      less: 'the swingarm is flatter',
      belowZero: { more: 'the axle rises less above the pivot', less: 'the axle rises more above the pivot' },
      acrossZero: { more: 'the axle is now below the pivot', less: 'the axle is now above the pivot' },
    },
    short: {
      more: 'steeper',
      less: 'flatter',
      belowZero: { more: 'axle rises less above the pivot', less: 'axle rises more above the pivot' },
      acrossZero: { more: 'axle now below the pivot', less: 'axle now above the pivot' },
    },
  },
  antiSquat: {
    quantity: 'percent',
    topic: 'gas',
    clause: {
      more: 'the drive holds the rear up more on the gas',
      less: 'the drive holds the rear up less on the gas',
      felt: EXPLAINED.antiSquat.felt,
      belowZero: {
        more: 'the drive pulls the rear down less on the gas',
        less: 'the drive pulls the rear down more on the gas',
      },
    },
    short: {
      more: 'holds the rear up more on the gas',
      less: 'holds the rear up less on the gas',
      felt: EXPLAINED.antiSquat.felt,
      belowZero: { more: 'pulls the rear down less on the gas', less: 'pulls the rear down more on the gas' },
    },
  },
  finalDriveRatio: {
    quantity: 'ratio',
    topic: 'gearing',
    clause: { more: 'the gearing is shorter', less: 'the gearing is taller' },
    short: { more: 'shorter', less: 'taller' },
  },
  frontTravel: {
    quantity: 'length',
    topic: 'fork',
    clause: { more: 'the fork uses more of its travel', less: 'the fork uses less of its travel' },
    short: { more: 'further from topped out', less: 'nearer to topped out' },
  },
  rearTravel: {
    quantity: 'length',
    topic: 'rear',
    clause: { more: 'the rear uses more of its travel', less: 'the rear uses less of its travel' },
    short: { more: 'further from topped out', less: 'nearer to topped out' },
  },
};

/** What the change of a reading is to a rider, as the headline says it: no capital, no full stop. */
export const layClause = (
  key: ExplainedKey,
  { before, after }: Pick<AdjusterSplit, 'before' | 'after'>,
): string => {
  const { fromCore } = QUANTITIES[VERBS[key].quantity];
  return wordBySize(VERBS[key].clause, fromCore(before), fromCore(after));
};

/** The word for a change whose figures differ by `steps`. */
export function wordOf(words: ChangeWords, { key, before, after }: AdjusterSplit, steps: number): string {
  const { fromCore } = QUANTITIES[VERBS[key].quantity];
  const { more, less } = waysBySize(words, fromCore(before), fromCore(after));
  return steps > 0 ? more : less;
}
