/** Tests of which chains a bike with its adjusters set can take. */
import { describe, expect, it } from 'vitest';
import { chainByHull } from '../../../tests/support/chain-by-hull.ts';
import { plainBike, plainSetup, withFrame, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { axleInFrame, setAxlePosition } from '../standing/chain-in-frame.ts';
import { loopOf } from '../standing/chain-of.ts';
import { chainFit, nearestChain } from './chain-fit.ts';
import { machine } from '../standing/machine.ts';

const bike = withSwingarm(plainBike, { slot: 40 });
const LINKS = Array.from({ length: 60 }, (_, i) => 80 + i);
const fitting = LINKS.filter((links) => chainFit(bike, plainSetup, links).ok);

describe('chains tried on a bike', () => {
  it('fit where the bike with that chain can be made, and put the axle where it then stands', () => {
    expect(fitting.length).toBeGreaterThan(1);
    for (const links of LINKS) {
      const fit = chainFit(bike, plainSetup, links);
      const made = machine(bike, { ...plainSetup, chainLinks: links });
      expect(fit.ok).toBe(made.ok);
      if (fit.ok && made.ok) expect(setAxlePosition(made)).toBeCloseTo(fit.axlePosition, 9);
    }
  });

  it('fit whatever chain is on the bike and wherever its axle is set', () => {
    for (const change of [{ chainLinks: 20 }, { axlePosition: 999 }])
      for (const links of LINKS)
        expect(chainFit(bike, { ...plainSetup, ...change }, links)).toEqual(
          chainFit(bike, plainSetup, links),
        );
  });

  it('are odd only with a half link', () => {
    expect([...new Set(fitting.map((links) => links % 2))]).toEqual([0]);
    const half = { ...bike, drive: { ...bike.drive, halfLink: true } };
    expect(LINKS.filter((links) => links % 2 === 1 && chainFit(half, plainSetup, links).ok)).not.toEqual([]);
  });

  it('are refused with the reason when the bike cannot be made at all', () => {
    const none = { ...plainSetup, rearTyre: { diameter: 1 } };
    expect(chainFit(bike, none, 110)).toMatchObject({ ok: false, reason: 'tyreSizeImpossible' });
    expect(nearestChain(bike, none, 0)).toMatchObject({ ok: false, reason: 'tyreSizeImpossible' });
  });
});

describe('a chain that the guide under the pivot bends', () => {
  it('puts the axle where the hull of sprockets and guide has its links', () => {
    const radius = 70;
    const guided = withFrame(bike, { guideRadius: null, lowerGuideRadius: radius });
    const taut = { ...plainSetup, chainSlack: 0 };
    const loop = loopOf(guided.drive, taut.frontTeeth, taut.rearTeeth);
    const places = LINKS.flatMap((links) => {
      const fit = chainFit(guided, taut, links);
      return fit.ok ? [fit] : [];
    });
    expect(places.length).toBeGreaterThan(1);
    for (const { links, axlePosition } of places) {
      const made = machine(guided, taut);
      if (!made.ok) throw new Error(made.reason);
      const axle = axleInFrame(made, 0, axlePosition);
      if ('ok' in axle) throw new Error(axle.reason);
      const guide = { centre: { x: 0, y: 0 }, radius };
      const round = chainByHull(loop, axle, made.places.countershaft, guide);
      expect(Math.abs(round - links) * loop.pitch).toBeLessThan(1e-4);
      const free = chainFit(withFrame(guided, { lowerGuideRadius: null }), taut, links);
      if (free.ok) expect(free.axlePosition).toBeGreaterThan(axlePosition + 0.05);
    }
  });
});

describe('the chain nearest to an axle place', () => {
  it('is the one that leaves the axle there', () => {
    for (const links of fitting) {
      const fit = chainFit(bike, plainSetup, links);
      if (!fit.ok) throw new Error(fit.reason);
      for (const off of [-1, 0, 1])
        expect(nearestChain(bike, plainSetup, fit.axlePosition + off)).toEqual({ ok: true, links });
    }
  });

  it('is one that fits when the nearer ones would leave the slot, and none when no chain fits', () => {
    const [first] = fitting;
    expect(nearestChain(bike, plainSetup, -40)).toEqual({ ok: true, links: first });
    const place = chainFit(bike, plainSetup, first);
    if (!place.ok) throw new Error(place.reason);
    const short = withSwingarm(plainBike, { slot: place.axlePosition / 2 });
    expect(nearestChain(short, plainSetup, 0)).toMatchObject({ ok: false, nearest: [] });
  });

  it('is none with more slack than a chain can have', () => {
    expect(nearestChain(bike, { ...plainSetup, chainSlack: 5000 }, 0)).toMatchObject({
      reason: 'slackImpossible',
    });
  });
});
