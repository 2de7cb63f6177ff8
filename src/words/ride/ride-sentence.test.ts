/** Tests of the sentence that tells a ride state. */
import { describe, expect, it } from 'vitest';
import { reached } from '../../../tests/support/plain-springs.ts';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { loadCase, type RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import { rideMotion, rideSentence } from './ride-sentence.ts';
import { cornerSequenceCase } from '../../core/riding/states/corner-sequence.ts';
import { standBike } from '../../core/riding/stand-bike.ts';

const METRIC: NumberStyle = { system: 'metric', decimal: '.' };
const { bike, setup } = SPRUNG_ROAD;

function told(state: RideStateKey, changes: Partial<typeof setup> = {}, style = METRIC): string {
  const asSet = { ...setup, ...changes };
  const { equilibrium } = reached(standBike(bike, asSet, state));
  return rideSentence(loadCase(state, asSet), asSet, equilibrium, style).replace(/\u00a0/g, ' ');
}

describe('the sentence of a ride state', () => {
  it('tells what the bike does, what it carries and how its ends rest', () => {
    expect(told('accelerating')).toBe('Accelerating at 0.50 g; 80 kg rider; both ends on their springs.');
    expect(told('braking')).toBe(
      'Braking at 0.70 g, 90 % of it at the front; 80 kg rider; front on its springs, rear topped out.',
    );
    expect(told('riderUp', { loadMass: 12.5 })).toBe(
      'Standing still; 80 kg rider, 12.5 kg load; both ends on their springs.',
    );
    expect(told('noRider')).toBe(
      'Standing still; nobody and nothing on the bike; both ends on their springs.',
    );
  });

  it('tells lean, and gas or brake in the corner', () => {
    expect(told('midCorner')).toBe('Leaned 40°, at steady speed; 80 kg rider; both ends on their springs.');
    expect(told('midCorner', { cornerAcceleration: 0.1, dragForce: 200 })).toContain(
      'Leaned 40°, accelerating at 0.10 g, against 200 N of drag;',
    );
    expect(told('midCorner', { cornerAcceleration: -0.2, riderMass: 0 })).toContain(
      'Leaned 40°, braking at 0.20 g, 90 % of it at the front; no rider;',
    );
  });

  it('tells the two states that are no balance without an end’s rest', () => {
    expect(told('toppedOut')).toContain('Both wheels hang, the suspension is topped out.');
    expect(told('travelByHand')).toBe(
      'With 40.0 mm of the fork’s travel used and 40.0 mm of the rear’s, as set among the adjusters.',
    );
  });

  it('takes the user’s units, and a place of the corner sequence', () => {
    expect(told('accelerating', {}, { system: 'inch', decimal: ',' })).toContain(
      'Accelerating at 0,50 g; 176,4 lb rider',
    );
    expect(rideSentence(cornerSequenceCase(0.75, setup), setup, undefined, METRIC)).toMatch(
      /^Leaned 20°, accelerating at 0\.25\sg; 80\skg rider\.$/,
    );
    expect(rideMotion(cornerSequenceCase(0.75, setup), METRIC)).toMatch(
      /^Leaned 20°, accelerating at 0\.25\sg$/,
    );
  });
});
