/** Every reading, in the order in which people read them. */
import { antiSquat } from './anti-squat.ts';
import { antiSquatChain } from './anti-squat-chain.ts';
import { antiSquatSwingarm } from './anti-squat-swingarm.ts';
import { lowerRunAngle } from './lower-run-angle.ts';
import { brakeAntiRise } from './brake-anti-rise.ts';
import { centreHeight } from './centre-height.ts';
import { centrePosition } from './centre-position.ts';
import { frontSprocketHeight } from './front-sprocket-height.ts';
import { engineBraking } from './engine-braking.ts';
import { finalDriveRatio } from './final-drive-ratio.ts';
import { freeTravel } from './free-travel.ts';
import { forkTubeSpare } from './fork-tube-spare.ts';
import { groundClearance } from './ground-clearance.ts';
import { frontAxleHeight } from './front-axle-height.ts';
import { wheelieLimit } from './wheelie-limit.ts';
import { frontTravel } from './front-travel.ts';
import { frontTravelLeft } from './front-travel-left.ts';
import { frontWeightShare } from './front-weight-share.ts';
import { frontWheelLoad } from './front-wheel-load.ts';
import { frontWheelRate } from './front-wheel-rate.ts';
import { loadTransferAngle } from './load-transfer-angle.ts';
import { lowerRunClearance } from './lower-run-clearance.ts';
import { motionRatio } from './motion-ratio.ts';
import { neutralAntiSquat } from './neutral-anti-squat.ts';
import { normalTrail } from './normal-trail.ts';
import { pivotHeight } from './pivot-height.ts';
import { rake } from './rake.ts';
import type { Reading, ReadingGroup } from './reading.ts';
import { rearAxleHeight } from './rear-axle-height.ts';
import { rearLiftLimit } from './rear-lift-limit.ts';
import { rearTravel } from './rear-travel.ts';
import { rearTravelLeft } from './rear-travel-left.ts';
import { rearWheelForce } from './rear-wheel-force.ts';
import { rearWheelLoad } from './rear-wheel-load.ts';
import { rearWheelRate } from './rear-wheel-rate.ts';
import { seatHeight } from './seat-height.ts';
import { shockLeverage } from './shock-leverage.ts';
import { shockStroke } from './shock-stroke.ts';
import { spareLength } from './spare-length.ts';
import { squatAngle } from './squat-angle.ts';
import { squatRatio } from './squat-ratio.ts';
import { swingarmAngle } from './swingarm-angle.ts';
import { upperRunAngle } from './upper-run-angle.ts';
import { chainSliderClearance } from './chain-slider-clearance.ts';
import { throttleClosedRise } from './throttle-closed-rise.ts';
import { touchLean } from './touch-lean.ts';
import { trail } from './trail.ts';
import { tyreToClampGap } from './tyre-to-clamp-gap.ts';
import { wheelFlop } from './wheel-flop.ts';
import { wheelbase } from './wheelbase.ts';

export const READINGS: readonly Reading[] = [
  rake,
  trail,
  wheelbase,
  normalTrail,
  frontAxleHeight,
  wheelFlop,
  swingarmAngle,
  pivotHeight,
  rearAxleHeight,
  seatHeight,
  frontTravel,
  frontTravelLeft,
  rearTravel,
  rearTravelLeft,
  shockStroke,
  motionRatio,
  shockLeverage,
  frontWheelRate,
  rearWheelRate,
  rearWheelForce,
  frontWheelLoad,
  rearWheelLoad,
  tyreToClampGap,
  forkTubeSpare,
  antiSquat,
  squatRatio,
  antiSquatSwingarm,
  antiSquatChain,
  neutralAntiSquat,
  engineBraking,
  throttleClosedRise,
  brakeAntiRise,
  squatAngle,
  upperRunAngle,
  lowerRunAngle,
  chainSliderClearance,
  lowerRunClearance,
  freeTravel,
  spareLength,
  finalDriveRatio,
  frontSprocketHeight,
  frontWeightShare,
  centreHeight,
  centrePosition,
  groundClearance,
  touchLean,
  loadTransferAngle,
  wheelieLimit,
  rearLiftLimit,
];

export const READING_GROUPS: readonly { readonly key: ReadingGroup; readonly label: string }[] = [
  { key: 'steering', label: 'Steering' },
  { key: 'rearEnd', label: 'Rear end' },
  { key: 'suspension', label: 'Suspension' },
  { key: 'drive', label: 'Drive' },
  { key: 'balance', label: 'Balance' },
];
