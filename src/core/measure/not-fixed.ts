/** The directions that no row fixes, each with the unknowns that move together in it. */
import type { Fit } from './fit-values.ts';
import type { NotFixed, UnknownValue } from './measured-bike.ts';
import { spread } from './measured-readings.ts';
import { isOfPhoto } from './held/unknowns.ts';
import type { Unknown } from './held/unknowns.ts';
import { degrees } from '../units/convert.ts';

/** A part of a direction below this is rounding. */
const NO_PART = 1e-6;
/** Wider than this an unknown is as good as free, in mm, mrad or kg: 50 mm, 5° or 50 kg. */
const WIDEST = { mm: 50, mrad: 87, kg: 50 } as const;

/** Free directions first, as few unknowns in each as can be; then unknowns whose standard deviation is too wide. */
export function notFixedBy(fit: Fit): readonly NotFixed[] {
  const { origin, touched, parts, rank } = fit;
  const free = fewestTogether(parts.right.slice(rank));
  const directions = free.map((direction): NotFixed => {
    const moves = direction
      .map((part, j) => ({ unknown: origin.unknowns[touched[j]], part }))
      .filter(({ part }) => Math.abs(part) > NO_PART)
      .sort((a, b) => Math.abs(b.part) - Math.abs(a.part))
      .map(({ unknown: { key, label }, part }) => ({ key, label, part }));
    return { why: 'rank', moves };
  });
  const inFree = new Set(directions.flatMap(({ moves }) => moves.map(({ key }) => key)));
  for (const [j, place] of touched.entries()) {
    const { key, label, unit } = origin.unknowns[place];
    // How far away a camera stood is of no reading.
    const u = inFree.has(key) || isOfPhoto(key) ? null : spreadOf(fit, j);
    if (u !== null && u > WIDEST[unit]) directions.push({ why: 'wide', moves: [{ key, label, part: 1 }] });
  }
  return directions;
}

function spreadOf(fit: Fit, unknown: number): number | null {
  return spread(
    fit,
    fit.touched.map((_, j) => (j === unknown ? 1 : 0)),
  );
}

/** A basis of the same directions in which each has few parts, by elimination with the largest part left; of length one. */
function fewestTogether(directions: readonly (readonly number[])[]): number[][] {
  const left = directions.map((each) => [...each]);
  const done: number[][] = [];
  while (left.length > 0) {
    let row = 0;
    let column = 0;
    for (const [i, each] of left.entries())
      for (const [j, part] of each.entries())
        if (Math.abs(part) > Math.abs(left[row][column])) [row, column] = [i, j];
    const [chosen] = left.splice(row, 1);
    for (const other of [...left, ...done]) {
      const by = other[column] / chosen[column];
      for (let j = 0; j < other.length; j++) other[j] = j === column ? 0 : other[j] - by * chosen[j];
    }
    done.push(chosen);
  }
  return done.map((each) => {
    const size = Math.hypot(...each);
    return each.map((part) => part / size);
  });
}

/** Every unknown with its value, angles in degrees, and its standard deviation where the rows fix it. */
export function unknownValues(fit: Fit): readonly UnknownValue[] {
  const { origin, values, touched } = fit;
  return origin.unknowns.map(({ key, label, unit }, place): UnknownValue => {
    const j = touched.indexOf(place);
    const u = j < 0 ? null : spreadOf(fit, j);
    return {
      key,
      label,
      unit: unit === 'mrad' ? '°' : unit,
      value: shown(values[place], unit),
      u: u === null ? null : shown(u, unit),
      assumed: j < 0,
    };
  });
}

function shown(value: number, unit: Unknown['unit']): number {
  return unit === 'mrad' ? degrees(value / 1000) : value;
}
