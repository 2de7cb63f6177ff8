/** Rake, trail and whole poses against published bicycles and motorcycles. */
import { describe, expect, it } from 'vitest';
import bicycles from '../../fixtures/reference/bicycles.json';
import motorcycles from '../../fixtures/reference/motorcycles.json';
import { normalTrail } from '../../src/core/readings/normal-trail.ts';
import { rake } from '../../src/core/readings/rake.ts';
import { trail } from '../../src/core/readings/trail.ts';
import { wheelFlop } from '../../src/core/readings/wheel-flop.ts';
import { wheelbase } from '../../src/core/readings/wheelbase.ts';
import { radians } from '../../src/core/units/convert.ts';
import { placedBike } from '../support/placed-bike.ts';
import { withFork, withFrame, withSwingarm } from '../support/plain-bike.ts';
import { standing } from '../support/standing.ts';

/** Our lengths are mm, those of the sources metres. */
const MM = 1000;

// Source: beside each row of fixtures/reference/bicycles.json.
describe('trail', () => {
  it.each(bicycles.bicycles)('of the measured bicycle $name agrees, on its own wheels', (measured) => {
    const { bike, setup } = placedBike({
      frontRadius: measured.frontRadius * MM,
      rearRadius: measured.rearRadius * MM,
      wheelbase: measured.wheelbase * MM,
      rake: radians(90 - measured.headAngleDeg),
      offset: measured.offset * MM,
    });
    const on = standing(bike, setup);
    expect(rake.read(on)).toBeCloseTo(radians(90 - measured.headAngleDeg), 12);
    expect(wheelbase.read(on)).toBeCloseTo(measured.wheelbase * MM, 9);
    expect(trail.read(on)).toBeCloseTo(measured.trail * MM, 9);
  });
});

// Source: beside each row of fixtures/reference/bicycles.json.
describe('the benchmark bicycle', () => {
  const { benchmark } = bicycles;
  const { bike, setup } = placedBike({
    frontRadius: benchmark.frontRadius * MM,
    rearRadius: benchmark.rearRadius * MM,
    wheelbase: benchmark.wheelbase * MM,
    rake: benchmark.steerAxisTilt,
    offset: benchmark.offset * MM,
  });
  const on = standing(bike, setup);

  it('has its trail from its offset, to the digits of the offset', () => {
    expect(trail.read(on)).toBeCloseTo(benchmark.trail * MM, 4);
  });

  it('has its normal trail and wheel flop', () => {
    expect(normalTrail.read(on)).toBeCloseTo(benchmark.normalTrail * MM, 4);
    expect(wheelFlop.read(on)).toBeCloseTo(benchmark.flop * MM, 4);
  });

  it('keeps its wheelbase and tilt', () => {
    expect(wheelbase.read(on)).toBeCloseTo(benchmark.wheelbase * MM, 9);
    expect(rake.read(on)).toBeCloseTo(benchmark.steerAxisTilt, 12);
  });
});

// Source: beside each row of fixtures/reference/bicycles.json.
describe('a whole pose from three lengths in the frame', () => {
  const { rigid } = bicycles;
  // The frame's axes are laid along the steering axis, so the frame says nothing about how it will stand.
  const arm = 400;
  const placed = placedBike({
    frontRadius: rigid.frontRadius * MM,
    rearRadius: rigid.rearRadius * MM,
    wheelbase: 1000,
    rake: 0,
    offset: rigid.forkOffset * MM,
  });
  const framed = withFrame(placed.bike, {
    axisAngleDeg: 0,
    steeringHead: { x: rigid.rearAxleOffset * MM - arm, y: 0 },
    countershaft: { x: 80, y: 0 },
  });
  const armed = withSwingarm(framed, { length: arm, toppedOutAngleDeg: 0 });
  const bike = withFork(armed, { length: rigid.alongAxis * MM });
  const on = standing(bike, placed.setup);

  it('has the published steering axis tilt', () => {
    expect(rake.read(on)).toBeCloseTo(rigid.steerAxisTilt, 11);
  });

  it('has the published wheelbase', () => {
    expect(wheelbase.read(on)).toBeCloseTo(rigid.wheelbase * MM, 7);
  });

  it('has the published trail', () => {
    expect(trail.read(on)).toBeCloseTo(rigid.trail * MM, 8);
  });
});

// Source: beside each row of fixtures/reference/motorcycles.json.
describe('a sport-touring machine', () => {
  it('has its ground trail from its normal trail', () => {
    const { sportTouring: machine } = motorcycles;
    const lean = radians(machine.rakeDeg);
    const frontRadius = 300;
    const { bike, setup } = placedBike({
      frontRadius,
      rearRadius: 320,
      wheelbase: machine.wheelbase * MM,
      rake: lean,
      offset: frontRadius * Math.sin(lean) - machine.normalTrail * MM,
    });
    const on = standing(bike, setup);
    expect(normalTrail.read(on)).toBeCloseTo(machine.normalTrail * MM, 9);
    expect(trail.read(on)).toBeCloseTo(machine.trail * MM, 3);
  });
});
