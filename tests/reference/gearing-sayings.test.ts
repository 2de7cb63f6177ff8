/** What mechanics say about gearing, computed on the invented road sport bike with its chain, axle and guide together. */
import { CHAIN } from '../../src/core/parts/drive-noun.ts';
import { describe, expect, it } from 'vitest';
import { chainLoop } from '../../src/core/drive/chain-loop.ts';
import { pairDifference } from '../../src/core/effects/pair-choice.ts';
import { pairWords } from '../../src/words/drive/pair-words.ts';
import { antiSquat } from '../../src/core/readings/anti-squat.ts';
import { fewestClearFrontTeeth, guideClearance } from '../../src/core/chain/guide-clearance.ts';
import { guidePush } from '../../src/core/chain/guide-push.ts';
import { FROZEN_ROAD_SPORT } from '../support/frozen-road-sport.ts';
import { ANY_CHAIN, pairIn, pairsOf } from '../support/pairs-asked.ts';
import { driveCircles } from '../support/squat-by-lines.ts';
import { slopeByWork } from '../support/squat-by-work.ts';
import { made, standing } from '../support/standing.ts';

const { bike, setup } = FROZEN_ROAD_SPORT;
const RIDDEN = { front: setup.frontTravelUsed, rear: setup.rearTravelUsed };

const pairs = pairsOf({
  bike,
  setup,
  ride: RIDDEN,
  front: { least: 13, most: 17 },
  rear: { least: 39, most: 51 },
  ...ANY_CHAIN,
});

const pair = (front: number, rear: number) => pairIn(pairs, front, rear);

/** A pair on a chain so many links longer than the bike's own. */
function onChain(front: number, rear: number, longer: number) {
  const links = pair(15, 45).links;
  if (links === null) throw new Error('no chain fits');
  const range = { front: { least: front, most: front }, rear: { least: rear, most: rear } };
  return pairIn(
    pairsOf({ bike, setup, ride: RIDDEN, ...range, ...ANY_CHAIN, linksInHand: [links + longer] }),
    front,
    rear,
  );
}

const from1545 = (front: number, rear: number, longer: number) =>
  pairDifference(pair(15, 45), onChain(front, rear, longer));

/** Anti-squat with the axle left where it is, which no chain of whole links allows. */
function axleKept(frontTeeth: number, rearTeeth: number): number {
  const read = (change: object) => antiSquat.read(standing(bike, { ...setup, ...change }, RIDDEN)) as number;
  return read({ frontTeeth, rearTeeth }) - read({});
}

// Source: common practice, no source.
describe('the same ratio on more teeth, on the road sport bike', () => {
  it('15/45 to 16/48 squats more only by 0.05 points with the axle kept: its countershaft lies just below the line of the arm', () => {
    expect(axleKept(16, 48)).toBeCloseTo(-0.048, 3);
  });

  it('with its chain it takes two links more, moves the axle 0.6 mm forward, and 0.02 points remain', () => {
    const { links, axlePosition, wheelbase, antiSquat: points, chainMoment } = from1545(16, 48, 2);
    expect(links).toBe(2);
    expect(axlePosition).toBeCloseTo(-0.62, 2);
    expect(wheelbase).toBeCloseTo(-0.61, 2);
    expect(points).toBeCloseTo(-0.016, 3);
    expect(chainMoment).toBeCloseTo(0.16, 2);
  });

  it('what it does change is the gap to the pivot: 3.1 mm more', () => {
    expect(from1545(16, 48, 2).pivotGap).toBeCloseTo(3.14, 2);
    expect(from1545(14, 42, -2).pivotGap).toBeCloseTo(-3.13, 2);
  });

  it('reads as almost the same', () => {
    expect(pairWords(pair(15, 45), pair(16, 48), CHAIN, { system: 'metric', decimal: '.' })).toBe(
      'Same ratio, almost the same anti-squat.',
    );
  });
});

// Source: common practice, no source.
describe('“a bigger rear sprocket squats more”, on the road sport bike: the balance of forces disagrees', () => {
  it.each([
    { front: 15, rear: 47, longer: 2, kept: 1.48, together: 1.09, moment: -4.25 },
    { front: 14, rear: 45, longer: 0, kept: 2.37, together: 2.17, moment: -6.32 },
    { front: 15, rear: 43, longer: -2, kept: -1.62, together: -1.25, moment: 4.61 },
  ])(
    '$front/$rear changes anti-squat by $kept points with the axle kept, by $together with its chain',
    ({ front, rear, longer, kept, together, moment }) => {
      expect(axleKept(front, rear)).toBeCloseTo(kept, 2);
      expect(from1545(front, rear, longer).antiSquat).toBeCloseTo(together, 2);
      expect(from1545(front, rear, longer).chainMoment).toBeCloseTo(moment, 2);
    },
  );

  it('a chain two links longer takes part of it back, because the axle moves 7.4 mm and the wheelbase with it', () => {
    const { links, axlePosition, wheelbase } = from1545(15, 47, 2);
    expect(links).toBe(2);
    expect(axlePosition).toBeCloseTo(7.38, 2);
    expect(wheelbase).toBeCloseTo(7.28, 2);
  });
});

// Source: common practice, no source.
describe('a chain that lies over the pivot pulls the rear down and eats the chain slider, on the road sport bike', () => {
  const steep = { ...setup, shockLength: 20, frontTeeth: 11 };
  const loop = chainLoop(11, 45, 15.875);

  it('as delivered the chain stays 15 mm clear of its guide through the whole travel', () => {
    const clearance = guideClearance(made(bike, setup), chainLoop(15, 45, 15.875), 14);
    if (!clearance.ok) throw new Error(clearance.reason);
    expect(clearance.leastGap).toBeCloseTo(15.07, 2);
    expect(clearance.leastAt).toBe(0);
  });

  it('an arm 20 mm of shock steeper and 11 teeth lay it on the guide, hanging', () => {
    const clearance = guideClearance(made(bike, steep), loop, 14);
    if (!clearance.ok) throw new Error(clearance.reason);
    expect(clearance.leastGap).toBeLessThan(0);
    expect(clearance.touching).toHaveLength(1);
    expect(clearance.touching[0].from).toBe(0);
    const clear = fewestClearFrontTeeth(made(bike, steep), loop, { least: 10, most: 20 });
    expect(clear?.frontTeeth).toBe(12);
  });

  it('there it pulls the rear down more than a chain with nothing in its way, and presses on the guide', () => {
    const bare = { ...bike, frame: { ...bike.frame, guideRadius: null } };
    const over = standing(bike, steep);
    const free = standing(bare, steep);
    expect(over.chainSlope).toBeLessThan(free.chainSlope);
    expect(antiSquat.read(over)).toBeLessThan(antiSquat.read(free) as number);
    expect(guidePush(over, loop)?.perThousand).toBeGreaterThan(0);
    expect(slopeByWork(driveCircles(over))).toBeCloseTo(over.swingarmSlope + over.chainSlope, 7);
  });
});
