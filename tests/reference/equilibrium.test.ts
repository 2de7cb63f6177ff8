/** Centre of gravity and the limits at which a wheel lifts, against published examples. */
import { describe, expect, it } from 'vitest';
import motorcycles from '../../fixtures/reference/motorcycles.json';
import { centreHeight } from '../../src/core/readings/centre-height.ts';
import { centrePosition } from '../../src/core/readings/centre-position.ts';
import { wheelieLimit } from '../../src/core/readings/wheelie-limit.ts';
import { rearLiftLimit } from '../../src/core/readings/rear-lift-limit.ts';
import { carrying, placedBike } from '../support/placed-bike.ts';
import { standing } from '../support/standing.ts';

const readings = { frontLift: wheelieLimit, rearLift: rearLiftLimit };

// Source: beside each row of fixtures/reference/motorcycles.json.
describe('the limit at which a wheel lifts', () => {
  it.each(motorcycles.limits)('agrees with: $source', (example) => {
    const placed = placedBike({
      frontRadius: 300,
      rearRadius: 320,
      wheelbase: example.wheelbase,
      rake: 0.42,
      offset: 30,
    });
    const { bike, setup } = carrying(placed, example.parts);
    const limit = readings[example.kind as keyof typeof readings].read(standing(bike, setup));
    if (typeof limit !== 'number') throw new Error(limit.reason);
    expect(Math.abs(limit * example.gravity - example.acceleration)).toBeLessThan(example.tolerance);
  });
});

// Source: beside each row of fixtures/reference/motorcycles.json.
describe('the centre of gravity of a sport-touring machine', () => {
  const { sportTouring: machine } = motorcycles;
  const placed = placedBike({
    frontRadius: 300,
    rearRadius: 320,
    wheelbase: machine.wheelbase * 1000,
    rake: 0.4677,
    offset: 30,
  });
  const noRider = {
    mass: machine.bike.mass,
    ahead: machine.bike.ahead * 1000,
    high: machine.bike.high * 1000,
  };

  it('moves from that of the bike to that with its rider by the rider it implies', () => {
    const { bike: alone, withRider: both } = machine;
    const mass = both.mass - alone.mass;
    const rider = {
      mass,
      ahead: (1000 * (both.mass * both.ahead - alone.mass * alone.ahead)) / mass,
      high: (1000 * (both.mass * both.high - alone.mass * alone.high)) / mass,
    };
    // The rider's own centre comes out where riders sit: 0.60 m ahead of the rear patch and 1.05 m high.
    expect(rider.ahead).toBeCloseTo(599.6, 1);
    expect(rider.high).toBeCloseTo(1050.8, 1);
    const { bike, setup } = carrying(placed, [noRider, rider]);
    const on = standing(bike, setup);
    expect(on.mass).toBeCloseTo(both.mass, 12);
    expect(centrePosition.read(on)).toBeCloseTo(both.ahead * 1000, 9);
    expect(centreHeight.read(on)).toBeCloseTo(both.high * 1000, 9);
  });
});
