/** Pose and steering computed a second way that shares no formula with the first. */
import { onGround } from '../../src/core/chassis/pose.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { frontAxle } from '../../src/core/chassis/front-end.ts';
import { outerTangent } from '../../src/core/plane/circle.ts';
import { crossing } from '../../src/core/plane/line.ts';
import { normalTrail } from '../../src/core/readings/normal-trail.ts';
import { chainSliderClearance } from '../../src/core/readings/chain-slider-clearance.ts';
import { trail } from '../../src/core/readings/trail.ts';
import { axisFootInFrame } from '../../src/core/sketch/measure-steering.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { stance, type Stance } from '../../src/core/standing/stance.ts';
import { likelyBike, type RandomBike } from '../support/random-bikes.ts';
import { signedDistance } from '../support/signed-distance.ts';
import { driveCircles, topTangent } from '../support/squat-by-lines.ts';
import { angleOf } from '../../src/core/plane/point.ts';
import { chainRun } from '../../src/core/standing/chain-run.ts';

const RUNS = cases(2000);
/** A thousandth of the least length anyone could measure, mm: far above rounding, far below sense. */
const NEAR = 1e-8;

function onLikelyBikes(check: (on: Stance, drawn: RandomBike) => void): void {
  let checked = 0;
  fc.assert(
    fc.property(likelyBike, (drawn) => {
      const made = machine(drawn.bike, drawn.setup);
      const on = made.ok ? stance(made, drawn.travel) : made;
      if (!on.ok) return;
      check(on, drawn);
      checked++;
    }),
    { numRuns: RUNS },
  );
  expect(checked).toBeGreaterThan(RUNS / 2);
}

describe('the pose', () => {
  it('is the one found by tipping the bike, by bisection, until both tyres touch', () => {
    onLikelyBikes((on) => {
      const { machine: made, travel } = on;
      const rear = { x: -made.rear.arm * Math.cos(on.arm.angle), y: -made.rear.arm * Math.sin(on.arm.angle) };
      const front = frontAxle(made.front, travel.front);
      const height = (p: { x: number; y: number }, pitch: number) =>
        Math.sin(pitch) * p.x + Math.cos(pitch) * p.y;
      // How much higher the front tyre's lowest point is than the rear's.
      const frontGap = (pitch: number) =>
        height(front, pitch) - made.frontRadius - (height(rear, pitch) - made.rearRadius);
      let low = -1.2;
      let high = 1.2;
      for (let round = 0; round < 60; round++) {
        const middle = (low + high) / 2;
        if (frontGap(middle) > 0) high = middle;
        else low = middle;
      }
      const along = (p: { x: number; y: number }) => Math.cos(low) * p.x - Math.sin(low) * p.y;
      expect(Math.abs(low - on.pose.pitch)).toBeLessThan(1e-11);
      expect(Math.abs(along(front) - along(rear) - on.pose.wheelbase)).toBeLessThan(NEAR);
      expect(Math.abs(made.rearRadius - height(rear, low) - on.pose.pivot.y)).toBeLessThan(NEAR);
    });
  });

  it('keeps the axles as far apart on the ground as they are in the frame', () => {
    onLikelyBikes((on) => {
      const { machine: made, travel } = on;
      const front = frontAxle(made.front, travel.front);
      const inFrame = Math.hypot(
        front.x + made.rear.arm * Math.cos(on.arm.angle),
        front.y + made.rear.arm * Math.sin(on.arm.angle),
      );
      const onIt = Math.hypot(on.frontAxle.x - on.rearAxle.x, on.frontAxle.y - on.rearAxle.y);
      expect(Math.abs(inFrame - onIt)).toBeLessThan(NEAR);
    });
  });

  it('puts the rear axle one arm’s length from the pivot, at the swingarm angle', () => {
    onLikelyBikes((on) => {
      const dx = on.pose.pivot.x - on.rearAxle.x;
      const dy = on.pose.pivot.y - on.rearAxle.y;
      expect(Math.abs(Math.hypot(dx, dy) - on.machine.rear.arm)).toBeLessThan(NEAR);
      expect(Math.abs(Math.atan2(dy, dx) - on.swingarmAngle)).toBeLessThan(1e-12);
    });
  });
});

describe('steering', () => {
  it('has the trail at which the drawn axis meets the drawn ground, normal trail square to it, and its offset', () => {
    onLikelyBikes((on, { bike }) => {
      const foot = axisFootInFrame(on, bike.frame.headTubeLength);
      const axis = { from: onGround(on.pose, foot), to: onGround(on.pose, on.machine.front.head) };
      const ground = { from: { x: 0, y: 0 }, to: { x: 1000, y: 0 } };
      const meeting = crossing(axis, ground);
      if (meeting === 'parallel') throw new Error(meeting);
      const patch = { x: on.pose.wheelbase, y: 0 };
      expect(Math.abs(meeting.x - patch.x - (trail.read(on) as number))).toBeLessThan(NEAR);
      // Upward along the axis, what lies ahead of it is on the right, where distances are negative.
      const ahead = (p: { x: number; y: number }) => -signedDistance(axis, p);
      expect(Math.abs(-ahead(patch) - (normalTrail.read(on) as number))).toBeLessThan(NEAR);
      expect(Math.abs(ahead(on.frontAxle) - on.offset)).toBeLessThan(NEAR);
    });
  });
});

describe('the chain runs', () => {
  it('lie along the drawn tangents and pass the pivot at the drawn distance', () => {
    onLikelyBikes((on) => {
      const { rear, front, pivot } = driveCircles(on);
      const top = topTangent(rear, front);
      const bottom = outerTangent(rear, front, 'right');
      if (bottom === 'oneInsideOther') throw new Error(bottom);
      const angle = (t: typeof top) => Math.atan2(t.to.y - t.from.y, t.to.x - t.from.x);
      expect(Math.abs(angle(top) - angleOf(chainRun(on, 'upper').way))).toBeLessThan(1e-12);
      expect(Math.abs(angle(bottom) - angleOf(chainRun(on, 'lower').way))).toBeLessThan(1e-12);
      expect(Math.abs(-signedDistance(top, pivot) - on.upperRunLever)).toBeLessThan(NEAR);
      const guide = on.machine.guideRadius ?? 0;
      expect(chainSliderClearance.read(on)).toBeCloseTo(-signedDistance(top, pivot) - guide, 7);
    });
  });
});

describe('a bike facing the other way, computed in mirrored drawings', () => {
  const mirror = (p: { x: number; y: number }) => ({ x: -p.x, y: p.y });

  it('has the same trail, swingarm angle, upper run and squat line', () => {
    let crossed = 0;
    onLikelyBikes((on, { bike }) => {
      const foot = axisFootInFrame(on, bike.frame.headTubeLength);
      const head = mirror(onGround(on.pose, on.machine.front.head));
      const low = mirror(onGround(on.pose, foot));
      const meeting = crossing({ from: head, to: low }, { from: { x: 0, y: 0 }, to: { x: -1, y: 0 } });
      if (meeting === 'parallel') throw new Error(meeting);
      expect(Math.abs(-on.pose.wheelbase - meeting.x - (trail.read(on) as number))).toBeLessThan(NEAR);

      const circles = driveCircles(on);
      const rear = { ...circles.rear, centre: mirror(circles.rear.centre) };
      const ahead = circles.guide ?? circles.front;
      // Seen from the left side the front is to the left, and the upper run on the right of the way there.
      const run = outerTangent(rear, { ...ahead, centre: mirror(ahead.centre) }, 'right');
      if (run === 'oneInsideOther') throw new Error(run);
      const pivot = mirror(circles.pivot);
      expect(Math.abs(Math.atan2(pivot.y - rear.centre.y, -pivot.x) - on.swingarmAngle)).toBeLessThan(1e-12);
      const centre = crossing(run, { from: rear.centre, to: pivot });
      if (centre === 'parallel') return;
      const slope = centre.y / -centre.x;
      expect(Math.abs(slope - on.swingarmSlope - on.chainSlope)).toBeLessThan(NEAR);
      crossed++;
    });
    expect(crossed).toBeGreaterThan(RUNS / 2);
  });
});
