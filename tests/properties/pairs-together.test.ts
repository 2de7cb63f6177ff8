/** Many sprocket pairs at once: work that they share changes no result of a pair alone. */
import { describe, expect, it } from 'vitest';
import { chainLoop } from '../../src/core/drive/chain-loop.ts';
import type { PairsAsked, SprocketPair } from '../../src/core/effects/sprocket-pairs.ts';
import { axleForChain } from '../../src/core/standing/axle-in-slot.ts';
import { chainsThatFit } from '../support/chains-that-fit.ts';
import { setAxlePosition } from '../../src/core/standing/chain-in-frame.ts';
import { stretchOf } from '../../src/core/standing/chain-of.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { RIDE_STATES } from '../../src/core/riding/states/all-ride-states.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { ANY_CHAIN, pairsOf } from '../support/pairs-asked.ts';

const [{ bike, setup }] = DEMO_BIKES;

const asked: PairsAsked = {
  bike,
  setup,
  ride: 'riderUp',
  front: { least: 13, most: 17 },
  rear: { least: 38, most: 50 },
  ...ANY_CHAIN,
};

const pairs = (change: Partial<PairsAsked> = {}) => pairsOf({ ...asked, ...change });

describe('sprocket pairs solved together', () => {
  it('share the slot’s ends and the start of the search, and equal the way of one pair alone to 1e-9', () => {
    for (const { key: ride } of RIDE_STATES)
      for (const stretchPercent of [0, 0.7])
        for (const setAt of [0, 35]) {
          const teeth = { front: { least: 14, most: 17 }, rear: { least: 38, most: 48 } };
          const each = { ride, stretchPercent, setAt, ...teeth };
          let placed = 0;
          for (const pair of pairs(each)) {
            const { frontTeeth, rearTeeth } = pair;
            const bare = { ...setup, frontTeeth, rearTeeth, axlePosition: 0, chainLinks: null };
            const parts = machine(bike, bare);
            if (!parts.ok) throw new Error(parts.reason);
            const loop = chainLoop(frontTeeth, rearTeeth, bike.drive.chainPitch, stretchPercent);
            const slot = {
              slot: bike.swingarm.slot,
              slack: 30,
              rearTravel: setAt,
              rule: { halfLink: false },
            };
            expect(pair.fitting).toEqual(chainsThatFit(parts, loop, slot));
            const place = axleForChain(parts, loop, slot, pair.links ?? NaN);
            expect(place.ok).toBe(pair.misfit === null);
            if (!place.ok) continue;
            const { axlePosition } = place;
            expect(Math.abs((pair.axlePosition ?? NaN) - axlePosition)).toBeLessThan(1e-9);
            const on = standBike(bike, { ...bare, axlePosition }, ride);
            if (!on.ok) throw new Error(on.reason);
            expect(Math.abs((pair.wheelbase ?? NaN) - on.pose.wheelbase)).toBeLessThan(2e-9);
            expect(Math.abs((pair.swingarmAngle ?? NaN) - on.swingarmAngle)).toBeLessThan(1e-9);
            expect(Math.abs((pair.travel?.rear ?? NaN) - on.travel.rear)).toBeLessThan(2e-9);
            placed++;
          }
          expect(placed).toBeGreaterThan(30);
        }
  });

  it('are the same whatever other pairs are solved with them, in any order', () => {
    const whole = pairs({ ride: 'accelerating' });
    const backwards: SprocketPair[] = [];
    for (let front = 17; front >= 13; front--)
      for (let rear = 50; rear >= 38; rear--) {
        const one = { front: { least: front, most: front }, rear: { least: rear, most: rear } };
        backwards.push(...pairs({ ride: 'accelerating', ...one }));
      }
    expect(backwards.reverse()).toEqual(whole);
  });

  it('on a worn chain stand where the bike itself stands with it, at the angles of the chain as new', () => {
    const { chainPitch } = bike.drive;
    const worn = {
      ...bike,
      drive: { ...bike.drive, measuredLinks: 20, measuredLength: 20 * chainPitch * 1.006 },
    };
    expect(stretchOf(worn.drive)).toBeCloseTo(0.6, 9);
    expect(stretchOf({ ...worn.drive, kind: 'belt' })).toBe(0);
    let moved = 0;
    for (const pair of pairs({ bike: worn, stretchPercent: stretchOf(worn.drive) })) {
      if (pair.misfit !== null) continue;
      const { frontTeeth, rearTeeth, links } = pair;
      const own = { ...setup, frontTeeth, rearTeeth, chainLinks: links };
      const [after, before] = [worn, bike].map((each) => machine(each, own));
      if (!after.ok) throw new Error(after.reason);
      expect(setAxlePosition(after)).toBeCloseTo(pair.axlePosition ?? NaN, 8);
      expect(after.rearSprocketRadius).toBe(chainLoop(frontTeeth, rearTeeth, chainPitch).rearRadius);
      // A chain of its length when new may put the axle ahead of its slot.
      if (!before.ok) continue;
      expect(setAxlePosition(after) - setAxlePosition(before)).toBeGreaterThan(3);
      moved++;
    }
    expect(moved).toBeGreaterThan(20);
  });
});
