/** Tests of the drawn motorcycle. */
import { describe, expect, it } from 'vitest';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { RIDE_STATES } from '../../src/core/riding/states/all-ride-states.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { bikeShapes } from '../../src/scene/bike/bike-drawing.ts';
import { drivePlaces, upperRun } from '../../src/scene/chain/chain-drawing.ts';
import { shadowShapes, type ShadowAlign } from '../../src/scene/shadow-drawing.ts';
import type { PathShape, Shape } from '../../src/scene/shapes/shape.ts';

function numbersOf(shape: Shape): number[] {
  if (shape.kind !== 'path') return [shape.at.x, shape.at.y];
  return shape.steps.flatMap((step) => Object.values(step).filter((value) => typeof value === 'number'));
}

const stood = DEMO_BIKES.flatMap(({ bike, setup }) =>
  RIDE_STATES.map(({ key: state }) => {
    const stance = standBike(bike, setup, state);
    if (!stance.ok) throw new Error(`${bike.name}: ${stance.reason}`);
    return { bike, setup, stance, title: `${bike.name}, ${state}` };
  }),
);

describe('every demonstration bike', () => {
  it.each(stood)('$title is drawn in finite numbers, wheels on the ground', ({ bike, setup, stance }) => {
    const shapes = bikeShapes(stance, bike, setup);
    expect(shapes.filter((shape) => numbersOf(shape).length === 0)).toEqual([]);
    expect(shapes.flatMap(numbersOf).filter((number) => !Number.isFinite(number))).toEqual([]);
    expect(shapes.length).toBeGreaterThan(10);
    const tyres = shapes.filter(
      (shape): shape is PathShape => shape.kind === 'path' && shape.role === 'tyre',
    );
    const lowest = tyres.map((tyre) => {
      const [rim] = tyre.steps.filter((step) => step.op === 'arc');
      return rim.op === 'arc' ? rim.cy - rim.radius : NaN;
    });
    expect(lowest).toHaveLength(2);
    for (const y of lowest) expect(y).toBeCloseTo(0, 9);
  });

  it.each(stood)('$title has as many drawn teeth as its setup says', ({ bike, setup, stance }) => {
    const sprockets = bikeShapes(stance, bike, setup).filter(
      (shape): shape is PathShape => shape.kind === 'path' && shape.role === 'sprocket',
    );
    const teeth = sprockets.map((sprocket) => sprocket.steps.filter((step) => step.op === 'line').length);
    // Four corners a tooth, of which the first of all is the pen's move.
    expect(teeth.map((lines) => (lines + 1) / 4)).toEqual([setup.rearTeeth, setup.frontTeeth]);
  });
});

describe('the chain', () => {
  it('bends over the guide exactly when it pulls at the guide’s radius', () => {
    for (const { stance } of stood)
      expect(upperRun(drivePlaces(stance)).length === 2).toBe(stance.pullLever > stance.upperRunLever);
  });
});

describe('the shadow', () => {
  it('lies with the chosen place on that of the live bike', () => {
    const [live, baseline] = stood;
    const rearTyre = (align: ShadowAlign) => {
      const [tyre] = shadowShapes(baseline.stance, baseline.bike, live.stance, align);
      const arc = tyre.kind === 'path' ? tyre.steps.find((step) => step.op === 'arc') : undefined;
      return arc?.op === 'arc' ? { x: arc.cx, y: arc.cy } : { x: NaN, y: NaN };
    };
    expect(rearTyre('rearPatch').x).toBeCloseTo(0, 9);
    const wheelbases = live.stance.pose.wheelbase - baseline.stance.pose.wheelbase;
    expect(rearTyre('frontPatch').x).toBeCloseTo(wheelbases, 9);
    const rise = live.stance.pose.pivot.y - baseline.stance.pose.pivot.y;
    expect(rearTyre('pivot').y - baseline.stance.rearAxle.y).toBeCloseTo(rise, 9);
  });
});

describe('the rider', () => {
  it('is drawn in the states that carry one, and only there', () => {
    for (const { bike, setup, stance, title } of stood) {
      const heads = bikeShapes(stance, bike, setup).filter(({ role }) => role === 'riderHead');
      const carries = stance.machine.carried.some(({ key, mass }) => key === 'rider' && mass > 0);
      expect(heads.length > 0, title).toBe(carries);
    }
    const [withPassenger] = stood.filter(({ title }) => title.endsWith('riderUp'));
    const two = { ...withPassenger.setup, passengerMass: 60 };
    const stance = standBike(withPassenger.bike, two, 'riderUp');
    if (!stance.ok) throw new Error(stance.reason);
    const heads = bikeShapes(stance, withPassenger.bike, two).filter(({ role }) => role === 'riderHead');
    expect(heads).toHaveLength(2);
    expect(stood.some(({ stance: each }) => each.machine.carried.every(({ key }) => key !== 'rider'))).toBe(
      true,
    );
  });
});
