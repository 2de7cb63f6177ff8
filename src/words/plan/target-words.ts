/** A target of a search for a setup, in words: the reading, its ride state, and what it should be. */
import type { DriveKind } from '../../core/parts/drive-kind.ts';
import type { Target } from '../../core/plan/problem.ts';
import { rideStateOf } from '../../core/riding/states/all-ride-states.ts';
import { readingsOf } from '../worded-readings.ts';

/** Which setup the targets are taken from, and how many of them have no number there. */
export function sourceWords({ name, left }: { readonly name: string; readonly left: number }): string {
  const stay = left === 0 ? '' : ` ${left === 1 ? '1 has' : `${left} have`} no number there and stay.`;
  return `Targets as in ${name}.${stay}`;
}

/** Such as "Swingarm angle (topped out)". */
export function targetName({ reading, state }: Target, kind: DriveKind): string {
  const label = readingsOf(kind).find(({ key }) => key === reading)?.label ?? reading;
  const { label: ridden } = rideStateOf(state);
  return `${label} (${ridden.charAt(0).toLowerCase()}${ridden.slice(1)})`;
}
