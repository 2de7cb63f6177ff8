/** What a photo of the bike says: where on the picture its parts were clicked, and how the picture was taken. */
import type { MeasureStateKey } from '../held/all-measure-states.ts';
import type { Point } from '../../plane/point.ts';
import type { Pixel } from './camera.ts';
import type { MeasurePartKey } from '../held/measure-parts.ts';

/** A place on the upright picture before mirroring, in continuous pixels: (0, 0) is the upper left corner, y down. */
interface Click {
  readonly xPx: number;
  readonly yPx: number;
  /** Standard deviation of the hand, pixels. */
  readonly sdPx: number;
  /** How far what was clicked stands out from the bike's middle plane toward the camera, mm, and its standard deviation. */
  readonly depth: number;
  readonly depthSd: number;
}

/** A point or mark that was clicked; up to a few times each. */
export interface PartClick extends Click {
  readonly part: MeasurePartKey;
}

/** Rings that are clicked, and the part in their middle: the edges of rims, and the pins of the chain on a sprocket. */
export const RINGS = {
  frontWheel: 'frontAxle',
  rearWheel: 'rearAxle',
  frontSprocket: 'countershaft',
  rearSprocket: 'rearAxle',
} as const satisfies Partial<Readonly<Record<MeasurePartKey, MeasurePartKey>>>;

export type RingKey = keyof typeof RINGS;

export const RING_KEYS: readonly RingKey[] = ['frontWheel', 'rearWheel', 'frontSprocket', 'rearSprocket'];

export type SprocketKey = 'frontSprocket' | 'rearSprocket';

/** A point on a ring: where along it is not known. */
export interface RimClick extends Click {
  readonly wheel: RingKey;
  /** Radius of the ring that was clicked, mm, and its standard deviation; of a sprocket that of its pitch circle. */
  readonly radius: number;
  readonly radiusSd: number;
}

export interface MeasurePhoto {
  readonly state: MeasureStateKey;
  /** The side that the camera stood on; from the left the picture is mirrored. */
  readonly side: 'right' | 'left';
  readonly widthPx: number;
  readonly heightPx: number;
  /** Focal length in pixels of the uncropped picture, and its standard deviation. */
  readonly focalPx: number;
  readonly focalSd: number;
  /** Standard deviation of the lens's bulge at the corners, per cent; 0 for a lens without. */
  readonly bulgeSd: number;
  readonly clicks: readonly PartClick[];
  readonly rims: readonly RimClick[];
}

/** What the fit makes of a photo. Pixels of the upright picture, as its clicks. */
export interface PhotoOutcome {
  /** Each part that was clicked, where the bike that was found has it. */
  readonly seen: readonly (Pixel & { readonly part: MeasurePartKey })[];
  /** The bike that was found, in its middle plane: tyres, swingarm, and steering axis to the front axle. */
  readonly lines: readonly (readonly Pixel[])[];
  /**
   * Where the corners of the upright picture meet the bike's middle plane, from the upper left one clockwise: mm from the
   * rear axle, x along the line to the front axle, y up. Empty where the camera sees past the plane.
   */
  readonly corners: readonly Point[];
  /** From the camera to the bike's middle plane, mm. */
  readonly away: number;
  /** How many teeth the pins on a sprocket make, with its standard deviation; without those whose radius was taken as exact. */
  readonly teeth: readonly { readonly part: SprocketKey; readonly count: number; readonly u: number }[];
  /** The part or ring whose clicks do not suit the others; null where all suit. */
  readonly suspected: MeasurePartKey | null;
}

/** Points on a ring from which its middle is known. */
export const LEAST_RIM_POINTS = 5;
/** With fewer places than this the camera is not fixed. */
export const LEAST_PLACES = 3;

/** How many different places a photo shows: parts, and rings with enough points. */
export function placesOn({ clicks, rims }: Pick<MeasurePhoto, 'clicks' | 'rims'>): number {
  const rings = RING_KEYS.filter(
    (key) => rims.filter(({ wheel }) => wheel === key).length >= LEAST_RIM_POINTS,
  );
  return new Set(clicks.map(({ part }) => part)).size + rings.length;
}
