/** The order in which a workshop turns adjusters: rear first, front last, height after what moves it. */
import type { AdjusterGroup } from './definition/adjuster-groups.ts';
import { adjusterOf, ADJUSTERS, type Adjuster } from './all-adjusters.ts';
import type { AdjusterKey, Setup } from './setup.ts';

/** Sprockets and chain place the axle, links and springs the height; both come before the height is set. */
const GROUP_TURN: Readonly<Record<AdjusterGroup, number>> = {
  wheels: 0,
  gearing: 1,
  links: 2,
  steering: 3,
  forkLength: 4,
  springs: 5,
  rideHeight: 6,
  travel: 7,
  load: 8,
  riding: 9,
};

const REAR_GROUPS: readonly AdjusterGroup[] = ['gearing', 'links'];

/** The end of the bike at which an adjuster is turned. */
export function endTurned({ moves, group }: Adjuster): 'front' | 'rear' {
  return moves?.end === 'rear' || REAR_GROUPS.includes(group) ? 'rear' : 'front';
}

const endTurn = (adjuster: Adjuster): number => (endTurned(adjuster) === 'rear' ? 0 : 1);

const TURN = new Map<AdjusterKey, number>(
  [...ADJUSTERS]
    .sort((a, b) => endTurn(a) - endTurn(b) || GROUP_TURN[a.group] - GROUP_TURN[b.group])
    .map(({ key }, place) => [key, place]),
);

/** Below zero where the first adjuster is turned before the second. */
export function compareTurns(first: AdjusterKey, second: AdjusterKey): number {
  return (TURN.get(first) ?? 0) - (TURN.get(second) ?? 0);
}

const isPart = (key: AdjusterKey): boolean => adjusterOf(key).kind === 'part';

/** Below zero where the first adjuster comes before the second: load and riding first, then the parts as a workshop turns them. */
export function compareCauses(first: AdjusterKey, second: AdjusterKey): number {
  return Number(isPart(first)) - Number(isPart(second)) || compareTurns(first, second);
}

/** A setup on the way from one to another, just after an adjuster was turned: it and all before it stand as in `to`, the rest as in `from`. */
export function onceTurned(key: AdjusterKey, from: Setup, to: Setup): Setup {
  const later = ADJUSTERS.filter((each) => compareCauses(each.key, key) > 0).map((each) => each.key);
  return { ...to, ...Object.fromEntries(later.map((each) => [each, from[each]])) };
}
