/** Tests of slack through the travel, its tightest place, and the slack to set. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { plainBike, plainSetup, withFrame, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { likelyBike } from '../../../tests/support/random-bikes.ts';
import { made, standing } from '../../../tests/support/standing.ts';
import { linksAround } from '../../../tests/support/taut-chain.ts';
import { chainLoop } from '../drive/chain-loop.ts';
import { chainAt, setAxlePosition } from '../standing/chain-in-frame.ts';
import { hangingOn, slackAt, slackThroughTravel } from './slack-through-travel.ts';
import { tightestPlace } from './tightest-place.ts';
import { machine, type Machine } from '../standing/machine.ts';
import { hangingPoints } from '../drive/hanging-run.ts';
import { slackToSet } from './slack-to-set.ts';

const loop = chainLoop(15, 45, 15.875);
const chain = { loop, links: 114, axlePosition: 12 };

/** Links of the taut chain with the wheel hanging. */
function linksAt(on: Machine): number {
  const path = chainAt(on, loop, 0, setAxlePosition(on));
  if ('ok' in path) throw new Error(path.reason);
  return path.links;
}

describe('slack with the axle where it is', () => {
  it('is the chain that the standing bike’s centres leave over', () => {
    for (const rear of [0, 40, 130]) {
      const on = standing(plainBike, { ...plainSetup, axlePosition: 12 }, { front: 20, rear });
      const centres = Math.hypot(on.countershaft.x - on.rearAxle.x, on.countershaft.y - on.rearAxle.y);
      const slack = slackAt(made(), chain, rear);
      if (!slack.ok) throw new Error(slack.reason);
      expect(slack.spare).toBeCloseTo((114 - linksAround(loop, centres)) * 15.875, 8);
      expect(slack.slack.ok).toBe(slack.spare >= 0);
    }
  });

  it('through the travel is at even places, and ends with the reason where there is none', () => {
    const places = slackThroughTravel(made(), chain, 14);
    if (!Array.isArray(places)) throw new Error(places.reason);
    expect(places.map((p) => p.rearTravel)).toEqual(Array.from({ length: 14 }, (_, i) => i * 10));
    const long = made(withSwingarm(plainBike, { wheelTravel: 900 }));
    expect(slackThroughTravel(long, chain, 14)).toMatchObject({ ok: false, reason: 'swingarmCannotReach' });
  });

  it('is less for a chain that lies on the guide than for one that runs free', () => {
    const low = withFrame(plainBike, { countershaft: { x: 75, y: -45 }, guideRadius: 35 });
    const bent = slackAt(made(low), chain, 0);
    const free = slackAt(made(withFrame(low, { guideRadius: null })), chain, 0);
    if (!bent.ok || !free.ok) throw new Error('no slack');
    expect(bent.onGuide).toBe(true);
    expect(free.onGuide).toBe(false);
    expect(bent.spare).toBeLessThan(free.spare);
  });

  it('is less for a chain that the guide under the pivot bends, which then does not hang free', () => {
    const bare = withFrame(plainBike, { guideRadius: null });
    const low = withFrame(bare, { lowerGuideRadius: 60 });
    const bent = slackAt(made(low), { ...chain, links: 116 }, 0);
    const free = slackAt(made(bare), { ...chain, links: 116 }, 0);
    if (!bent.ok || !free.ok || !bent.slack.ok || !free.slack.ok) throw new Error('no slack');
    expect([bent.underGuide, free.underGuide]).toEqual([true, false]);
    expect(bent.spare).toBeLessThan(free.spare);
    expect(bent.slack.total).toBeLessThan(free.slack.total);
    const on = standing(low, { ...plainSetup, axlePosition: 12 });
    const { machine: parts } = on;
    // So little spare chain that the guide presses on it, and so much that it hangs clear.
    const taut = linksAt(parts);
    expect(hangingOn(on, loop, taut + 0.001)).toMatchObject({ ok: false, reason: 'underGuide' });
    expect(hangingOn(on, loop, taut - 0.001)).toMatchObject({ ok: false, reason: 'tooTight' });
    const clear = hangingOn(on, loop, taut + 1);
    if (!clear.ok) throw new Error(clear.reason);
    const centre = on.pose.pivot;
    const nearest = Math.min(
      ...hangingPoints(clear, 2001).map((p) => Math.hypot(p.x - centre.x, p.y - centre.y)),
    );
    expect(nearest).toBeGreaterThan(60);
  });

  it('grows as the chain wears, by its wear over the whole length', () => {
    const fresh = slackAt(made(), chain, 0);
    const worn = slackAt(made(), { ...chain, loop: chainLoop(15, 45, 15.875, 1) }, 0);
    if (!fresh.ok || !worn.ok) throw new Error('no slack');
    // 1 % of the runs only: on the sprockets a worn chain lies further out.
    const runs = 114 - 30;
    expect(worn.spare - fresh.spare).toBeGreaterThan(0.01 * runs * 15.875 * 0.95);
    expect(worn.spare - fresh.spare).toBeLessThan(0.01 * runs * 15.875 * 1.05);
  });

  it('hangs on the standing bike with the same spare', () => {
    const on = standing(plainBike, { ...plainSetup, axlePosition: 12 });
    const hanging = hangingOn(on, loop, 116);
    const slack = slackAt(made(), { ...chain, links: 116 }, 0);
    if (!hanging.ok || !slack.ok) throw new Error('does not hang');
    expect(hanging.spare).toBeCloseTo(slack.spare, 8);
    expect(hanging.run.rear).toEqual(on.rearAxle);
    expect(hanging.drop).toBeGreaterThan(0);
    expect(hangingOn(on, loop, 100)).toMatchObject({ ok: false, reason: 'tooTight' });
  });
});

describe('the tightest place', () => {
  it('is the longest of a fine search through the travel, with and without a guide', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(likelyBike, ({ bike, setup }) => {
        const parts = machine(bike, setup);
        if (!parts.ok) return;
        const drawn = chainLoop(setup.frontTeeth, setup.rearTeeth, bike.drive.chainPitch);
        const place = tightestPlace(parts, drawn, setup.axlePosition);
        if (!place.ok) return;
        seen.add(place.found);
        let most = 0;
        for (let i = 0; i <= 500; i++) {
          const path = chainAt(parts, drawn, (parts.rear.wheelTravel * i) / 500, setup.axlePosition);
          if ('links' in path) most = Math.max(most, path.links);
        }
        expect(place.links).toBeGreaterThanOrEqual(most - 1e-9);
        expect(place.links).toBeLessThan(most + 1e-3);
      }),
      { numRuns: cases(400) },
    );
    expect([...seen].sort()).toEqual(['end', 'inLine', 'onGuide']);
  });

  it('of a free chain has axle, pivot and countershaft in one line', () => {
    const parts = made(withFrame(plainBike, { guideRadius: null }));
    const place = tightestPlace(parts, loop, 12);
    if (!place.ok) throw new Error(place.reason);
    expect(place.found).toBe('inLine');
    const path = chainAt(parts, loop, place.rearTravel, 12);
    const centres = Math.hypot(75, 0) + 580 + 12;
    expect('links' in path && path.links).toBeCloseTo(linksAround(loop, centres), 10);
  });

  it('has no answer where the arm cannot reach', () => {
    const long = made(withSwingarm(plainBike, { wheelTravel: 900 }));
    expect(tightestPlace(long, loop, 12)).toMatchObject({ ok: false, reason: 'swingarmCannotReach' });
  });
});

describe('the slack to set on the paddock stand', () => {
  const wanted = { links: 114, leastSlack: 10, measuredAt: 0, slot: 30 };

  it('leaves exactly the least slack at the tightest place, and more where it is measured', () => {
    const parts = made();
    const set = slackToSet(parts, loop, wanted);
    if (!set.ok) throw new Error(set.reason);
    const fitted = { loop, links: 114, axlePosition: set.axlePosition };
    const tightest = slackAt(parts, fitted, set.tightest.rearTravel);
    const stand = slackAt(parts, fitted, 0);
    if (!tightest.ok || !stand.ok || !tightest.slack.ok || !stand.slack.ok) throw new Error('no slack');
    expect(tightest.slack.total).toBeCloseTo(10, 6);
    expect(set.leastSlack).toBeCloseTo(10, 6);
    expect(set.slack.total).toBeCloseTo(stand.slack.total, 9);
    expect(set.slack.total).toBeGreaterThan(10);
    expect(set.inSlot).toBe(set.axlePosition >= 0 && set.axlePosition <= 30);
  });

  it('is less when measured nearer to the tightest place', () => {
    const [hanging, loaded] = [0, 30].map((measuredAt) =>
      slackToSet(made(), loop, { ...wanted, measuredAt }),
    );
    if (!hanging.ok || !loaded.ok) throw new Error('no slack to set');
    expect(loaded.slack.total).toBeLessThan(hanging.slack.total);
  });

  it('does not depend on where the axle is now', () => {
    const near = slackToSet(made(), loop, wanted);
    const far = slackToSet(made(plainBike, { ...plainSetup, axlePosition: 28 }), loop, wanted);
    if (!near.ok || !far.ok) throw new Error('no slack to set');
    expect(far.axlePosition).toBeCloseTo(near.axlePosition, 6);
    expect(setAxlePosition(made(plainBike, { ...plainSetup, axlePosition: 28 }))).toBeCloseTo(28, 10);
  });

  it('is refused for a chain that does not reach, or slack that no run can have', () => {
    expect(slackToSet(made(), loop, { ...wanted, links: 80 })).toMatchObject({ reason: 'chainDoesNotReach' });
    expect(slackToSet(made(), loop, { ...wanted, leastSlack: 2000 })).toMatchObject({ reason: 'tooSlack' });
    expect(slackToSet(made(), loop, { ...wanted, leastSlack: NaN })).toMatchObject({ reason: 'notANumber' });
  });
});
