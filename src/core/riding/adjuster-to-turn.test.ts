/** Tests of the way from a refusal to the adjuster behind it. */
import type { OtherLeg } from '../parts/support.ts';
import { describe, expect, it } from 'vitest';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import type { Setup } from '../adjusters/setup.ts';
import { adjusterToTurn } from './adjuster-to-turn.ts';
import { loadCase, type RideStateKey } from './states/all-ride-states.ts';
import { machine } from '../standing/machine.ts';
import { cornerSequenceCase } from './states/corner-sequence.ts';
import { standBike, standRide } from './stand-bike.ts';

const { bike, setup } = SPRUNG_ROAD;

function refused(state: RideStateKey, changes: Partial<Setup>, onBike = bike): [string, string | null] {
  const asSet = { ...setup, ...changes };
  const found = standBike(onBike, asSet, state);
  if (found.ok) throw new Error('the bike comes to rest');
  return [found.reason, adjusterToTurn(found, loadCase(state, asSet), asSet)];
}

describe('the adjuster behind a refusal', () => {
  it('is the spring rate that is not known', () => {
    expect(refused('riderUp', { forkSpringRate: 0 })).toEqual(['rateNotAboveZero', 'forkSpringRate']);
    expect(refused('accelerating', { shockSpringRate: 0 })).toEqual(['rateNotAboveZero', 'shockSpringRate']);
  });

  it('is no adjuster when the rate that is zero is a bump stop’s', () => {
    const ends = { ...bike.fork.ends, bumpStart: 100, bumpRate: 0 };
    expect(refused('riderUp', {}, { ...bike, fork: { ...bike.fork, ends } })).toEqual([
      'rateNotAboveZero',
      null,
    ]);
  });

  it('is the gas or the brake that lifts a wheel, and in the corner the corner’s own gas', () => {
    expect(refused('accelerating', { acceleration: 1.5 })).toEqual(['frontLifts', 'acceleration']);
    expect(refused('braking', { braking: 1.5 })).toEqual(['rearLifts', 'braking']);
    expect(refused('midCorner', { cornerAcceleration: 3 })).toEqual(['frontLifts', 'cornerAcceleration']);
    expect(refused('midCorner', { cornerBraking: 3 })).toEqual(['rearLifts', 'cornerBraking']);
    expect(refused('midCorner', { cornerEngineDeceleration: 3 })).toEqual([
      'rearLifts',
      'cornerEngineDeceleration',
    ]);
    expect(refused('throttleClosed', { closedBraking: 3 })).toEqual(['rearLifts', 'closedBraking']);
    expect(refused('throttleClosed', { engineDeceleration: 3 })).toEqual(['rearLifts', 'engineDeceleration']);
    expect(refused('midCorner', { cornerAcceleration: 0.2, cornerBraking: 0.1 })).toEqual([
      'throttleOpenAndClosed',
      'cornerAcceleration',
    ]);
    const hard = { ...setup, acceleration: 1.5 };
    const made = machine(bike, hard);
    const ride = cornerSequenceCase(0.95, hard);
    const found = made.ok ? standRide(made, ride) : made;
    if (found.ok) throw new Error('the front wheel stays down');
    expect(adjusterToTurn(found, ride, hard)).toBe('acceleration');
  });

  it('is the air gap that leaves no air, and the pressure below no air at all', () => {
    const air = { bore: 42, slidingTube: 43, exponent: 1.3, steelVolume: 0, balance: null };
    const support = { spring: { kind: 'oneRate' }, air } as const;
    const pumped = { ...bike, fork: { ...bike.fork, support }, shock: { ...bike.shock, support } };
    expect(refused('riderUp', { forkAirGap: 0 }, pumped)).toEqual(['noAirLeft', 'forkAirGap']);
    expect(refused('riderUp', { shockAirGap: 0 }, pumped)).toEqual(['noAirLeft', 'shockAirGap']);
    expect(refused('riderUp', { forkAirPressure: -2 }, pumped)).toEqual([
      'airPressureImpossible',
      'forkAirPressure',
    ]);
    const balance = { volume: 40, bore: 36, rod: 12, pressure: -2 };
    const opposed = { ...support, air: { ...air, balance } };
    expect(refused('riderUp', {}, { ...pumped, shock: { ...bike.shock, support: opposed } })).toEqual([
      'airPressureImpossible',
      null,
    ]);
  });

  it('is none for what the other fork leg holds, whose own figures are in the way', () => {
    const air = { bore: 42, slidingTube: 43, exponent: 1.3, steelVolume: 0, balance: null };
    const leg: OtherLeg = {
      spring: { kind: 'oneRate' },
      air,
      rate: 9,
      preload: 5,
      springTravel: null,
      airGap: 120,
      airPressure: 0,
    };
    const unlike = (changes: Partial<OtherLeg>) => ({
      ...bike,
      fork: { ...bike.fork, otherLeg: { ...leg, ...changes } },
    });
    expect(refused('riderUp', {}, unlike({ airGap: 0 }))).toEqual(['noAirLeft', null]);
    expect(refused('riderUp', {}, unlike({ airPressure: -2 }))).toEqual(['airPressureImpossible', null]);
    expect(refused('riderUp', {}, unlike({ rate: 0 }))).toEqual(['rateNotAboveZero', null]);
    expect(refused('riderUp', {}, unlike({ springTravel: 4 }))).toEqual(['preloadBeyondSpring', null]);
    expect(refused('riderUp', { forkSpringRate: 0 }, unlike({}))).toEqual([
      'rateNotAboveZero',
      'forkSpringRate',
    ]);
  });

  it('is the preload that closes the coils, the lean, the share, the drag and the travel', () => {
    const ends = { ...bike.shock.ends, springTravel: 10 };
    expect(refused('riderUp', {}, { ...bike, shock: { ...bike.shock, ends } })).toEqual([
      'preloadBeyondSpring',
      'shockPreload',
    ]);
    expect(refused('midCorner', { leanDeg: 85 })).toEqual(['leanImpossible', 'leanDeg']);
    expect(refused('throttleClosed', { closedLeanDeg: 85 })).toEqual(['leanImpossible', 'closedLeanDeg']);
    expect(refused('braking', { brakeFrontShare: 120 })).toEqual(['brakeShareImpossible', 'brakeFrontShare']);
    expect(refused('accelerating', { dragForce: -3 })).toEqual(['dragImpossible', 'dragForce']);
    expect(refused('travelByHand', { frontTravelUsed: 500 })).toEqual([
      'forkTravelBeyond',
      'frontTravelUsed',
    ]);
    expect(refused('travelByHand', { rearTravelUsed: 500 })).toEqual(['rearTravelBeyond', 'rearTravelUsed']);
  });

  it('is the chain that does not fit, its slack, and the axle out of its slot', () => {
    expect(refused('toppedOut', { chainLinks: 60 })).toEqual(['chainTooShort', 'chainLinks']);
    expect(refused('toppedOut', { chainLinks: 160 })).toEqual(['chainTooLong', 'chainLinks']);
    expect(refused('toppedOut', { chainLinks: 111 })).toEqual(['linksImpossible', 'chainLinks']);
    expect(refused('toppedOut', { chainLinks: 112, chainSlack: 5000 })).toEqual([
      'slackImpossible',
      'chainSlack',
    ]);
    expect(refused('toppedOut', { axlePosition: 900 })).toEqual(['axleOutOfSlot', 'axlePosition']);
  });

  it('is none when the parts themselves do not meet', () => {
    expect(refused('accelerating', { forkTubes: 700 })[1]).toBeNull();
  });
});
