/** Tests of the drawn rear links. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { rearLayouts } from '../../../tests/support/rear-layouts.ts';
import { standing } from '../../../tests/support/standing.ts';
import { distance } from '../../core/plane/point.ts';
import { linkPlaces, linkShapes, shockEyes } from './linkage-drawing.ts';

describe.each(rearLayouts)('$name', ({ layout }) => {
  const bike = withSwingarm(plainBike, { links: layout });

  it('is drawn with a shock as long between its eyes as the shock is then', () => {
    for (const rear of [0, 30, 90]) {
      const on = standing(bike, plainSetup, { front: 20, rear });
      const eyes = shockEyes(on);
      if (eyes === null) throw new Error('no shock');
      expect(distance(eyes.top, eyes.bottom)).toBeCloseTo(layout.shock.fullLength - on.arm.shockStroke, 9);
    }
  });

  it('keeps its rod’s length through the travel', () => {
    const rod = (rear: number): number | null => {
      const places = linkPlaces(standing(bike, plainSetup, { front: 20, rear }));
      const from = places?.get('rodOnRocker');
      const to = places?.get('rodOnArm') ?? places?.get('rodOnFrame');
      return from === undefined || to === undefined ? null : distance(from, to);
    };
    const long = rod(0);
    if (layout.kind === 'direct') expect(long).toBeNull();
    else expect(rod(90)).toBeCloseTo(long ?? NaN, 9);
    expect(linkShapes(standing(bike)).length > 0).toBe(layout.kind !== 'direct');
  });
});

it('a table has no bolts to draw', () => {
  expect([linkPlaces(standing()), shockEyes(standing()), linkShapes(standing())]).toEqual([null, null, []]);
});
