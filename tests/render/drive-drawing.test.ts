/** Tests that each kind of drive is drawn as itself, on every style of bike. */
import { describe, expect, it } from 'vitest';
import type { Bike } from '../../src/core/parts/bike.ts';
import { bikeShapes } from '../../src/scene/bike/bike-drawing.ts';
import { driveShapes } from '../../src/scene/bike/drive-drawing.ts';
import type { Role, Shape } from '../../src/scene/shapes/shape.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';
import { standing } from '../support/standing.ts';

const KINDS = ['chain', 'belt', 'shaft', 'hub'] as const;
const STYLES = ['faired', 'naked', 'offRoad'] as const;
const driven = (kind: Bike['drive']['kind'], bodywork: Bike['bodywork'] = 'faired'): Bike => ({
  ...plainBike,
  bodywork,
  drive: { ...plainBike.drive, kind },
});
/** Two wheels alone take more than this. */
const FEWEST_NUMBERS = 100;
const used = { front: 30, rear: 40 };

function numbersOf(shape: Shape): number[] {
  if (shape.kind !== 'path') return [shape.at.x, shape.at.y];
  return shape.steps.flatMap((step) => Object.values(step).filter((value) => typeof value === 'number'));
}

function rolesOf(kind: Bike['drive']['kind']): Set<Role> {
  const on = standing(driven(kind), plainSetup, used);
  return new Set(driveShapes(on, 15.875).map(({ role }) => role));
}

describe.each(KINDS)('a %s drive', (kind) => {
  it.each(STYLES)('is drawn in finite numbers on a bike %s', (bodywork) => {
    const bike = driven(kind, bodywork);
    const shapes = bikeShapes(standing(bike, plainSetup, used), bike, plainSetup);
    expect(shapes.filter((shape) => numbersOf(shape).length === 0)).toEqual([]);
    const numbers = shapes.flatMap(numbersOf);
    expect(numbers.length).toBeGreaterThan(FEWEST_NUMBERS);
    expect(numbers.filter((number) => !Number.isFinite(number))).toEqual([]);
  });
});

it('only a chain is drawn as links, only a belt as a band, and neither shaft nor hub has sprockets', () => {
  const has = (role: Role) => KINDS.filter((kind) => rolesOf(kind).has(role));
  expect(has('chain')).toEqual(['chain']);
  expect(has('belt')).toEqual(['belt']);
  expect(has('sprocket')).toEqual(['chain', 'belt']);
});

it('a shaft’s housing reaches from the pivot past the rear axle', () => {
  const on = standing(driven('shaft'), plainSetup, used);
  const reach = driveShapes(on, 15.875)
    .flatMap((shape) => (shape.kind === 'path' ? shape.steps : []))
    .flatMap((step) => (step.op === 'arc' ? [step.cx - step.radius, step.cx + step.radius] : []));
  expect(Math.min(...reach)).toBeLessThan(on.rearAxle.x - 50);
  expect(Math.max(...reach)).toBeGreaterThan(on.pose.pivot.x);
});

it('a stay is drawn only where the caliper has one', () => {
  const stays = (bike: Bike) =>
    bikeShapes(standing(bike, plainSetup, used), bike, plainSetup).filter(({ role }) => role === 'stay')
      .length;
  expect(stays(plainBike)).toBe(0);
  const rearBrake = {
    caliper: 'ownStay',
    stayAnchor: { x: -20, y: -70 },
    bracketRadius: 90,
    stayLength: 550,
    bracketSide: 'below',
  } as const;
  expect(stays({ ...plainBike, rearBrake })).toBe(2);
});
