/** How surely a curve of a measured bike runs where it is drawn: the spread of one reading at places along it. */
import type { Setup } from '../../adjusters/setup.ts';
import type { Bike } from '../../parts/bike.ts';
import { metricReading } from '../../readings/metric-reading.ts';
import { READINGS } from '../../readings/all-readings.ts';
import type { Reading } from '../../readings/reading.ts';
import { rideStateOf, type RideStateKey } from '../../riding/states/all-ride-states.ts';
import { standBike, standRide, type StandingBike } from '../../riding/stand-bike.ts';
import { machine } from '../../standing/machine.ts';
import type { Travel } from '../../standing/stance.ts';
import { QUANTITIES } from '../../units/all-quantities.ts';
import { figureSpreads, spreadOf } from './figure-spreads.ts';
import type { Fit } from '../fit-values.ts';
import { springSpreads } from './on-springs.ts';
import { setupAs } from '../held/setup-as.ts';
import type { StartingBike } from '../held/starting-bike.ts';
import { widestOf } from '../measured-readings.ts';

/** A place along a curve: adjusters as they stand there, and the travel used; null travel where the ride state settles it. */
export interface CurvePlace {
  readonly setup: Setup;
  readonly travel: Travel | null;
}

export interface BandAsked {
  readonly start: StartingBike;
  /** The reading by its key. */
  readonly reading: string;
  readonly ride: RideStateKey;
  readonly places: readonly CurvePlace[];
}

/** Standard deviation of the reading at each place, in its metric unit; null where it is not fixed or the bike has none. */
export function measuredBand(
  fit: Fit,
  { start, reading: key, ride, places }: BandAsked,
): readonly (number | null)[] {
  const reading = READINGS.find((each) => each.key === key);
  if (reading === undefined) return places.map(() => null);
  const widest = widestOf(QUANTITIES[reading.quantity].fileUnit);
  const isKnown = (u: number | null | undefined): u is number => typeof u === 'number' && u <= widest;
  if (rideStateOf(ride).springsCarry && places.every(({ travel }) => travel === null)) {
    const read = (stood: readonly (StandingBike | null)[]) =>
      stood.map((each) => (each === null ? null : numberOf(metricReading(reading, each))));
    const found = springSpreads(fit, { start, ride, setups: places.map(({ setup }) => setup), read });
    return places.map((_, i) => {
      const u = found.at(i)?.u;
      return isKnown(u) ? u : null;
    });
  }
  const spreads = figureSpreads(fit, (built, onSprings) =>
    places.map(({ setup, travel }) => {
      const asked = onSprings({ bike: built.bike, setup });
      const now = setupAs({ asked: asked.setup, found: built.setup, measuredAs: start.setup });
      return readAt(reading, asked.bike, now, ride, travel);
    }),
  );
  return places.map((_, i) => {
    const spread = spreads.at(i);
    const u = spread === undefined ? null : spreadOf(spread);
    return isKnown(u) ? u : null;
  });
}

function readAt(
  reading: Reading,
  bike: Bike,
  setup: Setup,
  ride: RideStateKey,
  travel: Travel | null,
): number | null {
  if (travel === null) {
    const stood = standBike(bike, setup, ride);
    return stood.ok ? numberOf(metricReading(reading, stood)) : null;
  }
  const made = machine(bike, setup);
  const stood = made.ok ? standRide(made, { kind: 'travel', travel, setBy: {} }) : made;
  return stood.ok ? numberOf(metricReading(reading, stood)) : null;
}

const numberOf = (value: unknown): number | null =>
  typeof value === 'number' && Number.isFinite(value) ? value : null;
