/** Tests of the way from a refusal to the dial behind it. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import type { Setup } from '../chassis/setup.ts';
import { dialToTurn } from './dial-to-turn.ts';
import { rideCase, type RideState } from './ride-state.ts';
import { machine } from './machine.ts';
import { rollCase } from './roll.ts';
import { standBike, standRide } from './stand-bike.ts';

const { bike, setup } = SPRUNG_ROAD;

function refused(state: RideState, changes: Partial<Setup>, onBike = bike): [string, string | null] {
  const dialled = { ...setup, ...changes };
  const found = standBike(onBike, dialled, state);
  if (found.ok) throw new Error('the bike comes to rest');
  return [found.reason, dialToTurn(found, rideCase(state, dialled), dialled)];
}

describe('the dial behind a refusal', () => {
  it('is the spring rate that is not known', () => {
    expect(refused('riderUp', { forkSpringRate: 0 })).toEqual(['rateNotAboveZero', 'forkSpringRate']);
    expect(refused('onGas', { shockSpringRate: 0 })).toEqual(['rateNotAboveZero', 'shockSpringRate']);
  });

  it('is no dial when the rate that is zero is a bump stop’s', () => {
    const ends = { ...bike.fork.ends, bumpStart: 100, bumpRate: 0 };
    expect(refused('riderUp', {}, { ...bike, fork: { ...bike.fork, ends } })).toEqual([
      'rateNotAboveZero',
      null,
    ]);
  });

  it('is the gas or the brake that lifts a wheel, and in the corner the corner’s own gas', () => {
    expect(refused('onGas', { gas: 1.5 })).toEqual(['frontLifts', 'gas']);
    expect(refused('onBrakes', { brake: 1.5 })).toEqual(['rearLifts', 'brake']);
    expect(refused('midCorner', { cornerGas: 3 })).toEqual(['frontLifts', 'cornerGas']);
    expect(refused('midCorner', { cornerGas: -3 })).toEqual(['rearLifts', 'cornerGas']);
    const hard = { ...setup, gas: 1.5 };
    const made = machine(bike, hard);
    const ride = rollCase(0.95, hard);
    const found = made.ok ? standRide(made, ride) : made;
    if (found.ok) throw new Error('the front wheel stays down');
    expect(dialToTurn(found, ride, hard)).toBe('gas');
  });

  it('is the preload that closes the coils, the lean, the share, the drag and the travel', () => {
    const ends = { ...bike.shock.ends, springTravel: 10 };
    expect(refused('riderUp', {}, { ...bike, shock: { ...bike.shock, ends } })).toEqual([
      'preloadBeyondSpring',
      'shockPreload',
    ]);
    expect(refused('midCorner', { leanDeg: 85 })).toEqual(['leanImpossible', 'leanDeg']);
    expect(refused('onBrakes', { brakeFrontShare: 120 })).toEqual([
      'brakeShareImpossible',
      'brakeFrontShare',
    ]);
    expect(refused('onGas', { dragForce: -3 })).toEqual(['dragImpossible', 'dragForce']);
    expect(refused('asDialled', { frontTravelUsed: 500 })).toEqual(['forkTravelBeyond', 'frontTravelUsed']);
    expect(refused('asDialled', { rearTravelUsed: 500 })).toEqual(['rearTravelBeyond', 'rearTravelUsed']);
  });

  it('is the chain that does not fit, its play, and the axle out of its slot', () => {
    expect(refused('toppedOut', { chainLinks: 60 })).toEqual(['chainTooShort', 'chainLinks']);
    expect(refused('toppedOut', { chainLinks: 160 })).toEqual(['chainTooLong', 'chainLinks']);
    expect(refused('toppedOut', { chainLinks: 111 })).toEqual(['linksImpossible', 'chainLinks']);
    expect(refused('toppedOut', { chainLinks: 112, chainPlay: 5000 })).toEqual([
      'playImpossible',
      'chainPlay',
    ]);
    expect(refused('toppedOut', { axlePosition: 900 })).toEqual(['axleOutOfSlot', 'axlePosition']);
  });

  it('is none when the parts themselves do not meet', () => {
    expect(refused('onGas', { forkHeight: 700 })[1]).toBeNull();
  });
});
