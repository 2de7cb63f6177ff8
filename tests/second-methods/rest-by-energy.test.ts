/** The standing bike against the least potential energy, which knows nothing of forces. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { balance } from '../../src/core/riding/equilibrium/equilibrium.ts';
import { alone } from '../../src/core/riding/loads.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { AT_REST } from '../../src/core/riding/equilibrium/ride-forces.ts';
import { springEnergy } from '../support/spring-energy.ts';
import { sprungMachine, type SprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { stance, type Travel } from '../../src/core/standing/stance.ts';
import { STANDARD_GRAVITY } from '../../src/core/units/convert.ts';
import { plainSprings, reached, sprung, withForkSprings, withShock } from '../support/plain-springs.ts';
import { likelyBike } from '../support/random-bikes.ts';

/**
 * A minimum is flat: energies near 10⁶ N·mm are known to 1e-10, rates near 20 N/mm turn that into some 1e-5 mm of
 * travel, and the search narrows down to 1e-5 mm.
 */
const CLOSE = 1e-3;
/** Slope of energies near 10⁶ N·mm over 2e-3 mm, N: rounding 1e-10·10⁶/2e-3 at the most, against forces of 1000 N. */
const LEVEL = 1e-2;

function energy({ machine, fork, shock }: SprungMachine, travel: Travel): number {
  const on = stance(machine, travel);
  if (!on.ok) return Infinity;
  return (
    on.mass * STANDARD_GRAVITY * on.centre.y +
    springEnergy(fork, travel.front) +
    springEnergy(shock, on.arm.shockStroke)
  );
}

/** The travel of least energy between the stops: a compass search from the middle, with no derivative. */
function leastEnergy(bike: SprungMachine): Travel {
  const { most } = bike;
  let at: Travel = { front: most.front / 2, rear: most.rear / 2 };
  let low = energy(bike, at);
  for (let step = 32; step > 1e-5;) {
    let better = false;
    for (const [dx, dy] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
      [1, 1],
      [-1, -1],
      [1, -1],
      [-1, 1],
    ]) {
      const tried = {
        front: Math.min(Math.max(at.front + dx * step, 0), most.front),
        rear: Math.min(Math.max(at.rear + dy * step, 0), most.rear),
      };
      const found = energy(bike, tried);
      if (found < low) {
        low = found;
        at = tried;
        better = true;
      }
    }
    if (!better) step /= 2;
  }
  return at;
}

function expectLeast(bike: SprungMachine): void {
  const rest = reached(balance(bike, AT_REST)).stance.travel;
  const least = leastEnergy(bike);
  expect(Math.abs(rest.front - least.front)).toBeLessThan(CLOSE);
  expect(Math.abs(rest.rear - least.rear)).toBeLessThan(CLOSE);
}

describe('a standing bike rests where its energy is least', () => {
  it('alone and with its rider up', () => {
    expectLeast(alone(sprung()));
    expectLeast(sprung());
  });

  it('on top-out springs, on a bump stop, and on the stops themselves', () => {
    const topOut = { length: 30, rate: 12 };
    expectLeast(alone(sprung(withForkSprings({ topOut }, withShock({ topOut: { length: 8, rate: 60 } })))));
    const bump = { startsAt: 20, rate: 30, exponent: 2.5 };
    expectLeast(
      sprung(withForkSprings({ bump }, withShock({ bump: { startsAt: 10, rate: 80, exponent: 2 } }))),
    );
    expectLeast(sprung(withForkSprings({ preload: 100 }, withShock({ preload: 60 }))));
    expectLeast(sprung(withForkSprings({ rate: 2 }, withShock({ rate: 20 }))));
  });

  it('on springs of two stages, on a force table, on air, and on unlike legs', () => {
    const air = {
      bore: 41,
      slidingTube: 43,
      exponent: 1.3,
      steelVolume: 0,
      gap: 110,
      pressure: 0.02,
      balance: { volume: 40_000, bore: 36, rod: 12, pressure: 0.1 },
    };
    const rows = [0, 20, 50, 90].map((pressed) => ({ pressed, force: 6 * pressed + 0.05 * pressed ** 2 }));
    const series = { kind: 'inSeries', otherRate: 25, firstCloses: 45, otherCloses: null } as const;
    const wound = { kind: 'twoRates', secondRate: 130, changeover: 22 } as const;
    expectLeast(sprung(withForkSprings({ spring: series }, withShock({ spring: wound }))));
    expectLeast(sprung(withForkSprings({ air })));
    const shockAir = { ...air, bore: 60, slidingTube: 60, gap: 40, pressure: 0.9, balance: null };
    expectLeast(
      sprung(
        withForkSprings(
          {
            spring: { kind: 'none' },
            air: { ...air, pressure: 0.6 },
            otherLeg: { ...plainSprings.fork, spring: { kind: 'table', rows } },
          },
          withShock({ spring: { kind: 'none' }, air: shockAir }),
        ),
      ),
    );
  });

  it('and whatever the bike, no small move sets energy free', () => {
    let stood = 0;
    fc.assert(
      fc.property(
        likelyBike,
        fc.double({ min: 6, max: 14, noNaN: true }),
        fc.double({ min: 60, max: 140, noNaN: true }),
        ({ bike, setup }, forkRate, shockRate) => {
          const parts = machine(bike, setup);
          if (!parts.ok) return;
          const springs = withForkSprings({ rate: forkRate }, withShock({ rate: shockRate }, plainSprings));
          const made = sprungMachine(parts, springs);
          if (!made.ok) return;
          const rest = balance(made, AT_REST);
          if (!rest.ok) return;
          stood++;
          const { front, rear } = rest.stance.travel;
          // On the springs the energy is level; on a stop it falls toward the stop.
          const h = 1e-3;
          const along = (x: number, z: number): number =>
            (energy(made, { front: front + x * h, rear: rear + z * h }) -
              energy(made, { front: front - x * h, rear: rear - z * h })) /
            (2 * h);
          if (rest.front.rest === 'onSprings') expect(Math.abs(along(1, 0))).toBeLessThan(LEVEL);
          if (rest.rear.rest === 'onSprings') expect(Math.abs(along(0, 1))).toBeLessThan(LEVEL);
          if (rest.front.rest === 'bottomed')
            expect(energy(made, { front: front - h, rear })).toBeGreaterThan(energy(made, { front, rear }));
          if (rest.rear.rest === 'toppedOut')
            expect(energy(made, { front, rear: h })).toBeGreaterThan(energy(made, { front, rear }));
        },
      ),
      { numRuns: cases(1000), endOnFailure: true },
    );
    expect(stood).toBeGreaterThan(cases(500));
  });
});
