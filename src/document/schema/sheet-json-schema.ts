/** The published description of a setup sheet's file, as JSON Schema, made from the same list of notes that the form shows. */
import { LONGEST_ABOUT, LONGEST_NAME } from '../fields/bounds.ts';
import type { JsonObject } from '../json/json.ts';
import { LATEST_MS, MOST_CORRECTIONS, MOST_FURTHER } from '../open-sheet.ts';
import { NOTES } from '../sheet-notes.ts';
import { SHEET_FORMAT, SHEET_SCHEMA } from '../sheet.ts';

const name = (description: string): JsonObject => ({ description, type: 'string', maxLength: LONGEST_NAME });
const text = (description: string): JsonObject => ({ description, type: 'string', maxLength: LONGEST_ABOUT });
const moment = (description: string): JsonObject => ({
  description: `${description} Milliseconds since 1970, UTC.`,
  type: 'number',
  minimum: 0,
  maximum: LATEST_MS,
});

/** The schema of a sheet as it is written and as it may be written by hand. */
export function sheetJsonSchema(): JsonObject {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Sidestance setup sheet',
    description:
      'A dated copy of a bike as set, with what was noted about it and what it read that day. A correction keeps both values.',
    type: 'object',
    required: ['format', 'schema', 'day', 'asSet'],
    properties: {
      format: { description: 'Says that this is such a file.', const: SHEET_FORMAT },
      schema: { description: 'The version of this description.', const: SHEET_SCHEMA },
      day: { description: 'The day it belongs to, such as 2026-11-26.', type: 'string', format: 'date' },
      madeAt: moment('When the sheet was made.'),
      notes: {
        description: 'What was noted; a note without words is left out.',
        type: 'object',
        properties: Object.fromEntries(
          NOTES.map(({ key, label, help }) => [key, { title: label, ...text(help) }]),
        ),
      },
      further: {
        description: 'Lines that the workshop added by itself.',
        type: 'array',
        maxItems: MOST_FURTHER,
        items: {
          type: 'object',
          required: ['name', 'text'],
          properties: { name: name('What it is.'), text: text('What was noted.') },
        },
      },
      readings: {
        description:
          'The readings of that day by ride state and key, in the units of the command “readings”: mm, deg, kg, N, g, %.',
        type: 'object',
        additionalProperties: {
          type: 'object',
          additionalProperties: { type: 'number' },
        },
      },
      u: {
        description:
          'How sure those readings were by what the bike was measured with: standard deviations (1 σ) by ride state and key, in the same units. A reading that nothing fixed is left out.',
        type: 'object',
        additionalProperties: {
          type: 'object',
          additionalProperties: { type: 'number', minimum: 0 },
        },
      },
      corrections: {
        description: 'What was put right after the sheet was made, the earliest first.',
        type: 'array',
        maxItems: MOST_CORRECTIONS,
        items: {
          type: 'object',
          required: ['at', 'what', 'from', 'to'],
          properties: {
            at: moment('When.'),
            what: name('What was put right.'),
            from: text('What stood there before.'),
            to: text('What stands there now.'),
          },
        },
      },
      asSet: {
        description: 'The bike and how its adjusters were set, as in a bike’s file without its baseline.',
        $ref: 'sidestance-bike.schema.json',
      },
    },
  };
}
