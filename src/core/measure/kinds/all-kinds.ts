/** Every kind of measurement, in the order in which they are offered. */
import { angle } from './angle.ts';
import { axleHeight } from './axle-height.ts';
import { circumference } from './circumference.ts';
import { distance } from './distance.ts';
import { distanceChange } from './distance-change.ts';
import { exposedTube } from './exposed-tube.ts';
import { eyeToEye } from './eye-to-eye.ts';
import { height } from './height.ts';
import { horizontal } from './horizontal.ts';
import type { MeasureKind } from '../held/measure-kind.ts';
import { offset } from './offset.ts';
import { paperRake } from './paper-rake.ts';
import { paperTrail } from './paper-trail.ts';
import { paperWheelbase } from './paper-wheelbase.ts';
import { rollOut } from './roll-out.ts';
import { toothCount } from './tooth-count.ts';
import { tyreCode } from './tyre-code.ts';
import { vertical } from './vertical.ts';
import { weight } from './weight.ts';

const LIST = [
  paperRake,
  paperTrail,
  paperWheelbase,
  tyreCode,
  toothCount,
  distance,
  horizontal,
  vertical,
  height,
  axleHeight,
  angle,
  offset,
  circumference,
  rollOut,
  exposedTube,
  eyeToEye,
  distanceChange,
  weight,
] as const satisfies readonly MeasureKind[];

export type MeasureKindKey = (typeof LIST)[number]['key'];

export const MEASURE_KINDS: readonly (MeasureKind & { readonly key: MeasureKindKey })[] = LIST;

const BY_KEY = Object.fromEntries(MEASURE_KINDS.map((kind) => [kind.key, kind])) as Readonly<
  Record<MeasureKindKey, MeasureKind>
>;

export function measureKindOf(key: MeasureKindKey): MeasureKind {
  return BY_KEY[key];
}
