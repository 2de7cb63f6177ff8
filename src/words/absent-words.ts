/** Tells a person why a reading has no number. */
import type { Absent, AbsentReason } from '../core/readings/absent.ts';

const WORDS: Readonly<Record<AbsentReason, string>> = {
  noMass: 'needs a weight: enter that of the bike, the rider or the load',
  centreOnGround: 'the centre of gravity is not above the ground',
  neverSquats: 'no ratio: the squat line lies level, so only the spring carries the load transfer',
  noSprings: 'set both spring rates under Springs',
  notCarried: 'the springs do not carry the bike in this ride state: choose “Rider on board”',
  coilsClosed: 'the springs would be coil-bound before this travel',
  linksSilent: 'the rear links do not reach this travel',
  deadPoint: 'the shock does not move here, so there is no leverage',
  noClampDepth: 'needs the lower clamp’s underside: enter it under Edit, Fork',
  noLeastHeight: 'needs the least fork tube above clamp from the maker’s manual: enter it under Edit, Fork',
  throttleOpen: 'the throttle is not closed: choose “Throttle closed”',
  slackImpossible: 'the lower run cannot have this much slack: set less',
  noRun: 'a shaft or hub drive has no chain run',
  stayCannotClose: 'the caliper’s stay is too long or too short to reach from bracket to frame',
  stayThroughAxle: 'the caliper’s stay points at the axle, so it holds nothing',
  nothingMeasured: 'needs a part that may touch: enter a half width under Edit, Frame',
  noCrown: 'needs the round of the tyres: enter the crown radius under Edit, Front wheel and Rear wheel',
  nothingTouches: 'no measured part touches at any lean',
};

/** What stands instead of the number, without a capital and a full stop. */
export function absentWords({ reason }: Absent): string {
  return WORDS[reason];
}
