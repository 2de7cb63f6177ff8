/** Tells a person why a chain does not put the axle into its slot, and which chains do. */
import { listAny } from '../list-all.ts';
import type { DriveNoun } from '../../core/parts/drive-noun.ts';
import { noLinkageWords } from './no-linkage-words.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import type { AxleMisfit } from '../../core/standing/axle-in-slot.ts';

/** Chains named at most, the nearest ones. */
const MOST_NAMED = 3;

/** "112", "112 or 114", "110, 112 or 114", in rising order. */
function nearestOf(links: readonly number[]): string {
  const named = links.slice(0, MOST_NAMED).sort((a, b) => a - b);
  return listAny(named.map(String));
}

/**
 * Two sentences for a person, in the user's own units: what does not meet, and the nearest chains that do.
 */
export function axleMisfitWords(misfit: AxleMisfit, drive: DriveNoun, style: NumberStyle): string {
  const { reason, links, axlePosition, nearest, slot } = misfit;
  const { loop, units } = drive;
  const write = (mm: number): string => writeNumber(mm, 'length', style).text;
  const advice =
    nearest.length === 0
      ? `No whole ${loop} puts the axle into its slot with these sprockets.`
      : `With ${nearestOf(nearest)} ${units} it fits.`;
  if (reason === 'chainTooShort') {
    const where =
      axlePosition === null ? '' : `: the axle would stand ${write(-axlePosition)} ahead of its slot`;
    return `A ${loop} of ${links} ${units} is too short${where}. ${advice}`;
  }
  if (reason === 'chainTooLong') {
    const where =
      axlePosition === null ? '' : `: the axle would stand ${write(axlePosition - slot)} behind its slot`;
    return `A ${loop} of ${links} ${units} is too long${where}. ${advice}`;
  }
  if (reason === 'linksImpossible')
    return `A ${loop} of ${links} ${units} cannot be joined; an odd number needs a half link. ${advice}`;
  if (reason === 'notConverged') return `No place of the axle was found for ${links} ${units}. ${advice}`;
  if (reason === 'slackImpossible') return 'The lower run cannot have this much slack. Set less.';
  return noLinkageWords({ ok: false, reason }, drive, style);
}
