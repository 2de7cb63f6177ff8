/** On every demonstration bike a target of that bike is reached in workshop steps, with its trail kept. */
import { describe, expect, it } from 'vitest';
import asked from '../../fixtures/plans/demo-targets.json';
import { findPlans } from '../support/find-plans.ts';
import type { Choice, Target } from '../../src/core/plan/problem.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { metricReading } from '../../src/core/readings/metric-reading.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { QUANTITIES } from '../../src/core/units/all-quantities.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { warningWords } from '../../src/words/trouble/warning-words.ts';

const METRIC = { system: 'metric', decimal: '.' } as const;

it('every demonstration bike has its target', () => {
  expect(asked.map(({ bike }) => bike)).toEqual(DEMO_BIKES.map(({ bike }) => bike.name));
});

describe.each(DEMO_BIKES)('$bike.name', ({ bike, setup }) => {
  const of = asked.find((each) => each.bike === bike.name);
  // The fixture holds what the types say; a key that is none would be refused below.
  const targets = of?.targets as readonly Target[];
  const choices = of?.choices as readonly Choice[];

  it('reaches its target and keeps its trail, as standing the bike anew shows', () => {
    const found = findPlans({ bike, setup, targets, choices });
    if (!found.ok) throw new Error(found.reason);
    expect(found.tried).toBe(found.total);
    expect(found.plans.length).toBeGreaterThan(0);
    for (const plan of found.plans) {
      expect(plan.steps.length).toBeGreaterThan(0);
      const last = plan.steps[plan.steps.length - 1];
      expect(last.readings).toEqual(plan.readings);
      targets.forEach(({ reading: key, state, want }, i) => {
        const reading = READINGS.find((each) => each.key === key);
        const [on, before] = [standBike(bike, plan.setup, state), standBike(bike, setup, state)];
        if (reading === undefined || !on.ok || !before.ok) throw new Error(key);
        const value = Number(metricReading(reading, on));
        expect(plan.readings[i]).toBe(value);
        const aim = want.kind === 'value' ? want.value : Number(metricReading(reading, before));
        expect(Math.abs(value - aim)).toBeLessThanOrEqual(QUANTITIES[reading.quantity].noticed / 2 + 1e-9);
      });
      const rested = standBike(bike, plan.setup, 'riderUp');
      if (!rested.ok) throw new Error(rested.reason);
      expect(warningWords({ bike, setup: plan.setup, stance: rested, rested }, METRIC)).toEqual([]);
    }
  });
});
