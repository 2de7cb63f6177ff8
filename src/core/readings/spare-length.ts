/** Free travel as a length: how much longer chain or belt is than both runs pulled straight, at this travel. */
import { spareChain as spareChainOf } from '../standing/spare-chain.ts';
import { CHAIN, type DriveNoun } from '../parts/drive-noun.ts';
import { absent } from './absent.ts';
import type { Reading } from './reading.ts';
import { withoutRun } from './without-run.ts';

const texts = ({ loop }: DriveNoun) => ({
  label: `Free travel, as length of ${loop}`,
  more: 'more slack to take up',
  less: 'less slack to take up',
  help: {
    what: `How much longer the ${loop} is than both runs pulled straight, at this travel.`,
    sign: 'Positive; below zero the drive is too tight here.',
    measured: `Computed from the ${loop} on the bike where its length is set, otherwise from the slack.`,
    feels: 'The same free travel that turns the front sprocket between gas and closed throttle, as a length.',
  },
});

/**
 * Chain or belt beyond both taut runs at this travel, mm: its length less the shortest loop over the pivot's guides. Below zero
 * it is too tight by so much. No answer with a shaft or hub drive.
 * Example: front teeth 14, rear teeth 42, pivot ahead 570 mm, pivot height 399 mm, chain slack 30 mm → 0.696 mm.
 */
export const spareLength: Reading = {
  key: 'spareLength',
  group: 'drive',
  quantity: 'length',
  construction: 'chainRuns',
  read: (stance) => {
    const without = withoutRun(stance);
    if (without !== null) return without;
    const found = spareChainOf(stance);
    return found.ok ? found.spare : absent('slackImpossible');
  },
  ...texts(CHAIN),
  texts,
};
