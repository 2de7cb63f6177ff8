/** Which dial stands in the way when a bike does not come to rest in a ride state. */
import type { DialKey, Setup } from '../chassis/setup.ts';
import type { NoStand } from './no-stand.ts';
import type { RideCase } from './ride-case.ts';

/**
 * The dial whose value is refused, for a way straight to it; null when the cause is no dial's value, such as a bump
 * stop of the bike. In a corner and in the roll through it, gas and brake are those that act there.
 */
export function dialToTurn(no: NoStand, ride: RideCase, setup: Setup): DialKey | null {
  const end = 'end' in no ? no.end : undefined;
  switch (no.reason) {
    case 'rateNotAboveZero': {
      if (end === 'front') return setup.forkSpringRate > 0 ? null : 'forkSpringRate';
      return setup.shockSpringRate > 0 ? null : 'shockSpringRate';
    }
    case 'preloadBeyondSpring':
      return end === 'front' ? 'forkPreload' : 'shockPreload';
    case 'frontLifts':
      return fromCorner(ride, setup) ? 'cornerGas' : 'gas';
    case 'rearLifts':
      return fromCorner(ride, setup) ? 'cornerGas' : 'brake';
    case 'leanImpossible':
      return 'leanDeg';
    case 'brakeShareImpossible':
      return 'brakeFrontShare';
    case 'dragImpossible':
      return 'dragForce';
    case 'forkTravelBeyond':
      return ride.kind === 'asDialled' ? 'frontTravelUsed' : null;
    case 'rearTravelBeyond':
      return ride.kind === 'asDialled' ? 'rearTravelUsed' : null;
    case 'chainTooShort':
    case 'chainTooLong':
    case 'linksImpossible':
      return 'chainLinks';
    case 'playImpossible':
      return 'chainPlay';
    case 'axleOutOfSlot':
      return 'axlePosition';
    default:
      return null;
  }
}

/** Whether the acceleration is the corner's own rather than one on the way to gas or brake. */
function fromCorner(ride: RideCase, setup: Setup): boolean {
  return ride.kind === 'midCorner' && ride.acceleration === setup.cornerGas;
}
