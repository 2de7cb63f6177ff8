/** An axis of a chart: metric numbers to px, with ticks at round numbers of the user's own unit. */
import { scaleQuantize } from 'd3-scale';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import { QUANTITIES, shownUnit, type QuantityKey } from '../core/units/all-quantities.ts';

export interface Tick {
  readonly px: number;
  /** The number without its unit, as this user reads numbers. */
  readonly text: string;
}

export interface Axis {
  readonly ticks: readonly Tick[];
  /** Where a metric number lies, px. */
  readonly px: (metric: number) => number;
  /** The ends, metric, after they moved out to round numbers. */
  readonly least: number;
  readonly most: number;
}

export interface AxisAsked {
  readonly quantity: QuantityKey;
  readonly style: NumberStyle;
  /** Ends in the metric unit. */
  readonly from: number;
  readonly to: number;
  readonly fromPx: number;
  readonly toPx: number;
  /** About how many ticks there is room for. */
  readonly count: number;
  /** Whether the ends move out to round numbers. */
  readonly rounded: boolean;
}

/** Least span of an axis, in the smallest steps that the quantity is written in: less would draw rounding noise. What is counted has none. */
const LEAST_STEPS = 10;

/** Ends that are too near to each other move apart about their middle. */
export function axisOf(asked: AxisAsked): Axis {
  const { quantity, style, fromPx, toPx, count } = asked;
  const { counted } = QUANTITIES[quantity];
  const { perMetric, digits } = shownUnit(quantity, style.system);
  const middle = ((asked.from + asked.to) / 2) * perMetric;
  const least = counted === null ? LEAST_STEPS / 10 ** digits : 1;
  const half = Math.max((asked.to - asked.from) * perMetric, least) / 2;
  // Its ticks and round ends are those of every even scale; the one that also blends brings 5 kB for colours.
  const scale = scaleQuantize().domain([middle - half, middle + half]);
  if (asked.rounded) scale.nice(count);
  const places = scale.ticks(count).filter((at) => counted === null || Number.isInteger(at));
  const step = places.length > 1 ? places[1] - places[0] : 1;
  // A step such as 0.2 needs one digit; the small part more keeps a step of exactly 0.1 from needing two.
  const tickDigits = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const [low, high] = scale.domain();
  const px = (at: number): number => {
    const part = (at - low) / (high - low);
    return fromPx * (1 - part) + toPx * part;
  };
  return {
    ticks: places.map((at) => ({
      px: px(at),
      text: writeNumber(at / perMetric, quantity, style, { extraDigits: tickDigits - digits }).digits,
    })),
    px: (metric) => px(metric * perMetric),
    least: low / perMetric,
    most: high / perMetric,
  };
}
