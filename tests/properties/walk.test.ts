/** Whatever two setups of a bike are: the walk from one to the other ends there, in working order, and stands at every step. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { isAdjusterChanged } from '../../src/core/adjusters/changed-adjusters.ts';
import type { AdjusterKey, Setup } from '../../src/core/adjusters/setup.ts';
import { walk } from '../../src/core/effects/walk.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { cases } from '../support/cases.ts';
import { turnedDemo } from '../support/turned-demos.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';

it('the last step is the target, every changed adjuster is turned once, and each step stands', () => {
  const counted = { walks: 0, steps: 0, skipped: 0, nothing: 0 };
  const bikes = new Set<string>();
  fc.assert(
    fc.property(turnedDemo, ({ bike, from, to }) => {
      const stand = (asked: Setup) => {
        const on = standBike(bike, asked, 'riderUp');
        return on.ok ? on : null;
      };
      const stands = stand(from) !== null && stand(to) !== null;
      if (!stands) counted.skipped += 1;
      // Another pair is drawn in its place, so that all those asked for are walked.
      fc.pre(stands);
      const walked = walk(from, to, stand);
      const changed = (Object.keys(to) as AdjusterKey[]).filter((key) => isAdjusterChanged(key, to, from));
      expect(walked.flatMap((step) => step.turned).sort()).toEqual(changed.sort());
      if (changed.length > 0) expect(walked.at(-1)?.setup).toBe(to);
      else counted.nothing += 1;
      counted.walks += 1;
      bikes.add(bike.name);
      for (const step of walked) {
        expect(step.on).not.toBeNull();
        counted.steps += 1;
      }
      const order = walked.flatMap((step) => step.turned);
      const [rear, front] = [order.indexOf('shockLength'), order.indexOf('forkTubes')];
      if (rear >= 0 && front >= 0) expect(rear).toBeLessThan(front);
      for (const key of ['frontTeeth', 'rearTeeth', 'axlePosition', 'chainLinks'] as const) {
        const at = order.indexOf(key);
        if (at >= 0 && rear >= 0) expect(at).toBeLessThan(rear);
      }
    }),
    { numRuns: cases(500) },
  );
  expect(counted.walks).toBe(cases(500));
  expect(bikes.size).toBe(DEMO_BIKES.length);
  expect(counted.steps).toBeGreaterThan(counted.walks);
  // Most pairs are walked and have something to walk.
  expect(counted.skipped).toBeLessThan(counted.walks);
  expect(counted.nothing).toBeLessThan(counted.walks / 10);
});

it('a bike that does not stand between two turns takes them in one step', () => {
  const { bike, setup } = DEMO_BIKES[0];
  const to: Setup = { ...setup, rearTeeth: setup.rearTeeth + 2, shockLength: setup.shockLength + 2 };
  const on = standBike(bike, to, 'riderUp');
  if (!on.ok) throw new Error('The demonstration bike stands.');
  const walked = walk(setup, to, (asked) => (asked === to ? on : null));
  expect(walked.map((step) => step.turned)).toEqual([['rearTeeth', 'shockLength']]);
});
