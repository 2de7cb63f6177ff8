/** A photo as rows and unknowns of the fit: the camera, and one figure for each coordinate that was clicked. */
import { distance, type Point } from '../plane/point.ts';
import { onPicture, onPlane, type Camera, type Pixel } from './photo/camera.ts';
import type { FitRow } from './fit-values.ts';
import type { HeldBike } from './held/held-bike.ts';
import type { MeasureKind } from './held/measure-kind.ts';
import {
  LEAST_RIM_POINTS,
  RING_KEYS,
  RINGS,
  type MeasurePhoto,
  type PartClick,
  type RimClick,
} from './photo/photo.ts';
import type { Unknown } from './held/unknowns.ts';

/** The unknowns of a photo: six of the camera, its focal length and bulge, and every depth and radius that is unsure. */
export function photoUnknowns(photo: MeasurePhoto, index: number, held: HeldBike): readonly Unknown[] | null {
  const start = firstCamera(photo, held);
  if (start === null) return null;
  const name = `Photo ${index + 1}`;
  const key = (what: string): string => keyOf(index, what);
  const list: Unknown[] = [
    { key: key('x'), label: `${name}, camera along the bike`, unit: 'mm', start: start.at.x },
    { key: key('y'), label: `${name}, camera over the floor`, unit: 'mm', start: start.at.y },
    { key: key('z'), label: `${name}, camera away from the bike`, unit: 'mm', start: start.at.z },
    { key: key('yaw'), label: `${name}, camera turned`, unit: 'mrad', start: 0 },
    { key: key('pitch'), label: `${name}, camera tipped`, unit: 'mrad', start: 0 },
    { key: key('roll'), label: `${name}, camera rolled`, unit: 'mrad', start: 1000 * start.roll },
  ];
  for (const { what, label } of unsureOf(photo))
    list.push({ key: key(what), label: `${name}, ${label}`, unit: 'mm', start: 0 });
  return list;
}

/** What the photo is unsure of beside its camera: each a deviation from what is stated, in units of its own sd. */
interface Unsure {
  readonly what: string;
  readonly label: string;
  readonly sd: number;
}

function unsureOf({ focalPx, focalSd, bulgeSd, clicks, rims }: MeasurePhoto): readonly Unsure[] {
  const found = new Map<string, Unsure>();
  const add = (what: string, label: string, sd: number): void => {
    if (sd > 0) found.set(what, { what, label, sd });
  };
  add('focal', 'focal length, per mille', (1000 * focalSd) / focalPx);
  add('bulge', 'bulge of the lens, per mille', 10 * bulgeSd);
  for (const { part, depthSd } of clicks) add(`depth:${part}`, `depth of ${part}`, depthSd);
  for (const { wheel, depthSd, radiusSd } of rims) {
    add(`depth:${wheel}`, `depth of ${wheel}`, depthSd);
    add(`radius:${wheel}`, `ring of ${wheel}`, radiusSd);
  }
  return [...found.values()];
}

/** Two rows for each click, one for each point on a rim, and one for each figure that comes with a ±. */
export function photoRows(photo: MeasurePhoto, index: number): readonly FitRow[] {
  const rows: FitRow[] = [];
  const { state } = photo;
  const ofCamera = new Set<string>(Object.values(cameraKeys(index)));
  const add = (
    figure: MeasureKind['figure'],
    measured: number,
    sd: number,
    parts: FitRow['row']['parts'],
    movedByPhoto: (key: string) => boolean,
  ): void => {
    const row = { parts, state, otherState: null, outOfPlane: 0 };
    rows.push({ kind: { ...PHOTO_KIND, state, sd, figure }, row, measured, sd, movedByPhoto });
  };
  for (const click of photo.clicks) {
    const depth = keyOf(index, `depth:${click.part}`);
    // Both coordinates are asked of the same held bike, one after the other.
    let last: { readonly held: HeldBike; readonly pixel: Pixel | null } | null = null;
    const pixelOn = (held: HeldBike): Pixel | null => {
      if (last?.held !== held) last = { held, pixel: clicked(held, photo, index, click, depth) };
      return last.pixel;
    };
    for (const axis of ['x', 'y'] as const)
      add(
        (held) => pixelOn(held)?.[axis] ?? null,
        axis === 'x' ? click.xPx : click.yPx,
        click.sdPx,
        [click.part],
        (key) => key === depth || ofCamera.has(key),
      );
  }
  for (const rim of photo.rims) {
    const depth = keyOf(index, `depth:${rim.wheel}`);
    const radius = keyOf(index, `radius:${rim.wheel}`);
    add(
      (held) => offRim(held, photo, index, rim, { depth, radius }),
      0,
      rim.sdPx,
      [rim.wheel],
      (key) => key === depth || key === radius || ofCamera.has(key),
    );
  }
  for (const { what, sd } of unsureOf(photo)) {
    const own = keyOf(index, what);
    add(
      ({ unknown }) => unknown(own),
      0,
      sd,
      [],
      (key) => key === own,
    );
  }
  return rows;
}

/** The key of an unknown of a photo. */
function keyOf(index: number, what: string): string {
  return `photo${index}:${what}`;
}

const OF_CAMERA = ['x', 'y', 'z', 'yaw', 'pitch', 'roll', 'focal', 'bulge'] as const;
type CameraKeys = Readonly<Record<(typeof OF_CAMERA)[number], string>>;
const CAMERA_KEYS: CameraKeys[] = [];

/** The keys of what all rows of a photo change with, made once: a fit needs them hundreds of thousands of times. */
function cameraKeys(index: number): CameraKeys {
  CAMERA_KEYS[index] ??= Object.fromEntries(
    OF_CAMERA.map((what) => [what, keyOf(index, what)]),
  ) as unknown as CameraKeys;
  return CAMERA_KEYS[index];
}

const PHOTO_KIND: MeasureKind = {
  key: 'photo',
  label: 'Photo',
  quantity: 'count',
  read: 'number',
  takes: [],
  sd: 1,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: false,
  least: -Infinity,
  most: Infinity,
  drawnAs: null,
  help: '',
  figure: () => null,
  fromOther: null,
};

/** The camera of a held bike, which is the same for all rows of one photo. */
const cameras = new WeakMap<HeldBike, Map<MeasurePhoto, Camera>>();

/** The camera that took a photo, as a held bike has it. */
export function cameraOf(held: HeldBike, photo: MeasurePhoto, index: number): Camera {
  const known = cameras.get(held) ?? new Map<MeasurePhoto, Camera>();
  const camera = known.get(photo) ?? newCamera(held, photo, index);
  known.set(photo, camera);
  cameras.set(held, known);
  return camera;
}

function newCamera(held: HeldBike, photo: MeasurePhoto, index: number): Camera {
  const get = held.unknown;
  const keys = cameraKeys(index);
  return {
    at: { x: get(keys.x), y: get(keys.y), z: get(keys.z) },
    yaw: get(keys.yaw) / 1000,
    pitch: get(keys.pitch) / 1000,
    roll: get(keys.roll) / 1000,
    focal: photo.focalPx * (1 + get(keys.focal) / 1000),
    bulge: get(keys.bulge) / 1000,
    widthPx: photo.widthPx,
    heightPx: photo.heightPx,
    mirrored: photo.side === 'left',
  };
}

function clicked(
  held: HeldBike,
  photo: MeasurePhoto,
  index: number,
  { part, depth }: PartClick,
  depthKey: string,
): Pixel | null {
  const at = held.place(part);
  if (at === null) return null;
  const z = depth + held.unknown(depthKey);
  return onPicture(cameraOf(held, photo, index), { ...at, z });
}

/** How far a point on a ring lies outside it, pixels. */
function offRim(
  held: HeldBike,
  photo: MeasurePhoto,
  index: number,
  rim: RimClick,
  keys: { readonly depth: string; readonly radius: string },
): number | null {
  const { wheel, xPx, yPx, depth, radius } = rim;
  const middle = held.place(RINGS[wheel]);
  const z = depth + held.unknown(keys.depth);
  const met = onPlane(cameraOf(held, photo, index), { x: xPx, y: yPx }, z);
  if (middle === null || met === null) return null;
  return (distance(met, middle) - radius - held.unknown(keys.radius)) * met.pxPerMm;
}

/** A camera square to the bike that puts the clicks where they are as well as a turned and scaled picture can. */
function firstCamera(photo: MeasurePhoto, held: HeldBike): Pick<Camera, 'at' | 'roll'> | null {
  const { widthPx, heightPx, focalPx, side, clicks } = photo;
  const pairs: (readonly [Point, Point])[] = [];
  for (const { part, xPx, yPx } of [...clicks, ...ringMiddles(photo)]) {
    const at = held.place(part);
    if (at === null) return null;
    pairs.push([at, { x: (side === 'left' ? widthPx - xPx : xPx) - widthPx / 2, y: heightPx / 2 - yPx }]);
  }
  const mean = (which: 0 | 1): Point => ({
    x: pairs.reduce((sum, pair) => sum + pair[which].x, 0) / pairs.length,
    y: pairs.reduce((sum, pair) => sum + pair[which].y, 0) / pairs.length,
  });
  const [place, pixel] = [mean(0), mean(1)];
  let along = 0;
  let across = 0;
  let size = 0;
  for (const [p, q] of pairs) {
    const [x, y] = [p.x - place.x, p.y - place.y];
    const [u, v] = [q.x - pixel.x, q.y - pixel.y];
    along += x * u + y * v;
    across += x * v - y * u;
    size += x * x + y * y;
  }
  const scale = Math.hypot(along, across) / size;
  if (!(scale > 0) || !Number.isFinite(scale)) return null;
  const roll = Math.atan2(across, along);
  const [u, v] = [pixel.x / scale, pixel.y / scale];
  const back = { x: u * Math.cos(roll) + v * Math.sin(roll), y: -u * Math.sin(roll) + v * Math.cos(roll) };
  return { at: { x: place.x - back.x, y: place.y - back.y, z: focalPx / scale }, roll };
}

/** The middle of each rim on the picture, as near as a first guess needs; pins may lie on one side of their sprocket alone. */
function ringMiddles({ rims }: MeasurePhoto): readonly Pick<PartClick, 'part' | 'xPx' | 'yPx'>[] {
  return RING_KEYS.flatMap((key) => {
    const on = rims.filter(({ wheel }) => wheel === key);
    if (on.length < LEAST_RIM_POINTS) return [];
    const [xs, ys] = [on.map(({ xPx }) => xPx), on.map(({ yPx }) => yPx)];
    const middle = (all: readonly number[]): number => (Math.min(...all) + Math.max(...all)) / 2;
    return [{ part: RINGS[key], xPx: middle(xs), yPx: middle(ys) }];
  });
}
