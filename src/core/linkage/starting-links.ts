/** Links to begin with: bolts that work at once on a given swingarm, until a hand moves them to where they really are. */
import type { Swingarm } from '../parts/bike.ts';
import type { FramePoint } from '../parts/frame-point.ts';
import type {
  ArmPoint,
  DirectLayout,
  LinkLayout,
  RockerOnArmLayout,
  RockerOnFrameLayout,
} from '../parts/rear-layout.ts';
import { rotate } from '../plane/point.ts';
import { radians } from '../units/convert.ts';
import { AS_DELIVERED } from './link-adjustments.ts';
import { links, shockAt } from './links.ts';
import { mapBolts } from './map-bolts.ts';
import { noLinkage, type NoLinkage } from './no-linkage.ts';
import { suspension } from './suspension.ts';

export type LinkKind = LinkLayout['kind'];

/** The arm of the patterns, mm, and its angle below the frame's x axis. */
export const PATTERN_ARM = 580;
const PATTERN_ANGLE_DEG = 9.5;
const posture = { drawnAngleDeg: PATTERN_ANGLE_DEG, framePitchDeg: 0 };

/** Made up: the kinds of links are common, but these measures are those of no motorcycle. */
export const PATTERNS: {
  readonly direct: DirectLayout;
  readonly rockerOnFrame: RockerOnFrameLayout;
  readonly rockerOnArm: RockerOnArmLayout;
} = {
  direct: {
    kind: 'direct',
    ...posture,
    shock: { fullLength: 352, closedLength: 292 },
    shockOnFrame: { x: -20, y: 265 },
    shockOnArm: { along: 270, above: 70 },
  },
  rockerOnFrame: {
    kind: 'rockerOnFrame',
    ...posture,
    shock: { fullLength: 299, closedLength: 239 },
    rockerPivot: { x: -84, y: -71 },
    rodOnRocker: { x: -81, y: -137 },
    shockOnRocker: { x: -178, y: -102 },
    rodOnArm: { along: 289, above: -8 },
    shockFarEnd: { on: 'frame', at: { x: -97, y: 186 } },
  },
  rockerOnArm: {
    kind: 'rockerOnArm',
    ...posture,
    shock: { fullLength: 318, closedLength: 258 },
    rockerPivot: { along: 170, above: -46 },
    rodOnRocker: { along: 165, above: -104 },
    shockOnRocker: { along: 105, above: -124 },
    rodOnFrame: { x: 7, y: -106 },
    shockFarEnd: { on: 'frame', at: { x: -67, y: 178 } },
  },
};

/** Parts of the travel wanted that are tried, the whole first: links may end before. */
const TRIED = [1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3];

/**
 * Links of a kind on this swingarm: a pattern made as large as the arm, turned to its angle topped out, with a shock
 * that hangs it there and closes after the wheel travel stated beside the table, or as much of it as the links allow.
 */
export function startingLinks(kind: LinkKind, swingarm: Swingarm): LinkLayout | NoLinkage {
  const { length, toppedOutAngleDeg, tablePitchDeg, wheelTravel } = swingarm;
  const scale = length / PATTERN_ARM;
  const turn = radians(toppedOutAngleDeg - PATTERN_ANGLE_DEG);
  const onFrame = ({ x, y }: FramePoint): FramePoint => rotate({ x: scale * x, y: scale * y }, turn);
  const onArm = ({ along, above }: ArmPoint): ArmPoint => ({ along: scale * along, above: scale * above });
  const place = mapBolts(PATTERNS[kind], { onFrame, onArm });
  const drawn: LinkLayout = { ...place, drawnAngleDeg: toppedOutAngleDeg, framePitchDeg: tablePitchDeg };
  const of = links(drawn, AS_DELIVERED);
  if (!of.ok) return of;
  const hanging = radians(toppedOutAngleDeg);
  const full = shockAt(of, hanging);
  if (full === null) return noLinkage('linkageCannotClose');
  for (const part of TRIED) {
    const sine = Math.sin(hanging + radians(tablePitchDeg)) - (part * wheelTravel) / length;
    if (!(Math.abs(sine) < 1)) continue;
    const closed = shockAt(of, Math.asin(sine) - radians(tablePitchDeg));
    if (closed === null) continue;
    const layout = { ...drawn, shock: { fullLength: full.length, closedLength: closed.length } };
    if (suspension(layout, length, AS_DELIVERED).ok) return layout;
  }
  return noLinkage('linkageCannotClose');
}
