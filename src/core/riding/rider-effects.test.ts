/** Tests of gas, brakes and lifting wheels by the riding adjusters. */
import { describe, expect, it } from 'vitest';
import { reached } from '../../../tests/support/plain-springs.ts';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import type { Setup } from '../adjusters/setup.ts';
import { machine } from '../standing/machine.ts';
import { riderEffects, type RiderEffects } from './rider-effects.ts';
import { sprungMachine } from '../springs/sprung-machine.ts';
import { standBike } from './stand-bike.ts';

const { bike, setup } = SPRUNG_ROAD;

function effects(changes: Partial<Setup> = {}): RiderEffects {
  const asSet = { ...setup, ...changes };
  return riderEffects(reached(sprungMachine(reached(machine(bike, asSet)))), asSet);
}

describe('what the rider’s hands do', () => {
  it('opens the gas from where mid-corner has the bike, at its lean', () => {
    const { rear, from, to } = reached(
      effects({ cornerAcceleration: 0.1, acceleration: 0.4, leanDeg: 30 }).gasOpened,
    );
    const corner = reached(standBike(bike, { ...setup, cornerAcceleration: 0.1, leanDeg: 30 }, 'midCorner'));
    expect(from.stance.travel.rear).toBeCloseTo(corner.travel.rear, 8);
    expect(to.forces.acceleration).toBe(0.4);
    expect(to.forces.lean).toBe(from.forces.lean);
    expect(rear).toBe(to.stance.travel.rear - from.stance.travel.rear);
  });

  it('brakes to where the ride state on the brakes has the bike', () => {
    const { front, to } = reached(effects().braked);
    const brakes = reached(standBike(bike, setup, 'braking'));
    expect(front).toBeGreaterThan(30);
    expect(to.stance.travel.front).toBeCloseTo(brakes.travel.front, 8);
  });

  it('lifts a wheel at the limit that the ride state refuses beyond', () => {
    const { frontLifts, rearLifts } = effects();
    const gas = reached(frontLifts).limit;
    expect(standBike(bike, { ...setup, acceleration: gas - 0.002 }, 'accelerating').ok).toBe(true);
    expect(standBike(bike, { ...setup, acceleration: gas + 0.002 }, 'accelerating')).toMatchObject({
      reason: 'frontLifts',
    });
    const brake = reached(rearLifts).limit;
    expect(standBike(bike, { ...setup, braking: brake - 0.002 }, 'braking').ok).toBe(true);
    expect(standBike(bike, { ...setup, braking: brake + 0.002 }, 'braking')).toMatchObject({
      reason: 'rearLifts',
    });
  });

  it('keeps what has an answer when one has none', () => {
    const found = effects({ acceleration: 1.5 });
    expect(found.gasOpened).toMatchObject({ ok: false, reason: 'frontLifts' });
    expect(reached(found.sag).rider.rear).toBeGreaterThan(reached(found.sag).free.rear);
    expect(found.frontLifts.ok && found.rearLifts.ok && found.braked.ok).toBe(true);
  });
});
