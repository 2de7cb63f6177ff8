/** One invented rear suspension of every layout, for a swingarm of 580 mm; every figure is made up. */
import type {
  DirectLayout,
  LinkLayout,
  RockerOnArmLayout,
  RockerOnFrameLayout,
} from '../../src/core/chassis/rear-layout.ts';

export const ARM_LENGTH = 580;

const posture = { drawnAngleDeg: 9.5, framePitchDeg: 0 };

export const twoShocks: DirectLayout = {
  kind: 'direct',
  ...posture,
  shock: { fullLength: 367, closedLength: 277 },
  shockOnFrame: { x: -330, y: 300 },
  shockOnArm: { along: 480, above: 45 },
};

/** Hanging, its leverage is near 3, as on many linkage bikes. */
export const floatingShock: RockerOnFrameLayout = {
  kind: 'rockerOnFrame',
  ...posture,
  shock: { fullLength: 322, closedLength: 262 },
  rockerPivot: { x: -52, y: -102 },
  rodOnRocker: { x: -99, y: -154 },
  shockOnRocker: { x: -194, y: -161 },
  rodOnArm: { along: 236, above: 10 },
  shockFarEnd: { on: 'arm', at: { along: 132, above: 184 } },
};

export const pullRod: RockerOnFrameLayout = {
  kind: 'rockerOnFrame',
  ...posture,
  shock: { fullLength: 299, closedLength: 239 },
  rockerPivot: { x: -84, y: -71 },
  rodOnRocker: { x: -81, y: -137 },
  shockOnRocker: { x: -178, y: -102 },
  rodOnArm: { along: 289, above: -8 },
  shockFarEnd: { on: 'frame', at: { x: -97, y: 186 } },
};

export const linkRod: RockerOnArmLayout = {
  kind: 'rockerOnArm',
  ...posture,
  shock: { fullLength: 318, closedLength: 258 },
  rockerPivot: { along: 170, above: -46 },
  rodOnRocker: { along: 165, above: -104 },
  shockOnRocker: { along: 105, above: -124 },
  rodOnFrame: { x: 7, y: -106 },
  shockFarEnd: { on: 'frame', at: { x: -67, y: 178 } },
};

export const rearLayouts: readonly { readonly name: string; readonly layout: LinkLayout }[] = [
  { name: 'two shocks straight', layout: twoShocks },
  {
    name: 'one shock straight',
    layout: {
      kind: 'direct',
      ...posture,
      shock: { fullLength: 352, closedLength: 292 },
      shockOnFrame: { x: -20, y: 265 },
      shockOnArm: { along: 270, above: 70 },
    },
  },
  { name: 'rocker on the frame, shock to the frame', layout: pullRod },
  { name: 'rocker on the frame, shock to the swingarm', layout: floatingShock },
  { name: 'rocker on the swingarm, shock to the frame', layout: linkRod },
  {
    name: 'rocker on the swingarm, shock to the swingarm',
    layout: {
      kind: 'rockerOnArm',
      ...posture,
      shock: { fullLength: 323, closedLength: 263 },
      rockerPivot: { along: 213, above: -31 },
      rodOnRocker: { along: 194, above: -104 },
      shockOnRocker: { along: 66, above: -88 },
      rodOnFrame: { x: 24, y: -113 },
      shockFarEnd: { on: 'arm', at: { along: 94, above: 234 } },
    },
  },
];
