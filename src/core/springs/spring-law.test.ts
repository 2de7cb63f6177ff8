/** Tests of the springs of one end. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { springForce, springLaw, springRate, type SpringLaw } from './spring-law.ts';
import { springEnergy } from '../../../tests/support/spring-energy.ts';
import type { Coil } from '../standing/spring-set.ts';

const coil: Coil = {
  rate: 10,
  preload: 12,
  springTravel: null,
  topOut: null,
  bump: null,
  spring: { kind: 'oneRate' },
  air: null,
};

function law(with_: Partial<Coil> = {}, count = 2, stroke = 120): SpringLaw {
  const result = springLaw({ ...coil, ...with_ }, count, stroke, 'front');
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}

const full: Partial<Coil> = {
  topOut: { length: 20, rate: 15 },
  bump: { startsAt: 90, rate: 40, exponent: 2.5 },
};

describe('the springs of an end', () => {
  it('press with rate times stroke and preload, both legs together', () => {
    expect(springForce(law(), 30)).toBe(2 * 10 * 42);
    expect(springRate(law(), 30)).toBe(20);
  });

  it('do not press while the spring is loose', () => {
    const loose = law({ preload: -5 });
    expect(springForce(loose, 3)).toBe(0);
    expect(springRate(loose, 3)).toBe(0);
    expect(springForce(loose, 8)).toBe(60);
  });

  it('are held back by a top-out spring near full extension only', () => {
    const held = law({ topOut: { length: 20, rate: 15 } });
    expect(springForce(held, 0)).toBe(2 * (120 - 300));
    expect(springForce(held, 20)).toBe(springForce(law(), 20));
    expect(springRate(held, 10)).toBe(50);
  });

  it('stiffen on the bump stop: fully pressed it adds its rate times its depth', () => {
    const rubber = law(full);
    expect(springForce(rubber, 90)).toBe(springForce(law(), 90));
    expect(springForce(rubber, 120) - springForce(law(), 120)).toBeCloseTo(2 * 40 * 30, 9);
    const half = springForce(rubber, 105) - springForce(law(), 105);
    expect(half).toBeCloseTo(2 * 40 * 30 * 0.5 ** 2.5, 9);
  });

  it('end where the coils touch, when that is before the stroke does', () => {
    expect(law({ springTravel: 100 })).toMatchObject({ stroke: 88, coilsEnd: true });
    expect(law({ springTravel: 140 })).toMatchObject({ stroke: 120, coilsEnd: false });
  });

  it('have a rate that is the slope of the force, and a force that is the slope of the energy, on any stroke', () => {
    const rubber = law(full);
    const h = 1e-4;
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 119.99, noNaN: true }), (at) => {
        if (Math.abs(at - 20) < h || Math.abs(at - 90) < h) return;
        const slope = (springForce(rubber, at + h) - springForce(rubber, at - h)) / (2 * h);
        expect(slope).toBeCloseTo(springRate(rubber, at), 4);
        const work = (springEnergy(rubber, at + h) - springEnergy(rubber, at - h)) / (2 * h);
        expect(work).toBeCloseTo(springForce(rubber, at), 3);
      }),
      { numRuns: cases(500) },
    );
  });
});

describe('springs are refused', () => {
  const refusal = (with_: Partial<Coil>, count = 2, stroke = 120) =>
    springLaw({ ...coil, ...with_ }, count, stroke, 'rear');

  it.each([
    [{ rate: 0 }, { reason: 'rateNotAboveZero', end: 'rear', found: 0, limit: 0 }],
    [{ rate: -3 }, { reason: 'rateNotAboveZero', found: -3 }],
    [{ rate: NaN }, { reason: 'inputNotANumber' }],
    [{ preload: Infinity }, { reason: 'inputNotANumber' }],
    [
      { preload: 60, springTravel: 55 },
      { reason: 'preloadBeyondSpring', found: 60, limit: 55 },
    ],
    [{ springTravel: NaN }, { reason: 'inputNotANumber' }],
    [{ topOut: { length: 130, rate: 5 } }, { reason: 'topOutImpossible', found: 130, limit: 120 }],
    [{ topOut: { length: 20, rate: Infinity } }, { reason: 'inputNotANumber' }],
    [{ topOut: { length: 20, rate: 0 } }, { reason: 'rateNotAboveZero', found: 0 }],
    [{ preload: 1e9 }, { reason: 'inputTooLarge', found: 1e9 }],
    [{ preload: 54.95, springTravel: 55 }, { reason: 'preloadBeyondSpring' }],
    [
      { bump: { startsAt: 120, rate: 5, exponent: 1 } },
      { reason: 'bumpStopImpossible', found: 120, limit: 120 },
    ],
    [{ bump: { startsAt: 90, rate: 0, exponent: 1 } }, { reason: 'rateNotAboveZero', found: 0 }],
    [
      { bump: { startsAt: 90, rate: 5, exponent: 0.5 } },
      { reason: 'bumpStopImpossible', found: 0.5, limit: 1 },
    ],
    [
      { bump: { startsAt: 90, rate: 5, exponent: 11 } },
      { reason: 'bumpStopImpossible', found: 11, limit: 10 },
    ],
  ] as const)('with %j', (with_, expected) => {
    expect(refusal(with_)).toMatchObject({ ok: false, ...expected });
  });

  it('without a stroke, or with legs no fork has', () => {
    expect(refusal({}, 2, 0)).toMatchObject({ reason: 'noStroke', found: 0 });
    expect(refusal({}, 0)).toMatchObject({ reason: 'springCountImpossible', found: 0 });
    expect(refusal({}, 1.5)).toMatchObject({ reason: 'springCountImpossible', found: 1.5 });
  });
});
