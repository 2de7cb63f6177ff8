/** Where the squat line runs, in words: they come after the first sight, which shows the areas. */
import { closedThrottleRise } from '../../core/riding/throttle-closed.ts';
import { squatOnGas } from '../../core/riding/squat-on-gas.ts';
import type { StandingBike } from '../../core/riding/stand-bike.ts';
import { zoneOf, type Zone } from './zones.ts';

/** A change of the rear below this counts as none, mm. */
const NOTHING = 0.05;

/**
 * Where the squat line runs, in words for those who do not see the areas; empty without a load-transfer line. With the
 * throttle closed the line that counts is that of engine braking. Where the balance gives millimetres for the rear,
 * on the gas or off it, these decide.
 */
export function zoneSentence(standing: StandingBike, band: number): string {
  const zone = zoneOf(standing, band);
  if (zone === null) return '';
  const rise = closedThrottleRise(standing);
  if (rise !== null) return `${ZONE_SENTENCES[zone]} ${movedWords(rise)}`;
  const squat = squatOnGas(standing);
  if (squat === null) return ZONE_SENTENCES[zone];
  return `${ZONE_SENTENCES[zone]} ${squatWords(squat)}`;
}

function movedWords(rise: number): string {
  if (Math.abs(rise) < NOTHING) return 'Against coasting the rear stays where it is.';
  return `Against coasting the rear ${rise > 0 ? 'rises' : 'drops'}.`;
}

function squatWords(squat: number): string {
  if (Math.abs(squat) < NOTHING) return 'The rear stays where it is on the gas.';
  return `The rear ${squat > 0 ? 'squats' : 'lifts'} on the gas.`;
}

const ZONE_SENTENCES: Readonly<Record<Zone, string>> = {
  squat: 'The squat line runs in the squat zone, below the neutral one.',
  neutral: 'The squat line runs in the neutral zone.',
  lift: 'The squat line runs in the lift zone, above the neutral one.',
  proSquat: 'The squat line runs in the pro-squat zone: the drive itself pulls the rear down.',
  rise: 'The engine-braking line runs below the load-transfer line.',
  level: 'The engine-braking line runs about the load-transfer line.',
  drop: 'The engine-braking line runs above the load-transfer line.',
  riseMore: 'The engine-braking line runs below the ground: the drive itself pushes the rear up.',
};
