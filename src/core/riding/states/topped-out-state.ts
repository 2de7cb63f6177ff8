/** The bike with both ends as they hang in the air: on their stops, or where top-out springs hold them. */
import type { RideState } from './ride-state.ts';

export const toppedOut = {
  key: 'toppedOut',
  label: 'Topped out',
  group: 'given',
  springsCarry: false,
  loadCase: () => ({ kind: 'hanging' }),
  weighed: 'Topped out',
} as const satisfies RideState;
