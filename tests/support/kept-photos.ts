/** The photos of `fixtures/photos`: how each was taken, and what is true of the bike on them. */
import type { Camera } from '../../src/core/measure/photo/camera.ts';
import { aimed, besideLeaning, CAMERA } from './pictured-bike.ts';

const SQUARE: Camera = { ...CAMERA, yaw: 0, pitch: 0, roll: 0 };
const LEAN = (10 * Math.PI) / 180;

/** Fewer pixels than `CAMERA` has, so that the files are small; each is so many of its pixels to a side. */
export const SMALLER = 0.4;

function small(camera: Camera): Camera {
  return { ...camera, widthPx: 1600, heightPx: 1200, focal: camera.focal * SMALLER };
}

/** By the name of the file: one thing each that a hand does to a camera, and all together. */
export const KEPT_PHOTOS: Readonly<Record<string, Camera>> = {
  square: small(aimed(SQUARE, 5000)),
  yaw: small(aimed({ ...SQUARE, yaw: CAMERA.yaw }, 5000)),
  pitch: small(aimed({ ...SQUARE, pitch: CAMERA.pitch }, 5000)),
  roll: small(aimed({ ...SQUARE, roll: CAMERA.roll }, 5000)),
  turned: small(aimed(CAMERA, 5000)),
  near: small(aimed({ ...CAMERA, yaw: 0.05 }, 1500)),
  far: small(aimed(CAMERA, 8000)),
  left: small(aimed({ ...CAMERA, mirrored: true }, 3000)),
  bulge: { ...small(aimed(CAMERA, 5000)), bulge: 0.02 },
  leaning: small(besideLeaning(aimed(CAMERA, 5000), LEAN)),
};

export interface KeptAnswers {
  /** Readings of the true bike, mm and degrees. */
  readonly readings: Readonly<Record<'wheelbase' | 'rake' | 'trail' | 'swingarmAngle', number>>;
  readonly frontRadius: number;
  readonly rearRadius: number;
  readonly offset: number;
  /** Where parts and axles are on the picture of each name, pixels. */
  readonly places: Readonly<Record<string, Readonly<Record<string, readonly [x: number, y: number]>>>>;
  /** Places beside the edge of each rim, pixels: clicks of a hand. */
  readonly rims: Readonly<
    Record<string, Readonly<Record<'frontWheel' | 'rearWheel', readonly (readonly [number, number])[]>>>
  >;
}
