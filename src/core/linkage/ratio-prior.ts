/** What is known of a motion ratio before anything is measured: it is smooth, and wanders by about 15 % over the travel. */
import { errorFunction } from '../numeric/error-function.ts';

/** Standard deviations as parts of the mean ratio: the ratio's level, its even rise or fall at either end, and its bends. */
const LEVEL = 0.5;
const EVEN = 0.1;
const BENDS = 0.1;
/** The bends' length, as part of the travel: places nearer to one another than this move together. */
const BEND_LENGTH = 0.6;

/** Shock stroke, motion ratio or the ratio's change, each the derivative of the one before by wheel travel. */
export type Order = 0 | 1 | 2;

/** A figure of the curve: which one, and at what wheel travel, mm. */
export interface Figure {
  readonly order: Order;
  readonly at: number;
}

/**
 * Covariance of two figures of the curve of shock stroke over wheel travel, by the prior of a Gaussian process on the
 * ratio: `ratio` is its mean, `travel` what the table spans, mm. The stroke is the ratio's integral from hanging, so it
 * is exactly zero there. Units are those of the figures: mm, 1, 1/mm. Source: squared-exponential covariance (Rasmussen
 * and Williams, Gaussian Processes for Machine Learning, chapters 4 and 9.4; from memory), integrated by hand.
 */
export function priorCovariance(a: Figure, b: Figure, ratio: number, travel: number): number {
  const length = BEND_LENGTH * travel;
  const [i, j] = [a.order, b.order];
  const apart = (j === 1 ? 1 : -1) * integrated(i + j, a.at - b.at, length);
  const fromHanging =
    (j === 0 ? integrated(i, a.at, length) : 0) +
    (i === 0 ? integrated(j, b.at, length) : 0) -
    (i + j === 0 ? integrated(0, 0, length) : 0);
  const bends = BENDS * BENDS * (fromHanging + apart);
  const level = LEVEL * LEVEL * constant(a) * constant(b);
  const even = EVEN * EVEN * evenRise(a, travel) * evenRise(b, travel);
  return ratio * ratio * (level + even + bends);
}

/** The stroke of a ratio of 1 throughout, with its derivatives. */
const constant = ({ order, at }: Figure): number => (order === 0 ? at : order === 1 ? 1 : 0);

/** The stroke of a ratio that goes evenly from −1 hanging to 1 at the travel's end, with its derivatives. */
function evenRise({ order, at }: Figure, travel: number): number {
  if (order === 0) return (at * at) / travel - at;
  return order === 1 ? (2 * at) / travel - 1 : 2 / travel;
}

/** The bell curve exp(−x²/2ℓ²) is the second derivative of order 0, and itself order 2. */
function integrated(order: number, x: number, length: number): number {
  const bell = Math.exp(-((x / length) ** 2) / 2);
  const area = length * Math.sqrt(Math.PI / 2) * errorFunction(x / (length * Math.SQRT2));
  switch (order) {
    case 0:
      return length * length * bell + x * area;
    case 1:
      return area;
    case 2:
      return bell;
    case 3:
      return (-x / length ** 2) * bell;
    default:
      return ((x / length) ** 2 - 1) * (bell / length ** 2);
  }
}
