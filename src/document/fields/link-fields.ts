/** The saved field of the rear links: one of three layouts, or null when only the table is known. */
import * as v from 'valibot';
import type { LinkLayout } from '../../core/parts/rear-layout.ts';
import { LARGEST_LENGTH } from '../../core/parts/bounds.ts';
import { documented, type Leaf } from './field.ts';

const placed = v.pipe(v.number(), v.minValue(-LARGEST_LENGTH), v.maxValue(LARGEST_LENGTH));
const length = v.pipe(v.number(), v.minValue(0), v.maxValue(LARGEST_LENGTH));
const angle = v.pipe(v.number(), v.minValue(-180), v.maxValue(180));

const framePoint = v.object({ x: placed, y: placed });
const armPoint = v.object({ along: placed, above: placed });
const farEnd = v.variant('on', [
  v.object({ on: v.literal('frame'), at: framePoint }),
  v.object({ on: v.literal('arm'), at: armPoint }),
]);
const drawn = {
  drawnAngleDeg: angle,
  framePitchDeg: v.optional(angle, 0),
  shock: v.object({ fullLength: length, closedLength: length }),
};

const layout = v.variant('kind', [
  v.object({ kind: v.literal('direct'), ...drawn, shockOnFrame: framePoint, shockOnArm: armPoint }),
  v.object({
    kind: v.literal('rockerOnFrame'),
    ...drawn,
    rockerPivot: framePoint,
    rodOnRocker: framePoint,
    shockOnRocker: framePoint,
    rodOnArm: armPoint,
    shockFarEnd: farEnd,
  }),
  v.object({
    kind: v.literal('rockerOnArm'),
    ...drawn,
    rockerPivot: armPoint,
    rodOnRocker: armPoint,
    shockOnRocker: armPoint,
    rodOnFrame: framePoint,
    shockFarEnd: farEnd,
  }),
]);

export const linksField: Leaf<LinkLayout | null> = {
  kind: 'leaf',
  words: 'rear links',
  help: 'Shock and links as drawn; with them the travel table, its travel and the topped-out angle are not used.',
  quantity: null,
  validator: v.nullable(layout),
  expected:
    'null, or one of the layouts "direct", "rockerOnFrame" and "rockerOnArm" with every point and the shock’s two lengths',
  absent: documented(null),
  // Links badly written are not a bike without links.
  refuseWrong: true,
  json: {},
  shape: 'links',
  bounds: null,
};
