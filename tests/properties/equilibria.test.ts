/** Whatever bike, springs and forces meet: an equilibrium with finite numbers, or a reason. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { balance, type Equilibrium } from '../../src/core/riding/equilibrium/equilibrium.ts';
import { frontLiftLimit, rearLiftLimit } from '../../src/core/riding/equilibrium/lift-limits.ts';
import { machine } from '../../src/core/standing/machine.ts';
import type { NoStand } from '../../src/core/riding/no-stand.ts';
import { sag } from '../../src/core/riding/ride-changes.ts';
import { sprungMachine, type SprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { absurdBike, softBike, type RandomBike } from '../support/random-bikes.ts';
import { absurdSprings, likelySprings, type RandomSprings } from '../support/random-springs.ts';

const RUNS = cases(4000);
/** How long a count may take on a slow machine, ms. */
const PATIENCE_MS = cases(30_000);

function made({ bike, setup }: RandomBike, { springs, brake }: RandomSprings): SprungMachine | NoStand {
  const parts = machine(bike, setup);
  return parts.ok ? sprungMachine(parts, springs, brake) : parts;
}

/** Throws when a number anywhere in the value is not finite. */
function expectFinite(value: unknown, path = ''): void {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${path} is ${value}`);
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) expectFinite(inner, `${path}.${key}`);
}

function outcome(bike: RandomBike, springs: RandomSprings): Equilibrium | NoStand {
  const sprung = made(bike, springs);
  const rest = sprung.ok ? balance(sprung, springs.forces) : sprung;
  expectFinite(rest.ok ? { ...rest, stance: { ...rest.stance, machine: null } } : rest);
  if (!rest.ok && !(rest.reason.length > 0)) throw new Error('refused without a reason');
  return rest;
}

it(
  'absurd bikes, springs and forces each give finite numbers or a reason, and nothing is thrown',
  () => {
    const counts = { rested: 0, refused: 0 };
    fc.assert(
      fc.property(
        fc.oneof(
          { weight: 3, arbitrary: fc.tuple(softBike, absurdSprings) },
          { weight: 1, arbitrary: fc.tuple(absurdBike, likelySprings) },
        ),
        ([bike, springs]) => {
          counts[outcome(bike, springs).ok ? 'rested' : 'refused']++;
        },
      ),
      { numRuns: RUNS, endOnFailure: true },
    );
    expect(counts.rested).toBeGreaterThan(RUNS / 20);
    expect(counts.refused).toBeGreaterThan(RUNS / 20);
  },
  PATIENCE_MS,
);

it(
  'likely ones come to rest, on every kind of rest, or one wheel lifts; under one in a thousand does not converge',
  () => {
    const seen: Record<string, number> = {};
    const sunk = { front: 0, rear: 0 };
    const count = (what: string): void => void (seen[what] = (seen[what] ?? 0) + 1);
    fc.assert(
      fc.property(softBike, likelySprings, (bike, springs) => {
        const rest = outcome(bike, springs);
        if (!rest.ok) return count(rest.reason);
        count('rested');
        count(`front ${rest.front.rest}`);
        count(`rear ${rest.rear.rest}`);
        if (!rest.stable) count('unstable');
        expect(rest.miss).toBeLessThan(1e-9 + Number.EPSILON);
        for (const end of ['front', 'rear'] as const) {
          const tyre = rest.stance.machine.tyres?.[end];
          if (tyre === undefined || tyre.rate === null) continue;
          const axle = end === 'front' ? rest.stance.frontAxle : rest.stance.rearAxle;
          const sink = tyre.freeRadius - axle.y;
          // Load in the bike's own plane: at rest on the ground it is the load told, over the cosine of the lean.
          const load = rest[end].wheelLoad / Math.cos(springs.forces.lean);
          expect(Math.abs(sink * tyre.rate - load)).toBeLessThan(1e-6 * (1 + load));
          sunk[end]++;
        }
        expect(rest.front.wheelLoad).toBeGreaterThanOrEqual(0);
        expect(rest.rear.wheelLoad).toBeGreaterThanOrEqual(0);
        expect(rest.front.travelLeft).toBeGreaterThanOrEqual(0);
        expect(rest.rear.travelLeft).toBeGreaterThanOrEqual(0);
        // On its springs an end is in equilibrium: the springs push as much as they are pushed.
        if (rest.front.rest === 'onSprings')
          expect(Math.abs(rest.front.springForce - rest.loads.frontPush)).toBeLessThan(1e-5);
        if (rest.rear.rest === 'onSprings')
          expect(Math.abs(rest.rear.forceAtWheel - rest.loads.rearPush)).toBeLessThan(1e-5);
      }),
      { numRuns: RUNS, endOnFailure: true },
    );
    expect(seen['rested']).toBeGreaterThan(RUNS / 3);
    for (const kind of ['onSprings', 'toppedOut', 'bottomed', 'coilsClosed']) {
      expect(seen[`front ${kind}`], kind).toBeGreaterThan(RUNS / 1000);
      expect(seen[`rear ${kind}`], kind).toBeGreaterThan(RUNS / 1000);
    }
    expect(Math.min(sunk.front, sunk.rear)).toBeGreaterThan(RUNS / 10);
    expect(seen['notConverged'] ?? 0).toBeLessThan(RUNS / 1000);
  },
  PATIENCE_MS,
);

it('limits and sag of likely bikes are finite, and each limit is where its wheel carries nothing', () => {
  let limits = 0;
  let light = 0;
  fc.assert(
    fc.property(softBike, likelySprings, (bike, springs) => {
      const sprung = made(bike, springs);
      if (!sprung.ok) return;
      expectFinite(sag(sprung));
      const forces = { ...springs.forces, drag: null };
      for (const [find, sign] of [
        [frontLiftLimit, 1],
        [rearLiftLimit, -1],
      ] as const) {
        const found = find(sprung, forces);
        expectFinite(found);
        if (!found.ok) continue;
        const at = balance(sprung, { ...forces, acceleration: sign * (found.limit - 1e-7) });
        if (!at.ok) continue;
        limits++;
        const end = sign === 1 ? at.front : at.rear;
        if (end.wheelLoad < 0.1) light++;
        // A falling rate can let the posture jump, and the wheel leaves the ground at the jump.
        const above = balance(sprung, { ...forces, acceleration: sign * (found.limit + 1e-7) });
        expect(end.wheelLoad < 0.1 || !above.ok).toBe(true);
      }
    }),
    { numRuns: cases(500), endOnFailure: true },
  );
  expect(limits).toBeGreaterThan(cases(250));
  expect(light / limits).toBeGreaterThan(0.99);
});
