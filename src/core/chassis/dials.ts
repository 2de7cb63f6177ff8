/** The dials: what a mechanic can adjust, within what range, and in the workshop's own steps. */
import type { QuantityKey } from '../units/quantity.ts';
import type { Bike } from './bike.ts';
import type { DialKey, NumberDialKey } from './setup.ts';

export type DialGroup = 'rideHeight' | 'wheels' | 'steering' | 'gearing' | 'travel' | 'load';

export interface DialRange {
  readonly least: number;
  readonly most: number;
  /** One step of the dial, in its metric unit. */
  readonly step: number;
}

/** A dial's value told a second way, as the workshop counts it. */
export interface Aside {
  readonly amount: number;
  readonly counted: 'turns' | 'links';
}

export interface NumberDial {
  readonly kind: 'number';
  readonly key: NumberDialKey;
  readonly label: string;
  readonly group: DialGroup;
  readonly quantity: QuantityKey;
  readonly range: (bike: Bike) => DialRange;
  readonly aside?: (value: number, bike: Bike) => Aside | null;
  /** A mechanic's words for a value above and below another. */
  readonly more: string;
  readonly less: string;
  /** What it is, which way is positive, how it is measured, and what to check. */
  readonly help: string;
}

export interface TyreDial {
  readonly kind: 'tyre';
  readonly key: 'frontTyre' | 'rearTyre';
  readonly label: string;
  readonly group: DialGroup;
  readonly help: string;
}

export type Dial = NumberDial | TyreDial;

export const DIAL_GROUPS: readonly { readonly key: DialGroup; readonly label: string }[] = [
  { key: 'rideHeight', label: 'Ride height' },
  { key: 'gearing', label: 'Gearing and axle' },
  { key: 'steering', label: 'Steering head' },
  { key: 'wheels', label: 'Tyres' },
  { key: 'travel', label: 'Travel used' },
  { key: 'load', label: 'Rider and load' },
];

const fixed = (least: number, most: number, step: number) => (): DialRange => ({ least, most, step });

/** Ranges are those of common practice in a workshop; what geometry allows is found by the model itself. */
export const DIALS: readonly Dial[] = [
  {
    kind: 'number',
    key: 'shockLength',
    label: 'Rear ride height (shock length)',
    group: 'rideHeight',
    quantity: 'length',
    range: (bike) => ({
      least: -30,
      most: 30,
      step: bike.swingarm.shockThread === null ? 0.5 : bike.swingarm.shockThread / 2,
    }),
    aside: (value, bike) =>
      bike.swingarm.shockThread === null
        ? null
        : { amount: value / bike.swingarm.shockThread, counted: 'turns' },
    more: 'longer, raises the rear',
    less: 'shorter, lowers the rear',
    help: 'Change of the shock’s eye-to-eye length from as delivered. Longer raises the rear, at the axle by more than at the shock.',
  },
  {
    kind: 'number',
    key: 'forkHeight',
    label: 'Front ride height (fork height)',
    group: 'rideHeight',
    quantity: 'length',
    range: fixed(-20, 40, 1),
    more: 'more, lowers the front',
    less: 'less, raises the front',
    help: 'How far the fork tube stands out above the top clamp. More lowers the front. Keep the tube’s minimum engagement in the clamps.',
  },
  {
    kind: 'number',
    key: 'forkExtender',
    label: 'Fork extender',
    group: 'rideHeight',
    quantity: 'length',
    range: fixed(0, 30, 1),
    more: 'longer, raises the front',
    less: 'shorter, lowers the front',
    help: 'Extra length screwed onto the fork tops. More lets the front stand higher.',
  },
  {
    kind: 'number',
    key: 'frontTeeth',
    label: 'Front sprocket',
    group: 'gearing',
    quantity: 'teeth',
    range: fixed(10, 20, 1),
    more: 'bigger',
    less: 'smaller',
    help: 'Teeth of the countershaft sprocket.',
  },
  {
    kind: 'number',
    key: 'rearTeeth',
    label: 'Rear sprocket',
    group: 'gearing',
    quantity: 'teeth',
    range: fixed(28, 60, 1),
    more: 'bigger',
    less: 'smaller',
    help: 'Teeth of the rear sprocket.',
  },
  {
    kind: 'number',
    key: 'axlePosition',
    label: 'Axle position',
    group: 'gearing',
    quantity: 'length',
    range: (bike) => ({ least: 0, most: bike.swingarm.slot, step: 1 }),
    aside: (value, bike) => ({ amount: (2 * value) / bike.drive.chainPitch, counted: 'links' }),
    more: 'further back',
    less: 'further forward',
    help: 'Rear axle back from the front end of its slot. One chain link moves it half a pitch.',
  },
  {
    kind: 'number',
    key: 'clampOffset',
    label: 'Clamp offset',
    group: 'steering',
    quantity: 'length',
    range: fixed(10, 60, 0.5),
    more: 'more offset',
    less: 'less offset',
    help: 'Fork legs ahead of the steering axis, square to it. More offset takes trail away.',
  },
  {
    kind: 'number',
    key: 'headInsertDeg',
    label: 'Head insert',
    group: 'steering',
    quantity: 'angle',
    range: fixed(-3, 3, 0.25),
    more: 'leaned further back',
    less: 'stood up',
    help: 'Tilt of the steering axis by inserts in the head: positive leans it further back.',
  },
  {
    kind: 'tyre',
    key: 'frontTyre',
    label: 'Front tyre',
    group: 'wheels',
    help: 'Size code from the sidewall, or the outside diameter or circumference as measured. Measured is better.',
  },
  {
    kind: 'tyre',
    key: 'rearTyre',
    label: 'Rear tyre',
    group: 'wheels',
    help: 'Size code from the sidewall, or the outside diameter or circumference as measured. Measured is better.',
  },
  {
    kind: 'number',
    key: 'frontTravelUsed',
    label: 'Front travel used',
    group: 'travel',
    quantity: 'length',
    range: (bike) => ({ least: 0, most: bike.fork.travel, step: 1 }),
    more: 'deeper',
    less: 'higher',
    help: 'Fork travel used along the legs, from topped out, in the state “as dialled”.',
  },
  {
    kind: 'number',
    key: 'rearTravelUsed',
    label: 'Rear travel used',
    group: 'travel',
    quantity: 'length',
    range: (bike) => ({ least: 0, most: bike.swingarm.wheelTravel, step: 1 }),
    more: 'deeper',
    less: 'higher',
    help: 'Rise of the rear axle from hanging, square to the ground, in the state “as dialled”.',
  },
  {
    kind: 'number',
    key: 'riderMass',
    label: 'Rider mass',
    group: 'load',
    quantity: 'mass',
    range: fixed(0, 200, 1),
    more: 'heavier',
    less: 'lighter',
    help: 'Rider in riding gear.',
  },
  {
    kind: 'number',
    key: 'riderHeight',
    label: 'Rider height over seat',
    group: 'load',
    quantity: 'length',
    range: fixed(0, 600, 10),
    more: 'higher',
    less: 'lower',
    help: 'Rider’s centre of gravity above the seat mark: about the navel, lower when tucked in.',
  },
  {
    kind: 'number',
    key: 'loadMass',
    label: 'Load mass',
    group: 'load',
    quantity: 'mass',
    range: fixed(0, 200, 1),
    more: 'heavier',
    less: 'lighter',
    help: 'Passenger or luggage.',
  },
  {
    kind: 'number',
    key: 'loadHeight',
    label: 'Load height over mark',
    group: 'load',
    quantity: 'length',
    range: fixed(0, 600, 10),
    more: 'higher',
    less: 'lower',
    help: 'Load’s centre of gravity above the load mark.',
  },
];

/** The dial of a key. Every key of a setup has one; the suite checks that. */
export function dialOf(key: DialKey): Dial {
  const dial = DIALS.find((d) => d.key === key);
  if (dial === undefined) throw new Error(`No dial is named ${key}`);
  return dial;
}

/** Decimals kept of a dialled value: takes rounding noise away, far below any adjuster's step. */
const DIAL_DECIMALS = 6;

/** The value `steps` steps on from `value`, held within the dial's range. */
export function steppedDial(dial: NumberDial, bike: Bike, value: number, steps: number): number {
  const { least, most, step } = dial.range(bike);
  const moved = Number((value + steps * step).toFixed(DIAL_DECIMALS));
  return Math.min(most, Math.max(least, moved));
}
