/** Tests that travel, clearance and loads are drawn as long as their readings say. */
import { expect, it } from 'vitest';
import { ridden, sprungAt, wholeBike } from '../../../tests/support/ridden-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { forkTubeSpare } from '../../core/readings/fork-tube-spare.ts';
import { tyreToClampGap } from '../../core/readings/tyre-to-clamp-gap.ts';
import type { Shape } from '../shapes/shape.ts';
import {
  clampGapPlaces,
  clampGapShapes,
  forkTopShapes,
  forkTravelShapes,
  rearTravelShapes,
  wheelLoadShapes,
} from './suspension-lines.ts';

function lengthOf(shape: Shape | undefined): number {
  if (shape?.kind !== 'path') throw new Error('no line is drawn');
  let sum = 0;
  let last: { x: number; y: number } | null = null;
  for (const step of shape.steps) {
    if (step.op !== 'move' && step.op !== 'line') continue;
    if (last !== null) sum += Math.hypot(step.x - last.x, step.y - last.y);
    last = step;
  }
  return sum;
}

const on = sprungAt({ front: 30, rear: 40 });

it('the fork’s way is as long as its travel', () => {
  expect(lengthOf(forkTravelShapes(on)[0])).toBeCloseTo(on.sprung.most.front, 9);
});

it('the rear axle’s way is an arc about the pivot, as high as its travel', () => {
  const [way] = rearTravelShapes(on);
  if (way.kind !== 'path') throw new Error('no way is drawn');
  const places = way.steps.filter((step) => step.op === 'move' || step.op === 'line');
  for (const { x, y } of places)
    expect(Math.hypot(x - on.pose.pivot.x, y - on.pose.pivot.y)).toBeCloseTo(on.machine.rear.arm, 8);
  expect(lengthOf(way)).toBeGreaterThan(on.sprung.most.rear * 0.99);
});

it('the gap at the clamp and the tube to spare are as long as their readings', () => {
  const places = clampGapPlaces(on);
  if (places === null) throw new Error('the clamp is known');
  const gap = Math.hypot(places.tyre.x - places.clamp.x, places.tyre.y - places.clamp.y);
  expect(gap).toBeCloseTo(Math.abs(Number(tyreToClampGap.read(on))), 9);
  expect(lengthOf(forkTopShapes(on)[0])).toBeCloseTo(Number(forkTubeSpare.read(on)), 9);
});

it('nothing is drawn of what is not known', () => {
  expect([clampGapShapes(standing()), forkTopShapes(standing()), wheelLoadShapes(on)]).toEqual([[], [], []]);
});

it('the loads’ arrows stand under the patches, in proportion', () => {
  const rest = ridden('riderUp', wholeBike);
  const [rear, front] = wheelLoadShapes(rest).map(lengthOf);
  expect(front / rear).toBeCloseTo(rest.equilibrium.front.wheelLoad / rest.equilibrium.rear.wheelLoad, 9);
});
