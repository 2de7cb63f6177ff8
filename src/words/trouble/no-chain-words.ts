/** Tells a person why no chain can be laid on the bike. */
import type { DriveNoun } from '../../core/parts/drive-noun.ts';
import type { NoLinkage } from '../../core/linkage/no-linkage.ts';
import type { NoRunSlack } from '../../core/standing/axle-in-slot.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { noLinkageWords } from './no-linkage-words.ts';

/** Why no chain can be laid on the bike at all. */
export function noChainWords(no: NoLinkage | NoRunSlack, drive: DriveNoun, style: NumberStyle): string {
  return no.reason === 'slackImpossible'
    ? 'The lower run cannot have this much slack. Set less.'
    : noLinkageWords(no, drive, style);
}
