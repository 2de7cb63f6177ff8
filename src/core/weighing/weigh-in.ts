/** The centre of gravity from wheel weights: once level, once with one axle raised, with its uncertainty. */
import { refuse } from '../numeric/refusal.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';

/** A measured number with its standard uncertainty, in the same unit. */
export interface Measured {
  readonly value: number;
  readonly uncertainty: number;
}

/** What is measured, mm and kg, the suspension held so that it keeps its length between the weighings. */
export interface WeighIn {
  /** Contact patch to contact patch with both wheels on level ground. */
  readonly wheelbase: Measured;
  /** Tyre radii, ground to axle. */
  readonly frontRadius: Measured;
  readonly rearRadius: Measured;
  /** First weighing: what each wheel shows on its scale. */
  readonly front: Measured;
  readonly rear: Measured;
  /**
   * How the bike stood in the first weighing: both wheels on one level, so that unequal radii leave the axles
   * unlevel, or with the axles themselves set level.
   */
  readonly first: 'wheelsLevel' | 'axlesLevel';
  /** Second weighing: how far the raised axle was lifted from the first weighing, and which one. */
  readonly lift: Measured;
  readonly raised: 'front' | 'rear';
  /** What one wheel shows on its scale then, and which one; the other's follows from the sum. */
  readonly raisedReading: Measured;
  readonly read: 'front' | 'rear';
}

export interface WeighedCentre {
  readonly ok: true;
  /** Whole mass, kg, and its centre in the ground frame with both wheels on level ground, mm. */
  readonly mass: number;
  readonly x: number;
  readonly y: number;
  /** Covariance of (mass, x, y) to first order: kg², kg·mm and mm². */
  readonly covariance: readonly (readonly number[])[];
  /** Standard uncertainties of the three, kg and mm. */
  readonly massUncertainty: number;
  readonly xUncertainty: number;
  readonly yUncertainty: number;
}

type Centre = readonly [mass: number, x: number, y: number];

/** The inputs as a plain row of numbers, in the order of KEYS. */
const KEYS = ['wheelbase', 'frontRadius', 'rearRadius', 'front', 'rear', 'lift', 'raisedReading'] as const;

/** Step of the differences as a part of the value (or of 1): near the cube root of rounding, good to 1e-10. */
const STEP = 1e-5;

/** Least turn between the weighings from which a height can be found, as slope. */
const LEAST_TURN = 1e-3;

/**
 * Centre of gravity from a weigh-in. With L between the axles and α their line above level, moments about the
 * rear axle give u − v·tan α = L·(front weight)/(weight) for the centre at u along that line and v above it; two
 * weighings give both. The lift counts as sine of α (lift/√(L² − lift²) as slope, not lift/L), and each radius as
 * itself, since a patch stays below its axle. Uncertainty: first order, inputs independent (JCGM 100).
 * Source: ISO 9130, centre of gravity of motorcycles (from memory); the formula from moments.
 * No answer when a number is impossible, the raised axle cannot lie so high, or the two weighings hardly differ.
 */
export function weighIn(given: WeighIn): WeighedCentre | NoEquilibrium {
  const values = KEYS.map((key) => given[key].value);
  const uncertainties = KEYS.map((key) => given[key].uncertainty);
  if (![...values, ...uncertainties].every(Number.isFinite)) return refuse('inputNotANumber');
  const negative = uncertainties.find((u) => u < 0);
  if (negative !== undefined) return refuse('uncertaintyNegative', { found: negative, limit: 0 });
  const centre = centreFrom(values, given);
  if (!isCentre(centre)) return centre;
  const slopes: Centre[] = [];
  for (let i = 0; i < values.length; i++) {
    const step = STEP * Math.max(1, Math.abs(values[i]));
    const up = centreFrom(moved(values, i, step), given);
    const down = centreFrom(moved(values, i, -step), given);
    if (!isCentre(up)) return up;
    if (!isCentre(down)) return down;
    const per = (k: 0 | 1 | 2): number => ((up[k] - down[k]) / (2 * step)) * uncertainties[i];
    slopes.push([per(0), per(1), per(2)]);
  }
  const covariance = ([0, 1, 2] as const).map((j) =>
    ([0, 1, 2] as const).map((k) => slopes.reduce((sum, slope) => sum + slope[j] * slope[k], 0)),
  );
  const [mass, x, y] = centre;
  return {
    ok: true,
    mass,
    x,
    y,
    covariance,
    massUncertainty: Math.sqrt(covariance[0][0]),
    xUncertainty: Math.sqrt(covariance[1][1]),
    yUncertainty: Math.sqrt(covariance[2][2]),
  };
}

function isCentre(outcome: Centre | NoEquilibrium): outcome is Centre {
  return !('ok' in outcome);
}

function moved(values: readonly number[], at: number, by: number): number[] {
  return values.map((value, i) => (i === at ? value + by : value));
}

function centreFrom(values: readonly number[], given: WeighIn): Centre | NoEquilibrium {
  const [wheelbase, frontRadius, rearRadius, front, rear, lift, reading] = values;
  const least = Math.min(front, rear, reading);
  if (!(least >= 0)) return refuse('massNegative', { found: least, limit: 0 });
  const mass = front + rear;
  if (!(mass > 0)) return refuse('noMass');
  if (!(reading <= mass)) return refuse('readingBeyondMass', { found: reading, limit: mass });
  if (!(wheelbase > 0)) return refuse('axlesTooClose', { found: wheelbase, limit: 0 });
  const groundRise = frontRadius - rearRadius;
  const apart = Math.hypot(wheelbase, groundRise);
  const firstRise = given.first === 'axlesLevel' ? 0 : groundRise;
  const secondRise = firstRise + (given.raised === 'front' ? lift : -lift);
  if (!(Math.abs(secondRise) < apart)) return refuse('liftImpossible', { found: lift, limit: apart });
  const slopeOf = (rise: number): number => rise / Math.sqrt(apart * apart - rise * rise);
  const turned = slopeOf(secondRise) - slopeOf(firstRise);
  if (!(Math.abs(turned) >= LEAST_TURN)) return refuse('liftImpossible', { found: lift, limit: apart });
  const frontThen = given.read === 'front' ? reading : mass - reading;
  const above = (apart * (front - frontThen)) / (mass * turned);
  const along = (apart * front) / mass + above * slopeOf(firstRise);
  const cos = wheelbase / apart;
  const sin = groundRise / apart;
  return [mass, along * cos - above * sin, rearRadius + along * sin + above * cos];
}
