/** Plans and steps of adjusters in words: what is turned from where to where, and what is read afterwards. */
import { adjusterOf } from '../../core/adjusters/all-adjusters.ts';
import { adjusterLabel } from '../../core/adjusters/named-adjusters.ts';
import type { DriveKind } from '../../core/parts/drive-kind.ts';
import type { PlanStep, Turn } from '../../core/plan/plan.ts';
import type { PlanAdjusterKey, Setting, Target } from '../../core/plan/problem.ts';
import type { FirstStep } from '../../core/plan/first-steps.ts';
import type { Moved, StepTried } from '../../core/plan/what-moves-what.ts';
import { READINGS } from '../../core/readings/all-readings.ts';
import {
  roundsToNothing,
  writeChange,
  writeNumber,
  type NumberStyle,
} from '../../core/units/number-style.ts';
import type { QuantityKey } from '../../core/units/all-quantities.ts';
import { tyreWords } from '../change/setup-difference.ts';
import { targetName } from './target-words.ts';
import { readingsOf } from '../worded-readings.ts';
import { rideStateOf, type RideStateKey } from '../../core/riding/states/all-ride-states.ts';

function quantityOf(reading: string): QuantityKey {
  return READINGS.find(({ key }) => key === reading)?.quantity ?? 'count';
}

/** Where an adjuster stands, such as "8.0 mm" or "190/55-17". */
function settingText(key: PlanAdjusterKey, setting: Setting, style: NumberStyle): string {
  if (typeof setting !== 'number') return tyreWords(setting, style);
  const adjuster = adjusterOf(key);
  return writeNumber(setting, adjuster.holds === 'tyre' ? 'count' : adjuster.quantity, style).text;
}

/** Such as "Shock length" and "0.0 mm → 8.0 mm". */
export function turnWords(
  { adjuster: key, from, to }: Pick<Turn, 'adjuster' | 'from' | 'to'>,
  kind: DriveKind,
  style: NumberStyle,
): { readonly what: string; readonly how: string } {
  const write = (setting: Setting): string => settingText(key, setting, style);
  return { what: adjusterLabel(key, kind), how: `${write(from)} → ${write(to)}` };
}

/** What a plan needs made or bought for the fork: extenders of a length; null where it turns none, or takes them off. */
export function extenderWords(steps: readonly Pick<PlanStep, 'turns'>[], style: NumberStyle): string | null {
  const turns = steps.flatMap((step) => step.turns);
  const length = turns.find(({ adjuster }) => adjuster === 'forkExtenders')?.to;
  if (typeof length !== 'number' || roundsToNothing(length, 'length', style)) return null;
  return `Fork extenders needed: ${writeNumber(length, 'length', style).text} long, one for each leg.`;
}

/** Such as "Trail rider on board 99.9 mm"; a dash where there is no number. */
export function targetReads(
  target: Target,
  value: number | null,
  kind: DriveKind,
  style: NumberStyle,
): string {
  const written = value === null ? '–' : writeNumber(value, quantityOf(target.reading), style).text;
  return `${targetName(target, kind)} ${written}`;
}

/** A step of an adjuster with its sign, such as "Shock length +0.5 mm"; of a tyre the one that goes on. */
export function stepWords(
  { adjuster: key, from, to }: Pick<StepTried, 'adjuster' | 'from' | 'to'>,
  kind: DriveKind,
  style: NumberStyle,
): string {
  const adjuster = adjusterOf(key);
  const how =
    adjuster.holds === 'tyre' || typeof from !== 'number' || typeof to !== 'number'
      ? settingText(key, to, style)
      : writeChange(to - from, adjuster.quantity, style).text;
  return `${adjusterLabel(key, kind)} ${how}`;
}

/** The change of a reading, such as "−0.9 mm". */
export function movedWords({ reading, before, after }: Moved, style: NumberStyle): string {
  return writeChange(after - before, quantityOf(reading), style).text;
}

/** How far a step moves the reading in the other ride states, such as "0.4 mm", whichever way; a dash where it has no number there. */
export function elsewhereWords({ moved, elsewhere }: FirstStep, style: NumberStyle): string {
  return elsewhere === null
    ? '–'
    : writeChange(elsewhere, quantityOf(moved.reading), style).text.replace('+', '');
}

/** What stands above the two ends side by side. */
export function twoEndsWords(rise: number, state: RideStateKey, style: NumberStyle): string {
  const ridden = rideStateOf(state).label.toLowerCase();
  return `Each end raised above its axle by the step that comes nearest to ${writeNumber(rise, 'length', style).text}, and both together, ${ridden}.`;
}

/** How far an end rises above its axle, such as "+4.8 mm". */
export function riseWords(rise: number, style: NumberStyle): string {
  return writeChange(rise, 'length', style).text;
}

/** The same with the reading's name in front. */
export function movedInFull(moved: Moved, kind: DriveKind, style: NumberStyle): string {
  const label = readingsOf(kind).find(({ key }) => key === moved.reading)?.label ?? moved.reading;
  return `${label} ${movedWords(moved, style)}`;
}
