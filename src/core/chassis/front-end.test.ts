/** Tests of the front end in the frame. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup, withFork, withFrame } from '../../../tests/support/plain-bike.ts';
import { radians } from '../units/convert.ts';
import { effectiveOffset, frontAxle, frontEnd, onLegs } from './front-end.ts';

describe('the front axle in the frame', () => {
  it('lies one leg length below the head, and ahead of it by offset and lead, when the axis is upright', () => {
    const bike = withFork(withFrame(plainBike, { axisAngleDeg: 0 }), { length: 700, axleLead: 10 });
    const front = frontEnd(bike, { ...plainSetup, forkTubes: 5, forkExtenders: 15, clampOffset: 30 });
    expect(frontAxle(front, 0).x).toBeCloseTo(520 + 30 + 10, 10);
    expect(frontAxle(front, 0).y).toBeCloseTo(530 - 710, 10);
    expect(frontAxle(front, 60).y).toBeCloseTo(530 - 650, 10);
  });

  it('moves along the legs as travel is used', () => {
    const front = frontEnd(plainBike, plainSetup);
    expect(frontAxle(front, 40).x - frontAxle(front, 0).x).toBeCloseTo(-40 * Math.sin(radians(24)), 10);
    expect(frontAxle(front, 40).y - frontAxle(front, 0).y).toBeCloseTo(40 * Math.cos(radians(24)), 10);
  });
});

describe('a place on the legs', () => {
  it('lies at the top clamp at 0 mm down, and square ahead of the legs by the distance ahead', () => {
    const bike = withFork(plainBike, { legAngleDeg: 3 });
    const front = frontEnd(bike, plainSetup);
    const top = onLegs(front, 0, 0);
    expect(top.x).toBeCloseTo(front.head.x + 30 * Math.cos(radians(24)), 10);
    expect(top.y).toBeCloseTo(front.head.y + 30 * Math.sin(radians(24)), 10);
    const place = onLegs(front, 100, 20);
    expect(place.x - top.x).toBeCloseTo(100 * Math.sin(radians(21)) + 20 * Math.cos(radians(21)), 10);
    expect(place.y - top.y).toBeCloseTo(20 * Math.sin(radians(21)) - 100 * Math.cos(radians(21)), 10);
  });
});

describe('head-angle cups', () => {
  it('turn the axis about the middle of the head tube', () => {
    const middle = (insert: number) => {
      const front = frontEnd(plainBike, { ...plainSetup, headAngleCupsDeg: insert });
      const half = plainBike.frame.headTubeLength / 2;
      return {
        x: front.head.x + half * Math.sin(front.axisAngle),
        y: front.head.y - half * Math.cos(front.axisAngle),
      };
    };
    expect(middle(2).x).toBeCloseTo(middle(0).x, 10);
    expect(middle(2).y).toBeCloseTo(middle(0).y, 10);
  });

  it('lean the axis back when positive, and the clamp goes with it', () => {
    const front = frontEnd(plainBike, { ...plainSetup, headAngleCupsDeg: 2 });
    expect(front.axisAngle).toBeCloseTo(radians(26), 14);
    expect(front.head.x).toBeLessThan(plainBike.frame.steeringHead.x);
  });
});

describe('the effective offset', () => {
  it('is triple-clamp offset plus axle lead with legs along the axis, whatever the travel', () => {
    const front = frontEnd(withFork(plainBike, { axleLead: 7 }), plainSetup);
    for (const travel of [0, 50, 120]) expect(effectiveOffset(front, travel)).toBeCloseTo(37, 10);
  });

  it('changes with travel when the legs are tilted, by the sine of the tilt', () => {
    const front = frontEnd(withFork(plainBike, { legAngleDeg: 2 }), plainSetup);
    const change = effectiveOffset(front, 50) - effectiveOffset(front, 0);
    expect(change).toBeCloseTo(50 * Math.sin(radians(2)), 10);
  });

  it('is the axle’s distance ahead of the drawn axis', () => {
    const front = frontEnd(withFork(plainBike, { legAngleDeg: 3, axleLead: 12 }), plainSetup);
    const dx = frontAxle(front, 30).x - front.head.x;
    const dy = frontAxle(front, 30).y - front.head.y;
    const ahead = dx * Math.cos(front.axisAngle) + dy * Math.sin(front.axisAngle);
    expect(effectiveOffset(front, 30)).toBeCloseTo(ahead, 10);
  });
});
