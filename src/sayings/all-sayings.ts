/** All sayings that are held against the balance of forces. */
import { bigRearSprocket } from './big-rear-sprocket.ts';
import { chainOnSlider } from './chain-on-slider.ts';
import { dropForkLoadsFront } from './drop-fork-loads-front.ts';
import { extendersAfterRear } from './extenders-after-rear.ts';
import { frontInRearOut } from './front-in-rear-out.ts';
import { halfAnInch } from './half-an-inch.ts';
import { heavyRider } from './heavy-rider.ts';
import { longArm } from './long-arm.ts';
import { longIsCalm } from './long-is-calm.ts';
import { noEndAlone } from './no-end-alone.ts';
import { offsetTrail } from './offset-trail.ts';
import { preloadRaises } from './preload-raises.ts';
import { sameRatioSquats } from './same-ratio-squats.ts';
import { stiffForkSprings } from './stiff-fork-springs.ts';
import { tenthsOfArm } from './tenths-of-arm.ts';
import type { Saying } from './saying.ts';

export const SAYINGS: readonly Saying[] = [
  noEndAlone,
  tenthsOfArm,
  sameRatioSquats,
  bigRearSprocket,
  chainOnSlider,
  halfAnInch,
  extendersAfterRear,
  frontInRearOut,
  stiffForkSprings,
  longIsCalm,
  preloadRaises,
  longArm,
  offsetTrail,
  heavyRider,
  dropForkLoadsFront,
];
