/** Tests that the lines drawn are those the readings were computed from. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { plainBike, plainSetup, withFrame } from '../../../tests/support/plain-bike.ts';
import { antiSquat } from '../../core/readings/anti-squat.ts';
import { trail } from '../../core/readings/trail.ts';
import type { Bike } from '../../core/parts/bike.ts';
import type { RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import { neutralAntiSquat } from '../../core/riding/equilibrium/neutral-anti-squat.ts';
import { standBike } from '../../core/riding/stand-bike.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { trailPlaces } from './construction-drawing.ts';
import { constructionAt } from './construction-hit.ts';
import { squatConstruction } from './squat-construction.ts';
import { zoneSentence } from './zone-sentence.ts';
import { zoneNamePlaces, zoneOf } from './zones.ts';

function stood(bike: Bike): Stance {
  const found = standBike(bike, plainSetup, 'toppedOut');
  if (!found.ok) throw new Error(found.reason);
  return found;
}

const plain = stood(plainBike);

describe('the squat construction as drawn', () => {
  it('has its squat line through the instant centre', () => {
    const { instantCentre, squatSlope } = squatConstruction(plain);
    if (instantCentre === 'parallel') throw new Error('the plain bike has an instant centre');
    expect(instantCentre.y / instantCentre.x).toBeCloseTo(squatSlope, 9);
  });

  it('has it there too when the chain bends over the guide', () => {
    const bent = stood(withFrame(plainBike, { guideRadius: plain.upperRunLever + 20 }));
    const { instantCentre, squatSlope } = squatConstruction(bent);
    if (instantCentre === 'parallel') throw new Error('the bent chain has an instant centre');
    expect(instantCentre.y / instantCentre.x).toBeCloseTo(squatSlope, 9);
  });

  it('names the zone by the anti-squat against the computed neutral point', () => {
    const percent = antiSquat.read(plain);
    const found = neutralAntiSquat(plain);
    if (typeof percent !== 'number' || !found.ok) throw new Error('the plain bike has an anti-squat');
    expect(found.neutral).toBeGreaterThan(100.5);
    const off = Math.abs(percent - found.neutral);
    expect(zoneOf(plain, off + 0.01)).toBe('neutral');
    expect(zoneOf(plain, off - 0.01)).toBe(percent > found.neutral ? 'lift' : 'squat');
  });

  it('says what the rear does on the gas in the state on the gas alone', () => {
    const said = (state: RideStateKey) => {
      const found = standBike(SPRUNG_ROAD.bike, { ...SPRUNG_ROAD.setup, acceleration: 0.4 }, state);
      if (!found.ok) throw new Error(found.reason);
      return zoneSentence(found, 5);
    };
    expect(said('accelerating')).toMatch(/zone.*\. The rear .* on the gas\.$/);
    for (const state of ['toppedOut', 'riderUp', 'braking'] as const)
      expect(said(state)).not.toContain('on the gas');
  });

  it('stacks the zones’ names from pro-squat at the bottom to lift at the top', () => {
    const heights = zoneNamePlaces(plain, 5).map((place) => place.y);
    expect(heights).toEqual([...heights].sort((a, b) => b - a));
  });

  it('has a trail triangle as long as the trail, with the rake at its top', () => {
    const { axisGround, patch, top } = trailPlaces(plain);
    expect(axisGround.x - patch.x).toBeCloseTo(Number(trail.read(plain)), 9);
    expect(Math.atan2(axisGround.x - top.x, top.y)).toBeCloseTo(plain.rake, 9);
  });
});

describe('tapping a line', () => {
  it('finds the construction it belongs to', () => {
    const { squatSlope } = squatConstruction(plain);
    expect(constructionAt(plain, { x: 300, y: 300 * squatSlope }, 5)).toBe('squatLine');
    expect(constructionAt(plain, { x: plain.pose.wheelbase + 20, y: 0 }, 5)).toBe('trailTriangle');
  });

  it('finds nothing on an empty place', () => {
    expect(constructionAt(plain, { x: -800, y: 900 }, 5)).toBeNull();
  });
});
