/** Shock stroke used: how far the shock has gone in. */
import type { Reading } from './reading.ts';

/**
 * How far the shock is pushed in from its own full length, mm. From the links, or from the measured table. Always
 * there.
 * Example: stroke per travel 0.5, rear travel used 36 mm → 18 mm.
 */
export const shockStroke: Reading = {
  key: 'shockStroke',
  label: 'Shock stroke used',
  group: 'suspension',
  quantity: 'length',
  construction: 'rearTravel',
  read: ({ arm }) => arm.shockStroke,
  more: 'shock compressed further',
  less: 'shock compressed less',
  help: {
    what: 'How far the shock has gone in from its own full length.',
    sign: 'Zero is fully extended; positive is compressed.',
    measured:
      'Eye to eye with the wheel hanging, less eye to eye as it stands. The frame stands on a stand that cannot slip, not under the swingarm, and a second person holds the bike.',
    feels: 'It is what the shock’s spring and its bump stop see of the wheel’s travel.',
  },
};
