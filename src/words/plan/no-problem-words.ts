/** Why there is nothing to search for a setup, in words: what makes no sense, and what to change. */
import { adjusterOf } from '../../core/adjusters/all-adjusters.ts';
import { adjusterLabel } from '../../core/adjusters/named-adjusters.ts';
import { driveNoun } from '../../core/parts/drive-noun.ts';
import type { NoProblem, Problem, ProblemReason } from '../../core/plan/problem.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { absentWords } from '../absent-words.ts';
import { noStandWords } from '../trouble/no-stand-words.ts';
import { targetName } from './target-words.ts';

interface Named {
  /** The target it is about, such as "Trail (rider on board)". */
  readonly target: string;
  /** It and the one that it contradicts, by their places, such as "1 and target 2". */
  readonly both: string;
  /** The target's reading by its key. */
  readonly reading: string;
  readonly adjuster: string;
  /** The adjuster's range, as far as it is known. */
  readonly least: string;
  readonly most: string;
  readonly found: string;
  readonly loop: string;
  /** Why there is no number, as a sentence. */
  readonly why: string;
}

const WORDS: Readonly<Record<ProblemReason, (named: Named) => string>> = {
  noTargets: () => 'There is no target: say which reading should be what, or which should stay.',
  readingUnknown: ({ reading }) => `There is no reading called ${reading}.`,
  windowReversed: ({ target }) => `${target}: the window begins above its end. Put the smaller figure first.`,
  toleranceNegative: ({ target }) => `${target}: the tolerance is below zero.`,
  weightNotPositive: ({ target }) => `${target}: the importance has to be above zero.`,
  nothingToKeep: ({ target, why }) => `${target} has no number now, so there is nothing to keep. ${why}`,
  targetsContradict: ({ target, both }) =>
    `${target}: no number meets both target ${both}. Take one of the two away, or bring them nearer.`,
  nothingAvailable: () => 'No adjuster is available: name at least one that may be turned.',
  adjusterTwice: ({ adjuster }) => `${adjuster} is named twice.`,
  notAPart: ({ adjuster }) => `${adjuster} is load or riding, nothing that a mechanic adjusts on the bike.`,
  notOnThisBike: ({ adjuster }) => `This bike has nothing to adjust as ${adjuster}.`,
  noNumber: ({ adjuster }) =>
    `${adjuster} is not set by a number on this bike, so it has no steps to try. Set it by hand first.`,
  placedByChain: ({ adjuster, loop }) =>
    `${adjuster} follows from the ${loop}’s length. Hold it, or take the ${loop}’s length off.`,
  rangeReversed: ({ adjuster }) =>
    `${adjuster}: the range begins above its end. Put the smaller figure first.`,
  rangeTooWide: ({ adjuster, least, most }) => `${adjuster}: this bike allows ${least} to ${most}.`,
  stepNotPositive: ({ adjuster }) => `${adjuster}: the step has to be above zero.`,
  stepNotWhole: ({ adjuster }) => `${adjuster} is set in whole numbers, so its step has to be one.`,
  minutesNegative: ({ adjuster }) => `${adjuster}: the minutes of work are below zero.`,
  noStepInRange: ({ adjuster, least, most }) =>
    `${adjuster}: no whole step from where it stands lies between ${least} and ${most}.`,
  noOtherTyre: ({ adjuster }) =>
    `${adjuster}: there is no size to try beside the one fitted. Name one that the rim takes.`,
  tyreImpossible: ({ adjuster }) =>
    `${adjuster}: one of the sizes cannot be read. Write it as on the sidewall, such as 120/70-17.`,
  tooMany: ({ adjuster, found }) =>
    `${found} combinations are too many to try them all. Hold ${adjuster}, or give it a smaller range.`,
  inputNotANumber: () => 'A figure is not a number.',
};

/** One or two sentences. */
export function noProblemWords(no: NoProblem, { bike, targets }: Problem, style: NumberStyle): string {
  const { kind } = bike.drive;
  const target = (place: number | undefined): string =>
    place === undefined ? '' : targetName(targets[place], kind);
  const ofAdjuster = (value: number | undefined): string => {
    if (value === undefined || no.adjuster === undefined) return '';
    const adjuster = adjusterOf(no.adjuster);
    return adjuster.holds === 'tyre' ? '' : writeNumber(value, adjuster.quantity, style).text;
  };
  const both =
    no.other === undefined || no.target === undefined ? '' : `${no.other + 1} and target ${no.target + 1}`;
  return WORDS[no.reason]({
    target: target(no.target),
    both,
    reading: no.target === undefined ? '' : targets[no.target].reading,
    loop: driveNoun(kind).loop,
    why: whyNoNumber(no, bike, style),
    adjuster: no.adjuster === undefined ? '' : adjusterLabel(no.adjuster, kind),
    least: ofAdjuster(no.least),
    most: ofAdjuster(no.most),
    found: no.found === undefined ? '' : inThousands(no.found),
  });
}

/** "1 449 063": a gap that breaks no line at every third digit. */
export function inThousands(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, '\u202f');
}

function whyNoNumber({ noStand, absent }: NoProblem, { drive }: Problem['bike'], style: NumberStyle): string {
  if (noStand !== undefined) return noStandWords(noStand, driveNoun(drive.kind), style);
  if (absent === undefined) return '';
  const words = absentWords(absent);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
