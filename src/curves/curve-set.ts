/** One reading along one axis for several bikes at once: the present one, the baseline, those kept, other ride states. */
import type { Bike } from '../core/parts/bike.ts';
import type { Setup } from '../core/adjusters/setup.ts';
import { curveAlong, standingAlong, sweepPlace, type Curve } from '../core/effects/sweep.ts';
import { metricReading } from '../core/readings/metric-reading.ts';
import type { Reading } from '../core/readings/reading.ts';
import type { NoStand } from '../core/riding/no-stand.ts';
import type { RideStateKey } from '../core/riding/states/all-ride-states.ts';
import type { StandingBike } from '../core/riding/stand-bike.ts';
import { QUANTITIES } from '../core/units/all-quantities.ts';
import type { PlacedCurve as CurveInWords } from '../words/kept/curve-words.ts';
import type { CurveAxis, NamedAxis } from './curve-axes.ts';

/** A bike with how it stands, or why it does not, and how its curve is drawn and called. */
export interface CurveSource {
  readonly name: string;
  readonly of: CurveInWords['of'];
  /** Which of the ways to draw a line beside the present one it has, from 0; null for the present one and the baseline. */
  readonly slot: number | null;
  readonly bike: Bike;
  readonly setup: Setup;
  readonly state: RideStateKey;
  readonly stance: StandingBike | NoStand;
}

/** A curve and the place where its bike stands, with how its line is drawn. */
export interface PlacedCurve extends CurveInWords {
  readonly slot: number | null;
}

export interface CurveSet {
  readonly reading: Reading;
  readonly axis: NamedAxis;
  /** Ends of the axis, in the metric unit of its quantity. */
  readonly from: number;
  readonly to: number;
  /** Whether the axis is one of travel, along which each curve has its own place. */
  readonly overTravel: boolean;
  /** The present bike's first. */
  readonly curves: readonly PlacedCurve[];
}

export interface AxisEnds {
  readonly from: number;
  readonly to: number;
}

/** What a sweep depends on; over an adjuster how the bike stands does not count. */
type Swept = Pick<CurveSource, 'bike' | 'setup' | 'state'> & Partial<Pick<CurveSource, 'stance'>>;

/** Places along the axis: close enough that no bend shows corners on a wide screen, and every tenth part is one. */
const PLACES = 121;
/** Two places nearer to each other than this part of the axis are one. */
const SAME_PLACE = 1e-9;
/** Lines are the same where no two of their values differ by this part of the last digit that is written. */
const SAME_DIGIT = 1 / 20;

/** The range of the axis for the present bike, widened to where it stands. */
export function axisEnds(axis: CurveAxis, { bike, setup, stance }: CurveSource): AxisEnds {
  const { least, most } = axis.range({ bike, setup });
  const along = axis.axis({ bike, setup });
  if (!stance.ok && along.kind === 'travel') return { from: least, to: most };
  const place = sweepPlace(along, setup, stance.ok ? stance.travel : { front: 0, rear: 0 });
  return { from: Math.min(least, place), to: Math.max(most, place) };
}

/**
 * The even places of a curve; null over travel when the bike does not stand, since then nothing says where its other end
 * is. Each keeps its own travel and adjusters apart from what is varied, and over travel what it carries in its ride state.
 * Over an adjuster it is read in its ride state, settled anew at every place.
 */
export function evenCurve(
  reading: Reading,
  axis: CurveAxis,
  { from, to }: AxisEnds,
  source: Swept,
): Curve | null {
  const asked = askedOf(source, axis);
  return asked === null ? null : curveAlong({ ...asked, from, to, count: PLACES }, reading);
}

function askedOf({ bike, setup, state, stance }: Swept, axis: CurveAxis) {
  const along = axis.axis({ bike, setup });
  if (along.kind === 'adjuster') return { bike, setup, travel: { front: 0, rear: 0 }, state, axis: along };
  return stance?.ok === true ? { bike, setup, travel: stance.travel, as: stance, axis: along } : null;
}

/**
 * The curves of all sources, with the exact places where they stand among the even ones. `even` are those of
 * `evenCurve`, one for each source, where they are at hand already.
 */
export function curveSet(
  reading: Reading,
  axis: NamedAxis,
  sources: readonly [CurveSource, ...CurveSource[]],
  ends: AxisEnds = axisEnds(axis, sources[0]),
  even: readonly (Curve | null)[] = sources.map((source) => evenCurve(reading, axis, ends, source)),
): CurveSet {
  const { from, to } = ends;
  const places = sources.map((source) => placeOf(source, axis));
  const besides = [...new Set(places)].filter((x) => x !== null && x >= from && x <= to) as number[];
  const curves: PlacedCurve[] = [];
  sources.forEach((source, i) => {
    const { name, of, slot, stance } = source;
    const at = even[i];
    const curve =
      at === null
        ? noCurve(reading, axis)
        : withPlaces(at, source, reading, axis, besides, SAME_PLACE * (to - from));
    const same = curves.find((other) => other.under === null && sameLine(curve, other.curve));
    curves.push({
      name,
      of,
      slot,
      curve,
      under: same?.name ?? null,
      place: places[i],
      value: stance.ok ? metricReading(reading, stance) : null,
      noStand: stance.ok ? null : stance,
    });
  });
  const overTravel = axis.axis(sources[0]).kind === 'travel';
  return { reading, axis, from, to, overTravel, curves };
}

function placeOf({ bike, setup, stance }: CurveSource, axis: CurveAxis): number | null {
  return stance.ok ? sweepPlace(axis.axis({ bike, setup }), setup, stance.travel) : null;
}

function noCurve(reading: Reading, axis: CurveAxis): Curve {
  return {
    key: reading.key,
    xQuantity: axis.quantity,
    xUnit: QUANTITIES[axis.quantity].fileUnit,
    yQuantity: reading.quantity,
    yUnit: QUANTITIES[reading.quantity].fileUnit,
    x: [],
    y: [],
    lowStop: null,
    highStop: null,
  };
}

/** The curve read at some places more, as far as it reaches. */
function withPlaces(
  curve: Curve,
  source: CurveSource,
  reading: Reading,
  axis: CurveAxis,
  besides: readonly number[],
  near: number,
): Curve {
  const asked = askedOf(source, axis);
  const low = curve.x[0];
  const high = curve.x[curve.x.length - 1];
  const missing = besides.filter(
    (x) => x >= low && x <= high && !curve.x.some((other) => Math.abs(other - x) <= near),
  );
  if (missing.length === 0 || asked === null) return curve;
  const standsAt = standingAlong(asked);
  const points = curve.x.map((x, i) => ({ x, y: curve.y[i] }));
  for (const x of missing) {
    const on = standsAt(x, source.stance.ok ? source.stance.travel : undefined);
    if (on.ok) points.push({ x, y: metricReading(reading, on) });
  }
  points.sort((a, b) => a.x - b.x);
  return { ...curve, x: points.map(({ x }) => x), y: points.map(({ y }) => y) };
}

/** Whether two curves are one line as far as figures are written; those without a place are no line. */
export function sameLine(a: Curve, b: Curve): boolean {
  const least = SAME_DIGIT / 10 ** QUANTITIES[a.yQuantity].metric.digits;
  return (
    a.x.length > 0 &&
    a.x.length === b.x.length &&
    a.x.every((x, i) => x === b.x[i]) &&
    a.y.every((y, i) => {
      const other = b.y[i];
      return typeof y === 'number' && typeof other === 'number' ? Math.abs(y - other) < least : y === other;
    })
  );
}

/** Whether two places of the axis are one. */
export function samePlace({ from, to }: AxisEnds, a: number, b: number): boolean {
  return Math.abs(a - b) <= SAME_PLACE * (to - from);
}
