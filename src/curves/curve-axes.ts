/** What a reading can be drawn against: travel at either end or both, and every number dial, each with its range. */
import type { Bike } from '../core/chassis/bike.ts';
import { rearWheelTravel } from '../core/linkage/rear-wheel-travel.ts';
import type { DialRange, NumberDial } from '../core/springs/dial.ts';
import { DIALS } from '../core/springs/dials.ts';
import type { SweepAxis } from '../core/effects/sweep.ts';
import type { QuantityKey } from '../core/units/quantity.ts';

export interface CurveAxis {
  readonly key: string;
  readonly label: string;
  readonly quantity: QuantityKey;
  readonly axis: (bike: Bike) => SweepAxis;
  /** Ends of the axis for a bike and one step along it, in the metric unit of the quantity. */
  readonly range: (bike: Bike) => DialRange;
  /** Whether this bike has what is varied. */
  readonly applies: (bike: Bike) => boolean;
}

const TRAVEL_STEP = 0.5;
const rearRange = (bike: Bike): DialRange => ({
  least: 0,
  most: rearWheelTravel(bike.swingarm),
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
    label: 'Front travel',
    quantity: 'length',
    axis: () => ({ kind: 'travel', end: 'front' }),
    range: (bike) => ({ least: 0, most: bike.fork.travel, step: TRAVEL_STEP }),
    applies: always,
  },
  {
    key: 'bothTravels',
    label: 'Rear travel, the front with it',
    quantity: 'length',
    axis: (bike) => ({
      kind: 'travel',
      end: 'both',
      frontPerRear: bike.fork.travel / Math.max(1, rearWheelTravel(bike.swingarm)),
    }),
    range: rearRange,
    applies: always,
  },
];

/** The dials of travel used are left out: they set the very travel that the first axes run over. */
export const CURVE_AXES: readonly CurveAxis[] = [
  ...TRAVEL,
  ...DIALS.filter((dial): dial is NumberDial => dial.kind === 'number' && dial.group !== 'travel').map(
    (dial): CurveAxis => ({
      key: dial.key,
      label: dial.label,
      quantity: dial.quantity,
      axis: () => ({ kind: 'dial', dial: dial.key }),
      range: dial.range,
      applies: dial.applies ?? always,
    }),
  ),
];
