/** The words for a bike that does not stand as it is set: what is in the way, and what to change. */
import type { AdjusterKey } from '../../core/adjusters/setup.ts';
import type { DriveKind } from '../../core/parts/drive-kind.ts';
import { driveNoun } from '../../core/parts/drive-noun.ts';
import { adjusterLabel } from '../../core/adjusters/named-adjusters.ts';
import type { NoStand } from '../../core/riding/no-stand.ts';
import { noStandWords } from './no-stand-words.ts';
import { RIDE_STATES } from '../../core/riding/states/all-ride-states.ts';
import { listAll } from '../list-all.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';

/** `adjuster` is the one whose value is in the way; a spring rate that nobody has given yet is no mistake. */
export function noStandAdvice(
  problem: NoStand,
  adjuster: AdjusterKey | null,
  kind: DriveKind,
  style: NumberStyle,
): string {
  if (problem.reason !== 'rateNotAboveZero' || adjuster === null)
    return noStandWords(problem, driveNoun(kind), style);
  const label = adjusterLabel(adjuster, kind);
  return `${label} is not known yet. Set that adjuster to the rate printed on the spring; until then only these ride states have readings: ${withoutSprings()}.`;
}

/** The ride states that need no springs. */
function withoutSprings(): string {
  const states = RIDE_STATES.filter(({ springsCarry }) => !springsCarry);
  return listAll(states.map(({ label }) => label.toLowerCase()));
}
