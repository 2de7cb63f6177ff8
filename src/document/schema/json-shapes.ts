/** The published shapes of saved values that hold others, apart from their fields so that the page does not carry them. */
import { LONGEST_CODE } from '../fields/tyre-field.ts';
import { MOST_TRAVEL_ROWS } from '../fields/bounds.ts';
import { ANY_PRESSURE, ANY_RATE, ANY_VOLUME, LARGEST_LENGTH } from '../../core/parts/bounds.ts';
import type { ShapeKey } from '../fields/field.ts';
import type { JsonObject } from '../json/json.ts';
import {
  LARGEST_EXPONENT,
  LARGEST_FORCE,
  MOST_FORCE_ROWS,
  USUAL_EXPONENT,
} from '../fields/support-fields.ts';

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

const orNone = (description: string): JsonObject => ({
  ...number(`${description}; null when not known. Unit: mm.`, 0, LARGEST_LENGTH),
  type: ['number', 'null'],
});
const lengthJson = (description: string) => number(`${description}. Unit: mm.`, 0, LARGEST_LENGTH);
const placeJson = (description: string) =>
  number(`${description}. Unit: mm.`, -LARGEST_LENGTH, LARGEST_LENGTH);
const rateJson = (description: string) =>
  number(`${description}. Unit: N/mm.`, ANY_RATE.least, ANY_RATE.most);
const volumeJson = (description: string) =>
  number(`${description}. Unit: ml.`, ANY_VOLUME.least, ANY_VOLUME.most);
const pressureJson = (description: string) =>
  number(`${description}. Unit: bar.`, ANY_PRESSURE.least, ANY_PRESSURE.most);

const nullOr = (description: string, json: JsonObject): JsonObject => ({
  description,
  anyOf: [{ type: 'null' }, json],
});

const kindJson = (kind: string, what: string, rest: JsonObject = {}, optional: readonly string[] = []) =>
  group(what, { kind: { description: 'Names the kind.', const: kind }, ...rest }, optional);

const springJson: JsonObject = {
  description: 'The main spring. Its first rate and its preload are adjusters.',
  anyOf: [
    kindJson('oneRate', 'A spring with one rate.'),
    kindJson(
      'inSeries',
      'Two springs end to end, until the one that closes at the smaller force has closed.',
      {
        otherRate: rateJson('Rate of the other spring'),
        firstCloses: orNone('How far the first spring can be pressed before it closes'),
        otherCloses: orNone('How far the other spring can be pressed before it closes'),
      },
      ['firstCloses', 'otherCloses'],
    ),
    kindJson('twoRates', 'One spring wound with two rates, as printed on it.', {
      secondRate: rateJson('Rate from the changeover on'),
      changeover: lengthJson('How far it is pressed from its free length where the second rate begins'),
    }),
    kindJson('table', 'A measured spring.', {
      rows: {
        description: 'From 0 mm and 0 N upward, both rising from row to row.',
        type: 'array',
        minItems: 2,
        maxItems: MOST_FORCE_ROWS,
        items: group('One row.', {
          pressed: placeJson('How far the spring is pressed from its free length'),
          force: number('Its force then. Unit: N.', -LARGEST_FORCE, LARGEST_FORCE),
        }),
      },
    }),
    kindJson('none', 'No spring: air alone.'),
  ],
};

const airJson = nullOr(
  'Air in it; null where it is not counted. Gap and pressure are adjusters.',
  group(
    'Air by its sizes.',
    {
      bore: lengthJson('Inside diameter of the space that the air gap is measured in'),
      slidingTube: lengthJson('Outside diameter of what slides into it'),
      exponent: {
        ...number('Of the change of pressure with volume, 1 to 1.4 for air. Unit: 1.', 0, LARGEST_EXPONENT),
        default: USUAL_EXPONENT,
      },
      steelVolume: {
        ...volumeJson('Steel of the spring that takes air away at full compression'),
        default: 0,
      },
      balance: nullOr(
        'A chamber of air that pulls the end in; null without one.',
        group('The chamber by its sizes.', {
          volume: volumeJson('At full extension'),
          bore: lengthJson('Inside diameter'),
          rod: lengthJson('Diameter of the rod through it'),
          pressure: pressureJson('What a gauge shows at full extension'),
        }),
      ),
    },
    ['exponent', 'steelVolume', 'balance'],
  ),
);

const supportJson = { spring: springJson, air: airJson };

const measuredTyreJson = (key: 'diameter' | 'circumference', description: string): JsonObject => ({
  type: 'object',
  required: [key],
  properties: {
    [key]: { description: `${description} Unit: mm.`, type: 'number', minimum: 0, maximum: LARGEST_LENGTH },
  },
});

const tyreJson: JsonObject = {
  anyOf: [
    {
      type: 'object',
      required: ['code'],
      properties: {
        code: {
          description: 'Size code from the sidewall, such as 190/55-17.',
          type: 'string',
          maxLength: LONGEST_CODE,
        },
      },
    },
    measuredTyreJson('diameter', 'Outside diameter.'),
    measuredTyreJson('circumference', 'Rolling circumference.'),
  ],
};

const cellJson = (description: string, minimum = -LARGEST_LENGTH): JsonObject => ({
  description: `${description} Unit: mm.`,
  type: 'number',
  minimum,
  maximum: LARGEST_LENGTH,
});

const travelTableJson: JsonObject = {
  type: 'array',
  minItems: 2,
  maxItems: MOST_TRAVEL_ROWS,
  items: {
    type: 'object',
    required: ['wheelTravel', 'shockStroke'],
    properties: {
      wheelTravel: cellJson('Rise of the axle, square to the ground with the frame held.'),
      shockStroke: cellJson('How far the shock is pushed in.'),
      wheelTravelPlusMinus: cellJson(
        'How far the wheel travel may be off either way; of the first row, the reading while hanging. Left out where it is exact.',
        0,
      ),
      shockStrokePlusMinus: cellJson('The same of the shock stroke.', 0),
    },
  },
};

/** The shape of each field that names one. */
export const SHAPES: Readonly<Record<ShapeKey, JsonObject>> = {
  tyre: tyreJson,
  travelTable: travelTableJson,
  links: {
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
  support: { anyOf: [{ type: 'null' }, group('A spring, air, or both.', supportJson, ['air'])] },
  otherLeg: {
    anyOf: [
      { type: 'null' },
      group(
        'The other leg.',
        {
          rate: rateJson('Rate of its spring; the first of two'),
          preload: placeJson('How far its spring is pressed with the fork topped out'),
          springTravel: orNone('How far its spring can be pressed before it is coil-bound'),
          airGap: lengthJson('Fully compressed, with the spring out'),
          airPressure: pressureJson('What a gauge shows, topped out'),
          ...supportJson,
        },
        ['springTravel', 'air'],
      ),
    ],
  },
};
