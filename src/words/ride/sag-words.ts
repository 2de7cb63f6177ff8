/** Sag at one end beside what is common, in a mechanic's words. */
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import type { Sag } from '../../core/riding/ride-changes.ts';
import { SAG_RANGES, SAG_USES, type SagUse } from '../../core/riding/sag-ranges.ts';
import { writeShort } from '../write-short.ts';

export type SagEnd = 'front' | 'rear';
export type SagKind = 'free' | 'rider';

export type SagPlace = 'below' | 'within' | 'above';

/** Where a sag lies in the range common for a use; the range's own ends are within. */
export function sagPlace(sag: number, end: SagEnd, kind: SagKind, use: SagUse): SagPlace {
  const { least, most } = SAG_RANGES[use][end][kind];
  return sag < least ? 'below' : sag > most ? 'above' : 'within';
}

/** Such as "within 25 to 40 mm common on the road". */
export function judgeSag(sag: number, end: SagEnd, kind: SagKind, use: SagUse, style: NumberStyle): string {
  const { least, most } = SAG_RANGES[use][end][kind];
  const range = `${writeShort(least, 'length', style, 'digits')} to ${writeShort(most, 'length', style)}`;
  const { where } = SAG_USES.find(({ key }) => key === use) ?? SAG_USES[0];
  const place = sagPlace(sag, end, kind, use);
  const word = { below: 'less than the', within: 'within', above: 'more than the' }[place];
  return `${word} ${range} common ${where}`;
}

/** Such as "Rear rider sag 33.0 mm, 25 % of the travel, within 25 to 40 mm common on the road". */
export function sagSentence(
  sag: number,
  travel: number,
  end: SagEnd,
  kind: SagKind,
  use: SagUse,
  style: NumberStyle,
): string {
  const name = `${end === 'front' ? 'Front' : 'Rear'} ${kind} sag`;
  const part = writeNumber((100 * sag) / travel, 'percent', style, { extraDigits: -1 }).text;
  const mm = writeNumber(sag, 'length', style).text;
  return `${name} ${mm}, ${part} of the travel, ${judgeSag(sag, end, kind, use, style)}`;
}

/** "It sags 8.0 mm free, 30.0 mm with the rider. At the baseline: 10.2 mm and 33.4 mm." The baseline only where it differs as written. */
export function sagNowWords(now: Sag, baseline: Sag | null, end: SagEnd, style: NumberStyle): string {
  const write = (mm: number): string => writeNumber(mm, 'length', style).text;
  const own = [write(now.free[end]), write(now.rider[end])];
  const before = baseline === null ? own : [write(baseline.free[end]), write(baseline.rider[end])];
  const changed = own.some((text, i) => text !== before[i]);
  return `It sags ${own[0]} free, ${own[1]} with the rider.${changed ? ` At the baseline: ${before[0]} and ${before[1]}.` : ''}`;
}
