/** Tests of the turn that puts a picture's corners on four places. */
import { describe, expect, it } from 'vitest';
import { onPicture, onPlane, type Camera } from '../../core/measure/photo/camera.ts';
import type { Point } from '../../core/plane/point.ts';
import { quadMatrix } from './quad-matrix.ts';

/** As a browser lays a box on the screen by `matrix3d`. */
function laid(matrix: readonly number[], { x, y }: Point): Point {
  const away = matrix[3] * x + matrix[7] * y + matrix[15];
  return {
    x: (matrix[0] * x + matrix[4] * y + matrix[12]) / away,
    y: (matrix[1] * x + matrix[5] * y + matrix[13]) / away,
  };
}

describe('the turn of a picture', () => {
  const corners = [
    { x: 10, y: 20 },
    { x: 400, y: -30 },
    { x: 380, y: 310 },
    { x: -20, y: 250 },
  ] as const;

  it('puts its four corners on the four places', () => {
    const matrix = quadMatrix(1600, 1200, corners);
    for (const [i, corner] of [
      { x: 0, y: 0 },
      { x: 1600, y: 0 },
      { x: 1600, y: 1200 },
      { x: 0, y: 1200 },
    ].entries()) {
      expect(laid(matrix, corner).x).toBeCloseTo(corners[i].x, 9);
      expect(laid(matrix, corner).y).toBeCloseTo(corners[i].y, 9);
    }
  });

  it.each([false, true])('puts every place of a plane where a camera has it; mirrored: %s', (mirrored) => {
    const camera: Camera = {
      at: { x: 900, y: 700, z: 4000 },
      yaw: 0.15,
      pitch: -0.08,
      roll: 0.05,
      focal: 2500,
      bulge: 0,
      widthPx: 1600,
      heightPx: 1200,
      mirrored,
    };
    const met = (x: number, y: number): Point => {
      const at = onPlane(camera, { x, y }, 0);
      if (at === null) throw new Error('the camera sees past the plane');
      return at;
    };
    const matrix = quadMatrix(1600, 1200, [met(0, 0), met(1600, 0), met(1600, 1200), met(0, 1200)]);
    for (const place of [
      { x: 0, y: 300 },
      { x: 1400, y: 900 },
    ]) {
      const pixel = onPicture(camera, { ...place, z: 0 });
      if (pixel === null) throw new Error('behind the camera');
      expect(laid(matrix, pixel).x).toBeCloseTo(place.x, 6);
      expect(laid(matrix, pixel).y).toBeCloseTo(place.y, 6);
    }
  });
});
