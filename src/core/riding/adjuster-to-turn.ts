/** Which adjuster stands in the way when a bike does not come to rest in a ride state. */
import type { AdjusterKey, Setup } from '../adjusters/setup.ts';
import type { NoStand } from './no-stand.ts';
import type { LoadCase } from './states/load-case.ts';

/**
 * The adjuster whose value is refused, for a way straight to it; null when the cause is no adjuster's value, such as a bump
 * stop of the bike. The load case names the adjusters of its own figures: gas and brake are those that act there.
 */
export function adjusterToTurn(no: NoStand, ride: LoadCase, setup: Setup): AdjusterKey | null {
  const end = 'end' in no ? no.end : undefined;
  // What the unlike leg holds is set under Springs, by no adjuster.
  if ('leg' in no) return null;
  switch (no.reason) {
    case 'rateNotAboveZero': {
      if (end === 'front') return setup.forkSpringRate > 0 ? null : 'forkSpringRate';
      return setup.shockSpringRate > 0 ? null : 'shockSpringRate';
    }
    case 'preloadBeyondSpring':
      return end === 'front' ? 'forkPreload' : 'shockPreload';
    case 'noAirLeft':
      return end === 'front' ? 'forkAirGap' : 'shockAirGap';
    case 'airPressureImpossible': {
      const key = end === 'front' ? 'forkAirPressure' : 'shockAirPressure';
      // The pressure of a balance chamber is no adjuster.
      return setup[key] < 0 ? key : null;
    }
    case 'frontLifts':
    case 'rearLifts':
    case 'forkTravelBeyond':
    case 'rearTravelBeyond':
    case 'throttleOpenAndClosed':
    case 'leanImpossible':
      return ride.kind === 'hanging' ? null : (ride.setBy[no.reason] ?? null);
    case 'brakeShareImpossible':
      return 'brakeFrontShare';
    case 'dragImpossible':
      return 'dragForce';
    case 'chainTooShort':
    case 'chainTooLong':
    case 'linksImpossible':
      return 'chainLinks';
    case 'slackImpossible':
      return 'chainSlack';
    case 'axleOutOfSlot':
      return 'axlePosition';
    default:
      return null;
  }
}
