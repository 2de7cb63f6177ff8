/** How long a thousand sprocket pairs take, each with its chain, its axle place and the bike stood anew. */
import { sprocketPairs, type PairsAsked } from '../../src/core/effects/sprocket-pairs.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';
import { DEMO_BIKES } from '../../src/document/demo-bikes.ts';
import { timed } from '../support/timed.ts';

/** Goal for 1000 pairs, ms. */
const GOAL_MS = 50;

export default function pairs(): string[] {
  const asked = (i: number): PairsAsked => ({
    bike: plainBike,
    setup: { ...plainSetup, shockLength: (i % 50) / 10 },
    ride: { front: 30, rear: 20 + (i % 7) },
    front: { least: 11, most: 20 },
    rear: { least: 21, most: 120 },
    leastFront: 11,
    linksInHand: null,
    rule: { halfLink: false },
    play: 30,
    setAt: 0,
    stretchPercent: 0,
  });
  const found = sprocketPairs(asked(0));
  if ('ok' in found) throw new Error(found.reason);
  const stood = found.filter((pair) => pair.stance !== null).length;
  const fitted = found.filter((pair) => pair.misfit === null).length;
  const us = timed((i) => {
    const all = sprocketPairs(asked(i));
    return 'ok' in all ? NaN : all.length;
  });
  const ms = ((us / 1000) * 1000) / found.length;
  const ridden = (['riderUp', 'onGas', 'midCorner'] as const).map((ride) => {
    const [{ bike, setup }] = DEMO_BIKES;
    const each = timed((i) => {
      const all = sprocketPairs({ ...asked(i), bike, setup, ride });
      return 'ok' in all ? NaN : all.length;
    });
    const per = ((each / 1000) * 1000) / found.length;
    return `on a demonstration bike, ${ride}: per 1000 pairs ${per.toFixed(2)} ms; goal ${GOAL_MS} ms: ${per <= GOAL_MS ? 'met' : 'MISSED'}`;
  });
  return [
    ...ridden,
    `${found.length} pairs, of which ${stood} stand and ${fitted} have the axle in its slot: ${(us / 1000).toFixed(2)} ms`,
    `per 1000 pairs ${ms.toFixed(2)} ms; goal ${GOAL_MS} ms: ${ms <= GOAL_MS ? 'met' : 'MISSED'}`,
  ];
}
