/** Tests of sprocket pairs: each is the bike stood anew with its chain and its axle place. */
import { describe, expect, it } from 'vitest';
import { ANY_CHAIN, pairsOf } from '../../../tests/support/pairs-asked.ts';
import { plainBike, plainSetup, withFrame } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { lowerRun } from '../drive/lower-run.ts';
import { linksAround } from '../../../tests/support/taut-chain.ts';
import { chainLoop } from '../drive/chain-loop.ts';
import { chainSlack } from '../drive/chain-slack.ts';
import { antiSquat } from '../readings/anti-squat.ts';
import { swingarmAngle } from '../readings/swingarm-angle.ts';
import { chainSliderClearance } from '../readings/chain-slider-clearance.ts';
import { wheelbase } from '../readings/wheelbase.ts';
import { sprocketPairs, type PairsAsked } from './sprocket-pairs.ts';

const asked: PairsAsked = {
  bike: withFrame(plainBike, { guideRadius: null }),
  setup: { ...plainSetup, axlePosition: 12 },
  ride: { front: 40, rear: 40 },
  front: { least: 13, most: 17 },
  rear: { least: 38, most: 50 },
  ...ANY_CHAIN,
};

const pairs = (change: Partial<PairsAsked> = {}) => pairsOf({ ...asked, ...change });

describe('sprocket pairs', () => {
  it('are all of the ranges, front teeth first', () => {
    const found = pairs();
    expect(found).toHaveLength(5 * 13);
    expect([found[0], found[13]].map((p) => [p.frontTeeth, p.rearTeeth])).toEqual([
      [13, 38],
      [14, 38],
    ]);
    expect(pairs({ front: { least: 4, most: 6 } }).map((p) => p.frontTeeth)).not.toContain(5);
  });

  it('each stand on the axle place that their chain gives, with the readings of that very setup', () => {
    for (const pair of pairs()) {
      expect(pair.misfit).toBeNull();
      const { frontTeeth, rearTeeth } = pair;
      const axlePosition = pair.axlePosition ?? NaN;
      const setup = { ...asked.setup, frontTeeth, rearTeeth, axlePosition };
      const on = standing(asked.bike, setup, { front: 40, rear: 40 });
      expect(pair.wheelbase).toBeCloseTo(wheelbase.read(on) as number, 9);
      expect(pair.swingarmAngle).toBeCloseTo(swingarmAngle.read(on) as number, 12);
      expect(pair.antiSquat).toBeCloseTo(antiSquat.read(on) as number, 9);
      expect(pair.pivotGap).toBeCloseTo(chainSliderClearance.read(on) as number, 9);
      const hanging = standing(asked.bike, setup);
      const apart = Math.hypot(
        hanging.countershaft.x - hanging.rearAxle.x,
        hanging.countershaft.y - hanging.rearAxle.y,
      );
      const loop = chainLoop(frontTeeth, rearTeeth, 15.875);
      const run = lowerRun(loop, { x: 0, y: 0 }, { x: apart, y: 0 });
      if (run === null) throw new Error('The sprockets overlap');
      const slack = chainSlack(run, ((pair.links ?? NaN) - linksAround(loop, apart)) * 15.875);
      expect(slack.ok && slack.total).toBeCloseTo(30, 6);
    }
  });

  it('keep the chain that is there wherever it fits, and else take the one that leaves the axle nearest to where it is', () => {
    const { frontTeeth, rearTeeth } = asked.setup;
    const found = pairs().filter((p) => p.fitting.length > 1);
    const own = found.find((p) => p.frontTeeth === frontTeeth && p.rearTeeth === rearTeeth)?.links ?? NaN;
    const keeps = found.filter(({ fitting }) => fitting.includes(own));
    const others = found.filter(({ fitting }) => !fitting.includes(own));
    expect(keeps.length).toBeGreaterThan(5);
    expect(others.length).toBeGreaterThan(5);
    for (const { links } of keeps) expect(links).toBe(own);
    for (const pair of others) {
      expect(pair.fitting).toContain(pair.links);
      expect(Math.abs((pair.axlePosition ?? NaN) - 12)).toBeLessThan(8.1);
    }
  });

  it('with a chain on the bike take the one nearest to where that chain puts the axle, whatever its adjuster says', () => {
    const [whole] = pairs({ front: { least: 15, most: 15 }, rear: { least: 45, most: 45 } });
    const chainLinks = whole.links;
    const onChain = pairs({ setup: { ...asked.setup, chainLinks, axlePosition: whole.axlePosition ?? NaN } });
    for (const axlePosition of [0, 30])
      expect(pairs({ setup: { ...asked.setup, chainLinks, axlePosition } })).toEqual(onChain);
    // Without it the adjuster counts, and is so far off that other chains come nearest.
    const asSet = (axlePosition: number) =>
      pairs({ setup: { ...asked.setup, axlePosition } }).map(({ links }) => links);
    expect(asSet(0)).not.toEqual(asSet(30));
  });

  it('take a chain that fits even where the nearest whole one would leave the slot', () => {
    for (const axlePosition of [0.5, 29.5])
      for (const pair of pairs({ setup: { ...plainSetup, axlePosition } })) {
        expect(pair.misfit).toBeNull();
        expect(pair.fitting).toContain(pair.links);
      }
  });

  it('with chains in hand take only those, and tell where the axle would be when none fits', () => {
    const found = pairs({ linksInHand: [114] });
    const fit = found.filter((p) => p.misfit === null);
    const none = found.filter((p) => p.misfit !== null);
    expect(fit.length).toBeGreaterThan(3);
    expect(none.length).toBeGreaterThan(3);
    for (const pair of found) expect(pair.links).toBe(114);
    for (const pair of fit) expect(pair.fitting).toEqual([114]);
    for (const { axlePosition, misfit, travel, fitting } of none) {
      expect(fitting).toEqual([]);
      expect(['chainTooShort', 'chainTooLong']).toContain(misfit?.reason);
      const place = axlePosition ?? NaN;
      expect(place < 0 || place > 30).toBe(true);
      expect(travel).not.toBeNull();
    }
  });

  it('with a worn chain stand further back', () => {
    const [fresh, worn] = [0, 1].map((stretchPercent) => pairs({ stretchPercent, linksInHand: [114] }));
    let placed = 0;
    fresh.forEach((pair, i) => {
      const [before, after] = [pair.axlePosition, worn[i].axlePosition];
      if (before === null || after === null) return;
      placed++;
      expect(after - before).toBeGreaterThan(4);
    });
    expect(placed).toBeGreaterThan(10);
  });

  it('with slack that no run can have are refused', () => {
    const [pair] = pairs({ slack: 2000 });
    expect(pair).toMatchObject({ links: null, travel: null, misfit: { reason: 'slackImpossible' } });
  });

  it('name what stands in their way and still tell the rest', () => {
    const small = pairs({ leastFront: 14 }).filter((p) => p.frontTeeth === 13);
    expect(small).toHaveLength(13);
    for (const pair of small) {
      expect(pair.obstacle).toMatchObject({ reason: 'frontBelowShaft', nearest: 14 });
      expect(pair.antiSquat).not.toBeNull();
    }
  });

  it('have the reason of a bike that cannot stand, or that has no machine', () => {
    const [pair] = pairs({ ride: { front: 40, rear: 900 } });
    expect(pair).toMatchObject({ travel: null, antiSquat: null, misfit: { reason: 'rearTravelBeyond' } });
    expect(pair.links).not.toBeNull();
    expect(sprocketPairs({ ...asked, setup: { ...plainSetup, frontTyre: { code: '' } } })).toMatchObject({
      ok: false,
      reason: 'tyreCodeUnreadable',
    });
  });
});
