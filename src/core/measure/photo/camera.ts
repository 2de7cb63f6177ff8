/** A camera beside the bike: from a place in space to the picture, and back along the ray. */

/** A place in space, mm: x forward and y up as the floor frame, z from the bike's middle plane toward the camera. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export interface Camera {
  /** Where it stands. */
  readonly at: Place;
  /** Turned about the upright, tipped, and rolled about its axis, radians; all zero looks square at the bike. */
  readonly yaw: number;
  readonly pitch: number;
  readonly roll: number;
  /** Focal length, pixels. */
  readonly focal: number;
  /** How much further out than without a bulge a corner of the picture lies, as a part. */
  readonly bulge: number;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Whether the picture is mirrored: the bike was taken from its left. */
  readonly mirrored: boolean;
}

export interface Pixel {
  readonly x: number;
  readonly y: number;
}

/** Rounds in which a bulge is taken off; each gains two digits or more. */
const ROUNDS = 12;
/** Nearer to the camera than this nothing is seen, mm. */
const NEAREST = 50;

/** Where a place is on the picture, as taken; null behind the camera. The middle of the picture is on its axis. */
export function onPicture(camera: Camera, place: Place): Pixel | null {
  const { at, focal, bulge, widthPx, heightPx, mirrored } = camera;
  const seen = turned(camera, { x: place.x - at.x, y: place.y - at.y, z: place.z - at.z });
  const away = -seen.z;
  if (!(away > NEAREST)) return null;
  const x = seen.x / away;
  const y = seen.y / away;
  const out = 1 + bulge * (x * x + y * y) * cornerScale(camera);
  const along = widthPx / 2 + focal * x * out;
  return { x: mirrored ? widthPx - along : along, y: heightPx / 2 - focal * y * out };
}

/** Where the ray through a pixel meets the plane `depth` mm before the bike's middle, and how many pixels one mm is there; null where it does not. */
export function onPlane(
  camera: Camera,
  pixel: Pixel,
  depth: number,
): { readonly x: number; readonly y: number; readonly pxPerMm: number } | null {
  const { at, focal, bulge, widthPx, heightPx, mirrored } = camera;
  const along = mirrored ? widthPx - pixel.x : pixel.x;
  const farX = (along - widthPx / 2) / focal;
  const farY = (heightPx / 2 - pixel.y) / focal;
  let x = farX;
  let y = farY;
  for (let round = 0; round < ROUNDS; round++) {
    const out = 1 + bulge * (x * x + y * y) * cornerScale(camera);
    x = farX / out;
    y = farY / out;
  }
  const ray = turnedBack(camera, { x, y, z: -1 });
  const way = (depth - at.z) / ray.z;
  if (!(way > NEAREST)) return null;
  return { x: at.x + way * ray.x, y: at.y + way * ray.y, pxPerMm: focal / way };
}

/** One over the squared tangent of a corner's angle off the axis. */
function cornerScale({ focal, widthPx, heightPx }: Camera): number {
  return (4 * focal * focal) / (widthPx * widthPx + heightPx * heightPx);
}

function turned({ yaw, pitch, roll }: Camera, { x, y, z }: Place): Place {
  const x1 = x * Math.cos(yaw) - z * Math.sin(yaw);
  const z1 = x * Math.sin(yaw) + z * Math.cos(yaw);
  const y2 = y * Math.cos(pitch) - z1 * Math.sin(pitch);
  const z2 = y * Math.sin(pitch) + z1 * Math.cos(pitch);
  return {
    x: x1 * Math.cos(roll) - y2 * Math.sin(roll),
    y: x1 * Math.sin(roll) + y2 * Math.cos(roll),
    z: z2,
  };
}

function turnedBack({ yaw, pitch, roll }: Camera, { x, y, z }: Place): Place {
  const x1 = x * Math.cos(roll) + y * Math.sin(roll);
  const y2 = -x * Math.sin(roll) + y * Math.cos(roll);
  const y1 = y2 * Math.cos(pitch) + z * Math.sin(pitch);
  const z1 = -y2 * Math.sin(pitch) + z * Math.cos(pitch);
  return {
    x: x1 * Math.cos(yaw) + z1 * Math.sin(yaw),
    y: y1,
    z: -x1 * Math.sin(yaw) + z1 * Math.cos(yaw),
  };
}
