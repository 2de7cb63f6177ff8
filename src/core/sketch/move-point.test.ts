/** Tests of moving points: the moved one lands where it was put, and no other moves in the frame. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { likelyBike } from '../../../tests/support/random-bikes.ts';
import { standing } from '../../../tests/support/standing.ts';
import { distance, type Point } from '../plane/point.ts';
import { machine } from '../springs/machine.ts';
import { stance, type Stance } from '../springs/stance.ts';
import { movePoint } from './move-point.ts';
import { inFrame, pointPlace, SKETCH_POINTS, type PointKey } from './points.ts';

const RIDDEN = { front: 40, rear: 40 };
/** Points stay or land to a hundred-thousandth of the finest step a hand can make, mm. */
const NEAR = 1e-7;
const PATCHES: readonly PointKey[] = ['rearPatch', 'frontPatch'];
const FRAME_POINTS = SKETCH_POINTS.map((p) => p.key).filter((key) => !PATCHES.includes(key));

function places(on: Stance, headTubeLength: number): Map<PointKey, Point> {
  return new Map(FRAME_POINTS.map((key) => [key, inFrame(on, pointPlace(on, key, headTubeLength))]));
}

describe('moving any point of many bikes by up to 60 mm', () => {
  it.each(FRAME_POINTS)(
    'puts the point %s at its target and leaves every other where it was in the frame',
    (key) => {
      let moved = 0;
      const step = fc.double({ min: -60, max: 60, noNaN: true });
      fc.assert(
        fc.property(likelyBike, step, step, ({ bike, setup, travel }, dx, dy) => {
          const made = machine(bike, setup);
          const on = made.ok ? stance(made, travel) : made;
          if (!on.ok) return;
          const from = pointPlace(on, key, bike.frame.headTubeLength);
          const target = { x: from.x + dx, y: from.y + dy };
          const result = movePoint(bike, setup, on, key, target);
          if (!result.ok) return;
          const remade = machine(result.value.bike, result.value.setup);
          const after = remade.ok ? stance(remade, travel) : remade;
          if (!after.ok) return;
          const now = places(after, result.value.bike.frame.headTubeLength);
          // The frame's origin is the pivot, so when that moves, so do all coordinates.
          const origin = key === 'pivot' ? inFrame(on, target) : { x: 0, y: 0 };
          for (const [other, was] of places(on, bike.frame.headTubeLength)) {
            const expected = other === key ? inFrame(on, target) : was;
            const is = now.get(other) ?? { x: NaN, y: NaN };
            expect(distance({ x: is.x + origin.x, y: is.y + origin.y }, expected), other).toBeLessThan(NEAR);
          }
          moved++;
        }),
        { numRuns: 600 },
      );
      expect(moved).toBeGreaterThan(400);
    },
  );
});

describe('moving a point anywhere at all', () => {
  it('lands it there, or refuses, or gives a bike that is refused; it never lands elsewhere', () => {
    const far = fc.double({ min: -3000, max: 3000, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...FRAME_POINTS), far, far, (key, x, y) => {
        const on = standing(plainBike, plainSetup, RIDDEN);
        const result = movePoint(plainBike, plainSetup, on, key, { x, y });
        if (!result.ok) return;
        const remade = machine(result.value.bike, result.value.setup);
        const after = remade.ok ? stance(remade, RIDDEN) : remade;
        if (!after.ok) return;
        const target = inFrame(on, { x, y });
        const landed = inFrame(after, pointPlace(after, key, result.value.bike.frame.headTubeLength));
        const expected = key === 'pivot' ? { x: 0, y: 0 } : target;
        expect(distance(landed, expected)).toBeLessThan(NEAR);
        const axle = inFrame(after, { x: after.rearAxleX, y: after.rearAxleY });
        const axleBefore = inFrame(on, { x: on.rearAxleX, y: on.rearAxleY });
        if (key === 'pivot')
          expect(distance({ x: axle.x + target.x, y: axle.y + target.y }, axleBefore)).toBeLessThan(NEAR);
      }),
      { numRuns: 20_000 },
    );
  });
});

describe('moving a contact patch', () => {
  const on = standing(plainBike, plainSetup, RIDDEN);

  it.each([
    { key: 'rearPatch', tyre: 'rearTyre' },
    { key: 'frontPatch', tyre: 'frontTyre' },
  ] as const)('$key sets the measured diameter of its own tyre only', ({ key, tyre }) => {
    const x = key === 'rearPatch' ? 0 : on.pose.wheelbase;
    const result = movePoint(plainBike, plainSetup, on, key, { x, y: -10 });
    if (!result.ok) throw new Error(result.reason);
    const radius = key === 'rearPatch' ? on.machine.rearRadius : on.machine.frontRadius;
    expect(result.value.bike).toBe(plainBike);
    expect(result.value.setup).toEqual({ ...plainSetup, [tyre]: { diameter: 2 * (radius + 10) } });
  });

  it('back to where it is leaves the diameter as it was', () => {
    const result = movePoint(plainBike, plainSetup, on, 'rearPatch', { x: 0, y: 0 });
    if (!result.ok || !('diameter' in result.value.setup.rearTyre)) throw new Error('no diameter');
    expect(result.value.setup.rearTyre.diameter).toBeCloseTo(640.8, 9);
  });
});

describe('moving a point is refused', () => {
  const on = standing(plainBike, plainSetup, RIDDEN);
  const refusal = (key: PointKey, to: Point) => {
    const result = movePoint(plainBike, plainSetup, on, key, to);
    return result.ok ? 'moved' : result.reason;
  };

  it('when the target is not a number', () => {
    for (const { key } of SKETCH_POINTS) {
      expect(refusal(key, { x: NaN, y: 0 })).toBe('notANumber');
      expect(refusal(key, { x: 0, y: Infinity })).toBe('notANumber');
    }
  });

  it('when pivot and axle, or both ends of the steering axis, would fall together', () => {
    const at = (key: PointKey) => pointPlace(on, key, plainBike.frame.headTubeLength);
    expect(refusal('pivot', at('rearAxle'))).toBe('onOtherPoint');
    expect(refusal('rearAxle', at('pivot'))).toBe('onOtherPoint');
    expect(refusal('steeringHead', at('axisFoot'))).toBe('onOtherPoint');
    expect(refusal('axisFoot', at('steeringHead'))).toBe('onOtherPoint');
  });

  it('when the axle would pass ahead of the pivot, where no arm trails', () => {
    expect(refusal('rearAxle', { x: on.pose.originX + 60, y: 300 })).toBe('axleNotBehindPivot');
    expect(refusal('pivot', { x: -60, y: 400 })).toBe('axleNotBehindPivot');
  });
});
