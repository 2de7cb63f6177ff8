/** All lessons, in the order of a class. */
import { againstTheWall } from './against-the-wall.ts';
import { bothEnds } from './both-ends.ts';
import { chainOverPivot } from './chain-over-pivot.ts';
import { complaintToAdjuster } from './complaint-to-adjuster.ts';
import { dropTheFork } from './drop-the-fork.ts';
import { raiseTheRear } from './raise-the-rear.ts';
import { rakeAgainstTrail } from './rake-against-trail.ts';
import { sagAndPreload } from './sag-and-preload.ts';
import { sameRatio } from './same-ratio.ts';
import { shortRider } from './short-rider.ts';
import { springsHoldGeometry } from './springs-hold-geometry.ts';
import { squatLine } from './squat-line.ts';
import { swingarmAngle } from './swingarm-angle.ts';
import { whatTrailDoes } from './what-trail-does.ts';
import type { Lesson } from './lesson.ts';

export const LESSONS: readonly Lesson[] = [
  whatTrailDoes,
  rakeAgainstTrail,
  raiseTheRear,
  dropTheFork,
  bothEnds,
  swingarmAngle,
  againstTheWall,
  squatLine,
  sameRatio,
  chainOverPivot,
  springsHoldGeometry,
  sagAndPreload,
  shortRider,
  complaintToAdjuster,
];
