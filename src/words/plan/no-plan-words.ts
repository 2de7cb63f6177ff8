/** Why a search finds no setup, in words: what stopped the combinations, and the two smallest changes that give one. */
import { adjusterOf } from '../../core/adjusters/all-adjusters.ts';
import { adjusterLabel } from '../../core/adjusters/named-adjusters.ts';
import type { PlansFound, WiderRange } from '../../core/plan/plan.ts';
import type { Problem } from '../../core/plan/problem.ts';
import type { PlanWarning } from '../../core/plan/raised-warnings.ts';
import { driveNoun, type DriveNoun } from '../../core/parts/drive-noun.ts';
import { READINGS } from '../../core/readings/all-readings.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { listAll } from '../list-all.ts';
import { inThousands } from './no-problem-words.ts';
import { noStandWords } from '../trouble/no-stand-words.ts';
import { targetName } from './target-words.ts';

/** What a combination would raise a warning of. */
const RAISED: Readonly<Record<PlanWarning, (drive: DriveNoun) => string>> = {
  pivotInTyre: () => 'the rear tyre inside the swingarm pivot',
  tyresOverlap: () => 'tyres that overlap',
  frontSprocketOnGround: () => 'the front sprocket on the ground',
  rearSprocketOnGround: () => 'the rear sprocket on the ground',
  tubeOutOfClamp: () => 'fork tubes below the top clamp',
  steepAndShort: () => 'too little trail',
  tubeTooShort: () => 'too little fork tube in the clamps',
  tyreHitsClamp: () => 'the front tyre at the lower clamp',
  chainOnGuide: ({ loop, slider }) => `the ${loop} on its ${slider}`,
  partOnGround: () => 'a part on the ground',
  chainOnGuideHanging: ({ loop, slider }) => `the ${loop} on its ${slider} with the wheel hanging`,
  lowerRunOnGuide: ({ loop, slider }) => `the ${loop}’s lower run on its ${slider}`,
  sprocketInTheWay: () => 'a sprocket that cannot be fitted',
  coilsClosed: () => 'a coil-bound spring',
};

/** What stopped the combinations, most first; such as "Of 1 281 combinations, 1 200 miss Trail (rider on board)". */
export function stopsWords(
  { stops, tried, total }: PlansFound,
  { bike, targets }: Problem,
  style: NumberStyle,
): string {
  const { kind } = bike.drive;
  const drive = driveNoun(kind);
  const causes = [
    ...stops.targets.map((count, place) => ({ count, words: `miss ${targetName(targets[place], kind)}` })),
    // The keys are those of the table.
    ...(Object.entries(stops.warnings) as [PlanWarning, number][]).map(([warning, count]) => ({
      count,
      words: `would have ${RAISED[warning](drive)}`,
    })),
    { count: stops.noStand, words: 'cannot be built' },
  ]
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.count - a.count)
    .map(({ count, words }) => `${inThousands(count)} ${words}`);
  if (tried === 0) return 'No combination was tried yet.';
  const { whyNoStand } = stops;
  const why = whyNoStand === null ? '' : ` Why not: ${noStandWords(whyNoStand, drive, style)}`;
  const those = tried < total ? 'combinations tried' : 'combinations';
  return `Of ${inThousands(tried)} ${those}, ${listAll(causes)}.${why}`;
}

/** What to do when the search broke off by a mistake in the program, which calls it `message`. */
export function failureWords(message: string): string {
  const why = message === '' ? '' : ` It says: ${message}`;
  return `The search stopped because of a mistake in this program. Targets and adjusters are as you set them: find setups again, or leave one adjuster as it is. If it stops again, save the bike to a file and report it.${why}`;
}

/** The target to let out and by how much; null where plans exist. */
export function relaxationWords(
  { plans, relaxation, tried, total }: PlansFound,
  { bike, targets }: Problem,
  style: NumberStyle,
): string | null {
  if (plans.length > 0) return null;
  const isWhole = tried === total;
  if (relaxation === null) return isWhole ? 'No change of a single target gives a plan.' : null;
  const target = targets[relaxation.target];
  const { quantity } = READINGS.find(({ key }) => key === target.reading) ?? { quantity: 'count' };
  const write = (value: number): string => writeNumber(value, quantity, style).text;
  const smallest = isWhole ? 'The smallest change' : 'Of those tried, the smallest change';
  return `${smallest} that gives a plan: let ${targetName(target, bike.drive.kind)} be ${write(relaxation.to)}, ${write(relaxation.by)} away from its target.`;
}

/** The adjuster to allow besides and how far it turns; null where plans exist, a range is enough, or there is no other. */
export function otherWords(
  { plans, wider, other, withOther, beyond, tried, total }: PlansFound,
  { bike }: Pick<Problem, 'bike'>,
  style: NumberStyle,
): string | null {
  if (plans.length > 0 || tried < total || wider !== null || !beyond.isWhole || withOther.tried === 0)
    return null;
  if (other !== null) {
    const { to, by } = lengthsOf(other, style);
    const first = withOther.isWhole ? '' : 'Of those tried: ';
    const label = adjusterLabel(other.adjuster, bike.drive.kind);
    return `${first}${first === '' ? 'Or allow' : 'allow'} one more adjuster: ${label} at ${to}, ${by} from where it stands. Then every target is met.`;
  }
  return withOther.isWhole
    ? 'No other adjuster alone gives a plan within its usual range.'
    : `With one more adjuster ${inThousands(withOther.tried)} combinations were tried, and none is a plan.`;
}

function lengthsOf({ adjuster: key, to, by }: WiderRange, style: NumberStyle): Record<'to' | 'by', string> {
  const adjuster = adjusterOf(key);
  const quantity = adjuster.holds === 'tyre' ? 'count' : adjuster.quantity;
  return { to: writeNumber(to, quantity, style).text, by: writeNumber(by, quantity, style).text };
}

/** The range to widen and by how much; null where plans exist, or the search was ended before it knew. */
export function widerWords(
  { plans, wider, beyond, tried, total }: PlansFound,
  { bike }: Pick<Problem, 'bike'>,
  style: NumberStyle,
): string | null {
  if (plans.length > 0 || tried < total) return null;
  if (wider !== null) {
    const { to, by } = lengthsOf(wider, style);
    const first = beyond.isWhole ? '' : 'Of those tried beyond the ranges: ';
    const label = adjusterLabel(wider.adjuster, bike.drive.kind);
    return `${first}${first === '' ? 'Or widen' : 'widen'} one range: let ${label} go to ${to}, ${by} beyond it. Then every target is met.`;
  }
  if (!beyond.isWhole)
    return `Beyond the ranges ${inThousands(beyond.tried)} combinations were tried, and none is a plan.`;
  return beyond.tried === 0
    ? 'No range can be widened: each reaches as far as its adjuster does.'
    : 'No single range gives a plan, however far its adjuster goes.';
}
