/** Tests of the neutral zone behind a curve. */
import { describe, expect, it } from 'vitest';
import type { Curve } from '../core/effects/sweep.ts';
import { absent } from '../core/readings/absent.ts';
import { neutralZone } from './neutral-zone.ts';

const curve = (x: number[], y: Curve['y']): Curve => ({
  key: 'neutralAntiSquat',
  xQuantity: 'length',
  xUnit: 'mm',
  yQuantity: 'percent',
  yUnit: '%',
  x,
  y,
  lowStop: null,
  highStop: null,
});

describe('the neutral zone', () => {
  it('follows its curve, straight between two places and level beyond the ends', () => {
    const { middle } = neutralZone(3, curve([0, 10, 30], [104, 102, 100]));
    expect([-5, 0, 5, 10, 20, 30, 90].map(middle)).toEqual([104, 104, 103, 102, 101, 100, 100]);
  });

  it('leaves out the places without an answer', () => {
    const { middle } = neutralZone(3, curve([0, 10, 20], [absent('centreOnGround'), 102, 104]));
    expect([0, 15].map(middle)).toEqual([102, 103]);
  });

  it('lies about 100 where there is no curve', () => {
    expect(neutralZone(3, null).middle(12)).toBe(100);
    expect(neutralZone(3, curve([], [])).middle(12)).toBe(100);
  });
});
