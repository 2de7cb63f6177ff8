/** Tests of bikes that describe something no chain or arm can do. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup, withFrame, withSwingarm } from '../../../tests/support/plain-bike.ts';
import type { Bike } from '../parts/bike.ts';
import { standBike } from './stand-bike.ts';

function reason(bike: Bike): string {
  const found = standBike(bike, plainSetup, 'toppedOut');
  return found.ok ? 'stands' : found.reason;
}

describe('a bike is refused', () => {
  it('with a guide that swallows the front sprocket, and stands with one just smaller', () => {
    const guided = (guideRadius: number) =>
      standBike(withFrame(plainBike, { guideRadius }), plainSetup, 'toppedOut');
    const refused = guided(500);
    if (refused.ok || 'nearest' in refused) throw new Error('a guide of half a metre stood');
    expect(refused.reason).toBe('guideImpossible');
    expect(guided((refused.limit ?? 0) - 0.1).ok).toBe(true);
    expect(reason(withFrame(plainBike, { guideRadius: -1 }))).toBe('guideImpossible');
  });

  it('with a countershaft behind the rear axle', () => {
    expect(reason(withFrame(plainBike, { countershaft: { x: -900, y: 0 } }))).toBe('countershaftBehindAxle');
  });

  it('with a travel table that does not begin at nothing', () => {
    const travelTable = [
      { wheelTravel: 0, shockStroke: 10 },
      { wheelTravel: 120, shockStroke: 60 },
    ];
    expect(reason(withSwingarm(plainBike, { travelTable }))).toBe('travelTableUnusable');
  });

  it.each([95, 120, 180, -100])(
    'with an arm at %d°, which would be read as its mirror image',
    (toppedOutAngleDeg) => {
      expect(reason(withSwingarm(plainBike, { toppedOutAngleDeg }))).toBe('swingarmCannotReach');
    },
  );
});
