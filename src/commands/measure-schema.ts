/** The published description of a sheet of measurements, as JSON Schema, made from the lists of kinds, parts and states. */
import { MEASURE_KINDS } from '../core/measure/all-kinds.ts';
import { MEASURE_STATES } from '../core/measure/all-measure-states.ts';
import { MEASURE_PART_KEYS, MEASURE_PARTS } from '../core/measure/measure-parts.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import { unitWord } from '../core/units/all-quantities.ts';
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
