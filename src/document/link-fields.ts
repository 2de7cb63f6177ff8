/** The saved field of the rear links: one of three layouts, or null when only the table is known. */
import * as v from 'valibot';
import type { LinkLayout } from '../core/parts/rear-layout.ts';
import { LARGEST_LENGTH } from '../core/parts/bounds.ts';
import { documented, type Leaf } from './field.ts';
import type { JsonObject } from './json.ts';

const placed = v.pipe(v.number(), v.finite(), v.minValue(-LARGEST_LENGTH), v.maxValue(LARGEST_LENGTH));
const length = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(LARGEST_LENGTH));
const angle = v.pipe(v.number(), v.finite(), v.minValue(-180), v.maxValue(180));

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

const number = (description: string, least = -LARGEST_LENGTH, most = LARGEST_LENGTH): JsonObject => ({
  description,
  type: 'number',
  minimum: least,
  maximum: most,
});
const group = (
  description: string,
  properties: JsonObject,
  optional: readonly string[] = [],
): JsonObject => ({
  description,
  type: 'object',
  required: Object.keys(properties).filter((key) => !optional.includes(key)),
  properties,
});
const onFrameJson = (what: string): JsonObject =>
  group(`${what}. From the swingarm pivot as drawn.`, {
    x: number('Forward. Unit: mm.'),
    y: number('Up. Unit: mm.'),
  });
const onArmJson = (what: string): JsonObject =>
  group(`${what}. Fixed to the swingarm.`, {
    along: number('From the pivot toward the rear axle. Unit: mm.'),
    above: number('Square to that line, upward. Unit: mm.'),
  });
const farEndJson: JsonObject = {
  description: 'Where the shock’s end away from the rocker is bolted.',
  anyOf: [
    group('On the frame.', { on: { description: 'Says so.', const: 'frame' }, at: onFrameJson('The bolt') }),
    group('On the swingarm.', { on: { description: 'Says so.', const: 'arm' }, at: onArmJson('The bolt') }),
  ],
};
const drawnJson: JsonObject = {
  drawnAngleDeg: number(
    'Line pivot to axle below the frame’s x axis in the posture in which the links were drawn. Unit: deg.',
    -180,
    180,
  ),
  framePitchDeg: {
    ...number(
      'Nose-up pitch of the frame’s axes against the ground while wheel travel is counted. Unit: deg.',
      -180,
      180,
    ),
    default: 0,
  },
  shock: group('The shock as delivered, eye to eye.', {
    fullLength: number('Fully extended. Unit: mm.', 0),
    closedLength: number('With its stroke used up. Unit: mm.', 0),
  }),
};
const layoutJson = (kind: string, what: string, points: JsonObject): JsonObject =>
  group(what, { kind: { description: 'Names the layout.', const: kind }, ...drawnJson, ...points }, [
    'framePitchDeg',
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
  json: {
    anyOf: [
      { type: 'null' },
      layoutJson('direct', 'One shock, or two alike side by side, straight from the frame to the swingarm.', {
        shockOnFrame: onFrameJson('Upper shock bolt'),
        shockOnArm: onArmJson('Lower shock bolt'),
      }),
      layoutJson('rockerOnFrame', 'Rocker that turns on the frame, pulled by a rod from the swingarm.', {
        rockerPivot: onFrameJson('Rocker pivot'),
        rodOnRocker: onFrameJson('Rod on the rocker, as drawn'),
        shockOnRocker: onFrameJson('Shock on the rocker, as drawn'),
        rodOnArm: onArmJson('Rod on the swingarm'),
        shockFarEnd: farEndJson,
      }),
      layoutJson('rockerOnArm', 'Rocker that turns on the swingarm, held by a link rod to the frame.', {
        rockerPivot: onArmJson('Rocker pivot'),
        rodOnRocker: onArmJson('Rod on the rocker, as drawn'),
        shockOnRocker: onArmJson('Shock on the rocker, as drawn'),
        rodOnFrame: onFrameJson('Rod on the frame'),
        shockFarEnd: farEndJson,
      }),
    ],
  },
  bounds: null,
};
