/** Tells a person how one pair of sprockets differs from another, and why its anti-squat does. */
import {
  metricOfSteps,
  shownSteps,
  writeChange,
  writeNumber,
  type NumberStyle,
} from '../core/units/number-style.ts';
import type { DriveNoun } from '../core/parts/drive-noun.ts';
import { listAll } from './list-all.ts';
import { directionWord, shownChange } from './shown-change.ts';
import { pairDifference } from '../core/effects/pair-choice.ts';
import type { SprocketPair } from '../core/effects/sprocket-pairs.ts';

/** Torques below this are not worth a word, N·m for every 1000 N of thrust. */
const LEAST_MOMENT = 0.05;

/**
 * One sentence such as "Same ratio, less anti-squat (−0.4 points), because the chain pulls 1.4 N·m more about the pivot per
 * 1000 N of thrust." The cause is named only when its direction is that of the change; otherwise the chain is named as
 * working against it. Without an anti-squat on either side it names the ratio alone.
 */
export function pairWords(
  from: SprocketPair,
  to: SprocketPair,
  { loop }: DriveNoun,
  style: NumberStyle,
): string {
  const { ratioPercent, antiSquat, chainMoment } = pairDifference(from, to);
  const write = (value: number): string => writeNumber(value, 'percent', style, { signed: true }).text;
  const gearing = shownChange(ratioPercent, 'percent', style);
  const ratio =
    ratioPercent === 0
      ? 'Same ratio'
      : directionWord(gearing, {
          more: `Shorter gearing (${write(ratioPercent)})`,
          less: `Taller gearing (${write(ratioPercent)})`,
          same: 'Almost the same ratio',
        });
  if (antiSquat === null || chainMoment === null) return `${ratio}.`;
  const amount = Math.abs(chainMoment).toFixed(1).replace('.', style.decimal);
  const more = chainMoment > 0 ? 'more' : 'less';
  const pulls = `pulls the rear down by ${amount}\u00a0N·m ${more} about the pivot per 1000\u00a0N of thrust`;
  // The difference of the numbers as they are written, so that a person who subtracts them finds it.
  const steps = stepsOf(to, style) - stepsOf(from, style);
  if (steps === 0)
    return `${ratio}, ${Math.abs(chainMoment) < LEAST_MOMENT ? '' : 'almost the '}same anti-squat.`;
  const change = `${steps > 0 ? 'more' : 'less'} anti-squat (${writeChange(metricOfSteps(steps, 'percent', style), 'percent', style).text})`;
  if (Math.abs(chainMoment) < LEAST_MOMENT) return `${ratio}, ${change}, from the axle’s place alone.`;
  // A chain that pulls more about the pivot takes anti-squat away.
  return steps < 0 === chainMoment > 0
    ? `${ratio}, ${change}, because the ${loop} ${pulls}.`
    : `${ratio}, ${change}. The axle’s new place does that; the ${loop} alone would do the opposite, because it ${pulls}.`;
}

/**
 * "The chain of 110 links stays, so the axle moves 6.1 mm back in its slot." Or which other chain it takes and what the
 * axle does with it; empty where there is no chain to tell of.
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
 * "Least anti-squat: 86.4 %, 16/38. Most: 105.1 %, 12/46 and 13/50.": the least and the most that pairs are written with, and
 * every pair that reads so. Empty where all read alike, or none has a figure.
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
  const told = (end: number): string => {
    const names = counted.filter(({ steps }) => steps === end).map(({ name }) => name);
    const who = names.length > MOST_NAMED ? `${names.length} pairs` : listAll(names);
    return `${writeNumber(metricOfSteps(end, 'percent', style), 'percent', style).text}, ${who}`;
  };
  return `Least anti-squat: ${told(least)}. Most: ${told(most)}.`;
}

function stepsOf({ antiSquat }: SprocketPair, style: NumberStyle): number {
  return typeof antiSquat === 'number' ? shownSteps(antiSquat, 'percent', style) : 0;
}

/** "All 45 pairs", "60 of 72 pairs meet the filters": how many pairs the table has. */
export const pairsCounted = (passing: number, all: number): string =>
  passing === all ? `All ${all} pairs` : `${passing} of ${all} pairs meet the filters`;
