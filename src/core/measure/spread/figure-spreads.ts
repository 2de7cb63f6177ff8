/** Any figures of a fitted bike with what they carry of its ±: how each changes along what the rows have fixed. */
import { buildBike } from '../held/build-bike.ts';
import type { Fit } from '../fit-values.ts';
import { postureOf } from '../held/hold-bike.ts';
import type { StartingBike } from '../held/starting-bike.ts';
import { alongFixed, withOtherSprings } from '../measured-readings.ts';
import { moved } from '../row-figures.ts';
import { isOfPhoto } from '../held/unknowns.ts';

/** Null where the bike has no such figure, or does not stand. */
export type Figures = readonly (number | null)[];

/** The figures of a bike that was built from values of the fit; `onSprings` lends it other springs than those of the start. */
export type FiguresOf = (built: StartingBike, onSprings: (built: StartingBike) => StartingBike) => Figures;

export interface SpreadFigure {
  readonly value: number | null;
  /**
   * Its change along each fixed direction, by one standard deviation of it: the root of their squares is the standard
   * deviation of the figure. Null where the figure hangs on something that no row fixes.
   */
  readonly along: readonly number[] | null;
}

/** Step of the differences, mm or mrad. */
const STEP = 0.05;
/** A change with what no row touches below this part of the figure is rounding. */
const ROUNDING = 1e-8;

const asBuilt = (built: StartingBike): StartingBike => built;

/** The figures of the fitted bike, each with its spread. Springs, travel and tables stay those of the start: what hangs on them is not measured. */
export function figureSpreads(fit: Fit, figuresOf: FiguresOf): readonly SpreadFigure[] {
  const { origin, values, touched } = fit;
  const at = (where: readonly number[], onSprings = asBuilt): Figures | null => {
    const built = buildBike(postureOf(origin, where));
    return built === null ? null : figuresOf(built, onSprings);
  };
  const now = at(values);
  if (now === null) return [];
  const known = new Set(touched);
  // Each by another amount, so that no two changes cancel.
  const away = values.map((value, place) =>
    known.has(place) ? value : value + STEP * (1 + (place % 7) / 10),
  );
  const elsewhere = [at(away), at(values, withOtherSprings)];
  const still: Figures = now.map(() => 0);
  const slopes = touched.map((place) => {
    if (isOfPhoto(origin.unknowns[place].key)) return still;
    const ahead = at(moved(values, place, STEP));
    const back = at(moved(values, place, -STEP));
    return now.map((_, i) => slopeOf(ahead?.[i] ?? null, back?.[i] ?? null, 2 * STEP));
  });
  return now.map((value, i) => {
    const isLoose = elsewhere.some(
      (others) => !(Math.abs((others?.[i] ?? NaN) - (value ?? NaN)) <= ROUNDING * (1 + Math.abs(value ?? 0))),
    );
    return {
      value,
      along:
        value === null || isLoose
          ? null
          : alongFixed(
              fit,
              slopes.map((slope) => slope[i]),
            ),
    };
  });
}

/** The change per unit between two figures; null where one is missing. */
export function slopeOf(ahead: number | null, back: number | null, apart: number): number | null {
  return ahead === null || back === null ? null : (ahead - back) / apart;
}

/** Standard deviation of a figure; null where it is not fixed. */
export function spreadOf({ along }: SpreadFigure): number | null {
  return along === null ? null : Math.hypot(...along);
}

/** What the errors of two figures have in common: their covariance, in the product of their units; null where one is not fixed. */
export function sharedSpread(a: SpreadFigure, b: SpreadFigure): number | null {
  const other = b.along;
  if (a.along === null || other === null) return null;
  return a.along.reduce((sum, each, i) => sum + each * other[i], 0);
}
