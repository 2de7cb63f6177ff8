/** Tells a person why a reading has no number. */
import type { Absent, AbsentReason } from '../core/readings/absent.ts';

const WORDS: Readonly<Record<AbsentReason, string>> = {
  noMass: 'needs a mass: give the bike, the rider or the load one',
  centreOnGround: 'the centre of gravity is not above the ground',
  neverSquats: 'no ratio: the squat line lies level, so only the spring carries the load transfer',
  noSprings: 'needs springs: set the rates printed on those of fork and shock, among the adjusters',
  notCarried: 'not a state that the springs carry: choose “Rider on board” or another in which they do',
  coilsClosed: 'the coils would have closed before this travel',
  linksSilent: 'the rear links have no answer at this travel',
  deadPoint: 'the shock stands still here, so no leverage can be told',
  noClampDepth: 'needs the lower clamp’s underside, among the fork’s figures of the bike',
  noLeastHeight:
    'needs the least fork tube above clamp from the maker’s manual, among the fork’s figures of the bike',
  throttleOpen: 'the throttle is not closed: choose “Throttle closed”',
  slackImpossible: 'the lower run cannot be pushed so far up and down: set less slack',
  noRun: 'a shaft or hub drive has no chain run',
  stayCannotClose: 'the caliper’s stay is too long or too short to reach from bracket to frame',
  stayThroughAxle: 'the caliper’s stay points at the axle, so it holds nothing',
};

/** What stands in the place of the number: no full stop, no capital. */
export function absentWords({ reason }: Absent): string {
  return WORDS[reason];
}
