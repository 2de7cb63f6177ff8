/** One reading along one axis for several bikes at once: the present one, the baseline, those kept, other ride states. */
import type { Bike } from '../core/chassis/bike.ts';
import type { Setup } from '../core/chassis/setup.ts';
import { curveOf, sweep, sweepPlace, type Curve } from '../core/effects/sweep.ts';
import type { AbsentReason, Reading } from '../core/readings/reading.ts';
import type { RideState } from '../core/springs/ride-state.ts';
import type { StandingBike } from '../core/springs/stand-bike.ts';
import { QUANTITIES } from '../core/units/quantity.ts';
import type { CurveAxis } from './curve-axes.ts';

/** A standing bike with what it was made of, and how its curve is drawn and called. */
export interface CurveSource {
  readonly name: string;
  readonly of: 'now' | 'baseline' | 'kept';
  readonly bike: Bike;
  readonly setup: Setup;
  readonly state: RideState;
  readonly stance: StandingBike;
}

/** A curve and the place on it where its bike stands, all in metric units. */
export interface PlacedCurve {
  readonly name: string;
  readonly of: CurveSource['of'];
  readonly curve: Curve;
  readonly place: number;
  readonly value: number | AbsentReason;
}

export interface CurveSet {
  readonly reading: Reading;
  readonly axis: CurveAxis;
  /** Ends of the axis, in the metric unit of its quantity. */
  readonly from: number;
  readonly to: number;
  /** The present bike's first. */
  readonly curves: readonly PlacedCurve[];
}

/** Places along the axis: close enough that no bend shows corners on a wide screen, and every tenth part is one. */
const PLACES = 121;

/**
 * The curves over the range of the first bike, widened to where it stands. Each keeps its own travel and dials apart
 * from what is varied; over a dial each is read in its own ride state, settled anew at every place.
 */
export function curveSet(
  reading: Reading,
  axis: CurveAxis,
  sources: readonly [CurveSource, ...CurveSource[]],
): CurveSet {
  const [first] = sources;
  const { least, most } = axis.range(first.bike);
  const place = sweepPlace(axis.axis(first.bike), first.setup, first.stance.travel);
  const from = Math.min(least, place);
  const to = Math.max(most, place);
  return {
    reading,
    axis,
    from,
    to,
    curves: sources.map(({ name, of, bike, setup, state, stance }): PlacedCurve => {
      const along = axis.axis(bike);
      const asked = { bike, setup, travel: stance.travel, state, axis: along, from, to, count: PLACES };
      const value = reading.read(stance);
      return {
        name,
        of,
        curve: curveOf(sweep(asked), reading),
        place: sweepPlace(along, setup, stance.travel),
        value: typeof value === 'number' ? QUANTITIES[reading.quantity].fromCore(value) : value,
      };
    }),
  };
}

/** Whether two curves are one line: the second then lies under the first and only its name can tell of it. */
export function sameLine(a: Curve, b: Curve): boolean {
  return (
    a.x.length === b.x.length &&
    a.x.every((x, i) => x === b.x[i]) &&
    a.y.every((y, i) => Object.is(y, b.y[i]))
  );
}
