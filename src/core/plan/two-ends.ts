/** The two ends side by side: the front raised, the rear raised, and both, each really tried. */
import type { Setup } from '../adjusters/setup.ts';
import { heightPlace, heightRise } from '../effects/height-places.ts';
import { reachHeight } from '../effects/reach-height.ts';
import type { Bike } from '../parts/bike.ts';
import { READINGS } from '../readings/all-readings.ts';
import { metricReading } from '../readings/metric-reading.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import { standBike, type StandingBike } from '../riding/stand-bike.ts';
import type { Moved } from './what-moves-what.ts';

export interface EndsRaised {
  readonly ends: 'front' | 'rear' | 'both';
  readonly turned: readonly {
    readonly adjuster: 'forkTubes' | 'shockLength';
    readonly from: number;
    readonly to: number;
  }[];
  /** How far each end rises above its axle, mm. */
  readonly rise: { readonly front: number; readonly rear: number };
  readonly moved: readonly Moved[];
}

/** What a mechanic looks at when an end is raised. */
const LOOKED_AT: readonly string[] = [
  'rake',
  'trail',
  'wheelbase',
  'swingarmAngle',
  'antiSquat',
  'seatHeight',
];

/**
 * Front, rear and both raised above their axles by the whole step of fork tubes and shock length that comes nearest to
 * `rise` mm, below zero for lowered; the readings in the ride state before and after. An end that does not reach it is
 * left out, and so is a bike that does not stand.
 */
export function raiseEnds(bike: Bike, setup: Setup, state: RideStateKey, rise: number): EndsRaised[] {
  const stand = (asked: Setup): StandingBike | null => {
    const on = standBike(bike, asked, state);
    return on.ok ? on : null;
  };
  const before = stand(setup);
  if (before === null) return [];
  const turns = (['front', 'rear'] as const).map((end) => {
    const place = heightPlace(end);
    const { adjuster } = place;
    const reached = reachHeight(bike, setup, setup, place, rise, stand);
    return reached.ok ? [{ adjuster, from: setup[adjuster], to: reached.step.value }] : [];
  });
  const [front, rear] = turns;
  const all = [
    { ends: 'front', turned: front },
    { ends: 'rear', turned: rear },
    { ends: 'both', turned: front.length > 0 && rear.length > 0 ? [...front, ...rear] : [] },
  ] as const;
  return all.flatMap(({ ends, turned }): EndsRaised[] => {
    const to = Object.fromEntries(turned.map(({ adjuster, to: value }) => [adjuster, value]));
    const after = turned.length === 0 ? null : stand({ ...setup, ...to });
    if (after === null) return [];
    const moved = READINGS.filter(({ key }) => LOOKED_AT.includes(key)).flatMap((reading): Moved[] => {
      const [was, is] = [metricReading(reading, before), metricReading(reading, after)];
      return typeof was === 'number' && typeof is === 'number'
        ? [{ reading: reading.key, before: was, after: is }]
        : [];
    });
    const risen = (end: 'front' | 'rear'): number => heightRise(heightPlace(end), before, after);
    return [{ ends, turned, rise: { front: risen('front'), rear: risen('rear') }, moved }];
  });
}
