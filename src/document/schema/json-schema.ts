/** The published description of the file format, as JSON Schema, made from the same fields that open and save. */
import { unitWord } from '../../core/units/all-quantities.ts';
import { BIKE_PART } from '../fields/bike-fields.ts';
import { LONGEST_NAME } from '../fields/bounds.ts';
import { FORMAT, SCHEMA } from '../document.ts';
import { anyPart, type AnyField, type Leaf } from '../fields/field.ts';
import type { JsonObject } from '../json/json.ts';
import { SHAPES } from './json-shapes.ts';
import { measureShape } from './measure-shape.ts';
import { SETUP_PART } from '../fields/setup-fields.ts';

/** A field's help with its unit, and what a file without it means. */
function description(leaf: Leaf<unknown>): string {
  const { absent } = leaf;
  const unit = leaf.quantity === null ? '' : ` Unit: ${unitWord(leaf.quantity)}.`;
  const without =
    absent.kind === 'essential'
      ? ''
      : absent.kind === 'assumed'
        ? ' A file without it gets the value under "default", and whoever opens the file reads so.'
        : '';
  return `${leaf.help}${unit}${without}`;
}

/** The schema of a field. A default is JSON as it is, because the field's validator takes nothing else. */
function schemaOf(field: AnyField): JsonObject {
  const capital = field.words.charAt(0).toUpperCase() + field.words.slice(1);
  if (field.kind === 'leaf') {
    const { title = capital } = field;
    const fallback = field.absent.kind === 'essential' ? {} : { default: field.absent.value };
    const json = field.shape === undefined ? field.json : SHAPES[field.shape];
    return { title, description: description(field), ...json, ...(fallback as JsonObject) };
  }
  const entries = Object.entries(field.fields);
  return {
    title: capital,
    description: field.help,
    type: 'object',
    required: entries.filter(([, each]) => isEssential(each)).map(([key]) => key),
    properties: Object.fromEntries(entries.map(([key, each]) => [key, schemaOf(each)])),
  };
}

function isEssential(field: AnyField): boolean {
  return field.kind === 'part'
    ? Object.values(field.fields).some(isEssential)
    : field.absent.kind === 'essential';
}

/** The schema of the file as it is written and as it may be written by hand. */
export function documentJsonSchema(): JsonObject {
  const halves = { bike: { $ref: '#/$defs/bike' }, setup: { $ref: '#/$defs/setup' } };
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Sidestance bike',
    description:
      'A motorcycle as seen from its right side, and how its adjusters are set. Inputs only; no results are saved. Lengths in mm, names ending in Deg in degrees, masses in kg.',
    type: 'object',
    required: ['format', 'schema', 'bike', 'setup'],
    properties: {
      format: { description: 'Says that this is such a file.', const: FORMAT },
      schema: { description: 'The version of this description.', const: SCHEMA },
      ...halves,
      baseline: {
        title: 'Baseline',
        description: 'What everything is compared with; without it, the file’s own bike and setup.',
        type: 'object',
        properties: {
          name: {
            title: 'Name',
            description: 'Where it comes from, such as a setup sheet; left out where nobody named it.',
            type: 'string',
            maxLength: LONGEST_NAME,
          },
          ...halves,
        },
      },
      measure: measureShape(halves.setup),
    },
    $defs: { bike: schemaOf(anyPart(BIKE_PART)), setup: schemaOf(anyPart(SETUP_PART)) },
  };
}
