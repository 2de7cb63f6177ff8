/** How far the front sprocket turns between pulling on the upper run and holding on the lower. */
import { spareChain as spareChainOf } from '../standing/spare-chain.ts';
import { absent } from './absent.ts';
import type { Reading } from './reading.ts';
import { withoutRun } from './without-run.ts';

/**
 * Turn of the front sprocket, from where the upper run pulls to where the lower run pulls, radians: the spare chain at this
 * travel, a tooth for each pitch. Below zero the chain is too tight. No answer with a shaft or hub drive.
 * Example: front teeth 14, rear teeth 42, pivot ahead 570 mm, pivot height 399 mm, chain slack 30 mm → 1.128°.
 */
export const freeTravel: Reading = {
  key: 'freeTravel',
  label: 'Free travel from gas to closed throttle',
  group: 'drive',
  quantity: 'angle',
  construction: 'chainRuns',
  read: (stance) => {
    const without = withoutRun(stance);
    if (without !== null) return without;
    const found = spareChainOf(stance);
    return found.ok ? found.atFrontSprocket : absent('slackImpossible');
  },
  more: 'more slack to take up between gas and closed throttle',
  less: 'less slack to take up between gas and closed throttle',
  help: {
    what: 'How far the front sprocket turns between pulling on the upper run and holding on the lower.',
    sign: 'Positive; below zero the drive is too tight at this travel.',
    measured:
      'Turn the front sprocket from taut to taut with the rear wheel held, and read the angle. Engine off, keys out, out of gear; fingers off the sprockets.',
    feels: 'More makes a harder jerk as the throttle opens and closes; gearbox and rubber add their own.',
  },
};
