/** What a ride state means with its present figures, in one sentence. */
import type { Setup } from '../../core/adjusters/setup.ts';
import { degrees } from '../../core/units/convert.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { writeNumber } from '../../core/units/number-style.ts';
import type { Equilibrium } from '../../core/riding/equilibrium/equilibrium.ts';
import { restsWords } from './rest-words.ts';
import type { LoadCase } from '../../core/riding/states/load-case.ts';
import { writeShort } from '../write-short.ts';

/** Below this lean the sentence says upright, radians: a tenth of a degree. */
const UPRIGHT = 0.0017;
/** Braking below this is rounding of sums, g. */
const NO_BRAKES = 1e-9;

/**
 * Such as "Accelerating at 0.50 g; 78 kg rider; both ends on their springs." Without a balance the last part, how
 * the ends rest, is left out.
 */
export function rideSentence(
  ride: LoadCase,
  setup: Setup,
  rest: Equilibrium | undefined,
  style: NumberStyle,
): string {
  switch (ride.kind) {
    case 'hanging':
      return 'Both wheels hang, the suspension is topped out. Swingarm angles are quoted like this.';
    case 'travel': {
      const length = (value: number): string => writeNumber(value, 'length', style).text;
      return `With ${length(ride.travel.front)} of the fork’s travel used and ${length(ride.travel.rear)} of the rear’s, as set among the adjusters.`;
    }
    case 'equilibrium': {
      const load = ride.carries ? carried(setup, style) : 'nobody and nothing on the bike';
      return sentence([rideMotion(ride, style), load], rest);
    }
  }
}

function sentence(parts: readonly string[], rest: Equilibrium | undefined): string {
  return `${[...parts, ...(rest === undefined ? [] : [restsWords(rest)])].join('; ')}.`;
}

/** What the bike does, such as "Leaned 40°, accelerating at 0.10 g, against 200 N of drag". */
export function rideMotion(ride: LoadCase, style: NumberStyle): string {
  if (ride.kind !== 'equilibrium' || !ride.rolls) return 'Standing still';
  const { acceleration, engineBraking = 0, slowedByDrag = 0, lean, frontBrakeShare, drag } = ride.forces;
  const g = (value: number): string => writeNumber(value, 'acceleration', style).text;
  const brakes = -acceleration - engineBraking;
  const parts = lean > UPRIGHT ? [`leaned ${writeShort(degrees(lean), 'angle', style)}`] : [];
  if (engineBraking > 0 || slowedByDrag > 0)
    parts.push(engineBraking > 0 ? `throttle closed, engine braking at ${g(engineBraking)}` : 'coasting');
  if (acceleration > 0) parts.push(`accelerating at ${g(acceleration)}`);
  else if (brakes > NO_BRAKES)
    parts.push(
      `braking at ${g(brakes)}, ${writeShort(100 * frontBrakeShare, 'percent', style)} of it at the front`,
    );
  else if (parts.length === (lean > UPRIGHT ? 1 : 0)) parts.push('at steady speed');
  if (drag !== null) parts.push(`against ${writeNumber(drag.force, 'force', style).text} of drag`);
  const joined = parts.join(', ');
  return joined.charAt(0).toUpperCase() + joined.slice(1);
}

function carried(setup: Setup, style: NumberStyle): string {
  const all = [
    { mass: setup.riderMass, name: 'rider' },
    { mass: setup.passengerMass, name: 'passenger' },
    { mass: setup.loadMass, name: 'load' },
  ].filter(({ mass }) => mass > 0);
  if (all.length === 0) return 'no rider';
  return all.map(({ mass, name }) => `${writeShort(mass, 'mass', style)} ${name}`).join(', ');
}
