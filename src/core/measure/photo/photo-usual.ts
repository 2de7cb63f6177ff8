/** What is usual on a photo while nobody says better: how far parts stand out, how large a rim's edge is, how a lens is known. */
import { MM_PER_INCH } from '../../units/convert.ts';
import { readTyreCode, type Tyre } from '../../parts/tyre.ts';
import { MEASURE_PARTS, type MeasurePartKey } from '../held/measure-parts.ts';

/** A figure with its standard deviation, mm. */
export interface Usual {
  readonly value: number;
  readonly sd: number;
}

/** The radius of a sprocket is found by its pins, and not taken from the teeth that are set: it may be off by six teeth (1 σ), mm. */
export const SPROCKET_RADIUS_SD = 15;

/** Which edge of a rim is clicked: the one toward the camera, the middle of its bed, or the one behind. */
export type RimSide = 'near' | 'middle' | 'far';

/** The middle of a chain beside that of the bike, mm. Common practice, no source. */
const CHAIN_DEPTH: Usual = { value: 50, sd: 8 };
/** Ends of axles and bolts as they usually stand out from the middle of a bike, mm. Common practice, no source. */
const DEPTHS: Partial<Readonly<Record<MeasurePartKey, Usual>>> = {
  rearAxle: { value: 120, sd: 15 },
  frontAxle: { value: 100, sd: 15 },
  frontSprocket: CHAIN_DEPTH,
  rearSprocket: CHAIN_DEPTH,
  pivot: { value: 120, sd: 15 },
  countershaft: { value: 90, sd: 15 },
  steeringHead: { value: 0, sd: 8 },
  axisFoot: { value: 0, sd: 8 },
  seat: { value: 0, sd: 20 },
  passengerSeat: { value: 0, sd: 20 },
  tank: { value: 0, sd: 20 },
  loadMark: { value: 0, sd: 30 },
};
/** Bolts of links and shock lie near the middle; a mark may be anywhere. Common practice, no source. */
const BOLT: Usual = { value: 40, sd: 20 };
const MARK: Usual = { value: 100, sd: 30 };

/** How far a part stands out toward the camera, mm. */
export function usualDepth(part: MeasurePartKey): Usual {
  return DEPTHS[part] ?? (MEASURE_PARTS[part].shape === 'mark' ? MARK : BOLT);
}

/** How far a rim's flange stands out beyond its bed, whose diameter a tyre's inches state, mm. From memory. */
const FLANGE: Usual = { value: 14, sd: 1.5 };
/** A rim of unknown size: 17 inches, or far from that. Common practice, no source. */
const UNKNOWN_RIM: Usual = { value: 230, sd: 25 };
/** Half of a rim as a part of its tyre's width, and of a tyre of no known size, mm. From memory. */
const HALF_WIDTH = 0.38;
const UNKNOWN_HALF: Usual = { value: 55, sd: 15 };
const HALF_SD = 6;

/** Radius of a rim's edge, mm: the inches of its tyre, and the flange. */
export function usualRimRadius(tyre: Tyre): Usual {
  const size = 'code' in tyre ? readTyreCode(tyre.code) : null;
  if (size === null || typeof size === 'string') return UNKNOWN_RIM;
  return { value: (size.rim * MM_PER_INCH) / 2 + FLANGE.value, sd: FLANGE.sd };
}

/** How far an edge of a rim stands out toward the camera, mm. */
export function usualRimDepth(tyre: Tyre, side: RimSide): Usual {
  const size = 'code' in tyre ? readTyreCode(tyre.code) : null;
  const half =
    size === null || typeof size === 'string'
      ? UNKNOWN_HALF
      : { value: HALF_WIDTH * size.width, sd: HALF_SD };
  if (side === 'middle') return { value: 0, sd: half.sd / 2 };
  return { value: side === 'near' ? half.value : -half.value, sd: half.sd };
}

/** Diagonal of 35 mm film, mm: 36 by 24. */
const FILM_DIAGONAL = 43.27;
/**
 * How well the focal length is known, as a part of it (1 σ): as the file states it, and where it states none, which for a
 * bike is mostly a zoomed lens. Common practice, no source.
 */
const NAMED_PART = 0.02;
const UNNAMED = { focal35: 50, part: 0.35 };

/** Focal length in pixels from that on 35 mm film, by the diagonal. */
export function focalOf(
  focal35: number | null,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): { readonly focalPx: number; readonly focalSd: number } {
  const focalPx = ((focal35 ?? UNNAMED.focal35) * Math.hypot(widthPx, heightPx)) / FILM_DIAGONAL;
  return { focalPx, focalSd: focalPx * (focal35 === null ? UNNAMED.part : NAMED_PART) };
}

/** Standard deviation of a bulge that nobody has measured, per cent at the corners. Common practice, no source. */
export const USUAL_BULGE_SD = 0.25;
/** Standard deviation of a click by hand in the loupe, pixels. Common practice, no source. */
export const USUAL_CLICK_SD_PX = 1;
