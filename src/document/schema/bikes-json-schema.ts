/** The published description of a file of several bikes, as JSON Schema: what the shop keeps about each, its sheets, and a trainer's own lessons. */
import { BIKES_FORMAT, BIKES_SCHEMA } from '../bikes-file.ts';
import { LONGEST_ABOUT, LONGEST_NAME } from '../fields/bounds.ts';
import type { JsonObject } from '../json/json.ts';
import { LATEST_MS } from '../open-sheet.ts';

const name = (description: string): JsonObject => ({ description, type: 'string', maxLength: LONGEST_NAME });
const id = (description: string): JsonObject => ({ ...name(description), minLength: 1 });

/** The schema of such a file as it is written and as it may be written by hand. */
export function bikesJsonSchema(): JsonObject {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Sidestance bikes with their setup sheets',
    description:
      'One bike or all bikes of a shop. Brought back, they come beside what is there: a bike, sheet or lesson of the same id in another state is kept as another version.',
    type: 'object',
    required: ['format', 'schema', 'bikes'],
    properties: {
      format: { description: 'Says that this is such a file.', const: BIKES_FORMAT },
      schema: { description: 'The version of this description.', const: BIKES_SCHEMA },
      savedAt: {
        description: 'When the file was saved. Milliseconds since 1970, UTC.',
        type: 'number',
        minimum: 0,
        maximum: LATEST_MS,
      },
      bikes: {
        description: 'The bikes.',
        type: 'array',
        items: {
          type: 'object',
          required: ['id', 'bike'],
          properties: {
            id: id('What tells the bike from all others, whatever its name.'),
            card: {
              description: 'What the shop keeps about the bike beside its measures.',
              type: 'object',
              properties: {
                owner: name('Whose bike it is.'),
                notes: { description: 'In the shop’s own words.', type: 'string', maxLength: LONGEST_ABOUT },
                tags: {
                  description: 'Words to find it by.',
                  type: 'array',
                  items: { type: 'string', maxLength: LONGEST_NAME },
                },
                archived: { description: 'Whether it is put away.', type: 'boolean' },
              },
            },
            bike: {
              description: 'The bike, its setup and its baseline, as in a bike’s file.',
              $ref: 'sidestance-bike.schema.json',
            },
            pictures: {
              description: 'Pictures of the bike, each as the file it came from.',
              type: 'array',
              items: {
                type: 'object',
                required: ['type', 'data'],
                properties: {
                  keptAt: {
                    description: 'When it was kept. Milliseconds since 1970, UTC.',
                    type: 'number',
                    minimum: 0,
                    maximum: LATEST_MS,
                  },
                  type: {
                    description: 'What kind of picture.',
                    type: 'string',
                    pattern: '^image/[\\w.+-]{1,40}$',
                  },
                  data: { description: 'Its bytes in base 64.', type: 'string', minLength: 1 },
                },
              },
            },
            sheets: {
              description: 'Its setup sheets.',
              type: 'array',
              items: {
                type: 'object',
                required: ['id', 'sheet'],
                properties: {
                  id: id('What tells the sheet from all others.'),
                  sheet: {
                    description: 'The sheet, as in a sheet’s file.',
                    $ref: 'sidestance-sheet.schema.json',
                  },
                },
              },
            },
          },
        },
      },
      lessons: {
        description: 'A trainer’s own lessons.',
        type: 'array',
        items: {
          type: 'object',
          required: ['id', 'lesson'],
          properties: {
            id: id('What tells the lesson from all others.'),
            madeAt: {
              description: 'When it was made, which is its place in the list. Milliseconds since 1970, UTC.',
              type: 'number',
              minimum: 0,
              maximum: LATEST_MS,
            },
            lesson: {
              description: 'The lesson, as in a lesson’s file.',
              $ref: 'sidestance-lesson.schema.json',
            },
          },
        },
      },
    },
  };
}
