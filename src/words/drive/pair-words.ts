/** Tells a person how one pair of sprockets differs from another, and why its anti-squat does. */
import {
  metricOfSteps,
  roundsToNothing,
  shownSteps,
  writeChange,
  writeNumber,
  type NumberStyle,
} from '../../core/units/number-style.ts';
import { isLess } from '../../core/units/least-told.ts';
import type { DriveNoun } from '../../core/parts/drive-noun.ts';
import { listAll } from '../list-all.ts';
import { pairDifference } from '../../core/effects/pair-choice.ts';
import type { SprocketPair } from '../../core/effects/sprocket-pairs.ts';

/** The least torque about the pivot that is worth a word, N·m for every 1000 N of thrust. */
const LEAST_MOMENT = 0.05;

/**
 * One sentence such as "Same ratio, less anti-squat (−2.4 points): on the gas the chain pulls the rear down harder." The cause
 * is named only where its direction is that of the change; otherwise the chain is named as working against it. A change that nobody
 * notices has its figure and no direction. Without an anti-squat on either side it names the ratio alone.
 */
export function pairWords(
  from: SprocketPair,
  to: SprocketPair,
  { loop }: DriveNoun,
  style: NumberStyle,
): string {
  const { ratioPercent, antiSquat, chainMoment } = pairDifference(from, to);
  const ratio = ratioWords(ratioPercent, style);
  if (antiSquat === null || chainMoment === null) return `${ratio}.`;
  const pulls = Math.abs(chainMoment) >= LEAST_MOMENT;
  // The difference of the numbers as they are written, so that a person who subtracts them finds it.
  const steps = stepsOf(to, style) - stepsOf(from, style);
  const points = metricOfSteps(steps, 'percent', style);
  if (steps === 0) return `${ratio}, ${pulls ? 'almost the ' : ''}same anti-squat.`;
  const amount = writeChange(points, 'percent', style).text;
  if (isLess(points, 'percent')) return `${ratio}, almost the same anti-squat (${amount}).`;
  const change = `${steps > 0 ? 'more' : 'less'} anti-squat (${amount})`;
  if (!pulls) return `${ratio}, ${change}: the axle’s new place does that.`;
  const pull = `pulls the rear down ${chainMoment > 0 ? 'harder' : 'less hard'}`;
  // A chain that pulls more about the pivot takes anti-squat away.
  return steps < 0 === chainMoment > 0
    ? `${ratio}, ${change}: on the gas the ${loop} ${pull}.`
    : `${ratio}, ${change}. The axle’s new place outweighs the ${loop}, which ${pull} on the gas.`;
}

/** "Same ratio", "Almost the same ratio (+0.4 %)", "Shorter gearing (+2.2 %)". */
function ratioWords(percent: number, style: NumberStyle): string {
  if (percent === 0) return 'Same ratio';
  const amount = writeNumber(percent, 'percent', style, { signed: true }).text;
  if (isLess(percent, 'percent'))
    return `Almost the same ratio${roundsToNothing(percent, 'percent', style) ? '' : ` (${amount})`}`;
  return `${percent > 0 ? 'Shorter' : 'Taller'} gearing (${amount})`;
}

/**
 * "The chain of 110 links stays, so the axle moves 6.1 mm back in its slot." Or which other chain it takes and what the
 * axle does with it; empty where there is no chain.
 */
export function pairAxleWords(
  from: SprocketPair,
  to: SprocketPair,
  { loop, units }: DriveNoun,
  style: NumberStyle,
): string {
  if (from.links === null || to.links === null || from.axlePosition === null || to.axlePosition === null)
    return '';
  const steps = shownSteps(to.axlePosition, 'length', style) - shownSteps(from.axlePosition, 'length', style);
  const by = writeNumber(metricOfSteps(Math.abs(steps), 'length', style), 'length', style).text;
  const moves =
    steps === 0
      ? 'the axle stays where it is'
      : `the axle moves ${by} ${steps > 0 ? 'back' : 'forward'} in its slot`;
  return from.links === to.links
    ? `The ${loop} of ${to.links} ${units} stays${steps === 0 ? ' and' : ', so'} ${moves}.`
    : `It takes another ${loop}, of ${to.links} instead of ${from.links} ${units}, and ${moves}.`;
}

/** Pairs that share a figure and are named; of more it says how many. */
const MOST_NAMED = 3;

/**
 * "Squats most on the gas: 16/38, anti-squat 86.4 %. Least: 12/46 and 13/50, 105.1 %.": the least and the most anti-squat that
 * pairs are written with, and every pair that reads so; that they squat almost alike where nobody notices the difference.
 * Empty where all read alike, or none has a figure.
 */
export function squatEndsWords(pairs: readonly SprocketPair[], style: NumberStyle): string {
  const counted = pairs.flatMap(({ antiSquat, frontTeeth, rearTeeth }) =>
    typeof antiSquat === 'number'
      ? [{ steps: shownSteps(antiSquat, 'percent', style), name: `${frontTeeth}/${rearTeeth}` }]
      : [],
  );
  const all = counted.map(({ steps }) => steps);
  const [least, most] = [Math.min(...all), Math.max(...all)];
  if (counted.length === 0 || least === most) return '';
  const figure = (end: number): string =>
    writeNumber(metricOfSteps(end, 'percent', style), 'percent', style).text;
  if (isLess(metricOfSteps(most - least, 'percent', style), 'percent'))
    return `All squat almost alike on the gas: anti-squat ${figure(least)} to ${figure(most)}.`;
  const who = (end: number): string => {
    const names = counted.filter(({ steps }) => steps === end).map(({ name }) => name);
    return names.length > MOST_NAMED ? `${names.length} pairs` : listAll(names);
  };
  return `Squats most on the gas: ${who(least)}, anti-squat ${figure(least)}. Least: ${who(most)}, ${figure(most)}.`;
}

function stepsOf({ antiSquat }: SprocketPair, style: NumberStyle): number {
  return typeof antiSquat === 'number' ? shownSteps(antiSquat, 'percent', style) : 0;
}

/** "All 45 pairs", "60 of 72 pairs meet the filters": how many pairs the table has. */
export const pairsCounted = (passing: number, all: number): string =>
  passing === all ? `All ${all} pairs` : `${passing} of ${all} pairs meet the filters`;
