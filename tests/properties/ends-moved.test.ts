/** Holds what adjusters say of the end they raise or lower against bikes that stand with more of them. */
import { describe, expect, it } from 'vitest';
import { ADJUSTERS, type Adjuster } from '../../src/core/adjusters/all-adjusters.ts';
import { doesApply } from '../../src/core/adjusters/does-apply.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { tyreDiameter } from '../../src/core/parts/tyre.ts';
import type { RideStateKey } from '../../src/core/riding/states/all-ride-states.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { onGround } from '../../src/core/chassis/pose.ts';
import { adjusterRange } from '../../src/core/standing/adjuster-range.ts';
import { SPRUNG_BIKES, type Sprung } from '../support/sprung-bikes.ts';

const moving = ADJUSTERS.filter((adjuster) => adjuster.moves !== undefined);

/** The setup with a little more of one adjuster. */
function withMore(adjuster: Adjuster, { bike, setup }: Sprung): Setup {
  if (adjuster.holds === 'tyre') {
    const across = tyreDiameter(setup[adjuster.key]);
    if (!across.ok) throw new Error(across.reason);
    return { ...setup, [adjuster.key]: { diameter: across.value + 10 } };
  }
  if (adjuster.holds === 'wholeNumberOrNone') throw new Error(`${adjuster.key} moves no end`);
  return { ...setup, [adjuster.key]: setup[adjuster.key] + adjusterRange(adjuster, bike, setup).step };
}

/** The same bike with air beside its springs, for what is adjusted of air. */
function withAir({ bike, setup }: Sprung): Sprung {
  const air = { bore: 42, slidingTube: 43, exponent: 1.3, steelVolume: 0, balance: null };
  const support = { spring: { kind: 'oneRate' }, air } as const;
  return {
    bike: { ...bike, fork: { ...bike.fork, support }, shock: { ...bike.shock, support } },
    setup,
  };
}

/** Height above the ground of the frame at either end, mm: at the steering head and at the load mark. */
function heights(bike: Sprung['bike'], setup: Setup, state: RideStateKey) {
  const on = standBike(bike, setup, state);
  if (!on.ok) throw new Error(on.reason);
  const { pose, machine } = on;
  return {
    front: onGround(pose, machine.front.head).y,
    rear: onGround(pose, bike.frame.loadMark).y,
  };
}

it('most adjusters of ride height, springs, tyres and travel say which end they move', () => {
  expect(moving.length).toBeGreaterThan(10);
});

describe.each(moving.map((adjuster) => [adjuster.key, adjuster] as const))('%s', (_, adjuster) => {
  it.each(SPRUNG_BIKES.map((sprung, i) => [i, sprung] as const))(
    'moves its end the way it says, on bike %i',
    (_, plain) => {
      const sprung = doesApply(adjuster, plain.bike, plain.setup) ? plain : withAir(plain);
      const { bike, setup } = sprung;
      const { end, more } = adjuster.moves ?? { end: 'front', more: 'up' };
      const changed = withMore(adjuster, sprung);
      const by = (state: RideStateKey): number =>
        heights(bike, changed, state)[end] - heights(bike, setup, state)[end];
      // Springs show only where they carry the bike.
      const risen = by('travelByHand') || by('riderUp');
      expect(Math.sign(risen)).toBe(more === 'up' ? 1 : -1);
    },
  );
});
