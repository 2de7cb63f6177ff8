/** Tests of what a mechanic tries first for a complaint. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_BIKES, SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import { endTurned } from '../adjusters/working-order.ts';
import { READINGS } from '../readings/all-readings.ts';
import { metricReading } from '../readings/metric-reading.ts';
import { standBike } from '../riding/stand-bike.ts';
import { COMPLAINTS, PLACES } from './all-complaints.ts';
import { firstSteps } from './first-steps.ts';

describe('a complaint', () => {
  it('has its place, its reading and steps, and the end that practice gives to that place', () => {
    expect(new Set(COMPLAINTS.map(({ key }) => key)).size).toBe(COMPLAINTS.length);
    for (const { key } of PLACES) expect(COMPLAINTS.some(({ place }) => place === key)).toBe(true);
    for (const { reading, tries, place, end, says, ruleOut } of COMPLAINTS) {
      expect(READINGS.some(({ key }) => key === reading)).toBe(true);
      expect(tries.length).toBeGreaterThan(0);
      expect(says).toMatch(/^[A-Z].*\.$/);
      expect(ruleOut).not.toMatch(/[.]$/);
      if (place === 'gas') expect(end).toBe('rear');
      if (place === 'braking' || place === 'turnIn' || place === 'midCorner') expect(end).toBe('front');
    }
  });

  it.each(COMPLAINTS)(
    '$key: the figures are those of trying each step, and those that help come first',
    (complaint) => {
      let helped = 0;
      for (const { bike, setup } of SPRUNG_BIKES) {
        const steps = firstSteps(bike, setup, complaint);
        const reading = READINGS.find(({ key }) => key === complaint.reading);
        for (const { adjuster, from, to, moved, helps } of steps) {
          expect(from).toBe(setup[adjuster]);
          const [before, after] = [setup, { ...setup, [adjuster]: to }].map((each) => {
            const on = standBike(bike, each, complaint.state);
            if (reading === undefined || !on.ok) throw new Error(adjuster);
            return Number(metricReading(reading, on));
          });
          expect([moved.before, moved.after]).toEqual([before, after]);
          expect(helps).toBe(complaint.better === 'more' ? after > before : after < before);
        }
        const order = steps.map(({ helps, there, adjuster }) => [
          helps ? 1 : 0,
          endTurned(adjusterOf(adjuster)) === complaint.end ? 1 : 0,
          there,
        ]);
        for (const [i, now] of order.slice(1).entries()) {
          const before = order[i];
          const first = now.findIndex((each, at) => each !== before[at]);
          if (first >= 0) expect(before[first]).toBeGreaterThan(now[first]);
        }
        helped += steps.filter(({ helps }) => helps).length;
      }
      expect(helped).toBeGreaterThan(0);
    },
  );

  it('holds a step within the adjuster’s range, and leaves out one that has no room', () => {
    const dives = COMPLAINTS[0];
    const near = firstSteps(SPRUNG_ROAD.bike, { ...SPRUNG_ROAD.setup, forkPreload: 38.5 }, dives);
    expect(near.find(({ adjuster }) => adjuster === 'forkPreload')?.to).toBe(40);
    const at = firstSteps(SPRUNG_ROAD.bike, { ...SPRUNG_ROAD.setup, forkPreload: 40 }, dives);
    expect(at.some(({ adjuster }) => adjuster === 'forkPreload')).toBe(false);
  });
});
