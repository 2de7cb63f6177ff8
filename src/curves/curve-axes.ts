/** What a reading can be drawn against: travel at either end or both, and every number adjuster, each with its range. */
import type { Bike } from '../core/parts/bike.ts';
import type { Setup } from '../core/adjusters/setup.ts';
import { ADJUSTERS, type NumberAdjuster } from '../core/adjusters/all-adjusters.ts';
import type { DriveKind } from '../core/parts/drive-kind.ts';
import { driveNoun, nameDrive, type DriveText } from '../core/parts/drive-noun.ts';
import { adjusterRange, type AdjusterRange } from '../core/standing/adjuster-range.ts';
import { rearTravelAsSet } from '../core/standing/rear-travel-as-set.ts';
import type { SweepAxis } from '../core/effects/sweep.ts';
import type { QuantityKey } from '../core/units/all-quantities.ts';

/** A bike with its adjusters set: how far it reaches ends the axes. */
export interface SetBike {
  readonly bike: Bike;
  readonly setup: Setup;
}

export interface CurveAxis {
  readonly key: string;
  readonly label: DriveText;
  readonly quantity: QuantityKey;
  readonly axis: (of: SetBike) => SweepAxis;
  /** Ends of the axis for a bike as set and one step along it, in the metric unit of the quantity. */
  readonly range: (of: SetBike) => AdjusterRange;
  /** Whether this bike has what is varied. */
  readonly applies: (bike: Bike) => boolean;
}

/** An axis with its label in the words of the drive of the bike whose curve is drawn. */
export interface NamedAxis extends CurveAxis {
  readonly label: string;
}

const TRAVEL_STEP = 0.5;
const rearRange = ({ bike, setup }: SetBike): AdjusterRange => ({
  least: 0,
  most: rearTravelAsSet(bike, setup),
  step: TRAVEL_STEP,
});
const always = (): boolean => true;

const TRAVEL: readonly CurveAxis[] = [
  {
    key: 'rearTravel',
    label: 'Rear travel',
    quantity: 'length',
    axis: () => ({ kind: 'travel', end: 'rear' }),
    range: rearRange,
    applies: always,
  },
  {
    key: 'frontTravel',
    label: 'Fork travel',
    quantity: 'length',
    axis: () => ({ kind: 'travel', end: 'front' }),
    range: ({ bike }) => ({ least: 0, most: bike.fork.travel, step: TRAVEL_STEP }),
    applies: always,
  },
  {
    key: 'bothTravels',
    label: 'Rear travel, the fork with it',
    quantity: 'length',
    axis: ({ bike, setup }) => ({
      kind: 'travel',
      end: 'both',
      frontPerRear: bike.fork.travel / Math.max(1, rearTravelAsSet(bike, setup)),
    }),
    range: rearRange,
    applies: always,
  },
];

/** The adjusters of travel used are left out: they set the very travel that the first axes run over. */
export const CURVE_AXES: readonly CurveAxis[] = [
  ...TRAVEL,
  ...ADJUSTERS.filter(
    (adjuster): adjuster is NumberAdjuster => 'range' in adjuster && adjuster.group !== 'travel',
  ).map((adjuster): CurveAxis => ({
    key: adjuster.key,
    label: adjuster.label,
    quantity: adjuster.quantity,
    axis: () => ({ kind: 'adjuster', adjuster: adjuster.key }),
    range: ({ bike, setup }) => adjusterRange(adjuster, bike, setup),
    applies: (bike) => adjuster.applies?.(bike, null) ?? true,
  })),
];

/** The axis with its label in the words of a drive. */
export function nameAxis(axis: CurveAxis, kind: DriveKind): NamedAxis {
  return { ...axis, label: nameDrive(axis.label, driveNoun(kind)) };
}
