/** Ways to lower a seat in words: what each is called, and when it falls short. */
import { PRACTICE } from '../../core/plan/all-complaints.ts';
import type { Cost, Lowering, LoweringKey } from '../../core/plan/lowering.ts';
import type { DriveKind } from '../../core/parts/drive-kind.ts';
import { READINGS } from '../../core/readings/all-readings.ts';
import { rideStateOf } from '../../core/riding/states/all-ride-states.ts';
import {
  shownDifference,
  writeChange,
  writeNumber,
  type NumberStyle,
} from '../../core/units/number-style.ts';
import type { QuantityKey } from '../../core/units/all-quantities.ts';
import { turnWords } from './plan-words.ts';
import { readingsOf } from '../worded-readings.ts';

const NAMES: Readonly<Record<LoweringKey, string>> = {
  rearAlone: 'Shorter shock alone',
  bothEnds: 'Both ends, trail kept',
  preload: 'Less preload alone',
};

export function loweringName({ key }: Lowering): string {
  return NAMES[key];
}

/** What to try before any spanner. Common practice, no source. */
export const BEFORE_LOWERING = `First try what costs no geometry: a thinner or narrower seat, and boots with thicker soles (${PRACTICE}).`;

export const TWO_HEIGHTS =
  'A shock that a lever sets to two heights has two setups, and every reading differs between them. Save a sheet for the height now and one with the shorter shock alone.';

/** What stands on the two sheets of a shock with two heights: as it is set, and with the shorter shock. */
export function twoHeightNotes(
  { turned }: Lowering,
  kind: DriveKind,
  style: NumberStyle,
): readonly [Record<string, string>, Record<string, string>] {
  const changed = turned
    .map((turn) => {
      const { what, how } = turnWords(turn, kind, style);
      return `${what} ${how}`;
    })
    .join(', ');
  return [{ title: 'Shock, full height' }, { title: 'Shock, low height', changed }];
}

/** Its label says already that the fork is bottomed, so it is the same in every ride state. */
const SAME_IN_ALL_STATES = 'tyreToClampGap';

/** "Trail, rider on board". */
export function costName({ reading, state }: Pick<Cost, 'reading' | 'state'>, kind: DriveKind): string {
  const label = readingsOf(kind).find(({ key }) => key === reading)?.label ?? reading;
  if (reading === SAME_IN_ALL_STATES) return label;
  return `${label}, ${rideStateOf(state).label.toLowerCase()}`;
}

/** "100.1 mm, −2.3 mm": what is read afterwards and the change of what is written; a dash where there is no number. */
export function costWords(
  { reading, before, after }: Cost,
  style: NumberStyle,
): { readonly value: string; readonly change: string } {
  const quantity: QuantityKey = READINGS.find(({ key }) => key === reading)?.quantity ?? 'count';
  if (after === null) return { value: '–', change: '' };
  const value = writeNumber(after, quantity, style).text;
  if (before === null) return { value, change: '' };
  const change = shownDifference(before, after, quantity, style);
  return { value, change: change === 0 ? 'same' : writeChange(change, quantity, style).text };
}

/** Says that a way does not bring the seat down as far as was wanted; empty where it does. */
export function shortfallWords({ reached, drop }: Lowering, style: NumberStyle): string {
  return reached ? '' : `Ends at ${writeNumber(drop, 'length', style).text} down.`;
}
