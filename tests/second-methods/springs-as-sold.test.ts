/** Springs of two stages, force tables and air against second ways to their force: energy, a node in balance, gas in small steps. */
import { describe, expect, it } from 'vitest';
import type { MainSpring } from '../../src/core/parts/support.ts';
import { springForce, springLaw, type SpringLaw } from '../../src/core/springs/spring-law.ts';
import type { Coil, FilledAir, MainSupport } from '../../src/core/standing/spring-set.ts';
import { springEnergy } from '../support/spring-energy.ts';

const STROKE = 120;

const coil: Coil = {
  rate: 9,
  preload: 8,
  springTravel: null,
  topOut: null,
  bump: null,
  spring: { kind: 'oneRate' },
  air: null,
};
const air: FilledAir = {
  bore: 41,
  slidingTube: 43,
  exponent: 1.3,
  steelVolume: 20_000,
  gap: 110,
  pressure: 0.02,
  balance: null,
};
const balance = { volume: 40_000, bore: 36, rod: 12, pressure: 0.5 };
const series: MainSpring = { kind: 'inSeries', otherRate: 30, firstCloses: 50, otherCloses: 90 };
const rows = [0, 15, 40, 70, 105, 140].map((pressed) => ({
  pressed,
  force: 7 * pressed + 0.03 * pressed ** 2,
}));

function law(over: Partial<Coil> = {}, other: MainSupport | null = null): SpringLaw {
  const made = springLaw({ ...coil, ...over }, 2, STROKE, 'front', other);
  if (!made.ok) throw new Error(JSON.stringify(made));
  return made;
}

/** Abscissas and weights of Gauss and Legendre with five points, from 0 to 1. */
const GAUSS = [
  [0.5, 0.2844444444444444],
  [0.2307653449471585, 0.2393143352496832],
  [0.7692346550528415, 0.2393143352496832],
  [0.04691007703066802, 0.1184634425280945],
  [0.953089922969332, 0.1184634425280945],
] as const;

/** Work of the force over a stroke: smooth pieces of `STEP` mm, cut where the law has a kink. */
const STEP = 0.25;
function work(of: SpringLaw, to: number, kinks: readonly number[]): number {
  const cuts = [0, ...kinks.filter((at) => at > 0 && at < to), to].sort((a, b) => a - b);
  let sum = 0;
  for (let i = 0; i + 1 < cuts.length; i++) {
    const pieces = Math.ceil((cuts[i + 1] - cuts[i]) / STEP);
    const h = (cuts[i + 1] - cuts[i]) / pieces;
    for (let k = 0; k < pieces; k++)
      for (const [at, weight] of GAUSS) sum += weight * h * springForce(of, cuts[i] + (k + at) * h);
  }
  return sum;
}

describe('the work over the stroke is the energy in closed form, to 1e-9 of it', () => {
  const seriesAt = Math.min(9 * 50, 30 * 90) / ((9 * 30) / 39) - 8;
  const tableAt = rows.map(({ pressed }) => pressed - 8);
  it.each<[string, SpringLaw, readonly number[]]>([
    [
      'a spring of one rate with its top-out spring and bump stop',
      law({
        topOut: { length: 20, rate: 15 },
        bump: { startsAt: 85, rate: 60, exponent: 2.5 },
      }),
      [20, 85],
    ],
    ['two springs in series', law({ spring: series }), [seriesAt]],
    ['a spring of two rates', law({ spring: { kind: 'twoRates', secondRate: 13, changeover: 60 } }), [52]],
    [
      'a loose spring of two rates',
      law({ preload: -6, spring: { kind: 'twoRates', secondRate: 13, changeover: 60 } }),
      [6, 66],
    ],
    ['a force table', law({ spring: { kind: 'table', rows } }), tableAt],
    ['air beside a spring', law({ air }), []],
    ['air that keeps its temperature', law({ air: { ...air, exponent: 1 } }), []],
    [
      'air alone with a balance chamber',
      law({ spring: { kind: 'none' }, air: { ...air, pressure: 0.7, balance } }),
      [],
    ],
    [
      'unlike legs',
      law(
        { spring: series, air },
        {
          rate: 11,
          preload: 2,
          springTravel: null,
          spring: { kind: 'table', rows },
          air: { ...air, gap: 150 },
        },
      ),
      [seriesAt, ...rows.map(({ pressed }) => pressed - 2)],
    ],
  ])('%s', (_, made, kinks) => {
    for (const to of [10, 61, STROKE]) {
      const energy = springEnergy(made, to) - springEnergy(made, 0);
      expect(Math.abs(work(made, to, kinks) - energy)).toBeLessThan(1e-9 * Math.abs(energy));
    }
  });
});

describe('two springs in series', () => {
  it('press as much as the place between them that is in balance, found by halving', () => {
    const made = law({ spring: series });
    /** A spring that turns nearly rigid where it closes. */
    const RIGID = 1e12;
    const press = (rate: number, closes: number, by: number): number =>
      rate * Math.min(by, closes) + RIGID * Math.max(0, by - closes);
    for (let at = 1; at < STROKE; at += 7) {
      const whole = 8 + at;
      let low = 0;
      let high = whole;
      for (let round = 0; round < 200; round++) {
        const middle = (low + high) / 2;
        if (press(9, 50, middle) < press(30, 90, whole - middle)) low = middle;
        else high = middle;
      }
      const force = 30 * (whole - high);
      expect(Math.abs(springForce(made, at) / 2 - force)).toBeLessThan(1e-7);
    }
  });
});

describe('air', () => {
  it('pushes as gas does that is squeezed in small steps of dp/p = −n·dV/V', () => {
    const made = law({ spring: { kind: 'none' }, air });
    const area = (Math.PI / 4) * 43 ** 2;
    let volume = (Math.PI / 4) * 41 ** 2 * 110 - 20_000 + area * STROKE;
    let pressure = 0.101325 + 0.02;
    const steps = 4000;
    const h = STROKE / steps;
    const slope = (p: number, v: number): number => (1.3 * p * area) / v;
    for (let i = 1; i <= steps; i++) {
      const a = slope(pressure, volume);
      const b = slope(pressure + (a * h) / 2, volume - (area * h) / 2);
      const c = slope(pressure + (b * h) / 2, volume - (area * h) / 2);
      const d = slope(pressure + c * h, volume - area * h);
      pressure += (h * (a + 2 * b + 2 * c + d)) / 6;
      volume -= area * h;
      if (i % 500 === 0) {
        const force = 2 * area * (pressure - 0.101325);
        expect(Math.abs(springForce(made, i * h) - force)).toBeLessThan(1e-9 * force);
      }
    }
  });
});

describe('unlike legs', () => {
  it('push as much as each leg alone, summed', () => {
    const other: MainSupport = { rate: 11, preload: 2, springTravel: null, spring: { kind: 'oneRate' }, air };
    const alone = (of: Partial<Coil>): SpringLaw => {
      const made = springLaw({ ...coil, ...of }, 1, STROKE, 'front');
      if (!made.ok) throw new Error(made.reason);
      return made;
    };
    const both = law({ spring: series }, other);
    for (const at of [0, 20, 60, 119])
      expect(springForce(both, at)).toBeCloseTo(
        springForce(alone({ spring: series }), at) + springForce(alone(other), at),
        9,
      );
  });
});
