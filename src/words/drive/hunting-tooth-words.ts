/** Tells a person how evenly a pair of sprockets wears with its chain. */
import { huntingTooth } from '../../core/drive/hunting-tooth.ts';

/** One of a sprocket's teeth and how often it meets the same link, in words. */
function sprocketWords(end: string, teeth: number, shared: number, turns: number): string {
  return shared === 1
    ? `A ${end} tooth meets every link once before it meets the same one again, ${turns} turns later.`
    : `A ${end} tooth meets only every ${ordinal(shared)} link, and the same one again ${turns} turns later: ${teeth} teeth and the number of links can both be divided by ${shared}.`;
}

function ordinal(n: number): string {
  const teen = n % 100 >= 11 && n % 100 <= 13;
  return `${n}${teen ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th')}`;
}

/**
 * A note on wear for a pair and its chain: which teeth meet which links. null
 * for anything but whole numbers above zero.
 */
export function huntingToothWords(frontTeeth: number, rearTeeth: number, links: number): string | null {
  const meetings = huntingTooth(frontTeeth, rearTeeth, links);
  if (meetings === null) return null;
  const uneven = Math.max(meetings.frontShared, meetings.rearShared);
  return [
    uneven === 1
      ? 'Tooth wear: even (hunting tooth).'
      : `Tooth wear: uneven. A tooth meets only every ${ordinal(uneven)} link.`,
    sprocketWords('front', frontTeeth, meetings.frontShared, meetings.frontTurns),
    sprocketWords('rear', rearTeeth, meetings.rearShared, meetings.rearTurns),
  ].join(' ');
}
