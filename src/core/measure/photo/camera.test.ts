/** Tests of the camera: against a matrix, and back along the ray. */
import { describe, expect, it } from 'vitest';
import { onPicture, onPlane, type Camera, type Place } from './camera.ts';

const CAMERA: Camera = {
  at: { x: 600, y: 700, z: 5000 },
  yaw: 0.17,
  pitch: -0.08,
  roll: 0.05,
  focal: 7000,
  bulge: 0,
  widthPx: 4000,
  heightPx: 3000,
  mirrored: false,
};

type Row = readonly [number, number, number];

const times = (a: readonly Row[], b: readonly Row[]): Row[] =>
  a.map(
    (row) => [0, 1, 2].map((j) => row[0] * b[0][j] + row[1] * b[1][j] + row[2] * b[2][j]) as unknown as Row,
  );

/** The same by a product of rotation matrices and homogeneous coordinates. */
function byMatrix({ at, yaw, pitch, roll, focal, widthPx, heightPx }: Camera, place: Place) {
  const aboutUpright: Row[] = [
    [Math.cos(yaw), 0, -Math.sin(yaw)],
    [0, 1, 0],
    [Math.sin(yaw), 0, Math.cos(yaw)],
  ];
  const tip: Row[] = [
    [1, 0, 0],
    [0, Math.cos(pitch), -Math.sin(pitch)],
    [0, Math.sin(pitch), Math.cos(pitch)],
  ];
  const about: Row[] = [
    [Math.cos(roll), -Math.sin(roll), 0],
    [Math.sin(roll), Math.cos(roll), 0],
    [0, 0, 1],
  ];
  const inner: Row[] = [
    [focal, 0, -widthPx / 2],
    [0, -focal, -heightPx / 2],
    [0, 0, -1],
  ];
  const matrix = times(inner, times(about, times(tip, aboutUpright)));
  const from = [place.x - at.x, place.y - at.y, place.z - at.z];
  const [x, y, w] = matrix.map((row) => row[0] * from[0] + row[1] * from[1] + row[2] * from[2]);
  return { x: x / w, y: y / w };
}

const PLACES: readonly Place[] = [
  { x: 0, y: 320, z: 100 },
  { x: 1400, y: 300, z: 90 },
  { x: 580, y: 390, z: -40 },
];

describe('a place on the picture', () => {
  it('is where the matrices put it', () => {
    for (const place of PLACES) {
      const pixel = onPicture(CAMERA, place);
      const expected = byMatrix(CAMERA, place);
      expect(pixel?.x).toBeCloseTo(expected.x, 8);
      expect(pixel?.y).toBeCloseTo(expected.y, 8);
    }
  });

  it('is mirrored from the left', () => {
    const right = onPicture(CAMERA, PLACES[1]);
    const left = onPicture({ ...CAMERA, mirrored: true }, PLACES[1]);
    expect((left?.x ?? NaN) + (right?.x ?? NaN)).toBeCloseTo(4000, 9);
    expect(left?.y).toBe(right?.y);
  });

  it('moves out by the bulge at a corner and not at all in the middle', () => {
    const square = { ...CAMERA, yaw: 0, pitch: 0, roll: 0, bulge: 0.02 };
    // In the corner of the picture on the plane through the bike's middle.
    const corner = { x: 600 + (2000 / 7000) * 5000, y: 700 + (1500 / 7000) * 5000, z: 0 };
    expect(onPicture(square, corner)?.x).toBeCloseTo(2000 + 2000 * 1.02, 6);
    expect(onPicture(square, { x: 600, y: 700, z: 0 })).toEqual({ x: 2000, y: 1500 });
  });

  it('there is none of what lies behind the camera', () => {
    expect(onPicture(CAMERA, { x: 600, y: 700, z: 9000 })).toBeNull();
  });
});

it('the ray back through a pixel meets the place it came from, bulge and mirror included', () => {
  for (const bulge of [0, 0.02, -0.02])
    for (const mirrored of [false, true])
      for (const place of PLACES) {
        const camera = { ...CAMERA, bulge, mirrored };
        const pixel = onPicture(camera, place);
        const met = pixel === null ? null : onPlane(camera, pixel, place.z);
        expect(met?.x).toBeCloseTo(place.x, 6);
        expect(met?.y).toBeCloseTo(place.y, 6);
        expect(met?.pxPerMm).toBeCloseTo(7000 / 4900, 0);
      }
});
