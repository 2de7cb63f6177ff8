/** Photos of bikes whose true figures are known: clicks put where a camera would see the parts. */
import { onPicture, type Camera, type Place } from '../../src/core/measure/photo/camera.ts';
import { holdBike, postureOf } from '../../src/core/measure/held/hold-bike.ts';
import type { MeasurePartKey } from '../../src/core/measure/held/measure-parts.ts';
import type { MeasurePhoto, PartClick, RimClick } from '../../src/core/measure/photo/photo.ts';
import type { Origin } from '../../src/core/measure/held/unknowns.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** 12 megapixels at 5 m with the bike over 80 % of the width, turned by 10°, tipped by 5°, rolled by 3°. */
export const CAMERA: Camera = {
  at: { x: 700, y: 650, z: 5000 },
  yaw: radians(10),
  pitch: radians(-5),
  roll: radians(3),
  focal: 7600,
  bulge: 0,
  widthPx: 4000,
  heightPx: 3000,
  mirrored: false,
};

/** The camera aimed at the bike's middle from so far away, so that turning it leaves the bike in the picture. */
export function aimed(camera: Camera, away: number): Camera {
  const { yaw, pitch } = camera;
  return {
    ...camera,
    at: {
      x: 700 - away * Math.tan(-yaw),
      y: 450 - (away * Math.tan(-pitch)) / Math.cos(yaw),
      z: away,
    },
    focal: (camera.focal * away) / 5000,
  };
}

/**
 * The same camera beside a bike that leans toward it by so much about the line between its contact patches. What the
 * camera sees is the same as if it had gone round an upright bike.
 */
export function besideLeaning(camera: Camera, lean: number): Camera {
  const { at, yaw, pitch, roll } = camera;
  const [c, s] = [Math.cos(lean), Math.sin(lean)];
  // Along the bike, up and toward the camera of the bike that leans, as the camera has them.
  const seen = (x: number, y: number, z: number): readonly [number, number, number] => {
    const [x1, z1] = [x * Math.cos(yaw) - z * Math.sin(yaw), x * Math.sin(yaw) + z * Math.cos(yaw)];
    const y2 = y * Math.cos(pitch) - z1 * Math.sin(pitch);
    return [
      x1 * Math.cos(roll) + y2 * Math.sin(roll),
      -x1 * Math.sin(roll) + y2 * Math.cos(roll),
      y * Math.sin(pitch) + z1 * Math.cos(pitch),
    ];
  };
  const [along, up, toward] = [seen(1, 0, 0), seen(0, c, s), seen(0, -s, c)];
  return {
    ...camera,
    at: { x: at.x, y: c * at.y + s * at.z, z: -s * at.y + c * at.z },
    yaw: Math.atan2(along[2], toward[2]),
    pitch: Math.asin(up[2]),
    roll: Math.atan2(up[0], up[1]),
  };
}

/** Parts with how far they stand out toward the camera, mm. */
export const DEPTHS: readonly (readonly [MeasurePartKey, number])[] = [
  ['rearAxle', 120],
  ['frontAxle', 110],
  ['pivot', 130],
  ['countershaft', 90],
  ['steeringHead', 0],
  ['axisFoot', 0],
  ['seat', 60],
];

export const RIM_RADIUS = 222;
export const RIM_DEPTH = 45;
/** The page finds so many on the edge from a few clicks. */
const RIM_POINTS = 24;
const CLICKS_A_PART = 3;

/** The 35 mm figure of a phone says the focal length to so much of it, 1 σ. */
export const FOCAL_SD = 0.02;

/** What is stated with a ±; the truth then lies off by it. */
export interface Doubts {
  /** As a part of the focal length. */
  readonly focalSd: number;
  readonly depthSd: number;
  readonly radiusSd: number;
  readonly bulgeSd: number;
}

export const EXACT: Doubts = { focalSd: FOCAL_SD, depthSd: 0, radiusSd: 0, bulgeSd: 0 };
/** Nothing strays; the focal length is stated with its ± all the same. */
export const NO_DOUBTS: Doubts = { ...EXACT, focalSd: 0 };

/** The photo of the bike of these values, each click off by a normal number of pixels and what is in doubt by its ±. */
export function pictured(
  origin: Origin,
  values: readonly number[],
  camera: Camera,
  normal: () => number,
  doubts: Doubts = EXACT,
): MeasurePhoto {
  const held = holdBike(postureOf(origin, values), 'onWheels');
  if (held === null) throw new Error('the bike cannot be held so');
  const seen = {
    ...camera,
    focal: camera.focal * (1 + normal() * doubts.focalSd),
    bulge: camera.bulge + (normal() * doubts.bulgeSd) / 100,
  };
  const pixel = (place: Place) => {
    const at = onPicture(seen, place);
    if (at === null) throw new Error('behind the camera');
    return { xPx: at.x + normal(), yPx: at.y + normal(), sdPx: 1 };
  };
  const { depthSd, radiusSd, bulgeSd } = doubts;
  const clicks = DEPTHS.flatMap(([part, depth]): PartClick[] => {
    const at = held.place(part);
    if (at === null) throw new Error(part);
    const z = depth + normal() * depthSd;
    return Array.from({ length: CLICKS_A_PART }, () => ({ part, ...pixel({ ...at, z }), depth, depthSd }));
  });
  const rims = (['frontWheel', 'rearWheel'] as const).flatMap((wheel): RimClick[] => {
    const at = held.place(wheel === 'frontWheel' ? 'frontAxle' : 'rearAxle');
    if (at === null) throw new Error(wheel);
    const radius = RIM_RADIUS + normal() * radiusSd;
    const z = RIM_DEPTH + normal() * depthSd;
    return Array.from({ length: RIM_POINTS }, (_, i) => {
      const turn = (2 * Math.PI * (i + 0.3)) / RIM_POINTS;
      const place = { x: at.x + radius * Math.cos(turn), y: at.y + radius * Math.sin(turn), z };
      return { wheel, ...pixel(place), depth: RIM_DEPTH, depthSd, radius: RIM_RADIUS, radiusSd };
    });
  });
  const { widthPx, heightPx, focal, mirrored } = camera;
  return {
    state: 'onWheels',
    side: mirrored ? 'left' : 'right',
    widthPx,
    heightPx,
    focalPx: focal,
    focalSd: focal * FOCAL_SD,
    bulgeSd,
    clicks,
    rims,
  };
}
