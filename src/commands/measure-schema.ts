/** The published description of a sheet of measurements, as JSON Schema, made from the lists of kinds, parts and states. */
import { MEASURE_KINDS } from '../core/measure/kinds/all-kinds.ts';
import { MEASURE_STATES } from '../core/measure/held/all-measure-states.ts';
import { MEASURE_PART_KEYS, MEASURE_PARTS } from '../core/measure/held/measure-parts.ts';
import { RING_KEYS } from '../core/measure/photo/photo.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import { unitWord } from '../core/units/all-quantities.ts';
import { BULGE_SD, CLICK_SD_PX } from './read-photos.ts';
import { MEASURE_FORMAT, MEASURE_SCHEMA, STARTS } from './read-measure-file.ts';

interface Json {
  readonly [key: string]: string | number | boolean | readonly string[] | readonly Json[] | Json | null;
}

/** One of a list of names, each with what it means. */
const oneOf = (description: string, names: readonly (readonly [string, string])[]): Json => ({
  description,
  oneOf: names.map(([name, words]) => ({ const: name, description: words })),
});

/** The schema of a sheet as a person writes it by hand. */
export function measureJsonSchema(): Json {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Sidestance sheet of measurements',
    description:
      'What tape, gauge and scales say of one bike, in any number and order. npm run measure fits a bike to it.',
    type: 'object',
    required: ['format', 'schema', 'rows'],
    additionalProperties: false,
    properties: {
      format: { description: 'Says that this is such a file.', const: MEASURE_FORMAT },
      schema: { description: 'The version of this description.', const: MEASURE_SCHEMA },
      about: { description: 'Notes of the person who measured.', type: 'string' },
      invented: { description: 'True where the figures belong to no motorcycle.', type: 'boolean' },
      start: {
        description:
          'The bike that gives starting values, which stay where no row says otherwise: a type of bike by its name, or a saved bike.',
        oneOf: [{ enum: STARTS }, { type: 'object' }],
        default: STARTS[0],
      },
      wanted: {
        description: 'The reading that the next measurement is to help most.',
        enum: READINGS.map(({ key }) => key),
        default: 'trail',
      },
      gaugeZeroed: {
        description:
          'Whether the gauge was zeroed on the floor in line with the bike; otherwise the slope of the floor is an unknown, 0° ± 0.5°.',
        type: 'boolean',
        default: true,
      },
      rows: { description: 'What was measured.', type: 'array', items: rowSchema() },
      photos: {
        description: 'Photos of the bike, fitted together with the rows.',
        type: 'array',
        items: photoSchema(),
      },
    },
  };
}

function rowSchema(): Json {
  const states = MEASURE_STATES.map(({ key, label, help }) => [key, `${label}. ${help}`] as const);
  return {
    type: 'object',
    required: ['kind', 'figure'],
    additionalProperties: false,
    properties: {
      kind: oneOf(
        'What is measured.',
        MEASURE_KINDS.map(({ key, label, quantity, read, sd, help }) => [
          key,
          `${label}. ${help} Unit: ${unitWord(quantity)}${read === 'exact' ? ', exact' : `, standard deviation ${Number(sd.toPrecision(3))}`}.`,
        ]),
      ),
      parts: {
        description: 'What it is measured between or on, in the order of the kind.',
        type: 'array',
        maxItems: 2,
        items: oneOf(
          'A part of the bike.',
          MEASURE_PART_KEYS.map((key) => [key, `${MEASURE_PARTS[key].label}. ${MEASURE_PARTS[key].help}`]),
        ),
      },
      state: oneOf('How the bike was held; that of the kind when left out.', states),
      otherState: oneOf('The second state, for a change between two states.', states),
      figure: {
        description: 'As read: a number, or a text such as "17 3/4 in" or "120/70-17".',
        oneOf: [{ type: 'number' }, { type: 'string' }],
      },
      unit: {
        description: 'Its unit, such as "in"; the metric unit of the kind when left out.',
        type: 'string',
        default: '',
      },
      sd: {
        description: 'Its standard deviation (1 σ) in mm, degrees or kg; that of the kind when left out.',
        type: 'number',
        exclusiveMinimum: 0,
      },
      outOfPlane: {
        description: 'How far one part lies behind the other, square to the side view, mm.',
        type: 'number',
        minimum: 0,
        default: 0,
      },
      fromOther: {
        description: 'Read from the other reference of the kind, such as from horizontal.',
        type: 'boolean',
        default: false,
      },
      off: { description: 'Left out of the fit.', type: 'boolean', default: false },
      note: { description: 'A note on this row.', type: 'string' },
    },
  };
}

const number = (description: string, rest: Json = {}): Json => ({ description, type: 'number', ...rest });

/** What a click on a photo has, with the part or the wheel that it is on. */
function clickSchema(on: Json, more: Json, required: readonly string[]): Json {
  return {
    type: 'object',
    required: ['xPx', 'yPx', ...required],
    properties: {
      ...on,
      xPx: number(
        'Pixels from the left edge of the upright picture, before mirroring; the first pixel ends at 1.',
      ),
      yPx: number('Pixels from the upper edge, downward.'),
      sdPx: number('Standard deviation of the hand, pixels.', { default: CLICK_SD_PX }),
      depth: number('How far it stands out from the bike’s middle plane toward the camera, mm.', {
        default: 0,
      }),
      depthSd: number('Standard deviation of that, mm.', { default: 0 }),
      ...more,
    },
  };
}

function photoSchema(): Json {
  const part: Json = { part: { description: 'The part that was clicked.', enum: MEASURE_PART_KEYS } };
  const wheel: Json = { wheel: { description: 'The wheel, or the sprocket.', enum: [...RING_KEYS] } };
  const radius: Json = {
    radius: number('Radius of the edge that was clicked, or of the pitch circle, mm.'),
    radiusSd: number(
      'Standard deviation of that, mm; with a large one the ring is found, and of a sprocket its teeth are counted.',
      { default: 0 },
    ),
  };
  return {
    type: 'object',
    required: ['widthPx', 'heightPx', 'focalPx', 'clicks'],
    properties: {
      state: oneOf(
        'How the bike was held.',
        MEASURE_STATES.map(({ key, label }) => [key, `${label}.`]),
      ),
      side: {
        description: 'The side of the bike that the camera stood on; from the left the picture is mirrored.',
        enum: ['right', 'left'],
        default: 'right',
      },
      widthPx: number('Width of the uncropped picture, pixels.'),
      heightPx: number('Height of the uncropped picture, pixels.'),
      focalPx: number(
        'Focal length in pixels: that for 35 mm film times the picture’s diagonal, over 43.27.',
      ),
      focalSd: number('Standard deviation of that, pixels; 2 % when left out.'),
      bulgeSd: number('Standard deviation of the lens’s bulge at the corners, per cent.', {
        default: BULGE_SD,
      }),
      clicks: {
        description: 'Points that were clicked, each as often as you like.',
        type: 'array',
        items: clickSchema(part, {}, ['part']),
      },
      rims: {
        description:
          'Points on the edges of rims, and on the pins of the chain on its sprockets; where along the ring does not count.',
        type: 'array',
        items: clickSchema(wheel, radius, ['wheel', 'radius']),
      },
    },
  };
}
