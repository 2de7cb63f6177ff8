/** Tests of moving points: the moved one lands where it was put, and no other moves in the frame. */
import { inFrame, onGround } from '../chassis/pose.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { filled } from '../../../tests/support/filled.ts';
import { PARTS, placed } from '../../../tests/support/points.ts';
import { plainBike, plainSetup, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { rockerToFrame, rearLayouts } from '../../../tests/support/rear-layouts.ts';
import { likelyBike } from '../../../tests/support/random-bikes.ts';
import { standing } from '../../../tests/support/standing.ts';
import type { Bike } from '../parts/bike.ts';
import { distance, type Point } from '../plane/point.ts';
import { machine } from '../standing/machine.ts';
import { stance, type Stance } from '../standing/stance.ts';
import { movePoint } from './move-point.ts';
import { SKETCH_POINTS, pointPlace, pointsOf, type PointKey } from './points.ts';

const RIDDEN = { front: 40, rear: 40 };
/** Points stay or land to a hundred-thousandth of the finest step a hand can make, mm. */
const NEAR = 1e-7;
const PATCHES: readonly string[] = ['rearPatch', 'frontPatch'];
const FRAME_POINTS = PARTS.map((p) => p.key).filter((key) => !PATCHES.includes(key));

function places(on: Stance, bike: Bike): Map<PointKey, Point> {
  return new Map(FRAME_POINTS.map((key) => [key, inFrame(on.pose, placed(on, bike, key))]));
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
          const from = placed(on, bike, key);
          const target = { x: from.x + dx, y: from.y + dy };
          const result = movePoint(key, { bike, setup, stance: on, target });
          if (!result.ok) return;
          const remade = machine(result.value.bike, result.value.setup);
          const after = remade.ok ? stance(remade, travel) : remade;
          if (!after.ok) return;
          const now = places(after, result.value.bike);
          // The frame's origin is the pivot, so when that moves, so do all coordinates.
          const origin = key === 'pivot' ? inFrame(on.pose, target) : { x: 0, y: 0 };
          for (const [other, was] of places(on, bike)) {
            const expected = other === key ? inFrame(on.pose, target) : was;
            const is = now.get(other) ?? { x: NaN, y: NaN };
            expect(distance({ x: is.x + origin.x, y: is.y + origin.y }, expected), other).toBeLessThan(NEAR);
          }
          moved++;
        }),
        { numRuns: cases(200) },
      );
      expect(moved).toBeGreaterThan(cases(130));
    },
  );
});

describe('moving a point anywhere at all', () => {
  it('lands it there, or refuses, or gives a bike that is refused; it never lands elsewhere', () => {
    const within = (reach: number) => fc.double({ min: -reach, max: reach, noNaN: true });
    const step = fc.oneof(fc.tuple(within(3000), within(3000)), fc.tuple(within(300), within(300)));
    const landings = new Map<string, number>();
    fc.assert(
      fc.property(fc.constantFrom(...FRAME_POINTS), step, (key, [dx, dy]) => {
        const on = standing(plainBike, plainSetup, RIDDEN);
        const from = placed(on, plainBike, key);
        const [x, y] = [from.x + dx, from.y + dy];
        const result = movePoint(key, { bike: plainBike, setup: plainSetup, stance: on, target: { x, y } });
        if (!result.ok) return;
        const remade = machine(result.value.bike, result.value.setup);
        const after = remade.ok ? stance(remade, RIDDEN) : remade;
        if (!after.ok) return;
        const target = inFrame(on.pose, { x, y });
        const landed = inFrame(after.pose, placed(after, result.value.bike, key));
        const expected = key === 'pivot' ? { x: 0, y: 0 } : target;
        expect(distance(landed, expected)).toBeLessThan(NEAR);
        const axle = inFrame(after.pose, after.rearAxle);
        const axleBefore = inFrame(on.pose, on.rearAxle);
        if (key === 'pivot')
          expect(distance({ x: axle.x + target.x, y: axle.y + target.y }, axleBefore)).toBeLessThan(NEAR);
        landings.set(key, (landings.get(key) ?? 0) + 1);
      }),
      { numRuns: cases(4000) },
    );
    for (const key of filled(FRAME_POINTS)) expect(landings.get(key), key).toBeGreaterThan(cases(10));
  });
});

describe('moving any point of a bike with real links, its adjusters turned, by up to 25 mm', () => {
  const step = fc.double({ min: -25, max: 25, noNaN: true });
  const few = fc.double({ min: -4, max: 4, noNaN: true });
  const used = fc.double({ min: 0, max: 60, noNaN: true });
  const drawnPlaces = (on: Stance, bike: Bike): Map<PointKey, Point> =>
    new Map(
      pointsOf(bike).flatMap(({ key }) => {
        const place = pointPlace(on, bike, key);
        return place === null || PATCHES.includes(key) ? [] : [[key, inFrame(on.pose, place)] as const];
      }),
    );

  it.each(rearLayouts)(
    '$name: puts it at its target and leaves every part and bolt where it was in the frame',
    ({ layout }) => {
      const bike = withSwingarm(plainBike, { links: layout });
      const keys = pointsOf(bike).flatMap(({ key }) => (PATCHES.includes(key) ? [] : [key]));
      expect(keys.length).toBe(FRAME_POINTS.length + (layout.kind === 'direct' ? 2 : 5));
      const moved = new Map<PointKey, number>();
      fc.assert(
        fc.property(
          fc.constantFrom(...keys),
          fc.tuple(step, step, used),
          fc.tuple(few, few, few, few, few),
          (key, [dx, dy, rear], [shockLength, shockMountShim, rod, pivotForward, pivotUp]) => {
            const linkLength = layout.kind === 'direct' ? 0 : rod / 2;
            const setup = { ...plainSetup, shockLength, shockMountShim, linkLength, pivotForward, pivotUp };
            const made = machine(bike, setup);
            const on = made.ok ? stance(made, { front: 40, rear }) : made;
            if (!on.ok) return;
            const before = drawnPlaces(on, bike);
            const own = before.get(key);
            if (own === undefined) throw new Error(key);
            const at = { x: own.x + dx, y: own.y + dy };
            const result = movePoint(key, { bike, setup, stance: on, target: onGround(on.pose, at) });
            if (!result.ok) return;
            const remade = machine(result.value.bike, setup);
            const after = remade.ok ? stance(remade, { front: 40, rear }) : remade;
            if (!after.ok) return;
            const now = drawnPlaces(after, result.value.bike);
            const origin = key === 'pivot' ? at : { x: 0, y: 0 };
            for (const [other, was] of before) {
              const is = now.get(other) ?? { x: NaN, y: NaN };
              const away = distance({ x: is.x + origin.x, y: is.y + origin.y }, other === key ? at : was);
              expect(away, other).toBeLessThan(NEAR);
            }
            moved.set(key, (moved.get(key) ?? 0) + 1);
          },
        ),
        { numRuns: cases(600) },
      );
      for (const key of keys) expect(moved.get(key), key).toBeGreaterThan(cases(10));
    },
  );

  it('refuses a bolt that the links do not have, and a place where they cannot close', () => {
    const bike = withSwingarm(plainBike, { links: rockerToFrame });
    const on = standing(bike, plainSetup, RIDDEN);
    const refusalOf = (of: Bike, key: PointKey, to: Point) => {
      const result = movePoint(key, { bike: of, setup: plainSetup, stance: on, target: to });
      return result.ok ? 'moved' : result.reason;
    };
    expect(refusalOf(bike, 'shockOnArm', { x: 0, y: 0 })).toBe('noSuchPoint');
    expect(refusalOf(plainBike, 'rockerPivot', { x: 0, y: 0 })).toBe('noSuchPoint');
    const rod = placed(on, bike, 'rodOnRocker');
    expect(refusalOf(bike, 'rockerPivot', rod)).toBe('linksCannotFollow');
    // 90 mm away there are places where nothing closes, and others where the shock would be pulled.
    const round = Array.from({ length: 24 }, (_, i) => (i * Math.PI) / 12);
    const places = round.map((way) => ({ x: rod.x + 90 * Math.cos(way), y: rod.y + 90 * Math.sin(way) }));
    const refusals = new Set(places.map((to) => refusalOf(bike, 'rodOnRocker', to)));
    expect([...refusals].sort()).toEqual(['linksCannotFollow', 'moved', 'shockTurnsBack']);
  });
});

describe('moving a contact patch', () => {
  const on = standing(plainBike, plainSetup, RIDDEN);

  it.each([
    { key: 'rearPatch', tyre: 'rearTyre' },
    { key: 'frontPatch', tyre: 'frontTyre' },
  ] as const)('$key sets the measured diameter of its own tyre only', ({ key, tyre }) => {
    const x = key === 'rearPatch' ? 0 : on.pose.wheelbase;
    const result = movePoint(key, { bike: plainBike, setup: plainSetup, stance: on, target: { x, y: -10 } });
    if (!result.ok) throw new Error(result.reason);
    const radius = key === 'rearPatch' ? on.machine.rearRadius : on.machine.frontRadius;
    expect(result.value.bike).toBe(plainBike);
    expect(result.value.setup).toEqual({ ...plainSetup, [tyre]: { diameter: 2 * (radius + 10) } });
  });

  it('back to where it is leaves the diameter as it was', () => {
    const result = movePoint('rearPatch', {
      bike: plainBike,
      setup: plainSetup,
      stance: on,
      target: { x: 0, y: 0 },
    });
    if (!result.ok || !('diameter' in result.value.setup.rearTyre)) throw new Error('no diameter');
    expect(result.value.setup.rearTyre.diameter).toBeCloseTo(640.8, 9);
  });
});

describe('moving a point is refused', () => {
  const on = standing(plainBike, plainSetup, RIDDEN);
  const refusal = (key: PointKey, to: Point) => {
    const result = movePoint(key, { bike: plainBike, setup: plainSetup, stance: on, target: to });
    return result.ok ? 'moved' : result.reason;
  };

  it('when the target is not a number', () => {
    for (const { key } of SKETCH_POINTS) {
      expect(refusal(key, { x: NaN, y: 0 })).toBe('notANumber');
      expect(refusal(key, { x: 0, y: Infinity })).toBe('notANumber');
    }
  });

  it('when pivot and axle, or both ends of the steering axis, would fall together', () => {
    const at = (key: PointKey) => placed(on, plainBike, key);
    expect(refusal('pivot', at('rearAxle'))).toBe('onOtherPoint');
    expect(refusal('rearAxle', at('pivot'))).toBe('onOtherPoint');
    expect(refusal('steeringHead', at('axisFoot'))).toBe('onOtherPoint');
    expect(refusal('axisFoot', at('steeringHead'))).toBe('onOtherPoint');
  });

  it('when the axle would pass ahead of the pivot, where no arm trails', () => {
    expect(refusal('rearAxle', { x: on.pose.pivot.x + 60, y: 300 })).toBe('axleNotBehindPivot');
    expect(refusal('pivot', { x: -60, y: 400 })).toBe('axleNotBehindPivot');
  });
});
