/** Tests of the air in a leg or a shock. */
import { describe, expect, it } from 'vitest';
import type { FilledAir } from '../standing/spring-set.ts';
import { airChambers, airForce, airRate, type AirChamber } from './air-chamber.ts';

const air: FilledAir = {
  bore: 40,
  slidingTube: 43,
  exponent: 1.3,
  steelVolume: 0,
  gap: 120,
  pressure: 0,
  balance: null,
};

function chambers(over: Partial<FilledAir> = {}, count = 1, reach = 120): readonly AirChamber[] {
  const made = airChambers({ ...air, ...over }, count, 120, reach, 'front');
  if (!made.ok) throw new Error(JSON.stringify(made));
  return made.chambers;
}

const force = (over: Partial<FilledAir>, at: number, count = 1): number =>
  chambers(over, count).reduce((sum, chamber) => sum + airForce(chamber, at), 0);

describe('air in a leg', () => {
  it('that is not pumped up pushes nothing while the fork is topped out', () => {
    expect(force({}, 0)).toBeCloseTo(0, 12);
  });

  it('pushes with the volumes worked by hand', () => {
    // Sliding tube 1452.2012 mm²; 150,796.447 mm³ at full compression, 325,060.591 mm³ topped out: 2.155625 to 1.
    expect(force({ exponent: 1 }, 120)).toBeCloseTo(
      1452.201204 * 0.101325 * (325060.5915 / 150796.4474 - 1),
      4,
    );
    // Pumped up to 0.1 N/mm² by the gauge, topped out, both legs.
    expect(force({ pressure: 0.1 }, 0, 2)).toBeCloseTo(2 * 145.2201204, 6);
  });

  it('stiffens with less gap, and with steel that takes air away', () => {
    expect(force({ gap: 90 }, 100)).toBeGreaterThan(force({}, 100));
    const shorter = 120 - 10_000 / (Math.PI * 400);
    expect(force({ steelVolume: 10_000 }, 100)).toBeCloseTo(force({ gap: shorter }, 100), 9);
  });

  it('is held back by a balance chamber, most at full extension', () => {
    const balance = { volume: 30_000, bore: 36, rod: 12, pressure: 0.4 };
    const ring = (Math.PI / 4) * (36 ** 2 - 12 ** 2);
    expect(force({ balance }, 0)).toBeCloseTo(-ring * 0.4, 9);
    const grown = (30_000 / (30_000 + ring * 50)) ** 1.3;
    expect(force({ balance }, 50) - force({}, 50)).toBeCloseTo(-ring * (0.501325 * grown - 0.101325), 9);
  });

  it('has a rate that is the slope of its force, for both chambers', () => {
    for (const chamber of chambers({ balance: { volume: 30_000, bore: 36, rod: 12, pressure: 0.4 } }, 2))
      for (const at of [0, 30, 80, 115]) {
        const h = 1e-3;
        const slope = (airForce(chamber, at + h) - airForce(chamber, at - h)) / (2 * h);
        expect(airRate(chamber, at)).toBeCloseTo(slope, 5);
      }
  });
});

describe('air is refused', () => {
  const refusal = (over: Partial<FilledAir>, reach = 120) =>
    airChambers({ ...air, ...over }, 1, 120, reach, 'front');

  it('where none is left, with the mm at which the leg locks', () => {
    // 170,000 mm³ of steel in 325,060.591 mm³ leave 155,060.591 mm³, which 106.776 mm of the tube fill.
    expect(refusal({ steelVolume: 170_000 })).toMatchObject({
      reason: 'noAirLeft',
      limit: 120,
      end: 'front',
    });
    const locked = refusal({ steelVolume: 170_000 });
    expect(!locked.ok && locked.found).toBeCloseTo(155060.5915 / 1452.201204, 6);
    expect(refusal({ gap: 0 })).toMatchObject({ reason: 'noAirLeft' });
  });

  it('not where coils close before it is used up', () => {
    expect(refusal({ gap: 0 }, 100).ok).toBe(true);
  });

  it.each([
    [{ pressure: -0.101325 }, 'airPressureImpossible', -0.101325],
    [{ pressure: -0.2 }, 'airPressureImpossible', -0.2],
    [{ bore: 0 }, 'airSizeImpossible', 0],
    [{ slidingTube: 0 }, 'airSizeImpossible', 0],
    [{ exponent: 0.9 }, 'airExponentImpossible', 0.9],
    [{ exponent: 2.1 }, 'airExponentImpossible', 2.1],
    [{ balance: { volume: 0, bore: 36, rod: 12, pressure: 0 } }, 'balanceChamberImpossible', 0],
    [{ balance: { volume: 9, bore: 12, rod: 12, pressure: 0 } }, 'balanceChamberImpossible', 0],
    [{ balance: { volume: 9, bore: 36, rod: 12, pressure: -1 } }, 'airPressureImpossible', -1],
  ] as const)('with %j', (over, reason, found) => {
    expect(refusal(over)).toMatchObject({ ok: false, reason, found });
  });
});
