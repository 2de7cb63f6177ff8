/** The bike at the travel that is set by hand, whatever its springs say. */
import type { RideState } from './ride-state.ts';

export const travelByHand = {
  key: 'travelByHand',
  formerly: 'asDialled',
  label: 'Travel set by hand',
  group: 'given',
  springsCarry: false,
  loadCase: ({ frontTravelUsed, rearTravelUsed }) => ({
    kind: 'travel',
    travel: { front: frontTravelUsed, rear: rearTravelUsed },
    setBy: { forkTravelBeyond: 'frontTravelUsed', rearTravelBeyond: 'rearTravelUsed' },
  }),
  weighed: 'Travel set by hand, travel used',
} as const satisfies RideState;
