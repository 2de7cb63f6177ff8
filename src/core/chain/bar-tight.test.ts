/** Tests of a chain that is bar tight somewhere in its travel. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { likelyBike } from '../../../tests/support/random-bikes.ts';
import { demoBikes, roadSport } from '../../../tests/support/road-sport.ts';
import { chainForAxle } from './chain-for-axle.ts';
import { machine, type Machine } from '../standing/machine.ts';
import { setAxlePosition } from '../standing/chain-in-frame.ts';
import { barTight } from './bar-tight.ts';
import { slackAt, slackThroughTravel, type FittedChain } from './slack-through-travel.ts';

const { bike, setup } = roadSport;
/** What its manual wants left, mm. */
const LEAST = 10;

function made(slack: number): Machine {
  const found = machine(bike, { ...setup, chainSlack: slack });
  if (!found.ok) throw new Error(found.reason);
  return found;
}

/** The chain that a machine is set with, whole or not. */
function chainOn(on: Machine): FittedChain {
  if (on.chain === null) throw new Error('no chain');
  const { loop, slot } = on.chain;
  const axlePosition = setAxlePosition(on);
  const asked = chainForAxle(on, loop, slot, axlePosition);
  if (!asked.ok) throw new Error(asked.reason);
  return { loop, links: on.chain.links ?? asked.exactLinks, axlePosition };
}

it('a chain without slack on the stand is bar tight where axle, pivot and countershaft are in line', () => {
  const on = made(0);
  const found = barTight(on, LEAST);
  if (found === null) throw new Error('a chain with no slack at all is not bar tight');
  const there = slackAt(on, chainOn(on), found.rearTravel);
  if (!there.ok) throw new Error(there.reason);
  expect(there.spare).toBeCloseTo(-found.short, 9);
  expect(found.slackSet).toBe(0);
});

it('the slack it says to set is enough', () => {
  const wanted = barTight(made(0), LEAST)?.slackToSet;
  if (typeof wanted !== 'number') throw new Error('no slack to set');
  expect(barTight(made(wanted), LEAST)).toBeNull();
  expect(barTight(made(wanted - 12), LEAST)).not.toBeNull();
});

it('is so exactly where a walk through the travel finds a place without slack', () => {
  let tight = 0;
  fc.assert(
    fc.property(likelyBike, fc.double({ min: 0, max: 40, noNaN: true }), (random, chainSlack) => {
      const on = machine(random.bike, { ...random.setup, chainSlack, chainLinks: null });
      if (!on.ok || on.chain === null || on.driveKind !== 'chain') return;
      const places = slackThroughTravel(on, chainOn(on), 201);
      if (!Array.isArray(places)) return;
      const least = Math.min(...places.map(({ spare }) => spare));
      const found = barTight(on, LEAST);
      if (found === null) expect(least).toBeGreaterThan(-0.006);
      else expect(found.short).toBeGreaterThanOrEqual(-least - 1e-9);
      if (found !== null) tight++;
    }),
    { numRuns: cases(60) },
  );
  expect(tight).toBeGreaterThan(5);
});

it('no demonstration bike is sent out so, and belts, shafts and hubs never are', () => {
  for (const { bike: each, setup: set } of demoBikes) {
    const on = machine(each, set);
    if (!on.ok) throw new Error(on.reason);
    expect(barTight(on, each.drive.leastSlack)).toBeNull();
  }
  for (const driveKind of ['belt', 'shaft', 'hub'] as const)
    expect(barTight({ ...made(0), driveKind }, LEAST)).toBeNull();
});
