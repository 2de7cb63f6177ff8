/** One invented rear suspension of every layout, all for the swingarm of the program's own patterns; every figure is made up. */
import type { DirectLayout, LinkLayout, RockerOnFrameLayout } from '../../src/core/parts/rear-layout.ts';
import { PATTERN_ARM, PATTERNS } from '../../src/core/linkage/starting-links.ts';

export const ARM_LENGTH = PATTERN_ARM;

const posture = { drawnAngleDeg: 9.5, framePitchDeg: 0 };

export const twoShocks: DirectLayout = {
  kind: 'direct',
  ...posture,
  shock: { fullLength: 367, closedLength: 277 },
  shockOnFrame: { x: -330, y: 300 },
  shockOnArm: { along: 480, above: 45 },
};

/** Hanging, its leverage is near 3, as on many linkage bikes. */
export const rockerToArm: RockerOnFrameLayout = {
  kind: 'rockerOnFrame',
  ...posture,
  shock: { fullLength: 322, closedLength: 262 },
  rockerPivot: { x: -52, y: -102 },
  rodOnRocker: { x: -99, y: -154 },
  shockOnRocker: { x: -194, y: -161 },
  rodOnArm: { along: 236, above: 10 },
  shockFarEnd: { on: 'arm', at: { along: 132, above: 184 } },
};

export const rockerToFrame = PATTERNS.rockerOnFrame;

export const rockerOnArm = PATTERNS.rockerOnArm;

export const rearLayouts: readonly { readonly name: string; readonly layout: LinkLayout }[] = [
  { name: 'two shocks straight', layout: twoShocks },
  { name: 'one shock straight', layout: PATTERNS.direct },
  { name: 'rocker on the frame, shock to the frame', layout: rockerToFrame },
  { name: 'rocker on the frame, shock to the swingarm', layout: rockerToArm },
  { name: 'rocker on the swingarm, shock to the frame', layout: rockerOnArm },
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
