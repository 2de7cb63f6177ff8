/** What the change of an explained reading is to a rider, as Why says it: a lay clause, and a word behind the figure. */
import { EXPLAINED, type AdjusterSplit, type ExplainedKey } from '../../core/effects/split-by-adjuster.ts';
import { waysBySize, wordBySize, type ChangeWords, type Ways } from '../../core/readings/change-words.ts';
import { QUANTITIES, type QuantityKey } from '../../core/units/all-quantities.ts';
import { noticedOf } from '../change/ways-told.ts';

export interface Verbs {
  readonly quantity: QuantityKey;
  /** Of several clauses about one topic the headline has one. */
  readonly topic: string;
  /** A clause for the headline, in lay words. */
  readonly clause: ChangeWords;
  /** What that is, at the end of a sentence with figures. */
  readonly short: ChangeWords;
}

/** The same words with their subject in front. */
function saidOf(subject: string, { more, less, felt, belowZero }: ChangeWords): ChangeWords {
  const both = (ways: Ways): Ways => ({ more: `${subject} ${ways.more}`, less: `${subject} ${ways.less}` });
  return {
    ...both({ more, less }),
    ...(felt === undefined ? {} : { felt }),
    ...(belowZero === undefined ? {} : { belowZero: both(belowZero) }),
  };
}

const wordsOf = (subject: string, short: ChangeWords): Pick<Verbs, 'clause' | 'short'> => ({
  clause: saidOf(subject, short),
  short,
});

const CENTRES: Ways = {
  more: 'the steering centres itself now',
  less: 'the steering does not centre itself',
};
const FROM_TOPPED_OUT: Ways = { more: 'further from topped out', less: 'nearer to topped out' };

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
      acrossZero: CENTRES,
    },
    short: {
      more: 'steadier steering',
      less: 'quicker steering',
      felt: EXPLAINED.trail.felt,
      acrossZero: CENTRES,
    },
  },
  wheelbase: {
    quantity: 'length',
    topic: 'wheelbase',
    ...wordsOf('the wheelbase is', { more: 'longer', less: 'shorter' }),
  },
  seatHeight: {
    quantity: 'length',
    topic: 'seat',
    ...wordsOf('the seat is', { more: 'higher', less: 'lower' }),
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
    ...wordsOf('the drive', {
      more: 'holds the rear up more on the gas',
      less: 'holds the rear up less on the gas',
      felt: EXPLAINED.antiSquat.felt,
      belowZero: { more: 'pulls the rear down less on the gas', less: 'pulls the rear down more on the gas' },
    }),
  },
  finalDriveRatio: {
    quantity: 'ratio',
    topic: 'gearing',
    ...wordsOf('the gearing is', { more: 'shorter', less: 'taller' }),
  },
  frontTravel: {
    quantity: 'length',
    topic: 'fork',
    clause: { more: 'the fork uses more of its travel', less: 'the fork uses less of its travel' },
    short: FROM_TOPPED_OUT,
  },
  rearTravel: {
    quantity: 'length',
    topic: 'rear',
    clause: { more: 'the rear uses more of its travel', less: 'the rear uses less of its travel' },
    short: FROM_TOPPED_OUT,
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
