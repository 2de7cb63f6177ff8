/** Holds that the edge of a rim is found on painted photos to a fraction of a pixel, whichever way the camera looks. */
import { describe, expect, it } from 'vitest';
import { onPicture, onPlane, type Camera, type Pixel } from '../../src/core/measure/photo/camera.ts';
import { holdBike, postureOf } from '../../src/core/measure/held/hold-bike.ts';
import { findRimEdge, rimWindow, type GreyWindow } from '../../src/core/measure/photo/rim-edge.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { normalNumbers, originOn, trueValues } from '../support/measured-sheet.ts';
import { aimed, CAMERA, RIM_DEPTH, RIM_RADIUS } from '../support/pictured-bike.ts';
import { renderedPhoto } from '../support/rendered-photo.ts';

const [ROAD] = DEMO_BIKES;
const origin = originOn(ROAD);
const truth = trueValues(origin, 7, 10);
const held = holdBike(postureOf(origin, truth), 'onWheels');
const axle = held?.place('frontAxle') ?? { x: NaN, y: NaN };

/** A camera of fewer pixels, so that painting is quick. */
const small = (camera: Camera): Camera => ({
  ...camera,
  widthPx: 1600,
  heightPx: 1200,
  focal: camera.focal * 0.4,
});

function clicksOn(camera: Camera, turns: readonly number[], off: (i: number) => number): readonly Pixel[] {
  return turns.map((turn, i) => {
    const reach = RIM_RADIUS + off(i);
    const at = { x: axle.x + reach * Math.cos(turn), y: axle.y + reach * Math.sin(turn), z: RIM_DEPTH };
    return onPicture(camera, at) ?? { x: NaN, y: NaN };
  });
}

const whole = (photo: ReturnType<typeof renderedPhoto>): GreyWindow => ({ leftPx: 0, topPx: 0, ...photo });

describe('the edge of a rim', () => {
  it.each([
    ['turned, tipped and rolled, at 5 m', aimed(CAMERA, 5000)],
    ['square, at 8 m', aimed({ ...CAMERA, yaw: 0, pitch: 0, roll: 0 }, 8000)],
    ['from the left, at 1.5 m', aimed({ ...CAMERA, mirrored: true }, 1500)],
    ['through a lens that bulges by 2 %', { ...aimed(CAMERA, 5000), bulge: 0.02 }],
  ])('is found from three or five clicks a few pixels beside it: %s', (_, given) => {
    const camera = small(given);
    const photo = renderedPhoto(origin, truth, camera, normalNumbers(3));
    for (const turns of [
      [0.4, 2.5, 4.6],
      [0.3, 1.5, 2.8, 4.1, 5.4],
    ]) {
      const clicks = clicksOn(camera, turns, (i) => (i % 2 === 0 ? 4 : -3));
      const found = findRimEdge(whole(photo), clicks);
      if (!found.ok) throw new Error(found.reason);
      expect(found.points.length).toBeGreaterThanOrEqual(20);
      const offs = found.points.map((at) => {
        const met = onPlane(camera, at, RIM_DEPTH);
        return met === null ? NaN : (Math.hypot(met.x - axle.x, met.y - axle.y) - RIM_RADIUS) * met.pxPerMm;
      });
      expect(Math.max(...offs.map(Math.abs))).toBeLessThan(0.5);
      expect(Math.abs(offs.reduce((sum, off) => sum + off, 0) / offs.length)).toBeLessThan(0.1);
      expect(found.sdPx).toBeLessThan(0.5);
    }
  });

  it('is refused with its reason where clicks or light make none', () => {
    const flat: GreyWindow = {
      leftPx: 0,
      topPx: 0,
      widthPx: 400,
      heightPx: 400,
      light: new Uint8Array(160_000),
    };
    const round = [0, 1, 2, 3, 4, 5].map((t) => ({ x: 200 + 90 * Math.cos(t), y: 200 + 90 * Math.sin(t) }));
    const slanted = round.map(({ x, y }) => ({ x, y: 200 + (y - 200) / 3 }));
    expect(findRimEdge(flat, round)).toEqual({ ok: false, reason: 'noEdge' });
    expect(findRimEdge(flat, slanted)).toEqual({ ok: false, reason: 'tooSlanted' });
    expect(findRimEdge(flat, round.slice(0, 2))).toEqual({ ok: false, reason: 'tooFew' });
    expect(findRimEdge(flat, [round[0], round[0], round[1]])).toEqual({ ok: false, reason: 'tooFew' });
    expect(
      findRimEdge(
        flat,
        [0, 1, 2, 3].map((i) => ({ x: 50 * i, y: 20 * i })),
      ),
    ).toEqual({
      ok: false,
      reason: 'collinear',
    });
    expect(
      findRimEdge(flat, [
        { x: 9, y: 9 },
        { x: 14, y: 9 },
        { x: 11, y: 14 },
      ]),
    ).toEqual({ ok: false, reason: 'tooSmall' });
    expect(rimWindow(round.slice(0, 2))).toBeNull();
    // A rim that lies half outside the picture is not found in it.
    expect(
      findRimEdge(
        flat,
        round.map(({ x, y }) => ({ x: x - 200, y })),
      ),
    ).toEqual({ ok: false, reason: 'noEdge' });
  });
});
