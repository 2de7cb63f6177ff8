/** Tests of finding springs for a wanted sag. */
import { describe, expect, it } from 'vitest';
import { reached, sprung, withForkSprings, withShock } from '../../../tests/support/plain-springs.ts';
import { sprungMachine } from '../springs/sprung-machine.ts';
import { sag } from './ride-changes.ts';
import {
  pickRate,
  preloadTurns,
  springsForSag,
  type CoilAdvice,
  type EndAdvice,
  type SagWish,
} from './springs-for-sag.ts';

const wish: SagWish = { free: { front: 25, rear: 12 }, rider: { front: 38, rear: 33 } };
const air = {
  bore: 41,
  slidingTube: 43,
  exponent: 1.3,
  steelVolume: 0,
  gap: 130,
  pressure: 0,
  balance: null,
};
const shockAir = { ...air, bore: 40, slidingTube: 40, gap: 30, pressure: 0.5 };
const atHand = { rates: [8, 8.5, 9, 9.5, 10, 10.5, 11], leastPreload: 0, mostPreload: 30, thread: 1 };

/** The advice for an end whose spring has one rate. */
function coilOf(advice: EndAdvice): CoilAdvice {
  if (advice.kind !== 'coil') throw new Error(`no coil but ${advice.kind}`);
  return advice;
}

function expectWish(found: ReturnType<typeof sag>, wanted: SagWish): void {
  const got = reached(found);
  for (const end of ['front', 'rear'] as const) {
    expect(got.free[end]).toBeCloseTo(wanted.free[end], 6);
    expect(got.rider[end]).toBeCloseTo(wanted.rider[end], 6);
  }
}

describe('springs for a wanted sag', () => {
  it('give exactly that sag, free and with the rider, at both ends', () => {
    expectWish(sag(reached(springsForSag(sprung(), wish)).sprung), wish);
  });

  it('do so whatever springs are in the bike now', () => {
    const other = sprung(withForkSprings({ rate: 20, preload: 0 }, withShock({ rate: 40, preload: 30 })));
    const [a, b] = [sprung(), other].map((bike) => reached(springsForSag(bike, wish)));
    expect(coilOf(a.front).rate).toBeCloseTo(coilOf(b.front).rate, 9);
    expect(coilOf(a.rear).preload).toBeCloseTo(coilOf(b.rear).preload, 9);
  });

  it('count bump stops and top-out springs in, from where the wheels hang', () => {
    const bump = { startsAt: 30, rate: 5, exponent: 2 };
    const topOut = { length: 25, rate: 14 };
    const bike = sprung(withForkSprings({ bump, topOut }, withShock({ topOut: { length: 6, rate: 150 } })));
    const found = reached(springsForSag(bike, wish));
    expect(found.sprung.hanging.front).toBeGreaterThan(1);
    expectWish(sag(found.sprung), wish);
  });

  it('count the air in, and an unlike leg, and still give both sags exactly', () => {
    const unlike = { rate: 11, preload: 5, springTravel: null, spring: { kind: 'oneRate' }, air } as const;
    const bike = sprung(withForkSprings({ air, otherLeg: unlike }, withShock({ air: shockAir })));
    expectWish(sag(reached(springsForSag(bike, wish)).sprung), wish);
  });

  it('of two stages, by a table and of air alone give the rider sag by preload or pressure', () => {
    const rows = [0, 30, 60, 110].map((pressed) => ({ pressed, force: 7 * pressed + 0.04 * pressed ** 2 }));
    const wound = { kind: 'twoRates', secondRate: 14, changeover: 40 } as const;
    const none = { kind: 'none' } as const;
    for (const [fork, shock, kinds] of [
      [{ spring: wound }, { spring: none, air: shockAir }, ['preload', 'pressure']],
      [{ spring: { kind: 'table', rows } }, {}, ['preload', 'coil']],
      [{ spring: none, air }, { spring: { ...wound, secondRate: 130 } }, ['pressure', 'preload']],
    ] as const) {
      const {
        front,
        rear,
        sprung: set,
      } = reached(springsForSag(sprung(withForkSprings(fork, withShock(shock))), wish));
      expect([front.kind, rear.kind]).toEqual(kinds);
      const got = reached(sag(set));
      expect(got.rider.front).toBeCloseTo(wish.rider.front, 6);
      expect(got.rider.rear).toBeCloseTo(wish.rider.rear, 6);
    }
  });

  it('are refused when the rider is to sink no further than the bike does alone, or beyond the travel', () => {
    expect(springsForSag(sprung(), { ...wish, rider: { front: 20, rear: 33 } })).toMatchObject({
      reason: 'sagImpossible',
      end: 'front',
    });
    expect(springsForSag(sprung(), { ...wish, rider: { front: 38, rear: 12 } })).toMatchObject({
      ok: false,
      end: 'rear',
    });
    expect(springsForSag(sprung(), { ...wish, rider: { front: 380, rear: 33 } })).toMatchObject({
      reason: 'forkTravelBeyond',
    });
  });
});

describe('the pick from rates at hand', () => {
  const advice = reached(springsForSag(sprung(), wish));

  it('keeps the rider sag exactly and comes nearest to the free sag', () => {
    const { best, choices } = reached(pickRate(advice, wish, 'front', atHand));
    expect(choices.filter(({ otherRate }) => otherRate === undefined)).toHaveLength(7);
    for (const choice of choices) expect(choice.riderSag).toBeCloseTo(38, 6);
    const miss = choices.map((choice) => Math.abs(choice.freeSag - 25));
    expect([...miss].sort((a, b) => a - b)).toEqual(miss);
    const nearest = atHand.rates.reduce((a, b) =>
      Math.abs(a - coilOf(advice.front).rate) < Math.abs(b - coilOf(advice.front).rate) ? a : b,
    );
    expect(Math.abs(best.rate - nearest)).toBeLessThanOrEqual(0.5);
    expect(best.turns).toBe(best.preload);
  });

  it('tries neighbouring rates, one in each leg, which sag as a fork with these two unlike legs does', () => {
    const few = { ...atHand, rates: [8, 9, 11] };
    const { choices } = reached(pickRate(advice, wish, 'front', few));
    const pairs = choices.filter(({ otherRate }) => otherRate !== undefined);
    expect(pairs.map(({ rate, otherRate }) => [rate, otherRate]).sort()).toEqual([
      [8, 9],
      [9, 11],
    ]);
    for (const { rate, otherRate = 0, preload, freeSag, riderSag } of pairs) {
      const { fork, shock } = advice.sprung.springs;
      const { springTravel, air } = fork;
      const otherLeg = { rate: otherRate, preload, springTravel, spring: { kind: 'oneRate' }, air } as const;
      const unlike = reached(
        sprungMachine(advice.sprung.machine, { fork: { ...fork, rate, preload, otherLeg }, shock }),
      );
      const sits = reached(sag(unlike));
      expect(sits.rider.front).toBeCloseTo(riderSag, 7);
      expect(sits.free.front).toBeCloseTo(freeSag, 7);
      expect(riderSag).toBeCloseTo(38, 6);
    }
    const rear = reached(pickRate(advice, wish, 'rear', { ...atHand, rates: [80, 90] }));
    expect(rear.choices.every(({ otherRate }) => otherRate === undefined)).toBe(true);
  });

  it('softer springs need more preload and leave less free sag', () => {
    const { choices } = reached(
      pickRate(advice, wish, 'rear', { ...atHand, rates: [80, 90, 100], thread: 1.5 }),
    );
    const [soft, middle, hard] = [80, 90, 100].map((rate) => choices.find((choice) => choice.rate === rate));
    if (!soft || !middle || !hard) throw new Error('A rate is missing');
    expect(soft.preload).toBeGreaterThan(middle.preload);
    expect(middle.preload).toBeGreaterThan(hard.preload);
    expect(soft.freeSag).toBeLessThan(hard.freeSag);
    expect(hard.turns).toBeCloseTo(hard.preload / 1.5, 12);
  });

  it('passes over what the adjuster does not reach, and tells what cannot be used and why', () => {
    const narrow = { ...atHand, rates: [0, 9.5], mostPreload: 1 };
    expect(pickRate(advice, wish, 'front', narrow)).toMatchObject({ reason: 'noRateFits', end: 'front' });
    const { refused, best } = reached(pickRate(advice, wish, 'front', { ...atHand, rates: [0, NaN, 9.5] }));
    expect(best.rate).toBe(9.5);
    expect(refused.map(({ why }) => why.reason)).toEqual(['rateNotAboveZero', 'inputNotANumber']);
  });
});

it('preload in turns is preload over the thread, and nothing without one', () => {
  expect(preloadTurns(6, 1.5)).toBe(4);
  expect(preloadTurns(6, 0)).toBeNull();
  expect(preloadTurns(6, NaN)).toBeNull();
});
