/** A photo that a bike was measured on, as it is kept with it: what was clicked, never what was found, and not the picture. */
import * as v from 'valibot';
import { LARGEST_LENGTH } from '../core/parts/bounds.ts';
import type { RingKey } from '../core/measure/photo/photo.ts';
import type { JsonObject } from './json/json.ts';

/** A click on the upright picture before mirroring, pixels; depth toward the camera and its standard deviation, mm. */
interface KeptPlace {
  readonly xPx: number;
  readonly yPx: number;
  readonly sdPx: number;
  readonly depth: number;
  readonly depthSd: number;
}

export interface KeptClick extends KeptPlace {
  /** Key of the part. */
  readonly part: string;
}

export interface KeptRimPoint extends KeptPlace {
  /** Key of the ring: a wheel's rim, or a sprocket's pins. */
  readonly wheel: (typeof KEPT_RINGS)[number];
  readonly radius: number;
  readonly radiusSd: number;
}

export interface KeptPhoto {
  /** When its picture was put beside the bike, ms since 1970: by this it is found there, in a copy of the bike too. */
  readonly keptAt: number;
  /** Key of the state in which the bike was held. */
  readonly state: string;
  readonly side: 'right' | 'left';
  readonly widthPx: number;
  readonly heightPx: number;
  readonly focalPx: number;
  readonly focalSd: number;
  readonly bulgeSd: number;
  readonly clicks: readonly KeptClick[];
  readonly rims: readonly KeptRimPoint[];
}

export const KEPT_RINGS = [
  'frontWheel',
  'rearWheel',
  'frontSprocket',
  'rearSprocket',
] as const satisfies readonly RingKey[];
export const LONGEST_PHOTO_KEY = 40;
export const MOST_PHOTO_CLICKS = 400;
export const LEAST_PHOTO_SIZE = 1e-6;
/** The last time that a date can hold, ms since 1970. */
export const LAST_TIME = 8.64e15;

const key = v.pipe(v.string(), v.maxLength(LONGEST_PHOTO_KEY));
const from = (least: number, most = LARGEST_LENGTH) =>
  v.pipe(v.number(), v.minValue(least), v.maxValue(most));
const signed = from(-LARGEST_LENGTH);
const size = from(LEAST_PHOTO_SIZE);
const error = from(0);
const place = { xPx: signed, yPx: signed, sdPx: size, depth: signed, depthSd: error };
const list = <Each>(one: v.GenericSchema<unknown, Each>) =>
  v.pipe(v.array(one), v.maxLength(MOST_PHOTO_CLICKS));

const photo: v.GenericSchema<unknown, KeptPhoto> = v.object({
  keptAt: from(0, LAST_TIME),
  state: key,
  side: v.picklist(['right', 'left']),
  widthPx: size,
  heightPx: size,
  focalPx: size,
  focalSd: error,
  bulgeSd: error,
  clicks: list(v.object({ part: key, ...place })),
  rims: list(v.object({ wheel: v.picklist(KEPT_RINGS), ...place, radius: size, radiusSd: error })),
});

/** A photo as it stands in a file; null where it cannot be read. */
export function readKeptPhoto(json: JsonObject): KeptPhoto | null {
  const read = v.safeParse(photo, json);
  return read.success ? read.output : null;
}

/** A photo as it stands in a file. */
export function keptPhotoJson({ clicks, rims, ...rest }: KeptPhoto): JsonObject {
  return {
    ...rest,
    clicks: clicks.map((click) => ({ ...click })),
    rims: rims.map((point) => ({ ...point })),
  };
}
