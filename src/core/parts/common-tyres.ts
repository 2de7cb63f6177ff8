/** Tyre sizes in wide use on the road, on the track and off it (common practice, no source). */
import { readTyreCode, tyreDiameter, type Tyre, type TyreSize } from './tyre.ts';

/** To pick from; any other may be typed. */
export const COMMON_SIZES: Readonly<Record<'frontTyre' | 'rearTyre', readonly string[]>> = {
  frontTyre: [
    '110/70-17',
    '120/60-17',
    '120/70-17',
    '130/60-17',
    '100/90-18',
    '120/70-18',
    '100/90-19',
    '110/80-19',
    '110/90-19',
    '120/70-19',
    '80/100-21',
    '90/90-21',
  ],
  rearTyre: [
    '140/70-17',
    '150/60-17',
    '160/60-17',
    '180/55-17',
    '180/60-17',
    '190/50-17',
    '190/55-17',
    '200/55-17',
    '200/60-17',
    '120/90-18',
    '130/80-18',
    '140/80-18',
    '150/70-18',
    '110/90-19',
  ],
};

/** A rim takes a tyre this much wider or narrower than the one it came with, mm (common practice, no source). */
const WIDTH_EITHER_WAY = 10;

/**
 * Common sizes that may go on the rim of a tyre instead of it, by rising outside diameter: the same rim diameter and at
 * most 10 mm wider or narrower. None for a tyre that is known by its outside alone.
 */
export function tyresForRim(key: 'frontTyre' | 'rearTyre', fitted: Tyre): readonly Tyre[] {
  const own = 'code' in fitted ? readTyreCode(fitted.code) : null;
  if (own === null || typeof own === 'string') return [];
  const fits = (code: string): boolean => {
    const size = readTyreCode(code);
    return typeof size !== 'string' && doesFit(own, size);
  };
  return byDiameter(COMMON_SIZES[key].filter(fits).map((code) => ({ code })));
}

function doesFit(own: TyreSize, other: TyreSize): boolean {
  const isOwn = own.width === other.width && own.aspect === other.aspect;
  return !isOwn && own.rim === other.rim && Math.abs(own.width - other.width) <= WIDTH_EITHER_WAY;
}

/** Tyres by rising outside diameter; those without one come last. */
export function byDiameter(tyres: readonly Tyre[]): readonly Tyre[] {
  const across = (tyre: Tyre): number => {
    const found = tyreDiameter(tyre);
    return found.ok ? found.value : Infinity;
  };
  return [...tyres].sort((a, b) => across(a) - across(b));
}
