/** Tests of the two ends side by side. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_BIKES, SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { heightPlace, heightRise } from '../effects/height-places.ts';
import { READINGS } from '../readings/all-readings.ts';
import { metricReading } from '../readings/metric-reading.ts';
import { standBike } from '../riding/stand-bike.ts';
import { raiseEnds } from './two-ends.ts';

describe('front, rear and both raised by 5 mm', () => {
  it('read as trying them does, to the last digit', () => {
    for (const { bike, setup } of SPRUNG_BIKES) {
      const ends = raiseEnds(bike, setup, 'riderUp', 5);
      expect(ends.map((each) => each.ends)).toEqual(['front', 'rear', 'both']);
      for (const { turned, rise, moved } of ends) {
        const tried = turned.reduce((set, { adjuster, to }) => ({ ...set, [adjuster]: to }), setup);
        const [before, after] = [standBike(bike, setup, 'riderUp'), standBike(bike, tried, 'riderUp')];
        if (!before.ok || !after.ok) throw new Error('the bike does not stand');
        for (const { reading: key, before: was, after: is } of moved) {
          const reading = READINGS.find((each) => each.key === key);
          expect(reading && [metricReading(reading, before), metricReading(reading, after)]).toEqual([
            was,
            is,
          ]);
        }
        expect(moved.length).toBe(6);
        if (turned.length > 1) continue;
        const end = turned[0].adjuster === 'forkTubes' ? 'front' : 'rear';
        expect(rise[end]).toBe(heightRise(heightPlace(end), before, after));
        expect(Math.abs(rise[end] - 5)).toBeLessThan(1.5);
      }
    }
  });

  it('steepen the swingarm at either end, and change rake and trail the opposite way', () => {
    const [front, rear] = raiseEnds(SPRUNG_ROAD.bike, SPRUNG_ROAD.setup, 'riderUp', 5);
    const change = ({ moved }: typeof front, key: string) => {
      const found = moved.find(({ reading }) => reading === key);
      return found === undefined ? NaN : found.after - found.before;
    };
    for (const key of ['rake', 'trail']) {
      expect(change(front, key)).toBeGreaterThan(0);
      expect(change(rear, key)).toBeLessThan(0);
    }
    for (const end of [front, rear]) expect(change(end, 'swingarmAngle')).toBeGreaterThan(0);
    expect(change(rear, 'swingarmAngle')).toBeGreaterThan(change(front, 'swingarmAngle'));
  });

  it('are none where the bike does not stand, and leave out an end that does not reach it', () => {
    expect(raiseEnds(SPRUNG_ROAD.bike, { ...SPRUNG_ROAD.setup, forkSpringRate: 0 }, 'riderUp', 5)).toEqual(
      [],
    );
    const far = raiseEnds(SPRUNG_ROAD.bike, SPRUNG_ROAD.setup, 'riderUp', 40);
    expect(far.map(({ ends }) => ends)).toEqual(['rear']);
  });
});
