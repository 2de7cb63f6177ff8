/** Tests of axle and chain: places in the slot, and chains that do not fit. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { likelyBike } from '../../../tests/support/random-bikes.ts';
import { made, standing } from '../../../tests/support/standing.ts';
import { plainBike, plainSetup, withFrame } from '../../../tests/support/plain-bike.ts';
import { linksAround } from '../../../tests/support/taut-chain.ts';
import { lowerRun } from '../drive/lower-run.ts';
import { chainLoop } from '../drive/chain-loop.ts';
import { chainSlack } from '../drive/chain-slack.ts';
import { spareForSlack } from '../drive/run-slack.ts';
import { axleForChain, type AxleSlot } from './axle-in-slot.ts';
import { chainsThatFit } from '../../../tests/support/chains-that-fit.ts';
import { axleInFrame, lowerRunInFrame, setAxlePosition } from './chain-in-frame.ts';
import { machine } from './machine.ts';

const loop = chainLoop(15, 45, 15.875);
const slot: AxleSlot = { slot: 30, slack: 0, rearTravel: 0, rule: { halfLink: false } };

describe('an axle with a given chain', () => {
  it('stands where the chain round both sprockets of the standing bike has its links', () => {
    let placed = 0;
    fc.assert(
      fc.property(likelyBike, fc.constantFrom(0, 12, 35), ({ bike, setup, travel }, slack) => {
        const parts = machine(withFrame(bike, { guideRadius: null, lowerGuideRadius: null }), setup);
        if (!parts.ok) return;
        const chain = chainLoop(setup.frontTeeth, setup.rearTeeth, bike.drive.chainPitch);
        const asked = { ...slot, slot: bike.swingarm.slot, slack, rearTravel: Math.min(travel.rear, 60) };
        const fits = chainsThatFit(parts, chain, asked);
        if (!Array.isArray(fits)) return;
        for (const links of fits) {
          const place = axleForChain(parts, chain, asked, links);
          if (!place.ok) throw new Error(place.reason);
          const on = standing(
            withFrame(bike, { guideRadius: null, lowerGuideRadius: null }),
            { ...setup, axlePosition: place.axlePosition },
            { front: 0, rear: asked.rearTravel },
          );
          const centres = Math.hypot(on.countershaft.x - on.rearAxle.x, on.countershaft.y - on.rearAxle.y);
          const around = linksAround(chain, centres);
          if (slack === 0) expect(Math.abs(around - links)).toBeLessThan(1e-9);
          // The slack of the standing bike's own lower run, with the chain's length beyond taut.
          const run = lowerRun(chain, on.rearAxle, on.countershaft);
          if (run === null) throw new Error('The sprockets overlap');
          const left = chainSlack(run, Math.max(0, (links - around) * chain.pitch));
          if (!left.ok) throw new Error(left.reason);
          if (slack > 0) expect(Math.abs(left.total - slack)).toBeLessThan(1e-6);
          expect(Math.abs(place.residual)).toBeLessThan(1e-9);
          placed++;
        }
      }),
      { numRuns: cases(300) },
    );
    expect(placed).toBeGreaterThan(cases(300));
  });

  it('stands further ahead with more slack, by the chain that the slack takes', () => {
    const [taut, loose] = [0, 35].map((slack) =>
      axleForChain(made(), loop, { ...slot, slot: 60, slack }, 114),
    );
    if (!taut.ok || !loose.ok) throw new Error('no place');
    const run = lowerRunInFrame(made(), loop, 0, loose.axlePosition);
    if ('ok' in run) throw new Error(run.reason);
    const spare = spareForSlack(run, 35);
    if (!spare.ok) throw new Error(spare.reason);
    // Two runs give up what one run hangs through.
    expect(taut.axlePosition - loose.axlePosition).toBeCloseTo(spare.spare / 2, 1);
    expect(spare.spare).toBeGreaterThan(0.8);
  });

  it('has no place with slack that no run can have', () => {
    for (const slack of [NaN, 900]) {
      const found = axleForChain(made(), loop, { ...slot, slack }, 114);
      expect(found).toMatchObject({ ok: false, reason: 'slackImpossible', axlePosition: null, nearest: [] });
      expect(chainsThatFit(made(), loop, { ...slot, slack })).toEqual({
        ok: false,
        reason: 'slackImpossible',
      });
    }
  });

  it('two links more let it move back by about one pitch, one by half a pitch', () => {
    const places = [113, 114, 115, 116].map((links) => {
      const place = axleForChain(made(), loop, { ...slot, rule: { halfLink: true }, slot: 60 }, links);
      return place.axlePosition ?? NaN;
    });
    expect(Math.abs(places[2] - places[0] - 15.875)).toBeLessThan(0.4);
    expect(Math.abs(places[3] - places[2] - 15.875 / 2)).toBeLessThan(0.2);
  });

  it('too short or too long is refused with where the axle would be and the nearest chains that work', () => {
    const fits = chainsThatFit(made(), loop, slot);
    if (!Array.isArray(fits)) throw new Error(fits.reason);
    expect(fits.length).toBeGreaterThan(0);
    const short = axleForChain(made(), loop, slot, fits[0] - 2);
    expect(short).toMatchObject({ ok: false, reason: 'chainTooShort', nearest: fits });
    expect(short.axlePosition).toBeLessThan(0);
    const long = axleForChain(made(), loop, slot, fits[fits.length - 1] + 2);
    expect(long).toMatchObject({ ok: false, reason: 'chainTooLong', nearest: [...fits].reverse() });
    expect(long.axlePosition).toBeGreaterThan(30);
    expect(axleForChain(made(), loop, slot, 40)).toMatchObject({
      reason: 'chainTooShort',
      axlePosition: null,
    });
    expect(axleForChain(made(), loop, slot, 390)).toMatchObject({
      reason: 'chainTooLong',
      axlePosition: null,
    });
  });

  it('an odd number of links is refused unless a half link is allowed', () => {
    const [links] = chainsThatFit(made(), loop, slot) as number[];
    expect(axleForChain(made(), loop, slot, links + 1)).toMatchObject({ reason: 'linksImpossible' });
    expect(axleForChain(made(), loop, { ...slot, rule: { halfLink: true } }, links + 1).ok).toBe(true);
    for (const bad of [NaN, 113.5, -2, 0])
      expect(axleForChain(made(), loop, slot, bad)).toMatchObject({ reason: 'linksImpossible' });
  });

  it('is refused with the reason when the sprockets overlap', () => {
    const close = made(withFrame(plainBike, { countershaft: { x: -480, y: 0 } }), plainSetup);
    expect(axleForChain({ ...close }, loop, slot, 60)).toMatchObject({
      reason: 'sprocketsOverlap',
      axlePosition: null,
      nearest: [],
    });
  });
});

it('the axle in frame coordinates is where the arm puts it', () => {
  const parts = made();
  const axle = axleInFrame(parts, 25, setAxlePosition(parts));
  if ('ok' in axle) throw new Error(axle.reason);
  expect(Math.hypot(axle.x, axle.y)).toBeCloseTo(parts.rear.arm, 10);
  const risen = axleInFrame(parts, 0, setAxlePosition(parts));
  if ('ok' in risen) throw new Error(risen.reason);
  expect(axle.y - risen.y).toBeCloseTo(25, 10);
  expect(axleInFrame(parts, 2000, 0)).toMatchObject({ ok: false, reason: 'swingarmCannotReach' });
});
