/** Chain, slack, guide, pairs and curves of any bike, however absurd: numbers or reasons, and never anything in between. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { chainLoop } from '../../src/core/drive/chain-loop.ts';
import { sprocketPairs } from '../../src/core/effects/sprocket-pairs.ts';
import { curveAlong } from '../../src/core/effects/sweep.ts';
import { antiSquat } from '../../src/core/readings/anti-squat.ts';
import { engineBraking } from '../../src/core/readings/engine-braking.ts';
import { chainForAxle } from '../../src/core/chain/chain-for-axle.ts';
import { axleForChain } from '../../src/core/standing/axle-in-slot.ts';
import { hangingOn, slackAt } from '../../src/core/chain/slack-through-travel.ts';
import { tightestPlace } from '../../src/core/chain/tightest-place.ts';
import { guideClearance } from '../../src/core/chain/guide-clearance.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { slackToSet } from '../../src/core/chain/slack-to-set.ts';
import { stance } from '../../src/core/standing/stance.ts';
import { ANY_CHAIN } from '../support/pairs-asked.ts';
import { absurdBike, likelyBike, type RandomBike } from '../support/random-bikes.ts';

/** Every number in a value that is not finite, by its path. */
function faults(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => faults(inner, `${path}.${key}`));
}

/** All that the drive side computes of a bike, and how many parts of it are answers. */
function allOf({ bike, setup, travel }: RandomBike): { said: unknown[]; answers: number } {
  const said: unknown[] = [];
  const pairs = sprocketPairs({
    bike,
    setup,
    ride: travel,
    front: { least: 14, most: 15 },
    rear: { least: 44, most: 45 },
    ...ANY_CHAIN,
  });
  const along = {
    bike,
    setup,
    travel,
    axis: { kind: 'travel', end: 'rear' },
    from: 0,
    to: 120,
    count: 4,
  } as const;
  // The stances hold the inputs as they are; what is shown of them are the numbers beside them.
  said.push('ok' in pairs ? pairs : pairs.map((pair) => ({ ...pair, travel: null })));
  said.push(curveAlong(along, antiSquat), curveAlong(along, engineBraking));
  const parts = machine(bike, setup);
  if (parts.ok) {
    const loop = chainLoop(setup.frontTeeth, setup.rearTeeth, bike.drive.chainPitch);
    const slot = { slot: bike.swingarm.slot, slack: 25, rearTravel: 10, rule: { halfLink: true } };
    said.push(axleForChain(parts, loop, slot, 114), chainForAxle(parts, loop, slot, setup.axlePosition));
    said.push(tightestPlace(parts, loop, setup.axlePosition), guideClearance(parts, loop, 7));
    said.push(slackAt(parts, { loop, links: 114, axlePosition: setup.axlePosition }, travel.rear));
    said.push(
      slackToSet(parts, loop, { links: 114, leastSlack: 8, measuredAt: 0, slot: bike.swingarm.slot }),
    );
    const on = stance(parts, travel);
    if (on.ok) said.push({ ...hangingOn(on, loop, 116), run: null });
  }
  const answers = said.filter(
    (part) => typeof part === 'object' && part !== null && !('ok' in part && !part.ok),
  );
  return { said, answers: answers.length };
}

it('absurd bikes get numbers or reasons', () => {
  let answered = 0;
  fc.assert(
    fc.property(absurdBike, (bike) => {
      const { said, answers } = allOf(bike);
      expect(faults(said)).toEqual([]);
      answered += answers;
    }),
    { numRuns: cases(300) },
  );
  expect(answered).toBeGreaterThan(cases(300));
});

it('likely bikes get mostly numbers', () => {
  let answered = 0;
  fc.assert(
    fc.property(likelyBike, (bike) => {
      const { said, answers } = allOf(bike);
      expect(faults(said)).toEqual([]);
      answered += answers;
    }),
    { numRuns: cases(100) },
  );
  expect(answered).toBeGreaterThan(cases(100 * 6));
});
