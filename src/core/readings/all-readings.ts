/** Every reading, in the order in which people read them. */
import { antiSquatChain } from './anti-squat-chain.ts';
import { antiSquatSwingarm } from './anti-squat-swingarm.ts';
import { antiSquat } from './anti-squat.ts';
import { bottomRunAngle } from './bottom-run-angle.ts';
import { centreHeight } from './centre-height.ts';
import { centrePosition } from './centre-position.ts';
import { countershaftHeight } from './countershaft-height.ts';
import { finalRatio } from './final-ratio.ts';
import { frontAxleHeight } from './front-axle-height.ts';
import { frontLiftAcceleration } from './front-lift-acceleration.ts';
import { frontWeightShare } from './front-weight-share.ts';
import { loadTransferAngle } from './load-transfer-angle.ts';
import { normalTrail } from './normal-trail.ts';
import { pivotHeight } from './pivot-height.ts';
import { rake } from './rake.ts';
import type { Reading, ReadingGroup } from './reading.ts';
import { rearAxleHeight } from './rear-axle-height.ts';
import { rearLiftDeceleration } from './rear-lift-deceleration.ts';
import { seatHeight } from './seat-height.ts';
import { squatAngle } from './squat-angle.ts';
import { squatRatio } from './squat-ratio.ts';
import { swingarmAngle } from './swingarm-angle.ts';
import { topRunAngle } from './top-run-angle.ts';
import { topRunPivotGap } from './top-run-pivot-gap.ts';
import { trail } from './trail.ts';
import { wheelFlop } from './wheel-flop.ts';
import { wheelbase } from './wheelbase.ts';

export const READINGS: readonly Reading[] = [
  rake,
  trail,
  normalTrail,
  wheelFlop,
  wheelbase,
  frontAxleHeight,
  swingarmAngle,
  pivotHeight,
  rearAxleHeight,
  seatHeight,
  antiSquat,
  antiSquatSwingarm,
  antiSquatChain,
  squatRatio,
  squatAngle,
  loadTransferAngle,
  topRunAngle,
  bottomRunAngle,
  topRunPivotGap,
  finalRatio,
  countershaftHeight,
  frontWeightShare,
  centreHeight,
  centrePosition,
  frontLiftAcceleration,
  rearLiftDeceleration,
];

export const READING_GROUPS: readonly { readonly key: ReadingGroup; readonly label: string }[] = [
  { key: 'steering', label: 'Steering' },
  { key: 'rearEnd', label: 'Rear end' },
  { key: 'drive', label: 'Drive' },
  { key: 'balance', label: 'Balance' },
];
